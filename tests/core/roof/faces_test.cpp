// Roofs over footprints: known shapes by hand, and what holds for every one of them.

#include "core/roof/faces.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/quantity/constants.h"

namespace wg::roof {
namespace faces_test {

double area_m2(const std::vector<RoofPoint>& outline) {
    double sum = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2& a = outline[i].plan;
        const Point2& b = outline[(i + 1) % outline.size()].plan;
        sum += a.x_m * b.y_m - b.x_m * a.y_m;
    }
    return 0.5 * sum;
}

double highest_m(const std::vector<Face>& faces) {
    double top = 0.0;
    for (const Face& face : faces)
        for (const RoofPoint& p : face.outline)
            top = std::max(top, p.height_m);
    return top;
}

std::vector<EdgePitch> all(std::size_t count, double pitch_deg) {
    return std::vector<EdgePitch>(count, pitch_deg);
}

void lies_in_its_plane(const std::vector<Point2>& footprint, const std::vector<EdgePitch>& pitches, const Face& face) {
    const Point2& a = footprint[face.edge];
    const Point2& b = footprint[(face.edge + 1) % footprint.size()];
    const double length = std::hypot(b.x_m - a.x_m, b.y_m - a.y_m);
    for (const RoofPoint& p : face.outline) {
        const double inwards =
            ((b.x_m - a.x_m) * (p.plan.y_m - a.y_m) - (b.y_m - a.y_m) * (p.plan.x_m - a.x_m)) / length;
        const double expected = pitches[face.edge] ? p.height_m / std::tan(radians(*pitches[face.edge])) : 0.0;
        EXPECT_NEAR(inwards, expected, 1e-5) << "edge " << face.edge;
        EXPECT_GE(p.height_m, -1e-9);
    }
}

const std::vector<Point2> rectangle{{0, 0}, {10, 0}, {10, 6}, {0, 6}};
const std::vector<Point2> l_shape{{0, 0}, {12, 0}, {12, 6}, {5, 6}, {5, 11}, {0, 11}};

TEST(Faces, HipRoofOfARectangle) {
    const auto made = faces_over(rectangle, all(4, 45.0));
    ASSERT_TRUE(made) << made.problems().front().text();
    const auto& faces = made.value();
    ASSERT_EQ(faces.size(), 4U);
    EXPECT_NEAR(area_m2(faces[0].outline), (10.0 + 4.0) / 2.0 * 3.0, 1e-9);  // trapezium, ridge 4 m
    EXPECT_NEAR(area_m2(faces[1].outline), 6.0 * 3.0 / 2.0, 1e-9);
    EXPECT_EQ(faces[0].outline.size(), 4U);
    EXPECT_EQ(faces[1].outline.size(), 3U);
    EXPECT_NEAR(highest_m(faces), 3.0, 1e-9);
}

TEST(Faces, GableRoofOfARectangle) {
    const std::vector<EdgePitch> pitches{30.0, std::nullopt, 30.0, std::nullopt};
    const auto made = faces_over(rectangle, pitches);
    ASSERT_TRUE(made) << made.problems().front().text();
    const auto& faces = made.value();
    EXPECT_NEAR(area_m2(faces[0].outline), 30.0, 1e-9);
    EXPECT_NEAR(area_m2(faces[2].outline), 30.0, 1e-9);
    ASSERT_EQ(faces[1].outline.size(), 3U);
    EXPECT_NEAR(faces[1].outline[2].height_m, 3.0 * std::tan(radians(30.0)), 1e-9);
    EXPECT_NEAR(faces[1].outline[2].plan.y_m, 3.0, 1e-9);
}

TEST(Faces, DifferentPitchesMeetAtARidgeOffTheMiddle) {
    const std::vector<EdgePitch> pitches{60.0, std::nullopt, 30.0, std::nullopt};
    const auto made = faces_over(rectangle, pitches);
    ASSERT_TRUE(made);
    // y tan 60 = (6 - y) tan 30
    EXPECT_NEAR(made.value()[1].outline[2].plan.y_m, 1.5, 1e-9);
}

TEST(Faces, LShapeWithHips) {
    const auto pitches = all(6, 40.0);
    const auto made = faces_over(l_shape, pitches);
    ASSERT_TRUE(made) << made.problems().front().text();
    EXPECT_NEAR(highest_m(made.value()), 3.0 * std::tan(radians(40.0)), 1e-6);
    for (const Face& face : made.value())
        lies_in_its_plane(l_shape, pitches, face);
}

TEST(Faces, LShapeWithTwoGables) {
    // Gables at the right end of the main part and at the upper end of the wing.
    const std::vector<EdgePitch> pitches{40.0, std::nullopt, 40.0, 40.0, std::nullopt, 40.0};
    const auto made = faces_over(l_shape, pitches);
    ASSERT_TRUE(made) << made.problems().front().text();
    for (const Face& face : made.value())
        lies_in_its_plane(l_shape, pitches, face);
    // The wing is 5 m wide: its gable is half as high as 5 m at this pitch; the main part is 6 m wide.
    double wing_m = 0.0;
    for (const RoofPoint& p : made.value()[4].outline)
        wing_m = std::max(wing_m, p.height_m);
    EXPECT_NEAR(wing_m, 2.5 * std::tan(radians(40.0)), 1e-6);
    EXPECT_NEAR(highest_m(made.value()), 3.0 * std::tan(radians(40.0)), 1e-6);
}

TEST(Faces, EqualWingsTShapeUShapeCrossAndSquare) {
    const std::vector<std::vector<Point2>> shapes{
        {{0, 0}, {6, 0}, {6, 6}, {0, 6}},
        {{0, 0}, {12, 0}, {12, 6}, {6, 6}, {6, 12}, {0, 12}},
        {{0, 0}, {14, 0}, {14, 6}, {10, 6}, {10, 11}, {4, 11}, {4, 6}, {0, 6}},
        {{0, 0}, {15, 0}, {15, 10}, {10, 10}, {10, 5}, {5, 5}, {5, 10}, {0, 10}},
        {{4, 0}, {8, 0}, {8, 4}, {12, 4}, {12, 8}, {8, 8}, {8, 12}, {4, 12}, {4, 8}, {0, 8}, {0, 4}, {4, 4}}};
    for (std::size_t s = 0; s < shapes.size(); ++s) {
        const auto pitches = all(shapes[s].size(), 35.0);
        const auto made = faces_over(shapes[s], pitches);
        ASSERT_TRUE(made) << "shape " << s << ": " << made.problems().front().text();
        for (const Face& face : made.value())
            lies_in_its_plane(shapes[s], pitches, face);
        // Gables wherever an edge lies between two outer corners and is shorter than its neighbours.
        auto gabled = pitches;
        const auto& f = shapes[s];
        const std::size_t n = f.size();
        for (std::size_t i = 0; i < n; ++i) {
            const auto edge = [&](std::size_t k) {
                return Point2{f[(k + 1) % n].x_m - f[k % n].x_m, f[(k + 1) % n].y_m - f[k % n].y_m};
            };
            const auto turn = [&](std::size_t k) {
                const Point2 u = edge(k + n - 1);
                const Point2 v = edge(k);
                return u.x_m * v.y_m - u.y_m * v.x_m;
            };
            const Point2 e = edge(i);
            if (turn(i) > 0 && turn(i + 1) > 0 && std::hypot(e.x_m, e.y_m) <= 6.0 && s > 0) gabled[i] = std::nullopt;
        }
        const auto with_gables = faces_over(f, gabled);
        ASSERT_TRUE(with_gables) << "gabled shape " << s << ": " << with_gables.problems().front().text();
        for (const Face& face : with_gables.value())
            lies_in_its_plane(f, gabled, face);
    }
}

/// Seeded footprints: a star round a middle, any corner in or out.
TEST(Faces, AnyFootprintIsCoveredOnceAndNowhereSteeper) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> radius(3.0, 12.0);
    std::uniform_real_distribution<double> pitch(15.0, 60.0);
    std::uniform_int_distribution<int> corners(3, 14);
    int refused = 0;
    for (int round = 0; round < 500; ++round) {
        const int n = corners(random);
        std::vector<Point2> footprint;
        std::vector<EdgePitch> pitches;
        const double one = pitch(random);
        for (int i = 0; i < n; ++i) {
            const double angle = 2.0 * pi * i / n;
            const double r = radius(random);
            footprint.push_back({r * std::cos(angle), r * std::sin(angle)});
            pitches.emplace_back(one);
        }
        const auto made = faces_over(footprint, pitches);
        if (!made) {
            ++refused;
            continue;
        }
        double covered = 0.0;
        double whole = 0.0;
        for (std::size_t i = 0; i < footprint.size(); ++i) {
            const Point2& a = footprint[i];
            const Point2& b = footprint[(i + 1) % footprint.size()];
            whole += 0.5 * (a.x_m * b.y_m - b.x_m * a.y_m);
        }
        for (const Face& face : made.value()) {
            covered += area_m2(face.outline);
            lies_in_its_plane(footprint, pitches, face);
        }
        EXPECT_NEAR(covered, whole, 1e-4 * whole);
    }
    EXPECT_EQ(refused, 0);
}

