// Density of water against IAPWS-95, 5 to 80 deg C at 101.325 kPa (CoolProp, with IAPWS-IF97 beside it).

#include <gtest/gtest.h>

#include "core/services/sizing.h"
#include "tests/reference/heat_values.h"

namespace wg::services {
namespace {

TEST(OutsideWater, density_is_that_of_iapws_from_five_to_eighty_degrees) {
    constexpr double kell_1975_kg_m3 = 0.015;  // older temperature scale and data
    const auto& rows = outside::heat_values()["water"];
    ASSERT_EQ(rows.size(), 16u);
    for (const auto& row : rows)
        EXPECT_NEAR(water_density_kg_m3(row[0].get<double>()), row[1].get<double>(), kell_1975_kg_m3) << row;
}

TEST(OutsideWater, expansion_follows_from_the_densities) {
    constexpr double percent = 0.002;
    const auto& rows = outside::heat_values()["water"];
    const double cold = rows[1][1];  // 10 deg C
    for (const auto& row : rows)
        if (row[0].get<double>() > 10.0) {
            EXPECT_NEAR(expansion_l(100.0, 10.0, row[0].get<double>()), 100.0 * (cold / row[1].get<double>() - 1.0),
                        percent)
                << row;
        }
}

}  // namespace
}  // namespace wg::services
