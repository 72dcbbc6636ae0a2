#include "core/heatpump/operating_point.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/core/heatpump/fixture.h"

namespace {

using namespace wg;
using heatpump::CondenserZone;
using heatpump::HeatPump;
using heatpump::Line;
using heatpump::Off;
using heatpump::PlateBalance;
using heatpump::Point;
using heatpump_test::properties;
using heatpump_test::pump;
using heatpump_test::surroundings;

/// A random set in random weather; the seed is printed with every failure.
struct Sweep {
    explicit Sweep(unsigned seed) : random(seed) {}
    double between(double a, double b) { return a + (b - a) * std::uniform_real_distribution<double>()(random); }
    BlockModel block() {
        BlockModel b;
        b.displacement_cm3 = between(5, 24);
        b.condenser_w_k = between(60, 500);
        return b;
    }
    heatpump::Plate plate() {
        heatpump::Plate p;
        p.area_m2 = between(0.8, 5.0);
        p.refrigerant_w_k = p.area_m2 * between(30, 300);
        p.tilt_deg = between(0, 90);
        p.rear_exposure = between(0.1, 1.0);
        return p;
    }
    heatpump::Surroundings weather() {
        return surroundings(between(0, 1) < 0.3 ? 0.0 : between(0, 1100), between(-20, 42), between(0.2, 1.0),
                            between(0, 12), between(0, 25));
    }
    CondenserZone water() {
        if (between(0, 1) < 0.5) return CondenserZone::uniform(0.0, between(5, 65));
        CondenserZone zone;
        zone.count = 4;
        double sum = 0.0;
        double t = between(20, 65);
        for (std::size_t i = 0; i < zone.count; ++i) {
            zone.share[i] = between(0.05, 1.0);
            sum += zone.share[i];
            zone.water_c[i] = t;
            t = std::max(5.0, t - between(0, 15));
        }
        for (std::size_t i = 0; i < zone.count; ++i)
            zone.share[i] /= sum;
        return zone;
    }
    std::mt19937 random;
};

/// Building a map is the slow part: some sets, many points on each.
std::vector<HeatPump> sets(Sweep& sweep, const refrigerant::Properties& fluid, int count) {
    std::vector<HeatPump> out;
    for (int i = 0; i < count; ++i)
        out.push_back(pump(sweep.block(), fluid));
    return out;
}

TEST(RandomPoints, a_far_guess_finds_the_same_point) {
    constexpr unsigned seed = 7;
    Sweep sweep(seed);
    const auto fluid = properties("R134a");
    const auto pool = sets(sweep, *fluid, 20);
    for (int i = 0; i < 500; ++i) {
        const HeatPump& set = pool[static_cast<std::size_t>(i) % pool.size()];
        const BlockModel& block = set.block();
        const PlateBalance balance(sweep.plate(), sweep.weather());
        const auto zone = CondenserZone::uniform(block.condenser_w_k, sweep.between(5, 60));
        const Point a = set.point(balance, zone, {}, {-25.0, 5.0});
        const Point b = set.point(balance, zone, {}, {25.0, 79.0});
        ASSERT_EQ(a.off, b.off) << "seed " << seed << " point " << i;
        if (!a.running()) continue;
        // Slope of the residual is 20 W/K at least; heat within the tolerance on it.
        ASSERT_NEAR(a.suction_c, b.suction_c, 1e-4);
        ASSERT_NEAR(a.condenser_w, b.condenser_w, 5e-3);
    }
}

TEST(RandomPoints, the_map_changes_nothing_that_matters) {
    constexpr unsigned seed = 1900;
    constexpr double tolerance = 1e-3;
    Sweep sweep(seed);
    const auto fluid = properties("R134a");
    const auto pool = sets(sweep, *fluid, 20);
    int compared = 0;
    for (int i = 0; i < 800; ++i) {
        const HeatPump& set = pool[static_cast<std::size_t>(i) % pool.size()];
        const BlockModel& block = set.block();
        const PlateBalance balance(sweep.plate(), sweep.weather());
        const auto zone = CondenserZone::uniform(block.condenser_w_k, sweep.between(5, 60));
        const Line line{sweep.between(0, 3), sweep.between(0, 1)};
        const Point by_map = set.point(balance, zone, line, {});
        const Point direct = set.point_without_map(balance, zone, line, {});
        if (!by_map.running() || !direct.running()) continue;
        ++compared;
        ASSERT_NEAR(by_map.condenser_w / direct.condenser_w, 1.0, tolerance) << "seed " << seed << " point " << i;
        ASSERT_NEAR(by_map.work_w / direct.work_w, 1.0, tolerance) << "seed " << seed << " point " << i;
    }
    EXPECT_GT(compared, 400);
}

TEST(RandomPoints, more_of_a_good_thing_never_gives_less) {
    constexpr unsigned seed = 38500;
    constexpr double noise_w = 0.02;  // tolerances of the searches, times a gain below ten
    Sweep sweep(seed);
    const auto fluid = properties("R134a");
    const auto pool = sets(sweep, *fluid, 20);
    int compared = 0;
    for (int i = 0; i < 1500; ++i) {
        const HeatPump& set = pool[static_cast<std::size_t>(i) % pool.size()];
        const BlockModel& block = set.block();
        const auto plate = sweep.plate();
        const auto weather = sweep.weather();
        const auto zone = CondenserZone::uniform(block.condenser_w_k, sweep.between(5, 60));
        const auto at = [&](const heatpump::Plate& p, const heatpump::Surroundings& s, const Line& line) {
            return set.point(PlateBalance(p, s), zone, line, {});
        };
        const Point base = at(plate, weather, {});
        if (!base.running()) continue;
        ++compared;
        const auto not_less = [&](const Point& better, const char* what) {
            if (better.running()) {
                ASSERT_GE(better.condenser_w, base.condenser_w - noise_w)
                    << what << ", seed " << seed << " point " << i;
            }
        };
        auto brighter = weather;
        brighter.front_w_m2 += 100.0;
        not_less(at(plate, brighter, {}), "light");
        auto warmer = weather;  // equal absolute humidity: the dew point stays
        warmer.air_c += 3.0;
        not_less(at(plate, warmer, {}), "warmer air");
        auto clouded = weather;
        clouded.sky_k += 5.0;
        not_less(at(plate, clouded, {}), "warmer sky");
        auto damper = weather;
        damper.dew_point_c = std::min(weather.air_c, weather.dew_point_c + 2.0);
        not_less(at(plate, damper, {}), "damper air");
        auto windier = weather;
        windier.wind_m_s += 1.0;
        if (base.plate_c < weather.air_c - 1.0 && !base.pressure_limited) not_less(at(plate, windier, {}), "wind");
        // Longer lines as pipework makes them: drop and gain grow together.
        const Point lined = at(plate, weather, {0.25, 0.6});
        if (lined.running()) {
            ASSERT_LE(lined.condenser_w, base.condenser_w + noise_w) << "line, seed " << seed << " point " << i;
        }
    }
    EXPECT_GT(compared, 800);
}

TEST(Envelope, too_much_light_holds_the_evaporating_temperature_and_keeps_running) {
    const auto fluid = properties("R134a");
    BlockModel block;
    block.displacement_cm3 = 8.0;
    const HeatPump set = pump(block, *fluid);
    const auto plate = heatpump::plate_of(CollectorModel{}, 3, 35.0, 1.0, false);
    const PlateBalance balance(plate, surroundings(1000, 35, 0.6, 2.0, 10));
    const Point p = set.point(balance, CondenserZone::uniform(220.0, 40.0), {}, {});
    ASSERT_TRUE(p.running());
    EXPECT_TRUE(p.pressure_limited);
    EXPECT_EQ(p.evaporating_c, block.evaporating_max_c);
    EXPECT_GT(p.plate_c, p.evaporating_c + p.evaporator_w / plate.refrigerant_w_k);
    EXPECT_NEAR(p.plate.total_w(), p.evaporator_w, 1e-3);
}

TEST(Envelope, each_limit_turns_the_pump_off_with_its_reason) {
    const auto fluid = properties("R134a");
    const auto plate = heatpump::plate_of(CollectorModel{}, 1, 35.0, 1.0, false);
    const BlockModel block;
    const HeatPump set = pump(block, *fluid);
    const PlateBalance frozen(plate, surroundings(0, -20, 0.8, 0.5, 20));
    EXPECT_EQ(set.point(frozen, CondenserZone::uniform(220.0, 20.0), {}, {}).off, Off::too_cold);
    const PlateBalance mild(plate, surroundings(800, 25, 0.5, 2.0, 10));
    EXPECT_EQ(set.point(mild, CondenserZone::uniform(220.0, 70.0), {}, {}).off, Off::condensing);
    const PlateBalance cold(plate, surroundings(0, 0, 0.8, 2.0, 10));
    BlockModel narrow = block;
    narrow.pressure_ratio_max = 6.0;
    EXPECT_EQ(pump(narrow, *fluid).point(cold, CondenserZone::uniform(220.0, 50.0), {}, {}).off, Off::pressure_ratio);
    BlockModel cool = block;
    cool.discharge_max_c = 85.0;
    EXPECT_EQ(pump(cool, *fluid).point(cold, CondenserZone::uniform(220.0, 45.0), {}, {}).off, Off::discharge);
    EXPECT_TRUE(set.point(cold, CondenserZone::uniform(220.0, 40.0), {}, {}).running());
    for (const Off off : {Off::none, Off::too_cold, Off::condensing, Off::pressure_ratio, Off::discharge})
        EXPECT_GT(std::string(heatpump::reason_text(off)).size(), 5u);
}

TEST(Envelope, cold_water_in_strong_sun_keeps_the_least_lift) {
    const auto fluid = properties("R134a");
    BlockModel block;
    block.displacement_cm3 = 8.0;
    const HeatPump set = pump(block, *fluid);
    const auto plate = heatpump::plate_of(CollectorModel{}, 2, 35.0, 1.0, false);
    const Point p = set.point(PlateBalance(plate, surroundings(1000, 30, 0.6, 1.0, 10)),
                              CondenserZone::uniform(400.0, 8.0), {}, {});
    ASSERT_TRUE(p.running());
    EXPECT_NEAR(p.condensing_c - p.suction_c, block.least_lift_k, 1e-9);
    EXPECT_GT(p.work_w, 50.0);
}

TEST(BadEquipment, is_refused_field_by_field) {
    const auto fluid = properties("R134a");
    BlockModel block;
    block.displacement_cm3 = 0.0;
    block.speed_rpm = std::nan("");
    block.condensing_max_c = 200.0;
    const auto made = HeatPump::make(block, *fluid);
    ASSERT_FALSE(made.ok());
    const std::string text = text_of(made.problems());
    EXPECT_NE(text.find("displacement_cm3"), std::string::npos);
    EXPECT_NE(text.find("speed_rpm"), std::string::npos);
    EXPECT_NE(text.find("condensing_max_c"), std::string::npos);
    EXPECT_EQ(made.problems().size(), 3u);
}

TEST(PerformanceTable, cop_falls_with_water_and_rises_with_evaporating_temperature) {
    const auto fluid = properties("R134a");
    const HeatPump set = pump(BlockModel{}, *fluid);
    const auto table = heatpump::performance_map(set, {-30, -10, 0, 10, 20}, {10, 25, 40, 55, 70});
    ASSERT_EQ(table.points.size(), 25u);
    for (std::size_t w = 0; w < 5; ++w)
        EXPECT_EQ(table.points[w].off, Off::too_cold);
    for (std::size_t e = 1; e < 5; ++e)
        for (std::size_t w = 0; w + 2 < 5; ++w) {
            const auto& here = table.points[5 * e + w];
            const auto& hotter = table.points[5 * e + w + 1];
            if (hotter.off == Off::none) {
                EXPECT_GT(here.cop(), hotter.cop());
            }
            if (e > 1) {
                EXPECT_GT(here.condenser_w, table.points[5 * (e - 1) + w].condenser_w);
            }
        }
    EXPECT_EQ(table.points[24].off, Off::condensing);
    EXPECT_EQ(table.points[24].condenser_w, 0.0);
}

struct WarmUpRow {
    double light, air_c, sky_below_k;
    int plates;
    double displacement, hours, cop;
};

// A first-principles calculation of the same equations, made independently: 250 l from 10 to 55 deg C, 70 % humidity,
// wind 2 m/s, no frost resistance, no loss of the cylinder.
TEST(WarmUp, hours_and_cop_agree_with_an_independent_calculation) {
    constexpr double hours_tolerance = 0.08;  // that one takes natural convection without tilt
    constexpr double cop_tolerance = 0.06;
    const auto fluid = properties("R134a");
    for (const WarmUpRow& row : {WarmUpRow{800, 20, 12, 1, 18, 6.1, 4.2},
                                 {800, 20, 12, 2, 18, 4.3, 5.0},
                                 {800, 20, 12, 3, 18, 3.6, 5.6},
                                 {400, 15, 10, 1, 18, 7.9, 3.7},
                                 {400, 15, 10, 2, 18, 5.9, 4.3},
                                 {400, 15, 10, 3, 18, 5.0, 4.6},
                                 {100, 7, 3, 1, 18, 11.1, 3.2},
                                 {100, 7, 3, 2, 18, 8.4, 3.6},
                                 {100, 7, 3, 3, 18, 7.4, 3.8},
                                 {0, 2, 10, 1, 18, 14.2, 2.9},
                                 {0, 2, 10, 2, 18, 10.9, 3.2},
                                 {0, 2, 10, 3, 18, 9.7, 3.3},
                                 {800, 20, 12, 1, 14, 7.0, 0},
                                 {400, 15, 10, 1, 14, 9.0, 0},
                                 {100, 7, 3, 1, 14, 12.8, 0},
                                 {0, 2, 10, 1, 14, 16.5, 0}}) {
        BlockModel block;
        block.displacement_cm3 = row.displacement;
        block.discharge_max_c = 130.0;    // that calculation had no discharge limit,
        block.pressure_ratio_max = 12.0;  // nor one of pressure ratio
        const HeatPump set = pump(block, *fluid);
        const auto plate = heatpump::plate_of(CollectorModel{}, row.plates, 35.0, 1.0, false);
        const PlateBalance balance(plate, surroundings(row.light, row.air_c, 0.7, 2.0, row.sky_below_k));
        double water_c = 10.0;
        double seconds = 0.0;
        double heat_j = 0.0;
        double work_j = 0.0;
        heatpump::Guess guess;
        while (water_c < 55.0) {
            const Point p = set.point(balance, CondenserZone::uniform(block.condenser_w_k, water_c), {}, guess);
            ASSERT_TRUE(p.running()) << heatpump::reason_text(p.off) << " light " << row.light << " plates "
                                     << row.plates << " water " << water_c;
            guess = {p.suction_c, p.condensing_c};
            seconds += 60.0;
            heat_j += 60.0 * p.condenser_w;
            work_j += 60.0 * p.work_w;
            water_c += 60.0 * p.condenser_w / (250.0 * 4180.0);
        }
        EXPECT_NEAR(seconds / 3600.0 / row.hours, 1.0, hours_tolerance) << row.light << " x" << row.plates;
        if (row.cop > 0.0) {
            EXPECT_NEAR(heat_j / work_j / row.cop, 1.0, cop_tolerance) << row.light << " x" << row.plates;
        }
    }
}

}  // namespace
