#include "core/quantity/money.h"

#include <gtest/gtest.h>

#include <limits>

namespace wg {
namespace {

TEST(Money, HalvesGoAwayFromZeroOrToTheEvenNeighbour) {
    EXPECT_EQ(scaled({5}, 0.5).minor, 3);
    EXPECT_EQ(scaled({-5}, 0.5).minor, -3);
    EXPECT_EQ(scaled({5}, 0.5, Rounding::half_even).minor, 2);
    EXPECT_EQ(scaled({7}, 0.5, Rounding::half_even).minor, 4);
    EXPECT_EQ(scaled({-5}, 0.5, Rounding::half_even).minor, -2);
}

TEST(Money, DecimalFactorsRoundAsOnPaper) {
    // 1.005 is not a binary number: 100 * 1.005 arrives as 100.49999999999999 and is a tie on paper.
    EXPECT_EQ(scaled({100}, 1.005).minor, 101);
    EXPECT_EQ(scaled({10050}, 0.19).minor, 1910);    // 1909.5
    EXPECT_EQ(scaled({123450}, 0.21).minor, 25925);  // 25924.5
    EXPECT_EQ(scaled({99999}, 0.0).minor, 0);
}

TEST(Money, AddsAndComparesInWholeCents) {
    Money sum;
    for (int i = 0; i < 1000; ++i)
        sum += Money{10};
    EXPECT_EQ(sum, Money{10000});
    EXPECT_EQ(sum - Money{10001}, Money{-1});
    EXPECT_LT(Money{-1}, Money{0});
}

TEST(Money, TextGroupsThousandsAndKeepsTwoDecimals) {
    EXPECT_EQ(text({123450}, "EUR"), "1,234.50 EUR");
    EXPECT_EQ(text({5}, "EUR"), "0.05 EUR");
    EXPECT_EQ(text({-123456789}, ""), "-1,234,567.89");
    EXPECT_EQ(text({0}, "EUR"), "0.00 EUR");
    EXPECT_EQ(text({std::numeric_limits<std::int64_t>::min()}, ""), "-92,233,720,368,547,758.08");
}

// Twelve decimals cannot be held by a double; whole numbers have no such ties.
TEST(Money, whole_numbers_round_exactly_at_ties_and_beside_them) {
    EXPECT_EQ(scaled_exact({1'000'000'000'001}, 500'000, 1'000'000).minor, 500'000'000'001);
    EXPECT_EQ(scaled_exact({5}, 1, 10).minor, 1);
    EXPECT_EQ(scaled_exact({5}, 1, 10, Rounding::half_even).minor, 0);
    EXPECT_EQ(scaled_exact({15}, 1, 10, Rounding::half_even).minor, 2);
    EXPECT_EQ(scaled_exact({-5}, 1, 10).minor, -1);
    EXPECT_EQ(scaled_exact({-4}, 1, 10).minor, 0);
    EXPECT_EQ(scaled_exact({49}, 1, 100).minor, 0);
    EXPECT_EQ(scaled_exact({51}, 1, 100).minor, 1);
    EXPECT_EQ(line_net({100}, 1.005).minor, 101) << "1.005 is a tie as typed";
    EXPECT_EQ(line_net({740}, 12.345).minor, 9135) << "9135.3";
    EXPECT_EQ(in_last_place(0.29, 2), 29);
    EXPECT_EQ(in_last_place(1.1, 6), 1'100'000);
}

}  // namespace
}  // namespace wg
