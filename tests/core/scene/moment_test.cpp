#include "core/scene/moment.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/constants.h"
#include "core/sky/sun_path.h"

namespace wg::scene {
namespace {

Site at_place(double latitude_deg, double longitude_deg, double utc_offset_h) {
    Site site;
    site.location.latitude_deg = latitude_deg;
    site.location.longitude_deg = longitude_deg;
    site.location.utc_offset_h = utc_offset_h;
    return site;
}

// Elevation at noon is 90 deg less latitude plus declination; declination is 23.44 deg at the June solstice (obliquity
// of the ecliptic, Astronomical Almanac). Noon at 15 deg east of UTC+1 falls within 17 minutes of 12:00 all year.
TEST(Moment, NoonSunStandsWhereGeometryPutsIt) {
    const Site north = at_place(48.0, 15.0, 1.0), south = at_place(-48.0, 15.0, 1.0);
    const int june = sky::day_index(6, 21);
    EXPECT_NEAR(sun_over(north, {june, 12.03}).elevation_deg, 90.0 - 48.0 + 23.44, 0.1);
    EXPECT_NEAR(sun_over(south, {june, 12.03}).elevation_deg, 90.0 - 48.0 - 23.44, 0.15);  // and some refraction
    EXPECT_NEAR(sun_over(north, {june, 12.03}).azimuth_deg, 180.0, 1.5);
    EXPECT_LT(std::abs(std::remainder(sun_over(south, {june, 12.03}).azimuth_deg, 360.0)), 1.5);
}

TEST(Moment, TurnsWithTheSketch) {
    Site site = at_place(48.0, 15.0, 1.0);
    const int equinox = sky::day_index(3, 21);
    const Point3 straight = sun_over(site, {equinox, 12.1}).to_sun;
    EXPECT_LT(straight.y_m, -0.6);  // in the south, down the sketch
    site.sketch_up_azimuth_deg = 180.0;
    EXPECT_GT(sun_over(site, {equinox, 12.1}).to_sun.y_m, 0.6);
}

TEST(Moment, ASurveyedHillHidesALowSun) {
    Site site = at_place(48.0, 15.0, 1.0);
    const Moment noon{sky::day_index(12, 21), 12.0};
    EXPECT_TRUE(sun_over(site, noon).shines());
    site.horizon = {{0.0, 30.0, {}}, {180.0, 30.0, {}}};
    EXPECT_TRUE(sun_over(site, noon).behind_horizon);
    EXPECT_FALSE(sun_over(site, noon).shines());
    EXPECT_FALSE(sun_over(site, {noon.day, 0.0}).up);
    EXPECT_FALSE(sun_over(site, {noon.day, 0.0}).behind_horizon);  // night, not a hill
}

TEST(Moment, DaylightBeginsAndEndsWithTheSunOnTheLevel) {
    const Site site = at_place(47.4, 9.2, 1.0);
    for (const int month : {1, 4, 7, 10}) {
        const int day = sky::day_index(month, 10);
        const auto light = daylight(site, day);
        ASSERT_TRUE(light);
        EXPECT_FALSE(light->all_day);
        // Almanacs count from the upper limb: the middle of the disc is then just below the level, 20 minutes on it is
        // up.
        for (const double edge : {light->from_h, light->to_h}) {
            EXPECT_LT(sun_over(site, {day, edge}).elevation_deg, -0.1);
            EXPECT_GT(sun_over(site, {day, edge}).elevation_deg, -0.9);
        }
        EXPECT_GT(sun_over(site, {day, light->from_h + 0.33}).elevation_deg, 1.0);
        EXPECT_GT(sun_over(site, {day, light->to_h - 0.33}).elevation_deg, 1.0);
    }
    EXPECT_FALSE(daylight(at_place(75.0, 20.0, 1.0), sky::day_index(12, 21)));
    EXPECT_TRUE(daylight(at_place(75.0, 20.0, 1.0), sky::day_index(6, 21))->all_day);
}

}  // namespace
}  // namespace wg::scene
