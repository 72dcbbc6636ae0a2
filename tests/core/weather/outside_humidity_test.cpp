// Humidity of weather files against PsychroLib (ASHRAE Handbook Fundamentals 2017).

#include <gtest/gtest.h>

#include "core/weather/humidity.h"
#include "tests/reference/heat_values.h"

namespace wg::weather {
namespace {

// Above 0 deg C; below, PsychroLib gives a frost point over ice, weather files a dew point over water.
TEST(OutsideHumidity, dew_point_of_a_vapour_pressure_is_that_of_the_table) {
    constexpr double tolerance_k = 0.06;
    int compared = 0;
    for (const auto& row : outside::heat_values()["moist_air"]) {
        const double dew = row[3];
        if (dew < 0.0) continue;
        EXPECT_NEAR(dew_point_of_vapour_c(row[2].get<double>()), dew, tolerance_k) << row;
        ++compared;
    }
    EXPECT_GT(compared, 50);
}

// Over supercooled water: IAPWS G12-15 in balance with IAPWS-95.
TEST(OutsideHumidity, dew_point_below_freezing_is_over_water) {
    constexpr double tolerance_k = 0.05;
    for (const auto& row : outside::heat_values()["vapour_pressure"]["over_supercooled_water"])
        EXPECT_NEAR(dew_point_of_vapour_c(row[1].get<double>()), row[0].get<double>(), tolerance_k) << row;
}

}  // namespace
}  // namespace wg::weather
