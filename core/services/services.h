#pragma once
// What the block and cylinder need at their spot: electrical supply, water, drain, room.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/refrigerant/properties.h"

namespace wg::services {

// Assumptions that hold for every spot; each stands in the workings.
inline constexpr double reducing_share = 0.8;   ///< static pressure to the safety valve's setting, at most
inline constexpr double tap_most_bar = 5.0;     ///< static at a tap, EN 806-2 and -3
inline constexpr double tap_least_bar = 1.0;    ///< flowing at a tap, EN 806-3
inline constexpr double dead_leg_most_l = 3.0;  ///< DVGW W 551
inline constexpr double hot_within_s = 30.0;    ///< EN 806-2
inline constexpr double fittings_share = 0.3;   ///< bends and fittings, of a pipe's length (practice)
inline constexpr double valve_margin = 0.9;     ///< end pressure as a share of the safety valve's setting (practice)
inline constexpr double hottest_store_c =
    60.0;  ///< expansion is reckoned to this or the set-point, whichever is hotter
inline constexpr double cable_allowance_m = 2.0;    ///< from where the supply ends to the terminals
inline constexpr double drop_wanted_percent = 3.0;  ///< cable is chosen for this (practice)
inline constexpr double drop_limit_percent = 5.0;   ///< IEC 60364-5-52 annex G, public supply, other than lighting
inline constexpr double start_drop_limit_percent = 10.0;  ///< while the block starts (practice)
inline constexpr double usual_terminal_mm2 = 6.0;         ///< terminals of blocks (practice)
inline constexpr double height_for_work_m = 0.30;         ///< over the cylinder, for anode and connections (practice)
inline constexpr double room_for_work_m = 0.10;           ///< beside it (practice)

/// One line of the supply's check list: what the block asks for against what the house has.
enum class Answer { met, not_met, not_told };
[[nodiscard]] const char* word(Answer answer) noexcept;  ///< "met", "not met", "not told"
struct SupplyCheck {
    std::string what;
    std::string needed;
    std::string found;  ///< empty: not told
    Answer answer = Answer::not_told;
};

struct Electrical {
    double running_a = 0.0;  ///< block and immersion heater together
    double starting_a = 0.0;
    double cable_mm2 = 0.0;  ///< copper
    double cable_m = 0.0;    ///< one way, from the supply as surveyed
    double drop_percent = 0.0;
    double breaker_a = 0.0;
    std::string breaker_curve;
    double residual_current_ma = 0.0;
    double way_m = 0.0;      ///< from the distribution board to the terminals, over which the voltage falls
    double carries_a = 0.0;  ///< the cable as laid, I_z
    double ambient_factor = 1.0;
    double grouping_factor = 1.0;
    double start_drop_percent = 0.0;
    std::string residual_current_type{};  ///< "A", "F", "B"
    double electrode_max_ohm = 0.0;       ///< of the house's earth electrode with that device; 0: not TT
    double loop_max_ohm = 0.0;            ///< fault loop that trips the breaker at once; 0: not TN, or no breaker
    double loop_reading_max_ohm = 0.0;    ///< the same for a reading on the cold circuit
    double bonding_mm2 = 0.0;             ///< of the conductor to collector frame and lines
    double separation_m = 0.0;            ///< to the lightning protection in its usual class; 0: there is none
    double separation_severest_m = 0.0;   ///< in the severest class with a single down conductor
    std::vector<SupplyCheck> checks{};
};

/// Hot pipe to one tap.
struct LegToTap {
    std::string label;
    double litres = 0.0;         ///< that stand in it
    double litres_to_hot = 0.0;  ///< that run until it is hot, the tube warmed with them
    double seconds_to_hot = 0.0;
    bool off_the_loop = false;
};

struct Water {
    double expansion_l = 0.0;  ///< volume the cylinder's water grows by
    double vessel_l = 0.0;     ///< next size to buy
    double vessel_precharge_bar = 0.0;
    double safety_valve_bar = 0.0;
    bool mixing_valve = true;
    std::vector<std::string> to_be_made;      ///< services that are not at the spot yet, with metres
    bool reducing_valve = false;              ///< to be fitted
    double pressure_at_cylinder_bar = 0.0;    ///< gauge, at its foot, nobody drawing
    std::optional<double> tap_static_bar{};   ///< at the highest tap, nobody drawing
    std::optional<double> tap_flowing_bar{};  ///< there, less the farthest hot run's loss at the design flow
    double valve_outlet_mm = 0.0;             ///< discharge: tube from valve to tundish, outside diameter
    double discharge_mm = 0.0;                ///< tube from the tundish on; 0: longer than the table
    double hot_units = 0.0;                   ///< loading units on the hot pipe
    double cold_units = 0.0;                  ///< on the pipe that serves the house, every draw-off once
    double hot_pipe_mm = 0.0;                 ///< copper, outside diameter; 0: not told, or beyond the table
    double cold_pipe_mm = 0.0;
    double design_flow_l_s = 0.0;  ///< of the hot pipe
    double hot_loss_bar = 0.0;     ///< over the farthest hot run
    double hot_speed_m_s = 0.0;
    double recirculation_kwh = 0.0;  ///< a year of the loop's loss
    std::vector<LegToTap> legs{};
};

/// Flammable refrigerant against the room. All 0 when it is not flammable.
struct RoomAir {
    double allowed_kg = 0.0;
    double least_area_m2 = 0.0;   ///< for the charge; 0: no room rule
    double opening_m2 = 0.0;      ///< permanent opening to a neighbouring room; 0: none needed
    double volume_m3 = 0.0;       ///< of the room, from floor and headroom
    double share_of_limit = 0.0;  ///< the whole charge spread over it, to the lower flammability limit
};

struct Input {
    CylinderSpot spot;
    BlockModel block;
    CylinderModel cylinder;
    Demand demand;
    double total_charge_kg = 0.0;
    const refrigerant::Properties* refrigerant = nullptr;
    Electrics electrics;
    WaterSupply water;
    double collector_top_m = 0.0;              ///< highest corner of the plates over the ground of the sketch
    std::array<double, 12> cold_by_month_c{};  ///< cold inflow; all 0: not known, no table
};

struct Outcome {
    Electrical electrical;
    Water water;
    double filled_mass_kg = 0.0;
    std::vector<Finding> findings;
    std::vector<Working> workings;
    RoomAir room;
};

/// Cable and protection by IEC 60364 against the supply as surveyed, earthing, bonding and lightning protection;
/// pressures, expansion, discharge, pipes and hot water's way to the taps; headroom, floor load, free space; flammable
/// charge against room (IEC 60335-2-40 annex GG form); condenser in drinking water (EN 1717 principle); scald and
/// legionella. Planning aid: local code and licensed trades decide.
/// Whether block and cylinder fit each other, and the set-point the cylinder's limit, is the plan's to check.
/// Handbook: docs/handbook/services.md.
[[nodiscard]] Outcome provide(const Input& input);

}  // namespace wg::services
