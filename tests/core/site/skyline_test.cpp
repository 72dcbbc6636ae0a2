#include "core/site/skyline.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/quantity/constants.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

Obstacle of_kind(ObstacleKind kind, const char* id, Point3 foot) {
    Obstacle o;
    o.id = id;
    o.label = std::string("the ") + id;
    o.kind = kind;
    o.base = foot;
    return o;
}

TEST(Skyline, AFreeSiteHidesNothing) {
    const Skyline s = skyline({}, Point3{}, "");
    ASSERT_EQ(s.things.size(), 360U);
    EXPECT_TRUE(s.horizon.empty());
    for (const SkylinePoint& p : s.things)
        EXPECT_EQ(p.elevation_deg, 0.0);
    EXPECT_DOUBLE_EQ(s.things[90].azimuth_deg, 90.0);
}

TEST(Skyline, ABoxReachesToItsNearFaceAndIsNamed) {
    Site site;
    Obstacle house = of_kind(ObstacleKind::box, "house", {0, -10, 0});
    house.width_m = 8.0;
    house.depth_m = 6.0;
    house.height_m = 9.0;
    site.obstacles = {house};
    const Skyline s = skyline(site, Point3{0, 0, 2.0}, "");
    EXPECT_NEAR(s.things[180].elevation_deg, 45.0, 1e-9);  // near face 7 m off, 7 m over the point
    EXPECT_EQ(s.things[180].id, "house");
    EXPECT_EQ(s.things[180].label, "the house");
    EXPECT_FALSE(s.things[180].is_tree);
    EXPECT_EQ(s.things[0].elevation_deg, 0.0);
    EXPECT_EQ(s.things[180 - 31].elevation_deg, 0.0);  // corner at atan(4 / 7) = 29.7 deg
    EXPECT_GT(s.things[180 - 29].elevation_deg, 35.0);
}

TEST(Skyline, TheHorizonIsKeptApart) {
    Site site;
    site.horizon = {{90.0, 10.0}, {270.0, 20.0}};
    const Skyline s = skyline(site, Point3{}, "", 10.0);
    ASSERT_EQ(s.horizon.size(), 36U);
    EXPECT_NEAR(s.horizon[9].elevation_deg, 10.0, 1e-9);
    EXPECT_NEAR(s.horizon[18].elevation_deg, 15.0, 1e-9);
    EXPECT_EQ(s.things[9].elevation_deg, 0.0);
}

TEST(Skyline, ACrownOverATrunkIsATreeAndOpaqueOnlyToTheTrunk) {
    Site site;
    Obstacle tree = of_kind(ObstacleKind::tree, "tree", {0, -10, 0});
    tree.radius_m = 3.0;
    tree.crown_base_m = 2.0;
    tree.height_m = 8.0;  // a ball of 3 m round (0, -10, 5)
    site.obstacles = {tree};
    const Skyline s = skyline(site, Point3{0, 0, 0}, "");
    const double to_middle = std::hypot(10.0, 5.0);
    const double expected = degrees(std::atan2(5.0, 10.0)) + degrees(std::asin(3.0 / to_middle));
    EXPECT_NEAR(s.things[180].elevation_deg, expected, 1e-9);
    EXPECT_TRUE(s.things[180].is_tree);
    EXPECT_NEAR(s.things[180].opaque_elevation_deg, degrees(std::atan2(2.0, 10.0 - 0.06 * 3.0)), 1e-9);
}

TEST(Skyline, TheOwnSurfaceIsLeftOutAndOtherPlanesAreNot) {
    Site site;
    Surface roof;
    roof.id = "roof";
    roof.tilt_deg = 40.0;
    roof.outline = {{-5, 0}, {5, 0}, {5, 6}, {-5, 6}};
    Surface wall;
    wall.id = "wall";
    wall.label = "gable";
    wall.tilt_deg = 90.0;
    wall.azimuth_deg = 270.0;
    wall.origin = {4.0, 0.0, 0.0};  // faces west; right of it is south
    wall.outline = {{-20, 0}, {20, 0}, {20, 10}, {-20, 10}};
    site.surfaces = {roof, wall};
    const Frame f = frame_of(roof, 0.0);
    const Point3 from = to_space(f, {0, 3}, 0.1);
    const Skyline s = skyline(site, from, "roof");
    EXPECT_EQ(s.things[0].elevation_deg, 0.0);  // the roof rises to the north and is the own one
    EXPECT_NEAR(s.things[90].elevation_deg, degrees(std::atan2(10.0 - from.z_m, 4.0)), 1e-9);
    EXPECT_EQ(s.things[90].label, "gable");
    EXPECT_GT(skyline(site, from, "").things[0].elevation_deg, 10.0);
    PlacedCollector plate;  // on the roof, parallel
    for (const Point2 p : {Point2{-1, 2.6}, {1, 2.6}, {1, 3.4}, {-1, 3.4}})
        plate.corners.push_back(to_space(f, p, 0.1));
    EXPECT_EQ(skyline(site, plate, "roof").things[0].elevation_deg, 0.0);
    EXPECT_TRUE(skyline(site, PlacedCollector{}, "roof").things.empty());
}

