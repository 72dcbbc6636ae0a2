#include "core/scene/shadows.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/scene/convex.h"
#include "core/site/vec.h"

namespace wg::scene {

using site::cross, site::dot, site::norm, site::operator-, site::operator+, site::operator*;

namespace {

constexpr double off_plane_m = 1e-6;  ///< as with site::Occluder: what lies in the plane throws nothing on it
constexpr double least_cosine = 1e-4;

/// A flat outline with axes in its plane, ready for many casters.
class Receiver {
   public:
    Receiver(const std::vector<Point3>& corners, Point3 normal, Point3 to_sun)
        : normal_(normal), to_sun_(to_sun), cosine_(dot(normal, to_sun)) {
        for (const Point3 p : corners)
            origin_ = origin_ + p * (1.0 / static_cast<double>(corners.size()));
        const Point3 helper = std::abs(normal.z_m) < 0.9 ? Point3{0, 0, 1} : Point3{1, 0, 0};
        right_ = cross(helper, normal);
        right_ = right_ * (1.0 / norm(right_));
        up_ = cross(normal, right_);
        for (const Point3 p : corners) {
            outline_.push_back(flat(p));
            radius_m_ = std::max(radius_m_, norm(p - origin_));
        }
    }
    [[nodiscard]] bool lit() const { return cosine_ > least_cosine; }

    [[nodiscard]] bool may_reach(const Caster& caster) const {
        const Point3 v = caster.middle - origin_;
        const double height = dot(v, normal_);
        if (height <= off_plane_m - caster.radius_m) return false;
        const Point3 foot = v - to_sun_ * (height / cosine_);
        const double reach = radius_m_ + caster.radius_m / cosine_;
        return dot(foot, foot) <= reach * reach;
    }
    [[nodiscard]] std::vector<Point3> shadow_of(const Caster& caster) {
        thrown_.clear();
        if (!throw_crown(caster)) throw_points(caster);
        std::vector<Point3> out;
        for (const Point2 p : shared_part(hull_of(thrown_), outline_))
            out.push_back(origin_ + right_ * p.x_m + up_ * p.y_m);
        return out;
    }

   private:
    /// An ellipsoid: the rim that the sun sees as far as it stands before the plane, and where the plane cuts it. Both
    /// are circles in the measure that makes it a ball.
    bool throw_crown(const Caster& caster) {
        if (!(caster.crown_radius_m > 0.0)) return false;
        const double r = caster.crown_radius_m, h = caster.crown_half_height_m;
        const auto in_space = [&](Point3 q) { return caster.middle + Point3{q.x_m * r, q.y_m * r, q.z_m * h}; };
        for (const Point3 q : circle({to_sun_.x_m / r, to_sun_.y_m / r, to_sun_.z_m / h}, 0.0)) {
            const Point3 p = in_space(q);
            const double height = dot(p - origin_, normal_);
            if (height > off_plane_m) thrown_.push_back(thrown(p, height));
        }
        const Point3 across{normal_.x_m * r, normal_.y_m * r, normal_.z_m * h};
        const double off = -dot(caster.middle - origin_, normal_) / norm(across);
        if (std::abs(off) < 1.0) {
            for (const Point3 q : circle(across, off))
                thrown_.push_back(flat(in_space(q)));
        }
        return true;
    }
    /// On the unit ball about an axis of any length, `off` along it.
    static std::vector<Point3> circle(Point3 axis, double off) {
        constexpr int corners = 48;
        axis = axis * (1.0 / norm(axis));
        const Point3 helper = std::abs(axis.z_m) < 0.9 ? Point3{0, 0, 1} : Point3{1, 0, 0};
        Point3 u = cross(helper, axis);
        u = u * (1.0 / norm(u));
        const Point3 v = cross(axis, u);
        const double radius = std::sqrt(1.0 - off * off);
        std::vector<Point3> out;
        for (int i = 0; i < corners; ++i) {
            const double angle = 2.0 * pi * i / corners;
            out.push_back(axis * off + (u * std::cos(angle) + v * std::sin(angle)) * radius);
        }
        return out;
    }
    void throw_points(const Caster& caster) {
        const std::size_t n = caster.points.size();
        heights_.resize(n);
        for (std::size_t i = 0; i < n; ++i) {
            heights_[i] = dot(caster.points[i] - origin_, normal_);
            if (heights_[i] > off_plane_m) thrown_.push_back(thrown(caster.points[i], heights_[i]));
        }
        if (thrown_.empty()) return;
        const auto through = [&](std::size_t a, std::size_t b) {
            if ((heights_[a] > off_plane_m) == (heights_[b] > off_plane_m)) return;
            const double t = std::clamp(heights_[a] / (heights_[a] - heights_[b]), 0.0, 1.0);
            thrown_.push_back(flat(caster.points[a] + (caster.points[b] - caster.points[a]) * t));
        };
        for (const auto& [a, b] : caster.edges)
            through(static_cast<std::size_t>(a), static_cast<std::size_t>(b));
        if (caster.edges.empty()) {
            for (std::size_t i = 0; i < n; ++i)
                through(i, (i + 1) % n);
        }
    }
    [[nodiscard]] Point2 flat(Point3 p) const { return {dot(p - origin_, right_), dot(p - origin_, up_)}; }
    [[nodiscard]] Point2 thrown(Point3 p, double height) const { return flat(p - to_sun_ * (height / cosine_)); }

    Point3 origin_, normal_, to_sun_, right_, up_;
    double cosine_ = 0.0;
    double radius_m_ = 0.0;
    std::vector<Point2> outline_, thrown_;
    std::vector<double> heights_;
};

}  // namespace

std::vector<ShadowPatch> shadows_on(const std::vector<Point3>& corners, Point3 normal,
                                    const std::vector<Caster>& casters, Point3 to_sun, int month, int without) {
    std::vector<ShadowPatch> out;
    Receiver receiver(corners, normal, to_sun);
    if (!receiver.lit()) return out;
    for (const Caster& caster : casters) {
        if (caster.thing == without || !receiver.may_reach(caster)) continue;
        const double passes = caster.passes(month);
        if (passes >= 1.0) continue;
        std::vector<Point3> patch = receiver.shadow_of(caster);
        if (!patch.empty()) out.push_back({std::move(patch), passes});
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const ShadowPatch& a, const ShadowPatch& b) { return a.passes > b.passes; });
    return out;
}

Shadows shadows_of(const Scene& scene, const Order& order, Point3 to_sun, int month) {
    Shadows out;
    out.sun = true;
    out.to_sun = to_sun;
    out.month = month;
    out.ground = shadows_on(scene.ground.corners, scene.ground.normal, scene.casters, to_sun, month);
    out.fragment.resize(order.fragments().size());
    for (std::size_t i = 0; i < out.fragment.size(); ++i) {
        const Fragment& f = order.fragments()[i];
        if (f.shape != Fragment::Shape::polygon || f.corners.size() < 3) continue;
        const double cosine = dot(f.normal, to_sun);
        if (cosine <= 0.0 && !f.two_sided) continue;
        const int without = scene.things[static_cast<std::size_t>(f.thing)].without_shadow_of;
        if (cosine > 0.0) {
            out.fragment[i] = shadows_on(f.corners, f.normal, scene.casters, to_sun, month, without);
        } else {
            const std::vector<Point3> turned(f.corners.rbegin(), f.corners.rend());
            out.fragment[i] = shadows_on(turned, f.normal * -1.0, scene.casters, to_sun, month, without);
        }
    }
    return out;
}

}  // namespace wg::scene
