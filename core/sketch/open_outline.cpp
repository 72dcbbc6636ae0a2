#include "core/sketch/open_outline.h"

#include <algorithm>
#include <cmath>

namespace wg::sketch {
namespace {

constexpr double touch_m = 1e-6;

double distance_to_segment(const Point2& p, const Point2& a, const Point2& b) {
    const double dx = b.x_m - a.x_m;
    const double dy = b.y_m - a.y_m;
    const double length2 = dx * dx + dy * dy;
    double t = length2 > 0.0 ? ((p.x_m - a.x_m) * dx + (p.y_m - a.y_m) * dy) / length2 : 0.0;
    t = std::min(std::max(t, 0.0), 1.0);
    return std::hypot(p.x_m - a.x_m - t * dx, p.y_m - a.y_m - t * dy);
}

double side(const Point2& a, const Point2& b, const Point2& p) {
    return (b.x_m - a.x_m) * (p.y_m - a.y_m) - (b.y_m - a.y_m) * (p.x_m - a.x_m);
}

bool meet(const Point2& a, const Point2& b, const Point2& c, const Point2& d) {
    if (distance_to_segment(a, c, d) < touch_m || distance_to_segment(b, c, d) < touch_m ||
        distance_to_segment(c, a, b) < touch_m || distance_to_segment(d, a, b) < touch_m)
        return true;
    return side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0;
}

}  // namespace

std::optional<std::size_t> crossed_edge(const std::vector<Point2>& drawn, const Point2& next) {
    if (drawn.size() < 2) return std::nullopt;
    const Point2& last = drawn.back();
    const std::size_t before = drawn.size() - 2;
    for (std::size_t i = 0; i < before; ++i)
        if (meet(drawn[i], drawn[i + 1], last, next)) return i;
    // Neighbours share a corner; they lie on one another when one's far end lies on the other.
    if (distance_to_segment(next, drawn[before], last) < touch_m ||
        distance_to_segment(drawn[before], last, next) < touch_m)
        return before;
    return std::nullopt;
}

}  // namespace wg::sketch
