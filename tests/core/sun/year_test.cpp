#include "core/sun/year.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/sun/ephemeris.h"

namespace wg::sun {
namespace {

YearSunInput mid_latitude() {
    return {47.4, 9.2, 520.0, 1.0, 30.0, weather_sun_year};
}

double share_sum_of_day(const YearSun& sun, int day) {
    double sum = 0.0;
    for (int h = 0; h < 24; ++h)
        sum += sun.up_share[static_cast<std::size_t>(24 * day + h)];
    return sum;
}

TEST(YearSun, HasTheHourOfTheFullSeries) {
    const YearSun sun = year_sun(mid_latitude());
    ASSERT_EQ(sun.up.size(), 8760u);
    Observer o;
    o.latitude_deg = 47.4;
    o.longitude_deg = 9.2;
    o.altitude_m = 520.0;
    o.pressure_pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * 520.0, 5.25588);
    const double start = year_start_unix_s(weather_sun_year, 1.0);
    for (std::size_t i = 11; i < 8760; i += 24 * 7) {  // noon hours: no sunrise inside
        const Position p =
            position(Instant{static_cast<std::int64_t>(start) + static_cast<std::int64_t>(i) * 3600 + 1800}, 0.0, o,
                     delta_t_s(weather_sun_year + 0.5));
        const double zenith = degrees(std::acos(sun.up[i]));
        const double azimuth = wrap_360(degrees(std::atan2(sun.east[i], sun.north[i])));
        EXPECT_LT(angular_separation_deg(p.apparent_zenith_deg, p.azimuth_deg, zenith, azimuth), 1e-4) << i;
        EXPECT_EQ(sun.up_share[i], 1.0);
    }
}

TEST(YearSun, SunIsUpInEveryHourThatHasAShareAndDownInEveryOther) {
    for (const double latitude : {0.0, 47.4, -35.0, 66.0, 68.5, -78.0, 90.0}) {
        YearSunInput input = mid_latitude();
        input.latitude_deg = latitude;
        const YearSun sun = year_sun(input);
        for (std::size_t i = 0; i < 8760; ++i) {
            ASSERT_GE(sun.up_share[i], 0.0);
            ASSERT_LE(sun.up_share[i], 1.0);
            ASSERT_EQ(sun.up_share[i] > 0.0, sun.up[i] > 0.0)
                << latitude << " hour " << i << " share " << sun.up_share[i] << " up " << sun.up[i];
        }
    }
}

TEST(YearSun, MiddleOfTheSunUpPartLiesBetweenSunriseAndTheHoursEnd) {
    const YearSun sun = year_sun(mid_latitude());
    int checked = 0;
    for (std::size_t i = 1; i + 1 < 8760; ++i) {
        if (sun.up_share[i] <= 0.0 || sun.up_share[i] >= 1.0 || sun.up_share[i + 1] < 1.0) continue;
        // Sunrise hour: the sun climbs about 15 deg * cos(latitude) an hour at most, half of it on average over the
        // part.
        const double elevation_deg = degrees(std::asin(sun.up[i]));
        EXPECT_GT(elevation_deg, 0.0);
        EXPECT_LT(elevation_deg, 15.0 * std::cos(radians(47.4)) * 0.5 * sun.up_share[i] + 0.3);
        ++checked;
    }
    EXPECT_GT(checked, 350);
}

TEST(YearSun, DayLengthBySharesAgreesWithGeometry) {
    // Sunset hour angle arccos(-tan(latitude) tan(declination)): 40 N at the solstices 14.85 and 9.15 h (spherical
    // astronomy, no refraction, centre of the disc). Refraction of 34' adds 2 * 0.5667 / 15 h / cos(...) = 6 to 8
    // minutes.
    YearSunInput input = mid_latitude();
    input.latitude_deg = 40.0;
    input.altitude_m = 0.0;
    const YearSun sun = year_sun(input);
    EXPECT_NEAR(share_sum_of_day(sun, 171), 14.85 + 0.115, 0.03);
    EXPECT_NEAR(share_sum_of_day(sun, 354), 9.15 + 0.105, 0.03);
}

TEST(YearSun, PolarNightHasNoSunAndPolarDayHasItRoundTheClock) {
    YearSunInput input = mid_latitude();
    input.latitude_deg = 78.0;
    const YearSun sun = year_sun(input);
    EXPECT_EQ(share_sum_of_day(sun, 0), 0.0);
    EXPECT_EQ(share_sum_of_day(sun, 172), 24.0);
    input.latitude_deg = -78.0;
    const YearSun south = year_sun(input);
    EXPECT_EQ(share_sum_of_day(south, 0), 24.0);
    EXPECT_EQ(share_sum_of_day(south, 172), 0.0);
}

TEST(YearSun, NoonSunStandsSouthInTheNorthAndNorthInTheSouth) {
    YearSunInput input{45.0, 0.0, 0.0, 0.0, 30.0, weather_sun_year};
    EXPECT_LT(year_sun(input).north[24 * 80 + 12], 0.0);
    input.latitude_deg = -45.0;
    EXPECT_GT(year_sun(input).north[24 * 80 + 12], 0.0);
}

TEST(YearSun, AnotherMinuteIsTakenAsItIs) {
    YearSunInput at_10 = mid_latitude();
    at_10.minute = 10.0;
    const YearSun sun = year_sun(at_10);
    Observer o;
    o.latitude_deg = 47.4;
    o.longitude_deg = 9.2;
    o.altitude_m = 520.0;
    o.pressure_pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * 520.0, 5.25588);
    const double start = year_start_unix_s(weather_sun_year, 1.0);
    for (std::size_t i = 0; i < 8760; i += 101) {
        const Position p =
            position(Instant{static_cast<std::int64_t>(start) + static_cast<std::int64_t>(i) * 3600 + 600}, 0.0, o,
                     delta_t_s(weather_sun_year + 0.5));
        EXPECT_NEAR(degrees(std::acos(sun.up[i])), p.apparent_zenith_deg, 1e-4) << i;
    }
}

TEST(YearSun, LeapYearLeavesOut29FebruaryAndNothingElse) {
    YearSunInput input = mid_latitude();
    input.year = 2028;
    const YearSun sun = year_sun(input);
    Observer o;
    o.latitude_deg = 47.4;
    o.longitude_deg = 9.2;
    o.altitude_m = 520.0;
    o.pressure_pa = 101325.0 * std::pow(1.0 - 2.25577e-5 * 520.0, 5.25588);
    const auto noon_zenith = [&](CivilDate date) {
        const Instant at{days_from_civil(date) * 86400 + 12 * 3600 + 1800 - 3600};
        return position(at, 0.0, o, delta_t_s(2028.5)).apparent_zenith_deg;
    };
    EXPECT_NEAR(degrees(std::acos(sun.up[58 * 24 + 12])), noon_zenith({2028, 2, 28}), 1e-4);
    EXPECT_NEAR(degrees(std::acos(sun.up[59 * 24 + 12])), noon_zenith({2028, 3, 1}), 1e-4);
    EXPECT_NEAR(degrees(std::acos(sun.up[364 * 24 + 12])), noon_zenith({2028, 12, 31}), 1e-4);
}

}  // namespace
}  // namespace wg::sun
