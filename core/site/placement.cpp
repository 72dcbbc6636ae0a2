// Frames of surfaces, and the plate as it lies or stands on one.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

/// Cosine and sine, exact at quarter turns: a plate turned by 90 deg keeps its edges level to the last bit.
std::array<double, 2> cos_sin(double angle_deg) noexcept {
    const double wrapped = wrap_360(angle_deg);
    if (wrapped == 0.0) return {1.0, 0.0};
    if (wrapped == 90.0) return {0.0, 1.0};
    if (wrapped == 180.0) return {-1.0, 0.0};
    if (wrapped == 270.0) return {0.0, -1.0};
    return {std::cos(radians(wrapped)), std::sin(radians(wrapped))};
}

Frame frame_from(Point3 origin, double tilt_deg, double azimuth_deg, double sketch_up_azimuth_deg) noexcept {
    const auto [bearing_cos, bearing_sin] = cos_sin(azimuth_deg - sketch_up_azimuth_deg);
    const auto [tilt_cos, tilt_sin] = cos_sin(tilt_deg);
    const Point3 bearing{bearing_sin, bearing_cos, 0.0};  // level direction that the face looks to
    Frame f;
    f.origin = origin;
    f.normal = {bearing.x_m * tilt_sin, bearing.y_m * tilt_sin, tilt_cos};
    f.right = {-bearing.y_m, bearing.x_m, 0.0};
    f.up = cross(f.normal, f.right);
    return f;
}

Point2 in_plane(const Frame& frame, Point3 direction) noexcept {
    return {dot(direction, frame.right), dot(direction, frame.up)};
}

}  // namespace

Frame frame_of(const Surface& surface, double sketch_up_azimuth_deg) noexcept {
    return frame_from(surface.origin, surface.tilt_deg, surface.azimuth_deg, sketch_up_azimuth_deg);
}

Point3 to_space(const Frame& frame, Point2 in_plane_point, double off_m) noexcept {
    return frame.origin + frame.right * in_plane_point.x_m + frame.up * in_plane_point.y_m + frame.normal * off_m;
}

Point2 to_plane(const Frame& frame, Point3 in_space) noexcept {
    return in_plane(frame, in_space - frame.origin);
}

PlacedCollector place(const Surface& surface, double sketch_up_azimuth_deg, const Placement& placement,
                      const CollectorModel& model) {
    const Frame base = frame_of(surface, sketch_up_azimuth_deg);
    const bool on_frame = placement.frame_tilt_deg.has_value();
    PlacedCollector out;
    out.tilt_deg = on_frame ? *placement.frame_tilt_deg : surface.tilt_deg;
    out.azimuth_deg =
        wrap_360(on_frame ? placement.frame_azimuth_deg.value_or(surface.azimuth_deg) : surface.azimuth_deg);
    const Frame plate = on_frame ? frame_from({}, out.tilt_deg, out.azimuth_deg, sketch_up_azimuth_deg) : base;

    const std::array<double, 2> turn = cos_sin(placement.turn_deg);  // by name: lambdas here take it along
    const double turn_cos = turn[0];
    const double turn_sin = turn[1];
    const Point2 half{0.5 * model.length_m, 0.5 * model.width_m};
    // Own coordinates to an arrow from the plate's middle, in space.
    const auto arrow = [&](Point2 own, bool mirrored) {
        if (mirrored) own.x_m = model.length_m - own.x_m;
        const Point2 p = turned(own - half, turn_cos, turn_sin);
        return plate.right * p.x_m + plate.up * p.y_m;
    };

    // The outline keeps its sense for both hands: only points and connections are mirrored.
    const std::array<Point2, 4> own_corners{
        Point2{0.0, 0.0}, {model.length_m, 0.0}, {model.length_m, model.width_m}, {0.0, model.width_m}};
    double lowest_off = 0.0;
    for (const Point2 c : own_corners)
        lowest_off = std::min(lowest_off, dot(arrow(c, false), base.normal));
    const Point2 middle{placement.x_m, placement.y_m};
    const double lift = model.stand_off_m - lowest_off;
    const Point3 middle_in_space = to_space(base, middle, lift);

    const bool mirrored = placement.hand == Hand::left;
    const auto on_surface = [&](Point2 own, bool mirror) { return middle + in_plane(base, arrow(own, mirror)); };
    for (const Point2 c : own_corners) {
        out.outline.push_back(on_surface(c, false));
        out.corners.push_back(middle_in_space + arrow(c, false));
    }
    for (const Point2 p : model.fixing_points)
        out.fixing_points.push_back(on_surface(p, mirrored));
    out.liquid_connection = on_surface(model.liquid_connection, mirrored);
    out.suction_connection = on_surface(model.suction_connection, mirrored);
    const Point2 between = (model.liquid_connection + model.suction_connection) * 0.5;
    out.connection_in_space = middle_in_space + arrow(between, mirrored);
    out.connection_turn_deg = wrap_180(placement.turn_deg);
    out.lowest_m = out.highest_m = out.corners.front().z_m;
    for (const Point3 c : out.corners) {
        out.lowest_m = std::min(out.lowest_m, c.z_m);
        out.highest_m = std::max(out.highest_m, c.z_m);
    }
    return out;
}

}  // namespace wg::site
