#pragma once
// Whether a closed outline is one a roof can have. A decision only; constructions live in core/site.

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/quantity/geometry.h"

namespace wg {

inline constexpr double outline_touch_m = 1e-6;  ///< points nearer than this count as the same
inline constexpr double outline_least_area_m2 = 1e-6;

struct OutlineFault {
    enum class Kind {
        too_few_corners,  ///< fewer than three
        repeated_corner,  ///< an edge shorter than outline_touch_m: `edge_a`
        crossing,         ///< `edge_a` and `edge_b` cross, touch or lie on one another, at `at`
        no_area,          ///< encloses less than outline_least_area_m2
    };
    Kind kind = Kind::too_few_corners;
    std::size_t edge_a = 0;  ///< from corner `edge_a` to the next, counted from 0
    std::size_t edge_b = 0;
    Point2 at;

    /// In words, edges counted from 1: "edges 1 and 3 cross at (2.10, 3.40)".
    [[nodiscard]] std::string text() const;
};

/// The first fault of a closed outline (last corner joins the first); none: it is simple. Finite coordinates below
/// 1e6 m. Touching counts as crossing, and so does an edge that folds back on its neighbour. O(corners^2).
[[nodiscard]] std::optional<OutlineFault> outline_fault(const std::vector<Point2>& outline);

/// Where two segments cross or touch (within outline_touch_m); each longer than that.
[[nodiscard]] std::optional<Point2> segments_meet(Point2 a_from, Point2 a_to, Point2 b_from, Point2 b_to) noexcept;
/// Two segments with a common corner lie on one another: `before` to `corner` to `after` turns right back.
[[nodiscard]] bool turns_back(Point2 before, Point2 corner, Point2 after) noexcept;

}  // namespace wg
