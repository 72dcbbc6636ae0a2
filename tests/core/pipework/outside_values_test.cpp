// Friction, viscosity and dew point against the libraries fluids, CoolProp and PsychroLib.

#include <gtest/gtest.h>

#include <cmath>

#include "core/pipework/tube.h"
#include "tests/reference/heat_values.h"

namespace wg::pipework {
namespace {

using outside::heat_values;

TEST(OutsidePipework, churchill_is_that_of_another_implementation) {
    constexpr double rounding = 1e-6;  // eight digits are kept
    ASSERT_GE(heat_values()["friction"].size(), 28u);
    for (const auto& row : heat_values()["friction"])
        EXPECT_NEAR(friction_churchill1977(row[0].get<double>(), row[1].get<double>()) / row[2].get<double>(), 1.0,
                    rounding)
            << row;
}

TEST(OutsidePipework, churchill_is_within_four_percent_of_colebrook_in_turbulent_flow) {
    constexpr double tolerance = 0.04;  // worst at Re 4,000, the edge of turbulence; 1.5 % from Re 50,000
    for (const auto& row : heat_values()["friction"])
        if (row[0].get<double>() >= 4e3) {
            const double f = friction_churchill1977(row[0].get<double>(), row[1].get<double>());
            EXPECT_NEAR(f / row[3].get<double>(), 1.0, row[0].get<double>() < 5e4 ? tolerance : 0.015) << row;
        }
}

// PsychroLib gives a frost point below 0 deg C: only dew points are compared.
TEST(OutsidePipework, dew_point_is_that_of_psychrolib) {
    constexpr double tolerance_k = 0.08;
    int compared = 0;
    for (const auto& row : heat_values()["moist_air"]) {
        const double air = row[0];
        const double dew = row[3];
        if (dew < 0.5 || air < 0.0) continue;
        const double saturated_pa = 611.2 * std::exp(17.62 * air / (243.12 + air));
        EXPECT_NEAR(dew_point_c(air, row[2].get<double>() / saturated_pa), dew, tolerance_k) << row;
        ++compared;
    }
    EXPECT_GT(compared, 40);
}

}  // namespace
}  // namespace wg::pipework