/// The outline of `things` against rays: free just over it, hidden just under it wherever things stand on the ground.
TEST(Skyline, RaysJustOverItAreFreeAndJustUnderItAreHidden) {
    for (unsigned seed = 1; seed <= 20; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937 random(seed);
        std::uniform_real_distribution<double> place(-12.0, 12.0), size(0.3, 3.0), turn(0.0, 360.0);
        Site site;
        site.sketch_up_azimuth_deg = turn(random);
        for (int i = 0; i < 7; ++i) {
            Obstacle o =
                of_kind(static_cast<ObstacleKind>(i % 4), "thing", {place(random), place(random), 0.2 * place(random)});
            o.width_m = size(random);
            o.depth_m = size(random);
            o.turn_deg = turn(random);
            o.height_m = 3.0 * size(random);
            o.radius_m = size(random);
            o.crown_base_m = size(random);
            for (const Point2 p : {Point2{0, 0}, {2, 0}, {2, 2}, {1.5, 0.5}})  // not convex
                o.outline.push_back(p + Point2{o.base.x_m, o.base.y_m});
            site.obstacles.push_back(o);
        }
        Surface wall;
        wall.id = "wall";
        wall.tilt_deg = 70.0;
        wall.azimuth_deg = turn(random);
        wall.origin = {place(random), place(random), 0.0};
        wall.outline = {{0, 0}, {6, 0}, {6, 4}, {3, 1}, {0, 4}};
        site.surfaces = {wall};
        const Point3 from{0.0, 0.0, 0.5};
        const std::vector<Occluder> occluders = Occluder::of(site, "");
        const auto passes = [&](double azimuth_deg, double elevation_deg) {
            const double level = std::cos(radians(elevation_deg));
            const Point3 dir = to_sketch(level * std::sin(radians(azimuth_deg)), level * std::cos(radians(azimuth_deg)),
                                         std::sin(radians(elevation_deg)), site.sketch_up_azimuth_deg);
            double passed = 1.0;
            for (const Occluder& o : occluders)
                passed *= o.passes(from, dir, 0.5);
            return passed;
        };
        int hidden = 0;
        for (const SkylinePoint& p : skyline(site, from, "", 3.0).things) {
            if (p.elevation_deg < 89.0) EXPECT_EQ(passes(p.azimuth_deg, p.elevation_deg + 1e-4), 1.0) << p.azimuth_deg;
            if (p.elevation_deg <= 1e-3) continue;
            ++hidden;
            EXPECT_LT(passes(p.azimuth_deg, p.elevation_deg - 1e-4), 1.0) << p.azimuth_deg;
        }
        EXPECT_GT(hidden, 10);
    }
}

TEST(Skyline, HostileValuesAreBounded) {
    Site site;
    const double nan = std::numeric_limits<double>::quiet_NaN();
    site.obstacles.resize(3);
    site.obstacles[0].base.x_m = nan;
    site.obstacles[1].height_m = std::numeric_limits<double>::infinity();
    site.obstacles[2].kind = ObstacleKind::prism;
    site.obstacles[2].outline = {{nan, 0}, {1, 0}, {1, nan}};
    for (const double step : {nan, 0.0, -1.0, 1e-9, 1e9})
        EXPECT_LE(skyline(site, Point3{}, "", step).things.size(), 3600U);
    EXPECT_EQ(skyline(site, Point3{nan, nan, nan}, "").things.size(), 360U);
}

}  // namespace
}  // namespace wg::site
