#include <gtest/gtest.h>

#include <cmath>

#include "tests/ui/common/sample.h"
#include "ui/drawing/plan_painter.h"

namespace wg::ui {
namespace {

constexpr double near_m = 1e-9;

Site site_with_everything() {
    Site site;
    Surface ground;
    ground.id = "ground";
    ground.kind = SurfaceKind::ground;
    ground.tilt_deg = 0.0;
    ground.azimuth_deg = 180.0;
    ground.outline = {{0, 0}, {20, 0}, {20, 20}, {0, 20}};
    Surface roof = ground;
    roof.id = "roof";
    roof.kind = SurfaceKind::roof;
    roof.origin = {5.0, 5.0, 4.0};
    roof.tilt_deg = 60.0;
    roof.outline = {{0, 0}, {8, 0}, {8, 6}, {0, 6}};
    site.surfaces = {ground, roof};
    Obstacle tree;
    tree.id = "tree";
    tree.kind = ObstacleKind::tree;
    tree.base = {15.0, 15.0, 0.0};
    tree.radius_m = 3.0;
    Obstacle post;
    post.id = "post";
    post.kind = ObstacleKind::post;
    post.base = {14.0, 15.0, 0.0};
    post.radius_m = 0.2;
    site.obstacles = {post, tree};
    CylinderSpot spot;
    spot.id = "spot";
    spot.position = {6.0, 6.0, 0.0};
    site.spots = {spot};
    return site;
}

TEST(ElementAt, TakesSpotsBeforeObstaclesBeforeSurfaces) {
    const Site site = site_with_everything();
    EXPECT_EQ(element_at(site, {6.0, 6.0}, 0.1), "spot");
    EXPECT_EQ(element_at(site, {16.5, 15.0}, 0.1), "tree");
    EXPECT_EQ(element_at(site, {14.0, 15.0}, 0.1), "post") << "the smaller obstacle can be had";
    EXPECT_EQ(element_at(site, {1.0, 1.0}, 0.1), "ground");
    EXPECT_EQ(element_at(site, {40.0, 1.0}, 0.1), "");
}

TEST(ElementAt, TakesTheHigherOfTwoSurfaces) {
    EXPECT_EQ(element_at(site_with_everything(), {9.0, 7.0}, 0.1), "roof");
}

TEST(ElementAt, FindsAWallByItsLine) {
    Site site = site_with_everything();
    Surface wall = site.surfaces[0];
    wall.id = "wall";
    wall.kind = SurfaceKind::wall;
    wall.tilt_deg = 90.0;
    wall.origin = {1.0, 2.0, 0.0};
    wall.outline = {{0, 0}, {3, 0}, {3, 3}, {0, 3}};
    site.surfaces.push_back(wall);
    EXPECT_EQ(element_at(site, {2.0, 2.05}, 0.1), "wall");
    EXPECT_EQ(element_at(site, {2.0, 2.5}, 0.1), "ground");
}

TEST(OutlineInPlan, ShortensASlopeByTheCosineOfItsTilt) {
    const Site site = site_with_everything();
    const std::vector<Point2> seen = outline_in_plan(site.surfaces[1], 0.0);
    // 6 m up a slope of 60 deg are 3 m in plan; the surface looks south, so up the slope is up the sketch.
    EXPECT_NEAR(seen[3].y_m - seen[0].y_m, 3.0, near_m);
    EXPECT_NEAR(seen[1].x_m - seen[0].x_m, 8.0, near_m);
}

TEST(OutlineInPlan, TurnsABoxAboutItsMiddle) {
    Obstacle box;
    box.base = {2.0, 3.0, 0.0};
    box.width_m = 4.0;
    box.depth_m = 2.0;
    box.turn_deg = 90.0;
    const std::vector<Point2> seen = outline_in_plan(box);
    ASSERT_EQ(seen.size(), 4U);
    EXPECT_NEAR(seen[0].x_m, 3.0, near_m);
    EXPECT_NEAR(seen[0].y_m, 1.0, near_m);
}

TEST(RoutePointAt, FindsTheNearestWithinReachOnly) {
    Choice choice;
    RoutePoint a;
    a.position = {1.0, 1.0, 0.0};
    RoutePoint b;
    b.position = {1.3, 1.0, 0.0};
    choice.route = {a, b};
    EXPECT_EQ(route_point_at(choice, {1.25, 1.0}, 0.5), 1);
    EXPECT_EQ(route_point_at(choice, {1.1, 1.0}, 0.5), 0);
    EXPECT_EQ(route_point_at(choice, {4.0, 1.0}, 0.5), -1);
}

TEST(RouteLine, RunsFromTheFirstCollectorOverTheBendsToTheSpot) {
    Job job = sample::job();
    RoutePoint bend;
    bend.position = {1.0, 2.0, 3.0};
    job.choices.front().route = {bend};
    const CollectorModel model;
    const RouteLine known = route_line(job, job.choices.front(), &model);
    ASSERT_EQ(known.points.size(), 3U);
    EXPECT_EQ(known.first_bend, 1U);
    EXPECT_EQ(known.points[1], bend.position);
    EXPECT_EQ(known.points[2], job.site.spots.front().position);
    EXPECT_EQ(route_line(job, job.choices.front(), nullptr).first_bend, 0U) << "without a model the start is unknown";
}

}  // namespace
}  // namespace wg::ui
