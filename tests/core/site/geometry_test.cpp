#include "core/site/geometry.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::site {
namespace geometry_test {

constexpr double round_off_m = 1e-12;  // a few operations on coordinates of some metres

const std::vector<Point2> square{{0, 0}, {4, 0}, {4, 3}, {0, 3}};
const std::vector<Point2> notched{{0, 0}, {6, 0}, {6, 4}, {4, 4}, {4, 2}, {2, 2}, {2, 4}, {0, 4}};  // a U

std::vector<Point2> rectangle(double x0, double y0, double x1, double y1) {
    return {{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}};
}

TEST(Outline, AreaIsPositiveCounterClockwiseAndKeepsDigitsFarAway) {
    EXPECT_DOUBLE_EQ(signed_area_m2(square), 12.0);
    EXPECT_DOUBLE_EQ(signed_area_m2({square.rbegin(), square.rend()}), -12.0);
    EXPECT_DOUBLE_EQ(signed_area_m2(notched), 24.0 - 4.0);
    std::vector<Point2> far = square;
    for (Point2& p : far)
        p = p + Point2{1e6, -1e6};
    EXPECT_DOUBLE_EQ(signed_area_m2(far), 12.0);
    EXPECT_EQ(signed_area_m2({}), 0.0);
}

TEST(Outline, HostileShapesAreNotSimple) {
    const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
    EXPECT_TRUE(is_simple(square));
    EXPECT_TRUE(is_simple({square.rbegin(), square.rend()}));
    EXPECT_TRUE(is_simple(notched));
    EXPECT_FALSE(is_simple({}));
    EXPECT_FALSE(is_simple({{0, 0}, {1, 0}}));
    EXPECT_FALSE(is_simple({{0, 0}, {2, 2}, {2, 0}, {0, 2}}));          // bow tie
    EXPECT_FALSE(is_simple({{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}}));  // corner touches an edge
    EXPECT_FALSE(is_simple({{0, 0}, {4, 0}, {4, 0}, {4, 3}}));          // repeated corner
    EXPECT_FALSE(is_simple({{0, 0}, {4, 0}, {2, 0}, {2, 3}}));          // folds back
    EXPECT_FALSE(is_simple({{0, 0}, {1, 0}, {2, 0}}));                  // no area
    EXPECT_FALSE(is_simple({{0, 0}, {4, 0}, {4, nan}}));
    EXPECT_FALSE(is_simple({{0, 0}, {inf, 0}, {4, 4}}));
    EXPECT_FALSE(is_simple({{0, 0}, {4, 0}, {4, 3}, {0, 3}, {0, 0}, {4, 0}, {4, 3}, {0, 3}}));  // twice round
}

TEST(Outline, PointsOnTheEdgeAreInside) {
    EXPECT_TRUE(contains(square, Point2{2, 1}));
    EXPECT_TRUE(contains(square, Point2{0, 0}));
    EXPECT_TRUE(contains(square, Point2{4, 1.5}));
    EXPECT_TRUE(contains(square, Point2{4 + 0.5 * touch_m, 1.5}));
    EXPECT_FALSE(contains(square, Point2{4 + 2 * touch_m, 1.5}));
    EXPECT_FALSE(contains(notched, Point2{3, 3}));
    EXPECT_FALSE(contains({}, Point2{0, 0}));
}

TEST(Outline, AShapeAcrossANotchIsNotContainedThoughItsCornersAre) {
    EXPECT_TRUE(contains(notched, rectangle(0, 0, 6, 2)));   // along three edges and the notch
    EXPECT_FALSE(contains(notched, rectangle(1, 1, 5, 3)));  // its corners lie in the arms and foot
    EXPECT_TRUE(contains(notched, notched));
    EXPECT_FALSE(contains(square, rectangle(1, 1, 5, 2)));
    // Enters and leaves through corners of the notch without a proper crossing.
    EXPECT_FALSE(contains(notched, {{2, 2}, {4, 2}, {4, 4}, {2, 4}}));
}

TEST(Outline, TouchingIsNotOverlapping) {
    EXPECT_FALSE(overlap(square, rectangle(4, 0, 6, 3)));
    EXPECT_TRUE(overlap(square, rectangle(3.99, 0, 6, 3)));
    EXPECT_TRUE(overlap(square, square));
    EXPECT_TRUE(overlap(square, rectangle(1, 1, 2, 2)));
    EXPECT_TRUE(overlap(rectangle(1, 1, 2, 2), square));
    EXPECT_TRUE(overlap(rectangle(1, -1, 2, 5), square));     // a cross: no corner inside the other
    EXPECT_FALSE(overlap(notched, rectangle(2, 2, 4, 5)));    // fills the notch exactly
    EXPECT_TRUE(overlap(rectangle(0, 0, 2, 3), square));      // shares three edges
    EXPECT_TRUE(overlap(square, {{1, -1}, {1, 4}, {1, 1}}));  // a line through it
    EXPECT_FALSE(overlap(square, {}));
}

TEST(Outline, GapIsTheShortestWayBetweenEdges) {
    EXPECT_NEAR(gap_m(square, rectangle(4.3, 0, 5, 1)), 0.3, round_off_m);
    EXPECT_NEAR(gap_m(square, rectangle(7, 7, 8, 8)), 5.0, round_off_m);  // 3 across, 4 up
    EXPECT_EQ(gap_m(square, rectangle(1, 1, 2, 2)), 0.0);
    EXPECT_NEAR(edge_gap_m(square, rectangle(1, 1, 2, 2)), 1.0, round_off_m);
    EXPECT_NEAR(edge_distance_m(square, {1.0, 1.5}), 1.0, round_off_m);
}

TEST(Outline, ContainmentOverlapAndGapAgreeOnRandomRectangles) {
    constexpr unsigned seed = 20240517;
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> at(-1.0, 5.0), size(0.1, 3.0);
    for (int i = 0; i < 2000; ++i) {
        const double x = at(random), y = at(random), w = size(random), h = size(random);
        const auto r = rectangle(x, y, x + w, y + h);
        const bool in = x >= 0 && y >= 0 && x + w <= 4 && y + h <= 3;
        const bool meets = x < 4 && x + w > 0 && y < 3 && y + h > 0;
        EXPECT_EQ(contains(square, r), in);
        EXPECT_EQ(overlap(square, r), meets);
        EXPECT_EQ(overlap(r, square), meets);
        EXPECT_EQ(gap_m(square, r) > 0.0, !meets);
    }
}

TEST(SetOut, TwoNearestEdgesOfDifferentDirection) {
    const auto edges = nearest_two_edges(square, {1.0, 0.5});
    ASSERT_EQ(edges.size(), 2U);
    EXPECT_EQ(edges[0].edge, 0U);
    EXPECT_NEAR(edges[0].distance_m, 0.5, round_off_m);
    EXPECT_EQ(edges[0].foot, (Point2{1.0, 0.0}));
    EXPECT_EQ(edges[1].edge, 3U);
    EXPECT_NEAR(edges[1].distance_m, 1.0, round_off_m);
    // In a low band both nearest edges are parallel: the second must still fix the place along them.
    const auto band = nearest_two_edges(rectangle(0, 0, 20, 1), {8.0, 0.4});
    ASSERT_EQ(band.size(), 2U);
    EXPECT_EQ(band[0].edge, 0U);
    EXPECT_EQ(band[1].edge, 3U);
    EXPECT_NEAR(band[1].distance_m, 8.0, round_off_m);
    EXPECT_TRUE(nearest_two_edges({}, {0, 0}).empty());
}

TEST(Rafters, LinesCrossTheOutlineFromTheSurveyedFirst) {
    Surface s;
    s.outline = square;
    EXPECT_TRUE(rafter_lines(s).empty());
    s.rafters = {true, 0.35, 0.9, 0.06, 0.16};
    const auto lines = rafter_lines(s);
    ASSERT_EQ(lines.size(), 5U);  // 0.35 1.25 2.15 3.05 3.95
    EXPECT_NEAR(lines.front(), 0.35, round_off_m);
    EXPECT_NEAR(lines.back(), 3.95, round_off_m);
    s.rafters.first_m = 2.15;  // counted from the middle: the same roof
    EXPECT_EQ(rafter_lines(s).size(), 5U);
    s.rafters.spacing_m = 0.0;
    EXPECT_TRUE(rafter_lines(s).empty());
}

void expect_right_handed(const Frame& f) {
    EXPECT_NEAR(norm(cross(f.right, f.up) - f.normal), 0.0, round_off_m);
    EXPECT_NEAR(dot(f.right, f.up), 0.0, round_off_m);
    EXPECT_NEAR(norm(f.right), 1.0, round_off_m);
    EXPECT_NEAR(norm(f.up), 1.0, round_off_m);
    EXPECT_EQ(f.right.z_m, 0.0);
    EXPECT_GE(f.up.z_m, 0.0);
}

TEST(PlaneFrame, SouthFacingRoofHasEastOnTheRight) {
    Surface s;
    s.tilt_deg = 30.0;
    s.azimuth_deg = 180.0;
    const Frame f = frame_of(s, 0.0);
    EXPECT_EQ(f.right, (Point3{1.0, 0.0, 0.0}));
    EXPECT_NEAR(f.up.y_m, std::cos(radians(30.0)), round_off_m);
    EXPECT_NEAR(f.up.z_m, 0.5, round_off_m);
    EXPECT_NEAR(f.normal.y_m, -0.5, round_off_m);
    expect_right_handed(f);
    s.azimuth_deg = 90.0;  // facing east: north on the right
    EXPECT_EQ(frame_of(s, 0.0).right, (Point3{-0.0, 1.0, 0.0}));
}

TEST(PlaneFrame, LevelSurfaceHasItsBearingAtTheBottom) {
    Surface s;
    s.tilt_deg = 0.0;
    s.azimuth_deg = 180.0;
    const Frame f = frame_of(s, 0.0);
    EXPECT_EQ(f.up, (Point3{0.0, 1.0, 0.0}));
    EXPECT_EQ(f.normal, (Point3{0.0, 0.0, 1.0}));
}

TEST(PlaneFrame, TurningTheSketchTurnsThePlaneTheOtherWay) {
    for (double azimuth = 0.0; azimuth < 360.0; azimuth += 17.0) {
        for (double up = 0.0; up < 360.0; up += 41.0) {
            Surface s;
            s.tilt_deg = 52.0;
            s.azimuth_deg = azimuth;
            const Frame f = frame_of(s, up);
            expect_right_handed(f);
            const double bearing =
                degrees(std::atan2(f.normal.x_m, f.normal.y_m)) + up;  // clockwise from the sketch's y
            EXPECT_NEAR(std::remainder(bearing - azimuth, 360.0), 0.0, 1e-9);
        }
    }
}

TEST(PlaneFrame, GoingToSpaceAndBackChangesNothing) {
    Surface s;
    s.origin = {3.0, -2.0, 4.0};
    s.tilt_deg = 41.0;
    s.azimuth_deg = 213.0;
    const Frame f = frame_of(s, 24.0);
    const Point2 p{2.5, 1.25};
    const Point2 back = to_plane(f, to_space(f, p, 0.3));
    EXPECT_NEAR(back.x_m, p.x_m, round_off_m);
    EXPECT_NEAR(back.y_m, p.y_m, round_off_m);
}

}  // namespace geometry_test
}  // namespace wg::site
