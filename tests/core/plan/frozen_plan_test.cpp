#include "core/plan/frozen_plan.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "tests/tools/load_reference.h"

namespace wg::plan {
namespace frozen_plan_test {

using nlohmann::json;

TEST(FrozenPlan, carries_the_rule_set_so_that_its_file_reader_takes_it) {
    const Reference reference = test::reference();
    ASSERT_GE(reference.rule_sets.size(), 3U);
    for (const auto& [id, rules] : reference.rule_sets) {
        const json frozen = json::parse(frozen_plan({}, rules));
        const Result<RuleSet> again = rule_set_from_json(frozen.at("rules").dump(), id);
        ASSERT_TRUE(again.ok()) << text_of(again.problems());
        EXPECT_EQ(frozen_plan({}, again.value()), frozen_plan({}, rules)) << "nothing of it was lost";
        // Every value that the set's own file gives stands there as it was given.
        const json file = json::parse(test::read_resource("rules/" + id + ".json").value());
        for (const char* group : {"actions", "tax", "charge_duties"})
            for (const auto& [field, value] : file.at(group).items())
                if (field != "sources") EXPECT_EQ(frozen.at("rules").at(group).at(field), value) << field;
        EXPECT_EQ(frozen.at("rules").at("market"), file.at("market"));
        EXPECT_EQ(frozen.at("rules").at("service"), file.at("service"));
    }
}

TEST(FrozenPlan, is_the_plan_and_nothing_else_besides) {
    const RuleSet rules = test::reference().rule_sets.at("assumed");
    Plan plan;
    plan.job_number = "2027-0042";
    json frozen = json::parse(frozen_plan(plan, rules));
    EXPECT_EQ(frozen.erase("rules"), 1U);
    EXPECT_EQ(frozen, json::parse(plan_to_json(plan)));
}

}  // namespace frozen_plan_test
}  // namespace wg::plan
