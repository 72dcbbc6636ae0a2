#pragma once
// What the equipment's data ask of a collector's place and position, line by line, each with how it stands now.

#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/job/job.h"

namespace wg::fixing {

struct MountingRule {
    std::string rule;                ///< "Long side level"
    std::string now;                 ///< "turned by 0.0 deg"
    std::optional<Severity> broken;  ///< nothing: kept
};
/// Level side, connections and their hand, tilt, free strip; judged by check_attitude and tight_spots. The data hold no
/// snow clearance. Empty when the placement's surface is unknown.
[[nodiscard]] std::vector<MountingRule> mounting_rules(const Site& site, const Choice& choice,
                                                       const CollectorModel& model, const Placement& placement);

/// Turns in quarters at which the side asked for is level and the connections do not look up, 0..360.
[[nodiscard]] std::vector<double> allowed_turns(const CollectorModel& model);
/// The allowed turn that follows `turn_deg`, counter-clockwise or (direction -1) clockwise; the nearest when the plate
/// is not at an allowed turn. The turn itself when there is no other.
[[nodiscard]] double next_turn_deg(const CollectorModel& model, double turn_deg, int direction);

}  // namespace wg::fixing
