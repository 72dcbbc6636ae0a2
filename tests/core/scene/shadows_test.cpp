#include "core/scene/shadows.h"

#include <gtest/gtest.h>

#include "core/quantity/constants.h"
#include "core/scene/convex.h"
#include "core/scene/moment.h"
#include "core/scene/plate_light.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"
#include "tests/core/scene/scenes.h"
#include "tests/tools/sweep.h"

namespace wg::scene {
namespace {

using site::cross, site::dot, site::norm, site::operator-, site::operator+, site::operator*;

double area_m2(const std::vector<Point3>& corners) {
    Point3 sum;
    for (std::size_t i = 1; i + 1 < corners.size(); ++i)
        sum = sum + cross(corners[i] - corners[0], corners[i + 1] - corners[0]);
    return 0.5 * norm(sum);
}

Site with_box(double width, double depth, double height) {
    Site site;
    Obstacle box;
    box.id = "box";
    box.width_m = width;
    box.depth_m = depth;
    box.height_m = height;
    site.obstacles = {box};
    return site;
}

const std::vector<Point3> wide_ground{{-100, -100, 0}, {100, -100, 0}, {100, 100, 0}, {-100, 100, 0}};

/// Depth of a point inside a convex outline: least distance to its edges, negative outside.
double depth_m(const std::vector<Point3>& corners, Point3 normal, Point3 p) {
    double least = 1e9;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const Point3 along = corners[(i + 1) % corners.size()] - corners[i];
        if (norm(along) < 1e-9) continue;
        least = std::min(least, dot(cross(normal, along), p - corners[i]) / norm(along));
    }
    return least;
}

// By hand: the top of a box of height h moves by h / tan(elevation) away from the sun. With the sun square to a side of
// width w the shadow is w * (d + that); it covers the footprint too.
TEST(Shadows, OfABoxOnTheGroundAreWhatTrigonometrySays) {
    const Scene scene = scene_of(with_box(2.0, 3.0, 4.0), nullptr, nullptr, nullptr);
    for (const double elevation : {15.0, 30.0, 45.0, 70.0}) {
        const double moved = 4.0 / std::tan(radians(elevation));
        const auto square = shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(elevation, 270.0), 6);
        ASSERT_EQ(square.size(), 1U);
        EXPECT_NEAR(area_m2(square[0].corners), 2.0 * (3.0 + moved), 1e-9);
        // From 30 deg off the x axis: footprint, and each side swept along by its width across the sun's bearing.
        const double swept = moved * (2.0 * std::sin(radians(30.0)) + 3.0 * std::cos(radians(30.0)));
        const auto slant = shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(elevation, 30.0), 6);
        ASSERT_EQ(slant.size(), 1U);
        EXPECT_NEAR(area_m2(slant[0].corners), 6.0 + swept, 1e-9);
    }
}

TEST(Shadows, FallAwayFromTheSun) {
    const Scene scene = scene_of(with_box(1.0, 1.0, 5.0), nullptr, nullptr, nullptr);
    const auto patches = shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(45.0, 0.0), 6);
    ASSERT_EQ(patches.size(), 1U);
    double least_x = 0.0;
    for (const Point3 p : patches[0].corners)
        least_x = std::min(least_x, p.x_m);
    EXPECT_NEAR(least_x, -5.5, 1e-9);
}

TEST(Shadows, NothingBehindAPlaneOrBelowItThrowsOne) {
    const Scene scene = scene_of(with_box(1.0, 1.0, 5.0), nullptr, nullptr, nullptr);
    const std::vector<Point3> over{{-9, -9, 6}, {9, -9, 6}, {9, 9, 6}, {-9, 9, 6}};
    EXPECT_TRUE(shadows_on(over, {0, 0, 1}, scene.casters, direction(45.0, 0.0), 6).empty());
    EXPECT_TRUE(shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(-10.0, 0.0), 6).empty());
}

