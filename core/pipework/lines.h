#pragma once
// What flows in the two lines at an operating point and what it loses on the way. No text: run.h tells of it.

#include <vector>

#include "core/equipment/equipment.h"
#include "core/refrigerant/properties.h"

namespace wg::pipework {

inline constexpr double copper_roughness_m = 1.5e-6;  ///< drawn tube, Moody 1944

/// Of a kelvin lost in the suction line, what the seasonal factor feels: less gas is moved, so the plate gets warmer,
/// and standby and heater do not change. From years of operation of three systems, which gave 0.5 to 1.1.
inline constexpr double felt_share = 0.6;

/// Evaporating and condensing temperature with the heat that goes with them.
struct OperatingPoint {
    double evaporating_c = 0.0;
    double condensing_c = 43.0;
    double evaporator_w = 1500.0;
    double outdoor_c = 7.0;
    double weight = 1.0;  ///< in the mean: hours
};

/// What the run is to the refrigerant.
struct Path {
    double small_equivalent_m = 0.0;  ///< with bends
    double suction_equivalent_m = 0.0;
    double lift_m = 0.0;  ///< collector over block
};

/// One line at one point, along the flow: in the small line from block to collector, in the suction line back.
struct LineFlow {
    double mass_velocity_kg_m2s = 0.0;
    double velocity_m_s = 0.0;  ///< two-phase: of both together at the collector
    double reynolds = 0.0;      ///< two-phase: of the whole flow as liquid
    double friction_pa = 0.0;
    double head_pa = 0.0;  ///< weight of the column, signed: positive where it takes pressure
    double drop_k = 0.0;   ///< both as fall of saturation temperature; a column that gives pressure does not count
};

struct PointLines {
    bool known = false;  ///< within the property tables
    OperatingPoint at;
    double flow_kg_s = 0.0;
    LineFlow small;
    LineFlow suction;
    double suction_density_kg_m3 = 0.0;
    /// Expansion at the block: vapour by mass as the flow leaves the device, its temperature there, and the share of
    /// the pressure difference that is left for the device.
    double quality = 0.0;
    double small_inlet_c = 0.0;
    double device_share = 1.0;
    /// Expansion at the collector: temperature of the liquid, its pressure over boiling as it leaves the block, and
    /// what is left of that at the collector; below 0 gas boils out.
    double liquid_c = 0.0;
    double over_boiling_pa = 0.0;
    double left_over_boiling_pa = 0.0;
    double factor_share = 0.0;  ///< first-order share of the seasonal factor that the suction line costs
};

[[nodiscard]] PointLines lines_at(const BlockModel& block, const refrigerant::Properties& refrigerant, const Path& path,
                                  const OperatingPoint& at) noexcept;

/// Means over the points by weight, and the worst of them.
struct LinesMean {
    int points = 0;  ///< known ones
    double small_friction_pa = 0.0, small_head_pa = 0.0, small_drop_k = 0.0;
    double suction_friction_pa = 0.0, suction_head_pa = 0.0, suction_drop_k = 0.0, worst_suction_drop_k = 0.0;
    double factor_share = 0.0;
    double least_device_share = 1.0;
    double least_left_over_boiling_pa = 0.0;
};
[[nodiscard]] LinesMean mean_of(const std::vector<PointLines>& points) noexcept;

}  // namespace wg::pipework
