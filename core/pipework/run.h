#pragma once
// The pipe run between collector and block: lengths, bends, lift, charge, losses.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/refrigerant/properties.h"

namespace wg::pipework {

// Assumptions that hold for every run; each stands in the workings.
inline constexpr double cutting_allowance = 0.05;  ///< of the run, bought on top
inline constexpr double bend_from_deg = 10.0;      ///< smaller changes of direction are not bends
inline constexpr double bend_bores = 20.0;         ///< equivalent length of a 90 deg bend, in bores of the suction line
inline constexpr double lagging_air_c = 25.0;      ///< damp room air round the line
inline constexpr double lagging_humidity = 0.75;
inline constexpr double assumed_liquid_c = 40.0;      ///< liquid from the condenser with the cylinder half warm
inline constexpr double copper_roughness_m = 1.5e-6;  ///< drawn tube, Moody 1944
inline constexpr double suction_drop_limit_k = 1.0;   ///< ASHRAE Handbook Refrigeration: suction lines sized for 1 K

struct Leg {
    Point3 from, to;
    double length_m = 0.0;
    RoutePointKind ends_at = RoutePointKind::free;
};

struct Run {
    std::vector<Leg> legs;
    double length_m = 0.0;      ///< one way, along the centre line
    double lift_m = 0.0;        ///< collector's connections over the block's; negative: collector below
    int bends = 0;              ///< changes of direction over 10 deg
    int passages = 0;           ///< through roof, wall or floor
    double equivalent_m = 0.0;  ///< length with bends as equivalent length
    double extra_charge_kg = 0.0;
    double total_charge_kg = 0.0;
    double total_charge_t_co2e = 0.0;
    double coil_liquid_m = 0.0;  ///< to buy, cutting allowance included
    double coil_suction_m = 0.0;
    double insulation_mm = 0.0;    ///< wall thickness against condensation and loss
    double suction_loss_pa = 0.0;  ///< at the rating flow
    double suction_drop_k = 0.0;   ///< the same as fall of saturation temperature
    double suction_velocity_m_s = 0.0;
    double liquid_head_pa = 0.0;  ///< static, signed: positive when liquid must rise to the plate
    double line_ua_w_k = 0.0;     ///< of the insulated suction line to the air round it
};

struct Input {
    Point3 collector_connection;
    Point3 block_connection;
    std::vector<RoutePoint> route;
    BlockModel block;
    CollectorModel collector;
    /// Not owned. When missing, or when the rating point lies outside its tables, what depends on it stays 0 and a
    /// finding says so.
    const refrigerant::Properties* refrigerant = nullptr;
    double rating_evaporating_c = 0.0;
    double rating_heat_w = 1500.0;  ///< taken up at the evaporator; sets the flow for losses
};

struct Outcome {
    Run run;
    std::vector<Finding> findings;
    std::vector<Working> workings;
};

/// Equipment rules checked: pre-charged range, longest run, greatest lift, connection sizes of collector and block.
/// Rules of trade checked: fall of saturation temperature, oil return where vapour rises, flash gas where liquid rises.
/// Lines take the block's sizes. Legs shorter than a millimetre are left out. Handbook: docs/handbook/pipework.md.
[[nodiscard]] Outcome run_of(const Input& input);

}  // namespace wg::pipework
