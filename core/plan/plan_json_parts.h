#pragma once
// Pieces of plan.json that stand in files of their own. Inside core/plan.

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/plan/plan.h"
#include "core/plan/rule_set.h"

namespace wg::plan::json_parts {

using Json = nlohmann::ordered_json;

/// Rounded to decimals; null for what is not a number, which JSON cannot hold.
[[nodiscard]] inline Json num(double value, int decimals) {
    if (!std::isfinite(value)) return nullptr;
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(value * scale) / scale;
    return rounded == 0.0 ? 0.0 : rounded;
}

[[nodiscard]] inline Json point(Point2 p) {
    return Json::array({num(p.x_m, 3), num(p.y_m, 3)});
}
[[nodiscard]] inline Json point(Point3 p) {
    return Json::array({num(p.x_m, 3), num(p.y_m, 3), num(p.z_m, 3)});
}

[[nodiscard]] Json run_json(const Plan& plan);
[[nodiscard]] Json services_json(const services::Outcome& services);
[[nodiscard]] Json duties_json(const ChargeDuty& duty);
[[nodiscard]] Json rules_json(const RuleSet& rules);
[[nodiscard]] Json pressure_tests_json(const PressureTests& tests);

}  // namespace wg::plan::json_parts
