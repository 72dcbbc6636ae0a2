#pragma once
// How a collector's place is told on site: from the left edge and from the lower edge of its surface.

#include <optional>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::ui {

struct EdgeOffsets {
    std::optional<double> left_m;  ///< from the surface's left edge to the plate's left side; nullopt: no edge there
    std::optional<double> low_m;   ///< from the lower edge to the plate's lower side
};

/// Measured level with the middle of the plate's sides; negative when the plate sticks out over the edge.
[[nodiscard]] EdgeOffsets edge_offsets(const Surface& surface, const Placement& placement, const CollectorModel& model,
                                       double sketch_up_azimuth_deg);

}  // namespace wg::ui
