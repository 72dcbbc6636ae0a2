#pragma once
// What equipment data say by themselves, as curves for eyes: a block over the evaporating temperature, a collector over
// the temperature of its fluid. The same equations as in a plan; nothing of a site is in them.

#include <vector>

#include "core/equipment/equipment.h"
#include "core/quantity/result.h"
#include "core/refrigerant/properties.h"

namespace wg::heatpump {

/// A block at one evaporating temperature, without a suction line.
struct BlockCurvePoint {
    double evaporating_c = 0.0;
    double heat_w = 0.0;  ///< to the water: evaporator and work, less the loss of the shell
    double work_w = 0.0;
    [[nodiscard]] double cop() const noexcept { return heat_w / work_w; }
};
/// At one condensing temperature, only where the block's envelope and the compressor's stated range let it run.
struct BlockCurve {
    double condensing_c = 0.0;
    std::vector<BlockCurvePoint> points;  ///< by rising evaporating temperature; may be empty
};
/// Problems as by problems_of(). The work is above 0 at every point.
[[nodiscard]] Result<std::vector<BlockCurve>> block_curves(const BlockModel& block,
                                                           const refrigerant::Properties& refrigerant,
                                                           const std::vector<double>& condensing_c);

/// A dry collector in level light of `light_w_m2` at right angles, sky and surroundings as warm as the air.
struct CollectorCurvePoint {
    double reduced_m2k_w = 0.0;  ///< (mean fluid less air) / light
    double efficiency = 0.0;  ///< heat over light on the gross area (length x width); above 1 when the air gives heat
};
struct CollectorCurve {
    double wind_m_s = 0.0;
    std::vector<CollectorCurvePoint> points;  ///< by rising temperature of the fluid
};
inline constexpr double curve_light_w_m2 = 800.0;  ///< hemispherical, as in tests by ISO 9806
inline constexpr double curve_air_c = 20.0;        ///< of physical parameters; a test's equation knows differences only
/// By the coefficients of a test where the model has them (ISO 9806:2017, its own equation, hemispherical light), else
/// by the plate's heat balance, facing up at 45 degrees.
[[nodiscard]] std::vector<CollectorCurve> collector_curves(const CollectorModel& model,
                                                           const std::vector<double>& wind_m_s);

}  // namespace wg::heatpump
