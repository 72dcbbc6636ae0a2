#include <gtest/gtest.h>

#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "core/site/vec.h"

namespace wg::site {
namespace placement_test {

constexpr double round_off_m = 1e-12;

CollectorModel plate() {
    CollectorModel m;
    m.length_m = 2.0;
    m.width_m = 0.8;
    m.liquid_connection = {1.8, 0.0};
    m.suction_connection = {1.9, 0.0};
    m.fixing_points = {{0.3, 0.1}, {1.7, 0.1}, {0.3, 0.7}, {1.7, 0.7}};
    m.stand_off_m = 0.1;
    return m;
}

Surface roof() {
    Surface s;
    s.id = "roof";
    s.tilt_deg = 30.0;
    s.azimuth_deg = 180.0;
    s.origin = {0.0, 0.0, 3.0};
    s.outline = {{0, 0}, {8, 0}, {8, 5}, {0, 5}};
    return s;
}

Placement at(double x, double y, double turn_deg = 0.0) {
    Placement p;
    p.surface_id = "roof";
    p.x_m = x;
    p.y_m = y;
    p.turn_deg = turn_deg;
    return p;
}

TEST(Place, LiesParallelToTheRoofAtItsStandOff) {
    const PlacedCollector c = place(roof(), 0.0, at(4.0, 2.0), plate());
    ASSERT_EQ(c.outline.size(), 4U);
    EXPECT_NEAR(c.outline[0].x_m, 3.0, round_off_m);
    EXPECT_NEAR(c.outline[0].y_m, 1.6, round_off_m);
    EXPECT_NEAR(c.liquid_connection.x_m, 4.8, round_off_m);
    EXPECT_NEAR(c.liquid_connection.y_m, 1.6, round_off_m);
    const Frame f = frame_of(roof(), 0.0);
    for (const Point3 corner : c.corners)
        EXPECT_NEAR(dot(corner - f.origin, f.normal), 0.1, round_off_m);
    EXPECT_NEAR(c.lowest_m, 3.0 + 1.6 * 0.5 + 0.1 * std::cos(radians(30.0)), round_off_m);
    EXPECT_NEAR(c.highest_m - c.lowest_m, 0.8 * 0.5, round_off_m);
    EXPECT_EQ(c.tilt_deg, 30.0);
    EXPECT_EQ(c.azimuth_deg, 180.0);
}

TEST(Place, LeftHandIsTheMirrorImage) {
    Placement left = at(4.0, 2.0);
    left.hand = Hand::left;
    const PlacedCollector r = place(roof(), 0.0, at(4.0, 2.0), plate()), l = place(roof(), 0.0, left, plate());
    EXPECT_NEAR(l.liquid_connection.x_m - 4.0, -(r.liquid_connection.x_m - 4.0), round_off_m);
    EXPECT_NEAR(l.suction_connection.y_m, r.suction_connection.y_m, round_off_m);
    EXPECT_EQ(l.outline, r.outline);
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(l.fixing_points[i].x_m - 4.0, -(r.fixing_points[i].x_m - 4.0), round_off_m);
}

TEST(Place, TurnsCounterClockwiseAboutItsMiddle) {
    const PlacedCollector c = place(roof(), 0.0, at(4.0, 2.0, 90.0), plate());
    EXPECT_NEAR(c.outline[0].x_m, 4.4, round_off_m);  // own lower left corner comes to the lower right
    EXPECT_NEAR(c.outline[0].y_m, 1.0, round_off_m);
    EXPECT_EQ(c.connection_turn_deg, 90.0);
    EXPECT_NEAR(c.liquid_connection.x_m, 4.4, round_off_m);  // lower edge now on the right
    EXPECT_EQ(place(roof(), 0.0, at(4.0, 2.0, 270.0), plate()).connection_turn_deg, -90.0);
    EXPECT_NEAR(place(roof(), 0.0, at(4.0, 2.0, 180.0), plate()).liquid_connection.y_m, 2.4, round_off_m);
}

TEST(Place, OnAFrameItStandsUpFromALevelRoof) {
    Surface flat = roof();
    flat.tilt_deg = 0.0;
    Placement p = at(4.0, 2.0);
    p.frame_tilt_deg = 60.0;
    p.frame_azimuth_deg = 180.0;
    const PlacedCollector c = place(flat, 0.0, p, plate());
    EXPECT_EQ(c.tilt_deg, 60.0);
    EXPECT_NEAR(c.lowest_m, 3.1, round_off_m);
    EXPECT_NEAR(c.highest_m, 3.1 + 0.8 * std::sin(radians(60.0)), round_off_m);
    EXPECT_NEAR(bounds_of(c.outline).height_m(), 0.8 * 0.5, round_off_m);
    EXPECT_NEAR(bounds_of(c.outline).width_m(), 2.0, round_off_m);
    EXPECT_NEAR(c.connection_in_space.z_m, 3.1, round_off_m);
}

TEST(Place, AFrameMayFaceAnotherWayThanItsSurface) {
    Surface flat = roof();
    flat.tilt_deg = 0.0;
    Placement p = at(4.0, 2.0);
    p.frame_tilt_deg = 45.0;
    p.frame_azimuth_deg = 270.0;
    const PlacedCollector c = place(flat, 0.0, p, plate());
    EXPECT_EQ(c.azimuth_deg, 270.0);
    EXPECT_NEAR(bounds_of(c.outline).height_m(), 2.0, round_off_m);  // its long side runs north to south
    const Point3 n = cross(c.corners[1] - c.corners[0], c.corners[3] - c.corners[0]);
    EXPECT_LT(n.x_m, 0.0);  // outward normal looks west
    EXPECT_NEAR(n.y_m, 0.0, round_off_m);
}

TEST(Place, EverySizeOfPlateKeepsItsSidesInSpace) {
    for (double turn = 0.0; turn < 360.0; turn += 30.0) {
        for (double tilt = 0.0; tilt <= 90.0; tilt += 15.0) {
            Placement p = at(4.0, 2.0, turn);
            p.frame_tilt_deg = tilt;
            p.frame_azimuth_deg = 137.0;
            const PlacedCollector c = place(roof(), 33.0, p, plate());
            EXPECT_NEAR(norm(c.corners[1] - c.corners[0]), 2.0, 1e-12);
            EXPECT_NEAR(norm(c.corners[3] - c.corners[0]), 0.8, 1e-12);
            const Frame f = frame_of(roof(), 33.0);
            double least = 1e9;
            for (const Point3 corner : c.corners)
                least = std::min(least, dot(corner - f.origin, f.normal));
            EXPECT_NEAR(least, 0.1, 1e-12);
        }
    }
}

}  // namespace placement_test
}  // namespace wg::site
