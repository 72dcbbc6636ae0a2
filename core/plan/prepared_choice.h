#pragma once
// A choice planned up to its year: light, run, fixings, services and price. Inside core/plan: what studies and advice
// start from.

#include <string>
#include <vector>

#include "core/plan/parts_of_plan.h"

namespace wg::plan::detail {

struct PreparedChoice {
    steps::Selection with;
    Plan plan;  ///< without its year
    std::vector<sky::PlaneYear> planes;
    season::Input input;
};

/// Problems as plan() has them, and when the choice has no collector. `choice_id` empty: the chosen one. The job must
/// outlive the result.
[[nodiscard]] Result<PreparedChoice> prepared_choice(const Job& job, const Reference& reference,
                                                     const std::string& choice_id);

}  // namespace wg::plan::detail
