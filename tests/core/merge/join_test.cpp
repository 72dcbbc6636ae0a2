// Two and three machines that edit one job apart from each other, in words a firm would tell it.

#include <gtest/gtest.h>

#include "core/job/record_chain.h"
#include "tests/core/merge/merge_tools.h"

namespace wg::merge {
namespace {

using test::Machine;
using wg::test::id;
using wg::test::sample_job;

Reading reading_of(unsigned number, double value, const std::string& at) {
    Reading r;
    r.id = id(number);
    r.kind = ReadingKind::vacuum_level;
    r.taken_at = at;
    r.taken_by = "M. Reyes";
    r.instrument = "Vacuum gauge 2";
    r.value = value;
    return r;
}

TEST(Join, surveyor_office_and_technician_in_every_order) {
    const Job visit = sample_job();
    Machine surveyor("Tablet of J. Okafor", visit);
    Machine office("Office", visit);
    Machine technician("Phone of M. Reyes", visit);
    surveyor.edit([](Job& job) {
        job.site.obstacles.at(0).height_m = 2.4;
        job.site.surfaces.at(0).keep_outs.push_back(
            {id(200), "Ladder hook", KeepOutKind::reserved, wg::test::rectangle(1.0, 0.2, 1.4, 0.5), 0.1, ""});
        job.survey.roof_condition = "two tiles replaced";
    });
    office.edit([](Job& job) {
        job.price_list = "prices-2027-06";
        job.state = JobState::offered;
        job.choices.at(0).extras.push_back({id(210), "scaffold-week", 1.0, ""});
    });
    office.edit([](Job& job) { job.client.phone = "000 000 00 02"; });
    technician.edit([](Job& job) {
        job.record.push_back(chained(reading_of(220, 48.0, "2027-05-03T10:00:00+02:00"), job.record));
        job.record.push_back(chained(reading_of(221, 51.0, "2027-05-03T10:10:00+02:00"), job.record));
    });

    const Machine* all[] = {&surveyor, &office, &technician};
    std::string text;
    std::string versions;
    const int orders[6][3] = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};
    for (const auto& order : orders) {
        Machine desk = *all[order[0]];
        desk.take(*all[order[1]]);
        desk.take(*all[order[2]]);
        const Merged again = desk.take(*all[order[1]]);
        EXPECT_TRUE(again.taken.empty());
        EXPECT_TRUE(again.open.empty()) << test::all_open(again.open);
        if (text.empty()) {
            text = test::content_of(desk.job);
            versions = versions_to_json(desk.versions);
        }
        EXPECT_EQ(test::content_of(desk.job), text);
        EXPECT_EQ(versions_to_json(desk.versions), versions);
        EXPECT_EQ(desk.job.site.obstacles.at(0).height_m, 2.4);
        EXPECT_EQ(desk.job.site.surfaces.at(0).keep_outs.size(), 3U);
        EXPECT_EQ(desk.job.survey.roof_condition, "two tiles replaced");
        EXPECT_EQ(desk.job.price_list, "prices-2027-06");
        EXPECT_EQ(desk.job.client.phone, "000 000 00 02");
        EXPECT_EQ(desk.job.state, JobState::offered);
        EXPECT_EQ(desk.job.choices.at(0).extras.back().price_item, "scaffold-week");
        EXPECT_EQ(desk.job.record.size(), 6U);
        EXPECT_TRUE(check_chain(desk.job.record).whole());
    }
}

TEST(Join, what_the_other_brought_is_told_with_who_and_when) {
    Machine mine("Office", sample_job());
    Machine other("Tablet", sample_job());
    other.edit([](Job& job) {
        job.site.surfaces.at(0).tilt_deg = 38.0;
        job.site.obstacles.pop_back();
        job.choices.push_back(job.choices.at(0));
        Choice& fresh = job.choices.back();
        fresh.id = id(300);
        fresh.label = "Both roofs";
        fresh.placements.clear();
        fresh.route.clear();
        fresh.extras.clear();
        std::swap(job.choices.at(0).route.at(0), job.choices.at(0).route.at(1));
    });
    const Merged merged = mine.take(other);
    ASSERT_EQ(merged.taken.size(), 4U);
    EXPECT_EQ(merged.taken[0].where, "choice \"South roof, cellar\", route, order");
    EXPECT_EQ(merged.taken[1].where, "choice \"Both roofs\"");
    EXPECT_EQ(merged.taken[1].kind, Change::Kind::added);
    EXPECT_EQ(merged.taken[2].where, "obstacle \"Aerial\"");
    EXPECT_EQ(merged.taken[2].kind, Change::Kind::removed);
    EXPECT_EQ(merged.taken[3].where, "surface \"South roof\", tilt");
    EXPECT_EQ(merged.taken[3].before, "35 deg");
    EXPECT_EQ(merged.taken[3].after, "38 deg");
    EXPECT_EQ(merged.taken[3].seat_name, "Tablet");
    EXPECT_EQ(merged.taken[3].at.unix_s, 1800000000);
    EXPECT_TRUE(merged.open.empty());
    test::expect_same(mine, other);
}

TEST(Join, both_sides_are_shown_where_both_changed_until_someone_decides) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { job.site.surfaces.at(0).tilt_deg = 36.0; });
    tablet.edit([](Job& job) { job.notes = "Ring first"; });
    // The tablet's clock is a year behind: that decides nothing.
    tablet.clock_s -= 366 * 86400;
    tablet.edit([](Job& job) { job.site.surfaces.at(0).tilt_deg = 38.0; });
    const Merged merged = office.take(tablet);
    ASSERT_EQ(merged.open.size(), 1U) << test::all_open(merged.open);
    EXPECT_EQ(merged.open[0].kind, OpenKind::field);
    EXPECT_EQ(text_of(merged.open[0]),
              "Surface \"South roof\", tilt: 38 deg (Tablet, 2026-01-14T08:01:00Z) or 36 deg (Office, "
              "2027-01-15T08:00:00Z)");
    // Stands what was made by who had seen more edits.
    EXPECT_EQ(office.job.site.surfaces.at(0).tilt_deg, 38.0);
    tablet.take(office);
    test::expect_same(office, tablet);
    // Another edit leaves it open.
    tablet.edit([](Job& job) { job.notes = "Ring twice"; });
    EXPECT_EQ(open_fields(tablet.versions).size(), 1U);
    office.decide(merged.open[0].path, 1);
    EXPECT_EQ(office.job.site.surfaces.at(0).tilt_deg, 36.0);
    EXPECT_TRUE(open_fields(office.versions).empty());
    tablet.take(office);
    EXPECT_TRUE(open_fields(tablet.versions).empty());
    EXPECT_EQ(tablet.job.site.surfaces.at(0).tilt_deg, 36.0);
    EXPECT_EQ(tablet.job.notes, "Ring twice");
    // Decided means decided: copies from before bring nothing back.
    Machine late("Late", sample_job());
    late.take(office);
    EXPECT_TRUE(office.take(late).open.empty());
    EXPECT_FALSE(choose(office.versions, merged.open[0].path, 0, office.seat, {1}).ok());
}

