#include "core/quantity/outline.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace wg {
namespace {

struct Segment {
    Point2 from, to;
};

Point2 minus(Point2 a, Point2 b) noexcept {
    return {a.x_m - b.x_m, a.y_m - b.y_m};
}
double cross(Point2 a, Point2 b) noexcept {
    return a.x_m * b.y_m - a.y_m * b.x_m;
}
double dot(Point2 a, Point2 b) noexcept {
    return a.x_m * b.x_m + a.y_m * b.y_m;
}
double length_m(Point2 a) noexcept {
    return std::hypot(a.x_m, a.y_m);
}

Segment edge(const std::vector<Point2>& outline, std::size_t i) noexcept {
    return {outline[i], outline[(i + 1) % outline.size()]};
}

// Distance from a point to a segment that is longer than outline_touch_m.
double distance_m(const Segment& s, Point2 p) noexcept {
    const Point2 along = minus(s.to, s.from);
    const double t = std::clamp(dot(minus(p, s.from), along) / dot(along, along), 0.0, 1.0);
    return length_m(minus(p, {s.from.x_m + t * along.x_m, s.from.y_m + t * along.y_m}));
}

bool boxes_apart(const Segment& a, const Segment& b) noexcept {
    const auto apart = [](double a0, double a1, double b0, double b1) {
        return std::max(a0, a1) < std::min(b0, b1) - outline_touch_m ||
               std::max(b0, b1) < std::min(a0, a1) - outline_touch_m;
    };
    return apart(a.from.x_m, a.to.x_m, b.from.x_m, b.to.x_m) || apart(a.from.y_m, a.to.y_m, b.from.y_m, b.to.y_m);
}

// Where two segments cross or touch.
std::optional<Point2> meeting(const Segment& a, const Segment& b) noexcept {
    if (boxes_apart(a, b)) return std::nullopt;
    for (const Point2 end : {b.from, b.to}) {
        if (distance_m(a, end) < outline_touch_m) return end;
    }
    for (const Point2 end : {a.from, a.to}) {
        if (distance_m(b, end) < outline_touch_m) return end;
    }
    const Point2 along_a = minus(a.to, a.from);
    const Point2 along_b = minus(b.to, b.from);
    const double side_from = cross(along_a, minus(b.from, a.from));
    const double side_to = cross(along_a, minus(b.to, a.from));
    const double other_from = cross(along_b, minus(a.from, b.from));
    const double other_to = cross(along_b, minus(a.to, b.from));
    // No end touches, so a crossing has both ends strictly on either side.
    if ((side_from < 0.0) == (side_to < 0.0) || (other_from < 0.0) == (other_to < 0.0)) return std::nullopt;
    const double t = side_from / (side_from - side_to);
    return Point2{b.from.x_m + t * along_b.x_m, b.from.y_m + t * along_b.y_m};
}

// Two edges with a common corner (a.to == b.from) that lie on one another.
bool folds_back(const Segment& a, const Segment& b) noexcept {
    const Point2 along_a = minus(a.to, a.from);
    const Point2 along_b = minus(b.to, b.from);
    if (dot(along_a, along_b) >= 0.0) return false;
    return length_m(along_a) < length_m(along_b) ? distance_m(b, a.from) < outline_touch_m
                                                 : distance_m(a, b.to) < outline_touch_m;
}

double area_m2(const std::vector<Point2>& outline) noexcept {
    double twice = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Segment e = edge(outline, i);
        twice += cross(minus(e.from, outline[0]), minus(e.to, outline[0]));
    }
    return std::fabs(0.5 * twice);
}

}  // namespace

std::optional<Point2> segments_meet(Point2 a_from, Point2 a_to, Point2 b_from, Point2 b_to) noexcept {
    return meeting({a_from, a_to}, {b_from, b_to});
}

bool turns_back(Point2 before, Point2 corner, Point2 after) noexcept {
    return folds_back({before, corner}, {corner, after});
}

std::optional<OutlineFault> outline_fault(const std::vector<Point2>& outline) {
    using Kind = OutlineFault::Kind;
    const std::size_t n = outline.size();
    if (n < 3) return OutlineFault{Kind::too_few_corners, 0, 0, {}};
    for (std::size_t i = 0; i < n; ++i) {
        const Segment e = edge(outline, i);
        if (length_m(minus(e.to, e.from)) < outline_touch_m) return OutlineFault{Kind::repeated_corner, i, i, e.from};
    }
    for (std::size_t i = 0; i < n; ++i) {
        const Segment e = edge(outline, i);
        const std::size_t next = (i + 1) % n;
        if (folds_back(e, edge(outline, next))) {
            return OutlineFault{Kind::crossing, std::min(i, next), std::max(i, next), e.to};
        }
        for (std::size_t j = i + 2; j < n; ++j) {
            if (i == 0 && j == n - 1) continue;
            if (const std::optional<Point2> at = meeting(e, edge(outline, j))) {
                return OutlineFault{Kind::crossing, i, j, *at};
            }
        }
    }
    if (area_m2(outline) < outline_least_area_m2) return OutlineFault{Kind::no_area, 0, 0, outline[0]};
    return std::nullopt;
}

std::string OutlineFault::text() const {
    char out[160];
    switch (kind) {
        case Kind::too_few_corners: return "has fewer than three corners";
        case Kind::repeated_corner:
            std::snprintf(out, sizeof out, "corner %zu and the next are both at (%.2f, %.2f)", edge_a + 1, at.x_m,
                          at.y_m);
            return out;
        case Kind::crossing:
            std::snprintf(out, sizeof out, "edges %zu and %zu cross at (%.2f, %.2f)", edge_a + 1, edge_b + 1, at.x_m,
                          at.y_m);
            return out;
        case Kind::no_area: return "encloses no area";
    }
    return "";
}

}  // namespace wg
