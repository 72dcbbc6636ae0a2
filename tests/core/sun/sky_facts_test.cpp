// Facts of the sphere that every roofer's sun chart shows, by the full position.

#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/sun/day.h"
#include "core/sun/position.h"

namespace wg::sun {
namespace sky_facts_test {

Observer at(double latitude) {
    Observer o;
    o.latitude_deg = latitude;
    o.longitude_deg = 9.0;
    o.pressure_pa = 0.0;  // geometry
    return o;
}

Position at_moment(double unix_s, const Observer& o) {
    const double whole = std::floor(unix_s);
    return position(Instant{static_cast<std::int64_t>(whole)}, unix_s - whole, o, delta_t_s(2027.5));
}

// Spherical astronomy: at declination 0 the sun rises due east. By the sun's rate of 0.4 deg of declination a day it is
// not exactly 0 at that sunrise, which shifts the bearing by declination/cos(latitude).
TEST(SkyFacts, EquinoxSunRisesDueEastAndSetsDueWest) {
    for (const double latitude : {-45.0, -10.0, 0.0, 30.0, 47.4, 60.0}) {
        const Observer o = at(latitude);
        const SunDay day = sun_day({2027, 3, 20}, o, delta_t_s(2027.5));
        // The geometric horizon is crossed some minutes after the almanac's sunrise: walk there.
        double rise_s = *day.sunrise_unix_s;
        while (at_moment(rise_s, o).zenith_deg > 90.0)
            rise_s += 1.0;
        const Position rise = at_moment(rise_s, o);
        const double shift = rise.declination_deg / std::cos(radians(latitude));
        EXPECT_NEAR(rise.azimuth_deg, 90.0 - shift, 0.02) << latitude;
        EXPECT_NEAR(rise.azimuth_deg, 90.0, 0.8) << latitude;
        double set_s = *day.sunset_unix_s;
        while (at_moment(set_s, o).zenith_deg > 90.0)
            set_s -= 1.0;
        EXPECT_NEAR(at_moment(set_s, o).azimuth_deg, 270.0, 0.8) << latitude;
    }
}

// Noon height is 90 less the angle between latitude and declination, less the parallax of up to 8.8".
TEST(SkyFacts, NoonHeightIsNinetyLessLatitudeFromDeclination) {
    for (const double latitude : {-66.0, -35.0, -23.44, 0.0, 10.0, 23.44, 47.4, 66.0}) {
        for (const int month : {1, 3, 5, 6, 8, 10, 12}) {
            const Observer o = at(latitude);
            const SunDay day = sun_day({2027, month, 21}, o, delta_t_s(2027.5));
            const double declination = at_moment(day.noon_unix_s, o).declination_deg;
            EXPECT_NEAR(day.noon_elevation_deg, 90.0 - std::fabs(latitude - declination), 0.003)
                << latitude << " month " << month;
        }
    }
}

TEST(SkyFacts, PolesSeeTheSunAtItsDeclinationAllDay) {
    for (const double latitude : {90.0, -90.0}) {
        for (int hour = 0; hour < 24; ++hour) {
            const double unix_s = 1813564800.0 + 3600.0 * hour;  // 2027-06-21
            const Position p = at_moment(unix_s, at(latitude));
            EXPECT_NEAR(90.0 - p.zenith_deg, (latitude > 0.0 ? 1.0 : -1.0) * p.declination_deg, 0.003) << hour;
        }
    }
}

// 0.8333 deg of disc and air on either side: 2 * 0.8333/15/cos(declination) hours more than 12, and up to 15 s from the
// change of the equation of time during the day.
TEST(SkyFacts, DayAndNightAreEvenOnTheEquatorButForTheDiscAndTheAir) {
    for (const int month : {3, 6, 9, 12}) {
        const SunDay day = sun_day({2027, month, 21}, at(0.0), delta_t_s(2027.5));
        const double declination = radians(at_moment(day.noon_unix_s, at(0.0)).declination_deg);
        EXPECT_NEAR(day.day_length_h, 12.0 + 2.0 * 0.8333 / 15.0 / std::cos(declination), 0.006) << month;
    }
}

// Duffie and Beckman, Ex. 1.5.1: Madison, 89.4 W, standard meridian 90 W, 3 February: equation of time -13.5 min, 10:30
// standard time is 10:19 solar time. The book's series (Spencer) is within half a minute of the almanac.
TEST(SkyFacts, SolarTimeOfTheTextbook) {
    const Instant moment = instant_from_iso8601("2027-02-03T10:30:00-06:00").value();
    Observer madison = at(43.1);
    madison.longitude_deg = -89.4;
    const double equation = position(moment, 0.0, madison, delta_t_s(2027.1)).equation_of_time_min;
    EXPECT_NEAR(equation, -13.5, 0.5);
    EXPECT_NEAR(30.0 + 4.0 * (90.0 - 89.4) + equation, 19.0, 0.5);
}

}  // namespace sky_facts_test
}  // namespace wg::sun
