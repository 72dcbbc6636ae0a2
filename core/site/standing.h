#pragma once
// Where an obstacle goes through a surface or stands on it: a chimney through a roof, a pole on the ground.

#include <optional>
#include <vector>

#include "core/job/job.h"

namespace wg::site {

/// The obstacle's section with the surface's plane, in the plane's coordinates and within the bounding box of its
/// outline; empty when the two do not meet there. Exact for boxes, convex prisms and posts (as a figure of 24 sides
/// round the circle). A prism with notches is seen from straight above, and not at all on planes steeper than 80 deg;
/// of a tree the trunk counts. What comes nearer than `standing_touch_m` from above or below counts as meeting: an
/// obstacle set down on a plane stands on it.
[[nodiscard]] std::vector<Point2> section_on(const Surface& surface, double sketch_up_azimuth_deg,
                                             const Obstacle& obstacle);
inline constexpr double standing_touch_m = 0.02;

/// A roof straight over a point of the sketch.
struct RoofOver {
    const Surface* surface = nullptr;
    Point2 in_plane;
    double height_m = 0.0;
};
/// The highest of the site's roof planes flatter than 89 deg; nothing where there is none.
[[nodiscard]] std::optional<RoofOver> roof_over(const Site& site, Point2 sketch_point);

}  // namespace wg::site
