#pragma once
// What the block and cylinder need at their spot: electrical supply, water, drain, room.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/refrigerant/properties.h"

namespace wg::services {

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
    double expansion_l = 0.0;         ///< volume the cylinder's water grows by
    double vessel_l = 0.0;            ///< next size to buy
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
[[nodiscard]] Outcome provide(const Input& input);

}  // namespace wg::services
