// Other heights, and which year is nearest.

#include "core/weather/altitude.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/weather/humidity.h"
#include "core/weather/nearest.h"
#include "core/weather/read.h"
#include "tests/core/weather/made_files.h"

namespace wg::weather {
namespace {

const Year& year_at_520_m() {
    static const Year year = read_epw(epw_text(made_year(47.4, 9.2, 520.0, 1.0)), "made").value();
    return year;
}

TEST(Altitude, PressureFollowsTheStandardAtmosphere) {
    // ISO 2533:1975, table of the standard atmosphere (from memory): 15 deg C and 101,325 Pa at sea level.
    EXPECT_NEAR(pressure_moved_pa(101325.0, 15.0, 500.0), 95461.0, 1.0);
    EXPECT_NEAR(pressure_moved_pa(101325.0, 15.0, 1000.0), 89876.0, 2.0);
    EXPECT_NEAR(pressure_moved_pa(101325.0, 15.0, 3000.0), 70109.0, 2.0);  // of geopotential metres
    // Down again.
    const double up = pressure_moved_pa(101325.0, 15.0, 800.0);
    EXPECT_NEAR(pressure_moved_pa(up, 15.0 - 5.2, -800.0), 101325.0, 1e-6);
}

TEST(Altitude, AYearMovedUpIsColderThinnerAndAsHumid) {
    const Result<MovedYear> result = at_altitude(year_at_520_m(), 820.0);
    ASSERT_TRUE(result) << text_of(result.problems());
    const MovedYear& moved = result.value();
    const Year& before = year_at_520_m();
    EXPECT_EQ(moved.higher_m, 300.0);
    EXPECT_EQ(moved.year.altitude_m, 820.0);
    EXPECT_TRUE(moved.caution.empty());
    for (std::size_t i = 0; i < 8760; i += 7) {
        ASSERT_NEAR(moved.year.air_c[i], before.air_c[i] - 1.95, 1e-9);
        ASSERT_NEAR(relative_humidity(moved.year.air_c[i], moved.year.dew_point_c[i]),
                    relative_humidity(before.air_c[i], before.dew_point_c[i]), 1e-9);
        ASSERT_LE(moved.year.dew_point_c[i], moved.year.air_c[i]);
        ASSERT_NEAR(moved.year.pressure_pa[i] / before.pressure_pa[i], 0.965, 0.003);
        ASSERT_LT(moved.year.sky_long_wave_w_m2[i], before.sky_long_wave_w_m2[i]);
    }
    EXPECT_EQ(moved.year.global_w_m2, before.global_w_m2);
    EXPECT_EQ(moved.year.wind_m_s, before.wind_m_s);
    EXPECT_NE(moved.year.remarks.back().find("Moved from 520 to 820 m: air -1.95 K"), std::string::npos)
        << moved.year.remarks.back();
}

TEST(Altitude, MovingThereAndBackGivesTheYearAgain) {
    const Year there = at_altitude(year_at_520_m(), 1500.0).value().year;
    const Year back = at_altitude(there, 520.0).value().year;
    for (std::size_t i = 0; i < 8760; i += 11) {
        ASSERT_NEAR(back.air_c[i], year_at_520_m().air_c[i], 1e-9);
        ASSERT_NEAR(back.dew_point_c[i], year_at_520_m().dew_point_c[i], 1e-9);
        ASSERT_NEAR(back.pressure_pa[i], year_at_520_m().pressure_pa[i], 1e-6);
        ASSERT_NEAR(back.sky_long_wave_w_m2[i], year_at_520_m().sky_long_wave_w_m2[i], 1e-9);
    }
}

TEST(Altitude, FarUpOrDownComesWithACaution) {
    EXPECT_NE(at_altitude(year_at_520_m(), 921.0).value().caution.find("401 m lower"), std::string::npos);
    EXPECT_TRUE(at_altitude(year_at_520_m(), 920.0).value().caution.empty());
    EXPECT_NE(at_altitude(year_at_520_m(), 0.0).value().caution.find("520 m higher"), std::string::npos);
}

TEST(Altitude, TheSameHeightChangesNothingAndAbsurdOnesAreRefused) {
    const MovedYear same = at_altitude(year_at_520_m(), 520.4).value();
    EXPECT_EQ(same.year.air_c, year_at_520_m().air_c);
    EXPECT_EQ(same.year.remarks, year_at_520_m().remarks);
    for (const double altitude : {-451.0, 6001.0, std::numeric_limits<double>::quiet_NaN()})
        EXPECT_FALSE(at_altitude(year_at_520_m(), altitude));
}

TEST(Nearest, DistancesAreThoseOfTheSphere) {
    // A quarter of a meridian, a degree of the equator, and across the date line.
    EXPECT_NEAR(great_circle_km({0, 0, {}}, {90, 50, {}}), 10007.557, 0.001);
    EXPECT_NEAR(great_circle_km({0, 179.5, {}}, {0, -179.5, {}}), 111.195, 0.001);
    EXPECT_NEAR(great_circle_km({47, 9, {}}, {47, 9.00001, {}}), 0.000758, 0.000001);
    // Great-circle distance of airports LAX to BNA, the worked example common for the haversine formula: 2887.26 km on
    // a sphere of 6372.8 km.
    EXPECT_NEAR(great_circle_km({33.94, -118.40, {}}, {36.12, -86.67, {}}), 2887.26 * 6371.0088 / 6372.8, 0.5);
}

TEST(Nearest, HeightCountsBesideDistance) {
    const Spot site = {47.0, 9.0, 500.0};
    const std::vector<Spot> spots = {{47.0, 9.5, 520.0}, {47.0, 9.1, 1600.0}, {48.0, 9.0, 500.0}, {47.1, 9.0, {}}};
    const std::vector<Near> order = nearest(site, spots, 10);
    ASSERT_EQ(order.size(), 4U);
    EXPECT_EQ(order[0].index, 3U);
    EXPECT_FALSE(order[0].higher_m.has_value());
    EXPECT_EQ(order[1].index, 0U);
    EXPECT_EQ(order[2].index, 2U);
    EXPECT_EQ(order[3].index, 1U) << "near by, but 1100 m up";
    EXPECT_NEAR(order[3].order_km, order[3].distance_km + 275.0, 1e-9);
    EXPECT_TRUE(order[1].caution.empty());
    EXPECT_NE(order[2].caution.find("111 km away"), std::string::npos) << order[2].caution;
    EXPECT_NE(order[3].caution.find("1100 m higher"), std::string::npos) << order[3].caution;
    EXPECT_EQ(nearest(site, spots, 2).size(), 2U);
}

TEST(Nearest, EqualPlacesKeepTheirOrderAndBrokenOnesAreLeftOut) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const std::vector<Near> order =
        nearest({47, 9, 500.0}, {{47, 10, 500.0}, {nan, 9, 500.0}, {47, 10, 500.0}, {47, 8, 500.0}}, 10);
    ASSERT_EQ(order.size(), 3U);
    EXPECT_EQ(order[0].index, 0U);
    EXPECT_EQ(order[1].index, 2U);
    EXPECT_TRUE(nearest({47, 9, {}}, {}, 5).empty());
}

}  // namespace
}  // namespace wg::weather
