#include "core/pipework/lagging.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/pipework/run.h"
#include "core/pipework/tube.h"
#include "tests/reference/heat_values.h"

namespace wg::pipework {
namespace lagging_test {
namespace {

Input indoors_and_out(double room_c) {
    Input in;
    in.collector_connection = {0, 0, 6};
    in.route = {{"a", RoutePointKind::roof_passage, {0, 0, 4}, ""}};
    in.block_connection = {0, 0, -1};
    in.block.suction_od_mm = in.collector.suction_od_mm = 12.7;
    in.air.room_c = room_c;
    return in;
}

PointLines point(double te, double outdoor_c, double weight) {
    PointLines p;
    p.known = true;
    p.at = {te, 45.0, 1500.0, outdoor_c, weight};
    p.small_inlet_c = te + 6.0;
    p.liquid_c = 42.0;
    return p;
}

TEST(LineLagging, goes_by_the_rooms_own_air) {
    const Outcome cool = run_of(indoors_and_out(12.0)), warm = run_of(indoors_and_out(28.0));
    EXPECT_DOUBLE_EQ(cool.run.lagging.outdoor_m, 2.0);
    EXPECT_DOUBLE_EQ(cool.run.lagging.indoor_m, 5.0);
    EXPECT_LE(cool.run.lagging.suction.indoor_mm, warm.run.lagging.suction.indoor_mm);
    for (const Outcome* o : {&cool, &warm}) {
        const LineLagging& line = o->run.lagging.suction;
        const double room = o == &cool ? 12.0 : 28.0;
        EXPECT_GE(face_temperature_c(12.7, line.indoor_mm, line.tube_indoor_c, room, Lagging{}),
                  dew_point_c(room, 0.75));
        EXPECT_EQ(line.wall_mm, std::max(line.indoor_mm, line.outdoor_mm));
    }
}

// ISO 12241:2008 takes these steps: linear resistances of layer and surface, face temperature by their shares.
// 12.7 mm tube at -10 deg C in 20 deg C and 70 %: dew point by PsychroLib's row, thickness by bisection here.
TEST(LineLagging, thickness_brackets_that_of_a_bisection_with_the_dew_point_of_psychrolib) {
    const Lagging foam;
    for (const auto& row : outside::heat_values()["moist_air"]) {
        const double air = row[0], dew = row[3];
        if (air < 10.0 || dew < 1.0 || air > 30.0) continue;
        const double humidity = row[2].get<double>() / (611.2 * std::exp(17.62 * air / (243.12 + air)));
        const double tube = -10.0;
        double low = 0.1, high = 200.0;
        for (int i = 0; i < 60; ++i) {
            const double mid = 0.5 * (low + high);
            const double outer = 0.0127 + 2e-3 * mid;
            const double layer = std::log(outer / 0.0127) / (2.0 * 3.14159265358979 * foam.conductivity_w_mk);
            const double surface = 1.0 / (foam.surface_w_m2k * 3.14159265358979 * outer);
            const double face = air - (air - tube) * surface / (layer + surface);
            (face < dew ? low : high) = mid;
        }
        const double wall = lagging_against_dew_mm(12.7, tube, air, humidity, foam);
        if (high < 31.0) {
            EXPECT_GE(wall, high - 0.3) << row;  // 0.08 K between the two dew points
        } else {
            EXPECT_EQ(wall, 32.0) << row;
        }
        double thinner = 0.0;
        for (const double w : {6.0, 9.0, 13.0, 19.0, 25.0})
            if (w < wall) thinner = w;
        EXPECT_LT(thinner, high + 0.3) << row;
    }
}

TEST(LineLagging, liquid_line_needs_none_and_loses_heat) {
    BlockModel block;
    block.expansion = ExpansionPlace::collector;
    const auto legs = legs_of({0, 0, 5}, {{"a", RoutePointKind::wall_passage, {0, 0, 3}, ""}}, {0, 0, 0});
    const Lagged warm = lag(legs, block, {point(0.0, 8.0, 1.0)}, {}, 0.0);
    EXPECT_EQ(warm.small.wall_mm, 0.0);
    EXPECT_LT(warm.small.gain_high_w, 0.0);
    EXPECT_GT(warm.suction.gain_low_w, 0.0);
    block.expansion = ExpansionPlace::block;
    const Lagged cold = lag(legs, block, {point(0.0, 8.0, 1.0)}, {}, 0.0);
    EXPECT_GT(cold.small.wall_mm, 0.0);
    EXPECT_GT(cold.small.gain_w, 0.0);
}

TEST(LineLagging, gain_is_the_sum_over_the_legs_and_lies_in_its_range) {
    BlockModel block;
    const auto legs = legs_of({0, 0, 5}, {{"a", RoutePointKind::wall_passage, {0, 0, 3}, ""}}, {0, 0, 0});
    Air air;
    air.room_c = 18.0;
    const Lagged lagged = lag(legs, block, {point(-10.0, -2.0, 1.0), point(5.0, 13.0, 3.0)}, air, 0.0);
    const LineLagging& line = lagged.suction;
    const double per_m = heat_per_metre_w_mk(block.suction_od_mm, line.wall_mm, Lagging{});
    const double cold = per_m * (3.0 * (18.0 + 5.0) + 2.0 * (-2.0 + 5.0));
    const double mild = per_m * (3.0 * (18.0 - 10.0) + 2.0 * (13.0 - 10.0));
    EXPECT_NEAR(line.gain_w, 0.25 * cold + 0.75 * mild, 1e-9);
    EXPECT_LT(line.gain_low_w, mild);
    EXPECT_GT(line.gain_high_w, cold);
    EXPECT_NEAR(line.tube_outdoor_c, -10.0 * 0.25 + 5.0 * 0.75, 1e-12);
    EXPECT_EQ(line.tube_indoor_c, -10.0);
}

TEST(LineLagging, without_a_passage_both_airs_hold_and_it_is_said) {
    Input in = indoors_and_out(28.0);
    in.route.clear();
    const Outcome o = run_of(in);
    EXPECT_FALSE(o.run.lagging.passage_known);
    EXPECT_GT(o.run.lagging.suction.indoor_mm, 0.0);
    EXPECT_GT(o.run.lagging.suction.outdoor_mm, 0.0);
    EXPECT_TRUE(
        std::any_of(o.findings.begin(), o.findings.end(), [](const Finding& f) { return f.code == "run.no-passage"; }));
}

TEST(LineLagging, air_too_damp_for_the_thickest_wall_is_said) {
    Input in = indoors_and_out(25.0);
    in.air.room_humidity = 0.99;
    const Outcome o = run_of(in);
    EXPECT_FALSE(o.run.lagging.suction.stays_dry);
    EXPECT_TRUE(
        std::any_of(o.findings.begin(), o.findings.end(), [](const Finding& f) { return f.code == "run.dew"; }));
}

}  // namespace
}  // namespace lagging_test
}  // namespace wg::pipework
