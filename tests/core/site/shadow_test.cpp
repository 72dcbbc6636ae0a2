#include "core/site/shadow.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

#include "core/quantity/constants.h"
#include "core/site/grid_shadow.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

struct Random {
    explicit Random(unsigned seed) : engine(seed) {}
    double operator()(double low, double high) { return std::uniform_real_distribution<double>(low, high)(engine); }
    int whole(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine); }
    std::mt19937 engine;
};

Obstacle random_obstacle(Random& random, Point3 near, double spread_m) {
    Obstacle o;
    o.kind = static_cast<ObstacleKind>(random.whole(0, 3));
    o.base = near + Point3{random(-spread_m, spread_m), random(-spread_m, spread_m), random(-4.0, 1.0)};
    o.width_m = random(0.1, 3.0);
    o.depth_m = random(0.1, 3.0);
    o.height_m = random(0.2, 9.0);
    o.turn_deg = random.whole(0, 3) == 0 ? 90.0 * random.whole(0, 3) : random(0.0, 360.0);
    o.radius_m = o.kind == ObstacleKind::post ? random(0.02, 1.5) : random(0.5, 4.0);
    o.crown_base_m = random(0.0, 3.0);
    const int corners = random.whole(3, 9);
    const bool star = random.whole(0, 1) == 0;  // not convex
    for (int i = 0; i < corners; ++i) {
        const double angle = 2.0 * pi * i / corners, reach = star && i % 2 == 0 ? 0.4 : random(0.9, 2.5);
        o.outline.push_back({o.base.x_m + reach * std::cos(angle), o.base.y_m + reach * std::sin(angle)});
    }
    if (random.whole(0, 4) == 0) std::swap(o.outline.front(), o.outline.back());  // crosses itself
    return o;
}

Surface random_surface(Random& random) {
    Surface s;
    s.id = "s";
    const int kind = random.whole(0, 3);
    s.tilt_deg = kind == 0 ? 0.0 : kind == 1 ? 90.0 : random(5.0, 70.0);
    s.azimuth_deg = random.whole(0, 2) == 0 ? 90.0 * random.whole(0, 3) : random(0.0, 360.0);
    s.origin = {random(-5.0, 5.0), random(-5.0, 5.0), random(0.0, 4.0)};
    const double width = random(1.0, 9.0), height = random(1.0, 5.0);
    s.outline = {{0, 0}, {width, 0}, {width, height}, {0.5 * width, 0.6 * height}, {0, height}};
    return s;
}

Point3 random_direction(Random& random) {
    const double up = random(0.0, 1.0) * random(0.0, 1.0), level = std::sqrt(1.0 - up * up),
                 bearing = random(0.0, 2.0 * pi);
    return {level * std::sin(bearing), level * std::cos(bearing), up};
}

/// Cells where the masks and rays differ.
int differences(GridShadow& shadow, Point3 sun, int month, int& shaded) {
    shadow.cast(sun);
    const std::vector<double> passed = shadow.passed(month);
    int wrong = 0;
    for (std::size_t i = 0; i < passed.size(); ++i) {
        double expected = 1.0;
        for (const Occluder& o : shadow.occluders()) {
            if (expected > 0.0) expected *= o.passes(shadow.grid().middles[i], sun, o.crown_transmittance(month));
        }
        if (expected < 1.0) ++shaded;
        if (passed[i] != expected) ++wrong;
    }
    return wrong;
}

TEST(ShadowMasks, AreTheSameAsExactRaysOnRandomSites) {
    int shaded = 0, suns = 0;
    for (unsigned seed = 1; seed <= 400; ++seed) {
        SCOPED_TRACE(seed);
        Random random(seed);
        Site site;
        site.sketch_up_azimuth_deg = random(0.0, 360.0);
        const Surface surface = random_surface(random);
        site.surfaces = {surface};
        for (int i = random.whole(0, 2); i > 0; --i) {
            site.surfaces.push_back(random_surface(random));
            site.surfaces.back().id = "other";
        }
        const Frame frame = frame_of(surface, site.sketch_up_azimuth_deg);
        for (int i = random.whole(1, 5); i > 0; --i)
            site.obstacles.push_back(random_obstacle(random, to_space(frame, {2.0, 2.0}), 6.0));
        GridShadow shadow(CellGrid::over(surface, site.sketch_up_azimuth_deg, random(0.07, 0.4), 0.10),
                          Occluder::of(site, "s"));
        for (int k = 0; k < 20; ++k) {
            const Point3 sun = random_direction(random);
            if (!(dot(sun, shadow.grid().normal) > 0.0)) continue;
            ++suns;
            ASSERT_EQ(differences(shadow, sun, 1 + k % 12, shaded), 0) << sun.x_m << " " << sun.y_m << " " << sun.z_m;
        }
    }
    EXPECT_GT(suns, 3000);
    EXPECT_GT(shaded, 100000);  // or nothing was compared
}

