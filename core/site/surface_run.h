#pragma once
// The first metres of the pipe run as far as they lie on a surface, in its plane.

#include <optional>
#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::site {

inline constexpr double on_surface_m = 0.35;  ///< a bend this near to the plane is clipped to it, not free in the air

struct SurfaceRun {
    std::vector<Point2> connections;  ///< of each collector on this surface, middle between its two tubes
    /// From the run's start (middle of all collectors' connections) over the bends that lie on the surface.
    std::vector<Point2> line;
    std::vector<double> lengths_m;                  ///< of its legs, in space
    bool passage = false;                           ///< the last of the line goes through the surface
    RoutePointKind ends_as = RoutePointKind::free;  ///< kind of the last of the line
    bool to_block = false;                          ///< what comes next: the block, or a bend
    RoutePointKind next = RoutePointKind::free;
    Point2 towards;       ///< the next point, seen along the surface's normal
    double next_m = 0.0;  ///< length of the leg that leaves the surface
    bool behind = false;  ///< the next point lies behind the surface
};
/// Nothing when no collector of the choice is on the surface. An empty line: the run starts elsewhere (collectors on
/// several surfaces), `towards` and `next_m` are then of its start. `block`: where the run ends.
[[nodiscard]] std::optional<SurfaceRun> run_on_surface(const Site& site, const Surface& surface, const Choice& choice,
                                                       const CollectorModel& model, const Point3& block);

}  // namespace wg::site
