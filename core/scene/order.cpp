#include "core/scene/order.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

#include "core/scene/cut.h"
#include "core/site/vec.h"

namespace wg::scene {

using site::dot, site::norm, site::operator-, site::operator+, site::operator*;

namespace {

using Items = std::vector<std::uint32_t>;

struct Span {
    double low = 0.0, high = 0.0;
};

Span span_of(const Fragment& fragment, Point3 along) noexcept {
    const Stand s = stand(fragment, {along, 0.0});
    return {s.low_m, s.high_m};
}

Point3 middle_of(const Fragment& fragment) noexcept {
    const Span x = span_of(fragment, {1, 0, 0}), y = span_of(fragment, {0, 1, 0}), z = span_of(fragment, {0, 0, 1});
    return {0.5 * (x.low + x.high), 0.5 * (y.low + y.high), 0.5 * (z.low + z.high)};
}

}  // namespace

struct Order::Build {
    Order& order;
    static constexpr int most_depth = 400;  ///< guards the stack; real sites stay under 40

    const Fragment& at(std::uint32_t i) const { return order.fragments_[i]; }

    /// A plane that cuts nothing and leaves something on both sides, the most even there is.
    std::optional<Plane> free_plane(const Items& items) const {
        std::optional<Plane> best;
        std::size_t best_less = 0;
        std::vector<Span> spans(items.size());
        for (const Point3 along : {Point3{1, 0, 0}, Point3{0, 1, 0}, Point3{0, 0, 1}}) {
            for (std::size_t i = 0; i < items.size(); ++i)
                spans[i] = span_of(at(items[i]), along);
            std::sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) {
                return a.low < b.low || (a.low == b.low && a.high < b.high);
            });
            double reach = -std::numeric_limits<double>::infinity();
            for (std::size_t i = 0; i + 1 < spans.size(); ++i) {
                reach = std::max(reach, spans[i].high);
                if (spans[i + 1].low < reach - on_plane_m) continue;
                const std::size_t less = std::min(i + 1, spans.size() - i - 1);
                const double off = 0.5 * (reach + spans[i + 1].low);
                // All of one side in the plane itself leaves that side empty: no parting.
                if (spans[i + 1].low <= off + on_plane_m && spans.back().high <= off + on_plane_m) continue;
                if (spans.front().low >= off - on_plane_m) continue;
                if (less <= best_less) continue;
                best_less = less;
                best = Plane{along, off};
            }
        }
        return best;
    }

    /// The plane of one of the polygons: the one that cuts least, and then parts most evenly.
    std::optional<Plane> own_plane(const Items& items) const {
        constexpr std::size_t most_tried = 24;
        std::vector<std::uint32_t> polygons;
        for (const std::uint32_t i : items) {
            if (at(i).shape == Fragment::Shape::polygon) polygons.push_back(i);
        }
        if (polygons.empty()) return std::nullopt;
        const std::size_t stride = (polygons.size() + most_tried - 1) / most_tried;
        std::optional<Plane> best;
        double best_cost = std::numeric_limits<double>::infinity();
        for (std::size_t k = 0; k < polygons.size(); k += stride) {
            const Fragment& f = at(polygons[k]);
            const Plane plane{f.normal, dot(f.normal, f.corners.front())};
            int before = 0, behind = 0, cut = 0;
            for (const std::uint32_t i : items) {
                const Stand s = stand(at(i), plane);
                if (s.inside()) continue;
                if (s.before()) {
                    ++before;
                } else if (s.behind()) {
                    ++behind;
                } else {
                    ++cut;
                }
            }
            const double cost = 6.0 * cut + std::abs(before - behind);
            if (cost >= best_cost) continue;
            best_cost = cost;
            best = plane;
        }
        return best;
    }

    /// Between two bodies that nothing else parts.
    std::optional<Plane> between_bodies(const Items& items) const {
        std::array<std::uint32_t, 2> two{};
        std::size_t found = 0;
        for (const std::uint32_t i : items) {
            if (found < 2 && at(i).shape == Fragment::Shape::body) two[found++] = i;
        }
        if (found < 2) return std::nullopt;
        const Point3 a = middle_of(at(two[0])), b = middle_of(at(two[1]));
        const Point3 across = b - a;
        if (!(norm(across) > 1e-3)) return std::nullopt;
        const Point3 along = across * (1.0 / norm(across));
        const Span of_a = span_of(at(two[0]), along), of_b = span_of(at(two[1]), along);
        return Plane{along, 0.5 * (of_a.high + of_b.low)};
    }

    int build(Items items, int depth, int body_cuts) {
        if (items.empty()) return -1;
        const int here = static_cast<int>(order.nodes_.size());
        order.nodes_.emplace_back();
        std::optional<Plane> plane;
        if (items.size() > 1 && depth < most_depth) {
            plane = free_plane(items);
            if (!plane) plane = own_plane(items);
            if (!plane && body_cuts > 0) {
                plane = between_bodies(items);
                --body_cuts;
            }
        }
        if (!plane) {  // one thing, or lines beside a body
            order.nodes_[static_cast<std::size_t>(here)].in_plane = std::move(items);
            return here;
        }
        Items before, behind, inside;
        for (const std::uint32_t i : items) {
            const Stand s = stand(at(i), *plane);
            if (s.inside()) {
                // Of a plane between things a wall in it may go to either side; of its own plane it stays in it.
                inside.push_back(i);
            } else if (s.before()) {
                before.push_back(i);
            } else if (s.behind()) {
                behind.push_back(i);
            } else {
                Fragment back = part_of(at(i), *plane, false);
                order.fragments_[i] = part_of(at(i), *plane, true);
                before.push_back(i);
                behind.push_back(static_cast<std::uint32_t>(order.fragments_.size()));
                order.fragments_.push_back(std::move(back));
            }
        }
        items = {};
        std::stable_sort(inside.begin(), inside.end(),
                         [&](std::uint32_t a, std::uint32_t b) { return at(a).layer < at(b).layer; });
        const int to_before = build(std::move(before), depth + 1, body_cuts);
        const int to_behind = build(std::move(behind), depth + 1, body_cuts);
        Node& node = order.nodes_[static_cast<std::size_t>(here)];
        node.normal = plane->normal;
        node.off_m = plane->off_m;
        node.in_plane = std::move(inside);
        node.before = to_before;
        node.behind = to_behind;
        return here;
    }
};

