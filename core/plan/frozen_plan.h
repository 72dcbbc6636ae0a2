#pragma once
// A plan as it is kept with an issued quote.

#include <string>

#include "core/plan/plan.h"
#include "core/plan/rule_set.h"

namespace wg::plan {

/// plan.json (docs/plan-format.md) with the rule set that the plan was reckoned with: it stays readable when the set
/// has gone on, or is on no machine any more.
[[nodiscard]] std::string frozen_plan(const Plan& plan, const RuleSet& rules);

/// Of plan.json the choice and the money: what `quote::frozen_offer` reads, without all the rest.
[[nodiscard]] std::string offer_of_plan(const Plan& plan);

}  // namespace wg::plan