/// Edges through cells' middles, suns along edges and in planes: where rounding decides, rays are asked.
TEST(ShadowMasks, AreTheSameWhereEdgesRunThroughTheCellsMiddles) {
    int shaded = 0;
    Surface terrace;
    terrace.id = "s";
    terrace.tilt_deg = 0.0;
    terrace.outline = {{0, 0}, {8, 0}, {8, 5}, {0, 5}};
    for (int kind = 0; kind < 4; ++kind) {
        for (const double foot : {-0.5, 0.0, 0.10, 0.6}) {
            for (const double height : {0.10, 0.5, 1.0, 3.0}) {
                Site site;
                site.surfaces = {terrace};
                Obstacle o;
                o.kind = static_cast<ObstacleKind>(kind);
                o.base = {4.05, 2.05, foot};
                o.width_m = 1.0;
                o.depth_m = 0.5;
                o.height_m = height;
                o.radius_m = 0.5;
                o.crown_base_m = 0.25;
                o.outline = {{3.55, 1.55}, {4.55, 1.55}, {4.55, 2.55}, {4.05, 2.05}, {3.55, 2.55}};
                site.obstacles = {o};
                GridShadow shadow(CellGrid::over(terrace, 0.0, 0.1, 0.10), Occluder::of(site, "s"));
                for (int bearing = 0; bearing < 8; ++bearing) {
                    for (const double up_over_level : {0.0, 1e-7, 1e-4, 0.25, 0.5, 1.0, 2.0, 1e6}) {
                        Point3 sun{std::round(1.5 * std::sin(bearing * pi / 4)),
                                   std::round(1.5 * std::cos(bearing * pi / 4)), 0.0};
                        sun.z_m = up_over_level * norm(sun);
                        sun = sun * (1.0 / norm(sun));
                        if (!(dot(sun, shadow.grid().normal) > 0.0)) continue;
                        ASSERT_EQ(differences(shadow, sun, 7, shaded), 0)
                            << kind << " " << foot << " " << height << " " << bearing << " " << up_over_level;
                    }
                }
            }
        }
    }
    EXPECT_GT(shaded, 10000);
}

TEST(ShadowMasks, APlateGridIsTheSameAsRaysToo) {
    int shaded = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        Random random(seed);
        Site site;
        for (int i = 0; i < 5; ++i)
            site.obstacles.push_back(random_obstacle(random, {}, 4.0));
        const Point3 corner{random(-1, 1), random(-1, 1), random(0, 2)};
        const Point3 along{random(0.5, 2), random(-1, 1), random(-1, 1)},
            across{random(-1, 1), random(0.5, 2), random(-1, 1)};
        GridShadow shadow(CellGrid::over({corner, corner + along, corner + along + across, corner + across}, 5, 3),
                          Occluder::of(site, ""));
        for (int k = 0; k < 40; ++k) {
            const Point3 sun = random_direction(random);
            if (!(dot(sun, shadow.grid().normal) > 0.0)) continue;
            ASSERT_EQ(differences(shadow, sun, 7, shaded), 0);
        }
    }
    EXPECT_GT(shaded, 1000);
}

TEST(ShadowMasks, HugeTinyAndBrokenThingsAreBounded) {
    Surface roof;
    roof.id = "s";
    roof.tilt_deg = 30.0;
    roof.outline = {{0, 0}, {3, 0}, {3, 2}, {0, 2}};
    const double nan = std::numeric_limits<double>::quiet_NaN(), inf = std::numeric_limits<double>::infinity();
    int shaded = 0;
    for (const double value : {nan, inf, -inf, 0.0, -1.0, 1e-300, 1e-9, 1e6, 1e9, 1e300}) {
        for (int kind = 0; kind < 4; ++kind) {
            for (int member = 0; member < 8; ++member) {
                Obstacle o;
                o.kind = static_cast<ObstacleKind>(kind);
                o.outline = {{0, 0}, {1, 0}, {1, 1}};
                o.height_m = 3.0;
                double* const members[] = {&o.base.x_m, &o.base.z_m, &o.width_m,      &o.height_m,
                                           &o.turn_deg, &o.radius_m, &o.crown_base_m, &o.outline[1].x_m};
                *members[member] = value;
                Site site;
                site.surfaces = {roof};
                site.obstacles = {o};
                GridShadow shadow(CellGrid::over(roof, 0.0, 0.25, 0.10), Occluder::of(site, "s"));
                for (const Point3 sun : {Point3{0.0, -0.8, 0.6}, {0.6, 0.0, 0.8}, {0.0, 0.0, 1.0}})
                    EXPECT_EQ(differences(shadow, sun, 7, shaded), 0) << kind << " " << member << " " << value;
            }
        }
    }
}

TEST(CellGridOver, RefusesWhatCannotBeCut) {
    Surface s;
    EXPECT_TRUE(CellGrid::over(s, 0.0, 0.1, 0.1).empty());
    s.outline = {{0, 0}, {1, 0}, {1, 1}};
    EXPECT_EQ(CellGrid::over(s, 0.0, 0.5, 0.1).size(), 4U);
    for (const double cell : {0.0, -1.0, 1e-9, std::nan("")})
        EXPECT_TRUE(CellGrid::over(s, 0.0, cell, 0.1).empty());
    s.outline[1].x_m = std::nan("");
    EXPECT_LE(CellGrid::over(s, 0.0, 0.5, 0.1).size(), 4U);
    s.outline[1].x_m = 1.0;
    s.origin.z_m = std::nan("");
    EXPECT_TRUE(CellGrid::over(s, 0.0, 0.5, 0.1).empty());
    EXPECT_TRUE(CellGrid::over({{}, {}, {}, {}}, 5, 3).empty());
}

TEST(CellMaskOf, SpansCrossWords) {
    CellMask mask(200, 3);
    EXPECT_TRUE(mask.none());
    mask.set_span(1, 60, 131);
    EXPECT_EQ(mask.count(), 71);
    EXPECT_TRUE(mask.test(60, 1) && mask.test(130, 1) && !mask.test(59, 1) && !mask.test(131, 1));
    mask.set_span(2, 63, 64);
    EXPECT_EQ(mask.count(), 72);
    mask.clear();
    EXPECT_EQ(mask.count(), 0);
}

}  // namespace
}  // namespace wg::site
