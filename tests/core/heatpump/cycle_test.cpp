#include "core/heatpump/cycle.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/core/heatpump/fixture.h"

namespace {

using namespace wg;
using heatpump_test::properties;

TEST(Cycle, efficiencies_are_those_stated) {
    const BlockModel block;
    EXPECT_NEAR(heatpump::volumetric_efficiency(block, 1.0), 0.95, 1e-12);
    EXPECT_NEAR(heatpump::volumetric_efficiency(block, 5.0), 0.77, 1e-12);
    // 0.60 at 3.2; 0.57 at 2 and 5; 0.49 at 8.
    EXPECT_NEAR(heatpump::overall_efficiency(block, 3.2), 0.60, 1e-12);
    EXPECT_NEAR(heatpump::overall_efficiency(block, 2.0), 0.57, 0.005);
    EXPECT_NEAR(heatpump::overall_efficiency(block, 5.0), 0.57, 0.005);
    EXPECT_NEAR(heatpump::overall_efficiency(block, 8.0), 0.49, 0.005);
}

// Ideal cycle R134a 0/55 deg C: suction 14.066 kg/m3, cooling 128.38, isentropic work 34.84 kJ/kg (published equation
// of state), with the stated efficiencies by hand: ratio 5.094, eta_v 0.76577, eta_ov 0.60 (1 - 0.22 ln(5.094/3.2)^2).
TEST(Cycle, agrees_with_a_hand_calculation) {
    const auto fluid = properties("R134a");
    const BlockModel block;
    const auto at = heatpump::cycle_at(block, *fluid, 0.0, 55.0);
    const double mass = 18e-6 * 2900.0 / 60.0 * (0.95 - 0.045 * 4.094) * 14.066;
    const double log_ratio = std::log(5.094 / 3.2);
    const double efficiency = 0.60 * (1.0 - 0.22 * log_ratio * log_ratio);
    EXPECT_NEAR(at.mass_flow_kg_s / mass, 1.0, 2e-3);
    EXPECT_NEAR(at.evaporator_w / (mass * 128380.0), 1.0, 2e-3);
    EXPECT_NEAR(at.work_w / (mass * 34840.0 / efficiency), 1.0, 2e-3);
    EXPECT_NEAR(at.pressure_ratio, 5.094, 0.005);
    EXPECT_GT(at.discharge_c, 65.2);
}

TEST(Map, is_within_a_tenth_of_a_percent_of_the_tables_everywhere_in_the_envelope) {
    constexpr double map_tolerance = 1e-3;
    constexpr unsigned seed = 2900;
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> share;
    for (const auto& [name, displacement] :
         {std::pair{"R134a", 18.0}, {"R290", 12.0}, {"R1234yf", 18.0}, {"R513A", 18.0}}) {
        const auto fluid = properties(name);
        BlockModel block;
        block.displacement_cm3 = displacement;
        const heatpump::CycleMap map(block, *fluid);
        int tested = 0;
        for (int i = 0; i < 4000; ++i) {
            const double te = -25.0 + 50.0 * share(random);
            const double tc = te + 8.0 + (75.0 - te - 8.0) * share(random);
            if (tc < 0.0) continue;
            const auto exact = heatpump::cycle_at(block, *fluid, te, tc);
            if (exact.pressure_ratio > block.pressure_ratio_max || exact.discharge_c > block.discharge_max_c) continue;
            ++tested;
            const auto at = map.at(te, tc);
            ASSERT_NEAR(at.evaporator_w / exact.evaporator_w, 1.0, map_tolerance) << name << te << " " << tc;
            ASSERT_NEAR(at.work_w / exact.work_w, 1.0, map_tolerance) << name << te << " " << tc;
            ASSERT_NEAR(map.discharge_c(te, tc), exact.discharge_c, 0.1) << name << te << " " << tc;
            ASSERT_NEAR(map.suction_rate_w_k(te, tc) / exact.suction_rate_w_k, 1.0, map_tolerance);
            const auto warmer = map.at(te + 1e-4, tc);
            const auto hotter = map.at(te, tc + 1e-4);
            ASSERT_NEAR(at.evaporator_by_te, (warmer.evaporator_w - at.evaporator_w) / 1e-4, 1e-2);
            ASSERT_NEAR(at.evaporator_by_tc, (hotter.evaporator_w - at.evaporator_w) / 1e-4, 1e-2);
            ASSERT_NEAR(at.work_by_tc, (hotter.work_w - at.work_w) / 1e-4, 1e-2);
        }
        EXPECT_GT(tested, 1500) << name;
    }
}

}  // namespace
