#include "core/site/geometry.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/quantity/constants.h"
#include "core/quantity/outline.h"
#include "core/site/vec.h"

namespace wg::site {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

struct Segment {
    Point2 a, b;
};

Segment edge(const std::vector<Point2>& outline, std::size_t i) noexcept {
    return {outline[i], outline[i + 1 == outline.size() ? 0 : i + 1]};
}

Point2 nearest_on(const Segment& s, Point2 p) noexcept {
    const Point2 d = s.b - s.a;
    const double length2 = dot(d, d);
    if (length2 <= 0.0) return s.a;
    const double t = std::clamp(dot(p - s.a, d) / length2, 0.0, 1.0);
    return s.a + d * t;
}

double distance(const Segment& s, Point2 p) noexcept {
    return norm(p - nearest_on(s, p));
}

double turn(Point2 a, Point2 b, Point2 c) noexcept {
    return cross(b - a, c - a);
}

/// Interiors cross at one point. Near misses are left to the distance test.
bool cross_properly(const Segment& s, const Segment& t) noexcept {
    const double d1 = turn(s.a, s.b, t.a), d2 = turn(s.a, s.b, t.b);
    const double d3 = turn(t.a, t.b, s.a), d4 = turn(t.a, t.b, s.b);
    return ((d1 > 0.0 && d2 < 0.0) || (d1 < 0.0 && d2 > 0.0)) && ((d3 > 0.0 && d4 < 0.0) || (d3 < 0.0 && d4 > 0.0));
}

double distance(const Segment& s, const Segment& t) noexcept {
    if (cross_properly(s, t)) return 0.0;
    return std::min(std::min(distance(s, t.a), distance(s, t.b)), std::min(distance(t, s.a), distance(t, s.b)));
}

bool apart(const Segment& s, const Segment& t) noexcept {
    return std::max(s.a.x_m, s.b.x_m) + touch_m < std::min(t.a.x_m, t.b.x_m) ||
           std::max(t.a.x_m, t.b.x_m) + touch_m < std::min(s.a.x_m, s.b.x_m) ||
           std::max(s.a.y_m, s.b.y_m) + touch_m < std::min(t.a.y_m, t.b.y_m) ||
           std::max(t.a.y_m, t.b.y_m) + touch_m < std::min(s.a.y_m, s.b.y_m);
}

bool apart(const Bounds& a, const Bounds& b) noexcept {
    return a.max_x_m < b.min_x_m || b.max_x_m < a.min_x_m || a.max_y_m < b.min_y_m || b.max_y_m < a.min_y_m;
}

/// Even-odd rule; points on the outline may fall on either side.
bool inside(const std::vector<Point2>& outline, Point2 p) noexcept {
    bool in = false;
    for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
        const Point2 a = outline[i], b = outline[j];
        if ((a.y_m > p.y_m) != (b.y_m > p.y_m) && p.x_m < (b.x_m - a.x_m) * (p.y_m - a.y_m) / (b.y_m - a.y_m) + a.x_m) {
            in = !in;
        }
    }
    return in;
}

bool strictly_inside(const std::vector<Point2>& outline, Point2 p) noexcept {
    return inside(outline, p) && edge_distance_m(outline, p) > touch_m;
}

/// Calls `visit` with the middle of every stretch of `s` between the places where it meets the outline. A stretch is
/// wholly inside, wholly outside or along the outline, so its middle speaks for it. Stops when `visit` returns true.
template <class Visit>
bool any_stretch(const std::vector<Point2>& outline, const Segment& s, Visit visit) {
    std::vector<double> cuts{0.0, 1.0};
    const Point2 d = s.b - s.a;
    const double length2 = dot(d, d);
    if (length2 <= 0.0) return visit(s.a);
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Segment e = edge(outline, i);
        if (apart(s, e)) continue;
        const Point2 f = e.b - e.a;
        const double denominator = cross(d, f);
        if (denominator != 0.0) {
            const double t = cross(e.a - s.a, f) / denominator;
            if (t > 0.0 && t < 1.0) cuts.push_back(t);
        }
        for (const Point2 corner : {e.a, e.b}) {  // corners of the outline on the segment, also when parallel
            const double t = dot(corner - s.a, d) / length2;
            if (t > 0.0 && t < 1.0 && distance(s, corner) <= touch_m) cuts.push_back(t);
        }
    }
    std::sort(cuts.begin(), cuts.end());
    const double length = std::sqrt(length2);
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        if ((cuts[i] - cuts[i - 1]) * length <= touch_m) continue;
        if (visit(s.a + d * (0.5 * (cuts[i] + cuts[i - 1])))) return true;
    }
    return false;
}

/// Some point deep inside a simple outline: on a level line between corners, the middle of its widest inside stretch.
std::optional<Point2> point_inside(const std::vector<Point2>& outline) {
    std::vector<double> levels;
    levels.reserve(outline.size());
    for (const Point2 p : outline)
        levels.push_back(p.y_m);
    std::sort(levels.begin(), levels.end());
    std::optional<Point2> best;
    double widest = touch_m;
    for (std::size_t k = 1; k < levels.size(); ++k) {
        if (levels[k] - levels[k - 1] <= 2.0 * touch_m) continue;
        const double y = 0.5 * (levels[k] + levels[k - 1]);
        std::vector<double> hits;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Segment e = edge(outline, i);
            if ((e.a.y_m > y) == (e.b.y_m > y)) continue;
            hits.push_back(e.a.x_m + (e.b.x_m - e.a.x_m) * (y - e.a.y_m) / (e.b.y_m - e.a.y_m));
        }
        std::sort(hits.begin(), hits.end());
        for (std::size_t i = 1; i < hits.size(); i += 2) {
            if (hits[i] - hits[i - 1] > widest) {
                widest = hits[i] - hits[i - 1];
                best = Point2{0.5 * (hits[i] + hits[i - 1]), y};
            }
        }
    }
    return best;
}

