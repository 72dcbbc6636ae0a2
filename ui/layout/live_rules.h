#pragma once
// What stands against the collectors of one surface as they lie this moment, ahead of any plan: for the drawing and the
// bottom line while a hand moves them.

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "core/fixing/tight_spots.h"
#include "core/fixing/zone_outlines.h"
#include "core/site/surface_run.h"
#include "ui/common/job_session.h"

namespace wg::ui {

struct LiveRules {
    std::vector<fixing::TightSpot> tight;  ///< stops of every collector, cautions of the selected ones
    std::vector<Finding> attitude;         ///< tilt, level side, connections of the selected ones
    std::optional<site::SurfaceRun> run;   ///< as far as it lies on the surface
    [[nodiscard]] QString words() const;   ///< the worst in words, how many more; empty: nothing
};
[[nodiscard]] LiveRules live_rules(const JobSession& session, const std::string& surface_id,
                                   const std::vector<std::string>& selected);

/// Zones of the surface for the plate of the current choice.
[[nodiscard]] fixing::WindZones zones_of(const JobSession& session, const std::string& surface_id);

}  // namespace wg::ui
