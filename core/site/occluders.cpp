#include "core/site/occluders.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

/// A ray that starts on a plane does not meet it.
constexpr double start_off_m = 1e-6;

/// Stretch of a ray, in metres from its start.
struct Stretch {
    double from_m = 0.0;
    double to_m = 1e9;
    [[nodiscard]] bool empty() const noexcept { return !(from_m <= to_m); }
};

/// Cuts the stretch to where `start + t * rate` lies between low and high.
void cut_to_slab(Stretch& s, double start, double rate, double low, double high) noexcept {
    if (rate == 0.0) {
        if (start < low || start > high) s.to_m = -1.0;
        return;
    }
    const double a = (low - start) / rate, b = (high - start) / rate;
    s.from_m = std::max(s.from_m, std::min(a, b));
    s.to_m = std::min(s.to_m, std::max(a, b));
}

/// Cuts the stretch to where a t^2 + 2 b t + c <= 0.
void cut_to_round(Stretch& s, double a, double b, double c) noexcept {
    if (a <= 1e-18) {  // the ray does not move in these directions
        if (c > 0.0) s.to_m = -1.0;
        return;
    }
    const double discriminant = b * b - a * c;
    if (discriminant < 0.0) {
        s.to_m = -1.0;
        return;
    }
    const double root = std::sqrt(discriminant);
    s.from_m = std::max(s.from_m, (-b - root) / a);
    s.to_m = std::min(s.to_m, (-b + root) / a);
}

bool meets_cylinder(Point3 from, Point3 dir, Point2 middle, double radius_m, double low_m, double high_m) noexcept {
    Stretch s;
    cut_to_slab(s, from.z_m, dir.z_m, low_m, high_m);
    if (s.empty()) return false;
    const Point2 p{from.x_m - middle.x_m, from.y_m - middle.y_m}, d{dir.x_m, dir.y_m};
    cut_to_round(s, dot(d, d), dot(p, d), dot(p, p) - radius_m * radius_m);
    return !s.empty();
}

bool even_odd(const std::vector<Point2>& outline, Point2 p) noexcept {
    bool in = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Point2 a = outline[i], b = outline[j];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) && p.x_m < (b.x_m - a.x_m) * (p.y_m - a.y_m) / (b.y_m - a.y_m) + a.x_m) {
            in = !in;
        }
    }
    return in;
}

bool meets_prism(Point3 from, Point3 dir, const std::vector<Point2>& outline, double low_m, double high_m) noexcept {
    Stretch s;
    cut_to_slab(s, from.z_m, dir.z_m, low_m, high_m);
    if (s.empty()) return false;
    const Point2 p{from.x_m, from.y_m}, d{dir.x_m, dir.y_m};
    const Point2 a = p + d * s.from_m, b = p + d * s.to_m;
    if (even_odd(outline, a)) return true;
    const Point2 run = b - a;
    constexpr double parallel2 = 1e-24;  // sine of the angle, squared
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Point2 e = outline[i] - outline[j], q = outline[j] - a;
        const double side = cross(run, e);
        // Along the edge one of its neighbours is met; where it is not, rounding must not find a crossing far away.
        if (side * side <= parallel2 * dot(run, run) * dot(e, e)) continue;
        const double t = cross(q, e) / side, u = cross(q, run) / side;
        if (t >= 0.0 && t <= 1.0 && u >= 0.0 && u <= 1.0) return true;
    }
    return false;
}

}  // namespace

