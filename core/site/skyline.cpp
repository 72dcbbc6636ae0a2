#include "core/site/skyline.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

constexpr double overhead_deg = 90.0;

double elevation_deg(double rise_m, double level_m) noexcept {
    return rise_m > 0.0 ? degrees(std::atan2(rise_m, std::max(0.0, level_m))) : 0.0;
}

/// Distance along a level line from `from` to where it first lies in the outline; negative: it never does.
double first_inside_m(const std::vector<Point2>& outline, Point2 from, Point2 dir) noexcept {
    double nearest = -1.0;
    bool in = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Point2 a = outline[j] - from, b = outline[i] - from;
        const double side_a = cross(dir, a), side_b = cross(dir, b);
        if ((side_a > 0.0) == (side_b > 0.0)) continue;
        const double along = dot(dir, a + (b - a) * (side_a / (side_a - side_b)));
        if (along < 0.0) continue;
        in = !in;  // an odd number of crossings ahead: the start lies inside
        if (nearest < 0.0 || along < nearest) nearest = along;
    }
    return in ? 0.0 : nearest;
}

double first_inside_m(Point2 middle, double radius_m, Point2 from, Point2 dir) noexcept {
    const Point2 v = middle - from;
    const double along = dot(v, dir), off = cross(dir, v);
    const double half2 = radius_m * radius_m - off * off;
    if (!(half2 >= 0.0)) return -1.0;
    const double half = std::sqrt(half2);
    if (along + half < 0.0) return -1.0;
    return std::max(0.0, along - half);
}

}  // namespace

double Occluder::hidden_up_to_deg(Point3 from, Point3 level_dir) const noexcept {
    const Point2 p{from.x_m, from.y_m}, d{level_dir.x_m, level_dir.y_m};
    switch (shape_) {
        case Shape::box: {
            const std::array<Point2, 4> own{Point2{-half_width_m_, -half_depth_m_},
                                            {half_width_m_, -half_depth_m_},
                                            {half_width_m_, half_depth_m_},
                                            {-half_width_m_, half_depth_m_}};
            double nearest = -1.0;
            const Point2 q = turned(p - middle_, turn_cos_, -turn_sin_), e = turned(d, turn_cos_, -turn_sin_);
            if (std::abs(q.x_m) <= half_width_m_ && std::abs(q.y_m) <= half_depth_m_) nearest = 0.0;
            for (std::size_t i = 0; i < 4 && nearest != 0.0; ++i) {
                const Point2 a = own[i] - q, b = own[(i + 1) % 4] - q;
                const double side_a = cross(e, a), side_b = cross(e, b);
                if ((side_a > 0.0) == (side_b > 0.0)) continue;
                const double along = dot(e, a + (b - a) * (side_a / (side_a - side_b)));
                if (along >= 0.0 && (nearest < 0.0 || along < nearest)) nearest = along;
            }
            return nearest < 0.0 ? 0.0 : elevation_deg(high_m_ - from.z_m, nearest);
        }
        case Shape::prism: {
            const double nearest = first_inside_m(outline_, p, d);
            return nearest < 0.0 ? 0.0 : elevation_deg(high_m_ - from.z_m, nearest);
        }
        case Shape::post: {
            const double nearest = first_inside_m(middle_, radius_m_, p, d);
            return nearest < 0.0 ? 0.0 : elevation_deg(high_m_ - from.z_m, nearest);
        }
        case Shape::tree: {
            if (!(crown_half_height_m_ > 0.0)) return 0.0;
            // Slice of the crown by the upright plane through the point: an ellipse; its upper tangent from the point.
            const Point2 v = middle_ - p;
            const double along = dot(v, d), off = cross(d, v) / crown_radius_m_;
            if (!(std::abs(off) < 1.0)) return 0.0;
            const double k2 = 1.0 - off * off, a2 = crown_radius_m_ * crown_radius_m_ * k2,
                         b2 = crown_half_height_m_ * crown_half_height_m_ * k2;
            const double rise = crown_middle_.z_m - from.z_m;
            if (along * along <= a2) {  // over, under or in it
                return rise > -std::sqrt(b2 * (1.0 - along * along / a2)) ? overhead_deg : 0.0;
            }
            if (along < 0.0) return 0.0;
            const double root = std::sqrt(std::max(0.0, along * along * b2 + a2 * rise * rise - a2 * b2));
            return elevation_deg((along * rise + root) / (along * along - a2), 1.0);
        }
        case Shape::plane: {
            if (passes(from, {0.0, 0.0, 1.0}, 0.0) == 0.0) return overhead_deg;
            double highest = 0.0;
            for (std::size_t i = 0, j = outline_.size() - 1; i < outline_.size(); j = i++) {
                const Point3 a = to_space(frame_, outline_[j]) - from, b = to_space(frame_, outline_[i]) - from;
                const double side_a = cross(d, {a.x_m, a.y_m}), side_b = cross(d, {b.x_m, b.y_m});
                if ((side_a > 0.0) == (side_b > 0.0)) continue;
                const Point3 hit = a + (b - a) * (side_a / (side_a - side_b));
                const double along = dot(d, {hit.x_m, hit.y_m});
                if (along > 0.0) highest = std::max(highest, elevation_deg(hit.z_m, along));
            }
            return highest;
        }
    }
    return 0.0;
}

