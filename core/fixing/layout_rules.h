#pragma once
// The equipment's own rules for where and how a collector may lie.

#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"

namespace wg::fixing {

inline constexpr double level_tolerance_deg = 1.0;  ///< a spirit level's worth

/// Every placement of `choice` held to the collector's data and to the surfaces: within its surface, clear of keep-out
/// zones (outline and their clearance), of obstacles that go through the surface or stand on it and of other
/// collectors, the maker's free strip, tilt, level side, connections, hand, and whether it faces the equator where
/// another surface could. Placements on unknown surfaces are left out: the plan refuses those. One finding for each
/// rule broken, with the shortest move that mends it where there is one within `move_reach_m`.
[[nodiscard]] std::vector<Finding> check_layout(const Site& site, const Choice& choice, const CollectorModel& model);

inline constexpr double move_reach_m = 3.0;  ///< farthest move that a remedy looks for
inline constexpr double move_step_m = 0.05;

/// A move in the surface's plane.
struct Move {
    double right_m = 0.0;
    double up_m = 0.0;
};
/// Shortest move (in steps of move_step_m, sixteen directions) after which the placement keeps every rule of place:
/// with the free strips when that can be had, else without them. None within reach: nothing.
[[nodiscard]] std::optional<Move> shortest_mend(const Site& site, const Choice& choice, const CollectorModel& model,
                                                const Placement& placement);

/// "0.40 m to the right and 0.15 m up".
[[nodiscard]] std::string text_of(Move move);

}  // namespace wg::fixing
