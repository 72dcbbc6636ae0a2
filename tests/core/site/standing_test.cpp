// Sections of obstacles with planes, worked out by hand.
#include "core/site/standing.h"

#include <gtest/gtest.h>

#include <random>

#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "core/site/occluders.h"

namespace wg::site {
namespace standing_test {
namespace {

Surface roof(double tilt_deg) {
    Surface s;
    s.tilt_deg = tilt_deg;
    s.azimuth_deg = 180.0;
    s.origin = {0.0, 0.0, 3.0};
    s.outline = {{0, 0}, {10, 0}, {10, 6}, {0, 6}};
    return s;
}

Obstacle chimney(double x, double y, double z, double height) {
    Obstacle o;
    o.kind = ObstacleKind::box;
    o.base = {x, y, z};
    o.width_m = 0.6;
    o.depth_m = 0.4;
    o.height_m = height;
    return o;
}

TEST(Standing, AChimneyThroughARoofTakesItsWidthAndItsDepthOverTheCosine) {
    // South roof of 45 deg: x along the eaves runs east, y up the slope runs north and up.
    const auto section = section_on(roof(45.0), 0.0, chimney(4.0, 2.0, 2.0, 6.0));
    ASSERT_EQ(section.size(), 4U);
    const Bounds b = bounds_of(section);
    EXPECT_NEAR(b.min_x_m, 3.7, 1e-9);
    EXPECT_NEAR(b.max_x_m, 4.3, 1e-9);
    EXPECT_NEAR(b.min_y_m, 1.8 * std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(b.max_y_m, 2.2 * std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(std::abs(signed_area_m2(section)), 0.6 * 0.4 * std::sqrt(2.0), 1e-9);
}

TEST(Standing, OneThatEndsUnderTheRoofOrHoversOverItHasNoSection) {
    EXPECT_TRUE(section_on(roof(45.0), 0.0, chimney(4.0, 2.0, 0.0, 4.5)).empty());  // the plane is at 4.8 to 5.2 m
    EXPECT_TRUE(section_on(roof(45.0), 0.0, chimney(4.0, 2.0, 5.4, 2.0)).empty());
    EXPECT_TRUE(section_on(roof(45.0), 0.0, chimney(14.0, 2.0, 2.0, 6.0)).empty()) << "beside the roof";
}

TEST(Standing, OneWhoseTopLiesInTheRoofIsCutWhereItEnds) {
    // Top at 5.0 m: the plane leaves it half-way through its depth.
    const auto section = section_on(roof(45.0), 0.0, chimney(4.0, 2.0, 2.0, 3.0));
    const Bounds b = bounds_of(section);
    EXPECT_NEAR(b.min_y_m, 1.8 * std::sqrt(2.0), 1e-9);
    EXPECT_NEAR(b.max_y_m, (2.0 + standing_touch_m) * std::sqrt(2.0), 1e-9);
}

TEST(Standing, OneSetDownOnATerraceStandsOnIt) {
    Surface terrace = roof(0.0);
    const auto section = section_on(terrace, 0.0, chimney(4.0, 2.0, 3.0, 1.0));
    EXPECT_NEAR(std::abs(signed_area_m2(section)), 0.24, 1e-9);
}

TEST(Standing, AChimneyBreastAgainstAWallIsARectangleOfItsHeight) {
    Surface wall = roof(90.0);
    wall.origin = {0.0, 0.0, 0.0};
    const auto section = section_on(wall, 0.0, chimney(4.0, 0.0, 1.0, 2.5));
    const Bounds b = bounds_of(section);
    EXPECT_NEAR(b.width_m(), 0.6, 1e-9);
    EXPECT_NEAR(b.min_y_m, 1.0 - standing_touch_m, 1e-9);
    EXPECT_NEAR(b.max_y_m, 3.5 + standing_touch_m, 1e-9);
}

TEST(Standing, APostTakesAnEllipse) {
    Obstacle post;
    post.kind = ObstacleKind::post;
    post.base = {5.0, 2.0, 0.0};
    post.radius_m = 0.5;
    post.height_m = 9.0;
    const double area = std::abs(signed_area_m2(section_on(roof(60.0), 0.0, post)));
    // Ellipse pi r r / cos 60; a figure of 24 sides round it is larger by tan(pi/24) / (pi/24).
    EXPECT_NEAR(area, pi * 0.25 / 0.5 * std::tan(pi / 24.0) / (pi / 24.0), 1e-9);
}

TEST(Standing, APrismWithANotchIsSeenFromAbove) {
    Obstacle prism;
    prism.kind = ObstacleKind::prism;
    prism.outline = {{2, 1}, {6, 1}, {6, 4}, {5, 4}, {5, 2}, {2, 2}};
    prism.base.z_m = 0.0;
    prism.height_m = 20.0;
    EXPECT_NEAR(std::abs(signed_area_m2(section_on(roof(30.0), 0.0, prism))), 6.0 / std::cos(pi / 6.0), 1e-9);
    std::reverse(prism.outline.begin(), prism.outline.end());
    EXPECT_NEAR(std::abs(signed_area_m2(section_on(roof(30.0), 0.0, prism))), 6.0 / std::cos(pi / 6.0), 1e-9);
}

TEST(Standing, RandomSectionsHoldThePointsOfThePlaneThatLieInTheBox) {
    std::mt19937_64 random(20261128);
    const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
    int inside = 0;
    for (int round = 0; round < 300; ++round) {
        Surface s = roof(between(0.0, 90.0));
        s.azimuth_deg = between(0.0, 360.0);
        const double up_deg = between(-180.0, 180.0);
        const Frame frame = frame_of(s, up_deg);
        Obstacle o = chimney(0.0, 0.0, 0.0, between(0.2, 5.0));
        const Point3 near = to_space(frame, {between(0.0, 10.0), between(0.0, 6.0)});
        o.base = {near.x_m, near.y_m, near.z_m - between(-1.0, 5.0)};
        o.width_m = between(0.2, 4.0);
        o.depth_m = between(0.2, 4.0);
        o.turn_deg = between(-180.0, 180.0);
        const auto section = section_on(s, up_deg, o);
        const double c = std::cos(o.turn_deg * pi / 180.0), sn = std::sin(o.turn_deg * pi / 180.0);
        for (int i = 0; i < 60; ++i) {
            const Point2 p{between(0.0, 10.0), between(0.0, 6.0)};
            const Point3 q = to_space(frame, p);
            const double dx = q.x_m - o.base.x_m, dy = q.y_m - o.base.y_m, dz = q.z_m - o.base.z_m;
            const double in =
                std::min({0.5 * o.width_m - std::abs(c * dx + sn * dy), 0.5 * o.depth_m - std::abs(c * dy - sn * dx),
                          dz + standing_touch_m, o.height_m + standing_touch_m - dz});
            if (std::abs(in) < 1e-4) continue;
            const bool held = section.size() >= 3 && contains(section, p);
            if (in > 0.01 || in < 0.0) EXPECT_EQ(held, in > 0.0) << round;
            inside += in > 0.0 ? 1 : 0;
        }
    }
    EXPECT_GT(inside, 300);
}

}  // namespace
}  // namespace standing_test
}  // namespace wg::site
