#pragma once
// The pipe run between collector and block: lengths, bends, lift, charge, losses, oil, lagging, what to buy.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/pipework/buy.h"
#include "core/pipework/lagging.h"
#include "core/pipework/legs.h"
#include "core/pipework/lines.h"
#include "core/pipework/oil.h"
#include "core/refrigerant/properties.h"

namespace wg::pipework {

// Assumptions that hold for every run; each stands in the workings.
inline constexpr double bend_bores = 20.0;           ///< equivalent length of a 90 deg bend, in bores of its line
inline constexpr double suction_drop_limit_k = 1.0;  ///< ASHRAE Handbook Refrigeration: suction lines sized for 1 K
inline constexpr double least_device_share = 0.5;    ///< of the pressure difference, left for the expansion device

struct Run {
    std::vector<Leg> legs;
    double length_m = 0.0;      ///< one way, along the centre line
    double lift_m = 0.0;        ///< collector's connections over the block's; negative: collector below
    int bends = 0;              ///< changes of direction over 10 deg
    int passages = 0;           ///< through roof, wall or floor
    double equivalent_m = 0.0;  ///< suction line with bends as equivalent length
    double small_equivalent_m = 0.0;
    double extra_charge_kg = 0.0;
    double total_charge_kg = 0.0;
    double total_charge_t_co2e = 0.0;
    double coil_liquid_m = 0.0;  ///< of the small line to buy, allowances included
    double coil_suction_m = 0.0;
    double insulation_mm = 0.0;        ///< wall of the suction line's lagging, against condensation
    double small_insulation_mm = 0.0;  ///< of the small line's; 0: needs none
    double suction_loss_pa = 0.0;      ///< friction at the rating flow
    double suction_drop_k = 0.0;       ///< with the column where vapour rises, as fall of saturation temperature
    double suction_velocity_m_s = 0.0;
    double liquid_head_pa = 0.0;  ///< column of the small line, signed: positive when the flow must rise to the plate
    double line_ua_w_k = 0.0;     ///< of the insulated suction line to the air round it
    ExpansionPlace expansion = ExpansionPlace::block;
    PointLines rating;               ///< both lines at the rating point
    std::vector<PointLines> points;  ///< at the further points
    LinesMean mean;                  ///< over those
    OilReturn oil;
    Lagged lagging;
    LineToBuy small_to_buy, suction_to_buy;
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
    OperatingPoint rating;               ///< heat taken up at the evaporator sets the flow
    std::vector<OperatingPoint> points;  ///< for the year's losses and the lagging; empty: the rating alone
    /// The coldest at which the block still runs, heat at `speed_rpm`; heat 0: not told.
    OperatingPoint coldest{-25.0, 43.0, 0.0, -15.0, 1.0};
    Air air;
};

struct Outcome {
    Run run;
    std::vector<Finding> findings;
    std::vector<Working> workings;
};

/// Equipment rules checked: pre-charged range, longest run, greatest lift, connection sizes of collector and block, oil
/// traps. Rules of trade checked: fall of saturation temperature, oil return at the least flow, flash gas, pressure
/// left for the expansion device, room for bends, dew. Lines take the block's sizes. Handbook:
/// docs/handbook/pipework.md.
[[nodiscard]] Outcome run_of(const Input& input);

/// Both lines at other points, the run as it is: for the points that a year of operation has found. Replaces `points`
/// and `mean`; lagging and purchase stay as planned.
void over_points(const Input& input, const std::vector<OperatingPoint>& points, Run& run);

/// The working of those means. `names` tells where the points come from.
[[nodiscard]] Working losses_working(const Run& run, const std::string& names);

}  // namespace wg::pipework
