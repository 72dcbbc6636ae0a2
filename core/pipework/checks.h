#pragma once
// What stands against a run. Used by run.cpp; separate so that rules can be read in one place.

#include <vector>

#include "core/pipework/run.h"

namespace wg::pipework {

/// Suction line at the rating point.
struct Flow {
    bool known = false;
    double bore_m = 0.0;
    double mass_kg_s = 0.0;
    double mass_velocity_kg_m2s = 0.0;
    double velocity_m_s = 0.0;
    double vapour_density_kg_m3 = 0.0;
    double reynolds = 0.0;
    double friction = 0.0;
    double loss_pa_m = 0.0;
    double slope_pa_k = 0.0;  ///< of the saturation pressure at the evaporating temperature
    double liquid_density_kg_m3 = 0.0;
    double liquid_slope_pa_k = 0.0;  ///< the same at the liquid's temperature
    double riser_kg_m2s = 0.0;       ///< least mass velocity that lifts oil
};

[[nodiscard]] std::vector<Finding> check_run(const Input& input, const Run& run, const Flow& flow);

}  // namespace wg::pipework
