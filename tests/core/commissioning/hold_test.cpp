#include "core/commissioning/hold.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/commissioning/nitrogen.h"

namespace wg::commissioning {
namespace {

// CoolProp 8.0.0, PropsSI('Z', ..., 'Nitrogen'): Span, Lemmon, Jacobsen, Wagner, Yokozeki 2000.
TEST(Nitrogen, compressibility_is_that_of_the_reference_equation) {
    struct Row {
        double pa, c, z;
    };
    for (const Row& r : {Row{1e6, -20, 0.992928},
                         {1e6, 20, 0.997815},
                         {1e6, 60, 1.000555},
                         {2.6e6, -20, 0.982952},
                         {2.6e6, 0, 0.990082},
                         {2.6e6, 20, 0.995320},
                         {2.6e6, 40, 0.999226},
                         {2.6e6, 60, 1.002174},
                         {4.3e6, -20, 0.974337},
                         {4.3e6, 20, 0.994060},
                         {4.3e6, 60, 1.004878}})
        EXPECT_NEAR(nitrogen_compressibility(r.pa, r.c), r.z, 6e-5) << r.pa << ' ' << r.c;
    EXPECT_NEAR(nitrogen_compressibility(1e3, 20.0), 1.0, 1e-5) << "thin gas is ideal";
}

// CoolProp 8.0.0, PropsSI('V', ..., 'P', 1e5, 'Nitrogen').
TEST(Nitrogen, viscosity_is_that_of_the_reference) {
    for (const auto& [c, upas] :
         {std::pair{0.0, 16.629}, {10.0, 17.104}, {20.0, 17.573}, {30.0, 18.035}, {40.0, 18.49}})
        EXPECT_NEAR(nitrogen_viscosity_pa_s(c) * 1e6, upas, 0.003 * upas) << c;
}

HoldTest at_25_bar() {
    HoldTest t;
    t.start = {25.0, 22.0, 20.0, false};
    t.end = {25.0, 22.0, 20.0, false};
    t.hours = 24.0;
    return t;
}

// Ideal gas: (p + 1.01325) T2/T1 - 1.01325, all the gas at one temperature. 12.00 bar at 20 to 12 deg C gives 11.645,
// 25.0 at 22 to 8 gives 23.77, 15.0 at 10 to 25 gives 15.85, 18.0 at 27 to 14 gives 17.18.
TEST(Hold, ideal_gas_values_come_out_for_comparison) {
    struct Row {
        double bar, from_c, to_c, then_bar;
    };
    for (const Row& row :
         {Row{12.0, 20, 12, 11.645}, {25.0, 22, 8, 23.77}, {15.0, 10, 25, 15.85}, {18.0, 27, 14, 17.18}}) {
        HoldTest t;
        t.start = {row.bar, row.from_c, row.from_c, false};
        t.end = {row.then_bar, row.to_c, row.to_c, false};
        t.hours = 1.0;
        const HoldResult r = judge(t);
        EXPECT_NEAR(r.ideal_gas_bar, row.then_bar, 0.01);
        EXPECT_NEAR(r.expected_bar, row.then_bar, 0.13) << "the real gas is near it";
        // Real nitrogen shrinks a little more when cooled: Z falls with temperature here.
        if (row.to_c < row.from_c)
            EXPECT_LT(r.expected_bar, r.ideal_gas_bar);
        else
            EXPECT_GT(r.expected_bar, r.ideal_gas_bar);
    }
}

// Equal volumes, one half warmed from 20 to 45 deg C from 12 bar: about 0.5 bar (ideal gas, two connected volumes).
TEST(Hold, half_the_gas_warmed_moves_the_gauge_by_half_a_bar) {
    EXPECT_NEAR(tight_pressure_bar(12.0, 1.01325, 0.5, 20.0, 20.0, 45.0, 20.0) - 12.0, 0.53, 0.06);
}

TEST(Hold, what_changes_nothing_is_expected_unchanged) {
    EXPECT_NEAR(tight_pressure_bar(25.0, 1.01325, 0.7, 18.0, 20.0, 18.0, 20.0), 25.0, 1e-9);
}

TEST(Hold, a_day_without_loss_is_tight_and_an_hour_is_too_short) {
    HoldTest t = at_25_bar();
    EXPECT_EQ(judge(t).verdict, HoldVerdict::tight);
    EXPECT_LE(judge(t).ruled_out_g_year, t.leak_limit_g_year);
    EXPECT_GT(judge(t).detectable_g_year, judge(t).ruled_out_g_year) << "to find a leak takes more than to rule it out";
    t.hours = 1.0;
    const HoldResult r = judge(t);
    EXPECT_EQ(r.verdict, HoldVerdict::wait_longer);
    EXPECT_GT(r.hours_needed, 1.0);
    t.hours = r.hours_needed * 1.0001;
    EXPECT_EQ(judge(t).verdict, HoldVerdict::tight) << "the hours told are enough";
}

TEST(Hold, a_leak_is_found_at_its_rate_through_a_change_of_temperature) {
    HoldTest t = at_25_bar();
    t.end.plate_c = 5.0;
    t.end.indoors_c = 17.0;
    t.hours = 20.0;
    const double tight = tight_pressure_bar(25.0, 1.01325, t.outdoors_share, 22.0, 20.0, 5.0, 17.0);
    t.end.gauge_bar = tight - 1.2;
    const HoldResult r = judge(t);
    EXPECT_EQ(r.verdict, HoldVerdict::leak);
    EXPECT_NEAR(r.missing_bar, 1.2, 1e-9);
    // By hand: 1.2e5 Pa x 0.002 m3 / 72,000 s = 3.333e-3 Pa m3/s of nitrogen; times 17.1/11.62 (viscosities),
    // (5.717^2 - 1.013^2)/(24.0^2 - 1.013^2) = 0.05507, 0.10203/(8.3145 x 293.15) kg/(m3 Pa), 3.156e10 g s/(kg year).
    EXPECT_NEAR(r.leak_g_year, 356.0, 12.0);
}

TEST(Hold, sun_and_missing_probes_give_no_verdict) {
    HoldTest t = at_25_bar();
    t.end.plate_in_sun = true;
    EXPECT_EQ(judge(t).verdict, HoldVerdict::no_temperature);
    t = at_25_bar();
    t.start.plate_c.reset();
    EXPECT_EQ(judge(t).verdict, HoldVerdict::no_temperature);
    t = at_25_bar();
    t.end.indoors_c = std::numeric_limits<double>::quiet_NaN();
    EXPECT_EQ(judge(t).verdict, HoldVerdict::no_temperature);
}

TEST(Hold, more_pressure_than_can_be_is_said) {
    HoldTest t = at_25_bar();
    t.end.gauge_bar = 25.6;
    EXPECT_EQ(judge(t).verdict, HoldVerdict::gained);
}

// Two standard deviations of rectangles with the instruments' limits, by hand: 26.01 bar, 0.7 of the volume at 22 deg C
// and 0.3 at 20: gauge twice 0.1, plate twice 26.01 x 0.7/295.15 = 0.0617 and indoors twice 26.01 x 0.3/293.15 = 0.0266
// (real gas moves by a little more), no share as nothing changed, over root 3; the air 0.0015 x root 16.
TEST(Hold, spread_by_hand) {
    HoldTest t = at_25_bar();
    t.hours = 16.0;
    const double limits = 2 * (0.1 * 0.1 + 0.0617 * 0.0617 + 0.0266 * 0.0266);
    EXPECT_NEAR(judge(t).spread_bar, 2.0 * std::sqrt(limits / 3.0 + 0.006 * 0.006), 0.005);
    t.instruments = {0.0, 0.0, 0.0};
    EXPECT_NEAR(judge(t).spread_bar, 2.0 * 0.006, 1e-9);
}

// A gauge that fell to nothing still tells a leak of some size, and none that is infinite.
TEST(Hold, all_gone_is_a_large_leak) {
    HoldTest t = at_25_bar();
    t.end.gauge_bar = -0.05;
    const HoldResult r = judge(t);
    EXPECT_EQ(r.verdict, HoldVerdict::leak);
    EXPECT_GT(r.leak_g_year, 1000.0);
    EXPECT_TRUE(std::isfinite(r.leak_g_year) && std::isfinite(r.detectable_g_year));
}

// Random tight systems read with errors within the instruments' limits are never called a leak; the spread grows with
// every instrument.
TEST(Hold, honest_readings_of_a_tight_system_are_never_a_leak) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> unit(-1.0, 1.0);
    for (int i = 0; i < 400; ++i) {
        HoldTest t = at_25_bar();
        const double from_plate = 15.0 + 15.0 * unit(random), to_plate = 15.0 + 15.0 * unit(random);
        t.end.gauge_bar = tight_pressure_bar(25.0, 1.01325, t.outdoors_share, from_plate, 20.0, to_plate, 19.0);
        // Independent errors, each a third of its limit in the mean square: the spread is their root of squares.
        const double g = t.instruments.gauge_bar / 3.0, k = t.instruments.thermometer_k / 3.0;
        t.start.gauge_bar += g * unit(random);
        t.end.gauge_bar += g * unit(random);
        t.start.plate_c = from_plate + k * unit(random);
        t.end.plate_c = to_plate + k * unit(random);
        t.start.indoors_c = 20.0 + k * unit(random);
        t.end.indoors_c = 19.0 + k * unit(random);
        const HoldResult r = judge(t);
        EXPECT_NE(r.verdict, HoldVerdict::leak) << r.missing_bar << " of " << r.spread_bar;
        HoldTest coarse = t;
        coarse.instruments.thermometer_k *= 2.0;
        EXPECT_GT(judge(coarse).spread_bar, r.spread_bar);
    }
}

}  // namespace
}  // namespace wg::commissioning
