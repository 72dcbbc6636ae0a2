#include "core/quantity/result.h"

#include <gtest/gtest.h>

#include <memory>

namespace wg {
namespace {

TEST(Problem, TextIsOneSentenceAfterTheOther) {
    EXPECT_EQ((Problem{"roof.json", "is empty", "Choose another"}.text()), "roof.json: is empty. Choose another");
    EXPECT_EQ((Problem{"", "is empty.", "Choose another"}.text()), "is empty. Choose another");
    EXPECT_EQ((Problem{"roof.json", "is empty", ""}.text()), "roof.json: is empty");
    EXPECT_EQ(text_of(std::vector<Problem>{{"a", "b", ""}, {"c", "d", ""}}), "a: b\nc: d");
}

TEST(Result, HoldsAValueOrProblems) {
    const Result<int> good = 5;
    EXPECT_TRUE(good.ok());
    EXPECT_EQ(good.value(), 5);
    const Result<int> bad = Problem{"x", "y", "z"};
    EXPECT_FALSE(bad);
    ASSERT_EQ(bad.problems().size(), 1U);
    EXPECT_EQ(bad.problems()[0].what, "y");
}

TEST(Result, GivesUpWhatCanOnlyBeMoved) {
    Result<std::unique_ptr<int>> result = std::make_unique<int>(7);
    const std::unique_ptr<int> taken = std::move(result).value();
    EXPECT_EQ(*taken, 7);
}

}  // namespace
}  // namespace wg
