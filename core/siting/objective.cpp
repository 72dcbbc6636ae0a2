#include "core/siting/objective.h"

#include <algorithm>

namespace wg::siting {

const char* text_of(Aim aim) noexcept {
    switch (aim) {
        case Aim::running_cost: return "least running cost";
        case Aim::pump_heat: return "most heat from the pump";
        case Aim::short_run: return "shortest run";
        case Aim::light_fixing: return "least load on the fixings";
        case Aim::out_of_sight: return "least seen";
    }
    return "";
}

double Objective::score(const Measures& m) const noexcept {
    return per_electricity_kwh * m.electricity_kwh - per_missing_heat_kwh * m.pump_heat_kwh + per_run_m * m.run_m +
           per_utilisation * m.utilisation + per_seen * m.seen;
}

bool Objective::valid() const noexcept {
    const auto weights = {per_electricity_kwh, per_missing_heat_kwh, per_run_m, per_utilisation, per_seen};
    return std::all_of(weights.begin(), weights.end(), [](double w) { return w >= 0.0 && w <= most_weight; });
}

Objective objective_for(Aim aim) noexcept {
    // One point is one kWh of electricity a year where electricity counts. A metre of run stands for what it costs to
    // lay, spread over its life; full use of a fixing point and being seen from all sides for a tie-break.
    switch (aim) {
        case Aim::running_cost: return {1.0, 0.0, 2.0, 5.0, 2.0};
        case Aim::pump_heat: return {0.0, 1.0, 2.0, 5.0, 2.0};
        case Aim::short_run: return {0.02, 0.0, 10.0, 1.0, 0.5};
        case Aim::light_fixing: return {0.02, 0.0, 0.2, 100.0, 0.5};
        case Aim::out_of_sight: return {0.05, 0.0, 0.5, 1.0, 200.0};
    }
    return {};
}

}  // namespace wg::siting
