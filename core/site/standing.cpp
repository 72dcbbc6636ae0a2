#include "core/site/standing.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "core/site/occluders.h"

namespace wg::site {
namespace {

constexpr int round_sides = 24;
constexpr double steepest_from_above_deg = 80.0;

/// a * x + b * y <= c in the plane.
struct HalfPlane {
    double a = 0.0, b = 0.0, c = 0.0;
};

std::vector<Point2> clipped(const std::vector<Point2>& outline, const HalfPlane& by) {
    std::vector<Point2> out;
    const auto over = [&](Point2 p) { return by.a * p.x_m + by.b * p.y_m - by.c; };
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 from = outline[i], to = outline[(i + 1) % outline.size()];
        const double f = over(from), t = over(to);
        if (f <= 0.0) out.push_back(from);
        if ((f < 0.0 && t > 0.0) || (f > 0.0 && t < 0.0)) {
            const double share = f / (f - t);
            out.push_back({from.x_m + share * (to.x_m - from.x_m), from.y_m + share * (to.y_m - from.y_m)});
        }
    }
    return out;
}

std::vector<Point2> foot_of(const Obstacle& o) {
    std::vector<Point2> foot;
    if (o.kind == ObstacleKind::prism) {
        foot = o.outline;
        if (signed_area_m2(foot) < 0.0) std::reverse(foot.begin(), foot.end());
        return foot;
    }
    if (o.kind == ObstacleKind::box) {
        const double turn = radians(o.turn_deg), c = std::cos(turn), s = std::sin(turn);
        for (const Point2 at : {Point2{-0.5, -0.5}, Point2{0.5, -0.5}, Point2{0.5, 0.5}, Point2{-0.5, 0.5}}) {
            const double x = at.x_m * o.width_m, y = at.y_m * o.depth_m;
            foot.push_back({o.base.x_m + c * x - s * y, o.base.y_m + s * x + c * y});
        }
        return foot;
    }
    // Corners outside the circle, sides on it: nothing that touches the post is left out.
    const double radius =
        (o.kind == ObstacleKind::tree ? trunk_share * o.radius_m : o.radius_m) / std::cos(pi / round_sides);
    for (int i = 0; i < round_sides; ++i) {
        const double angle = 2.0 * pi * i / round_sides;
        foot.push_back({o.base.x_m + radius * std::cos(angle), o.base.y_m + radius * std::sin(angle)});
    }
    return foot;
}

bool is_convex(const std::vector<Point2>& outline) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i], b = outline[(i + 1) % outline.size()], c = outline[(i + 2) % outline.size()];
        if ((b.x_m - a.x_m) * (c.y_m - b.y_m) - (b.y_m - a.y_m) * (c.x_m - b.x_m) < -1e-9) return false;
    }
    return true;
}

/// The half-plane of the plane's points P with n.P <= d.
HalfPlane within(const Frame& frame, Point3 n, double d) {
    const auto dot = [&](Point3 p) { return n.x_m * p.x_m + n.y_m * p.y_m + n.z_m * p.z_m; };
    return {dot(frame.right), dot(frame.up), d - dot(frame.origin)};
}

}  // namespace

std::vector<Point2> section_on(const Surface& surface, double sketch_up_azimuth_deg, const Obstacle& obstacle) {
    if (surface.outline.size() < 3) return {};
    const Frame frame = frame_of(surface, sketch_up_azimuth_deg);
    const std::vector<Point2> foot = foot_of(obstacle);
    if (foot.size() < 3 || !is_simple(foot)) return {};
    const Bounds all = bounds_of(surface.outline);
    std::vector<Point2> section = {
        {all.min_x_m, all.min_y_m}, {all.max_x_m, all.min_y_m}, {all.max_x_m, all.max_y_m}, {all.min_x_m, all.max_y_m}};
    if (is_convex(foot)) {
        for (std::size_t i = 0; i < foot.size(); ++i) {
            const Point2 a = foot[i], b = foot[(i + 1) % foot.size()];
            const Point3 out{b.y_m - a.y_m, a.x_m - b.x_m, 0.0};
            section = clipped(section, within(frame, out, out.x_m * a.x_m + out.y_m * a.y_m));
        }
    } else {
        if (surface.tilt_deg > steepest_from_above_deg) return {};
        section.clear();
        for (const Point2 p : foot) {
            // Straight up or down onto the plane.
            const double off = frame.normal.x_m * (p.x_m - frame.origin.x_m) +
                               frame.normal.y_m * (p.y_m - frame.origin.y_m) - frame.normal.z_m * frame.origin.z_m;
            section.push_back(to_plane(frame, {p.x_m, p.y_m, -off / frame.normal.z_m}));
        }
        section = clipped(section, {1.0, 0.0, all.max_x_m});
        section = clipped(section, {-1.0, 0.0, -all.min_x_m});
        section = clipped(section, {0.0, 1.0, all.max_y_m});
        section = clipped(section, {0.0, -1.0, -all.min_y_m});
    }
    const double low = obstacle.base.z_m - standing_touch_m;
    const double high = obstacle.base.z_m + obstacle.height_m + standing_touch_m;
    section = clipped(section, within(frame, {0.0, 0.0, 1.0}, high));
    section = clipped(section, within(frame, {0.0, 0.0, -1.0}, -low));
    // What only touches in a line or a point is no section; corners that fall together are one.
    std::vector<Point2> out;
    for (const Point2 p : section) {
        if (out.empty() || std::hypot(p.x_m - out.back().x_m, p.y_m - out.back().y_m) > touch_m) out.push_back(p);
    }
    while (out.size() > 1 && std::hypot(out.front().x_m - out.back().x_m, out.front().y_m - out.back().y_m) <= touch_m)
        out.pop_back();
    if (out.size() < 3 || std::abs(signed_area_m2(out)) < touch_m) return {};
    return out;
}

std::optional<RoofOver> roof_over(const Site& site, Point2 at) {
    std::optional<RoofOver> highest;
    for (const Surface& surface : site.surfaces) {
        if (surface.kind != SurfaceKind::roof || surface.tilt_deg >= 89.0) continue;
        const Frame frame = frame_of(surface, site.sketch_up_azimuth_deg);
        const double z_m = frame.origin.z_m - ((at.x_m - frame.origin.x_m) * frame.normal.x_m +
                                               (at.y_m - frame.origin.y_m) * frame.normal.y_m) /
                                                  frame.normal.z_m;
        const Point2 in_plane = to_plane(frame, {at.x_m, at.y_m, z_m});
        if (surface.outline.size() < 3 || !contains(surface.outline, in_plane)) continue;
        if (!highest || z_m > highest->height_m) highest = RoofOver{&surface, in_plane, z_m};
    }
    return highest;
}

}  // namespace wg::site
