#pragma once
// Outlines and planes of the site. Decisions (inside? crosses?) are kept apart from constructions.

#include <optional>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::site {

inline constexpr double touch_m = 1e-6;  ///< points nearer than this count as touching

[[nodiscard]] double signed_area_m2(const std::vector<Point2>& outline) noexcept;  ///< counter-clockwise positive
/// True when no two edges cross or touch except neighbours at their common corner. Fewer than three corners, repeated
/// corners, no area and coordinates that are not finite make it false (`outline_fault` says which).
[[nodiscard]] bool is_simple(const std::vector<Point2>& outline) noexcept;
/// Inside or on the outline (within touch_m).
[[nodiscard]] bool contains(const std::vector<Point2>& outline, Point2 point) noexcept;
/// Every corner inside and no edge crossing out (outlines with notches included).
[[nodiscard]] bool contains(const std::vector<Point2>& outline, const std::vector<Point2>& inner) noexcept;
/// The two share some inside deeper than touch_m. Outlines that only touch do not overlap.
[[nodiscard]] bool overlap(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept;
/// Least distance between the two outlines' edges; 0 when they overlap. Infinite when one of them is empty.
[[nodiscard]] double gap_m(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept;
/// Least distance between the edges of the two, also when one lies inside the other. Infinite when one is empty.
[[nodiscard]] double edge_gap_m(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept;
/// Least distance from a point to the outline's edges.
[[nodiscard]] double edge_distance_m(const std::vector<Point2>& outline, Point2 point) noexcept;
/// Smallest upright rectangle round an outline; all zero when it is empty.
struct Bounds {
    double min_x_m = 0.0, min_y_m = 0.0, max_x_m = 0.0, max_y_m = 0.0;
    [[nodiscard]] double width_m() const noexcept { return max_x_m - min_x_m; }
    [[nodiscard]] double height_m() const noexcept { return max_y_m - min_y_m; }
};
[[nodiscard]] Bounds bounds_of(const std::vector<Point2>& outline) noexcept;

/// Distance from a point inside to the nearest two edges of different direction (10 deg apart or more), for set-out on
/// site. Edges that can be measured to at a right angle come first, since a fitter holds the tape square to the edge;
/// nearest first among those. Fewer than two when the outline has no such pair.
struct EdgeOffset {
    std::size_t edge = 0;  ///< from corner `edge` to the next
    double distance_m = 0.0;
    Point2 foot;  ///< nearest point on that edge
};
[[nodiscard]] std::vector<EdgeOffset> nearest_two_edges(const std::vector<Point2>& outline, Point2 point);

/// Frame of a plane in the sketch's space: right (x), up-slope (y), outward normal.
struct Frame {
    Point3 origin, right, up, normal;
};
/// Right x up = normal; the normal's horizontal part bears the surface's azimuth.
[[nodiscard]] Frame frame_of(const Surface& surface, double sketch_up_azimuth_deg) noexcept;
[[nodiscard]] Point3 to_space(const Frame& frame, Point2 in_plane, double off_m = 0.0) noexcept;
[[nodiscard]] Point2 to_plane(const Frame& frame, Point3 in_space) noexcept;

/// The collector as it lies on its surface.
struct PlacedCollector {
    std::vector<Point2> outline;        ///< four corners in the surface's plane (footprint when on a frame)
    std::vector<Point3> corners;        ///< of the plate in space
    std::vector<Point2> fixing_points;  ///< in the surface's plane, nominal
    Point2 liquid_connection;           ///< in the surface's plane
    Point2 suction_connection;
    Point3 connection_in_space;  ///< middle between the two
    double tilt_deg = 0.0;       ///< of the plate
    double azimuth_deg = 0.0;
    double lowest_m = 0.0;  ///< height of the plate's lowest and highest corner over ground
    double highest_m = 0.0;
    double connection_turn_deg = 0.0;  ///< direction the tubes leave, from straight down, counter-clockwise
};
[[nodiscard]] PlacedCollector place(const Surface& surface, double sketch_up_azimuth_deg, const Placement& placement,
                                    const CollectorModel& model);

/// Centre lines of the rafters which cross the outline: x positions in the plane.
[[nodiscard]] std::vector<double> rafter_lines(const Surface& surface);

}  // namespace wg::site
