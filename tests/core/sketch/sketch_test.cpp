// Snapping, typed lengths, and the under-lay's fit.

#include <gtest/gtest.h>

#include <cmath>

#include "core/sketch/snap.h"
#include "core/sketch/typed.h"
#include "core/sketch/underlay.h"

namespace wg::sketch {
namespace {

TEST(Snap, CornerBeforeEverything) {
    Scene scene{{{{0, 0}, {4, 0}, {4, 3}, {0, 3}}}, {}};
    const Snap at = snap(scene, {4.1, 2.9}, {});
    EXPECT_EQ(at.kind, SnapKind::corner);
    EXPECT_EQ(at.point, (Point2{4, 3}));
}

TEST(Snap, OnAnEdgeOnlyBetweenItsEnds) {
    SnapSettings no_grid;
    no_grid.grid_m = 0.0;
    Scene scene{{{{0, 0}, {4, 0}, {4, 3}, {0, 3}}}, {}};
    const Snap on = snap(scene, {1.7, 0.1}, no_grid);
    EXPECT_EQ(on.kind, SnapKind::on_edge);
    EXPECT_NEAR(on.point.y_m, 0.0, 1e-12);
    EXPECT_NEAR(on.point.x_m, 1.7, 1e-12);
    EXPECT_EQ(snap(scene, {6.0, 0.1}, no_grid).kind, SnapKind::none);
}

TEST(Snap, RightAngleToTheLastEdge) {
    SnapSettings s;
    s.grid_m = 0.0;
    Scene scene{{}, {{0, 0}, {4, 3}}};  // 3-4-5
    const Point2 square{4 - 0.6 * 2.0, 3 + 0.8 * 2.0};
    const Snap at = snap(scene, {square.x_m + 0.05, square.y_m}, s);
    EXPECT_EQ(at.kind, SnapKind::right_angle);
    EXPECT_NEAR((at.point.x_m - 4) * 4 + (at.point.y_m - 3) * 3, 0.0, 1e-9);
    EXPECT_EQ(at.guides.size(), 1U);
}

TEST(Snap, FourthCornerOfARectangleIsACrossing) {
    SnapSettings s;
    s.grid_m = 0.0;
    Scene scene{{}, {{0, 0}, {5, 0}, {5, 3}}};
    const Snap at = snap(scene, {0.1, 3.1}, s);
    EXPECT_EQ(at.kind, SnapKind::crossing);
    EXPECT_NEAR(at.point.x_m, 0.0, 1e-9);
    EXPECT_NEAR(at.point.y_m, 3.0, 1e-9);
    EXPECT_EQ(at.reasons.size(), 2U);
}

TEST(Snap, ClosesOnTheFirstCornerAfterThree) {
    EXPECT_EQ(snap({{}, {{0, 0}, {5, 0}, {5, 3}}}, {0.1, 0.1}, {}).kind, SnapKind::close);
    EXPECT_NE(snap({{}, {{0, 0}, {5, 0}}}, {0.1, 0.1}, {}).kind, SnapKind::close);
}

TEST(Snap, LengthsAlongALineFallOnTheGrid) {
    Scene scene{{}, {{0.2, 0.1}}};
    const Snap at = snap(scene, {3.65, 0.15}, {});
    EXPECT_EQ(at.kind, SnapKind::parallel);
    EXPECT_NEAR(at.point.x_m, 3.7, 1e-12);
    EXPECT_NEAR(at.point.y_m, 0.1, 1e-12);
}

TEST(Snap, FarFromEverythingStaysWhereItIs) {
    SnapSettings s;
    s.grid_m = 0.0;
    const Snap at = snap({{{{0, 0}, {1, 0}, {0, 1}}}, {}}, {7.3, 8.1}, s);
    EXPECT_EQ(at.kind, SnapKind::none);
    EXPECT_EQ(at.point, (Point2{7.3, 8.1}));
}

TEST(Typed, Lengths) {
    EXPECT_NEAR(length_m("3.25").value(), 3.25, 1e-12);
    EXPECT_NEAR(length_m(" 3,25 m ").value(), 3.25, 1e-12);
    EXPECT_NEAR(length_m("325cm").value(), 3.25, 1e-12);
    EXPECT_NEAR(length_m("3250 mm").value(), 3.25, 1e-12);
    EXPECT_NEAR(length_m("10 ft 8 in").value(), 3.2512, 1e-12);
    EXPECT_NEAR(length_m("10'").value(), 3.048, 1e-12);
    for (const char* bad : {"", "m", "3..5", "3 furlong", "-3", "0", "1e9", "99999", "3 ft 4", "3 5", "nan"})
        EXPECT_FALSE(length_m(bad)) << bad;
}

TEST(Typed, Angles) {
    EXPECT_NEAR(angle_deg("35").value(), 35.0, 1e-12);
    EXPECT_NEAR(angle_deg("35,5 deg").value(), 35.5, 1e-12);
    EXPECT_NEAR(angle_deg("35\u00b0").value(), 35.0, 1e-12);
    EXPECT_NEAR(angle_deg("1:1").value(), 45.0, 1e-12);
    EXPECT_NEAR(angle_deg("100 %").value(), 45.0, 1e-12);
    for (const char* bad : {"", "x", "400", "7:", "7:0", "1 2"})
        EXPECT_FALSE(angle_deg(bad)) << bad;
}

TEST(Typed, Steps) {
    const auto plain = step("4.20");
    ASSERT_TRUE(plain);
    EXPECT_FALSE(plain.value().turn_deg);
    const auto turned = step("4.20 @ -90");
    ASSERT_TRUE(turned);
    EXPECT_NEAR(*turned.value().turn_deg, -90.0, 1e-12);
    EXPECT_FALSE(step("4.20 @"));
    const Point2 end = end_of({1, 1}, 90.0, 2.0);
    EXPECT_NEAR(end.x_m, 1.0, 1e-12);
    EXPECT_NEAR(end.y_m, 3.0, 1e-12);
}

TEST(Underlay, ThereAndBack) {
    Underlay u{0.013, 37.0, {4.0, -2.0}};
    const Point2 p = u.to_sketch(812.0, 333.0);
    const Point2 back = u.to_picture(p);
    EXPECT_NEAR(back.x_m, 812.0, 1e-9);
    EXPECT_NEAR(back.y_m, 333.0, 1e-9);
}

TEST(Underlay, KnownLengthAndBearing) {
    const Pixel a{100, 400};
    const Pixel b{500, 100};  // 500 pixels long
    const auto scale = scaled(Underlay{}, a, b, 10.0);
    ASSERT_TRUE(scale);
    EXPECT_NEAR(scale.value().metres_per_pixel, 0.02, 1e-12);
    for (const double up : {0.0, 25.0, 300.0}) {
        const auto turned = turned_to(scale.value(), a, b, 120.0, up);
        ASSERT_TRUE(turned);
        const Point2 p = turned.value().to_sketch(a.x, a.y);
        const Point2 q = turned.value().to_sketch(b.x, b.y);
        EXPECT_NEAR(std::hypot(q.x_m - p.x_m, q.y_m - p.y_m), 10.0, 1e-9);
        double bearing = up + std::atan2(q.x_m - p.x_m, q.y_m - p.y_m) * 180.0 / 3.14159265358979323846;
        bearing = std::fmod(bearing + 720.0, 360.0);
        EXPECT_NEAR(bearing, 120.0, 1e-9);
        // The middle of the line has not moved.
        const Point2 before = scale.value().to_sketch(300, 250);
        const Point2 after = turned.value().to_sketch(300, 250);
        EXPECT_NEAR(before.x_m, after.x_m, 1e-9);
        EXPECT_NEAR(before.y_m, after.y_m, 1e-9);
    }
    EXPECT_FALSE(scaled(Underlay{}, a, {101, 400}, 10.0));
    EXPECT_FALSE(scaled(Underlay{}, a, b, 0.0));
    EXPECT_NEAR(true_bearing_deg(350.0, 14.0), 4.0, 1e-12);
}

}  // namespace
}  // namespace wg::sketch
