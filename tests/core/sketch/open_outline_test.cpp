#include "core/sketch/open_outline.h"

#include <gtest/gtest.h>

namespace wg::sketch {
namespace {

const std::vector<Point2> drawn{{0, 0}, {4, 0}, {4, 3}, {1, 3}};

TEST(OpenOutline, a_corner_in_the_open_crosses_nothing) {
    EXPECT_FALSE(crossed_edge(drawn, {0, 3}));
    EXPECT_FALSE(crossed_edge(drawn, {2, 1}));
    EXPECT_FALSE(crossed_edge({}, {2, 1}));
    EXPECT_FALSE(crossed_edge({{0, 0}}, {2, 1}));
}

TEST(OpenOutline, the_edge_that_is_crossed_is_named) {
    EXPECT_EQ(crossed_edge(drawn, {2, -1}), 0U);
    EXPECT_EQ(crossed_edge(drawn, {9, 1}), 1U);
}

TEST(OpenOutline, touching_and_folding_back_count) {
    EXPECT_EQ(crossed_edge(drawn, {2, 0}), 0U);
    EXPECT_EQ(crossed_edge(drawn, {3, 3}), 2U);
    EXPECT_EQ(crossed_edge(drawn, {6, 3}), 1U) << "its far corner is reached first";
}

}  // namespace
}  // namespace wg::sketch