Occluder Occluder::from_obstacle(const Obstacle& obstacle) {
    Occluder o;
    o.id_ = obstacle.id;
    o.label_ = obstacle.label;
    o.middle_ = {obstacle.base.x_m, obstacle.base.y_m};
    o.low_m_ = obstacle.base.z_m;
    o.high_m_ = obstacle.base.z_m + obstacle.height_m;
    const double half_height = 0.5 * obstacle.height_m;
    o.bound_middle_ = {obstacle.base.x_m, obstacle.base.y_m, obstacle.base.z_m + half_height};
    if (!(obstacle.height_m > touch_m)) return o;
    double plan_radius = 0.0;
    switch (obstacle.kind) {
        case ObstacleKind::box:
            o.shape_ = Shape::box;
            o.half_width_m_ = 0.5 * obstacle.width_m;
            o.half_depth_m_ = 0.5 * obstacle.depth_m;
            o.turn_cos_ = std::cos(radians(obstacle.turn_deg));
            o.turn_sin_ = std::sin(radians(obstacle.turn_deg));
            if (!(obstacle.width_m > touch_m) || !(obstacle.depth_m > touch_m)) return o;
            plan_radius = std::hypot(o.half_width_m_, o.half_depth_m_);
            break;
        case ObstacleKind::prism: {
            o.shape_ = Shape::prism;
            if (obstacle.outline.size() < 3) return o;
            o.outline_ = obstacle.outline;
            const Bounds b = bounds_of(obstacle.outline);
            o.bound_middle_.x_m = 0.5 * (b.min_x_m + b.max_x_m);
            o.bound_middle_.y_m = 0.5 * (b.min_y_m + b.max_y_m);
            plan_radius = 0.5 * std::hypot(b.width_m(), b.height_m());
            break;
        }
        case ObstacleKind::post:
            o.shape_ = Shape::post;
            o.radius_m_ = obstacle.radius_m;
            if (!(obstacle.radius_m > touch_m)) return o;
            plan_radius = obstacle.radius_m;
            break;
        case ObstacleKind::tree: {
            o.shape_ = Shape::tree;
            if (!(obstacle.radius_m > touch_m)) return o;
            const double crown_low = std::clamp(obstacle.crown_base_m, 0.0, obstacle.height_m);
            o.high_m_ = obstacle.base.z_m + crown_low;
            o.radius_m_ = trunk_share * obstacle.radius_m;
            o.crown_radius_m_ = obstacle.radius_m;
            o.crown_half_height_m_ = 0.5 * (obstacle.height_m - crown_low);
            if (!(o.crown_half_height_m_ > touch_m)) o.crown_half_height_m_ = 0.0;
            o.crown_middle_ = {o.middle_.x_m, o.middle_.y_m, o.high_m_ + o.crown_half_height_m_};
            o.transmittance_leaf_ = std::clamp(obstacle.transmittance_leaf, 0.0, 1.0);
            o.transmittance_bare_ = std::clamp(obstacle.transmittance_bare, 0.0, 1.0);
            o.leaf_from_ = obstacle.leaf_from_month;
            o.leaf_to_ = obstacle.leaf_to_month;
            plan_radius = obstacle.radius_m;
            break;
        }
    }
    o.bound_radius_m_ = std::hypot(plan_radius, half_height);
    return o;
}

Occluder Occluder::from_surface(const Surface& surface, double sketch_up_azimuth_deg) {
    Occluder o;
    o.shape_ = Shape::plane;
    o.id_ = surface.id;
    o.label_ = surface.label;
    if (surface.outline.size() < 3) return o;
    o.outline_ = surface.outline;
    o.frame_ = frame_of(surface, sketch_up_azimuth_deg);
    const Bounds b = bounds_of(surface.outline);
    o.bound_middle_ = to_space(o.frame_, {0.5 * (b.min_x_m + b.max_x_m), 0.5 * (b.min_y_m + b.max_y_m)});
    o.bound_radius_m_ = 0.5 * std::hypot(b.width_m(), b.height_m());
    return o;
}