TEST(Join, a_third_answer_decides_too) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { job.title = "A"; });
    tablet.edit([](Job& job) { job.title = "B"; });
    EXPECT_EQ(office.take(tablet).open.size(), 1U);
    office.edit([](Job& job) { job.title = "A and B"; });
    EXPECT_TRUE(open_fields(office.versions).empty());
    tablet.take(office);
    EXPECT_EQ(tablet.job.title, "A and B");
    test::expect_same(office, tablet);
}

TEST(Join, the_same_change_on_both_sides_is_not_open) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    for (Machine* machine : {&office, &tablet}) {
        machine->edit([](Job& job) {
            job.site.surfaces.at(0).tilt_deg = 38.0;
            job.site.obstacles.pop_back();
        });
    }
    EXPECT_TRUE(office.take(tablet).open.empty());
    EXPECT_EQ(office.job.site.obstacles.size(), 3U);
}

TEST(Join, what_was_removed_on_one_side_and_not_touched_on_the_other_is_gone) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { job.site.surfaces.erase(job.site.surfaces.begin() + 1); });
    tablet.edit([](Job& job) { job.site.surfaces.at(0).tilt_deg = 36.0; });
    EXPECT_TRUE(office.take(tablet).open.empty());
    EXPECT_EQ(office.job.site.surfaces.size(), 3U);
    tablet.take(office);
    test::expect_same(office, tablet);
}

