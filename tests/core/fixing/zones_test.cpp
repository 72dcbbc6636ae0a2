#include "core/fixing/zones.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/fixing/zone_tables.h"
#include "core/quantity/constants.h"

namespace wg::fixing {
namespace zones_test {

/// Roof plane 12 m wide whose plan is 6 m deep.
Surface roof(double pitch, RoofForm form = RoofForm::duo_pitch) {
    Surface s;
    s.kind = SurfaceKind::roof;
    s.roof_form = form;
    s.tilt_deg = pitch;
    const double up = 6.0 / std::cos(radians(pitch));
    s.outline = {{0, 0}, {12, 0}, {12, up}, {0, up}};
    return s;
}

/// A plate of 1 x 1 m in plan with its middle at (x, y) in plan.
std::vector<Point2> plate(const Surface& s, double x, double y) {
    const double k = 1.0 / std::cos(radians(s.tilt_deg));
    return {{x - 0.5, (y - 0.5) * k}, {x + 0.5, (y - 0.5) * k}, {x + 0.5, (y + 0.5) * k}, {x - 0.5, (y + 0.5) * k}};
}

TEST(Zones, MiddleOfADuoPitchRoofIsHAndItsCornerF) {
    const Surface s = roof(30.0);
    const double h = 6.0;  // e = min(12, 12): strips of 1.2 m, corners of 3 m
    ZonePressure z = zone_pressure(s, h, plate(s, 6.0, 3.0), 10.0);
    EXPECT_EQ(z.zone_uplift, "H");
    EXPECT_NEAR(z.uplift, -0.8, 1e-12);  // wind along the ridge
    EXPECT_NEAR(z.pressure, 0.4, 1e-12);
    z = zone_pressure(s, h, plate(s, 1.5, 0.6), 10.0);
    EXPECT_NEAR(z.uplift, -1.1, 1e-12);  // F along the ridge; across it is -0.5
    EXPECT_EQ(z.zone_uplift, "F");
    EXPECT_NEAR(z.pressure, 0.7, 1e-12);
    z = zone_pressure(s, h, plate(s, 0.6, 4.5), 10.0);
    EXPECT_EQ(z.zone_uplift, "G");
    EXPECT_NEAR(z.uplift, -1.4, 1e-12);
}

TEST(Zones, APlateTakesTheWorstZoneItReachesInto) {
    const Surface s = roof(15.0);
    const double inside = zone_pressure(s, 6.0, plate(s, 6.0, 1.8), 10.0).uplift;    // lower edge at 1.3 m
    const double reaching = zone_pressure(s, 6.0, plate(s, 6.0, 1.6), 10.0).uplift;  // at 1.1 m: into the strip
    EXPECT_NEAR(inside, -0.6, 1e-12);
    EXPECT_NEAR(reaching, -0.8, 1e-12);
    EXPECT_EQ(zone_pressure(s, 6.0, plate(s, 6.0, 5.0), 10.0).zone_uplift, "J");  // at the ridge
    EXPECT_NEAR(zone_pressure(s, 6.0, plate(s, 6.0, 5.0), 10.0).uplift, -1.0, 1e-12);
}

TEST(Zones, LeftAndRightAreAlike) {
    for (const RoofForm form : {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::flat, RoofForm::hip}) {
        const Surface s = roof(form == RoofForm::flat ? 0.0 : 22.0, form);
        for (double x = 0.6; x < 6.0; x += 0.7) {
            for (double y = 0.6; y < 5.5; y += 0.7) {
                const ZonePressure l = zone_pressure(s, 4.0, plate(s, x, y), 1.6),
                                   r = zone_pressure(s, 4.0, plate(s, 12.0 - x, y), 1.6);
                EXPECT_NEAR(l.uplift, r.uplift, 1e-12);
                EXPECT_NEAR(l.pressure, r.pressure, 1e-12);
            }
        }
    }
}

TEST(Zones, AMiddlePlaceIsNeverWorseThanACorner) {
    for (const RoofForm form : {RoofForm::duo_pitch, RoofForm::mono_pitch, RoofForm::hip}) {
        for (double pitch = 5.0; pitch <= 75.0; pitch += 2.5) {
            const Surface s = roof(pitch, form);
            EXPECT_GE(zone_pressure(s, 5.0, plate(s, 6.0, 3.0), 1.6).uplift,
                      zone_pressure(s, 5.0, plate(s, 0.6, 0.6), 1.6).uplift);
        }
    }
}

TEST(Zones, FlatRoofZonesAreMeasuredFromEveryEdge) {
    Surface s = roof(0.0, RoofForm::flat);
    s.outline = {{0, 0}, {30, 0}, {30, 30}, {0, 30}};
    const double h = 5.0;  // e = 10: strip 1 m, corners 2.5 m, H to 5 m
    EXPECT_NEAR(zone_pressure(s, h, plate(s, 0.6, 0.6), 10.0).uplift, -1.8, 1e-12);
    EXPECT_NEAR(zone_pressure(s, h, plate(s, 29.4, 29.4), 10.0).uplift, -1.8, 1e-12);
    EXPECT_NEAR(zone_pressure(s, h, plate(s, 15, 29.4), 10.0).uplift, -1.2, 1e-12);
    EXPECT_NEAR(zone_pressure(s, h, plate(s, 3.0, 15), 10.0).uplift, -0.7, 1e-12);
    EXPECT_NEAR(zone_pressure(s, h, plate(s, 15, 15), 10.0).uplift, -0.2, 1e-12);
    EXPECT_NEAR(zone_pressure(s, h, plate(s, 15, 15), 10.0).pressure, 0.2, 1e-12);
}

TEST(Zones, WallsHaveAnEdgeZoneAndBothSigns) {
    Surface s;
    s.kind = SurfaceKind::wall;
    s.roof_form = RoofForm::not_a_roof;
    s.tilt_deg = 90.0;
    s.outline = {{0, 0}, {20, 0}, {20, 6}, {0, 6}};
    const std::vector<Point2> at_edge{{0.2, 1}, {2.2, 1}, {2.2, 1.8}, {0.2, 1.8}},
        middle{{9, 1}, {11, 1}, {11, 1.8}, {9, 1.8}};
    EXPECT_EQ(zone_pressure(s, 6.0, at_edge, 10.0).zone_uplift, "A");
    EXPECT_NEAR(zone_pressure(s, 6.0, at_edge, 10.0).uplift, -1.2, 1e-12);  // table 7.1, from memory
    EXPECT_NEAR(zone_pressure(s, 6.0, middle, 10.0).uplift, -0.8, 1e-12);
    EXPECT_NEAR(zone_pressure(s, 6.0, middle, 1.0).pressure, 1.0, 1e-12);
}

TEST(Tables, ValuesBetweenPitchesRunStraightWithinOneSign) {
    // EN 1991-1-4 7.2.5 (4): F at 25 deg, 10 m2: -0.633 and +0.533.
    const tables::Coefficient c = tables::duo_across('F', 25.0);
    EXPECT_NEAR(c.suction_10, -0.633, 1e-3);
    EXPECT_NEAR(c.pressure_10, 0.533, 1e-3);
    EXPECT_EQ(tables::duo_across('F', 45.0).suction_10, 0.0);
    EXPECT_NEAR(tables::duo_across('J', 10.0).suction_1, -1.05, 1e-12);
    EXPECT_EQ(tables::duo_across('G', 3.0).suction_10, -1.2);
    EXPECT_NEAR(tables::duo_across('H', 75.0).pressure_10, 0.8, 1e-12);
}

TEST(Tables, SignsNeverMixAndSmallAreasAreNeverMilder) {
    for (double pitch = 5.0; pitch <= 75.0; pitch += 1.0) {
        for (const char* zone = "FGHIJ"; *zone != '\0'; ++zone) {
            const tables::Coefficient c = tables::duo_across(*zone, pitch);
            EXPECT_LE(c.suction_1, c.suction_10);
            EXPECT_LE(c.suction_10, 0.0);
            EXPECT_GE(c.pressure_10, 0.0);
        }
        for (const char* zone = "ULGHI"; *zone != '\0'; ++zone) {
            EXPECT_LE(tables::mono_across(*zone, pitch).suction_1, tables::mono_across(*zone, pitch).suction_10);
        }
    }
}

TEST(Height, IsTheRidgeOrElseTheHighestCorner) {
    Surface s = roof(30.0);
    s.origin.z_m = 3.0;
    EXPECT_NEAR(building_height_m(s, 0.0), 3.0 + 6.0 * std::tan(radians(30.0)), 1e-9);
    s.ridge_height_m = 8.0;
    EXPECT_EQ(building_height_m(s, 0.0), 8.0);
}

}  // namespace zones_test
}  // namespace wg::fixing
