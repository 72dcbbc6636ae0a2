// Figures behind the pictures: the map of tilt and bearing, clear mornings against clear afternoons.

#include <gtest/gtest.h>

#include <cmath>

#include "core/sky/clear_days.h"
#include "core/sky/orientation_map.h"
#include "core/sun/clear_sky.h"
#include "tests/core/sky/year_fixture.h"

namespace wg::sky {
namespace {

TEST(OrientationMapTest, grid_points_are_the_years_sums_and_no_plane_beats_the_best) {
    const PreparedYear& year = harrowmere_year();
    const OrientationMap map = orientation_map(year, 0.25);
    const DaylightYear day = daylight(year, map.model);
    for (const double tilt : {0.0, 35.0, 90.0}) {
        for (const double azimuth : {0.0, 135.0, 180.0, 355.0}) {
            EXPECT_NEAR(map.at(tilt, azimuth), orientation_kwh_m2(day, tilt, azimuth, 0.25), 1e-6);
        }
    }
    EXPECT_NEAR(map.at(40.0, 360.0), map.at(40.0, 0.0), 1e-9);
    for (int tilt = 0; tilt <= 90; ++tilt) {
        for (int azimuth = 120; azimuth < 240; ++azimuth)
            EXPECT_LE(orientation_kwh_m2(day, tilt, azimuth, 0.25), map.best_kwh_m2 + 1e-9);
    }
    EXPECT_NEAR(orientation_kwh_m2(day, map.best_tilt_deg, map.best_azimuth_deg, 0.25), map.best_kwh_m2, 1e-9);
}

TEST(OrientationMapTest, mirrored_hemisphere_looks_north) {
    PreparedYear year = harrowmere_year();
    year.latitude_deg = -year.latitude_deg;
    for (double& north : year.sun_north)
        north = -north;
    const OrientationMap north = orientation_map(harrowmere_year(), 0.2);
    const OrientationMap south = orientation_map(year, 0.2);
    EXPECT_NEAR(south.best_kwh_m2, north.best_kwh_m2, 1e-6);
    EXPECT_EQ(south.best_tilt_deg, north.best_tilt_deg);
    EXPECT_NEAR(std::cos((south.best_azimuth_deg + north.best_azimuth_deg) / 57.29577951), -1.0, 1e-9);
}

PreparedYear cloudless(double shift_h) {
    PreparedYear year = harrowmere_year();
    const std::size_t n = year.sun_up.size();
    for (std::size_t i = 0; i < n; ++i) {
        // Light of a clear sky, stamped late or early: between the values of the hours beside.
        const double here = sun::haurwitz_global_w_m2(std::fmax(0.0, year.sun_up[i]));
        const double before = sun::haurwitz_global_w_m2(std::fmax(0.0, year.sun_up[(i + n - 1) % n]));
        year.global_w_m2[i] = (1.0 - shift_h) * here + shift_h * before;
    }
    return year;
}

TEST(ClearDaysTest, a_cloudless_year_is_all_ones_and_a_late_clock_shows) {
    const ClearDayProfile right = clear_day_profile(cloudless(0.0));
    EXPECT_GT(right.days, 300);
    for (std::size_t bin = 0; bin < ClearDayProfile::bins; ++bin) {
        if (right.morning.hours[bin] > 0) EXPECT_NEAR(right.morning.share[bin], 1.0, 1e-9);
        if (right.afternoon.hours[bin] > 0) EXPECT_NEAR(right.afternoon.share[bin], 1.0, 1e-9);
    }
    const ClearDayProfile late = clear_day_profile(cloudless(0.5));
    EXPECT_LT(late.morning.share[2], 0.9) << "light that comes later than the sun lacks in the morning";
    EXPECT_GT(late.afternoon.share[2], 1.1);
}

TEST(ClearDaysTest, dark_and_empty_years_have_no_clear_day) {
    PreparedYear year = harrowmere_year();
    year.global_w_m2.assign(year.global_w_m2.size(), 0.0);
    EXPECT_EQ(clear_day_profile(year).days, 0);
    EXPECT_EQ(clear_day_profile(PreparedYear{}).days, 0);
}

}  // namespace
}  // namespace wg::sky
