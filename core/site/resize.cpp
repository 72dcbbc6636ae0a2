#include "core/site/resize.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/site/geometry.h"

namespace wg::site {
namespace {

constexpr double steep_deg = 80.0;

double to_mm(double value_m) {
    return std::round(value_m * 1000.0) / 1000.0;
}

bool finite(Point2 p) {
    return std::isfinite(p.x_m) && std::isfinite(p.y_m);
}

/// Corners of a box in its own axes, counter-clockwise from the lower left.
constexpr double side_x[4] = {-1.0, 1.0, 1.0, -1.0};
constexpr double side_y[4] = {-1.0, -1.0, 1.0, 1.0};

struct Axes {
    double c = 1.0, s = 0.0;
    [[nodiscard]] Point2 out(Point2 middle, double x, double y) const {
        return {middle.x_m + c * x - s * y, middle.y_m + s * x + c * y};
    }
    [[nodiscard]] Point2 in(Point2 middle, Point2 p) const {
        const double dx = p.x_m - middle.x_m, dy = p.y_m - middle.y_m;
        return {c * dx + s * dy, c * dy - s * dx};
    }
};

Axes axes_of(const Obstacle& box) {
    const double turn = radians(box.turn_deg);
    return {std::cos(turn), std::sin(turn)};
}

/// Length between two coordinates of which the first stays, at least the least, on the side where the second lies.
struct Side {
    double length = 0.0, middle = 0.0;
};
Side stretched(double fixed, double to, double side) {
    const double along = std::max(side * (to - fixed), least_side_m);
    const double length = std::max(to_mm(along), least_side_m);
    return {length, fixed + side * 0.5 * length};
}

Obstacle box_with_corner(const Obstacle& box, std::size_t corner, Point2 to) {
    const Axes axes = axes_of(box);
    const Point2 middle{box.base.x_m, box.base.y_m};
    const Point2 at = axes.in(middle, to);
    const double fixed_x = -side_x[corner] * 0.5 * box.width_m, fixed_y = -side_y[corner] * 0.5 * box.depth_m;
    const Side x = stretched(fixed_x, at.x_m, side_x[corner]), y = stretched(fixed_y, at.y_m, side_y[corner]);
    Obstacle out = box;
    out.width_m = x.length;
    out.depth_m = y.length;
    const Point2 moved = axes.out(middle, x.middle, y.middle);
    out.base.x_m = to_mm(moved.x_m);
    out.base.y_m = to_mm(moved.y_m);
    return out;
}

bool is_upright_rectangle(const std::vector<Point2>& outline) {
    if (outline.size() != 4) return false;
    const Bounds b = bounds_of(outline);
    for (std::size_t i = 0; i < 4; ++i) {
        const Point2 p = outline[i], q = outline[(i + 1) % 4];
        const bool on_corner = (std::abs(p.x_m - b.min_x_m) < touch_m || std::abs(p.x_m - b.max_x_m) < touch_m) &&
                               (std::abs(p.y_m - b.min_y_m) < touch_m || std::abs(p.y_m - b.max_y_m) < touch_m);
        const bool along = std::abs(p.x_m - q.x_m) < touch_m || std::abs(p.y_m - q.y_m) < touch_m;
        if (!on_corner || !along) return false;
    }
    return true;
}

}  // namespace

std::vector<Handle> handles_of(const Obstacle& o, double arm_m) {
    std::vector<Handle> all;
    switch (o.kind) {
        case ObstacleKind::box: {
            const Axes axes = axes_of(o);
            const Point2 middle{o.base.x_m, o.base.y_m};
            for (std::size_t i = 0; i < 4; ++i) {
                all.push_back({Handle::Kind::corner, i,
                               axes.out(middle, side_x[i] * 0.5 * o.width_m, side_y[i] * 0.5 * o.depth_m)});
            }
            all.push_back({Handle::Kind::turn, 0, axes.out(middle, 0.5 * o.width_m + arm_m, 0.0)});
            break;
        }
        case ObstacleKind::prism:
            for (std::size_t i = 0; i < o.outline.size(); ++i)
                all.push_back({Handle::Kind::corner, i, o.outline[i]});
            break;
        case ObstacleKind::post:
        case ObstacleKind::tree: all.push_back({Handle::Kind::radius, 0, {o.base.x_m + o.radius_m, o.base.y_m}}); break;
    }
    return all;
}

std::optional<Obstacle> with_handle_at(const Obstacle& o, Handle::Kind kind, std::size_t corner, Point2 to) {
    if (!finite(to)) return std::nullopt;
    Obstacle out = o;
    const double dx = to.x_m - o.base.x_m, dy = to.y_m - o.base.y_m;
    switch (o.kind) {
        case ObstacleKind::box:
            if (kind == Handle::Kind::corner && corner < 4) return box_with_corner(o, corner, to);
            if (kind != Handle::Kind::turn || std::hypot(dx, dy) < touch_m) return std::nullopt;
            out.turn_deg = std::round(degrees(std::atan2(dy, dx)) * 10.0) / 10.0;
            return out;
        case ObstacleKind::post:
        case ObstacleKind::tree:
            if (kind != Handle::Kind::radius) return std::nullopt;
            out.radius_m = std::max(to_mm(std::hypot(dx, dy)), 0.5 * least_side_m);
            return out;
        case ObstacleKind::prism:
            if (kind != Handle::Kind::corner || corner >= o.outline.size()) return std::nullopt;
            out.outline[corner] = {to_mm(to.x_m), to_mm(to.y_m)};
            if (!is_simple(out.outline)) return std::nullopt;
            return out;
    }
    return std::nullopt;
}

std::optional<std::vector<Point2>> with_corner_at(const std::vector<Point2>& outline, std::size_t corner, Point2 to) {
    if (corner >= outline.size() || !finite(to)) return std::nullopt;
    std::vector<Point2> out = outline;
    if (is_upright_rectangle(outline)) {
        const Point2 fixed = outline[(corner + 2) % 4], now = outline[corner];
        const Side x = stretched(fixed.x_m, to.x_m, now.x_m > fixed.x_m ? 1.0 : -1.0);
        const Side y = stretched(fixed.y_m, to.y_m, now.y_m > fixed.y_m ? 1.0 : -1.0);
        const Point2 moved{to_mm(fixed.x_m + 2.0 * (x.middle - fixed.x_m)),
                           to_mm(fixed.y_m + 2.0 * (y.middle - fixed.y_m))};
        for (Point2& p : out) {
            if (std::abs(p.x_m - now.x_m) < touch_m) p.x_m = moved.x_m;
            if (std::abs(p.y_m - now.y_m) < touch_m) p.y_m = moved.y_m;
        }
        return out;
    }
    out[corner] = {to_mm(to.x_m), to_mm(to.y_m)};
    if (!is_simple(out)) return std::nullopt;
    return out;
}

Obstacle moved_on(const Surface& surface, double up_deg, const Obstacle& o, double right_m, double up_m) {
    const Frame frame = frame_of(surface, up_deg);
    const bool steep = surface.tilt_deg > steep_deg;
    const double dx = right_m * frame.right.x_m + up_m * frame.up.x_m;
    const double dy = right_m * frame.right.y_m + up_m * frame.up.y_m;
    Obstacle out = o;
    out.base = {to_mm(o.base.x_m + dx), to_mm(o.base.y_m + dy),
                steep ? to_mm(o.base.z_m + up_m * frame.up.z_m) : o.base.z_m};
    for (Point2& p : out.outline)
        p = {to_mm(p.x_m + dx), to_mm(p.y_m + dy)};
    return out;
}

bool sized_face_on(const Surface& surface, double up_deg, const Obstacle& o) {
    if (o.kind != ObstacleKind::box) return false;
    const Frame frame = frame_of(surface, up_deg);
    const double along_deg = degrees(std::atan2(frame.right.y_m, frame.right.x_m));
    const double off = std::abs(wrap_180(2.0 * (o.turn_deg - along_deg))) / 2.0;  // half turns are all one to a box
    return off <= 1.0;
}

std::optional<Obstacle> with_section(const Surface& surface, double up_deg, const Obstacle& o, Point2 fixed,
                                     Point2 to) {
    if (!sized_face_on(surface, up_deg, o) || !finite(fixed) || !finite(to)) return std::nullopt;
    const Frame frame = frame_of(surface, up_deg);
    const Side x = stretched(fixed.x_m, to.x_m, to.x_m >= fixed.x_m ? 1.0 : -1.0);
    const Side y = stretched(fixed.y_m, to.y_m, to.y_m >= fixed.y_m ? 1.0 : -1.0);
    const Point3 middle = to_space(frame, {x.middle, y.middle});
    Obstacle out = o;
    out.width_m = x.length;
    if (surface.tilt_deg > steep_deg) {
        // Against a wall the depth stands out of it and is left alone.
        const double half = 0.5 * y.length * frame.up.z_m;
        out.base = {to_mm(o.base.x_m + (x.middle - to_plane(frame, o.base).x_m) * frame.right.x_m),
                    to_mm(o.base.y_m + (x.middle - to_plane(frame, o.base).x_m) * frame.right.y_m),
                    to_mm(middle.z_m - half)};
        out.height_m = to_mm(2.0 * half);
        return out;
    }
    out.depth_m = std::max(to_mm(y.length * std::hypot(frame.up.x_m, frame.up.y_m)), least_side_m);
    out.base.x_m = to_mm(middle.x_m);
    out.base.y_m = to_mm(middle.y_m);
    return out;
}

}  // namespace wg::site
