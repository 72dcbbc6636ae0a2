#include "core/rating/table.h"

#include <gtest/gtest.h>

#include "core/rating/report.h"
#include "tests/core/rating/fixture.h"

namespace {

using namespace wg;
using rating::air_14;
using rating::air_2;
using rating::air_7;
using rating_test::item;

const std::vector<TappingCycle> cycles{TappingCycle::m, TappingCycle::l, TappingCycle::xl};

rating::Item demonstration_set() {
    return item("rill-18", "marl-18", 2, "copse-250");
}

TEST(RatingTable, is_the_single_tests_to_the_bit_whoever_computed_them) {
    const rating::Item set = demonstration_set();
    const auto table = rating::rate_table(set, {}, {}, cycles, {air_2, air_7, air_14}).value();
    ASSERT_EQ(table.cells.size(), 9U);
    for (std::size_t i = 0; i < table.cells.size(); ++i) {
        const rating::Cell& cell = table.cells[i];
        EXPECT_EQ(cell.cycle, cycles[i % 3]);
        rating::Test test;
        test.cycle = cell.cycle;
        const rating::Rating alone = rating_test::rated(set, cell.air, test);
        EXPECT_EQ(cell.rating.cop_dhw, alone.cop_dhw);
        EXPECT_EQ(cell.rating.heat_up_h, alone.heat_up_h);
        EXPECT_EQ(cell.rating.standby_w, alone.standby_w);
        EXPECT_EQ(cell.rating.v40_l, alone.v40_l);
    }
}

TEST(RatingTable, course_of_the_heating_up_adds_up_to_its_sums) {
    const auto table = rating::rate_table(demonstration_set(), {}, {}, cycles, {air_7}).value();
    const rating::Rating& r = table.cells.front().rating;
    ASSERT_GT(r.curve.size(), 100U);
    EXPECT_TRUE(table.cells[1].rating.curve.empty()) << "the same for all cycles";
    EXPECT_EQ(r.curve.front().water_c, 10.0);
    EXPECT_NEAR(r.curve.back().hours, r.heat_up_h, 1e-9);
    double heat_kwh = 0.0;
    double electricity_kwh = 0.0;
    for (std::size_t i = 1; i < r.curve.size(); ++i) {
        const double hours = r.curve[i].hours - r.curve[i - 1].hours;
        EXPECT_GT(hours, 0.0);
        EXPECT_GE(r.curve[i].top_c + 1e-9, r.curve[i].water_c);
        heat_kwh += r.curve[i].heat_w * hours / 1000.0;
        electricity_kwh += r.curve[i].electric_w * hours / 1000.0;
    }
    EXPECT_NEAR(heat_kwh, r.heat_up_heat_kwh, 1e-9 * heat_kwh);
    EXPECT_NEAR(electricity_kwh, r.heat_up_electricity_kwh, 1e-9 * electricity_kwh);
}

TEST(RatingTable, stops_when_told_and_refuses_what_makes_no_sense) {
    double last = -1.0;
    const auto watch = [&last](double share) {
        EXPECT_GE(share, last);
        last = share;
        return false;
    };
    const auto stopped = rating::rate_table(demonstration_set(), {}, {}, cycles, {air_7}, watch).value();
    EXPECT_TRUE(stopped.stopped);
    EXPECT_TRUE(stopped.cells.empty());
    EXPECT_FALSE(rating::rate_table(demonstration_set(), {}, {}, {}, {air_7}).ok());
    EXPECT_FALSE(rating::rate_table(demonstration_set(), {}, {}, cycles, {}).ok());
    const auto bad_air = rating::rate_table(demonstration_set(), {}, {}, cycles, {air_7, {20.0, 22.0}});
    ASSERT_FALSE(bad_air.ok());
    EXPECT_NE(bad_air.problems().front().where.find("wet_c"), std::string::npos);
}

TEST(RatingReport, tells_every_cell_that_it_is_invented_and_what_is_assumed) {
    const rating::Item set = demonstration_set();
    const auto table = rating::rate_table(set, {}, {}, cycles, {air_7, air_14}).value();
    const std::string text = rating::text_of(set, {}, {}, table);
    for (const char* words : {"INVENTED", "Air speed", "assumed", "7 (6)", "14 (13)", "XL", "Closure"})
        EXPECT_NE(text.find(words), std::string::npos) << words;
    const std::string json = rating::to_json(set, {}, {}, table, nullptr);
    EXPECT_NE(json.find("\"cop_dhw\""), std::string::npos);
    EXPECT_EQ(json.find("\"fit\""), std::string::npos);
    EXPECT_EQ(json, rating::to_json(set, {}, {}, table, nullptr));
}

TEST(RatingReport, a_test_that_does_not_finish_says_why_instead_of_figures) {
    rating::Item hot = demonstration_set();
    hot.block.condensing_max_c = 45.0;
    const auto table = rating::rate_table(hot, {}, {}, {TappingCycle::l}, {air_7}).value();
    ASSERT_FALSE(table.cells.front().rating.completed);
    EXPECT_FALSE(table.cells.front().rating.curve.empty()) << "as far as it got";
    const std::string text = rating::text_of(hot, {}, {}, table);
    EXPECT_NE(text.find("not finished"), std::string::npos);
    EXPECT_NE(text.find(table.cells.front().rating.why_not), std::string::npos);
    EXPECT_NE(rating::to_json(hot, {}, {}, table, nullptr).find("\"why_not\""), std::string::npos);
}

}  // namespace
