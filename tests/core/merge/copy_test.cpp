// Copies without versions, records written on apart, versions as text, copies made by hand.

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <random>

#include "core/job/record_chain.h"
#include "core/merge/flat.h"
#include "core/merge/path.h"
#include "core/merge/same_house.h"
#include "tests/core/merge/merge_tools.h"
#include "tests/tools/sweep.h"

namespace wg::merge {
namespace {

using nlohmann::json;
using test::Machine;
using wg::test::id;
using wg::test::sample_job;

Reading copy_reading(unsigned number, const std::string& at) {
    Reading r;
    r.id = id(number);
    r.kind = ReadingKind::vacuum_level;
    r.taken_at = at;
    r.value = 40.0 + number;
    return r;
}

void append(Job& job, unsigned number, const std::string& at) {
    job.record.push_back(chained(copy_reading(number, at), job.record));
}

std::vector<std::string> ids_of_record(const Job& job) {
    std::vector<std::string> out;
    for (const Reading& r : job.record)
        out.push_back(r.id);
    return out;
}

TEST(Copy, from_a_common_base_three_ways) {
    const Job base = sample_job();
    Job mine = base;
    mine.client.phone = "000 000 00 02";
    mine.title = "Mine";
    Job theirs = base;
    theirs.site.surfaces.at(0).tilt_deg = 38.0;
    theirs.title = "Theirs";
    const Result<Merged> merged = join_from_base(base, mine, "Office", theirs, "A file");
    ASSERT_TRUE(merged.ok());
    EXPECT_EQ(merged.value().job.client.phone, "000 000 00 02");
    EXPECT_EQ(merged.value().job.site.surfaces.at(0).tilt_deg, 38.0);
    ASSERT_EQ(merged.value().open.size(), 1U);
    EXPECT_EQ(merged.value().open[0].where, "title");
    // The other way round the same.
    const Result<Merged> turned = join_from_base(base, theirs, "A file", mine, "Office");
    ASSERT_TRUE(turned.ok());
    EXPECT_EQ(turned.value().versions, merged.value().versions);
    EXPECT_EQ(test::content_of(turned.value().job), test::content_of(merged.value().job));
}

TEST(Copy, without_versions_meets_machines_with_versions) {
    Machine office("Office", sample_job());
    office.edit([](Job& job) { job.title = "New title"; });
    const Job sent = office.job;
    const Versions as_sent = office.versions;
    office.edit([](Job& job) { job.client.phone = "1"; });
    Job back = sent;
    back.notes = "From the other program";
    back.changed_at = "2027-05-01T08:00:00Z";
    const Result<Versions> theirs = of_copy(as_sent, back, "A file");
    ASSERT_TRUE(theirs.ok());
    // Read on another machine it is the same copy.
    EXPECT_EQ(of_copy(as_sent, back, "A file").value(), theirs.value());
    const Result<Merged> merged = join(office.job, office.versions, back, theirs.value());
    ASSERT_TRUE(merged.ok());
    EXPECT_TRUE(merged.value().open.empty());
    EXPECT_EQ(merged.value().job.notes, "From the other program");
    EXPECT_EQ(merged.value().job.client.phone, "1");
    ASSERT_EQ(merged.value().taken.size(), 1U);
    EXPECT_EQ(merged.value().taken[0].seat_name, "A file");
    EXPECT_EQ(iso8601(merged.value().taken[0].at), "2027-05-01T08:00:00Z");
    // What a job says besides its versions is not lost either.
    Job ahead = office.job;
    ahead.title = "Typed a moment ago";
    const Result<Merged> late = join(ahead, office.versions, back, theirs.value());
    ASSERT_TRUE(late.ok());
    EXPECT_EQ(late.value().job.title, "Typed a moment ago");
}

TEST(Copy, an_entry_altered_or_missing_in_a_copy_is_shown_and_stays) {
    Job from = sample_job();
    from.record.clear();
    append(from, 801, "2027-05-01T10:00:00Z");
    append(from, 802, "2027-05-01T11:00:00Z");
    append(from, 803, "2027-05-01T12:00:00Z");
    Job tampered = from;
    tampered.record.at(1).value = 1.0;
    tampered.record.pop_back();
    const Versions begun = begin(from);
    EXPECT_FALSE(edited(begun, tampered, test::seat("Office"), {1}).ok());
    const Result<Versions> copy = of_copy(begun, tampered, "A file");
    ASSERT_TRUE(copy.ok());
    const Result<Merged> merged = join(from, begun, tampered, copy.value());
    ASSERT_TRUE(merged.ok());
    EXPECT_EQ(merged.value().job.record, from.record);
    EXPECT_TRUE(check_chain(merged.value().job.record).whole());
    ASSERT_EQ(merged.value().open.size(), 2U) << test::all_open(merged.value().open);
    EXPECT_EQ(merged.value().open[0].kind, OpenKind::entry_altered);
    EXPECT_EQ(merged.value().open[0].where, "entry of the record, vacuum level of 2027-05-01T11:00:00Z");
    EXPECT_EQ(merged.value().open[1].sides.at(1).words, "missing");
    const Versions& v = merged.value().versions;
    EXPECT_FALSE(choose(v, merged.value().open[1].path, 1, test::seat("Office"), {2}).ok());
    const Result<Versions> kept = choose(v, merged.value().open[0].path, 0, test::seat("Office"), {2});
    ASSERT_TRUE(kept.ok());
    EXPECT_EQ(open_fields(kept.value()).size(), 1U);
    // Entries in another order are refused too.
    Job moved = from;
    std::swap(moved.record.at(0), moved.record.at(2));
    EXPECT_FALSE(edited(begun, moved, test::seat("Office"), {1}).ok());
}

TEST(Copy, records_written_on_apart_stand_by_time_and_keep_their_chains) {
    Job from = sample_job();
    from.record.clear();
    append(from, 810, "2027-05-01T10:00:00Z");
    Machine one("One", from);
    Machine two("Two", from);
    one.edit([](Job& job) { append(job, 811, "2027-05-01T11:00:00Z"); });
    one.edit([](Job& job) { append(job, 812, "2027-05-01T13:00:00Z"); });
    two.edit([](Job& job) { append(job, 821, "2027-05-01T14:00:00+02:00"); });  // 12:00 Z
    two.edit([](Job& job) { append(job, 822, "2027-05-01T09:00:00Z"); });       // a clock set back
    one.take(two);
    two.take(one);
    test::expect_same(one, two);
    EXPECT_EQ(ids_of_record(one.job), (std::vector<std::string>{id(810), id(811), id(821), id(822), id(812)}));
    const ChainReport report = check_chain(one.job.record);
    EXPECT_TRUE(report.whole());
    EXPECT_EQ(report.ends.size(), 2U);
    EXPECT_TRUE(open_fields(one.versions).empty());
    // Both go on from there, and it comes together again.
    one.edit([](Job& job) { append(job, 813, "2027-05-02T08:00:00Z"); });
    two.edit([](Job& job) { append(job, 823, "2027-05-02T07:00:00Z"); });
    one.take(two);
    two.take(one);
    test::expect_same(one, two);
    EXPECT_TRUE(check_chain(one.job.record).whole());
    EXPECT_EQ(one.job.record.size(), 7U);
    // Two first entries: two beginnings.
    Job empty = sample_job();
    empty.record.clear();
    Machine a("A", empty);
    Machine b("B", empty);
    a.edit([](Job& job) { append(job, 830, "2027-05-01T11:00:00Z"); });
    b.edit([](Job& job) { append(job, 840, "2027-05-01T10:00:00Z"); });
    a.take(b);
    EXPECT_EQ(ids_of_record(a.job), (std::vector<std::string>{id(840), id(830)}));
    EXPECT_TRUE(check_chain(a.job.record).whole());
}

TEST(Copy, a_building_changed_on_both_sides_is_named_to_be_made_anew) {
    Job from = sample_job();
    Building building;
    building.id = id(850);
    unsigned next = 851;
    for (const Point2 at : wg::test::rectangle(0, 0, 10, 8))
        building.edges.push_back({id(next++), at, false, ""});
    from.site.buildings = {building};
    Machine office("Office", from);
    Machine tablet("Tablet", from);
    office.edit([](Job& job) { job.site.buildings.at(0).pitch_deg = 40.0; });
    tablet.edit([](Job& job) { job.site.buildings.at(0).eaves_m = 4.0; });
    const Merged merged = office.take(tablet);
    EXPECT_EQ(merged.buildings_to_remake, std::vector<std::string>{id(850)});
    EXPECT_EQ(office.job.site.buildings.at(0).pitch_deg, 40.0);
    EXPECT_EQ(office.job.site.buildings.at(0).eaves_m, 4.0);
    EXPECT_TRUE(tablet.take(office).buildings_to_remake.empty());
}

TEST(Flat, a_job_taken_apart_and_put_together_is_the_same_and_knows_its_lists) {
    Job job = sample_job();
    job.site.water.hardness_mmol_l = 2.0;
    job.demand.control.set_back_k = 7.0;
    const Flat flat = flattened(job);
    const Result<Job> again = job_of(flat);
    ASSERT_TRUE(again.ok()) << text_of(again.problems());
    EXPECT_TRUE(again.value() == test::travelling(job));
    // Every list of this program is among the known ones: none needs a field that says it is there.
    Job bare;
    bare.id = id(1);
    bare.site.surfaces.resize(1);
    bare.site.surfaces[0].id = id(2);
    bare.site.surfaces[0].outline = wg::test::rectangle(0, 0, 1, 1);
    bare.choices.resize(1);
    bare.choices[0].id = id(3);
    for (const Job& one : {bare, job}) {
        for (const auto& [path, value] : flattened(one).fields)
            EXPECT_NE(value, "[]") << path;
    }
}

TEST(Path, members_cannot_imitate_elements_or_groups) {
    for (const char* key : {"", "~", "/", "=", "*after", "*order", "~1", "a/b=c*d~e", "record"}) {
        const std::string path = member_path("site", key);
        EXPECT_EQ(name_of(last_segment(path)), key);
        EXPECT_EQ(parent_of(path), "site");
        EXPECT_TRUE(is_path(path)) << path;
        EXPECT_FALSE(is_element(path));
    }
    for (const char* bad : {"", "/", "a//b", "=x", "site/=", "*order", "a/*after", "a/~5", "a/~", "a=b", "a/*x/b"})
        EXPECT_FALSE(is_path(bad)) << bad;
    EXPECT_FALSE(is_path(element_path("record", id(1)) + "/note"));
    EXPECT_TRUE(is_path(element_path("record", id(1))));
}

TEST(VersionsText, is_read_back_and_is_compact) {
    Machine office("Büro \"Nord\"", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { job.site.surfaces.at(0).tilt_deg = 36.0; });
    tablet.edit([](Job& job) { job.site.surfaces.at(0).tilt_deg = 38.0; });
    tablet.edit([](Job& job) { job.site.obstacles.pop_back(); });
    office.take(tablet);
    const std::string text = versions_to_json(office.versions);
    const Result<Versions> read = versions_from_json(text, "versions.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), office.versions);
    EXPECT_EQ(versions_to_json(read.value()), text);
    // Not more than twice what the job file takes.
    EXPECT_LT(text.size(), 2 * job_to_json(office.job).size());
}

TEST(VersionsText, what_is_wrong_is_refused_in_words) {
    Machine office("Office", sample_job());
    office.edit([](Job& job) { job.title = "A"; });
    const json good = json::parse(versions_to_json(office.versions));
    const auto refused = [&](const char* what, const std::function<void(json&)>& spoil) {
        json bad = good;
        spoil(bad);
        const Result<Versions> read = versions_from_json(bad.dump(), "versions.json");
        EXPECT_FALSE(read.ok()) << what;
        if (read.ok()) return;
        for (const Problem& p : read.problems())
            EXPECT_TRUE(!p.what.empty() && !p.remedy.empty()) << what;
    };
    refused("format", [](json& v) { v["format"] = "warmgable-job"; });
    refused("newer", [](json& v) { v["schema"] = 2; });
    refused("schema", [](json& v) { v["schema"] = -1; });
    refused("unknown", [](json& v) { v["more"] = 1; });
    refused("job", [](json& v) { v["job"] = "x"; });
    refused("other job", [](json& v) { v["job"] = id(99); });
    refused("no seats", [](json& v) { v.erase("seats"); });
    refused("seat id", [](json& v) { v["seats"][0][0] = "A B"; });
    refused("seat order", [](json& v) { std::swap(v["seats"][0], v["seats"][1]); });
    refused("huge count", [](json& v) { v["seats"][0][2] = std::uint64_t{1} << 60U; });
    refused("negative count", [](json& v) { v["seats"][0][2] = -1; });
    refused("edit beyond its machine", [](json& v) { v["edits"][0][1] = 1000; });
    refused("edit of no machine", [](json& v) { v["edits"][0][0] = 7; });
    refused("edit twice", [](json& v) { v["edits"].push_back(v["edits"][1]); });
    refused("time", [](json& v) { v["edits"][0][2] = 1e30; });
    refused("late", [](json& v) { v["edits"][0][2] = std::uint64_t{1} << 63U; });
    refused("no fields", [](json& v) { v["fields"] = json::object(); });
    refused("path", [](json& v) { v["fields"]["a//b"]["c"] = v["fields"][""]["title"]; });
    refused("two segments", [](json& v) { v["fields"][""]["a/b"] = v["fields"][""]["title"]; });
    refused("no values", [](json& v) { v["fields"][""]["title"] = json::array(); });
    refused("place", [](json& v) { v["fields"][""]["title"][0][0] = 5; });
    refused("one edit twice", [](json& v) { v["fields"][""]["title"].push_back(v["fields"][""]["title"][0]); });
    refused("three", [](json& v) { v["fields"][""]["title"][0].push_back(1); });
    refused("value of the job", [](json& v) { v["fields"][""]["title"][0][1] = 5; });
    refused("is there", [](json& v) { v["fields"]["choices"]["=" + id(40)][0][1] = false; });
    refused("entry", [](json& v) { v["fields"]["record"]["=" + id(60)][0][1]["id"] = id(61); });
    refused("group", [](json& v) { v["fields"]["site/location"]["*at"][0][1]["place_name"] = "x"; });
    refused("unknown group", [](json& v) { v["fields"]["site/location"]["*x"] = v["fields"][""]["title"]; });
    refused("deep", [](json& v) {
        json deep = 1;
        for (int i = 0; i < 60; ++i)
            deep = json::array({deep});
        v["fields"][""]["newer"] = json::array({json::array({0, deep})});
        v["fields"]["a/b/c/d/e/f/g/h"]["newer"] = json::array({json::array({0, deep})});
    });
    EXPECT_FALSE(versions_from_json("", "").ok());
    EXPECT_FALSE(versions_from_json("[]", "").ok());
}

TEST(VersionsText, damaged_text_gives_a_problem_or_a_job) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { std::swap(job.site.surfaces.at(0), job.site.surfaces.at(1)); });
    tablet.edit([](Job& job) { job.site.surfaces.erase(job.site.surfaces.begin() + 1); });
    office.take(tablet);
    const std::string text = versions_to_json(office.versions);
    std::mt19937_64 random(20270621);
    int accepted = 0;
    const int rounds = sweep::cases(300);
    for (int i = 0; i < rounds; ++i) {
        std::string bad = text;
        if (i % 3 == 0) {
            bad.resize(random() % bad.size());
        } else {
            for (std::uint64_t k = 1 + random() % 3; k > 0; --k) {
                char& at = bad[random() % bad.size()];
                at = i % 3 == 1 ? static_cast<char>('0' + random() % 10)
                                : static_cast<char>(static_cast<unsigned char>(at) ^ (1U << (random() % 8)));
            }
        }
        const Result<Versions> read = versions_from_json(bad, "versions.json");
        if (!read.ok()) continue;
        ++accepted;
        // What was accepted can be shown, joined and written.
        EXPECT_TRUE(job_of(read.value()).ok());
        (void)joined(read.value(), office.versions);
        (void)open_fields(read.value());
        EXPECT_EQ(versions_from_json(versions_to_json(read.value()), "").value(), read.value());
    }
    EXPECT_GT(accepted, 0);
    EXPECT_LT(accepted, rounds);
}

TEST(SameHouse, a_copy_by_hand_is_recognised) {
    const Job job = sample_job();
    Job copy = job;
    copy.id = id(900);
    copy.title = "Copy";
    copy.record.clear();
    copy.choices.clear();
    copy.chosen_choice_id.clear();
    EXPECT_TRUE(is_copy_by_hand(job, copy));
    EXPECT_FALSE(is_copy_by_hand(job, job));
    // With new ids for its elements.
    unsigned next = 901;
    for (Surface& surface : copy.site.surfaces) {
        surface.id = id(next++);
        for (KeepOut& zone : surface.keep_outs)
            zone.id = id(next++);
    }
    for (Obstacle& obstacle : copy.site.obstacles)
        obstacle.id = id(next++);
    for (CylinderSpot& spot : copy.site.spots)
        spot.id = id(next++);
    EXPECT_TRUE(is_copy_by_hand(job, copy));
    Job neighbour = copy;
    neighbour.client.street = "6 Alder Lane";
    EXPECT_FALSE(is_copy_by_hand(job, neighbour));
    Job steeper = copy;
    steeper.site.surfaces.at(0).tilt_deg += 1.0;
    EXPECT_FALSE(is_copy_by_hand(job, steeper));
    Job new_one;
    new_one.id = id(998);
    Job another;
    another.id = id(999);
    EXPECT_FALSE(is_copy_by_hand(new_one, another));
}

}  // namespace
}  // namespace wg::merge
