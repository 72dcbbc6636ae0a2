#include "core/job/upgrade.h"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "core/job/job.h"

namespace wg {
namespace {

using nlohmann::json;

json tree_of_schema(int schema) {
    return json{{"format", "warmgable-job"}, {"schema", schema}, {"steps", "1"}};
}

std::optional<std::string> to_two(json& tree) {
    tree["steps"] = tree["steps"].get<std::string>() + "2";
    return std::nullopt;
}

std::optional<std::string> to_three(json& tree) {
    tree["steps"] = tree["steps"].get<std::string>() + "3";
    return std::nullopt;
}

std::optional<std::string> fails(json&) {
    return "the roof has no pitch";
}

TEST(JobUpgrade, ThereIsAStepFromEverySchemaToTheNext) {
    EXPECT_EQ(job_upgraders().size() + 1, static_cast<std::size_t>(job_schema));
}

TEST(JobUpgrade, StepsRunInOrderFromTheFilesSchemaOn) {
    const std::vector<JobUpgrader> steps = {to_two, to_three};
    json tree = tree_of_schema(1);
    EXPECT_EQ(upgrade_job_tree(tree, "old.json", steps, 3), std::nullopt);
    EXPECT_EQ(tree["steps"], "123");
    EXPECT_EQ(tree["schema"], 3);
    tree = tree_of_schema(2);
    EXPECT_EQ(upgrade_job_tree(tree, "old.json", steps, 3), std::nullopt);
    EXPECT_EQ(tree["steps"], "13");
    tree = tree_of_schema(3);
    EXPECT_EQ(upgrade_job_tree(tree, "old.json", steps, 3), std::nullopt);
    EXPECT_EQ(tree["steps"], "1");
}

TEST(JobUpgrade, AStepThatFailsIsReportedWithItsSchema) {
    json tree = tree_of_schema(1);
    const std::optional<Problem> problem = upgrade_job_tree(tree, "old.json", {to_two, fails}, 3);
    ASSERT_TRUE(problem.has_value());
    EXPECT_EQ(problem->where, "old.json: schema");
    EXPECT_EQ(problem->what, "the file of schema 2 cannot be brought over: the roof has no pitch");
}

TEST(JobUpgrade, ANewerSchemaIsRefused) {
    json tree = tree_of_schema(4);
    const std::optional<Problem> problem = upgrade_job_tree(tree, "", {to_two, to_three}, 3);
    ASSERT_TRUE(problem.has_value());
    EXPECT_NE(problem->what.find("a newer program wrote the file"), std::string::npos);
}

}  // namespace
}  // namespace wg
