#include "core/plan/own_rules.h"

#include <gtest/gtest.h>

#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace own_rules_test {

std::string shipped_under(const std::string& id) {
    std::string text = test::read_resource("rules/assumed.json").value();
    const std::string theirs = "\"id\": \"assumed\"";
    return text.replace(text.find(theirs), theirs.size(), "\"id\": \"" + id + '"');
}

TEST(OwnRules, the_firms_sets_stand_beside_the_programs) {
    const Reference program = test::reference();
    const WithRules with = with_own_rules(program, {{"a-firm", shipped_under("a-firm")}});
    EXPECT_TRUE(with.problems.empty());
    EXPECT_EQ(with.reference.rule_sets.size(), program.rule_sets.size() + 1);
    EXPECT_EQ(with.reference.rule_sets.count("a-firm"), 1U);
}

TEST(OwnRules, what_cannot_be_taken_is_told_and_hinders_no_other) {
    const Reference program = test::reference();
    const WithRules with = with_own_rules(program, {{"assumed", shipped_under("assumed")},
                                                    {"broken", "{\"schema\": 1"},
                                                    {"one", shipped_under("another")},
                                                    {"good", shipped_under("good")}});
    EXPECT_EQ(with.problems.size(), 3U);
    EXPECT_EQ(with.reference.rule_sets.size(), program.rule_sets.size() + 1);
    EXPECT_EQ(with.reference.rule_sets.count("good"), 1U);
}

TEST(OwnRules, new_jobs_take_the_chosen_set_while_it_is_there) {
    const Reference program = test::reference();
    const Reference with = with_own_rules(program, {{"a-firm", shipped_under("a-firm")}}).reference;
    EXPECT_EQ(rules_for_new_jobs(with, program, "a-firm"), "a-firm");
    EXPECT_EQ(rules_for_new_jobs(with, program, ""), "assumed") << "not the first by id";
    EXPECT_EQ(rules_for_new_jobs(with, program, "withdrawn"), "assumed");
    EXPECT_EQ(rules_for_new_jobs({}, {}, "x"), "");
}

}  // namespace own_rules_test
}  // namespace wg::plan
