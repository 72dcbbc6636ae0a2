#pragma once
// Convex outlines: pieces of an outline that is not, hull of points, clipping.

#include <cstddef>
#include <vector>

#include "core/quantity/geometry.h"

namespace wg::scene {

/// Cuts a non-crossing outline of either sense into convex pieces: corners as indices into the outline,
/// counter-clockwise. Nothing for fewer than three corners; what is left of an outline that crosses itself is dropped.
[[nodiscard]] std::vector<std::vector<std::size_t>> convex_pieces(const std::vector<Point2>& outline);

/// Counter-clockwise, without points on its edges; fewer than three points when there is no area.
[[nodiscard]] std::vector<Point2> hull_of(std::vector<Point2> points);

/// What two convex outlines share; both counter-clockwise. Empty when they share no area.
[[nodiscard]] std::vector<Point2> shared_part(const std::vector<Point2>& a, const std::vector<Point2>& b);

}  // namespace wg::scene