TEST(Join, removed_here_and_changed_there_stays_whole_and_is_open) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { job.site.surfaces.erase(job.site.surfaces.begin() + 1); });
    tablet.edit([](Job& job) { job.site.surfaces.at(1).rafters.spacing_m = 0.8; });
    const Merged merged = office.take(tablet);
    ASSERT_EQ(merged.open.size(), 1U) << test::all_open(merged.open);
    EXPECT_EQ(merged.open[0].kind, OpenKind::removed_changed);
    EXPECT_EQ(text_of(merged.open[0]),
              "Surface \"North roof\": changed (Tablet, 2027-01-15T08:00:00Z) or removed (Office, "
              "2027-01-15T08:00:00Z)");
    // Every field of it is there, the changed one as changed, at the place where it stood.
    Job expected = sample_job();
    expected.site.surfaces.at(1).rafters.spacing_m = 0.8;
    EXPECT_EQ(test::content_of(office.job), test::content_of(expected));
    tablet.take(office);
    test::expect_same(office, tablet);

    Machine keeps = office;
    keeps.seat = test::seat("Keeps");
    keeps.decide(merged.open[0].path, 0);
    EXPECT_TRUE(open_fields(keeps.versions).empty());
    EXPECT_EQ(keeps.job.site.surfaces.size(), 4U);
    Machine drops = office;
    drops.seat = test::seat("Drops");
    drops.decide(merged.open[0].path, 1);
    EXPECT_TRUE(open_fields(drops.versions).empty());
    EXPECT_EQ(drops.job.site.surfaces.size(), 3U);
    // Whoever works on at it has not answered the question.
    Machine works("Works", sample_job());
    works.take(office);
    works.edit([](Job& job) { job.site.surfaces.at(1).rafters.spacing_m = 0.9; });
    EXPECT_EQ(open_fields(works.versions).size(), 1U);
}

TEST(Join, a_removal_that_knew_of_the_change_is_not_open) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    tablet.edit([](Job& job) { job.site.obstacles.at(1).height_m = 12.0; });
    office.take(tablet);
    office.edit([](Job& job) { job.site.obstacles.erase(job.site.obstacles.begin() + 1); });
    EXPECT_TRUE(tablet.take(office).open.empty());
    EXPECT_EQ(tablet.job.site.obstacles.size(), 3U);
}

TEST(Join, what_comes_back_comes_back_as_it_is_now) {
    Machine office("Office", sample_job());
    const Job before = office.job;
    office.edit([](Job& job) { job.site.surfaces.erase(job.site.surfaces.begin() + 1); });
    office.edit([&](Job& job) {
        job.site.surfaces = before.site.surfaces;
        job.site.surfaces.at(1).tilt_deg = 33.0;
        job.site.surfaces.at(1).spare_load_kn_m2 = 1.5;
        std::swap(job.site.surfaces.at(1), job.site.surfaces.at(3));
    });
    Machine tablet("Tablet", sample_job());
    tablet.edit([](Job& job) { job.site.surfaces.at(1).label = "Back roof"; });
    EXPECT_TRUE(office.take(tablet).open.empty());
    EXPECT_EQ(office.job.site.surfaces.at(3).label, "Back roof");
    EXPECT_EQ(office.job.site.surfaces.at(3).tilt_deg, 33.0);
}

