// Compressors by their makers' ten coefficients.

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <random>

#include "tests/core/heatpump/compressor_fixture.h"
#include "tests/core/heatpump/wide_sweep.h"
#include "tests/reference/heat_values.h"
#include "tests/tools/sweep.h"

namespace {

using namespace wg;
using heatpump::CondenserZone;
using heatpump::HeatPump;
using heatpump::Off;
using heatpump::PlateBalance;
using heatpump::Point;
using heatpump_test::by_data;
using heatpump_test::properties;
using heatpump_test::pump;

/// Range with room for the whole of an ordinary year.
CompressorData wide_range() {
    CompressorData like;
    like.evaporating_min_c = -25.0;
    like.evaporating_max_c = 25.0;
    like.condensing_min_c = 10.0;
    like.condensing_max_c = 75.0;
    return like;
}

// EN 12900 and AHRI 540 list the powers of evaporating (S) and condensing (D) temperature in this order.
TEST(TenCoefficients, each_stands_before_the_term_of_the_standard) {
    constexpr int powers[10][2] = {{0, 0}, {1, 0}, {0, 1}, {2, 0}, {1, 1}, {0, 2}, {3, 0}, {2, 1}, {1, 2}, {0, 3}};
    for (std::size_t i = 0; i < 10; ++i) {
        TenCoefficients c{};
        c[i] = 1.7;
        EXPECT_NEAR(en12900(c, -13.0, 47.0), 1.7 * std::pow(-13.0, powers[i][0]) * std::pow(47.0, powers[i][1]), 1e-9)
            << i;
    }
}

// CoolProp 8.0.0 with the correction of Dabiri and Rice 1981: tests/reference/heat_values.py.
TEST(CompressorData, superheat_corrections_are_those_made_with_coolprop) {
    for (const auto& [name, rows] : wg::outside::heat_values()["compressor"].items()) {
        const auto fluid = properties(name);
        for (const auto& row : rows) {
            const double te = row[0];
            const double tc = row[1];
            for (const bool by_gas : {false, true}) {
                BlockModel block;
                block.superheat_k = row[3];
                block.compressor = wide_range();
                block.compressor->output = CompressorOutput::mass_flow_kg_h;
                block.compressor->output_coefficients[0] = 50.0;
                block.compressor->power_w[0] = 700.0;
                block.compressor->suction_superheat_k = row[2];
                if (by_gas) block.compressor->suction_gas_c = te + row[2].get<double>();
                const auto at = heatpump::cycle_at(block, *fluid, te, tc);
                EXPECT_NEAR(at.mass_flow_kg_s / (50.0 / 3600.0), row[4], 3e-4) << name << row;
                EXPECT_NEAR(at.work_w / 700.0, row[5], 1e-3) << name << row;
            }
        }
    }
}

TEST(CompressorData, at_the_conditions_of_the_rating_capacity_and_power_are_those_of_the_sheet) {
    const auto fluid = properties("R134a");
    BlockModel block = by_data(BlockModel{}, *fluid, wide_range());
    block.superheat_k = block.compressor->suction_superheat_k;
    block.subcooling_k = block.compressor->subcooling_k;
    for (const auto& [te, tc] : {std::pair{-20.0, 35.0}, {0.0, 50.0}, {12.5, 66.0}}) {
        const auto at = heatpump::cycle_at(block, *fluid, te, tc);
        const double capacity_w = en12900(block.compressor->output_coefficients, te, tc);
        EXPECT_NEAR(at.evaporator_w / capacity_w, 1.0, 1e-12);
        EXPECT_NEAR(at.work_w / en12900(block.compressor->power_w, te, tc), 1.0, 1e-12);
        // Subcooling adds its own enthalpy and nothing else.
        block.subcooling_k = 6.0;
        const double gained =
            at.mass_flow_kg_s * (fluid->liquid_enthalpy_j_kg(tc) - fluid->liquid_enthalpy_j_kg(tc - 6.0));
        EXPECT_NEAR(heatpump::cycle_at(block, *fluid, te, tc).evaporator_w, at.evaporator_w + gained, 1e-6);
        block.subcooling_k = 0.0;
    }
}

TEST(CompressorData, gas_leaves_with_the_work_less_the_shells_loss) {
    const auto fluid = properties("R290");
    BlockModel block;
    block.displacement_cm3 = 11.0;
    block.refrigerant = Refrigerant::r290;
    block = by_data(block, *fluid, wide_range());
    for (const auto& [te, tc] : {std::pair{-15.0, 40.0}, {5.0, 60.0}}) {
        const auto at = heatpump::cycle_at(block, *fluid, te, tc);
        const double leaves = fluid->vapour(tc, at.discharge_c - tc).enthalpy_j_kg;
        const double enters = fluid->vapour(te, block.superheat_k).enthalpy_j_kg;
        EXPECT_NEAR(at.mass_flow_kg_s * (leaves - enters), (1.0 - block.shell_loss) * at.work_w, 1e-3 * at.work_w);
    }
}

// Both ways of stating one compressor: what is left is what ten coefficients cannot follow.
TEST(CompressorData, a_fit_to_the_efficiency_curves_gives_their_operating_points) {
    for (const CompressorOutput output : {CompressorOutput::capacity_w, CompressorOutput::mass_flow_kg_h}) {
        heatpump_test::WideSweep sweep(31);
        int compared = 0;
        int running = 0;
        for (const Refrigerant kind : {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf}) {
            const auto fluid = properties(name_of(kind));
            BlockModel curves;
            curves.refrigerant = kind;
            curves.displacement_cm3 = kind == Refrigerant::r290 ? 12.0 : 18.0;
            curves.least_lift_k = 18.0;
            curves.evaporating_min_c = -15.0;
            curves.evaporating_max_c = 12.0;
            CompressorData like = wide_range();
            like.output = output;
            like.suction_superheat_k = curves.superheat_k;
            like.evaporating_min_c = -15.0;
            like.evaporating_max_c = 12.0;
            like.condensing_min_c = 22.0;
            like.condensing_max_c = 65.0;
            const HeatPump by_curves = pump(curves, *fluid);
            const HeatPump by_fit = pump(by_data(curves, *fluid, like), *fluid);
            for (int i = 0; i < 200; ++i) {
                const auto plate = sweep.plate();
                const PlateBalance balance(plate, sweep.weather());
                const CondenserZone zone = sweep.water(220.0);
                const Point a = by_curves.point(balance, zone, {}, {});
                const Point b = by_fit.point(balance, zone, {}, {});
                if (!a.running() || !b.running()) continue;
                // Ten coefficients do not follow the work everywhere, least at small lifts: no fault of the point.
                const auto exact = heatpump::cycle_at(curves, *fluid, a.suction_c, a.condensing_c);
                const auto poly = heatpump::cycle_at(by_fit.block(), *fluid, a.suction_c, a.condensing_c);
                ++running;
                if (std::abs(poly.work_w / exact.work_w - 1.0) > 3e-3) continue;
                ++compared;
                ASSERT_NEAR(b.condenser_w / a.condenser_w, 1.0, 5e-3) << i;
                ASSERT_NEAR(b.evaporator_w / a.evaporator_w, 1.0, 5e-3) << i;
                ASSERT_NEAR(b.work_w / a.work_w, 1.0, 5e-3) << i << " " << b.suction_c << " " << b.condensing_c;
            }
        }
        EXPECT_GT(compared, 100);
        EXPECT_GT(2 * compared, running) << "the fit follows the curves over most of the range";
    }
}

TEST(CompressorData, outside_the_stated_range_the_pump_is_off_and_says_why) {
    const auto fluid = properties("R134a");
    CompressorData like = wide_range();
    like.condensing_min_c = 30.0;
    like.condensing_max_c = 60.0;
    like.evaporating_min_c = -10.0;
    like.evaporating_max_c = 10.0;
    const HeatPump set = pump(by_data(BlockModel{}, *fluid, like), *fluid);
    const auto plate = heatpump::plate_of(CollectorModel{}, 2, 45.0, 1.0, false);
    const auto off_at = [&](double light, double air_c, double water_c) {
        const PlateBalance balance(plate, heatpump_test::surroundings(light, air_c, 0.6, 2.0, 8.0));
        const Point p = set.point(balance, CondenserZone::uniform(220.0, water_c), {}, {});
        EXPECT_TRUE(p.running() || (p.condenser_w == 0.0 && p.work_w == 0.0 && p.evaporator_w == 0.0));
        return p.off;
    };
    EXPECT_EQ(off_at(200.0, 10.0, 40.0), Off::none);
    EXPECT_EQ(off_at(200.0, 10.0, 8.0), Off::beyond_data) << "condensing below the data";
    EXPECT_EQ(off_at(200.0, 10.0, 58.0), Off::beyond_data) << "condensing above the data";
    EXPECT_EQ(off_at(0.0, -8.0, 40.0), Off::beyond_data) << "evaporating below the data";
    EXPECT_EQ(off_at(900.0, 30.0, 40.0), Off::beyond_data) << "evaporating above the data";
    EXPECT_NE(std::string(heatpump::reason_text(Off::beyond_data)).find("data"), std::string::npos);

    const auto table = heatpump::performance_map(set, {-20.0, 0.0, 20.0}, {40.0});
    EXPECT_EQ(table.points[0].off, Off::beyond_data);
    EXPECT_EQ(table.points[1].off, Off::none);
    EXPECT_EQ(table.points[2].off, Off::beyond_data);
}

// A valve that holds the evaporating temperature within the data: strong sun is no reason to stop.
TEST(CompressorData, the_upper_evaporating_limit_is_held_within_the_data) {
    const auto fluid = properties("R134a");
    BlockModel block;
    block.evaporating_max_c = 10.0;
    CompressorData like = wide_range();
    like.evaporating_max_c = 10.0;
    const HeatPump set = pump(by_data(block, *fluid, like), *fluid);
    const auto plate = heatpump::plate_of(CollectorModel{}, 2, 45.0, 1.0, false);
    const PlateBalance balance(plate, heatpump_test::surroundings(900.0, 30.0, 0.6, 2.0, 8.0));
    const Point p = set.point(balance, CondenserZone::uniform(220.0, 40.0), {}, {});
    EXPECT_TRUE(p.running());
    EXPECT_TRUE(p.pressure_limited);
    EXPECT_DOUBLE_EQ(p.suction_c, 10.0);
}

TEST(CompressorData, the_range_is_a_rectangle_or_a_polygon_in_it) {
    CompressorData data = wide_range();
    EXPECT_TRUE(data.covers(-25.0, 75.0));
    EXPECT_FALSE(data.covers(-25.1, 40.0));
    data.range = {{-20.0, 10.0}, {-20.0, 50.0}, {-10.0, 70.0}, {20.0, 70.0}, {20.0, 30.0}, {0.0, 10.0}};
    EXPECT_TRUE(data.covers(-15.0, 59.9));
    EXPECT_FALSE(data.covers(-15.0, 60.1)) << "half way up a sloping side";
    EXPECT_TRUE(data.covers(10.0, 20.1));
    EXPECT_FALSE(data.covers(10.0, 19.9));
    EXPECT_TRUE(data.covers(-20.0, 10.0)) << "a corner is in";
    EXPECT_FALSE(data.covers(-22.0, 40.0)) << "in the rectangle, not in the polygon";
    EXPECT_FALSE(data.covers(std::nan(""), 40.0));
    EXPECT_FALSE(data.covers(0.0, std::nan("")));
}

TEST(CompressorData, the_map_follows_the_coefficients_to_the_edge_of_their_range) {
    const auto fluid = properties("R134a");
    CompressorData like = wide_range();
    like.range = {{-21.0, 11.0}, {-21.0, 52.0}, {-9.0, 71.0}, {19.0, 71.0}, {19.0, 33.0}, {-1.0, 11.0}};
    BlockModel block;
    block.least_lift_k = 14.0;
    block = by_data(block, *fluid, like);
    const heatpump::CycleMap map(block, *fluid);
    std::mt19937 random(5);
    std::uniform_real_distribution<double> share;
    int tested = 0;
    for (int i = 0; i < 4000; ++i) {
        const double te = -21.0 + 40.0 * share(random);
        const double tc = 11.0 + 60.0 * share(random);
        if (!block.compressor->covers(te, tc) || tc < te + 14.0) continue;
        const auto exact = heatpump::cycle_at(block, *fluid, te, tc);
        if (exact.discharge_c > block.discharge_max_c) continue;
        ++tested;
        const auto at = map.at(te, tc);
        ASSERT_NEAR(at.evaporator_w / exact.evaporator_w, 1.0, 1e-3) << te << " " << tc;
        ASSERT_NEAR(at.work_w / exact.work_w, 1.0, 1e-3) << te << " " << tc;
        ASSERT_NEAR(map.discharge_c(te, tc), exact.discharge_c, 0.1) << te << " " << tc;
    }
    EXPECT_GT(tested, 1500);
}

TEST(CompressorData, a_scaled_compressor_takes_less_work_or_passes_more_gas) {
    const auto fluid = properties("R134a");
    for (const bool data : {false, true}) {
        const BlockModel base = data ? by_data(BlockModel{}, *fluid, wide_range()) : BlockModel{};
        const auto before = heatpump::cycle_at(base, *fluid, 0.0, 50.0);
        BlockModel better = base;
        heatpump::scale_efficiency(better, 1.05);
        const auto saving = heatpump::cycle_at(better, *fluid, 0.0, 50.0);
        EXPECT_NEAR(saving.work_w * 1.05, before.work_w, 1e-9 * before.work_w);
        EXPECT_DOUBLE_EQ(saving.mass_flow_kg_s, before.mass_flow_kg_s);
        BlockModel fuller = base;
        heatpump::scale_filling(fuller, 1.03);
        const auto more = heatpump::cycle_at(fuller, *fluid, 0.0, 50.0);
        EXPECT_GT(more.mass_flow_kg_s, 1.029 * before.mass_flow_kg_s);
        EXPECT_NEAR(more.work_w / more.mass_flow_kg_s, before.work_w / before.mass_flow_kg_s, 1e-6);
    }
}

TEST(CompressorData, impossible_coefficients_are_problems_that_name_field_and_state) {
    const auto fluid = properties("R134a");
    const BlockModel good = by_data(BlockModel{}, *fluid, wide_range());
    ASSERT_TRUE(heatpump::problems_of(good, *fluid).empty()) << text_of(heatpump::problems_of(good, *fluid));
    const auto refused = [&](auto change, const char* field) {
        BlockModel block = good;
        change(block);
        const auto problems = heatpump::problems_of(block, *fluid);
        ASSERT_EQ(problems.size(), 1U) << field;
        EXPECT_NE(problems[0].where.find(field), std::string::npos) << problems[0].text();
        EXPECT_FALSE(problems[0].remedy.empty());
    };
    refused([](BlockModel& b) { heatpump::scale_efficiency(b, 1000.0); }, "power_w");  // kW
    refused([](BlockModel& b) { heatpump::scale_efficiency(b, 0.05); }, "power_w");
    refused([](BlockModel& b) { b.compressor->output_coefficients[0] -= 2000.0; }, "capacity_w");
    refused([](BlockModel& b) { b.compressor->output_coefficients[1] = -20.0; }, "compressor");
    refused([](BlockModel& b) { b.compressor->output_coefficients[4] = std::nan(""); }, "capacity_w");
    refused([](BlockModel& b) { b.compressor->power_w[4] = std::nan(""); }, "power_w");
    refused([](BlockModel& b) { b.compressor->suction_gas_c = 0.0; }, "suction_gas_c");
    refused([](BlockModel& b) { b.compressor->evaporating_min_c = 26.0; }, "compressor");
    // Figures of the curves mean nothing beside the coefficients.
    BlockModel block = good;
    block.displacement_cm3 = 0.0;
    EXPECT_TRUE(heatpump::problems_of(block, *fluid).empty());
}

TEST(CompressorData, random_compressors_close_their_balances_and_never_leave_their_range) {
    const int cases = sweep::cases(20000);
    heatpump_test::WideSweep sweep(12900);
    std::vector<std::shared_ptr<const refrigerant::Properties>> fluids;
    std::vector<HeatPump> pool;
    for (const Refrigerant kind : {Refrigerant::r134a, Refrigerant::r290, Refrigerant::r1234yf, Refrigerant::r513a}) {
        fluids.push_back(properties(name_of(kind)));
        for (int i = 0; i < 15; ++i) {
            BlockModel block = sweep.block(kind);
            block.least_lift_k = sweep.between(10, 16);
            CompressorData like = wide_range();
            like.output = sweep.chance(0.5) ? CompressorOutput::capacity_w : CompressorOutput::mass_flow_kg_h;
            like.suction_superheat_k = sweep.between(0, 20);
            if (sweep.chance(0.3)) like.suction_gas_c = 30.0;
            like.subcooling_k = sweep.between(0, 8);
            like.evaporating_min_c = sweep.between(-25, -10);
            like.evaporating_max_c = sweep.between(10, 25);
            like.condensing_min_c = sweep.between(10, 25);
            like.condensing_max_c = sweep.between(60, 75);
            if (sweep.chance(0.5))
                like.range = {{like.evaporating_min_c, like.condensing_min_c},
                              {like.evaporating_min_c, 50.0},
                              {-5.0, like.condensing_max_c},
                              {like.evaporating_max_c, like.condensing_max_c},
                              {like.evaporating_max_c, 40.0},
                              {0.0, like.condensing_min_c}};
            block.compressor.reset();
            auto made = HeatPump::make(by_data(block, *fluids.back(), like), *fluids.back());
            if (made) pool.push_back(made.value());
        }
    }
    ASSERT_GT(pool.size(), 45U);
    std::map<Off, int> count;
    for (int i = 0; i < cases; ++i) {
        const HeatPump& set = pool[static_cast<std::size_t>(i) % pool.size()];
        const auto plate = sweep.plate();
        PlateBalance balance(plate, sweep.weather());
        balance.set_frost(sweep.frost(), 600.0);
        const CondenserZone zone = sweep.water(set.block().condenser_w_k);
        const heatpump::Line line = sweep.line();
        const Point p = set.point(balance, zone, line, sweep.guess());
        ++count[p.off];
        const auto& h = p.plate;
        for (const double x : {p.suction_c, p.condensing_c, p.plate_c, p.discharge_c, p.pressure_ratio, p.evaporator_w,
                               p.line_w, p.work_w, p.shell_loss_w, p.condenser_w, h.light_w, h.air_w, h.latent_w})
            ASSERT_TRUE(std::isfinite(x)) << i;
        ASSERT_LE(p.evaluations, 90) << i;
        if (!p.running()) {
            ASSERT_EQ(p.condenser_w + p.work_w + p.evaporator_w, 0.0) << i;
            continue;
        }
        ASSERT_TRUE(set.block().compressor->covers(p.suction_c, p.condensing_c)) << i;
        const double miss = h.light_w + h.air_w + h.long_wave_w + h.latent_w - h.melt_w + p.line_w + p.work_w -
                            p.shell_loss_w - p.condenser_w;
        ASSERT_LE(std::abs(miss), 1e-6 * (p.condenser_w + p.work_w) + heatpump::balance_tolerance_w) << i;
        const double carnot = kelvin(p.condensing_c) / (p.condensing_c - p.suction_c);
        ASSERT_GT(p.work_w, 0.0) << i;
        ASSERT_LT(p.cop(), carnot) << i;
        // Whatever the start, the same point.
        if (i % 10 != 0) continue;
        const Point again = set.point(balance, zone, line, {p.suction_c, p.condensing_c});
        ASSERT_EQ(again.off, p.off) << i;
        ASSERT_NEAR(again.condenser_w, p.condenser_w, 0.05) << i;
    }
    EXPECT_GT(count[Off::none], cases / 4);
    EXPECT_GT(count[Off::beyond_data], cases / 20);
}

}  // namespace
