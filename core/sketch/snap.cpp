#include "core/sketch/snap.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::sketch {
namespace {

/// A line that a point may be drawn to.
struct Guide {
    SnapKind kind = SnapKind::none;
    Point2 through, along;  ///< along has length 1
    bool bounded = false;   ///< an edge: only between its ends
    double length_m = 0.0;
};

Point2 minus(const Point2& a, const Point2& b) {
    return {a.x_m - b.x_m, a.y_m - b.y_m};
}
Point2 plus(const Point2& a, const Point2& b, double times) {
    return {a.x_m + b.x_m * times, a.y_m + b.y_m * times};
}
double dot(const Point2& a, const Point2& b) {
    return a.x_m * b.x_m + a.y_m * b.y_m;
}
double cross(const Point2& a, const Point2& b) {
    return a.x_m * b.y_m - a.y_m * b.x_m;
}
double distance_m(const Point2& a, const Point2& b) {
    return std::hypot(a.x_m - b.x_m, a.y_m - b.y_m);
}

/// Nothing for edges without length.
std::optional<Guide> line_of(SnapKind kind, const Point2& from, const Point2& to) {
    const double length_m = distance_m(from, to);
    if (!(length_m > 1e-9)) return std::nullopt;
    return Guide{kind, from, {(to.x_m - from.x_m) / length_m, (to.y_m - from.y_m) / length_m}, false, length_m};
}

void add_direction(std::vector<Guide>& guides, SnapKind kind, const Point2& from, Point2 along) {
    const bool known = std::any_of(guides.begin(), guides.end(), [&](const Guide& g) {
        return !g.bounded && std::abs(cross(g.along, along)) < 1e-6 &&
               std::abs(cross(minus(g.through, from), along)) < 1e-6;
    });
    if (!known) guides.push_back({kind, from, along, false, 0.0});
}

/// Lines through the last corner, and through the first (so that the outline closes at a right angle).
std::vector<Guide> angle_guides(const Scene& scene, const SnapSettings& settings) {
    std::vector<Guide> guides;
    if (scene.drawn.empty()) return guides;
    const Point2& last = scene.drawn.back();
    const std::size_t count = scene.drawn.size();
    if (count >= 2) {
        if (const auto edge = line_of(SnapKind::in_line, scene.drawn[count - 2], last)) {
            add_direction(guides, SnapKind::right_angle, last, {-edge->along.y_m, edge->along.x_m});
            add_direction(guides, SnapKind::in_line, last, edge->along);
        }
        if (const auto edge = line_of(SnapKind::right_angle, scene.drawn[0], scene.drawn[1]))
            add_direction(guides, SnapKind::right_angle, scene.drawn[0], {-edge->along.y_m, edge->along.x_m});
    }
    const double reference = radians(settings.reference_deg);
    add_direction(guides, SnapKind::parallel, last, {std::cos(reference), std::sin(reference)});
    add_direction(guides, SnapKind::parallel, last, {-std::sin(reference), std::cos(reference)});
    for (std::size_t i = 0; i + 2 < count; ++i) {
        if (const auto edge = line_of(SnapKind::parallel, scene.drawn[i], scene.drawn[i + 1]))
            add_direction(guides, SnapKind::parallel, last, edge->along);
    }
    for (const auto& outline : scene.outlines)
        for (std::size_t i = 0; i < outline.size(); ++i)
            if (const auto edge = line_of(SnapKind::parallel, outline[i], outline[(i + 1) % outline.size()]))
                add_direction(guides, SnapKind::parallel, last, edge->along);
    return guides;
}

std::vector<Guide> edge_guides(const Scene& scene) {
    std::vector<Guide> guides;
    for (const auto& outline : scene.outlines)
        for (std::size_t i = 0; i < outline.size(); ++i)
            if (auto edge = line_of(SnapKind::on_edge, outline[i], outline[(i + 1) % outline.size()])) {
                edge->bounded = true;
                guides.push_back(*edge);
            }
    return guides;
}

/// Nearest point of a guide; nothing when that lies past the end of an edge, or back at the line's own corner.
std::optional<Point2> foot_on(const Guide& guide, const Point2& cursor) {
    const double along_m = dot(guide.along, minus(cursor, guide.through));
    if (guide.bounded && (along_m < 0.0 || along_m > guide.length_m)) return std::nullopt;
    return plus(guide.through, guide.along, along_m);
}

std::optional<Point2> crossing_of(const Guide& a, const Guide& b) {
    const double turn = cross(a.along, b.along);
    if (std::abs(turn) < 0.05) return std::nullopt;  // nearly parallel lines cross anywhere
    const double along_m = cross(minus(b.through, a.through), b.along) / turn;
    const Point2 at = plus(a.through, a.along, along_m);
    for (const Guide* g : {&a, &b}) {
        const double on_m = dot(g->along, minus(at, g->through));
        if (g->bounded && (on_m < 0.0 || on_m > g->length_m)) return std::nullopt;
    }
    return at;
}

bool to_corner(const Scene& scene, const Point2& cursor, const SnapSettings& settings, Snap& out) {
    double nearest_m = settings.reach_m;
    const auto offer = [&](SnapKind kind, const Point2& p) {
        const double away_m = distance_m(p, cursor);
        if (away_m > nearest_m || (out.kind != SnapKind::none && away_m >= nearest_m)) return;
        nearest_m = away_m;
        out = {kind, p, {kind}, {}};
    };
    if (scene.drawn.size() >= 3) offer(SnapKind::close, scene.drawn.front());
    for (const auto& outline : scene.outlines)
        for (const Point2& p : outline)
            offer(SnapKind::corner, p);
    return out.kind != SnapKind::none;
}

}  // namespace