TEST(Join, what_is_named_stays_and_is_open) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    // The office gives up the terrace and the choice on it; the tablet moves a collector of another choice there.
    office.edit([](Job& job) {
        job.choices.pop_back();
        job.site.surfaces.pop_back();
        job.choices.at(0).spot_id = job.site.spots.at(1).id;
        job.site.spots.erase(job.site.spots.begin());
    });
    tablet.edit([](Job& job) {
        Placement& moved = job.choices.at(0).placements.at(1);
        moved.surface_id = job.site.surfaces.at(3).id;
        moved.x_m = 1.5;
        moved.y_m = 1.0;
        job.chosen_choice_id = job.choices.at(1).id;
    });
    const Merged merged = office.take(tablet);
    const std::string told = test::all_open(merged.open);
    ASSERT_EQ(merged.open.size(), 3U) << told;
    EXPECT_EQ(merged.open[0].where, "choice \"Terrace frame, cellar\"");
    EXPECT_EQ(merged.open[0].names, "chosen choice");
    EXPECT_EQ(merged.open[1].where, "cylinder spot \"Cellar\"");
    EXPECT_EQ(merged.open[1].names, "choice \"Terrace frame, cellar\", spot");
    EXPECT_EQ(merged.open[2].where, "surface \"Terrace\"");
    EXPECT_EQ(
        merged.open[2].names,
        "choice \"South roof, cellar\", collector \"B\", place; choice \"Terrace frame, cellar\", collector \"C\", "
        "place");
    tablet.take(office);
    test::expect_same(office, tablet);
    // It cannot be dropped while it is named; without what names it, it goes by itself.
    EXPECT_FALSE(choose(office.versions, merged.open[2].path, 1, office.seat, {1}).ok());
    office.edit([](Job& job) {
        job.choices.at(0).placements.pop_back();
        job.chosen_choice_id = job.choices.at(0).id;
        job.choices.pop_back();
        job.site.surfaces.pop_back();
        job.site.spots.erase(job.site.spots.begin());
    });
    EXPECT_TRUE(open_fields(office.versions).empty()) << test::all_open(open_fields(office.versions));
    EXPECT_TRUE(tablet.take(office).open.empty());
    test::expect_same(office, tablet);
}

TEST(Join, what_was_named_and_is_left_stays_when_nothing_names_it_any_more) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { job.site.spots.pop_back(); });
    tablet.edit([](Job& job) { job.choices.at(0).spot_id = job.site.spots.at(1).id; });
    EXPECT_EQ(office.take(tablet).open.at(0).kind, OpenKind::removed_named);
    // The choice goes back to the cellar; the loft stays on the sketch, and its removal stays open.
    office.edit([](Job& job) { job.choices.at(0).spot_id = job.site.spots.at(0).id; });
    EXPECT_EQ(office.job.site.spots.size(), 2U);
    const std::vector<Open> open = open_fields(office.versions);
    ASSERT_EQ(open.size(), 1U) << test::all_open(open);
    EXPECT_EQ(open[0].kind, OpenKind::removed_changed);
    EXPECT_EQ(open[0].where, "cylinder spot \"Loft\"");
    tablet.take(office);
    test::expect_same(office, tablet);
    tablet.decide(open[0].path, 1);
    EXPECT_EQ(tablet.job.site.spots.size(), 1U);
}