TEST(Faces, TurningTheFootprintTurnsTheRoof) {
    const auto pitches = all(6, 40.0);
    const double angle = radians(27.0);
    std::vector<Point2> turned;
    for (const Point2& p : l_shape)
        turned.push_back({p.x_m * std::cos(angle) - p.y_m * std::sin(angle) + 3.0,
                          p.x_m * std::sin(angle) + p.y_m * std::cos(angle) - 8.0});
    const auto a = faces_over(l_shape, pitches);
    const auto b = faces_over(turned, pitches);
    ASSERT_TRUE(a && b);
    for (std::size_t i = 0; i < a.value().size(); ++i) {
        EXPECT_EQ(a.value()[i].outline.size(), b.value()[i].outline.size());
        EXPECT_NEAR(area_m2(a.value()[i].outline), area_m2(b.value()[i].outline), 1e-6);
    }
}

TEST(Faces, RefusesWhatIsNoRoof) {
    EXPECT_FALSE(faces_over({{0, 0}, {1, 0}}, all(2, 30.0)));
    EXPECT_FALSE(faces_over({{0, 0}, {4, 4}, {4, 0}, {0, 4}}, all(4, 30.0)));    // crosses itself
    EXPECT_FALSE(faces_over({{0, 6}, {10, 6}, {10, 0}, {0, 0}}, all(4, 30.0)));  // clockwise
    EXPECT_FALSE(faces_over(rectangle, all(3, 30.0)));
    EXPECT_FALSE(faces_over(rectangle, all(4, 95.0)));
    EXPECT_FALSE(faces_over(rectangle, std::vector<EdgePitch>(4)));
    EXPECT_FALSE(faces_over({{0, 0}, {1e9, 0}, {0, 1e9}}, all(3, 30.0)));
}

}  // namespace faces_test
}  // namespace wg::roof
