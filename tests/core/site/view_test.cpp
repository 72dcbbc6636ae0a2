#include "core/site/view.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/quantity/constants.h"
#include "core/site/shade.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

constexpr double view_tolerance = 0.005;  // what view_from promises

Obstacle endless_box(Point3 foot, double depth_m, double height_m) {
    Obstacle o;
    o.kind = ObstacleKind::box;
    o.base = foot;
    o.width_m = 1e6;
    o.depth_m = depth_m;
    o.height_m = height_m;
    return o;
}

Point3 facing_south(double tilt_deg) {
    return {0.0, -std::sin(radians(tilt_deg)), std::cos(radians(tilt_deg))};
}

ViewFactors seen(const Site& site, Point3 from, double tilt_deg) {
    return view_from(from, facing_south(tilt_deg), Occluder::of(site, ""), Horizon(site.horizon), 0.0);
}

TEST(View, AFreePlaneSeesSkyAndGroundByItsTilt) {
    for (const double tilt : {0.0, 20.0, 45.0, 90.0}) {
        const ViewFactors v = seen({}, {0, 0, 1}, tilt);
        EXPECT_EQ(v.sky_open, 1.0);
        EXPECT_EQ(v.ground_open, 1.0);
        EXPECT_NEAR(v.sky, 0.5 * (1.0 + std::cos(radians(tilt))), 1e-12);  // Liu and Jordan 1963
        EXPECT_NEAR(v.things(), 0.0, 1e-12);
        EXPECT_NEAR(v.reflected(0.3), 0.3 * 0.5 * (1.0 - std::cos(radians(tilt))), 1e-12);
    }
}

TEST(View, AnEvenHorizonLeavesTheSquareOfItsCosine) {
    for (const double elevation : {5.0, 10.0, 30.0, 45.0}) {  // Siegel and Howell: open cap of a level plate
        Site site;
        site.horizon = {{0.0, elevation}, {180.0, elevation}};
        EXPECT_NEAR(seen(site, {}, 0.0).sky_open, std::pow(std::cos(radians(elevation)), 2), view_tolerance);
    }
}

TEST(View, ALongWallTakesHalfOfOneMinusTheCosine) {
    for (const double height : {0.5, 1.0, 3.0}) {  // Hottel's crossed strings
        Site site;
        site.obstacles = {endless_box({0, -1001.0, 0}, 2000.0, height)};
        EXPECT_NEAR(seen(site, {}, 0.0).sky_open, 1.0 - 0.5 * (1.0 - std::cos(std::atan(height))), view_tolerance);
    }
}

TEST(View, AParallelWallHidesSkyAboveAndGroundBelow) {
    // Upright plate 2 m over ground, endless wall of 5 m at 4 m before it. Crossed strings: the view between two angles
    // from the normal is half the difference of their sines.
    Site site;
    site.obstacles = {endless_box({0, -5.0, 0}, 2.0, 5.0)};
    const ViewFactors v = seen(site, {0, 0, 2.0}, 90.0);
    const double over = std::sin(std::atan2(3.0, 4.0)), under = std::sin(std::atan2(2.0, 4.0));
    EXPECT_NEAR(v.sky_open, 1.0 - over, view_tolerance);
    EXPECT_NEAR(v.ground_open, 1.0 - under, view_tolerance);
    EXPECT_NEAR(v.things(), 0.5 * (over + under), view_tolerance);
    EXPECT_NEAR(v.reflected(0.2, 0.2), 0.2 * (1.0 - v.sky), 1e-12);
}

TEST(View, LevelPlanesAreGroundAndSteepOnesAreNot) {
    Site site;
    Surface terrace;
    terrace.id = "terrace";
    terrace.tilt_deg = 2.0;
    terrace.origin = {-50, -50, 0};
    terrace.outline = {{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    site.surfaces = {terrace};
    EXPECT_EQ(seen(site, {0, 0, 3.0}, 60.0).ground_open, 1.0);
    site.surfaces[0].tilt_deg = 30.0;  // a roof below
    EXPECT_LT(seen(site, {0, 0, 32.0}, 60.0).ground_open, 0.9);
}

TEST(View, TreesCountWithTheYearsMeanTransmittance) {
    Site site;
    Obstacle tree;
    tree.kind = ObstacleKind::tree;
    tree.radius_m = 400.0;  // over everything
    tree.base.z_m = -401.0;
    tree.crown_base_m = 0.0;
    tree.height_m = 800.0;
    tree.leaf_from_month = 4;
    tree.leaf_to_month = 9;
    tree.transmittance_leaf = 0.2;
    tree.transmittance_bare = 0.6;
    site.obstacles = {tree};
    EXPECT_NEAR(seen(site, {100, 0, 0}, 0.0).sky_open, 0.4, 0.02);  // but the trunk, which is 24 m thick
}

TEST(ViewMapOf, IsWhatEachCellSees) {
    Site site;
    Surface roof;
    roof.id = "roof";
    roof.tilt_deg = 35.0;
    roof.origin = {0, 0, 3.0};
    roof.outline = {{0, 0}, {6, 0}, {6, 4}, {0, 4}};
    Surface wall;
    wall.id = "wall";
    wall.tilt_deg = 90.0;
    wall.azimuth_deg = 270.0;
    wall.origin = {6.5, 8.0, 0.0};
    wall.outline = {{0, 0}, {12, 0}, {12, 9}, {0, 9}};
    site.surfaces = {roof, wall};
    site.horizon = {{90.0, 4.0}, {200.0, 12.0}};
    for (int kind = 0; kind < 4; ++kind) {
        Obstacle o;
        o.kind = static_cast<ObstacleKind>(kind);
        o.base = {1.5 + kind, 2.0 - 3.0 * kind, kind == 3 ? 0.0 : 3.0};
        o.height_m = kind == 3 ? 9.0 : 2.5;
        o.radius_m = kind == 3 ? 2.0 : 0.1;
        o.outline = {{2, -2}, {4, -2}, {4, -1}, {3, -1.8}};  // not convex
        site.obstacles.push_back(o);
    }
    const ViewMap map = view_map(site, roof, 1.0);
    ASSERT_EQ(map.columns, 6);
    ASSERT_EQ(map.rows, 4);
    const Frame frame = frame_of(roof, 0.0);
    double least = 1.0;
    for (const Point2 p : {Point2{0.5, 0.5}, {5.5, 0.5}, {2.5, 1.5}, {5.5, 3.5}}) {
        const ViewFactors point = view_from(to_space(frame, p, shade_map_off_m), frame.normal,
                                            Occluder::of(site, "roof"), Horizon(site.horizon), 0.0);
        EXPECT_NEAR(map.at(p).sky_open, point.sky_open, 1e-5);
        EXPECT_NEAR(map.at(p).ground_open, point.ground_open, 1e-5);
        least = std::min({least, point.sky_open, point.ground_open});
    }
    EXPECT_LT(least, 0.8);
    // Between cells: the mean of the neighbours.
    EXPECT_NEAR(map.at({1.0, 0.5}).sky_open, 0.5 * (map.at({0.5, 0.5}).sky_open + map.at({1.5, 0.5}).sky_open), 1e-9);
    EXPECT_EQ(map.at({-9.0, 0.5}).sky_open, map.at({0.5, 0.5}).sky_open);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    EXPECT_GE(map.at({nan, nan}).sky_open, 0.0);
    EXPECT_EQ(view_map(site, roof, 0.0).at({1, 1}).sky_open, 1.0);
}

}  // namespace
}  // namespace wg::site
