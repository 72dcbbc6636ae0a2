// The worked example of the published algorithm, every intermediate.
// Source of the expected values: Reda and Andreas, Solar Position Algorithm for Solar Radiation Applications,
// NREL/TP-560-34302 (2003, rev. 2008), appendix A.5 and table A5.1.

#include <gtest/gtest.h>

#include "core/quantity/angle.h"
#include "core/quantity/time.h"
#include "core/sun/geocentric.h"
#include "core/sun/position.h"

namespace wg::sun {
namespace {

constexpr double printed_6 = 1e-6;  // the report prints six to ten decimals; this is the last one common to all
constexpr double printed_5 = 1e-5;  // five decimals printed
constexpr double printed_4 = 1e-4;  // four decimals printed

// 2003-10-17 12:30:30 at UTC-7.
Instant example_time() {
    return instant_from_iso8601("2003-10-17T12:30:30-07:00").value();
}

constexpr double example_delta_t_s = 67.0;

Observer example_observer() {
    Observer o;
    o.latitude_deg = 39.742476;
    o.longitude_deg = -105.1786;
    o.altitude_m = 1830.14;
    o.pressure_pa = 82000.0;
    o.temperature_c = 11.0;
    return o;
}

Geocentric example_sun() {
    return geocentric(days_since_j2000(example_time(), 0.0), example_delta_t_s);
}

TEST(SpaWorkedExample, JulianTimes) {
    const Geocentric g = example_sun();
    EXPECT_NEAR(g.julian_day, 2452930.312847, printed_6);
    EXPECT_NEAR(g.ephemeris_day, 2452930.313623, printed_5);
    EXPECT_NEAR(g.ephemeris_millennium, 0.00379278199, 1e-10);
}

TEST(SpaWorkedExample, HeliocentricPlaceOfTheEarth) {
    const Geocentric g = example_sun();
    EXPECT_NEAR(g.heliocentric_longitude_deg, 24.0182616917, printed_6);
    EXPECT_NEAR(g.heliocentric_latitude_deg, -0.0001011219, printed_6);
    EXPECT_NEAR(g.distance_au, 0.9965422974, printed_6);
}

TEST(SpaWorkedExample, Nutation) {
    const Geocentric g = example_sun();
    EXPECT_NEAR(g.nutation_x_deg[0], 17185.861179, printed_5);
    EXPECT_NEAR(g.nutation_x_deg[1], 1722.893218, printed_5);
    EXPECT_NEAR(g.nutation_x_deg[2], 18234.075703, printed_5);
    EXPECT_NEAR(g.nutation_x_deg[3], 18420.071012, printed_5);
    EXPECT_NEAR(g.nutation_x_deg[4], 51.686951, printed_5);
    EXPECT_NEAR(g.nutation_longitude_deg, -0.00399840, printed_6);
    EXPECT_NEAR(g.nutation_obliquity_deg, 0.00166657, printed_6);
    EXPECT_NEAR(g.true_obliquity_deg, 23.440465, printed_6);
    EXPECT_NEAR(g.aberration_deg, -0.005711, printed_6);
    EXPECT_NEAR(g.apparent_longitude_deg, 204.0085519281, printed_6);
}

TEST(SpaWorkedExample, SiderealTimeAndEquatorialPlace) {
    const Geocentric g = example_sun();
    EXPECT_NEAR(g.mean_sidereal_deg, 318.515579, 1e-3);
    EXPECT_NEAR(g.apparent_sidereal_deg, 318.511910, printed_5);
    EXPECT_NEAR(g.right_ascension_deg, 202.227408, printed_5);
    EXPECT_NEAR(g.declination_deg, -9.31434, printed_4);
    EXPECT_NEAR(g.equation_of_time_min, 14.64, 0.01);
}

TEST(SpaWorkedExample, PlaceInTheSkyOfTheObserver) {
    const Topocentric t = topocentric(example_sun(), example_observer());
    EXPECT_NEAR(t.hour_angle_deg, 11.10590, printed_4);
    EXPECT_NEAR(t.parallax_deg, 0.002451, printed_6);
    EXPECT_NEAR(t.parallax_right_ascension_deg, -0.000369, printed_6);
    EXPECT_NEAR(t.right_ascension_deg, 202.22704, printed_5);
    EXPECT_NEAR(t.declination_deg, -9.316179, printed_5);
    EXPECT_NEAR(t.topocentric_hour_angle_deg, 11.10627, 2.0 * printed_5);  // printed from unrounded figures elsewhere
    EXPECT_NEAR(t.elevation_deg, 39.872046, printed_5);
    EXPECT_NEAR(t.refraction_deg, 0.016332, printed_5);
    EXPECT_NEAR(t.azimuth_deg, 194.340241, printed_4);
}

TEST(SpaWorkedExample, Position) {
    const Position p = position(example_time(), 0.0, example_observer(), example_delta_t_s);
    EXPECT_NEAR(p.apparent_zenith_deg, 50.11162, printed_4);
    EXPECT_NEAR(p.zenith_deg, 90.0 - 39.872046, printed_5);
    EXPECT_NEAR(p.azimuth_deg, 194.340241, printed_4);
    EXPECT_NEAR(p.distance_au, 0.9965422974, printed_6);
}

TEST(SpaWorkedExample, WithoutAirApparentEqualsTrueZenith) {
    Observer o = example_observer();
    o.pressure_pa = 0.0;
    const Position p = position(example_time(), 0.0, o, example_delta_t_s);
    EXPECT_EQ(p.apparent_zenith_deg, p.zenith_deg);
}

TEST(SpaWorkedExample, FractionOfASecondMovesTheSun) {
    const Position at = position(example_time(), 0.0, example_observer(), example_delta_t_s);
    const Position later = position(example_time(), 0.5, example_observer(), example_delta_t_s);
    const double moved = angular_separation_deg(at.zenith_deg, at.azimuth_deg, later.zenith_deg, later.azimuth_deg);
    // 15 arc seconds of hour angle a second, times cos(declination).
    EXPECT_NEAR(moved, 0.5 * 15.0 / 3600.0 * 0.98681, 2e-6);
}

}  // namespace
}  // namespace wg::sun
