#include <gtest/gtest.h>

#include <algorithm>

#include "core/job/codec.h"
#include "core/job/record_chain.h"
#include "core/job/words.h"
#include "tests/core/job/sample_job.h"

namespace wg {
namespace {

Reading entry(int number, double value) {
    Reading r;
    const std::string digits = std::to_string(100000000000 + number);
    r.id = "00000000-0000-4000-8000-" + digits;
    r.kind = ReadingKind::pressure_hold_start;
    r.taken_at = "2027-06-21T12:30:00+02:00";
    r.taken_by = "Ada Fenn";
    r.instrument = "Digital gauge 4";
    r.calibrated_on = "2027-01-15";
    r.value = value;
    r.second_value = 21.5;
    r.indoors_c = 19.5;
    r.plate = PlateState::in_shade;
    r.subject = "dry nitrogen";
    r.plan_revision = 7;
    r.plan_mark = "3FA9-07B2";
    return r;
}

std::vector<Reading> five() {
    std::vector<Reading> record;
    for (int i = 0; i < 5; ++i)
        record.push_back(chained(entry(i, 25.0 + 0.1 * i), record));
    return record;
}

TEST(RecordChain, a_record_as_entered_is_whole) {
    const auto record = five();
    const ChainReport report = check_chain(record);
    EXPECT_TRUE(report.whole());
    EXPECT_EQ(report.chained, 5U);
    EXPECT_EQ(report.head, record.back().sha256);
    EXPECT_EQ(report.ends, std::vector<std::string>{report.head});
    EXPECT_TRUE(record.front().previous_sha256.empty());
}

TEST(RecordChain, every_altered_member_shows_at_its_entry) {
    const std::vector<void (*)(Reading&)> ways = {
        [](Reading& r) { r.value += 0.01; },
        [](Reading& r) { r.second_value.reset(); },
        [](Reading& r) { r.indoors_c = 20.0; },
        [](Reading& r) { r.taken_at = "2027-06-21T12:30:01+02:00"; },
        [](Reading& r) { r.taken_by = "Ada Fenm"; },
        [](Reading& r) { r.instrument += ' '; },
        [](Reading& r) { r.calibrated_on = "2027-01-16"; },
        [](Reading& r) { r.kind = ReadingKind::pressure_hold_end; },
        [](Reading& r) { r.note = "x"; },
        [](Reading& r) { r.subject = "air"; },
        [](Reading& r) { r.plate = PlateState::in_sun; },
        [](Reading& r) { r.occasion = Occasion::service; },
        [](Reading& r) { r.plan_revision = 8; },
        [](Reading& r) { r.plan_mark = "3FA9-07B3"; },
        [](Reading& r) { r.attachment_sha256 = std::string(64, 'a'); },
        [](Reading& r) { r.corrects_id = "00000000-0000-4000-8000-100000000000"; },
        [](Reading& r) { r.id[0] = '1'; },
        [](Reading& r) { r.extra_json = R"({"newer": 1})"; },
    };
    for (std::size_t way = 0; way < ways.size(); ++way) {
        auto record = five();
        ways[way](record[2]);
        const ChainReport report = check_chain(record);
        ASSERT_EQ(report.breaks.size(), 1U) << "way " << way;
        EXPECT_EQ(report.breaks[0].index, 2U);
        // Who reckons the hash anew breaks the link of the entry that follows.
        record[2].sha256 = reading_sha256(record[2]);
        const ChainReport forged = check_chain(record);
        ASSERT_EQ(forged.breaks.size(), 1U) << "way " << way;
        EXPECT_EQ(forged.breaks[0].index, 3U);
    }
}

TEST(RecordChain, entries_taken_out_put_in_or_swapped_show) {
    auto out = five();
    out.erase(out.begin() + 2);
    EXPECT_EQ(check_chain(out).breaks.size(), 1U);
    auto first_out = five();
    first_out.erase(first_out.begin());
    EXPECT_FALSE(check_chain(first_out).whole());
    auto swapped = five();
    std::swap(swapped[1], swapped[2]);
    EXPECT_FALSE(check_chain(swapped).whole());
    auto put_in = five();
    put_in.insert(put_in.begin() + 2, entry(9, 25.0));
    EXPECT_EQ(check_chain(put_in).breaks.at(0).index, 2U);
}

TEST(RecordChain, older_entries_go_on_as_a_chain_and_copies_may_part) {
    std::vector<Reading> record = {entry(0, 25.0), entry(1, 25.0)};
    record.push_back(chained(entry(2, 25.0), record));
    record.push_back(chained(entry(3, 25.0), record));
    EXPECT_TRUE(check_chain(record).whole());
    EXPECT_EQ(check_chain(record).older, 2U);
    // Two machines wrote on from the same entry; put together both stand, and both ends are told.
    record.push_back(chained(entry(4, 25.0), {record.begin(), record.begin() + 3}));
    const ChainReport parted = check_chain(record);
    EXPECT_TRUE(parted.whole());
    EXPECT_EQ(parted.ends, (std::vector<std::string>{record[3].sha256, record[4].sha256}));
    // Writing on after that ends one of them, never both.
    record.push_back(chained(entry(5, 25.0), record));
    EXPECT_EQ(check_chain(record).ends, (std::vector<std::string>{record[3].sha256, record[5].sha256}));
}

TEST(RecordChain, an_entry_put_in_beside_the_chain_is_an_end_that_no_signed_print_has) {
    const auto signed_then = check_chain(five()).ends;
    for (std::size_t behind = 0; behind <= 5; ++behind) {
        auto record = five();
        Reading put_in = entry(9, 25.0);
        if (behind > 0) put_in.previous_sha256 = record[behind - 1].sha256;
        put_in.sha256 = reading_sha256(put_in);
        const auto at = record.begin() + static_cast<std::ptrdiff_t>(behind);
        record.insert(at, put_in);
        const ChainReport report = check_chain(record);
        EXPECT_TRUE(report.whole()) << behind;
        EXPECT_NE(report.ends, signed_then) << behind;
        EXPECT_EQ(report.ends.size(), behind == 5 ? 1U : 2U) << behind;
    }
    // Two technicians who both made the first entry: two beginnings, two ends, no break.
    std::vector<Reading> both = five();
    const std::vector<Reading> none;
    both.push_back(chained(entry(10, 25.0), none));
    EXPECT_TRUE(check_chain(both).whole());
    EXPECT_EQ(check_chain(both).ends.size(), 2U);
}

TEST(RecordChain, the_hash_survives_the_file_and_a_byte_in_the_file_shows) {
    Job job = test::sample_job();
    job.record = five();
    const std::string text = job_to_json(job);
    Result<Job> read = job_from_json(text, "job.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value(), job);
    EXPECT_TRUE(check_chain(read.value().record).whole());
    // Every digit of a reading's figures, one at a time.
    std::size_t tried = 0;
    for (std::size_t at = text.find("\"record\""); at < text.size(); ++at) {
        if (text.compare(at, 9, "\"value\": ") != 0) continue;
        std::string altered = text;
        char& digit = altered[at + 9];
        digit = digit == '2' ? '3' : '2';
        Result<Job> other = job_from_json(altered, "job.json");
        ASSERT_TRUE(other.ok());
        EXPECT_FALSE(check_chain(other.value().record).whole());
        ++tried;
    }
    EXPECT_EQ(tried, 5U);
}

TEST(PlanMark, changes_with_the_plan_and_with_nothing_else) {
    const Job job = test::sample_job();
    const std::string mark = plan_mark(job);
    EXPECT_EQ(mark.size(), 9U);
    EXPECT_EQ(mark[4], '-');
    Job after = job;
    after.record = five();
    after.notes += "x";
    after.revision += 3;
    after.state = JobState::fitted;
    after.photographs.clear();
    after.aftercare.warranty_months = 24.0;
    EXPECT_EQ(plan_mark(after), mark);
    Job moved = job;
    moved.choices.at(0).placements.at(0).x_m += 0.001;
    EXPECT_NE(plan_mark(moved), mark);
    Job hotter = job;
    hotter.demand.set_point_c += 1.0;
    EXPECT_NE(plan_mark(hotter), mark);
    Job elsewhere = job;
    elsewhere.survey.access += ".";
    EXPECT_NE(plan_mark(elsewhere), mark);
    Job limited = job;
    limited.limits.most_tap_c = 45.0;
    EXPECT_NE(plan_mark(limited), mark);
}

TEST(RecordFields, an_unused_field_is_left_out_and_a_wrong_one_refused) {
    Job job = test::sample_job();
    Reading plain = entry(0, 25.0);
    plain = {};
    plain.id = "00000000-0000-4000-8000-100000000000";
    plain.taken_at = "2027-06-21T12:30:00Z";
    job.record = {plain};
    job.limits = {};
    job.aftercare = {};
    const std::string text = job_to_json(job);
    for (const char* key :
         {"\"limits\"", "\"occasion\"", "\"indoors_c\"", "\"plan_mark\"", "\"sha256\": \"\"", "\"subject\""})
        EXPECT_EQ(text.find(key), std::string::npos) << key;
    job.limits.most_trip_ms = 5000.0;
    EXPECT_FALSE(validate(job).empty());
    job.limits.most_trip_ms = 300.0;
    EXPECT_TRUE(validate(job).empty());
    job.record[0].calibrated_on = "21 June";
    EXPECT_FALSE(validate(job).empty());
    job.record[0].calibrated_on.clear();
    job.record[0].sha256 = "abc";
    EXPECT_FALSE(validate(job).empty());
}

}  // namespace
}  // namespace wg
