// Hip roofs, EN 1991-1-4:2005 table 7.5 (from memory) and figure 7.9.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/fixing/zone_outlines.h"
#include "core/fixing/zones.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "tests/tools/sweep.h"

namespace wg::fixing {
namespace hip_test {

/// Long side of a house of 16 x 8 m under hips of one pitch: eaves 16 m, ridge 8 m, 4 m deep in plan.
Surface long_side(double pitch) {
    Surface s;
    s.roof_form = RoofForm::hip;
    s.tilt_deg = pitch;
    const double up = 4.0 / std::cos(radians(pitch));
    s.outline = {{0, 0}, {16, 0}, {12, up}, {4, up}};
    return s;
}
/// Its hip end: a triangle with eaves of 8 m.
Surface hip_end(double pitch) {
    Surface s = long_side(pitch);
    const double up = 4.0 / std::cos(radians(pitch));
    s.outline = {{0, 0}, {8, 0}, {4, up}};
    return s;
}

std::vector<Point2> plate(const Surface& s, double x0, double x1, double y0, double y1) {
    const double k = 1.0 / std::cos(radians(s.tilt_deg));
    return {{x0, y0 * k}, {x1, y0 * k}, {x1, y1 * k}, {x0, y1 * k}};
}

// h 6 m: wind on the eaves e = min(16, 12) = 12: strips of 1.2 m, corners of 3 m. Wind on the hip ends b = 2 x 4 = 8: e
// = 8: L 0.8 m from the hips, M to 4 m, N beyond. Pitch 30, loaded area of 10 m2 and 1 m2.
TEST(Hip, ZonesOfTheLongSideByHand) {
    const Surface s = long_side(30.0);
    const auto at = [&](double x0, double x1, double y0, double y1, double area) {
        return zone_pressure(s, 6.0, plate(s, x0, x1, y0, y1), area);
    };
    EXPECT_NEAR(zone_widths(s, 6.0).across_m, 12.0, 1e-12);
    EXPECT_NEAR(zone_widths(s, 6.0).along_m, 8.0, 1e-9);
    ZonePressure z = at(7.5, 8.5, 1.5, 2.5, 10.0);  // middle: H, I, N
    EXPECT_EQ(z.zone_uplift, "I");
    EXPECT_NEAR(z.uplift, -0.4, 1e-12);
    EXPECT_NEAR(z.pressure, 0.4, 1e-12);
    z = at(7.5, 8.5, 2.9, 3.9, 10.0);  // at the ridge
    EXPECT_EQ(z.zone_uplift, "K");
    EXPECT_NEAR(z.uplift, -0.5, 1e-12);
    z = at(7.5, 8.5, 0.1, 1.1, 10.0);  // eaves between the corners
    EXPECT_EQ(z.zone_uplift, "G");
    EXPECT_NEAR(z.uplift, -0.5, 1e-12);
    EXPECT_NEAR(z.pressure, 0.7, 1e-12);
    z = at(2.5, 2.9, 0.1, 0.5, 1.0);  // corner of the eaves: F, clear of the hip's strips
    EXPECT_EQ(z.zone_uplift, "F");
    EXPECT_NEAR(z.uplift, -1.5, 1e-12);
    EXPECT_NEAR(z.pressure, 0.5, 1e-12);
    z = at(3.4, 3.9, 2.0, 2.5, 10.0);  // 0.64 m from the left hip: L with wind on that hip end
    EXPECT_EQ(z.zone_uplift, "L");
    EXPECT_NEAR(z.uplift, -1.4, 1e-12);
    z = at(3.3, 3.7, 1.5, 1.9, 1.0);  // 0.99 to 1.56 m from it: J reaches 1.2 m; M is as bad for 1 m2
    EXPECT_NEAR(z.uplift, -1.2, 1e-12);
}

// The hip end: wind on it b = 8, e = min(8, 12) = 8: strips 0.8, corners 2.0; without a building drawn the wind on its
// sides takes e = 2h = 12: L 1.2 m, M to 6 m.
TEST(Hip, ZonesOfTheHipEndByHand) {
    const Surface s = hip_end(45.0);
    const auto at = [&](double x0, double x1, double y0, double y1) {
        return zone_pressure(s, 6.0, plate(s, x0, x1, y0, y1), 10.0);
    };
    EXPECT_NEAR(zone_widths(s, 6.0).along_m, 12.0, 1e-9);
    ZonePressure z = at(3.8, 4.2, 1.0, 1.4);  // more than 1.2 m from either hip: M
    EXPECT_EQ(z.zone_uplift, "M");
    EXPECT_NEAR(z.uplift, -0.8, 1e-12);
    EXPECT_NEAR(z.pressure, 0.6, 1e-12);
    z = at(3.8, 4.2, 2.8, 3.4);  // near the top: L of either side
    EXPECT_EQ(z.zone_uplift, "L");
    EXPECT_NEAR(z.uplift, -1.3, 1e-12);
}

TEST(Hip, TableRowsBetweenPitchesNeverMixSigns) {
    // Pitch 20 between 15 and 30: L stays -1.4; K -1.2 to -0.5: -0.967; F presses 0.2 to 0.5: 0.3.
    EXPECT_NEAR(tables::hip('L', 20.0).suction_10, -1.4, 1e-12);
    EXPECT_NEAR(tables::hip('K', 20.0).suction_10, -0.9667, 1e-4);
    EXPECT_NEAR(tables::hip('F', 20.0).pressure_10, 0.3, 1e-12);
    EXPECT_NEAR(tables::hip('F', 75.0).pressure_10, 0.8, 1e-12);
    for (double pitch = 5.0; pitch <= 75.0; pitch += 1.0) {
        for (const char* zone = "FGHIJKLMN"; *zone != '\0'; ++zone) {
            const tables::Coefficient c = tables::hip(*zone, pitch);
            EXPECT_LE(c.suction_1, c.suction_10);
            EXPECT_LE(c.suction_10, 0.0);
            EXPECT_GE(c.pressure_10, 0.0);
        }
    }
}

TEST(Hip, MirroredPlatesAreAlike) {
    const Surface s = long_side(32.0);
    for (double x = 1.5; x < 8.0; x += 0.37) {
        for (double y = 0.1; y < 3.0; y += 0.29) {
            const ZonePressure l = zone_pressure(s, 5.0, plate(s, x, x + 0.9, y, y + 0.6), 0.54);
            const ZonePressure r = zone_pressure(s, 5.0, plate(s, 15.1 - x, 16.0 - x, y, y + 0.6), 0.54);
            EXPECT_NEAR(l.uplift, r.uplift, 1e-12) << x << ' ' << y;
            EXPECT_NEAR(l.pressure, r.pressure, 1e-12);
        }
    }
}

TEST(Hip, TheOutlinesSenseDoesNotMatter) {
    Surface s = long_side(32.0);
    const ZonePressure ccw = zone_pressure(s, 5.0, plate(s, 3, 4, 1, 2), 1.0);
    std::reverse(s.outline.begin(), s.outline.end());
    const ZonePressure cw = zone_pressure(s, 5.0, plate(s, 3, 4, 1, 2), 1.0);
    EXPECT_EQ(ccw.zone_uplift, cw.zone_uplift);
    EXPECT_NEAR(ccw.uplift, cw.uplift, 1e-12);
}

// The drawing must not say anything else than the rating, on slanting zones too.
TEST(Hip, TheDrawingSaysWhatTheRatingSays) {
    std::mt19937 random(5);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    int differing_zones = 0;
    for (const bool end : {false, true}) {
        for (int i = 0; i < sweep::cases(200); ++i) {
            const double pitch = 10.0 + 50.0 * share(random), h = 3.0 + 6.0 * share(random);
            const Surface s = end ? hip_end(pitch) : long_side(pitch);
            const double area = 0.5 + 3.0 * share(random);
            const site::Bounds b = site::bounds_of(s.outline);
            const double x = share(random) * (b.width_m() - 1.2), y = share(random) * (b.height_m() - 0.6);
            const double tilt = 0.4 * (share(random) - 0.5);  // turned a little
            std::vector<Point2> turned;
            for (const Point2 c : {Point2{0, 0}, {1.0, 0}, {1.0, 0.5}, {0, 0.5}})
                turned.push_back({x + c.x_m - tilt * c.y_m, y + c.y_m + tilt * c.x_m});
            if (!site::contains(s.outline, turned)) continue;
            const WindZones zones = wind_zones(s, h, area);
            double worst = 0.0, sum = 0.0;
            for (const ZoneArea& a : zones.areas) {
                sum += std::abs(site::signed_area_m2(a.outline));
                if (site::overlap(a.outline, turned)) worst = std::min(worst, a.uplift);
            }
            EXPECT_NEAR(sum, std::abs(site::signed_area_m2(s.outline)), 1e-4);
            const ZonePressure rated = zone_pressure(s, h, turned, area);
            EXPECT_NEAR(worst, rated.uplift, 1e-9) << x << ' ' << y << " pitch " << pitch << " h " << h;
            differing_zones += rated.zone_uplift != "M";
        }
    }
    EXPECT_GT(differing_zones, sweep::cases(30));
}

TEST(Hip, TheDrawingIsNotAPatchwork) {
    const WindZones zones = wind_zones(long_side(35.0), 6.0, 1.6);
    EXPECT_GE(zones.areas.size(), 5U);
    EXPECT_LE(zones.areas.size(), 40U);
    EXPECT_FALSE(zones.borders.empty());
    EXPECT_FALSE(zones.marks.empty());
}

}  // namespace hip_test
}  // namespace wg::fixing
