#include "core/scene/order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>

#include "core/scene/camera.h"
#include "core/scene/convex.h"
#include "core/site/geometry.h"
#include "core/site/vec.h"
#include "tests/core/scene/scenes.h"
#include "tests/tools/sweep.h"

namespace wg::scene {
namespace {

using site::cross, site::dot, site::norm, site::operator-, site::operator+, site::operator*;

bool inside(const std::vector<Point2>& convex, Point2 p) {
    for (std::size_t i = 0; i < convex.size(); ++i) {
        const Point2 a = convex[i], b = convex[(i + 1) % convex.size()];
        if (cross(b - a, p - a) < 1e-6) return false;
    }
    return convex.size() >= 3;
}

/// How near to the eye the fragment lies at a place of the picture; nullopt beside it.
std::optional<double> nearness(const Fragment& f, const ViewAxes& axes, Point2 at) {
    if (f.shape != Fragment::Shape::polygon) return std::nullopt;
    std::vector<Point2> outline;
    for (const Point3 p : f.corners)
        outline.push_back(seen(axes, {}, p));
    if (site::signed_area_m2(outline) < 0.0) std::reverse(outline.begin(), outline.end());
    const double facing = dot(f.normal, axes.to_eye);
    if (std::abs(facing) < 0.02 || !inside(outline, at)) return std::nullopt;
    const Point3 on_screen = axes.right * at.x_m + axes.up * at.y_m;
    return dot(f.normal, f.corners[0] - on_screen) / facing;
}

/// At random places of the picture the polygon painted last is the one that a ray from the eye meets first.
void expect_nearest_is_painted_last(const Scene& scene, const Order& order, Dice& dice, int& met) {
    const ViewAxes axes = axes_of({dice.in(0, 360), dice.in(3, 90)}, scene.sketch_up_azimuth_deg);
    const std::vector<std::uint32_t> painted = order.back_to_front(axes.to_eye);
    ASSERT_EQ(painted.size(), order.fragments().size());
    for (int k = 0; k < 200; ++k) {
        const Point2 at{dice.in(-15, 15), dice.in(-12, 15)};
        double nearest = -1e9, last = -1e9;
        int under = 0;
        for (const std::uint32_t i : painted) {
            const auto depth = nearness(order.fragments()[i], axes, at);
            if (!depth) continue;
            ++under;
            nearest = std::max(nearest, *depth);
            last = *depth;
        }
        if (under > 1) ++met;
        EXPECT_NEAR(last, nearest, 1e-3);
    }
}

TEST(Order, PaintsTheNearestLastInRandomScenes) {
    Dice dice(11);
    int met = 0;
    const int rounds = sweep::cases(60);
    for (int round = 0; round < rounds; ++round) {
        const Site site = random_site(dice, 3 + dice.upto(8), dice.upto(12));
        const Scene scene = scene_of(site, nullptr, nullptr, nullptr);
        const Order order(scene);
        for (int view = 0; view < 4; ++view)
            expect_nearest_is_painted_last(scene, order, dice, met);
    }
    EXPECT_GT(met, 16 * rounds);  // places with several things one behind the other
}

TEST(Order, ThreeSheetsThatOverlapInARingAreCut) {
    // Each lies over the next: no order of whole sheets is right.
    Scene scene;
    scene.things.resize(4);
    for (int i = 0; i < 3; ++i) {
        const double turn = 120.0 * i * M_PI / 180.0;
        const auto at = [&](double along, double across, double z) {
            return Point3{along * std::cos(turn) - across * std::sin(turn),
                          along * std::sin(turn) + across * std::cos(turn), z};
        };
        Polygon p;
        p.corners = {at(-3, 0.6, 0), at(3, 0.6, 1), at(3, 1.4, 1), at(-3, 1.4, 0)};
        p.drawn.assign(4, 1);
        const Point3 n = cross(p.corners[1] - p.corners[0], p.corners[3] - p.corners[0]);
        p.normal = n * (1.0 / norm(n));
        p.thing = i + 1;
        p.two_sided = true;
        scene.polygons.push_back(p);
    }
    const Order order(scene);
    EXPECT_GT(order.fragments().size(), 3U);
    Dice dice(5);
    int met = 0;
    for (int view = 0; view < 100; ++view)
        expect_nearest_is_painted_last(scene, order, dice, met);
}

TEST(Order, KeepsEveryPartOfWhatItCuts) {
    Dice dice(21);
    const Scene scene = scene_of(random_site(dice, 9, 12), nullptr, nullptr, nullptr);
    const Order order(scene);
    const auto area = [](const std::vector<Point3>& corners) {
        Point3 sum;
        for (std::size_t i = 1; i + 1 < corners.size(); ++i)
            sum = sum + cross(corners[i] - corners[0], corners[i + 1] - corners[0]);
        return 0.5 * norm(sum);
    };
    double whole = 0.0, parts = 0.0;
    for (const Polygon& p : scene.polygons)
        whole += area(p.corners);
    for (const Fragment& f : order.fragments()) {
        if (f.shape == Fragment::Shape::polygon) parts += area(f.corners);
    }
    EXPECT_NEAR(parts, whole, 1e-3);
}

TEST(Order, ParterOfThingsApartCutsNothing) {
    Site site;
    for (int i = 0; i < 30; ++i) {
        Obstacle box;
        box.base = {5.0 * (i % 6), 5.0 * (i / 6), 0.0};
        box.turn_deg = 17.0 * i;
        site.obstacles.push_back(box);
    }
    const Scene scene = scene_of(site, nullptr, nullptr, nullptr);
    EXPECT_EQ(Order(scene).fragments().size(), scene.polygons.size());
}

TEST(Order, AKeepOutIsPaintedOverItsRoof) {
    Site site;
    Surface roof;
    roof.outline = {{0, 0}, {6, 0}, {6, 4}, {0, 4}};
    KeepOut window;
    window.outline = {{1, 1}, {2, 1}, {2, 2}, {1, 2}};
    roof.keep_outs = {window};
    site.surfaces = {roof};
    const Scene scene = scene_of(site, nullptr, nullptr, nullptr);
    const Order order(scene);
    const auto painted = order.back_to_front({0, -0.6, 0.8});
    ASSERT_EQ(painted.size(), 2U);
    EXPECT_EQ(order.fragments()[painted[1]].layer, 1);
}

TEST(Order, SameSceneSameTree) {
    Dice a(4), b(4);
    const Order one(scene_of(random_site(a, 8, 12), nullptr, nullptr, nullptr));
    const Order two(scene_of(random_site(b, 8, 12), nullptr, nullptr, nullptr));
    EXPECT_EQ(one.back_to_front({0.6, 0, 0.8}), two.back_to_front({0.6, 0, 0.8}));
}

TEST(Camera, FromTheSouthEastIsToTheRightAndNorthIsUp) {
    const ViewAxes axes = axes_of({180.0, 30.0}, 0.0);
    const Point2 east = seen(axes, {}, {1, 0, 0}), north = seen(axes, {}, {0, 1, 0}), up = seen(axes, {}, {0, 0, 1});
    EXPECT_NEAR(east.x_m, 1.0, 1e-12);
    EXPECT_NEAR(east.y_m, 0.0, 1e-12);
    EXPECT_NEAR(north.x_m, 0.0, 1e-12);
    EXPECT_NEAR(north.y_m, 0.5, 1e-12);
    EXPECT_NEAR(up.y_m, std::cos(M_PI / 6.0), 1e-12);
}

}  // namespace
}  // namespace wg::scene