Order::Order(const Scene& scene) {
    for (const Polygon& polygon : scene.polygons) {
        Fragment f;
        f.corners = polygon.corners;
        f.drawn = polygon.drawn;
        f.normal = polygon.normal;
        f.thing = polygon.thing;
        f.layer = polygon.layer;
        f.two_sided = polygon.two_sided;
        fragments_.push_back(std::move(f));
    }
    for (const Body& body : scene.bodies) {
        Fragment f;
        f.shape = Fragment::Shape::body;
        f.skin = body.skin;
        f.middle = body.middle;
        f.radius_m = body.radius_m;
        f.half_height_m = body.half_height_m;
        f.thing = body.thing;
        fragments_.push_back(std::move(f));
    }
    for (const Line& line : scene.lines) {
        Fragment f;
        f.shape = Fragment::Shape::line;
        f.corners = {line.from, line.to};
        f.thing = line.thing;
        fragments_.push_back(std::move(f));
    }
    Items all(fragments_.size());
    for (std::size_t i = 0; i < all.size(); ++i)
        all[i] = static_cast<std::uint32_t>(i);
    constexpr int body_cuts = 6;
    root_ = Build{*this}.build(std::move(all), 0, body_cuts);
    for (Fragment& f : fragments_) {
        for (const std::vector<Point3>& part : f.skin)
            f.corners.insert(f.corners.end(), part.begin(), part.end());
        if (f.shape != Fragment::Shape::body) continue;
        const auto key = [](Point3 p) { return std::array{p.x_m, p.y_m, p.z_m}; };
        std::sort(f.corners.begin(), f.corners.end(), [&](Point3 a, Point3 b) { return key(a) < key(b); });
        f.corners.erase(std::unique(f.corners.begin(), f.corners.end()), f.corners.end());
    }
}

std::vector<std::uint32_t> Order::back_to_front(Point3 to_eye) const {
    std::vector<std::uint32_t> out;
    out.reserve(fragments_.size());
    walk(root_, to_eye, out);
    return out;
}

void Order::walk(int index, Point3 to_eye, std::vector<std::uint32_t>& out) const {
    if (index < 0) return;
    const Node& node = nodes_[static_cast<std::size_t>(index)];
    const bool eye_before = dot(node.normal, to_eye) >= 0.0;
    walk(eye_before ? node.behind : node.before, to_eye, out);
    const auto shows_face = [&](std::uint32_t i) {
        const Fragment& f = fragments_[i];
        return f.shape != Fragment::Shape::polygon || dot(f.normal, to_eye) >= 0.0;
    };
    for (const bool face : {false, true}) {
        for (const std::uint32_t i : node.in_plane) {
            if (shows_face(i) == face) out.push_back(i);
        }
    }
    walk(eye_before ? node.before : node.behind, to_eye, out);
}

}  // namespace wg::scene
