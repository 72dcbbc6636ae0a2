#pragma once
// The part of a plan that a quote and its letter tell, exact, as JSON and back. Inside core/plan; for .cpp files.

#include <nlohmann/json.hpp>

#include "core/plan/plan.h"
#include "core/quote/frozen_reader.h"

namespace wg::plan {

/// Figures are not rounded as those of plan_to_json are: a paper rounds once.
[[nodiscard]] nlohmann::json issued_plan_json(const Plan& plan);
/// The same back; what is wrong is kept by `read`.
void read_issued_plan(quote::FrozenReader& read, const nlohmann::json& object, Plan& out);

}  // namespace wg::plan
