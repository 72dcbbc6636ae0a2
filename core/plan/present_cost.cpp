#include "core/plan/present_cost.h"

namespace wg::plan {

Ranged present_cost_minor(const Plan& plan) {
    if (!plan.has_yield) return {};
    const auto mid = static_cast<double>(plan.economy.present_cost.minor);
    const Ranged& heat = plan.figures.heat_kwh;
    if (!(heat.mid > 0.0)) return {mid, mid, mid};
    return {mid * heat.low / heat.mid, mid, mid * heat.high / heat.mid};
}

}  // namespace wg::plan
