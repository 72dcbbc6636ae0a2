#include "core/fixing/hip_outlines.h"

#include <algorithm>
#include <cmath>

#include "core/site/geometry.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::norm;
using site::operator+;
using site::operator-;
using site::operator*;

constexpr double least_area_m2 = 1e-6;

/// Line a x + b y = c in plan.
struct CutLine {
    double a = 0.0, b = 0.0, c = 0.0;
    [[nodiscard]] double beyond(Point2 p) const { return a * p.x_m + b * p.y_m - c; }
};

struct Piece {
    std::vector<Point2> outline;  ///< in plan
    ZonePressure rated;
};

std::vector<CutLine> lines_of(const std::vector<ZoneBand>& bands, double width, double depth) {
    std::vector<CutLine> out;
    const auto add = [&out](CutLine line) {
        for (const CutLine& o : out) {
            if (std::abs(o.a - line.a) + std::abs(o.b - line.b) + std::abs(o.c - line.c) < 1e-6) return;
        }
        out.push_back(line);
    };
    for (const ZoneBand& band : bands) {
        for (const double x : {band.rect.x0, band.rect.x1}) {
            if (x > site::touch_m && x < width - site::touch_m) add({1.0, 0.0, x});
        }
        for (const double y : {band.rect.y0, band.rect.y1}) {
            if (y > site::touch_m && y < depth - site::touch_m) add({0.0, 1.0, y});
        }
        if (band.slants) add({band.slant.x, band.slant.y, band.slant.to_m});
    }
    return out;
}

std::vector<Point2> half_of(const std::vector<Point2>& outline, const CutLine& line, double side) {
    std::vector<Point2> kept;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 p = outline[i], q = outline[(i + 1) % outline.size()];
        const double dp = side * line.beyond(p), dq = side * line.beyond(q);
        if (dp >= 0.0) kept.push_back(p);
        if ((dp >= 0.0) != (dq >= 0.0)) kept.push_back(p + (q - p) * (dp / (dp - dq)));
    }
    return kept;
}

double size_of(const std::vector<Point2>& outline) {
    return outline.size() < 3 ? 0.0 : std::abs(site::signed_area_m2(outline));
}

bool alike(const ZonePressure& a, const ZonePressure& b) {
    return a.zone_uplift == b.zone_uplift && std::abs(a.uplift - b.uplift) < 1e-9;
}

/// A place well inside a convex piece, rated as a plate of no extent would be.
ZonePressure rated_at(const std::vector<ZoneBand>& bands, const std::vector<Point2>& outline, double area_m2) {
    Point2 middle;
    for (const Point2 p : outline)
        middle = middle + p * (1.0 / static_cast<double>(outline.size()));
    constexpr double dot_m = 2e-5;
    return pressure_in(bands, {middle.x_m - dot_m, middle.x_m + dot_m, middle.y_m - dot_m, middle.y_m + dot_m},
                       area_m2);
}

/// Cuts by one line after the other; a cut whose two sides turn out alike throughout is undone.
std::vector<Piece> cut_up(const std::vector<Point2>& outline, const std::vector<CutLine>& lines, std::size_t next,
                          const std::vector<ZoneBand>& bands, double area_m2) {
    for (; next < lines.size(); ++next) {
        const std::vector<Point2> near = half_of(outline, lines[next], -1.0), far = half_of(outline, lines[next], 1.0);
        if (size_of(near) < least_area_m2 || size_of(far) < least_area_m2) continue;
        std::vector<Piece> out = cut_up(near, lines, next + 1, bands, area_m2);
        const std::vector<Piece> others = cut_up(far, lines, next + 1, bands, area_m2);
        if (out.size() == 1 && others.size() == 1 && alike(out.front().rated, others.front().rated))
            return {{outline, out.front().rated}};
        out.insert(out.end(), others.begin(), others.end());
        return out;
    }
    return {{outline, rated_at(bands, outline, area_m2)}};
}

/// Where an edge of one piece runs along an edge of another, nothing when they share less than a millimetre.
bool shared(Point2 a, Point2 b, Point2 c, Point2 d, Point2& from, Point2& to) {
    const double length = norm(b - a);
    if (length < 1e-3) return false;
    const Point2 u = (b - a) * (1.0 / length);
    if (std::abs(site::cross(u, c - a)) > 1e-5 || std::abs(site::cross(u, d - a)) > 1e-5) return false;
    const double tc = site::dot(u, c - a), td = site::dot(u, d - a);
    const double low = std::max(0.0, std::min(tc, td)), high = std::min(length, std::max(tc, td));
    if (high - low < 1e-3) return false;
    from = a + u * low;
    to = a + u * high;
    return true;
}

}  // namespace

void add_hip_areas(WindZones& out, const Surface& surface, const Body& body, double area_m2) {
    const site::Bounds b = site::bounds_of(surface.outline);
    const double shrink = plan_shrink(surface), depth = b.height_m() * shrink;
    std::vector<Point2> plan;
    for (const Point2 p : surface.outline)
        plan.push_back({p.x_m - b.min_x_m, (p.y_m - b.min_y_m) * shrink});
    const std::vector<ZoneBand> bands = zone_bands(surface, body);
    const std::vector<Piece> pieces = cut_up(plan, lines_of(bands, b.width_m(), depth), 0, bands, area_m2);
    const auto in_plane = [&](Point2 p) { return Point2{b.min_x_m + p.x_m, b.min_y_m + p.y_m / shrink}; };
    for (const Piece& piece : pieces) {
        ZoneArea area{piece.rated.zone_uplift, piece.rated.uplift, {}};
        for (const Point2 p : piece.outline)
            area.outline.push_back(in_plane(p));
        out.areas.push_back(std::move(area));
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        for (std::size_t k = i + 1; k < pieces.size(); ++k) {
            if (alike(pieces[i].rated, pieces[k].rated)) continue;
            const auto &one = pieces[i].outline, &other = pieces[k].outline;
            for (std::size_t p = 0; p < one.size(); ++p) {
                for (std::size_t q = 0; q < other.size(); ++q) {
                    Point2 from, to;
                    if (shared(one[p], one[(p + 1) % one.size()], other[q], other[(q + 1) % other.size()], from, to))
                        out.borders.push_back({in_plane(from), in_plane(to)});
                }
            }
        }
    }
    const auto lowest = std::min_element(plan.begin(), plan.end(), [](Point2 p, Point2 q) { return p.y_m < q.y_m; });
    const Point2 foot{0.5 * b.width_m(), lowest->y_m}, top{foot.x_m, foot.y_m + out.e_m / 10.0};
    if (top.y_m < depth) {
        const Point2 from = in_plane(foot), to = in_plane(top);
        out.marks.push_back({from, to, "e/10", norm(to - from)});
    }
}

}  // namespace wg::fixing
