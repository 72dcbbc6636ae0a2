#include "core/quantity/text.h"

#include <gtest/gtest.h>

#include <limits>

namespace wg {
namespace {

TEST(Text, FixedDecimalsHaveAPointAndNoNegativeZero) {
    EXPECT_EQ(fixed(1.25, 1), "1.2");  // 1.25 is exact in binary: to even, as printf rounds
    EXPECT_EQ(fixed(-0.001, 2), "0.00");
    EXPECT_EQ(fixed(-1.5, 0), "-2");
    EXPECT_EQ(fixed(1234567.891, 2), "1234567.89");
}

TEST(Text, WhatIsNoNumberNeverLooksLikeOne) {
    EXPECT_EQ(fixed(std::numeric_limits<double>::quiet_NaN(), 2), "unknown");
    EXPECT_EQ(fixed(std::numeric_limits<double>::infinity(), 2), "unknown");
}

TEST(Text, CountsTakeTheRightNoun) {
    EXPECT_EQ(counted(1, "collector", "collectors"), "1 collector");
    EXPECT_EQ(counted(0, "collector", "collectors"), "0 collectors");
    EXPECT_EQ(counted(3, "collector", "collectors"), "3 collectors");
}

}  // namespace
}  // namespace wg
