#pragma once
// Rules of place for one collector on one surface. Inside core/fixing.

#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

/// What lies round a collector: its surface and the outlines of the others on it.
struct Neighbourhood {
    const Surface* surface = nullptr;
    struct Other {
        const Placement* placement = nullptr;
        std::vector<Point2> outline;
    };
    std::vector<Other> others;
};

[[nodiscard]] bool within_surface(const Neighbourhood& place, const std::vector<Point2>& outline);
/// Clear of the keep-out's outline and its own clearance.
[[nodiscard]] bool clear_of(const KeepOut& keep_out, const std::vector<Point2>& outline);
[[nodiscard]] bool keeps_hard_rules(const Neighbourhood& place, const std::vector<Point2>& outline);
/// The maker's free strip to edges, keep-outs and other collectors.
[[nodiscard]] bool keeps_free_strip(const Neighbourhood& place, const std::vector<Point2>& outline, double strip_m);
/// Surface and other collectors' outlines; surface is nullptr when the placement names none of the site's.
[[nodiscard]] Neighbourhood neighbourhood_of(const Site& site, const Choice& choice, const CollectorModel& model,
                                             const Placement& placement);

}  // namespace wg::fixing
