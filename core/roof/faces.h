#pragma once
// Roof faces over a footprint: the weighted straight skeleton. Every edge carries a plane that rises inwards at its own
// pitch, or stands upright (a gable); the faces are what those planes make when each keeps what it reaches first.
// Method: docs/handbook/roofs.md.

#include <optional>
#include <vector>

#include "core/quantity/geometry.h"
#include "core/quantity/result.h"

namespace wg::roof {

/// Pitch of the plane over an edge, degrees 1..89; none: the edge is a gable, an upright end.
using EdgePitch = std::optional<double>;

/// A point of the roof: plan position and height over the eaves line, m.
struct RoofPoint {
    Point2 plan;
    double height_m = 0.0;
};

/// What rises over one edge of the footprint. Over a gable: the upright triangle (or more), all on the edge's line;
/// empty when nothing stands there.
struct Face {
    std::size_t edge = 0;            ///< from corner `edge` to the next
    std::vector<RoofPoint> outline;  ///< counter-clockwise in plan, beginning with the edge itself
};

/// Faces of a footprint, one for each edge and in their order. The footprint is simple, counter-clockwise, at least
/// three corners, no longer than 1000 m; corners in the middle of a straight edge are allowed when both sides have one
/// pitch. Problems: a bad footprint, all edges gables, or pitches that no roof can have (its planes leave the footprint
/// open).
[[nodiscard]] Result<std::vector<Face>> faces_over(const std::vector<Point2>& footprint,
                                                   const std::vector<EdgePitch>& pitches);

}  // namespace wg::roof
