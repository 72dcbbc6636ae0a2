#pragma once
// An outline while it is being drawn: open, its last corner not yet joined to the first.

#include <cstddef>
#include <optional>
#include <vector>

#include "core/quantity/geometry.h"

namespace wg::sketch {

/// First edge (from corner i to i + 1) that the way from the last corner to `next` would cross or touch; the edge that
/// ends in the last corner counts when the way folds back on it. None: the corner may be set.
[[nodiscard]] std::optional<std::size_t> crossed_edge(const std::vector<Point2>& drawn, const Point2& next);

}  // namespace wg::sketch
