#include "core/fixing/snow.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/constants.h"
#include "tests/core/fixing/fixture.h"

namespace wg::fixing {
namespace snow_test {

constexpr double figures = 1e-3;

// EN 1991-1-3:2003 annex C table C.1 (from memory), worked apart from this program: zone 2 at 500 m, zone 3 at 200 m.
TEST(GroundSnow, ByRegionZoneAndAltitude) {
    const struct {
        SnowRule rule;
        double two_500, three_200;
    } rows[] = {
        {SnowRule::alpine, 1.9029, 2.0809},        {SnowRule::central_east, 2.5325, 1.2718},
        {SnowRule::central_west, 0.7636, 0.6170},  {SnowRule::iberian, 0.5445, 0.5442},
        {SnowRule::mediterranean, 1.7500, 1.5367}, {SnowRule::uk_ireland, 1.1780, 0.7192},
    };
    for (const auto& row : rows) {
        EXPECT_NEAR(ground_snow_kn_m2(row.rule, 2.0, 500.0), row.two_500, figures);
        EXPECT_NEAR(ground_snow_kn_m2(row.rule, 3.0, 200.0), row.three_200, figures);
    }
}

TEST(GroundSnow, RisesWithAltitudeAndIsNeverBelowNothing) {
    for (const SnowRule rule : {SnowRule::alpine, SnowRule::central_east, SnowRule::central_west, SnowRule::iberian,
                                SnowRule::mediterranean, SnowRule::uk_ireland}) {
        double before = 0.0;
        for (double a = -100.0; a <= 1500.0; a += 50.0) {
            const double s = ground_snow_kn_m2(rule, 0.4, a);
            EXPECT_GE(s, before);
            before = s;
        }
    }
}

TEST(GroundSnow, TheSitesOwnValueGoesBeforeTheRegion) {
    Input in = plain_input();
    in.rules.snow_rule = SnowRule::alpine;
    in.site.location.altitude_m = 500.0;
    EXPECT_NEAR(site_snow_kn_m2(in.site, in.rules), 1.9029, figures);
    in.site.ground_snow_kn_m2 = 0.8;
    EXPECT_EQ(site_snow_kn_m2(in.site, in.rules), 0.8);
    in.site.ground_snow_kn_m2.reset();
    in.site.location.altitude_m = 1600.0;
    EXPECT_NE(find_code(fixed_up(in).findings, "fixing.snow-altitude"), nullptr);
}

TEST(Snow, ExposureAndThermalFactorsCount) {
    Input in = plain_input();
    const double plain = fixed_up(in).snow_n_m2;
    in.rules.snow_exposure = 0.8;
    in.rules.snow_thermal = 0.9;
    EXPECT_NEAR(fixed_up(in).snow_n_m2 / plain, 0.72, 1e-12);
}

// EN 1991-1-3 5.3.3 (4): not below 0.8 where snow cannot slide off.
TEST(Snow, HeldOnTheRoofItsShapeStays) {
    Input in = plain_input();
    in.site.ground_snow_kn_m2 = 1.0;
    in.surface.tilt_deg = 50.0;
    EXPECT_NEAR(fixed_up(in).snow_n_m2, 266.7, 0.1);
    in.surface.snow_held = true;
    EXPECT_NEAR(fixed_up(in).snow_n_m2, 800.0, 1e-9);
}

// EN 1991-1-3 6.4: F_s = s b sin(pitch). Roof 10 x 6 m at 30 deg, plate 2 x 0.8 m with its upper edge at 3.4 m: 2.6 m
// of slope above, 2.2517 m in plan. s_k 1 kN/m2, mu_1 0.8: F = 800 x 2.2517 x 0.5 = 900.7 N/m, 1801 N on 2 m.
TEST(Slide, ByHand) {
    Input in = plain_input();
    in.site.ground_snow_kn_m2 = 1.0;
    in.surface.tilt_deg = 30.0;
    EXPECT_NEAR(fixed_up(in).snow_slide_n, 1801.3, 0.5);
    // The second figure: 45 deg, mu_1 0.4, 1.8385 m in plan, sin 0.7071: 400 x 1.8385 x 0.7071 x 2 = 1040 N.
    in.surface.tilt_deg = 45.0;
    EXPECT_NEAR(fixed_up(in).snow_slide_n, 1040.0, 0.5);
    in.rules.snow_slides = false;
    EXPECT_EQ(fixed_up(in).snow_slide_n, 0.0);
}

TEST(Slide, StopsAtTheNextCollectorAbove) {
    Input in = plain_input();
    in.site.ground_snow_kn_m2 = 1.0;
    in.surface.tilt_deg = 30.0;
    const double free = fixed_up(in).snow_slide_n;
    in.others = {{{4.0, 4.7}, {6.0, 4.7}, {6.0, 5.5}, {4.0, 5.5}}};  // lower edge 1.3 m above: half the way
    EXPECT_NEAR(fixed_up(in).snow_slide_n, 0.5 * free, 1e-6);
    in.others = {{{5.0, 4.7}, {7.0, 4.7}, {7.0, 5.5}, {5.0, 5.5}}};  // over the right half only
    EXPECT_NEAR(fixed_up(in).snow_slide_n, 0.75 * free, 1e-6);
    in.others = {{{4.0, 1.0}, {6.0, 1.0}, {6.0, 1.8}, {4.0, 1.8}}};  // below: no matter
    EXPECT_NEAR(fixed_up(in).snow_slide_n, free, 1e-6);
}

TEST(Slide, IsSharedAsShearAndTurnsThePlateOver) {
    Input in = plain_input();
    in.site.ground_snow_kn_m2 = 2.0;
    in.site.basic_wind_m_s = 1.0;
    const Outcome with = fixed_up(in);
    in.rules.snow_slides = false;
    const Outcome without = fixed_up(in);
    const double more = 1.5 * with.snow_slide_n / 4.0;
    EXPECT_NEAR(with.points[0].shear_n - without.points[0].shear_n, more, 1e-6);
    EXPECT_GT(with.points[0].push_n, without.points[0].push_n);  // lower points are pressed by the couple
}

// EN 1991-1-3 6.2: h 1 m, s_k 1.5 kN/m2, gamma 2: mu_2 = 1.333, l_s 5 m, 2.0 kN/m2; h 0.5 m, s_k 0.65: 1.538.
TEST(Drift, BehindAnObstruction) {
    SnowDrift d = snow_drift(1.0, 1500.0, 2.0);
    EXPECT_NEAR(d.shape, 1.3333, 1e-4);
    EXPECT_EQ(d.length_m, 5.0);
    EXPECT_NEAR(d.load_n_m2, 2000.0, 1e-6);
    EXPECT_NEAR(snow_drift(0.5, 650.0, 2.0).shape, 1.5385, 1e-4);
    EXPECT_EQ(snow_drift(4.0, 650.0, 2.0).shape, 2.0);
    EXPECT_EQ(snow_drift(4.0, 650.0, 2.0).length_m, 8.0);
    EXPECT_EQ(snow_drift(0.1, 2000.0, 2.0).shape, 0.8);
}

}  // namespace snow_test
}  // namespace wg::fixing
