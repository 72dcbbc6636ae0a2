#include "core/heatpump/curves.h"

#include <algorithm>
#include <cmath>

#include "core/heatpump/compressor.h"
#include "core/heatpump/cycle.h"
#include "core/heatpump/plate.h"
#include "core/quantity/constants.h"

namespace wg::heatpump {
namespace {

constexpr double block_step_k = 1.0;
// Reduced temperatures between which tests of bare collectors lie, colder and warmer than the air.
constexpr double coldest_reduced = -0.03, hottest_reduced = 0.05;
constexpr int collector_steps = 40;
constexpr double tilt_of_curves_deg = 45.0;

bool may_run(const BlockModel& block, const refrigerant::Properties& refrigerant, double evaporating_c,
             double condensing_c) {
    if (condensing_c > block.condensing_max_c || condensing_c - evaporating_c < block.least_lift_k) return false;
    if (evaporating_c < refrigerant.min_c() || condensing_c > refrigerant.max_c()) return false;
    const double ratio =
        refrigerant.saturation_pressure_pa(condensing_c) / refrigerant.saturation_pressure_pa(evaporating_c);
    return ratio <= block.pressure_ratio_max && covered_by_data(block, evaporating_c, condensing_c);
}

CollectorCurve tested_curve(const Iso9806& test, double wind_m_s) {
    CollectorCurve out{wind_m_s, {}};
    const double wind = std::min(wind_m_s, Iso9806::strongest_wind_m_s) - Iso9806::reference_wind_m_s;
    for (int i = 0; i <= collector_steps; ++i) {
        const double reduced = coldest_reduced + (hottest_reduced - coldest_reduced) * i / collector_steps;
        const double loss = test.loss_w_m2(wind_m_s, reduced * curve_light_w_m2) / curve_light_w_m2;
        out.points.push_back({reduced, test.zero_loss * test.hemispherical() - test.a6 * wind - loss});
    }
    return out;
}

CollectorCurve balance_curve(const CollectorModel& model, double wind_m_s) {
    CollectorCurve out{wind_m_s, {}};
    const Plate plate = plate_of(model, 1, tilt_of_curves_deg, 1.0, false);
    Surroundings around;
    around.front_w_m2 = curve_light_w_m2;
    around.air_c = curve_air_c;
    around.dew_point_c = -60.0;  // dry
    around.wind_m_s = wind_m_s;
    around.sky_k = kelvin(curve_air_c);
    const PlateBalance balance(plate, around);
    for (int i = 0; i <= collector_steps; ++i) {
        const double reduced = coldest_reduced + (hottest_reduced - coldest_reduced) * i / collector_steps;
        const double fluid_c = curve_air_c + reduced * curve_light_w_m2;
        // What the plate takes in falls with its temperature, what it passes on to the fluid rises.
        double low = -80.0;
        double high = 250.0;
        for (int halving = 0; halving < 50; ++halving) {
            const double middle = 0.5 * (low + high);
            (balance.heat(middle).total_w() > plate.refrigerant_w_k * (middle - fluid_c) ? low : high) = middle;
        }
        const double heat_w = plate.refrigerant_w_k * (0.5 * (low + high) - fluid_c);
        out.points.push_back({reduced, heat_w / (curve_light_w_m2 * plate.gross_area_m2)});
    }
    return out;
}

}  // namespace

Result<std::vector<BlockCurve>> block_curves(const BlockModel& block, const refrigerant::Properties& refrigerant,
                                             const std::vector<double>& condensing_c) {
    std::vector<Problem> problems = problems_of(block, refrigerant);
    if (!problems.empty()) return problems;
    std::vector<BlockCurve> out;
    for (const double condensing : condensing_c) {
        BlockCurve curve{condensing, {}};
        const int steps =
            static_cast<int>(std::floor((block.evaporating_max_c - block.evaporating_min_c) / block_step_k + 1e-9));
        for (int i = 0; i <= steps; ++i) {
            const double evaporating = block.evaporating_min_c + i * block_step_k;
            if (!may_run(block, refrigerant, evaporating, condensing)) continue;
            const CycleState state = cycle_at(block, refrigerant, evaporating, condensing);
            if (state.discharge_c > block.discharge_max_c || !(state.work_w > 0.0)) continue;
            curve.points.push_back(
                {evaporating, state.evaporator_w + (1.0 - block.shell_loss) * state.work_w, state.work_w});
        }
        out.push_back(std::move(curve));
    }
    return out;
}

std::vector<CollectorCurve> collector_curves(const CollectorModel& model, const std::vector<double>& wind_m_s) {
    std::vector<CollectorCurve> out;
    out.reserve(wind_m_s.size());
    for (const double wind : wind_m_s)
        out.push_back(model.iso9806 ? tested_curve(*model.iso9806, wind) : balance_curve(model, wind));
    return out;
}

}  // namespace wg::heatpump
