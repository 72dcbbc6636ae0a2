#pragma once
// What the same water costs with the present heater, and how far that may be off.

#include "core/plan/plan.h"

namespace wg::plan {

/// In minor units. The heat used decides it: its range is that of the heat, at the same price and efficiency. All
/// zeros while the year is not worked out.
[[nodiscard]] Ranged present_cost_minor(const Plan& plan);

}  // namespace wg::plan