const char* words_of(SnapKind kind) noexcept {
    switch (kind) {
        case SnapKind::corner: return "corner";
        case SnapKind::close: return "closes the outline";
        case SnapKind::crossing: return "where two lines cross";
        case SnapKind::on_edge: return "on an edge";
        case SnapKind::right_angle: return "right angle";
        case SnapKind::parallel: return "parallel";
        case SnapKind::in_line: return "straight on";
        case SnapKind::grid: return "grid";
        case SnapKind::none: return "";
    }
    return "";
}

Snap snap(const Scene& scene, const Point2& cursor, const SnapSettings& settings) {
    Snap out;
    out.point = cursor;
    if (settings.corners && to_corner(scene, cursor, settings, out)) return out;

    std::vector<Guide> guides;
    if (settings.angles) guides = angle_guides(scene, settings);
    if (settings.edges)
        for (const Guide& edge : edge_guides(scene))
            guides.push_back(edge);
    struct Near {
        const Guide* guide;
        Point2 foot;
        double away_m;
    };
    std::vector<Near> near;
    for (const Guide& guide : guides) {
        const auto foot = foot_on(guide, cursor);
        if (!foot) continue;
        const double away_m = distance_m(*foot, cursor);
        if (away_m <= settings.reach_m) near.push_back({&guide, *foot, away_m});
    }
    std::stable_sort(near.begin(), near.end(), [](const Near& a, const Near& b) { return a.away_m < b.away_m; });
    const auto guide_line = [](const Near& n, const Point2& to) { return std::vector<Point2>{n.guide->through, to}; };
    for (std::size_t i = 0; i < near.size(); ++i)
        for (std::size_t k = i + 1; k < near.size(); ++k) {
            const auto at = crossing_of(*near[i].guide, *near[k].guide);
            if (!at || distance_m(*at, cursor) > 1.5 * settings.reach_m) continue;
            return {SnapKind::crossing,
                    *at,
                    {near[i].guide->kind, near[k].guide->kind},
                    {guide_line(near[i], *at), guide_line(near[k], *at)}};
        }
    if (!near.empty()) {
        const Near& best = near.front();
        Point2 at = best.foot;
        // Along a line from the last corner, lengths fall on the grid's steps.
        if (settings.grid_m > 0.0 && !best.guide->bounded && !scene.drawn.empty()) {
            const Point2& last = scene.drawn.back();
            if (distance_m(last, best.guide->through) < 1e-9) {
                const double length_m = dot(best.guide->along, minus(at, last));
                const double round_m = std::round(length_m / settings.grid_m) * settings.grid_m;
                if (std::abs(round_m - length_m) <= 0.5 * settings.reach_m && round_m != 0.0)
                    at = plus(last, best.guide->along, round_m);
            }
        }
        return {best.guide->kind, at, {best.guide->kind}, {guide_line(best, at)}};
    }
    if (settings.grid_m > 0.0) {
        const Point2 at{std::round(cursor.x_m / settings.grid_m) * settings.grid_m,
                        std::round(cursor.y_m / settings.grid_m) * settings.grid_m};
        if (distance_m(at, cursor) <= settings.reach_m) return {SnapKind::grid, at, {SnapKind::grid}, {}};
    }
    return out;
}

}  // namespace wg::sketch
