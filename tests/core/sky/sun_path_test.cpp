#include "core/sky/sun_path.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sky/plane.h"

namespace wg::sky {
namespace {

constexpr double step_deg = 0.7;  ///< a ten-minute table misses the top of the day by up to this near the zenith
constexpr double step_h = 0.05;   ///< straight lines between its points

TEST(SunTableTest, noon_height_is_90_less_latitude_plus_declination) {
    // Duffie and Beckman eq. 1.6.6 at noon; declination at the solstices 23.44 deg.
    for (const double latitude : {-66.0, -34.0, 12.0, 48.0, 61.0}) {
        const SunTable table = sun_table({latitude, 15.0, 0.0, 1.0});
        const double june = sun_day_facts(table, day_index(6, 21)).highest_deg;
        const double december = sun_day_facts(table, day_index(12, 21)).highest_deg;
        EXPECT_NEAR(june, 90.0 - std::fabs(latitude - 23.44), step_deg) << latitude;
        EXPECT_NEAR(december, 90.0 - std::fabs(latitude + 23.44), step_deg) << latitude;
    }
}

TEST(SunTableTest, equinox_sun_rises_due_east_and_sets_due_west) {
    for (const double latitude : {-45.0, 0.0, 55.0}) {
        const SunTable table = sun_table({latitude, 0.0, 0.0, 0.0});
        const int day = day_index(3, 20);
        const SunDayFacts facts = sun_day_facts(table, day);
        ASSERT_TRUE(facts.rise_h && facts.set_h);
        const auto bearing = [&](double hour) {
            const auto step = static_cast<int>(std::lround(hour * sun_steps_per_day / 24.0));
            return static_cast<double>(table.azimuth_deg[SunTable::index(day, step)]);
        };
        // 1.5 deg: half a table step of the sun's slanting rise, and refraction.
        EXPECT_NEAR(bearing(*facts.rise_h), 90.0, 1.5) << latitude;
        EXPECT_NEAR(bearing(*facts.set_h), 270.0, 1.5) << latitude;
        EXPECT_NEAR(*facts.set_h - *facts.rise_h, 12.0, 0.2) << latitude;
    }
}

TEST(SunTableTest, polar_day_and_night_are_told) {
    const SunTable table = sun_table({78.0, 15.0, 0.0, 1.0});
    EXPECT_TRUE(sun_day_facts(table, day_index(6, 21)).up_all_day);
    EXPECT_FALSE(sun_day_facts(table, day_index(6, 21)).rise_h.has_value());
    EXPECT_TRUE(sun_day_facts(table, day_index(12, 21)).down_all_day);
    const SunDayFacts spring = sun_day_facts(table, day_index(3, 20));
    EXPECT_FALSE(spring.up_all_day || spring.down_all_day);
}

TEST(SunTableTest, time_is_that_of_the_zone) {
    // 15 deg east in UTC+1: the sun's noon is 12:00 less the equation of time, which is near zero on 15 April.
    const SunTable table = sun_table({40.0, 15.0, 0.0, 1.0});
    const SunDayFacts facts = sun_day_facts(table, day_index(4, 15));
    EXPECT_NEAR(0.5 * (*facts.rise_h + *facts.set_h), 12.0, step_h);
    // The same meridian in UTC+2.5 is an hour and a half later on the clock.
    const SunDayFacts later = sun_day_facts(sun_table({40.0, 15.0, 0.0, 2.5}), day_index(4, 15));
    EXPECT_NEAR(*later.rise_h - *facts.rise_h, 1.5, step_h);
}

TEST(SunWhenTest, finds_the_moment_back_and_refuses_the_pole_side) {
    const SunTable table = sun_table({50.0, 10.0, 0.0, 1.0});
    const std::size_t i = SunTable::index(day_index(2, 10), 66);  // 11:00
    const auto found = sun_when(table, static_cast<double>(table.azimuth_deg[i]),
                                static_cast<double>(table.elevation_deg[i]), 0, day_index(6, 21), 1.0);
    ASSERT_TRUE(found.has_value());
    EXPECT_EQ(found->day, day_index(2, 10));
    EXPECT_NEAR(found->hour, 11.0, 1e-9);
    EXPECT_LT(found->off_deg, 0.01);
    EXPECT_FALSE(sun_when(table, 0.0, 45.0, 0, 364, 1.0).has_value()) << "no sun high in the north at 50 N";
}

TEST(SunPathTest, days_and_dates_go_both_ways) {
    for (int day = 0; day < 365; ++day) {
        const CivilDate date = date_of_day(day);
        EXPECT_EQ(day_index(date.month, date.day), day);
    }
    EXPECT_EQ(equator_bearing_deg(10.0), 180.0);
    EXPECT_EQ(equator_bearing_deg(-10.0), 0.0);
}

TEST(BehindPlateTest, agrees_with_the_angle_of_incidence) {
    for (double tilt = 0.0; tilt <= 90.0; tilt += 15.0) {
        for (double bearing = 0.0; bearing < 360.0; bearing += 20.0) {
            const double limit = behind_plate_below_deg(tilt, 200.0, bearing);
            for (double up = 2.5; up < 90.0; up += 5.0) {
                if (std::fabs(up - limit) < 1e-6) continue;
                const bool seen = cos_incidence(tilt, 200.0, 90.0 - up, bearing) > 1e-12;
                EXPECT_EQ(seen, up > limit) << tilt << ' ' << bearing << ' ' << up;
            }
        }
    }
}

}  // namespace
}  // namespace wg::sky
