#pragma once
// What the block and cylinder need at their spot: electrical supply, water, drain, room.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/refrigerant/properties.h"

namespace wg::services {

// Assumptions that hold for every spot; each stands in the workings.
inline constexpr double supply_pressure_bar = 3.0;  ///< cold supply behind a pressure reducer, bar gauge (practice)
inline constexpr double valve_margin = 0.9;  ///< end pressure as a share of the safety valve's setting (practice)
inline constexpr double hottest_store_c =
    60.0;  ///< expansion is reckoned to this or the set-point, whichever is hotter
inline constexpr double cable_allowance_m = 2.0;    ///< from where the supply ends to the terminals
inline constexpr double drop_wanted_percent = 3.0;  ///< cable is chosen for this (practice)
inline constexpr double drop_limit_percent = 5.0;   ///< IEC 60364-5-52 annex G, public supply, other than lighting
inline constexpr double height_for_work_m = 0.30;   ///< over the cylinder, for anode and connections (practice)
inline constexpr double room_for_work_m = 0.10;     ///< beside it (practice)

struct Electrical {
    double running_a = 0.0;  ///< block and immersion heater together
    double starting_a = 0.0;
    double cable_mm2 = 0.0;  ///< copper
    double cable_m = 0.0;    ///< one way, from the supply as surveyed
    double drop_percent = 0.0;
    double breaker_a = 0.0;
    std::string breaker_curve;
    double residual_current_ma = 0.0;
};

struct Water {
    double expansion_l = 0.0;  ///< volume the cylinder's water grows by
    double vessel_l = 0.0;     ///< next size to buy
    double vessel_precharge_bar = 0.0;
    double safety_valve_bar = 0.0;
    bool mixing_valve = true;
    std::vector<std::string> to_be_made;  ///< services that are not at the spot yet, with metres
};

struct Input {
    CylinderSpot spot;
    BlockModel block;
    CylinderModel cylinder;
    Demand demand;
    double total_charge_kg = 0.0;
    const refrigerant::Properties* refrigerant = nullptr;
};

struct Outcome {
    Electrical electrical;
    Water water;
    double filled_mass_kg = 0.0;
    std::vector<Finding> findings;
    std::vector<Working> workings;
};

/// IEC 60364-5-52 annex G voltage drop; expansion by water tables; headroom, floor load, free space; flammable charge
/// against room (IEC 60335-2-40 annex GG form); condenser in drinking water (EN 1717 principle); scald and legionella.
/// Whether block and cylinder fit each other, and the set-point the cylinder's limit, is the plan's to check.
/// Handbook: docs/handbook/services.md.
[[nodiscard]] Outcome provide(const Input& input);

}  // namespace wg::services