TEST(Join, a_link_to_an_edge_that_is_gone_is_left_out_and_open) {
    Job from = sample_job();
    Building house;
    house.id = id(350);
    unsigned next = 351;
    for (const Point2 at : wg::test::rectangle(0, 0, 10, 8))
        house.edges.push_back({id(next++), at, false, ""});
    from.site.buildings = {house};
    from.site.surfaces.at(1).footprint_edge_id = house.edges.at(2).id;
    Machine office("Office", from);
    Machine tablet("Tablet", from);
    office.edit([](Job& job) {
        job.site.buildings.clear();
        job.site.surfaces.erase(job.site.surfaces.begin() + 1);
    });
    tablet.edit([](Job& job) { job.site.surfaces.at(1).tilt_deg = 33.0; });
    const Merged merged = office.take(tablet);
    ASSERT_EQ(merged.open.size(), 2U) << test::all_open(merged.open);
    EXPECT_EQ(merged.open[0].kind, OpenKind::removed_changed);
    EXPECT_EQ(merged.open[1].kind, OpenKind::link_lost);
    EXPECT_EQ(merged.open[1].where, "surface \"North roof\", footprint edge");
    EXPECT_EQ(office.job.site.surfaces.at(1).tilt_deg, 33.0);
    EXPECT_TRUE(office.job.site.surfaces.at(1).footprint_edge_id.empty());
    tablet.take(office);
    test::expect_same(office, tablet);
    tablet.decide(merged.open[1].path, 0);
    EXPECT_EQ(open_fields(tablet.versions).size(), 1U);
}

TEST(Join, a_place_a_shape_and_a_range_are_one_field) {
    Job from = sample_job();
    from.site.rooms = {{id(400), "Bath", wg::test::rectangle(0, 0, 3, 2), 3.0, 5.4, true, ""}};
    Machine office("Office", from);
    Machine tablet("Tablet", from);
    office.edit([](Job& job) {
        job.choices.at(0).placements.at(0).x_m = 3.0;
        job.site.rooms.at(0).from_z_m = 5.0;
        job.site.obstacles.at(1).crown_base_m = 10.0;
    });
    tablet.edit([](Job& job) {
        job.choices.at(0).placements.at(0).y_m = 2.0;
        job.site.rooms.at(0).to_z_m = 4.0;
        job.site.obstacles.at(1).height_m = 4.0;
        job.choices.at(0).placements.at(0).label = "A1";
    });
    const Merged merged = office.take(tablet);
    ASSERT_EQ(merged.open.size(), 3U) << test::all_open(merged.open);
    EXPECT_EQ(merged.open[0].where, "choice \"South roof, cellar\", collector \"A1\", place");
    EXPECT_EQ(merged.open[0].sides.at(0).words, "surface \"South roof\", x 2.2 m, y 2 m");
    EXPECT_EQ(merged.open[0].sides.at(1).words, "surface \"South roof\", x 3 m, y 1.4 m");
    EXPECT_EQ(office.job.choices.at(0).placements.at(0).label, "A1");
    EXPECT_EQ(office.job.choices.at(0).placements.at(0).x_m, 2.2);
    EXPECT_EQ(office.job.choices.at(0).placements.at(0).y_m, 2.0);
    tablet.take(office);
    test::expect_same(office, tablet);
    for (const Open& open : merged.open)
        office.decide(open.path, 1);
    EXPECT_EQ(office.job.choices.at(0).placements.at(0).x_m, 3.0);
    EXPECT_EQ(office.job.site.rooms.at(0).from_z_m, 5.0);
    EXPECT_EQ(office.job.site.obstacles.at(1).crown_base_m, 10.0);
}

TEST(Join, the_first_word_on_something_leaves_its_other_members_alone) {
    // Water supply and hill are left out of the file until one of their members is told.
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) {
        job.site.water.hardness_mmol_l = 3.1;
        job.site.water.highest_tap_m = 6.0;
        job.demand.control.set_back_k = 4.0;
    });
    tablet.edit([](Job& job) {
        job.site.water.static_pressure_bar = 4.0;
        job.demand.control.always_below_c = 42.0;
    });
    EXPECT_TRUE(office.take(tablet).open.empty());
    EXPECT_EQ(office.job.site.water.highest_tap_m, 6.0);
    EXPECT_EQ(office.job.site.water.static_pressure_bar, 4.0);
    EXPECT_EQ(office.job.demand.control.set_back_k, 4.0);
    EXPECT_EQ(office.job.demand.control.always_below_c, 42.0);
}

