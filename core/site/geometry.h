#pragma once
// Outlines and planes of the site. Decisions (inside? crosses?) are kept apart from constructions.

#include <optional>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"

namespace wg::site {

inline constexpr double touch_m = 1e-6;  ///< points nearer than this count as touching

[[nodiscard]] double signed_area_m2(const std::vector<Point2>& outline) noexcept;  ///< counter-clockwise positive
/// True when no two edges cross or touch except neighbours at their common corner.
[[nodiscard]] bool is_simple(const std::vector<Point2>& outline) noexcept;
/// Inside or on the outline (within touch_m).
[[nodiscard]] bool contains(const std::vector<Point2>& outline, Point2 point) noexcept;
/// Every corner inside and no edge crossing out (outlines with notches included).
[[nodiscard]] bool contains(const std::vector<Point2>& outline, const std::vector<Point2>& inner) noexcept;
[[nodiscard]] bool overlap(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept;
/// Least distance between the two outlines' edges; 0 when they overlap.
[[nodiscard]] double gap_m(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept;
/// Least distance from a point to the outline's edges.
[[nodiscard]] double edge_distance_m(const std::vector<Point2>& outline, Point2 point) noexcept;
/// Distance from a point inside to the nearest two edges of different direction, for set-out on site.
struct EdgeOffset {
    std::size_t edge = 0;    ///< from corner `edge` to the next
    double distance_m = 0.0;
    Point2 foot;             ///< nearest point on that edge
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
    std::vector<Point2> outline;         ///< four corners in the surface's plane (footprint when on a frame)
    std::vector<Point3> corners;         ///< of the plate in space
    std::vector<Point2> fixing_points;   ///< in the surface's plane, nominal
    Point2 liquid_connection;            ///< in the surface's plane
    Point2 suction_connection;
    Point3 connection_in_space;          ///< middle between the two
    double tilt_deg = 0.0;               ///< of the plate
    double azimuth_deg = 0.0;
    double lowest_m = 0.0;               ///< height of the plate's lowest and highest corner over ground
    double highest_m = 0.0;
    double connection_turn_deg = 0.0;    ///< direction the tubes leave, from straight down, counter-clockwise
};
[[nodiscard]] PlacedCollector place(const Surface& surface, double sketch_up_azimuth_deg, const Placement& placement,
                                    const CollectorModel& model);

/// Centre lines of the rafters which cross the outline: x positions in the plane.
[[nodiscard]] std::vector<double> rafter_lines(const Surface& surface);

}  // namespace wg::site