bool Occluder::extends() const noexcept {
    const auto within = [](double v) { return std::abs(v) <= most_m; };  // false for NaN
    for (const Point2 p : outline_) {
        if (!within(p.x_m) || !within(p.y_m)) return false;
    }
    const bool frame_within = shape_ != Shape::plane || (within(frame_.right.x_m) && within(frame_.up.z_m) &&
                                                         within(frame_.normal.x_m) && within(frame_.normal.z_m));
    return bound_radius_m_ > 0.0 && within(bound_radius_m_) && within(bound_middle_.x_m) && within(bound_middle_.y_m) &&
           within(bound_middle_.z_m) && within(middle_.x_m) && within(middle_.y_m) && within(low_m_) &&
           within(high_m_) && within(turn_cos_) && within(turn_sin_) && within(transmittance_leaf_) &&
           within(transmittance_bare_) && frame_within;
}

std::vector<Occluder> Occluder::of(const Site& site, const std::string& without_surface_id) {
    std::vector<Occluder> out;
    for (const Obstacle& obstacle : site.obstacles) {
        Occluder o = from_obstacle(obstacle);
        if (o.extends()) out.push_back(std::move(o));
    }
    for (const Surface& surface : site.surfaces) {
        if (!without_surface_id.empty() && surface.id == without_surface_id) continue;
        Occluder o = from_surface(surface, site.sketch_up_azimuth_deg);
        if (o.extends()) out.push_back(std::move(o));
    }
    return out;
}

std::vector<Occluder> Occluder::seen_by(const Site& site, const std::string& own_surface_id, Point3 plate_normal) {
    constexpr double parallel = 1e-9;
    const Surface* own = find_surface(site, own_surface_id);
    const bool leads_away =
        own != nullptr && (own->tilt_deg == 0.0 || dot(frame_of(*own, site.sketch_up_azimuth_deg).normal,
                                                       plate_normal) > (1.0 - parallel) * norm(plate_normal));
    return of(site, leads_away ? own_surface_id : std::string());
}

bool Occluder::may_meet(Point3 from, double radius_m, Point3 to_sun) const noexcept {
    if (shape_ == Shape::plane) {  // started off the plane and going further off
        const double off_m = dot(from - frame_.origin, frame_.normal), rate = dot(to_sun, frame_.normal);
        if ((off_m > radius_m && rate >= 0.0) || (off_m < -radius_m && rate <= 0.0)) return false;
    }
    const Point3 v = bound_middle_ - from;
    const double reach = bound_radius_m_ + radius_m;
    const double along = dot(v, to_sun);
    if (along < -reach) return false;
    return dot(v, v) - along * along <= reach * reach || dot(v, v) <= reach * reach;
}

double Occluder::crown_transmittance(int month) const noexcept {
    if (shape_ != Shape::tree) return 0.0;
    const bool in_leaf =
        leaf_from_ <= leaf_to_ ? month >= leaf_from_ && month <= leaf_to_ : month >= leaf_from_ || month <= leaf_to_;
    return in_leaf ? transmittance_leaf_ : transmittance_bare_;
}

