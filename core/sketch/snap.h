#pragma once
// Where a drawn point goes when the hand is nearly right, and the reason, so that it can be shown.

#include <optional>
#include <string>
#include <vector>

#include "core/quantity/geometry.h"

namespace wg::sketch {

/// Strongest first: a point holds both coordinates, a crossing of two lines too; a line leaves one free.
enum class SnapKind { corner, close, crossing, on_edge, right_angle, parallel, in_line, grid, none };
[[nodiscard]] const char* words_of(SnapKind kind) noexcept;  ///< "end of a line", ...

/// What is there to snap to.
struct Scene {
    std::vector<std::vector<Point2>> outlines;  ///< closed: others on the sketch
    std::vector<Point2> drawn;                  ///< open: the outline being drawn, corners set so far
};

struct SnapSettings {
    double reach_m = 0.25;       ///< how near counts, in the sketch: follows from pixels and scale
    double grid_m = 0.5;         ///< 0: none
    double reference_deg = 0.0;  ///< direction that counts as straight for a first edge, from the x axis
    bool corners = true, edges = true, angles = true;
};

struct Snap {
    SnapKind kind = SnapKind::none;
    Point2 point;                             ///< where the point goes
    std::vector<SnapKind> reasons;            ///< one, or two lines that cross there
    std::vector<std::vector<Point2>> guides;  ///< lines to draw, two points each
};

/// The cursor's place among what is there. Finite input; deterministic: of equally near ones the first.
[[nodiscard]] Snap snap(const Scene& scene, const Point2& cursor, const SnapSettings& settings);

}  // namespace wg::sketch
