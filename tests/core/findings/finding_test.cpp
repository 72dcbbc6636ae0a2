#include "core/findings/finding.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace wg {
namespace {

Finding finding(const char* code, Severity severity, Stage stage = Stage::layout, const char* place_id = "") {
    Finding out;
    out.code = code;
    out.severity = severity;
    out.stage = stage;
    out.place_id = place_id;
    return out;
}

std::vector<std::string> codes(const std::vector<Finding>& findings) {
    std::vector<std::string> out;
    for (const Finding& f : findings)
        out.push_back(f.code + f.place_id);
    return out;
}

TEST(Findings, StandWorstFirstThenByStageCodeAndPlace) {
    std::vector<Finding> list = {finding("c", Severity::note, Stage::visit),
                                 finding("b", Severity::stop, Stage::offer),
                                 finding("a", Severity::caution),
                                 finding("b", Severity::stop, Stage::layout, "2"),
                                 finding("b", Severity::stop, Stage::layout, "1"),
                                 finding("a", Severity::stop, Stage::layout, "9")};
    sort_findings(list);
    EXPECT_EQ(codes(list), (std::vector<std::string>{"a9", "b1", "b2", "b", "a", "c"}));
}

TEST(Findings, OrderDoesNotDependOnTheOrderOfArrival) {
    std::vector<Finding> list;
    for (int i = 0; i < 5; ++i) {
        list.push_back(finding("x", static_cast<Severity>(i % 3), static_cast<Stage>(i), std::to_string(i).c_str()));
    }
    std::vector<Finding> sorted = list;
    sort_findings(sorted);
    std::sort(list.begin(), list.end(), [](const Finding& a, const Finding& b) { return a.place_id < b.place_id; });
    do {
        std::vector<Finding> again = list;
        sort_findings(again);
        ASSERT_EQ(again, sorted);
    } while (std::next_permutation(list.begin(), list.end(),
                                   [](const Finding& a, const Finding& b) { return a.place_id < b.place_id; }));
}

TEST(Findings, OnlyAStopIsAStop) {
    EXPECT_FALSE(has_stop({}));
    EXPECT_FALSE(has_stop({finding("a", Severity::note), finding("b", Severity::caution)}));
    EXPECT_TRUE(has_stop({finding("a", Severity::note), finding("b", Severity::stop)}));
}

TEST(Findings, SeveritiesAndStagesHaveWords) {
    EXPECT_STREQ(word(Severity::stop), "stop");
    EXPECT_STREQ(word(Severity::caution), "caution");
    EXPECT_STREQ(word(Severity::note), "note");
    EXPECT_STREQ(word(Stage::visit), "Visit");
    EXPECT_STREQ(word(Stage::layout), "Layout");
    EXPECT_STREQ(word(Stage::yield), "Yield");
    EXPECT_STREQ(word(Stage::offer), "Offer");
    EXPECT_STREQ(word(Stage::fitting), "Fitting");
    EXPECT_STREQ(word(Stage::aftercare), "Aftercare");
}

}  // namespace
}  // namespace wg