bool edge_runs_inside(const std::vector<Point2>& outline, const std::vector<Point2>& other) {
    for (std::size_t i = 0; i < other.size(); ++i) {
        if (any_stretch(outline, edge(other, i), [&](Point2 p) { return strictly_inside(outline, p); })) return true;
    }
    return false;
}

}  // namespace

double signed_area_m2(const std::vector<Point2>& outline) noexcept {
    if (outline.size() < 3) return 0.0;
    double twice = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Segment e = edge(outline, i);
        twice += cross(e.a - outline.front(), e.b - outline.front());  // relative: keeps digits far from the origin
    }
    return 0.5 * twice;
}

bool is_simple(const std::vector<Point2>& outline) noexcept {
    for (const Point2 p : outline) {
        if (!std::isfinite(p.x_m) || !std::isfinite(p.y_m)) return false;
    }
    return !outline_fault(outline).has_value();
}

bool contains(const std::vector<Point2>& outline, Point2 point) noexcept {
    if (outline.empty()) return false;
    return inside(outline, point) || edge_distance_m(outline, point) <= touch_m;
}

bool contains(const std::vector<Point2>& outline, const std::vector<Point2>& inner) noexcept {
    if (outline.size() < 3 || inner.empty()) return false;
    for (const Point2 p : inner) {
        if (!contains(outline, p)) return false;
    }
    for (std::size_t i = 0; i < inner.size(); ++i) {
        if (any_stretch(outline, edge(inner, i), [&](Point2 p) { return !contains(outline, p); })) return false;
    }
    return true;
}

bool overlap(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept {
    if (a.empty() || b.empty() || apart(bounds_of(a), bounds_of(b))) return false;
    if (edge_runs_inside(a, b) || edge_runs_inside(b, a)) return true;
    // No edge of one runs inside the other: they are apart, touch, or are the same shape.
    const std::optional<Point2> p = point_inside(a);
    return p && strictly_inside(b, *p);
}

double edge_gap_m(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept {
    double least = infinity;
    for (std::size_t i = 0; i < a.size(); ++i) {
        for (std::size_t j = 0; j < b.size(); ++j)
            least = std::min(least, distance(edge(a, i), edge(b, j)));
    }
    return least;
}

double gap_m(const std::vector<Point2>& a, const std::vector<Point2>& b) noexcept {
    return overlap(a, b) ? 0.0 : edge_gap_m(a, b);
}

double edge_distance_m(const std::vector<Point2>& outline, Point2 point) noexcept {
    double least = infinity;
    for (std::size_t i = 0; i < outline.size(); ++i)
        least = std::min(least, distance(edge(outline, i), point));
    return least;
}

Bounds bounds_of(const std::vector<Point2>& outline) noexcept {
    if (outline.empty()) return {};
    Bounds b{outline[0].x_m, outline[0].y_m, outline[0].x_m, outline[0].y_m};
    for (const Point2 p : outline) {
        b.min_x_m = std::min(b.min_x_m, p.x_m);
        b.min_y_m = std::min(b.min_y_m, p.y_m);
        b.max_x_m = std::max(b.max_x_m, p.x_m);
        b.max_y_m = std::max(b.max_y_m, p.y_m);
    }
    return b;
}

std::vector<EdgeOffset> nearest_two_edges(const std::vector<Point2>& outline, Point2 point) {
    struct Candidate {
        EdgeOffset offset;
        Point2 direction;
        bool square = false;
    };
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Segment e = edge(outline, i);
        const Point2 d = e.b - e.a;
        const double length = norm(d);
        if (!(length > touch_m)) continue;
        const Point2 foot = nearest_on(e, point);
        const double along = dot(point - e.a, d) / length;
        candidates.push_back(
            {{i, norm(point - foot), foot}, d * (1.0 / length), along >= -touch_m && along <= length + touch_m});
    }
    std::stable_sort(candidates.begin(), candidates.end(), [](const Candidate& a, const Candidate& b) {
        if (a.square != b.square) return a.square;
        return a.offset.distance_m < b.offset.distance_m;
    });
    std::vector<EdgeOffset> out;
    if (candidates.empty()) return out;
    out.push_back(candidates.front().offset);
    const double different = std::sin(radians(10.0));
    for (const Candidate& c : candidates) {
        if (std::abs(cross(c.direction, candidates.front().direction)) < different) continue;
        out.push_back(c.offset);
        break;
    }
    return out;
}

std::vector<double> rafter_lines(const Surface& surface) {
    std::vector<double> lines;
    const RafterGrid& grid = surface.rafters;
    constexpr double least_spacing_m = 0.05;
    constexpr double most_lines = 2000.0;
    if (!grid.present || surface.outline.empty() || !(grid.spacing_m >= least_spacing_m)) return lines;
    const Bounds b = bounds_of(surface.outline);
    if (!(b.width_m() / grid.spacing_m <= most_lines) || !std::isfinite(grid.first_m)) return lines;
    const double first = std::ceil((b.min_x_m - touch_m - grid.first_m) / grid.spacing_m);
    const double last = std::floor((b.max_x_m + touch_m - grid.first_m) / grid.spacing_m);
    for (double k = first; k <= last; k += 1.0)
        lines.push_back(grid.first_m + k * grid.spacing_m);
    return lines;
}

}  // namespace wg::site
