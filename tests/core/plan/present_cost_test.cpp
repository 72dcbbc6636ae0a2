#include "core/plan/present_cost.h"

#include <gtest/gtest.h>

namespace wg::plan {
namespace present_cost_test {

TEST(PresentCost, goes_with_the_heat_that_is_used) {
    Plan plan;
    EXPECT_EQ(present_cost_minor(plan).mid, 0.0) << "no year yet";
    plan.has_yield = true;
    plan.economy.present_cost = {120'000};
    plan.figures.heat_kwh = {1700.0, 2000.0, 2300.0};
    const Ranged cost = present_cost_minor(plan);
    EXPECT_DOUBLE_EQ(cost.low, 102'000.0);
    EXPECT_DOUBLE_EQ(cost.mid, 120'000.0);
    EXPECT_DOUBLE_EQ(cost.high, 138'000.0);
    plan.figures.heat_kwh = {};
    EXPECT_EQ(present_cost_minor(plan).high, 120'000.0) << "no heat is used: nothing to go by";
}

}  // namespace present_cost_test
}  // namespace wg::plan
