// The refrigerant cools along the condenser: hotter at its top, colder at its bottom.

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/core/heatpump/fixture.h"
#include "tests/core/heatpump/wide_sweep.h"

namespace {

using namespace wg;
using heatpump::CondenserZone;
using heatpump::glide_offset_k;
using heatpump::PlateBalance;
using heatpump::Point;

/// Layers of random shares that touch refrigerant with a glide.
CondenserZone gliding(heatpump_test::WideSweep& sweep, double glide_k) {
    CondenserZone zone = sweep.water(220.0);
    double above = 0.0;
    for (std::size_t i = 0; i < zone.count; ++i) {
        zone.water_c[i] -= glide_offset_k(glide_k, above, zone.share[i]);
        above += zone.share[i];
    }
    return zone;
}

TEST(Glide, offsets_fall_from_half_the_glide_to_minus_half_and_have_no_mean) {
    EXPECT_NEAR(glide_offset_k(6.0, 0.0, 1e-9), 3.0, 1e-6);
    EXPECT_NEAR(glide_offset_k(6.0, 1.0 - 1e-9, 1e-9), -3.0, 1e-6);
    EXPECT_DOUBLE_EQ(glide_offset_k(6.0, 0.0, 1.0), 0.0);
    heatpump_test::WideSweep sweep(3);
    for (int n = 0; n < 100; ++n) {
        const CondenserZone zone = sweep.water(220.0);
        double above = 0.0;
        double mean = 0.0;
        for (std::size_t i = 0; i < zone.count; ++i) {
            mean += zone.share[i] * glide_offset_k(9.0, above, zone.share[i]);
            above += zone.share[i];
        }
        ASSERT_NEAR(mean, 0.0, 1e-12);
    }
}

TEST(Glide, where_all_water_is_colder_the_heat_is_that_without_a_glide) {
    for (const double glide_k : {0.0, 1.0, 5.0, 12.0}) {
        const auto zone = CondenserZone::uniform(220.0, 40.0, glide_k);
        EXPECT_NEAR(zone.heat_w(50.0), 2200.0, 1e-9);
    }
}

TEST(Glide, heat_flows_only_into_parts_that_are_colder_than_their_refrigerant) {
    // Water as warm as the condensing temperature: the upper half of a straight glide gives UA glide/8, the lower none.
    EXPECT_NEAR(CondenserZone::uniform(220.0, 50.0, 8.0).heat_w(50.0), 220.0, 1e-9);
    EXPECT_EQ(CondenserZone::uniform(220.0, 50.0, 0.0).heat_w(50.0), 0.0);
    EXPECT_EQ(CondenserZone::uniform(220.0, 50.0, 8.0).heat_w(46.0), 0.0) << "no part is hotter than the water";
}

TEST(Glide, a_glide_brings_hotter_water_at_the_top_at_the_same_condensing_temperature) {
    const auto hottest = [](double glide_k) {
        double water_c = 40.0;
        while (CondenserZone::uniform(220.0, water_c, glide_k).heat_w(55.0) > 0.0)
            water_c += 0.1;
        return water_c;
    };
    EXPECT_NEAR(hottest(0.0), 55.0, 0.11);
    EXPECT_NEAR(hottest(8.0), 55.0 + 8.0 * 7.0 / 16.0, 0.11);  // the middle of the uppermost of eight parts
}

TEST(Glide, heat_never_falls_with_the_condensing_temperature) {
    heatpump_test::WideSweep sweep(4);
    for (int n = 0; n < 300; ++n) {
        const CondenserZone zone = gliding(sweep, sweep.between(0, 15));
        double before = -1.0;
        for (double tc = 0.0; tc < 80.0; tc += 0.5) {
            const double heat = zone.heat_w(tc);
            ASSERT_GE(heat, before);
            before = heat;
        }
        ASSERT_GT(before, 0.0);
    }
}

TEST(Glide, none_gives_the_very_same_point) {
    heatpump_test::WideSweep sweep(5);
    const auto fluid = heatpump_test::properties("R134a");
    const auto set = heatpump_test::pump(BlockModel{}, *fluid);
    for (int n = 0; n < 200; ++n) {
        const auto plate = sweep.plate();
        const PlateBalance balance(plate, sweep.weather());
        CondenserZone plain = sweep.water(220.0);
        CondenserZone zone = plain;
        double above = 0.0;
        for (std::size_t i = 0; i < zone.count; ++i) {
            zone.water_c[i] -= glide_offset_k(0.0, above, zone.share[i]);
            above += zone.share[i];
        }
        const Point a = set.point(balance, plain, {}, {});
        const Point b = set.point(balance, zone, {}, {});
        ASSERT_EQ(a.condenser_w, b.condenser_w);
        ASSERT_EQ(a.condensing_c, b.condensing_c);
    }
}

TEST(Glide, points_with_a_glide_pass_just_the_heat_they_give) {
    heatpump_test::WideSweep sweep(6);
    const auto fluid = heatpump_test::properties("R290");
    BlockModel block;
    block.refrigerant = Refrigerant::r290;
    block.displacement_cm3 = 12.0;
    const auto set = heatpump_test::pump(block, *fluid);
    int running = 0;
    for (int n = 0; n < 1000; ++n) {
        const auto plate = sweep.plate();
        const PlateBalance balance(plate, sweep.weather());
        const CondenserZone zone = gliding(sweep, sweep.between(0, 15));
        const Point p = set.point(balance, zone, {}, sweep.guess());
        if (!p.running()) continue;
        ++running;
        ASSERT_NEAR(p.evaporator_w + p.work_w - p.shell_loss_w, p.condenser_w, 1e-9 * p.condenser_w);
        if (p.condensing_c - p.suction_c <= block.least_lift_k + 0.1) continue;
        ASSERT_LE(zone.heat_w(p.condensing_c - 0.03), p.condenser_w);
        ASSERT_GE(zone.heat_w(p.condensing_c + 0.03), p.condenser_w);
    }
    EXPECT_GT(running, 500);
}

}  // namespace
