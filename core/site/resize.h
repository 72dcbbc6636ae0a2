#pragma once
// Taking an obstacle or a keep-out by its corners: where the hand can take it, and what it becomes.

#include <cstddef>
#include <optional>
#include <vector>

#include "core/job/job.h"

namespace wg::site {

inline constexpr double least_side_m = 0.05;  ///< nothing is dragged smaller than this

/// Where an obstacle seen in plan can be taken, sketch coordinates.
struct Handle {
    enum class Kind {
        corner,  ///< box: the corner opposite stays; prism: this corner alone moves
        radius,  ///< post, tree: on the circle, along the sketch's x axis
        turn,    ///< box: beyond the middle of its side along +x
    };
    Kind kind = Kind::corner;
    std::size_t corner = 0;
    Point2 at;
    friend bool operator==(const Handle&, const Handle&) = default;
};
/// Corners of a box or prism, in order, then the box's turn handle `arm_m` beyond its side; the radius of a post or
/// tree.
[[nodiscard]] std::vector<Handle> handles_of(const Obstacle& obstacle, double arm_m);

/// The obstacle with that handle at `to`; lengths to the millimetre, turns to a tenth of a degree. Sides and radii stay
/// at least `least_side_m`. Nothing when there is no such handle, the point is not finite, or a prism's outline would
/// cross itself.
[[nodiscard]] std::optional<Obstacle> with_handle_at(const Obstacle& obstacle, Handle::Kind kind, std::size_t corner,
                                                     Point2 to);

/// A keep-out's outline with that corner at `to`, to the millimetre: an upright rectangle stays one (the corner
/// opposite stays), of others the corner alone moves. Nothing when there is no such corner, the point is not finite, or
/// the outline would cross itself.
[[nodiscard]] std::optional<std::vector<Point2>> with_corner_at(const std::vector<Point2>& outline, std::size_t corner,
                                                                Point2 to);

/// The obstacle moved so that its section with the surface moves by (right_m, up_m) in the plane: level for surfaces up
/// to 80 deg, up and down the wall for steeper ones. To the millimetre.
[[nodiscard]] Obstacle moved_on(const Surface& surface, double sketch_up_azimuth_deg, const Obstacle& obstacle,
                                double right_m, double up_m);

/// A box whose section with the surface is an upright rectangle can be resized face-on: the section's rectangle becomes
/// the one between `fixed` and `to` (opposite corners). Nothing for other obstacles, or boxes not turned with the
/// surface within 1 deg.
[[nodiscard]] std::optional<Obstacle> with_section(const Surface& surface, double sketch_up_azimuth_deg,
                                                   const Obstacle& obstacle, Point2 fixed, Point2 to);
/// Whether `with_section` can do anything for it.
[[nodiscard]] bool sized_face_on(const Surface& surface, double sketch_up_azimuth_deg, const Obstacle& obstacle);

}  // namespace wg::site