double Occluder::trunk_hides_up_to_deg(Point3 from, Point3 level_dir) const noexcept {
    if (shape_ != Shape::tree) return 0.0;
    const double nearest = first_inside_m(middle_, radius_m_, {from.x_m, from.y_m}, {level_dir.x_m, level_dir.y_m});
    return nearest < 0.0 ? 0.0 : elevation_deg(high_m_ - from.z_m, nearest);
}

namespace {

Skyline skyline_of(const Site& site, Point3 from, const std::vector<Occluder>& occluders, double step_deg) {
    Skyline out;
    const double wanted = step_deg >= 0.1 && step_deg <= 30.0 ? step_deg
                          : step_deg > 30.0                   ? 30.0
                          : step_deg > 0.0                    ? 0.1
                                                              : 1.0;
    const int steps = static_cast<int>(std::lround(360.0 / wanted));
    out.step_deg = 360.0 / steps;
    const Horizon horizon(site.horizon);
    out.things.resize(static_cast<std::size_t>(steps));
    if (!horizon.empty()) out.horizon.resize(static_cast<std::size_t>(steps));
    for (int i = 0; i < steps; ++i) {
        SkylinePoint& point = out.things[static_cast<std::size_t>(i)];
        point.azimuth_deg = i * out.step_deg;
        const double east = std::sin(radians(point.azimuth_deg)), north = std::cos(radians(point.azimuth_deg));
        const Point3 dir = to_sketch(east, north, 0.0, site.sketch_up_azimuth_deg);
        const Occluder* highest = nullptr;
        bool crown = false;
        for (const Occluder& o : occluders) {
            const Point3 v = o.bound_middle() - from;
            const double off = dir.x_m * v.y_m - dir.y_m * v.x_m;
            if (!(std::abs(off) <= o.bound_radius_m()) || v.z_m + o.bound_radius_m() <= 0.0) continue;
            if (dir.x_m * v.x_m + dir.y_m * v.y_m < -o.bound_radius_m()) continue;
            const bool is_tree = o.is_tree();
            const double opaque = is_tree ? o.trunk_hides_up_to_deg(from, dir) : o.hidden_up_to_deg(from, dir);
            const double any = is_tree ? std::max(opaque, o.hidden_up_to_deg(from, dir)) : opaque;
            point.opaque_elevation_deg = std::max(point.opaque_elevation_deg, opaque);
            if (any > point.elevation_deg) {
                point.elevation_deg = any;
                highest = &o;
                crown = any > opaque;
            }
        }
        if (highest != nullptr) {
            point.id = highest->id();
            point.label = highest->label();
            point.is_tree = crown;
        }
        if (!horizon.empty()) {
            SkylinePoint& far = out.horizon[static_cast<std::size_t>(i)];
            far.azimuth_deg = point.azimuth_deg;
            far.elevation_deg = far.opaque_elevation_deg =
                std::clamp(horizon.elevation_deg(point.azimuth_deg), 0.0, overhead_deg);
            far.label = horizon_label;
        }
    }
    return out;
}

}  // namespace

Skyline skyline(const Site& site, Point3 from, const std::string& own_surface_id, double step_deg) {
    return skyline_of(site, from, Occluder::of(site, own_surface_id), step_deg);
}

Skyline skyline(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id,
                double step_deg) {
    if (collector.corners.size() != 4) return {};
    const std::vector<Point3>& c = collector.corners;
    const Point3 middle = (c[0] + c[2]) * 0.5;
    return skyline_of(site, middle, Occluder::seen_by(site, own_surface_id, cross(c[1] - c[0], c[3] - c[0])), step_deg);
}

}  // namespace wg::site
