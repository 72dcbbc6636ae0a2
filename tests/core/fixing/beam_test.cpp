#include "core/fixing/beam.h"

#include <gtest/gtest.h>

#include <numeric>
#include <random>

namespace wg::fixing {
namespace beam_test {

constexpr double exact = 1e-12;
constexpr double sum_tolerance = 1e-9;  // the reactions must add up to the action

TEST(Beam, TwoSupportsFollowTheLever) {
    // Beam 0..4, supports at 1 and 3: halves. Supports at 0 and 2: all but nothing on the first (4 w L/2 about it).
    EXPECT_NEAR(beam_shares({1, 3}, 0, 4)[0], 0.5, exact);
    const auto r = beam_shares({0, 2}, 0, 4);
    EXPECT_NEAR(r[0], 0.0, exact);
    EXPECT_NEAR(r[1], 1.0, exact);
    EXPECT_LT(beam_shares({0, 1.5}, 0, 4)[0], 0.0);  // long overhang lifts the far end
}

TEST(Beam, TwoEqualSpansTakeThreeEighthsAndTenEighths) {
    // Statics tables: uniform load on two equal spans, reactions 3/8, 10/8, 3/8 of w L.
    const auto r = beam_shares({0, 1, 2}, 0, 2);
    EXPECT_NEAR(r[0], 3.0 / 16.0, exact);
    EXPECT_NEAR(r[1], 10.0 / 16.0, exact);
    EXPECT_NEAR(r[2], 3.0 / 16.0, exact);
}

TEST(Beam, ThreeAndFourEqualSpansAgreeWithStaticsTables) {
    // Reactions of w L: three spans 0.4 1.1 1.1 0.4; four spans 11/28 32/28 26/28 32/28 11/28.
    const auto three = beam_shares({0, 1, 2, 3}, 0, 3);
    EXPECT_NEAR(three[0] * 3.0, 0.4, exact);
    EXPECT_NEAR(three[1] * 3.0, 1.1, exact);
    const auto four = beam_shares({4, 0, 2, 1, 3}, 0, 4);  // order does not matter
    EXPECT_NEAR(four[0] * 4.0, 11.0 / 28.0, exact);
    EXPECT_NEAR(four[2] * 4.0, 26.0 / 28.0, exact);
    EXPECT_NEAR(four[3] * 4.0, 32.0 / 28.0, exact);
}

TEST(Beam, SupportsInOnePlaceShare) {
    const auto r = beam_shares({0.5, 0.5, 1.5}, 0, 2);
    EXPECT_NEAR(r[0], 0.25, exact);
    EXPECT_NEAR(r[1], 0.25, exact);
    EXPECT_NEAR(r[2], 0.5, exact);
    EXPECT_EQ(beam_shares({1.0}, 0, 2), std::vector<double>{1.0});
    EXPECT_TRUE(beam_shares({}, 0, 2).empty());
}

TEST(Beam, ReactionsBalanceForceAndMoment) {
    constexpr unsigned seed = 77;
    SCOPED_TRACE(seed);
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> at(0.0, 3.0);
    for (int round = 0; round < 500; ++round) {
        std::vector<double> s(2 + static_cast<std::size_t>(round % 7));
        for (double& v : s)
            v = at(random);
        const auto r = beam_shares(s, 0, 3);
        double sum = 0.0, moment = 0.0, size = 0.0;
        for (std::size_t i = 0; i < s.size(); ++i) {
            sum += r[i];
            moment += r[i] * s[i];
            size += std::abs(r[i]);
        }
        EXPECT_NEAR(sum, 1.0, sum_tolerance * size);
        // Supports that share a reaction stand up to a millimetre from where it acts.
        EXPECT_NEAR(moment, 1.5, 2e-3 * size);
    }
}

PointedPlate plate(std::vector<Point2> points) {
    return {2.0, 0.8, points, points};
}

TEST(Shares, FourCornersTakeAQuarterEach) {
    const Shares s = even_load_shares(plate({{0.3, 0.1}, {1.7, 0.1}, {0.3, 0.7}, {1.7, 0.7}}));
    for (const double share : s.of_point)
        EXPECT_NEAR(share, 0.25, exact);
    EXPECT_EQ(s.rails, 2);
    EXPECT_EQ(s.single_point_rails, 0);
}

TEST(Shares, TheMiddleOfThreeTakesMost) {
    const Shares s = even_load_shares(plate({{0, 0.1}, {1, 0.1}, {2, 0.1}, {0, 0.7}, {1, 0.7}, {2, 0.7}}));
    EXPECT_NEAR(s.of_point[1], 0.5 * 10.0 / 16.0, exact);
    EXPECT_NEAR(s.of_point[0], 0.5 * 3.0 / 16.0, exact);
}

TEST(Shares, ShiftedPointsMoveTheLoadAndStillAddUp) {
    PointedPlate p = plate({{0.3, 0.1}, {1.7, 0.1}, {0.3, 0.7}, {1.7, 0.7}});
    p.points[1].x_m = 1.5;
    p.points[3].x_m = 1.5;
    const Shares s = even_load_shares(p);
    EXPECT_NEAR(std::accumulate(s.of_point.begin(), s.of_point.end(), 0.0), 1.0, sum_tolerance);
    EXPECT_GT(s.of_point[1], 0.25);
}

TEST(Shares, MirroredPointsGiveMirroredShares) {
    const std::vector<Point2> points{{0.2, 0.1}, {0.9, 0.1}, {1.6, 0.1}, {0.3, 0.75}, {1.9, 0.75}};
    std::vector<Point2> mirrored = points;
    for (Point2& p : mirrored)
        p.x_m = 2.0 - p.x_m;
    const Shares a = even_load_shares(plate(points)), b = even_load_shares(plate(mirrored));
    for (std::size_t i = 0; i < points.size(); ++i)
        EXPECT_NEAR(a.of_point[i], b.of_point[i], exact);
}

TEST(Shares, PointsInColumnsRunAlongTheShortSide) {
    const Shares s = even_load_shares(plate({{0.5, 0.0}, {0.5, 0.8}, {1.5, 0.1}, {1.5, 0.7}}));
    EXPECT_EQ(s.rails, 2);
    EXPECT_EQ(s.single_point_rails, 0);
    EXPECT_NEAR(std::accumulate(s.of_point.begin(), s.of_point.end(), 0.0), 1.0, sum_tolerance);
    EXPECT_TRUE(even_load_shares({}).of_point.empty());
}

TEST(Couple, ForcesBalanceItAndAddUpToNothing) {
    const std::vector<Point2> points{{0, 0}, {1.4, 0}, {0, 0.6}, {1.4, 0.6}, {0.7, 0.2}};
    const Point2 couple{30.0, -12.0};
    const auto f = couple_forces(points, couple);
    double sum = 0.0, x = 0.0, y = 0.0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        sum += f[i];
        x += f[i] * points[i].x_m;
        y += f[i] * points[i].y_m;
    }
    EXPECT_NEAR(sum, 0.0, sum_tolerance);
    EXPECT_NEAR(x, couple.x_m, sum_tolerance);
    EXPECT_NEAR(y, couple.y_m, sum_tolerance);
    for (const double v : couple_forces({{0, 0}, {1, 0}}, {0.0, 5.0}))
        EXPECT_NEAR(v, 0.0, exact);  // no extent that way
}

}  // namespace beam_test
}  // namespace wg::fixing