TEST(Shadows, OfATreeAreItsCrownsEllipseAndItsTrunk) {
    Site site;
    Obstacle tree;
    tree.kind = ObstacleKind::tree;
    tree.height_m = 9.0;
    tree.crown_base_m = 3.0;
    tree.radius_m = 2.0;
    site.obstacles = {tree};
    const Scene scene = scene_of(site, nullptr, nullptr, nullptr);
    const auto patches = shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(90.0, 0.0), 1);
    ASSERT_EQ(patches.size(), 2U);
    EXPECT_EQ(patches[0].passes, tree.transmittance_bare);  // the lighter one first
    EXPECT_EQ(patches[1].passes, 0.0);
    EXPECT_NEAR(area_m2(patches[0].corners), pi * 4.0, 0.005 * pi * 4.0);  // a rim of 48 corners
    const auto slant = shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(40.0, 0.0), 6);
    EXPECT_EQ(slant[0].passes, tree.transmittance_leaf);
    // The shadow of an ellipsoid with half-axes 2, 2 and 3: 2 across, sqrt(4 + (3 / tan)^2) along.
    const double along = std::hypot(2.0, 3.0 / std::tan(radians(40.0)));
    EXPECT_NEAR(area_m2(slant[0].corners), pi * 2.0 * along, 0.005 * pi * 2.0 * along);
}

/// What the outlines say of a point, against the product of the rays that the yield is reckoned with. Points nearer to
/// an outline than the round things' corners can tell are left out.
void expect_rays_agree(const Site& site, const std::vector<Point3>& corners, Point3 normal, const std::string& own_id,
                       const std::vector<Caster>& casters, Point3 to_sun, int month, Dice& dice, int& shaded,
                       int& asked) {
    if (dot(normal, to_sun) < 0.05) return;
    const auto patches = shadows_on(corners, normal, casters, to_sun, month);
    // A crown of 3 m is 9 mm wider than its 48 corners, and so is a post of 0.5 m than its 24; a low sun draws that
    // out.
    const double blur_m = 0.001 + 0.015 / dot(normal, to_sun);
    const auto occluders = site::Occluder::of(site, own_id);
    for (int k = 0; k < 25; ++k) {
        const std::size_t t = 1 + static_cast<std::size_t>(dice.upto(static_cast<int>(corners.size()) - 2));
        double u = dice.in(0, 1), v = dice.in(0, 1);
        if (u + v > 1.0) u = 1.0 - u, v = 1.0 - v;
        const Point3 p = corners[0] + (corners[t] - corners[0]) * u + (corners[t + 1] - corners[0]) * v;
        bool near_an_edge = false, solid = false;
        double crowns = 1.0;
        for (const ShadowPatch& patch : patches) {
            const double depth = depth_m(patch.corners, normal, p);
            near_an_edge = near_an_edge || std::abs(depth) < blur_m;
            if (depth <= 0.0) continue;
            if (patch.passes == 0.0)
                solid = true;
            else
                crowns *= patch.passes;
        }
        if (near_an_edge) continue;
        double passed = 1.0;
        for (const site::Occluder& o : occluders)
            passed *= o.passes(p, to_sun, o.crown_transmittance(month));
        ++asked;
        if (passed < 1.0) ++shaded;
        EXPECT_NEAR(passed, solid ? 0.0 : crowns, 1e-9) << p.x_m << ' ' << p.y_m << ' ' << p.z_m;
    }
}

TEST(Shadows, AgreeWithTheRaysOfTheYield) {
    Dice dice(7);
    int shaded = 0, asked = 0;
    const int rounds = sweep::cases(20);
    for (int round = 0; round < rounds; ++round) {
        Site site = random_site(dice, 6, 8);
        // Both hemispheres: suns of real moments, and with them both senses of the sun's way.
        site.location.latitude_deg = round % 2 == 0 ? dice.in(10, 60) : dice.in(-60, -10);
        site.location.longitude_deg = dice.in(-10, 10);
        const Scene scene = scene_of(site, nullptr, nullptr, nullptr);
        for (int k = 0; k < 4; ++k) {
            const SunOverSite sun = sun_over(site, {dice.upto(365), dice.in(6, 18)});
            if (sun.elevation_deg < 6.0) continue;
            expect_rays_agree(site, scene.ground.corners, scene.ground.normal, {}, scene.casters, sun.to_sun, sun.month,
                              dice, shaded, asked);
            for (const Polygon& polygon : scene.polygons) {
                const Thing& thing = scene.things[static_cast<std::size_t>(polygon.thing)];
                if (thing.kind != Kind::surface) continue;
                const bool behind = dot(polygon.normal, sun.to_sun) < 0.0;
                std::vector<Point3> corners = polygon.corners;
                if (behind) std::reverse(corners.begin(), corners.end());
                expect_rays_agree(site, corners, behind ? polygon.normal * -1.0 : polygon.normal, thing.id,
                                  scene.casters, sun.to_sun, sun.month, dice, shaded, asked);
            }
        }
    }
    EXPECT_GT(asked, 250 * rounds);
    EXPECT_GT(shaded, asked / 10);  // and not because nothing was in the shade
}

