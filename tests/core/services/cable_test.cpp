#include "core/services/cable.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/services/a_good_spot.h"

namespace wg::services {
namespace cable_test {

using test::expect;
using test::find;
using test::good;

constexpr CableMethod methods[] = {CableMethod::a1, CableMethod::a2, CableMethod::b1,
                                   CableMethod::b2, CableMethod::c,  CableMethod::e};

TEST(Cable, VoltageDropOfAnnexG) {
    // IEC 60364-5-52 annex G (constants from memory), 230 V, rows worked apart from this program.
    constexpr double volts = 0.02;
    EXPECT_NEAR(voltage_drop_v(1, 20.0, 1.5, 10.0, 1.0), 6.00, volts);
    EXPECT_NEAR(voltage_drop_v(1, 20.0, 2.5, 10.0, 1.0), 3.60, volts);
    EXPECT_NEAR(voltage_drop_v(1, 20.0, 1.5, 10.0, 0.8), 4.82, volts);
    EXPECT_NEAR(voltage_drop_v(1, 30.0, 2.5, 16.0, 1.0), 8.64, volts);
    EXPECT_NEAR(voltage_drop_v(3, 20.0, 1.5, 10.0, 1.0), 3.00, volts);
}

TEST(Cable, CarriesWhatAMachineryMakersSheetPrintsByTheStandard) {
    // Instruction book of a compressor maker, 2920 7109: 'calculated according to 60364-5-52', PVC copper, three loaded
    // conductors, by ambient temperature; printed in whole amperes, cut or rounded.
    constexpr double printed = 1.0;
    struct Row {
        CableMethod method;
        double mm2;
        double at_c[5];  // 30, 40, 45, 50, 55
    };
    const Row rows[] = {{CableMethod::b2, 1.5, {15, 13, 12, 11, 9}},   {CableMethod::b2, 2.5, {20, 17, 16, 14, 12}},
                        {CableMethod::b2, 4.0, {27, 23, 21, 19, 16}},  {CableMethod::b2, 6.0, {34, 30, 27, 24, 21}},
                        {CableMethod::b2, 16.0, {62, 54, 49, 44, 38}}, {CableMethod::c, 2.5, {24, 21, 19, 17, 15}},
                        {CableMethod::c, 6.0, {41, 36, 32, 29, 25}},   {CableMethod::c, 10.0, {57, 50, 45, 40, 35}}};
    const double temperatures_c[] = {30, 40, 45, 50, 55};
    for (const Row& row : rows)
        for (int i = 0; i < 5; ++i)
            EXPECT_NEAR(ampacity_a(row.method, 3, row.mm2) * ambient_factor(temperatures_c[i]), row.at_c[i], printed)
                << row.mm2 << " mm2 at " << temperatures_c[i];
}

TEST(Cable, TwoLoadedConductorsAsInTableB522) {
    // IEC 60364-5-52 table B.52.2 and B.52.10 (E), from public transcriptions.
    const double at_two_and_a_half[] = {19.5, 18.5, 24.0, 23.0, 27.0, 30.0};
    for (int i = 0; i < 6; ++i)
        EXPECT_EQ(ampacity_a(methods[i], 1, 2.5), at_two_and_a_half[i]);
    EXPECT_EQ(ampacity_a(CableMethod::b2, 1, 3.0), 0.0);
}

TEST(Cable, AmbientFactorFollowsThePhysicsOfSeventyDegrees) {
    // The rows are sqrt((70 - t)/40) rounded: losses go with the square of current, cooling with the difference.
    for (double t = 10.0; t <= 60.0; t += 5.0)
        EXPECT_NEAR(ambient_factor(t), std::sqrt((70.0 - t) / 40.0), 0.006) << t;
    EXPECT_EQ(ambient_factor(30.0), 1.0);
    EXPECT_EQ(ambient_factor(-5.0), ambient_factor(10.0));
    EXPECT_EQ(ambient_factor(60.5), 0.0);
}

TEST(Cable, GroupingAsInTableB5217) {
    const double first_row[] = {1.00, 0.80, 0.70, 0.65, 0.60, 0.57, 0.54, 0.52, 0.50};
    for (int n = 1; n <= 9; ++n)
        EXPECT_EQ(grouping_factor(n), first_row[n - 1]);
    EXPECT_EQ(grouping_factor(10), 0.45);
    EXPECT_EQ(grouping_factor(20), 0.38);
}

TEST(Cable, NothingCarriesMoreWhenWarmerThinnerOrInCompany) {
    for (const CableMethod method : methods)
        for (const int phases : {1, 3})
            for (std::size_t i = 1; i < cable_sections_mm2.size(); ++i) {
                EXPECT_GT(ampacity_a(method, phases, cable_sections_mm2[i]),
                          ampacity_a(method, phases, cable_sections_mm2[i - 1]));
                EXPECT_GT(ampacity_a(method, 1, cable_sections_mm2[i]), ampacity_a(method, 3, cable_sections_mm2[i]));
            }
    for (double t = 0.0; t < 65.0; t += 0.5)
        EXPECT_LE(ambient_factor(t + 0.5), ambient_factor(t));
    for (int n = 1; n < 25; ++n)
        EXPECT_LE(grouping_factor(n + 1), grouping_factor(n));
}

TEST(Cable, BreakersGoUpInStandardRatings) {
    EXPECT_EQ(breaker_at_least_a(10.0), 10.0);
    EXPECT_EQ(breaker_at_least_a(12.6), 13.0);
    EXPECT_EQ(breaker_at_least_a(41.0), 0.0);
}

TEST(Lightning, SeparationDistance) {
    // Lightning protection guide 2018, part on separation: class III, more than four down conductors, brick, 10 m:
    // 0.35 m. Class I, one conductor, air, 10 m by the formula: 0.80 m.
    EXPECT_NEAR(separation_distance_m(0.04, 0.44, 0.5, 10.0), 0.35, 0.005);
    EXPECT_NEAR(separation_distance_m(0.08, 1.0, 1.0, 10.0), 0.80, 1e-9);
}

TEST(Electrical, CurrentCableBreakerAndDrop) {
    Input in = good();
    in.spot.distribution_m = 18.0;  // 20 m with the allowance
    const Electrical e = provide(in).electrical;
    EXPECT_NEAR(e.running_a, 6.0 + 1500.0 / 230.0, 1e-9);
    EXPECT_NEAR(e.starting_a, 18.0 + 1500.0 / 230.0, 1e-9);
    EXPECT_EQ(e.way_m, 20.0);
    EXPECT_EQ(e.cable_m, 2.0);     // the circuit is at the spot: only its end is new
    EXPECT_EQ(e.breaker_a, 13.0);  // the next over 12.5 A
    EXPECT_EQ(e.breaker_curve, "C");
    EXPECT_EQ(e.cable_mm2, 2.5);  // 1.5 mm2 would lose 3.1 %
    const double sine = std::sqrt(1.0 - 0.81), heater_a = 1500.0 / 230.0;
    const double by_hand = 2.0 * (0.0225 * 20.0 / 2.5 * (0.9 * 6.0 + heater_a) + 0.00008 * 20.0 * sine * 6.0) / 2.30;
    EXPECT_NEAR(e.drop_percent, by_hand, 1e-9);
    EXPECT_NEAR(e.carries_a, 23.0, 1e-9);
    in.spot.distribution_m = 17.0;
    EXPECT_EQ(provide(in).electrical.cable_mm2, 1.5);
    in.spot.supply = {false, 17.0};
    in.spot.distribution_m = 0.0;
    EXPECT_EQ(provide(in).electrical.cable_m, 19.0);
    EXPECT_EQ(provide(in).electrical.way_m, 19.0);
}

TEST(Electrical, ALongerWayNeverTakesAThinnerCable) {
    for (const CableMethod method : methods) {
        double before = 0.0;
        for (double way = 0.0; way < 500.0; way += 5.0) {
            Input in = good();
            in.spot.cable.method = method;
            in.spot.distribution_m = way;
            const Electrical e = provide(in).electrical;
            EXPECT_GE(e.cable_mm2, before);
            EXPECT_GE(e.carries_a, e.breaker_a);
            EXPECT_GE(e.breaker_a, e.running_a);
            before = e.cable_mm2;
        }
    }
    Input far = good();
    far.spot.distribution_m = 450.0;
    expect(far, "supply.voltage-drop", Severity::stop);
    far.spot.distribution_m = 220.0;
    expect(far, "supply.voltage-drop-noticeable", Severity::note);
    far.spot.distribution_m = 100.0;
    expect(far, "supply.large-section", Severity::note);
    far.block.start_current_a = 150.0;
    expect(far, "supply.start-drop", Severity::caution);
}

TEST(Electrical, AWarmPlaceInCompanyTakesAThickerCableAndThenNone) {
    Input in = good();
    in.spot.cable.ambient_c = 45.0;       // 0.79
    in.spot.cable.circuits_together = 4;  // 0.65: 13 A ask for 25.3 A of the table, 4 mm2
    EXPECT_EQ(provide(in).electrical.cable_mm2, 4.0);
    EXPECT_NEAR(provide(in).electrical.carries_a, 30.0 * 0.79 * 0.65, 1e-9);
    in.spot.cable.method = CableMethod::a2;
    in.spot.cable.ambient_c = 60.0;
    in.spot.cable.circuits_together = 20;
    expect(in, "supply.cable", Severity::stop);
}

TEST(Electrical, StartingCurrentAgainstTheBreakersCurve) {
    Input in = good();
    in.block.breaker_curve = "B";  // 13 A releases from 39 A
    in.block.start_current_a = 30.0;
    EXPECT_EQ(find(provide(in), "supply.inrush"), nullptr);
    in.block.start_current_a = 33.0;
    expect(in, "supply.inrush", Severity::caution);
    in.block.breaker_curve = "C";
    EXPECT_EQ(find(provide(in), "supply.inrush"), nullptr);
    in.cylinder.immersion_w = 9000.0;
    expect(in, "supply.too-large", Severity::stop);
}

TEST(Supply, EachMismatchWithTheHouseStops) {
    Input in = good();
    in.electrics.voltage_v = 120.0;
    expect(in, "supply.voltage", Severity::stop);
    in.electrics.voltage_v = 208.0;  // within 10 % of 230 V
    EXPECT_EQ(find(provide(in), "supply.voltage"), nullptr);
    in = good();
    in.electrics.frequency_hz = 60.0;
    expect(in, "supply.frequency", Severity::stop);
    in = good();
    in.block.supply_phases = 3;
    in.block.supply_v = 400.0;
    expect(in, "supply.phases", Severity::stop);
    in.electrics.phases = 3;
    EXPECT_EQ(find(provide(in), "supply.phases"), nullptr);
    EXPECT_EQ(find(provide(in), "supply.voltage"), nullptr);
    in = good();
    in.electrics.used_a = 51.0;  // and 12.5 A over 63 A
    expect(in, "supply.main-fuse", Severity::stop);
    in.electrics.used_a = 0.0;
    in.electrics.main_fuse_a = 13.0;
    expect(in, "supply.selectivity", Severity::caution);
}

TEST(Supply, WhatIsNotToldIsNamedAndNothingIsTakenInItsPlace) {
    Input in = good();
    in.electrics = {};
    in.spot.distribution_m = 0.0;
    expect(in, "supply.not-told", Severity::caution);
    const Outcome o = provide(in);
    const std::string& said = find(o, "supply.not-told")->message;
    for (const char* field : {"voltage", "frequency", "phases", "main fuse", "runs at the same time", "earthing system",
                              "way from the distribution board"})
        EXPECT_NE(said.find(field), std::string::npos) << field;
    for (const SupplyCheck& check : o.electrical.checks) {
        EXPECT_NE(check.answer, Answer::not_met) << check.what;
    }
    EXPECT_EQ(o.electrical.electrode_max_ohm, 0.0);
    EXPECT_EQ(o.electrical.loop_max_ohm, 0.0);
    in = good();
    EXPECT_EQ(find(provide(in), "supply.not-told"), nullptr);
    for (const SupplyCheck& check : provide(in).electrical.checks)
        EXPECT_EQ(check.answer, Answer::met) << check.what;
}

TEST(Earthing, ElectrodeAndLoop) {
    // IEC 60364-4-41: 50 V over 30 mA, 1667 ohm; over 300 mA, 167 ohm. C13 in TN: 230/130 = 1.77 ohm, two thirds 1.18.
    Input in = good();
    const Electrical tn = provide(in).electrical;
    EXPECT_NEAR(tn.loop_max_ohm, 1.77, 0.005);
    EXPECT_NEAR(tn.loop_reading_max_ohm, 1.18, 0.005);
    EXPECT_EQ(tn.electrode_max_ohm, 0.0);
    in.electrics.earthing = EarthingSystem::tt;
    EXPECT_NEAR(provide(in).electrical.electrode_max_ohm, 1666.7, 0.1);
    EXPECT_EQ(provide(in).electrical.loop_max_ohm, 0.0);
    in.block.residual_current_ma = 300.0;
    EXPECT_NEAR(provide(in).electrical.electrode_max_ohm, 166.7, 0.1);
    expect(in, "supply.residual-current", Severity::caution);
    in.block.residual_current_ma = 0.0;
    expect(in, "supply.tt-without-device", Severity::stop);
    in = good();
    in.electrics.earthing = EarthingSystem::it;
    expect(in, "supply.it", Severity::caution);
    in.electrics.earthing = EarthingSystem::tn_c_s;
    expect(in, "supply.bonding-outdoors", Severity::note);
    in.spot.distribution_m = 200.0;
    in.spot.cable.circuits_together = 1;
    in.block.max_current_a = 0.5;  // a thin cable serves far away: 1.5 mm2, 6 ohm
    in.cylinder.immersion_w = 0.0;
    in.block.start_current_a = 1.0;
    expect(in, "supply.fault-loop", Severity::caution);
}

TEST(Earthing, TypeOfTheResidualCurrentDevice) {
    Input in = good();
    EXPECT_EQ(provide(in).electrical.residual_current_type, "A");
    in.block.least_flow_share = 0.4;  // runs on a converter
    EXPECT_EQ(provide(in).electrical.residual_current_type, "F");
    expect(in, "supply.residual-type", Severity::note);
    in.block.supply_phases = 3;
    EXPECT_EQ(provide(in).electrical.residual_current_type, "B");
}

TEST(Lightning, DistanceAgainstTheSeparationAskedFor) {
    Input in = good();
    EXPECT_EQ(provide(in).electrical.separation_m, 0.0);
    EXPECT_EQ(provide(in).electrical.bonding_mm2, 6.0);
    in.electrics.lightning_protection = true;
    in.collector_top_m = 8.0;  // 0.04 0.66/0.5 8 = 0.42 m; severest 1.28 m
    expect(in, "lightning.distance-not-told", Severity::caution);
    EXPECT_NEAR(provide(in).electrical.separation_m, 0.4224, 1e-9);
    EXPECT_NEAR(provide(in).electrical.separation_severest_m, 1.28, 1e-9);
    EXPECT_EQ(provide(in).electrical.bonding_mm2, 16.0);
    in.electrics.lightning_distance_m = 0.3;
    expect(in, "lightning.too-near", Severity::caution);
    in.electrics.lightning_distance_m = 0.6;
    expect(in, "lightning.distance-by-class", Severity::caution);
    in.electrics.lightning_distance_m = 1.3;
    for (const char* code : {"lightning.too-near", "lightning.distance-by-class", "lightning.distance-not-told"})
        EXPECT_EQ(find(provide(in), code), nullptr) << code;
    in.electrics.surge_protection = false;
    expect(in, "supply.surge", Severity::caution);
    in.electrics.lightning_protection = false;
    expect(in, "supply.surge", Severity::note);
}

}  // namespace cable_test
}  // namespace wg::services
