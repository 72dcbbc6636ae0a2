#include "core/services/pipes.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/services/sizing.h"
#include "tests/core/services/a_good_spot.h"

namespace wg::services {
namespace pipes_test {

using test::expect;
using test::find;
using test::good;

TEST(Pipes, LoadingUnitsOfEn806) {
    // EN 806-3:2006 table 2, public transcription: Q_A 0.1 l/s a unit.
    EXPECT_EQ(loading_units(Fixture::basin), 1.0);
    EXPECT_EQ(loading_units(Fixture::bidet), 1.0);
    EXPECT_EQ(loading_units(Fixture::wc_cistern), 1.0);
    EXPECT_EQ(loading_units(Fixture::kitchen_sink), 2.0);
    EXPECT_EQ(loading_units(Fixture::washing_machine), 2.0);
    EXPECT_EQ(loading_units(Fixture::dishwasher), 2.0);
    EXPECT_EQ(loading_units(Fixture::shower), 2.0);
    EXPECT_EQ(loading_units(Fixture::bath), 4.0);
    EXPECT_EQ(loading_units(Fixture::garden_tap), 5.0);
}

TEST(Pipes, SumsAndSizesOfAFlatAndOfAHouse) {
    // By hand from the table (copper rows from memory). A bathroom with basin, bath and kitchen sink: 1 + 4 + 2 = 7 hot
    // units, 18 mm. Two bathrooms with basin, shower, bath each and a sink: 16 units, 22 mm.
    EXPECT_EQ(copper_for(7.0, 4.0, 12.0).outside_mm, 18.0);
    EXPECT_EQ(copper_for(16.0, 4.0, 12.0).outside_mm, 22.0);
    EXPECT_EQ(copper_for(1.0, 1.0, 20.0).outside_mm, 12.0);
    EXPECT_EQ(copper_for(1.0, 1.0, 21.0).outside_mm, 18.0);  // longer than 15 mm may be for 3 units
    EXPECT_EQ(copper_for(2.0, 2.0, 8.0).outside_mm, 15.0);
    EXPECT_EQ(copper_for(4.0, 4.0, 9.0).outside_mm, 15.0);
    EXPECT_EQ(copper_for(50.0, 5.0, 9.0).outside_mm, 28.0);
    EXPECT_EQ(copper_for(2101.0, 5.0, 9.0).outside_mm, 0.0);
    EXPECT_EQ(copper_for(0.0, 0.0, 9.0).outside_mm, 0.0);
}

TEST(Pipes, DesignFlowOfFigureB1) {
    // Ends of the figure: one bath alone 0.4 l/s; 300 units 1.7 l/s; 1000 units 3.2 l/s. Between, straight on
    // logarithmic axes.
    EXPECT_NEAR(design_flow_l_s(4.0, 4.0), 0.4, 1e-12);
    EXPECT_NEAR(design_flow_l_s(300.0, 4.0), 1.732, 0.05);
    EXPECT_NEAR(design_flow_l_s(1000.0, 4.0), 3.16, 0.05);
    EXPECT_NEAR(design_flow_l_s(34.64, 4.0), std::sqrt(0.4 * 1.7), 1e-3);  // the middle, sqrt(4 300)
    double before = 0.0;
    for (double units = 1.0; units < 2000.0; units += 1.0) {
        const double flow = design_flow_l_s(units, 1.0);
        EXPECT_GE(flow, before) << units;
        EXPECT_LE(flow, 0.1 * units + 1e-9);  // never more than all at once
        before = flow;
    }
}

TEST(Pipes, MoreUnitsOrLengthNeverTakeASmallerPipe) {
    double before = 0.0;
    for (double units = 1.0; units <= 2100.0; units += 1.0) {
        const double size = copper_for(units, 1.0, 5.0).outside_mm;
        EXPECT_GE(size, before);
        before = size;
        EXPECT_GE(copper_for(units, 1.0, 30.0).outside_mm, size);
        EXPECT_GE(copper_for(units, 4.0, 5.0).outside_mm, size);
    }
}

TEST(Pipes, ViscosityAgreesWithIapws) {
    // IAPWS 2008 formulation, mPa s, from memory: 20 deg C 1.0016, 40 0.6527, 60 0.4664, 80 0.3544.
    const double rows[][2] = {{20, 1.0016}, {40, 0.6527}, {60, 0.4664}, {80, 0.3544}};
    for (const auto& row : rows)
        EXPECT_NEAR(1e3 * water_viscosity_pa_s(row[0]), row[1], 0.025 * row[1]) << row[0];
}

TEST(Pipes, FrictionAsByBlasius) {
    // Smooth turbulent flow: f = 0.316 Re^-0.25 (Blasius 1913), good to some per cent at Re 2e4 to 1e5.
    for (const double flow_l_s : {0.2, 0.3, 0.5}) {
        const double bore_m = 0.016, speed = water_speed_m_s(flow_l_s, 16.0);
        const double rho = water_density_kg_m3(60.0), re = rho * speed * bore_m / water_viscosity_pa_s(60.0);
        const double blasius = 0.316 * std::pow(re, -0.25) * 10.0 / bore_m * 0.5 * rho * speed * speed * 1e-5;
        EXPECT_NEAR(friction_loss_bar(flow_l_s, 16.0, 10.0, 60.0), blasius, 0.06 * blasius);
    }
    EXPECT_NEAR(water_speed_m_s(0.2, 13.0), 1.507, 0.001);  // 0.2 l/s over 132.7 mm2
    EXPECT_EQ(friction_loss_bar(0.0, 16.0, 10.0, 60.0), 0.0);
    EXPECT_NEAR(head_bar(10.0, 10.0), 0.980, 0.001);  // ten metres of water
}

TEST(Pipes, LitresInATubeAndUntilHot) {
    // EN 1057: 15 x 1 holds 0.133 l a metre, 22 x 1 0.314 l (makers' tables). Copper of 15 x 1: 0.39 kg/m, 0.15 kJ/K
    // beside water's 0.55: 27 % more.
    EXPECT_NEAR(tube_litres(1.0, 13.0), 0.133, 0.0005);
    EXPECT_NEAR(tube_litres(1.0, 20.0), 0.314, 0.0005);
    EXPECT_NEAR(litres_until_hot(1.0, 13.0, 1.0) / tube_litres(1.0, 13.0), 1.27, 0.01);
    EXPECT_EQ(litres_until_hot(1.0, 13.0, 0.0), tube_litres(1.0, 13.0));
}

TEST(Pipes, DischargeOfTheWorkedExamples) {
    // A cylinder maker's sheet with table 3.1 of Approved Document G3: G1/2, 7 m and 4 bends: 22 mm is not enough
    // (10.2 m), 28 mm is. A plumbing textbook: G1/2, 6 m and 6 bends: 28 mm.
    EXPECT_EQ(discharge_pipe(15.0, 7.0, 4).from_tundish_mm, 28.0);
    EXPECT_EQ(discharge_pipe(15.0, 6.0, 6).from_tundish_mm, 28.0);
    EXPECT_EQ(discharge_pipe(15.0, 5.8, 4).from_tundish_mm, 22.0);  // 9.0 m
    EXPECT_EQ(discharge_pipe(15.0, 5.8, 4).to_tundish_mm, 15.0);
    EXPECT_EQ(discharge_pipe(20.0, 5.0, 4).from_tundish_mm, 28.0);
    EXPECT_EQ(discharge_pipe(25.0, 20.0, 2).from_tundish_mm, 54.0);
    EXPECT_EQ(discharge_pipe(15.0, 30.0, 0).from_tundish_mm, 0.0);
    for (double metres = 0.0; metres < 20.0; metres += 0.25)
        EXPECT_GE(discharge_pipe(20.0, metres + 0.25, 3).from_tundish_mm,
                  discharge_pipe(20.0, metres, 3).from_tundish_mm);
}

TEST(Water, PressureReducingValveAndVessel) {
    Input in = good();
    const Water w = provide(in).water;  // 3.0 bar of supply at the cylinder's height
    EXPECT_FALSE(w.reducing_valve);
    EXPECT_NEAR(w.vessel_precharge_bar, 3.0, 1e-9);
    EXPECT_NEAR(*w.tap_static_bar, 3.0 - 0.294, 0.001);  // 3 m up
    in.water.static_pressure_bar = 4.7;                  // 0.8 of 6 bar are 4.8
    EXPECT_FALSE(provide(in).water.reducing_valve);
    EXPECT_EQ(provide(in).water.vessel_l, 50.0);  // 4.20 x 6.4/0.7 = 38 l
    in.water.static_pressure_bar = 5.5;
    expect(in, "water.reducing-valve", Severity::note);
    EXPECT_TRUE(provide(in).water.reducing_valve);
    EXPECT_NEAR(provide(in).water.vessel_precharge_bar, 3.0, 1e-9);  // as it will be set
    in.water.reducing_valve = true;                                  // there
    EXPECT_FALSE(provide(in).water.reducing_valve);
    in.water.reduced_to_bar = 5.0;
    expect(in, "water.reducing-setting", Severity::caution);
    in.water.static_pressure_bar = 2.0;  // the valve has nothing to do
    EXPECT_NEAR(provide(in).water.pressure_at_cylinder_bar, 2.0, 1e-9);
    in.water.entry_height_m = 5.0;  // and the cylinder stands below
    EXPECT_NEAR(provide(in).water.pressure_at_cylinder_bar, 2.49, 0.005);
}

TEST(Water, MoreLitresOrPressureNeverTakeASmallerVessel) {
    for (const double supply : {1.5, 2.5, 3.5, 4.5}) {
        double before = 0.0;
        for (double litres = 80.0; litres <= 500.0; litres += 20.0) {
            Input in = good();
            in.water.static_pressure_bar = supply;
            in.cylinder.volume_l = litres;
            const double vessel = provide(in).water.vessel_l;
            EXPECT_GE(vessel, before);
            in.water.static_pressure_bar = supply - 0.5;
            EXPECT_LE(provide(in).water.vessel_l, vessel);
            before = vessel;
        }
    }
}

TEST(Water, WhatIsNotToldIsNamed) {
    Input in = good();
    in.water.hardness_mmol_l.reset();
    expect(in, "water.not-told", Severity::note);
    in.water = {};
    expect(in, "water.not-told", Severity::caution);
    expect(in, "water.reducing-valve-unsure", Severity::note);
    const Outcome o = provide(in);
    for (const char* field : {"static pressure", "hardness", "draw-off points", "hot pipes"})
        EXPECT_NE(find(o, "water.not-told")->message.find(field), std::string::npos) << field;
    EXPECT_TRUE(o.water.reducing_valve);
    EXPECT_FALSE(o.water.tap_static_bar.has_value());
    EXPECT_EQ(o.water.hot_pipe_mm, 0.0);
}

TEST(Water, PressureAtTheHighestTap) {
    Input in = good();  // basin, shower, kitchen sink: 5 hot units on 8 m
    const Water w = provide(in).water;
    EXPECT_EQ(w.hot_units, 5.0);
    EXPECT_EQ(w.cold_units, 8.0);
    EXPECT_EQ(w.hot_pipe_mm, 18.0);
    EXPECT_EQ(w.cold_pipe_mm, 18.0);
    EXPECT_NEAR(*w.tap_flowing_bar,
                *w.tap_static_bar - friction_loss_bar(design_flow_l_s(5.0, 2.0), 16.0, 1.3 * 8.0, 60.0), 1e-9);
    in.water.highest_tap_m = 20.0;
    expect(in, "water.low-pressure-at-tap", Severity::caution);
    in.water.highest_tap_m = 31.0;
    expect(in, "water.no-pressure-at-tap", Severity::stop);
    in = good();
    in.water.fixtures.push_back({"b", Fixture::basin, 200, {}});
    in.water.fixtures.push_back({"c", Fixture::bath, 200, {}});
    in.water.fixtures.push_back({"d", Fixture::garden_tap, 200, {}});
    in.water.fixtures.push_back({"e", Fixture::shower, 200, {}});
    expect(in, "water.pipe-beyond-table", Severity::caution);
}

TEST(Water, DeadLegsAgainstThreeLitres) {
    Input in = good();
    in.water.dead_legs = {{"l", "bath upstairs", 10.0, 20.0, false, {}}};  // 3.14 l
    expect(in, "water.dead-leg", Severity::caution);
    in.water.dead_legs[0].length_m = 9.5;  // 2.98 l, hot after 3.55 l, 36 s
    EXPECT_EQ(find(provide(in), "water.dead-leg"), nullptr);
    expect(in, "water.hot-late", Severity::note);
    EXPECT_NEAR(provide(in).water.legs[0].litres, 2.985, 0.001);
    EXPECT_NEAR(provide(in).water.legs[0].seconds_to_hot, 35.1, 0.5);
    in.water.dead_legs[0].off_the_loop = true;
    in.spot.recirculation = {false, 0.0};
    expect(in, "water.leg-without-loop", Severity::caution);
    in.demand.recirculation.present = true;
    EXPECT_EQ(find(provide(in), "water.leg-without-loop"), nullptr);
}

TEST(Water, LimeAndAnode) {
    Input in = good();
    in.water.hardness_mmol_l = 3.2;
    expect(in, "water.lime", Severity::note);
    in.demand.set_point_c = 65.0;
    expect(in, "water.lime", Severity::caution);
    in.water.hardness_mmol_l = 0.8;
    EXPECT_EQ(find(provide(in), "water.lime"), nullptr);
    in.cylinder.anode = "magnesium";
    expect(in, "water.anode-soft", Severity::note);
    in.cylinder.anode.clear();
    EXPECT_EQ(find(provide(in), "water.anode-soft"), nullptr);
}

TEST(Water, LossOfTheLoop) {
    // 80 W at 35 K, store 60 over a room of 18 deg C: 96 W; all year 841 kWh, 5 to 23 h on weekdays 18 x 5/168 of it.
    Input in = good();
    in.demand.recirculation.present = true;
    EXPECT_NEAR(provide(in).water.recirculation_kwh, 841.0, 0.5);
    in.demand.recirculation.windows = {{5.0, 23.0, true, false, {}}};
    EXPECT_NEAR(provide(in).water.recirculation_kwh, 841.0 * 90.0 / 168.0, 0.5);
    in.demand.recirculation.windows.push_back({22.0, 1.0, true, true, {}});  // 2 h more on weekdays, 3 at weekends
    EXPECT_NEAR(provide(in).water.recirculation_kwh, 841.0 * 106.0 / 168.0, 0.5);
    in.demand.recirculation.present = false;
    EXPECT_EQ(provide(in).water.recirculation_kwh, 0.0);
}

}  // namespace pipes_test
}  // namespace wg::services