double Occluder::passes(Point3 from, Point3 to_sun, double crown_transmittance) const noexcept {
    switch (shape_) {
        case Shape::box: {
            Stretch s;
            cut_to_slab(s, from.z_m, to_sun.z_m, low_m_, high_m_);
            const Point2 p = turned({from.x_m - middle_.x_m, from.y_m - middle_.y_m}, turn_cos_, -turn_sin_);
            const Point2 d = turned({to_sun.x_m, to_sun.y_m}, turn_cos_, -turn_sin_);
            cut_to_slab(s, p.x_m, d.x_m, -half_width_m_, half_width_m_);
            cut_to_slab(s, p.y_m, d.y_m, -half_depth_m_, half_depth_m_);
            return s.empty() ? 1.0 : 0.0;
        }
        case Shape::prism: return meets_prism(from, to_sun, outline_, low_m_, high_m_) ? 0.0 : 1.0;
        case Shape::post: return meets_cylinder(from, to_sun, middle_, radius_m_, low_m_, high_m_) ? 0.0 : 1.0;
        case Shape::tree: {
            if (meets_cylinder(from, to_sun, middle_, radius_m_, low_m_, high_m_)) return 0.0;
            if (!(crown_half_height_m_ > 0.0)) return 1.0;
            // The crown becomes a unit ball when each direction is measured in its own half-axis.
            const double kr = 1.0 / crown_radius_m_, kz = 1.0 / crown_half_height_m_;
            const Point3 p{(from.x_m - crown_middle_.x_m) * kr, (from.y_m - crown_middle_.y_m) * kr,
                           (from.z_m - crown_middle_.z_m) * kz};
            const Point3 d{to_sun.x_m * kr, to_sun.y_m * kr, to_sun.z_m * kz};
            Stretch s;
            cut_to_round(s, dot(d, d), dot(p, d), dot(p, p) - 1.0);
            return s.empty() ? 1.0 : crown_transmittance;
        }
        case Shape::plane: {
            const double rate = dot(to_sun, frame_.normal);
            if (rate == 0.0) return 1.0;
            const Point3 v = from - frame_.origin;
            const double t = -dot(v, frame_.normal) / rate;
            if (t <= start_off_m) return 1.0;
            const Point3 hit = v + to_sun * t;
            return even_odd(outline_, {dot(hit, frame_.right), dot(hit, frame_.up)}) ? 0.0 : 1.0;
        }
    }
    return 1.0;
}

Point3 to_sketch(double east, double north, double up, double sketch_up_azimuth_deg) noexcept {
    const double c = std::cos(radians(sketch_up_azimuth_deg)), s = std::sin(radians(sketch_up_azimuth_deg));
    return {east * c - north * s, north * c + east * s, up};
}

Horizon::Horizon(std::vector<HorizonPoint> points) {
    for (HorizonPoint& p : points) {
        if (!std::isfinite(p.azimuth_deg) || !std::isfinite(p.elevation_deg)) continue;
        p.azimuth_deg = wrap_360(p.azimuth_deg);
        points_.push_back(p);
    }
    constexpr double apart = 1e-9;
    double highest_deg = 0.0, lowest_deg = 90.0;
    for (const HorizonPoint& p : points_) {
        highest_deg = std::max(highest_deg, p.elevation_deg);
        lowest_deg = std::min(lowest_deg, p.elevation_deg);
    }
    surely_open_ = std::sin(radians(std::clamp(highest_deg, 0.0, 90.0))) + apart;
    surely_hidden_ = std::sin(radians(std::clamp(lowest_deg, 0.0, 90.0))) - apart;
    std::stable_sort(points_.begin(), points_.end(),
                     [](const HorizonPoint& a, const HorizonPoint& b) { return a.azimuth_deg < b.azimuth_deg; });
}

double Horizon::elevation_deg(double azimuth_deg) const noexcept {
    if (points_.empty()) return 0.0;
    const double azimuth = wrap_360(azimuth_deg);
    const auto after = std::upper_bound(points_.begin(), points_.end(), azimuth,
                                        [](double a, const HorizonPoint& p) { return a < p.azimuth_deg; });
    const HorizonPoint& b = after == points_.end() ? points_.front() : *after;
    const HorizonPoint& a = after == points_.begin() ? points_.back() : *(after - 1);
    const double span = points_.size() == 1 ? 360.0 : wrap_360(b.azimuth_deg - a.azimuth_deg);
    if (span <= 0.0) return std::max(a.elevation_deg, b.elevation_deg);
    const double t = wrap_360(azimuth - a.azimuth_deg) / span;
    return a.elevation_deg + t * (b.elevation_deg - a.elevation_deg);
}

bool Horizon::hides(double east, double north, double up) const noexcept {
    if (points_.empty()) return up <= 0.0;
    if (up > surely_open_) return false;
    if (up < surely_hidden_) return true;
    const double elevation = degrees(std::atan2(up, std::hypot(east, north)));
    return elevation <= std::max(0.0, elevation_deg(degrees(std::atan2(east, north))));
}

}  // namespace wg::site
