#pragma once
// Rules of place for one collector on one surface. Inside core/fixing.

#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

/// What lies round a collector: its surface, the outlines of the others on it, and where obstacles go through it or
/// stand on it. Obstacles that a keep-out of the surface covers whole are left to that.
struct Neighbourhood {
    const Surface* surface = nullptr;
    struct Other {
        const Placement* placement = nullptr;
        std::vector<Point2> outline;
    };
    std::vector<Other> others;
    struct Standing {
        const Obstacle* obstacle = nullptr;
        std::vector<Point2> outline;
    };
    std::vector<Standing> standing;
};

[[nodiscard]] bool within_surface(const Neighbourhood& place, const std::vector<Point2>& outline);
/// Clear of the keep-out's outline and its own clearance.
[[nodiscard]] bool clear_of(const KeepOut& keep_out, const std::vector<Point2>& outline);
[[nodiscard]] bool keeps_hard_rules(const Neighbourhood& place, const std::vector<Point2>& outline);
/// The maker's free strip to edges, keep-outs, obstacles and other collectors.
[[nodiscard]] bool keeps_free_strip(const Neighbourhood& place, const std::vector<Point2>& outline, double strip_m);
/// Surface, other collectors' outlines and obstacles; surface is nullptr when the placement names none of the site's.
[[nodiscard]] Neighbourhood neighbourhood_of(const Site& site, const Choice& choice, const CollectorModel& model,
                                             const Placement& placement);

}  // namespace wg::fixing
