#pragma once
// Rules of place that a collector breaks, with the geometry that a drawing needs to show them. `check_layout` words the
// same spots as findings; asking for them alone is cheap enough for every step of a drag.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/fixing/layout_place.h"
#include "core/job/job.h"

namespace wg::fixing {

struct TightSpot {
    enum class Against { edge, keep_out, obstacle, collector };
    Against against = Against::edge;
    Severity severity = Severity::caution;
    std::string code;           ///< of the finding, e.g. "collector.keep-out-clearance"
    std::string placement_id;   ///< the collector that breaks the rule
    std::string thing_id;       ///< surface, keep-out, obstacle or the other placement
    std::string thing;          ///< its name for people
    bool over = false;          ///< lies over the thing, or reaches beyond the edge
    double gap_m = 0.0;         ///< left free; for an edge that is passed: how far beyond
    double asked_m = 0.0;       ///< asked free; 0 where the rule is only not to lie over it
    bool maker_asks = false;    ///< the maker's strip round the plate; else the survey's round the keep-out, or neither
    Point2 on_plate, on_thing;  ///< ends of the gap; the same point when the plate lies over the thing
    std::vector<Point2> thing_outline;  ///< empty for an edge
    std::string text;                   ///< "0.12 m to bath window; 0.30 m asked (survey)"
};

/// In the order edge, keep-outs, obstacles, collectors; at most one for each thing. Empty on an unknown surface.
[[nodiscard]] std::vector<TightSpot> tight_spots(const Neighbourhood& place, const Placement& placement,
                                                 const std::vector<Point2>& outline, const CollectorModel& model);
[[nodiscard]] std::vector<TightSpot> tight_spots(const Site& site, const Choice& choice, const CollectorModel& model,
                                                 const Placement& placement);

/// Ends of the least distance between the edges of two outlines. Where edges lie alongside each other, in the middle of
/// the stretch they share.
struct Gap {
    Point2 on_a, on_b;
};
[[nodiscard]] Gap least_gap(const std::vector<Point2>& a, const std::vector<Point2>& b);

}  // namespace wg::fixing
