// Physical constants against CODATA as scipy has it, and water against IAPWS-95.

#include "core/quantity/constants.h"

#include <gtest/gtest.h>

#include "tests/reference/heat_values.h"

namespace {

using namespace wg;

TEST(Constants, are_those_of_codata) {
    const auto& c = outside::heat_values()["constants"];
    constexpr double printed = 1e-9;
    EXPECT_NEAR(stefan_boltzmann_w_m2k4 / c["stefan_boltzmann_w_m2k4"].get<double>(), 1.0, printed);
    EXPECT_EQ(gravity_m_s2, c["gravity_m_s2"].get<double>());
    EXPECT_EQ(kelvin_offset, c["kelvin_offset"].get<double>());
    EXPECT_EQ(standard_pressure_pa, c["standard_pressure_pa"].get<double>());
    EXPECT_EQ(kelvin(-273.15), 0.0);
    EXPECT_NEAR(celsius(kelvin(55.0)), 55.0, 1e-12);
}

// Mean from 10 to 60 deg C by enthalpy; a litre counted as a kilogram is 0.03 % too heavy at 10 deg C.
TEST(Constants, heat_capacity_of_water_is_the_mean_of_its_range) {
    const auto& rows = outside::heat_values()["water"];
    const double mean = (rows[11][3].get<double>() - rows[1][3].get<double>()) / 50.0;
    ASSERT_EQ(rows[1][0], 10.0);
    ASSERT_EQ(rows[11][0], 60.0);
    EXPECT_NEAR(water_specific_heat_j_kgk / mean, 1.0, 1e-3);
    EXPECT_NEAR(water_density_kg_m3 / rows[1][1].get<double>(), 1.0, 4e-4);
}

}  // namespace
