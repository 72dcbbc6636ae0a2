#include "core/site/surface_run.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/site/geometry.h"

namespace wg::site {
namespace surface_run_test {

/// A wall of 6 x 3 m that looks south: x of the plane is x of the sketch, y is the height, behind is y > 0.
struct Run : testing::Test {
    Site site;
    Choice choice;
    CollectorModel model;
    Point3 block{3.0, 4.0, 0.5};

    Run() {
        Surface wall;
        wall.id = "wall";
        wall.kind = SurfaceKind::wall;
        wall.tilt_deg = 90.0;
        wall.azimuth_deg = 180.0;
        wall.outline = {{0, 0}, {6, 0}, {6, 3}, {0, 3}};
        site.surfaces = {wall};
        model.liquid_connection = {1.8, 0.0};
        model.suction_connection = {2.0, 0.0};
        Placement one;
        one.id = "p";
        one.surface_id = "wall";
        one.x_m = 2.0;
        one.y_m = 2.0;  // connections at (2.9, 1.6)
        choice.placements = {one};
    }
    void bend(Point3 at, RoutePointKind kind = RoutePointKind::free) {
        RoutePoint p;
        p.position = at;
        p.kind = kind;
        choice.route.push_back(p);
    }
    [[nodiscard]] SurfaceRun run() const {
        const auto out = run_on_surface(site, site.surfaces[0], choice, model, block);
        EXPECT_TRUE(out);
        return out.value_or(SurfaceRun{});
    }
};

TEST_F(Run, FollowsTheBendsOnTheWallToThePassage) {
    bend({2.9, -0.1, 0.4});
    bend({4.0, 0.0, 0.4}, RoutePointKind::wall_passage);
    bend({4.0, 0.2, 0.4});  // near the plane, but behind it
    const SurfaceRun r = run();
    ASSERT_EQ(r.line.size(), 3u);
    EXPECT_NEAR(r.line[0].x_m, 2.9, 1e-9);
    EXPECT_NEAR(r.line[0].y_m, 1.6, 1e-9);
    EXPECT_NEAR(r.line[1].y_m, 0.4, 1e-9);
    EXPECT_NEAR(r.line[2].x_m, 4.0, 1e-9);
    EXPECT_NEAR(r.lengths_m[0], 1.2, 1e-9);  // stand-off 0.10 m at both ends
    EXPECT_NEAR(r.lengths_m[1], std::hypot(1.1, 0.1), 1e-9);
    EXPECT_TRUE(r.passage);
    EXPECT_TRUE(r.behind);
    EXPECT_FALSE(r.to_block);
    EXPECT_NEAR(r.next_m, 0.2, 1e-9);
}

TEST_F(Run, LeavesTheWallWhereABendStandsOff) {
    bend({2.9, -1.5, 1.6});
    const SurfaceRun r = run();
    ASSERT_EQ(r.line.size(), 1u);
    EXPECT_FALSE(r.behind);
    EXPECT_FALSE(r.passage);
    EXPECT_NEAR(r.next_m, 1.4, 1e-9);
    EXPECT_NEAR(r.towards.x_m, 2.9, 1e-9);
}

TEST_F(Run, EndsAtTheBlockWithoutBends) {
    const SurfaceRun r = run();
    EXPECT_TRUE(r.to_block);
    EXPECT_NEAR(r.next_m, std::sqrt(0.1 * 0.1 + 4.1 * 4.1 + 1.1 * 1.1), 1e-9);
}

TEST_F(Run, StartsMidwayBetweenTwoCollectors) {
    Placement two = choice.placements[0];
    two.y_m = 1.0;
    choice.placements.push_back(two);
    bend({2.9, 0.0, 0.2}, RoutePointKind::wall_passage);
    const SurfaceRun r = run();
    ASSERT_EQ(r.connections.size(), 2u);
    ASSERT_EQ(r.line.size(), 2u);
    EXPECT_NEAR(r.line[0].y_m, 0.5 * (r.connections[0].y_m + r.connections[1].y_m), 1e-9);
}

TEST_F(Run, IsNothingOnASurfaceWithoutCollectors) {
    Surface other = site.surfaces[0];
    other.id = "other";
    EXPECT_FALSE(run_on_surface(site, other, choice, model, block));
    // With collectors on two surfaces far apart the run starts on neither: each shows the way to its start.
    other.origin = {20.0, 0.0, 0.0};
    site.surfaces.push_back(other);
    Placement two = choice.placements[0];
    two.surface_id = "other";
    choice.placements.push_back(two);
    const SurfaceRun r = run();
    EXPECT_TRUE(r.line.empty());
    EXPECT_NEAR(r.next_m, 10.0, 0.1);
}

}  // namespace surface_run_test
}  // namespace wg::site
