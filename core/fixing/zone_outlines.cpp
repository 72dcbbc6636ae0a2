#include "core/fixing/zone_outlines.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "core/fixing/hip_outlines.h"
#include "core/fixing/zones.h"
#include "core/site/geometry.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::cross;
using site::norm;
using site::operator+;
using site::operator-;
using site::operator*;

/// Where bands end within 0..length, with both ends.
std::vector<double> cuts_of(const std::vector<ZoneBand>& bands, double length, bool along_x) {
    std::vector<double> cuts{0.0, length};
    for (const ZoneBand& band : bands) {
        for (const double at : {along_x ? band.rect.x0 : band.rect.y0, along_x ? band.rect.x1 : band.rect.y1}) {
            if (at > site::touch_m && at < length - site::touch_m) cuts.push_back(at);
        }
    }
    std::sort(cuts.begin(), cuts.end());
    const auto same = [](double a, double b) { return b - a < 10.0 * site::touch_m; };
    cuts.erase(std::unique(cuts.begin(), cuts.end(), same), cuts.end());
    return cuts;
}

/// "e/10", "e/4", "e/2" of either e, "e/5" and "e" on walls; empty for none of them.
std::string word_of_width(double plan_m, double e_across, double e_along, bool wall) {
    const auto is = [plan_m](double v) { return std::abs(plan_m - v) < 1e-6; };
    if (wall) return is(e_across / 5.0) ? "e/5" : is(e_across) ? "e" : "";
    for (const double e : {e_across, e_along}) {
        if (is(e / 10.0)) return "e/10";
        if (is(e / 4.0)) return "e/4";
        if (is(e / 2.0)) return "e/2";
    }
    return "";
}

/// The plane cut into cells at every band's end.
struct Cells {
    std::vector<double> xs, ys;  ///< in plan
    std::vector<ZonePressure> rated;
    [[nodiscard]] std::size_t columns() const { return xs.size() - 1; }
    [[nodiscard]] std::size_t rows() const { return ys.size() - 1; }
    [[nodiscard]] const ZonePressure& at(std::size_t column, std::size_t row) const {
        return rated[row * columns() + column];
    }
    [[nodiscard]] bool alike(std::size_t c1, std::size_t r1, std::size_t c2, std::size_t r2) const {
        const ZonePressure &a = at(c1, r1), &b = at(c2, r2);
        return a.zone_uplift == b.zone_uplift && std::abs(a.uplift - b.uplift) < 1e-9;
    }
};

Cells cells_of(const std::vector<ZoneBand>& bands, double width, double depth, double area_m2) {
    Cells cells{cuts_of(bands, width, true), cuts_of(bands, depth, false), {}};
    for (std::size_t row = 0; row < cells.rows(); ++row) {
        for (std::size_t column = 0; column < cells.columns(); ++column) {
            const ZoneRect cell{cells.xs[column], cells.xs[column + 1], cells.ys[row], cells.ys[row + 1]};
            cells.rated.push_back(pressure_in(bands, cell, area_m2));
        }
    }
    return cells;
}

/// Rectangles of alike cells, each as wide and then as high as it goes: left, right, low, high as indices of cuts.
std::vector<std::array<std::size_t, 4>> merged(const Cells& cells) {
    std::vector<std::array<std::size_t, 4>> out;
    std::vector<bool> taken(cells.rated.size(), false);
    const auto is_taken = [&](std::size_t c, std::size_t r) { return taken[r * cells.columns() + c]; };
    for (std::size_t row = 0; row < cells.rows(); ++row) {
        for (std::size_t column = 0; column < cells.columns(); ++column) {
            if (is_taken(column, row)) continue;
            std::size_t right = column + 1, high = row + 1;
            while (right < cells.columns() && !is_taken(right, row) && cells.alike(column, row, right, row))
                ++right;
            const auto row_alike = [&](std::size_t r) {
                for (std::size_t c = column; c < right; ++c) {
                    if (is_taken(c, r) || !cells.alike(column, row, c, r)) return false;
                }
                return true;
            };
            while (high < cells.rows() && row_alike(high))
                ++high;
            for (std::size_t r = row; r < high; ++r) {
                for (std::size_t c = column; c < right; ++c)
                    taken[r * cells.columns() + c] = true;
            }
            out.push_back({column, right, row, high});
        }
    }
    return out;
}

}  // namespace

