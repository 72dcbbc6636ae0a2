#include "core/sun/day.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

#include "core/quantity/time.h"

namespace wg::sun {
namespace day_test {

// The report prints whole seconds for the middle of an iteration of its own; 2 s is its stated agreement.
constexpr double spa_table_s = 2.0;
constexpr double almanac_s = 60.0;  // tables rounded to the minute: half a minute, and half for their own model
constexpr double example_s = 10.0;  // from memory of the report's worked example

double clock_s(const std::string& iso) {
    return static_cast<double>(instant_from_iso8601(iso).value().unix_s);
}

Observer at(double latitude, double longitude) {
    Observer o;
    o.latitude_deg = latitude;
    o.longitude_deg = longitude;
    return o;
}

struct Row {
    double latitude, longitude;
    CivilDate date;
    const char* rise;
    const char* set;
};

// Reda and Andreas, NREL/TP-560-34302, appendix: sunrise and sunset at longitude 0, UTC, delta-T 64 s.
TEST(SunDay, EqualsTheTableOfTheReport) {
    const Row rows[] = {
        {-35.0, 0.0, {1996, 7, 5}, "1996-07-05T07:08:15Z", "1996-07-05T17:01:04Z"},
        {-35.0, 0.0, {2004, 12, 4}, "2004-12-04T04:38:57Z", "2004-12-04T19:02:02Z"},
        {35.0, 0.0, {1994, 1, 2}, "1994-01-02T07:08:12Z", "1994-01-02T16:59:55Z"},
    };
    for (const Row& row : rows) {
        const SunDay day = sun_day(row.date, at(row.latitude, row.longitude), 64.0);
        ASSERT_TRUE(day.sunrise_unix_s && day.sunset_unix_s);
        EXPECT_NEAR(*day.sunrise_unix_s, clock_s(row.rise), spa_table_s) << row.rise;
        EXPECT_NEAR(*day.sunset_unix_s, clock_s(row.set), spa_table_s) << row.set;
    }
}

// US Naval Observatory tables, whole minutes.
TEST(SunDay, EqualsTheAlmanacToTheMinute) {
    const Row rows[] = {
        {39.0, -105.0, {2015, 1, 2}, "2015-01-02T07:19:00-07:00", "2015-01-02T16:49:00-07:00"},
        {39.0, -105.0, {2015, 4, 2}, "2015-04-02T05:43:00-07:00", "2015-04-02T18:24:00-07:00"},
        {39.0, -105.0, {2015, 8, 2}, "2015-08-02T05:01:00-07:00", "2015-08-02T19:10:00-07:00"},
        {39.0, -105.0, {2015, 12, 2}, "2015-12-02T07:01:00-07:00", "2015-12-02T16:38:00-07:00"},
        {39.917, 116.383, {2015, 1, 2}, "2015-01-02T07:36:00+08:00", "2015-01-02T17:00:00+08:00"},
        {39.917, 116.383, {2015, 4, 2}, "2015-04-02T05:58:00+08:00", "2015-04-02T18:39:00+08:00"},
        {39.917, 116.383, {2015, 8, 2}, "2015-08-02T05:13:00+08:00", "2015-08-02T19:28:00+08:00"},
        {39.917, 116.383, {2015, 12, 2}, "2015-12-02T07:17:00+08:00", "2015-12-02T16:50:00+08:00"},
    };
    for (const Row& row : rows) {
        const SunDay day = sun_day(row.date, at(row.latitude, row.longitude), delta_t_s(2015.5));
        ASSERT_TRUE(day.sunrise_unix_s && day.sunset_unix_s);
        EXPECT_NEAR(*day.sunrise_unix_s, clock_s(row.rise), almanac_s) << row.rise;
        EXPECT_NEAR(*day.sunset_unix_s, clock_s(row.set), almanac_s) << row.set;
    }
}

// NREL/TP-560-34302, appendix A.5 (from memory): 06:12:43 and 17:20:19 local standard time. The report works by days of
// universal time, in which the sunset at UTC-7 found for 17 October is the evening of 16 October by the local calendar.
TEST(SunDay, EqualsTheWorkedExample) {
    const Observer golden = at(39.742476, -105.1786);
    const SunDay day = sun_day({2003, 10, 17}, golden, 67.0);
    EXPECT_NEAR(*day.sunrise_unix_s, clock_s("2003-10-17T06:12:43-07:00"), example_s);
    const SunDay day_before = sun_day({2003, 10, 16}, golden, 67.0);
    EXPECT_NEAR(*day_before.sunset_unix_s, clock_s("2003-10-16T17:20:19-07:00"), example_s);
    // In mid-October the sun sets about a minute and a half earlier each day at 40 N.
    EXPECT_NEAR(*day.sunset_unix_s - *day_before.sunset_unix_s, 86400.0 - 88.0, 5.0);
}

TEST(SunDay, TellsPolarDayPolarNightAndTheSidesOfTheFirstMidnightSun) {
    const Observer north = at(70.0, 25.0);
    const SunDay summer = sun_day({2027, 6, 21}, north, 70.0);
    EXPECT_EQ(summer.kind, DayKind::polar_day);
    EXPECT_FALSE(summer.sunrise_unix_s || summer.sunset_unix_s);
    EXPECT_EQ(summer.day_length_h, 24.0);
    const SunDay winter = sun_day({2027, 12, 21}, north, 70.0);
    EXPECT_EQ(winter.kind, DayKind::polar_night);
    EXPECT_FALSE(winter.sunrise_unix_s || winter.sunset_unix_s);
    EXPECT_EQ(winter.day_length_h, 0.0);
    EXPECT_LT(winter.noon_elevation_deg, -0.83);

    // Through spring the day grows from none to 24 h without a jump back, and there is a day which rises and does not
    // set.
    double previous = 0.0;
    bool one_sided = false;
    for (std::int64_t d = days_from_civil({2027, 1, 1}); d <= days_from_civil({2027, 6, 1}); ++d) {
        const SunDay day = sun_day(civil_from_days(d), north, 70.0);
        EXPECT_GE(day.day_length_h, previous - 1e-9);
        previous = day.day_length_h;
        one_sided = one_sided || (day.sunrise_unix_s.has_value() && !day.sunset_unix_s.has_value());
    }
    EXPECT_TRUE(one_sided);
}

TEST(SunDay, PolesHaveOneDayAYear) {
    EXPECT_EQ(sun_day({2027, 6, 21}, at(90.0, 0.0), 70.0).kind, DayKind::polar_day);
    EXPECT_EQ(sun_day({2027, 12, 21}, at(90.0, 0.0), 70.0).kind, DayKind::polar_night);
    EXPECT_EQ(sun_day({2027, 12, 21}, at(-90.0, 0.0), 70.0).kind, DayKind::polar_day);
}

TEST(SunDay, NoonIsHighestAndNearlyHalfwayBetweenRiseAndSet) {
    const SunDay day = sun_day({2027, 3, 20}, at(47.4, 9.2), 70.0);
    EXPECT_NEAR(day.noon_unix_s, 0.5 * (*day.sunrise_unix_s + *day.sunset_unix_s), 60.0);
    // Equinox: elevation of noon is 90 less latitude plus declination, declination within 0.2 deg of zero on the day.
    EXPECT_NEAR(day.noon_elevation_deg, 90.0 - 47.4, 0.3);
}

TEST(SunDay, WorksNearTheDateLineOnBothSides) {
    for (const double longitude : {-179.9, 179.9}) {
        const SunDay day = sun_day({2027, 4, 1}, at(-20.0, longitude), 70.0);
        ASSERT_TRUE(day.sunrise_unix_s && day.sunset_unix_s);
        const double mean_noon =
            static_cast<double>(days_from_civil({2027, 4, 1})) * 86400.0 + 43200.0 - 240.0 * longitude;
        EXPECT_NEAR(day.noon_unix_s, mean_noon, 17.0 * 60.0);  // equation of time
        EXPECT_NEAR(day.day_length_h, 11.8, 0.3);
    }
}

}  // namespace day_test
}  // namespace wg::sun
