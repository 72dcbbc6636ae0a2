#include "core/site/resize.h"

#include <gtest/gtest.h>

#include <random>

#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "core/site/standing.h"

namespace wg::site {
namespace resize_test {
namespace {

Obstacle box(double turn_deg) {
    Obstacle o;
    o.kind = ObstacleKind::box;
    o.base = {4.0, 3.0, 0.0};
    o.width_m = 2.0;
    o.depth_m = 1.0;
    o.height_m = 6.0;
    o.turn_deg = turn_deg;
    return o;
}

Point2 handle_at(const Obstacle& o, std::size_t i) {
    return handles_of(o, 0.5).at(i).at;
}

TEST(Resize, ACornerDraggedLeavesTheOppositeOneWhereItWas) {
    const Obstacle before = box(0.0);
    const auto after = with_handle_at(before, Handle::Kind::corner, 2, {6.0, 5.0});  // was at (5, 3.5)
    ASSERT_TRUE(after);
    EXPECT_NEAR(after->width_m, 3.0, 1e-9);
    EXPECT_NEAR(after->depth_m, 2.5, 1e-9);
    EXPECT_EQ(handle_at(*after, 0), handle_at(before, 0));
    EXPECT_NEAR(handle_at(*after, 2).x_m, 6.0, 1e-9);
}

TEST(Resize, TurnedBoxesKeepTheirTurnAndTheCornerOpposite) {
    std::mt19937_64 random(20261128);
    const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>(a, b)(random); };
    for (int round = 0; round < 400; ++round) {
        const Obstacle before = box(between(-180.0, 180.0));
        const auto corner = static_cast<std::size_t>(random() % 4);
        const Point2 to{before.base.x_m + between(-6.0, 6.0), before.base.y_m + between(-6.0, 6.0)};
        const auto after = with_handle_at(before, Handle::Kind::corner, corner, to);
        ASSERT_TRUE(after);
        EXPECT_EQ(after->turn_deg, before.turn_deg);
        EXPECT_GE(after->width_m, least_side_m);
        EXPECT_GE(after->depth_m, least_side_m);
        const Point2 was = handle_at(before, (corner + 2) % 4), is = handle_at(*after, (corner + 2) % 4);
        EXPECT_NEAR(was.x_m, is.x_m, 0.0008);  // the middle is rounded to the millimetre
        EXPECT_NEAR(was.y_m, is.y_m, 0.0008);
    }
}

TEST(Resize, NothingIsDraggedInsideOut) {
    const auto after = with_handle_at(box(0.0), Handle::Kind::corner, 2, {0.0, 0.0});
    ASSERT_TRUE(after);
    EXPECT_EQ(after->width_m, least_side_m);
    EXPECT_EQ(after->depth_m, least_side_m);
}

TEST(Resize, TurnHandlePointsTheBox) {
    const auto after = with_handle_at(box(0.0), Handle::Kind::turn, 0, {4.0, 9.0});
    ASSERT_TRUE(after);
    EXPECT_NEAR(after->turn_deg, 90.0, 1e-9);
    const Handle turned = handles_of(*after, 0.5).back();
    EXPECT_EQ(turned.kind, Handle::Kind::turn);
    EXPECT_NEAR(turned.at.x_m, 4.0, 1e-9);
    EXPECT_NEAR(turned.at.y_m, 4.5, 1e-9);
}

TEST(Resize, CirclesTakeTheirRadius) {
    Obstacle tree;
    tree.kind = ObstacleKind::tree;
    tree.base = {1.0, 1.0, 0.0};
    tree.radius_m = 2.0;
    const auto after = with_handle_at(tree, Handle::Kind::radius, 0, {1.0, 4.5});
    ASSERT_TRUE(after);
    EXPECT_NEAR(after->radius_m, 3.5, 1e-9);
    EXPECT_FALSE(with_handle_at(tree, Handle::Kind::corner, 0, {1.0, 4.5}));
}

TEST(Resize, APrismsCornerMovesUnlessTheOutlineWouldCross) {
    Obstacle prism;
    prism.kind = ObstacleKind::prism;
    prism.outline = {{0, 0}, {4, 0}, {4, 3}, {0, 3}};
    const auto after = with_handle_at(prism, Handle::Kind::corner, 2, {5.0, 4.0});
    ASSERT_TRUE(after);
    EXPECT_EQ(after->outline[2], (Point2{5.0, 4.0}));
    EXPECT_FALSE(with_handle_at(prism, Handle::Kind::corner, 2, {2.0, -1.0}));
    EXPECT_FALSE(with_handle_at(prism, Handle::Kind::corner, 4, {2.0, 1.0}));
    EXPECT_FALSE(with_handle_at(prism, Handle::Kind::corner, 2, {std::nan(""), 1.0}));
}

TEST(Resize, ARectangleKeptFreeStaysOne) {
    const std::vector<Point2> zone = {{1, 1}, {2, 1}, {2, 3}, {1, 3}};
    const auto after = with_corner_at(zone, 0, {0.25, 0.5});
    ASSERT_TRUE(after);
    EXPECT_EQ(*after, (std::vector<Point2>{{0.25, 0.5}, {2, 0.5}, {2, 3}, {0.25, 3}}));
    const auto other = with_corner_at({{0, 0}, {2, 0}, {1, 2}}, 2, {1.5, 2.5});
    ASSERT_TRUE(other);
    EXPECT_EQ((*other)[2], (Point2{1.5, 2.5}));
    EXPECT_FALSE(with_corner_at(zone, 7, {0, 0}));
}

TEST(Resize, MovedFaceOnItsSectionMovesByAsMuch) {
    for (const double tilt : {0.0, 30.0, 60.0, 90.0}) {
        Surface s;
        s.tilt_deg = tilt;
        s.azimuth_deg = 215.0;
        s.origin = {0.0, 0.0, 2.0};
        s.outline = {{0, 0}, {20, 0}, {20, 12}, {0, 12}};
        const double up_deg = 40.0;
        Obstacle o = box(17.0);
        const Point3 foot = to_space(frame_of(s, up_deg), {9.0, 5.0});
        o.base = {foot.x_m, foot.y_m, tilt > 80.0 ? foot.z_m : -10.0};
        o.height_m = tilt > 80.0 ? 1.5 : 40.0;
        const Bounds was = bounds_of(section_on(s, up_deg, o));
        const Bounds is = bounds_of(section_on(s, up_deg, moved_on(s, up_deg, o, 1.25, 0.75)));
        EXPECT_NEAR(is.min_x_m - was.min_x_m, 1.25, 0.003) << tilt;
        EXPECT_NEAR(is.max_y_m - was.max_y_m, 0.75, 0.003) << tilt;
    }
}

TEST(Resize, ABoxTurnedWithItsRoofTakesTheSectionDrawnFaceOn) {
    for (const double tilt : {0.0, 35.0, 90.0}) {
        Surface s;
        s.tilt_deg = tilt;
        s.azimuth_deg = 200.0;
        s.outline = {{0, 0}, {20, 0}, {20, 12}, {0, 12}};
        const Frame frame = frame_of(s, 0.0);
        Obstacle o = box(std::atan2(frame.right.y_m, frame.right.x_m) * 180.0 / pi + 180.0);
        const Point3 foot = to_space(frame, {9.0, 5.0});
        o.base = {foot.x_m, foot.y_m, tilt > 80.0 ? foot.z_m : -10.0};
        o.height_m = tilt > 80.0 ? 1.5 : 40.0;
        ASSERT_TRUE(sized_face_on(s, 0.0, o));
        const auto after = with_section(s, 0.0, o, {8.0, 4.5}, {9.2, 6.1});
        ASSERT_TRUE(after);
        const Bounds b = bounds_of(section_on(s, 0.0, *after));
        const double extra = tilt > 80.0 ? standing_touch_m : 0.0;
        EXPECT_NEAR(b.min_x_m, 8.0, 0.002) << tilt;
        EXPECT_NEAR(b.max_x_m, 9.2, 0.002) << tilt;
        EXPECT_NEAR(b.min_y_m, 4.5 - extra, 0.002) << tilt;
        EXPECT_NEAR(b.max_y_m, 6.1 + extra, 0.002) << tilt;
        o.turn_deg += 20.0;
        EXPECT_FALSE(with_section(s, 0.0, o, {8.0, 4.5}, {9.2, 6.1}));
    }
}

}  // namespace
}  // namespace resize_test
}  // namespace wg::site