std::vector<Point2> clipped_to(const std::vector<Point2>& outline, Point2 low, Point2 high) {
    std::vector<Point2> out = outline;
    // One side of the rectangle after the other (Sutherland and Hodgman 1974).
    const auto cut = [&out](auto distance) {
        std::vector<Point2> kept;
        for (std::size_t i = 0; i < out.size(); ++i) {
            const Point2 a = out[i], b = out[(i + 1) % out.size()];
            const double da = distance(a), db = distance(b);
            if (da >= 0.0) kept.push_back(a);
            if ((da >= 0.0) != (db >= 0.0)) kept.push_back(a + (b - a) * (da / (da - db)));
        }
        out = std::move(kept);
    };
    cut([&](Point2 p) { return p.x_m - low.x_m; });
    cut([&](Point2 p) { return high.x_m - p.x_m; });
    cut([&](Point2 p) { return p.y_m - low.y_m; });
    cut([&](Point2 p) { return high.y_m - p.y_m; });
    return out;
}

WindZones wind_zones(const Surface& surface, const Body& body, double area_m2) {
    WindZones out;
    const ZoneKind kind = zone_kind(surface);
    out.height_m = body.height_m;
    out.table = zone_table(kind);
    if (kind == ZoneKind::none || surface.outline.size() < 3) return out;
    const site::Bounds b = site::bounds_of(surface.outline);
    const double shrink = plan_shrink(surface);
    const double width = b.width_m(), depth = b.height_m() * shrink;
    const ZoneWidths widths = zone_widths(surface, body);
    out.e_m = widths.across_m;
    out.e_side_m = widths.along_m;
    if (kind == ZoneKind::hip) {
        add_hip_areas(out, surface, body, area_m2);
        return out;
    }
    const double e_along = widths.along_m;
    const Cells cells = cells_of(zone_bands(surface, body), width, depth, area_m2);
    const auto in_plane = [&](double x, double y) { return Point2{b.min_x_m + x, b.min_y_m + y / shrink}; };
    for (const auto& [left, right, low, high] : merged(cells)) {
        ZoneArea area;
        area.zone = cells.at(left, low).zone_uplift;
        area.uplift = cells.at(left, low).uplift;
        area.outline = clipped_to(surface.outline, in_plane(cells.xs[left], cells.ys[low]),
                                  in_plane(cells.xs[right], cells.ys[high]));
        if (area.outline.size() >= 3) out.areas.push_back(std::move(area));
    }
    const auto mark = [&](Point2 from, Point2 to, double plan_m) {
        const std::string word = word_of_width(plan_m, out.e_m, e_along, kind == ZoneKind::wall);
        if (!word.empty()) out.marks.push_back({from, to, word, norm(to - from)});
    };
    for (std::size_t column = 1; column < cells.columns(); ++column) {
        const double x = cells.xs[column];
        bool border = false;
        for (std::size_t row = 0; row < cells.rows(); ++row) {
            if (cells.alike(column - 1, row, column, row)) continue;
            border = true;
            out.borders.push_back({in_plane(x, cells.ys[row]), in_plane(x, cells.ys[row + 1])});
        }
        // The right half is the left one's mirror image.
        if (border && x <= width / 2.0 + site::touch_m) mark(in_plane(0.0, 0.0), in_plane(x, 0.0), x);
    }
    for (std::size_t row = 1; row < cells.rows(); ++row) {
        const double y = cells.ys[row];
        bool border = false;
        for (std::size_t column = 0; column < cells.columns(); ++column) {
            if (cells.alike(column, row - 1, column, row)) continue;
            border = true;
            out.borders.push_back({in_plane(cells.xs[column], y), in_plane(cells.xs[column + 1], y)});
        }
        if (!border) continue;
        const bool from_low = !word_of_width(y, out.e_m, e_along, false).empty() && y <= depth / 2.0 + site::touch_m;
        mark(in_plane(0.0, from_low ? 0.0 : depth), in_plane(0.0, y), from_low ? y : depth - y);
    }
    return out;
}

}  // namespace wg::fixing