TEST(Join, orders_merge_with_additions_and_are_open_when_they_contradict) {
    Machine office("Office", sample_job());
    Machine tablet("Tablet", sample_job());
    office.edit([](Job& job) { std::swap(job.site.surfaces.at(0), job.site.surfaces.at(1)); });
    tablet.edit([](Job& job) {
        Surface garage = job.site.surfaces.at(0);
        garage.id = id(500);
        garage.label = "Garage";
        garage.keep_outs.clear();
        job.site.surfaces.insert(job.site.surfaces.begin() + 1, garage);
    });
    Machine third("Third", sample_job());
    third.edit([](Job& job) { std::swap(job.site.surfaces.at(0), job.site.surfaces.at(3)); });
    EXPECT_TRUE(office.take(tablet).open.empty());
    std::vector<std::string> labels;
    for (const Surface& surface : office.job.site.surfaces)
        labels.push_back(surface.label);
    EXPECT_EQ(labels, (std::vector<std::string>{"North roof", "South roof", "Garage", "West wall", "Terrace"}));
    const Merged merged = office.take(third);
    ASSERT_EQ(merged.open.size(), 1U) << test::all_open(merged.open);
    EXPECT_EQ(merged.open[0].kind, OpenKind::order);
    EXPECT_EQ(merged.open[0].where, "surfaces, order");
    EXPECT_EQ(merged.open[0].sides.at(1).words, "North roof; South roof; West wall; Terrace");
    office.decide(merged.open[0].path, 1);
    EXPECT_TRUE(open_fields(office.versions).empty());
    EXPECT_EQ(office.job.site.surfaces.at(0).label, "North roof");
    EXPECT_EQ(office.job.site.surfaces.size(), 5U);
}

TEST(Join, fields_of_newer_programs_merge_too) {
    const auto list = [](int a, int b) {
        return R"({"newer_empty":[],"newer_list":[{"a":)" + std::to_string(a) + R"(,"b":)" + std::to_string(b) +
               R"(,"id":")" + id(600) + R"("}]})";
    };
    Job from = sample_job();
    from.extra_json = R"({"newer":{"colour":"red","size":1},"odd/=*~key":1})";
    from.site.surfaces.at(0).extra_json = list(1, 2);
    Machine office("Office", from);
    Machine tablet("Tablet", from);
    office.edit([&](Job& job) {
        job.extra_json = R"({"newer":{"colour":"blue","size":1},"odd/=*~key":2})";
        job.site.surfaces.at(0).extra_json = list(7, 2);
    });
    tablet.edit([&](Job& job) {
        job.extra_json = R"({"more":null,"newer":{"colour":"red","size":3},"odd/=*~key":1})";
        job.site.surfaces.at(0).extra_json = list(1, 8);
    });
    EXPECT_TRUE(office.take(tablet).open.empty());
    EXPECT_EQ(office.job.extra_json, R"({"more":null,"newer":{"colour":"blue","size":3},"odd/=*~key":2})");
    EXPECT_EQ(office.job.site.surfaces.at(0).extra_json, list(7, 8));
}

TEST(Join, two_jobs_and_two_machines_under_one_id_are_refused) {
    Machine office("Office", sample_job());
    Job other = sample_job();
    other.id = id(700);
    Machine elsewhere("Elsewhere", other);
    EXPECT_FALSE(join(office.job, office.versions, elsewhere.job, elsewhere.versions).ok());
    // A data folder that was copied: both go on under one id.
    Machine copied = office;
    office.edit([](Job& job) { job.title = "A"; });
    copied.edit([](Job& job) { job.title = "B"; });
    const Result<Merged> refused = join(office.job, office.versions, copied.job, copied.versions);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.problems().at(0).remedy.find("new id"), std::string::npos);
}

}  // namespace
}  // namespace wg::merge