TEST(Shadows, AWallOnTheGroundShadesFromItsFoot) {
    Site site;
    Surface wall;
    wall.id = "wall";
    wall.tilt_deg = 90.0;
    wall.azimuth_deg = 180.0;
    wall.outline = {{0, 0}, {6, 0}, {6, 3}, {0, 3}};
    site.surfaces = {wall};
    const Scene scene = scene_of(site, nullptr, nullptr, nullptr);
    const auto patches = shadows_on(wide_ground, {0, 0, 1}, scene.casters, direction(30.0, 270.0), 6);
    ASSERT_EQ(patches.size(), 1U);
    EXPECT_NEAR(area_m2(patches[0].corners), 6.0 * 3.0 / std::tan(radians(30.0)), 1e-6);
}

TEST(Convex, PiecesOfAnLAddUpAndKeepItsEdges) {
    for (const bool turned : {false, true}) {
        std::vector<Point2> l{{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}};
        if (turned) std::reverse(l.begin(), l.end());
        const auto pieces = convex_pieces(l);
        EXPECT_EQ(pieces.size(), 2U);
        double sum = 0.0;
        for (const auto& piece : pieces) {
            std::vector<Point2> corners;
            for (const std::size_t i : piece)
                corners.push_back(l[i]);
            EXPECT_GT(site::signed_area_m2(corners), 0.0);
            sum += site::signed_area_m2(corners);
        }
        EXPECT_NEAR(sum, 6.0, 1e-12);
    }
}

TEST(Convex, RandomStarsAddUp) {
    Dice dice(3);
    for (int round = 0; round < 200; ++round) {
        std::vector<Point2> star;
        const int n = 5 + dice.upto(20);
        for (int i = 0; i < n; ++i) {
            const double r = dice.in(1, 5), a = 2.0 * pi * i / n;
            star.push_back({r * std::cos(a), r * std::sin(a)});
        }
        double sum = 0.0;
        for (const auto& piece : convex_pieces(star)) {
            std::vector<Point2> corners;
            for (const std::size_t i : piece)
                corners.push_back(star[i]);
            sum += site::signed_area_m2(corners);
            EXPECT_NEAR(site::signed_area_m2(hull_of(corners)), site::signed_area_m2(corners), 1e-9);  // convex
        }
        EXPECT_NEAR(sum, site::signed_area_m2(star), 1e-9);
    }
}

TEST(PlateLight, CountsTheShareThatABoxLeavesInTheSun) {
    // A plate of 2 m by 1 m lies level at 0 m; a wall of 1 m height stands along its west side. With the sun in the
    // west at 45 deg the first metre of two is in shadow.
    Site site;
    Obstacle wall;
    wall.id = "wall";
    wall.base = {-0.05, 0.5, 0.0};
    wall.width_m = 0.1;
    wall.depth_m = 8.0;
    wall.height_m = 1.0;
    site.obstacles = {wall};
    PlateLight plate(site, {{0, 0, 0}, {2, 0, 0}, {2, 1, 0}, {0, 1, 0}}, {});
    EXPECT_NEAR(plate.lit_share(direction(45.0, 180.0), 6), 0.5, 0.01);
    EXPECT_EQ(plate.lit_share(direction(45.0, 0.0), 6), 1.0);
    EXPECT_EQ(plate.lit_share(direction(-5.0, 0.0), 6), 0.0);  // behind it
}

}  // namespace
}  // namespace wg::scene
