// Curves of equipment data against the equations that they stand for.

#include "core/heatpump/curves.h"

#include <gtest/gtest.h>

#include "core/heatpump/cycle.h"
#include "tests/core/heatpump/fixture.h"

namespace wg::heatpump {
namespace curves_test {
namespace {

TEST(Curves, ATestedCollectorFollowsTheStandardsOwnEquation) {
    CollectorModel model;
    model.iso9806 = Iso9806{};
    Iso9806& c = *model.iso9806;
    c.zero_loss = 0.8;
    c.diffuse = 0.9;
    c.a1 = 12.0;
    c.a2 = 0.01;
    c.a3 = 2.0;
    c.a6 = 0.02;
    c.a8 = 1e-8;
    for (const CollectorCurve& curve : collector_curves(model, {1.0, 3.0, 6.0})) {
        ASSERT_GT(curve.points.size(), 10U);
        for (const CollectorCurvePoint& p : curve.points) {
            // ISO 9806:2017, equation of the quasi-dynamic model at steady state and normal incidence, with u' = u - 3
            // and G 85 % beam.
            const double x = p.reduced_m2k_w * 800.0;
            const double u = curve.wind_m_s - 3.0;
            const double heat = 0.8 * (0.85 * 800.0 + 0.9 * 0.15 * 800.0) - 12.0 * x - 0.01 * x * x - 2.0 * u * x -
                                0.02 * u * 800.0 - 1e-8 * x * x * x * x;
            EXPECT_NEAR(p.efficiency, heat / 800.0, 1e-12) << x;
        }
    }
}

TEST(Curves, APlatesBalanceIsMetOnItsCurve) {
    const CollectorModel model;
    const auto curves = collector_curves(model, {1.0, 5.0});
    ASSERT_EQ(curves.size(), 2U);
    for (const CollectorCurve& curve : curves) {
        double before = 10.0;
        for (const CollectorCurvePoint& p : curve.points) {
            EXPECT_LT(p.efficiency, before) << "falls as the fluid gets warmer";
            before = p.efficiency;
            // The same from the other side: the plate at the temperature at which it gives that heat.
            const Plate plate = plate_of(model, 1, 45.0, 1.0, false);
            Surroundings around;
            around.front_w_m2 = 800.0;
            around.air_c = 20.0;
            around.dew_point_c = -60.0;
            around.wind_m_s = curve.wind_m_s;
            around.sky_k = 293.15;
            const double heat_w = p.efficiency * 800.0 * model.length_m * model.width_m;
            const double plate_c = PlateBalance(plate, around).temperature_at(heat_w, 20.0);
            EXPECT_NEAR(plate_c - heat_w / plate.refrigerant_w_k, 20.0 + 800.0 * p.reduced_m2k_w, 1e-3);
        }
    }
    // Fluid colder than the air: stronger wind gives more; warmer: less.
    EXPECT_GT(curves[1].points.front().efficiency, curves[0].points.front().efficiency);
    EXPECT_LT(curves[1].points.back().efficiency, curves[0].points.back().efficiency);
}

TEST(Curves, ABlocksHeatIsEvaporatorAndWorkLessTheShellInsideItsEnvelope) {
    const auto fluid = heatpump_test::properties("R134a");
    ASSERT_NE(fluid, nullptr);
    BlockModel block;
    const auto curves = block_curves(block, *fluid, {35.0, 55.0, 90.0}).value();
    ASSERT_EQ(curves.size(), 3U);
    EXPECT_TRUE(curves[2].points.empty()) << "above the highest condensing temperature";
    for (const BlockCurve& curve : curves) {
        for (const BlockCurvePoint& p : curve.points) {
            const CycleState state = cycle_at(block, *fluid, p.evaporating_c, curve.condensing_c);
            EXPECT_DOUBLE_EQ(p.heat_w, state.evaporator_w + state.work_w * (1.0 - block.shell_loss));
            EXPECT_LE(state.pressure_ratio, block.pressure_ratio_max);
            EXPECT_LE(state.discharge_c, block.discharge_max_c);
            EXPECT_GE(curve.condensing_c - p.evaporating_c, block.least_lift_k);
            EXPECT_LT(p.cop(), (curve.condensing_c + 273.15) / (curve.condensing_c - p.evaporating_c)) << "Carnot";
        }
    }
    ASSERT_FALSE(curves[0].points.empty());
    EXPECT_GT(curves[0].points.back().heat_w, curves[0].points.front().heat_w);
    EXPECT_GT(curves[0].points.front().evaporating_c, block.evaporating_min_c - 1e-9);
    block.shell_loss = 0.4;
    EXPECT_FALSE(block_curves(block, *fluid, {35.0}).ok()) << "as the block itself is refused";
}

}  // namespace
}  // namespace curves_test
}  // namespace wg::heatpump
