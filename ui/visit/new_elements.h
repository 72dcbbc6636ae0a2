#pragma once
// First guesses for what is added to a sketch: usual sizes, to be measured and typed over.

#include "core/job/job.h"

namespace wg::ui {

/// Looks to the equator; x and y are where its middle shall be in plan.
[[nodiscard]] Surface new_surface(SurfaceKind kind, Point2 middle, const Site& site);
/// On the roof below it, when there is one and it belongs there.
[[nodiscard]] Obstacle new_obstacle(ObstacleUse use, Point2 middle, const Site& site);
/// Of a usual size round `middle` in a surface's plane.
[[nodiscard]] KeepOut new_keep_out(KeepOutKind kind, Point2 middle);
[[nodiscard]] CylinderSpot new_spot(Point2 at);

}  // namespace wg::ui
