#pragma once
// Values of plan.json. Inside core/plan.

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/plan/plan.h"

namespace wg::plan::detail {

using Json = nlohmann::ordered_json;

/// Rounded to decimals; null for what is not a number, which JSON cannot hold.
inline Json num(double value, int decimals) {
    if (!std::isfinite(value)) return nullptr;
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(value * scale) / scale;
    return rounded == 0.0 ? 0.0 : rounded;
}
inline Json point(Point2 p) {
    return Json::array({num(p.x_m, 3), num(p.y_m, 3)});
}
inline Json point(Point3 p) {
    return Json::array({num(p.x_m, 3), num(p.y_m, 3), num(p.z_m, 3)});
}

/// The object `run`.
[[nodiscard]] Json run_json(const Plan& plan);

}  // namespace wg::plan::detail
