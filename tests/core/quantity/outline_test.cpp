#include "core/quantity/outline.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg {
namespace {

using Kind = OutlineFault::Kind;

const std::vector<Point2> notched = {{0, 0}, {6, 0}, {6, 2}, {3, 2}, {3, 3.5}, {0, 3.5}};

TEST(Outline, SimpleShapesHaveNoFaultInEitherSense) {
    for (std::vector<Point2> shape : {std::vector<Point2>{{0, 0}, {4, 0}, {0, 3}}, notched,
                                      // A straight corner in the middle of an edge is no fault.
                                      std::vector<Point2>{{0, 0}, {2, 0}, {4, 0}, {4, 3}, {0, 3}}}) {
        EXPECT_FALSE(outline_fault(shape).has_value());
        std::reverse(shape.begin(), shape.end());
        EXPECT_FALSE(outline_fault(shape).has_value());
    }
}

TEST(Outline, FewerThanThreeCornersAreAFault) {
    for (const std::vector<Point2>& shape : {std::vector<Point2>{}, {{0, 0}}, {{0, 0}, {1, 0}}}) {
        ASSERT_TRUE(outline_fault(shape).has_value());
        EXPECT_EQ(outline_fault(shape)->kind, Kind::too_few_corners);
    }
}

TEST(Outline, ABowTieNamesTheTwoEdgesAndWhereTheyCross) {
    const std::optional<OutlineFault> fault = outline_fault({{0, 0}, {4.2, 6.8}, {4.2, 0}, {0, 6.8}});
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->kind, Kind::crossing);
    EXPECT_EQ(fault->text(), "edges 1 and 3 cross at (2.10, 3.40)");
}

TEST(Outline, ACornerThatTouchesAnotherEdgeIsACrossing) {
    const std::optional<OutlineFault> fault = outline_fault({{0, 0}, {4, 0}, {4, 4}, {2, 0}, {0, 4}});
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->kind, Kind::crossing);
    EXPECT_EQ(fault->at, (Point2{2, 0}));
}

TEST(Outline, ACornerWellAwayFromAnEdgeIsNoCrossing) {
    constexpr double gap_m = 1e-4;  // far over outline_touch_m, far under anything drawn
    EXPECT_FALSE(outline_fault({{0, 0}, {4, 0}, {4, 4}, {2, gap_m}, {0, 4}}).has_value());
    EXPECT_TRUE(outline_fault({{0, 0}, {4, 0}, {4, 4}, {2, -gap_m}, {0, 4}}).has_value());
}

TEST(Outline, EdgesThatLieOnOneAnotherAreACrossing) {
    EXPECT_EQ(outline_fault({{0, 0}, {1, 0}, {2, 0}})->kind, Kind::crossing);
    EXPECT_EQ(outline_fault({{0, 0}, {4, 0}, {4, 3}, {4, -1}, {0, -1}})->kind, Kind::crossing);
    EXPECT_EQ(outline_fault({{0, 0}, {4, 0}, {4, 2}, {6, 2}, {6, 0}, {3, 0}, {3, -2}, {0, -2}})->kind, Kind::crossing);
}

TEST(Outline, ARepeatedCornerIsNamed) {
    const std::optional<OutlineFault> fault = outline_fault({{0, 0}, {4, 0}, {4, 0}, {4, 3}});
    ASSERT_TRUE(fault.has_value());
    EXPECT_EQ(fault->text(), "corner 2 and the next are both at (4.00, 0.00)");
    EXPECT_EQ(outline_fault({{0, 0}, {4, 0}, {4, 3}, {0, 0}})->kind, Kind::repeated_corner);
}

TEST(Outline, ASliverWithoutAreaIsAFault) {
    constexpr double thin_m = 3e-6;  // wider than outline_touch_m, yet with less than 1 mm2 over its 0.1 m
    EXPECT_EQ(outline_fault({{0, 0}, {0.1, 0}, {0.05, thin_m}})->kind, Kind::no_area);
}

TEST(Outline, TheVerdictDoesNotDependOnWhereTheOutlineLiesOrHowItIsTurned) {
    const std::vector<Point2> crossing = {{0, 0}, {5, 0}, {1, 3}, {4, 3}};
    for (int step = 0; step < 36; ++step) {
        const double a = radians(10.0 * step + 3.0);
        const auto moved = [a](const std::vector<Point2>& shape) {
            std::vector<Point2> out;
            for (const Point2 p : shape) {
                out.push_back({9000.0 + p.x_m * std::cos(a) - p.y_m * std::sin(a),
                               -8000.0 + p.x_m * std::sin(a) + p.y_m * std::cos(a)});
            }
            return out;
        };
        EXPECT_FALSE(outline_fault(moved(notched)).has_value()) << step;
        ASSERT_TRUE(outline_fault(moved(crossing)).has_value()) << step;
        EXPECT_EQ(outline_fault(moved(crossing))->kind, Kind::crossing) << step;
    }
}

TEST(Outline, AThousandCornersAreJudged) {
    std::vector<Point2> star;
    for (int i = 0; i < 1000; ++i) {
        const double a = 2.0 * pi * i / 1000.0;
        const double r = i % 2 == 0 ? 10.0 : 9.0;
        star.push_back({r * std::cos(a), r * std::sin(a)});
    }
    EXPECT_FALSE(outline_fault(star).has_value());
    std::swap(star[500], star[502]);
    EXPECT_TRUE(outline_fault(star).has_value());
}

}  // namespace
}  // namespace wg
