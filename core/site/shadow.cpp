#include "core/site/shadow.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "core/site/span_fill.h"
#include "core/site/vec.h"

namespace wg::site {

double Shadow::margin_m(const SunOnGrid& sun) const noexcept {
    return fuzz_m_ + sun.stretch * (round_m_ + scale_m_ * (1e-11 + 1e-15 * sun.stretch));
}

bool Shadow::may_touch(const SunOnGrid& sun, const Ball& ball, std::array<int, 4>& cells) const noexcept {
    if (!(ball.radius_m >= 0.0)) return false;
    const double x = ball.middle.x - sun.slant_x * ball.middle.off_m;
    const double y = ball.middle.y - sun.slant_y * ball.middle.off_m;
    // One cell more on each side than the ball's shadow: rounding is far smaller.
    const double reach_x = ball.radius_m * sun.reach_x * 1.000001 + 1.0;
    const double reach_y = ball.radius_m * sun.reach_y * 1.000001 + 1.0;
    const double right = grid_->columns, top = grid_->rows;
    if (!(x + reach_x >= 0.0 && x - reach_x < right && y + reach_y >= 0.0 && y - reach_y < top)) return false;
    cells = {static_cast<int>(std::max(0.0, x - reach_x)), static_cast<int>(std::max(0.0, y - reach_y)),
             static_cast<int>(std::min(right - 1.0, x + reach_x)), static_cast<int>(std::min(top - 1.0, y + reach_y))};
    return true;
}

void Shadow::ask_all(const SunOnGrid& sun, const std::array<int, 4>& cells, CellMask& opaque, CellMask& crown) const {
    for (int row = cells[1]; row <= cells[3]; ++row) {
        for (int column = cells[0]; column <= cells[2]; ++column) {
            const double passed = passes(column, row, sun);
            if (passed == 1.0) continue;
            (passed == 0.0 ? opaque : crown).set(column, row, true);
        }
    }
}

bool Shadow::cast(const SunOnGrid& sun, ShadowScratch& scratch, CellMask& opaque, CellMask& crown) const {
    std::array<int, 4> box{};
    if (!sun.before() || !may_touch(sun, whole_, box)) return false;
    if (!sharp_ || sun.grazing()) {
        ask_all(sun, box, opaque, crown);
    } else {
        if (may_touch(sun, solid_, box)) cast_solid(sun, scratch, opaque);
        if (may_touch(sun, crown_ball_, box)) {
            fill_crown(sun, box, scratch, crown);
            for (const ShadowScratch::Ask& ask : scratch.asks) {
                for (int column = ask.from; column < ask.to; ++column)
                    crown.set(column, ask.row, passes(column, ask.row, sun) != 1.0);
            }
            scratch.asks.clear();
        }
    }
    return !opaque.none() || !crown.none();
}

double Shadow::passes(int column, int row, const SunOnGrid& sun) const noexcept {
    const std::size_t i =
        static_cast<std::size_t>(row) * static_cast<std::size_t>(grid_->columns) + static_cast<std::size_t>(column);
    return occluder_->passes(grid_->middles[i], sun.dir, 0.5);
}

void Shadow::cast_solid(const SunOnGrid& sun, ShadowScratch& scratch, CellMask& opaque) const {
    for (const Sheet& sheet : sheets_)
        fill(sheet, sun, scratch, opaque);
    if (!bodies_.empty()) fill(bodies_.front(), sun, scratch, opaque, scratch.asks);
    if (bodies_.size() > 1) {  // between what is surely inside and what is surely outside every cell is asked
        CellMask& outer = scratch.outer;
        fill(bodies_[1], sun, scratch, outer, scratch.outer_asks);
        for (const ShadowScratch::Ask& ask : scratch.outer_asks)
            outer.set_span(ask.row, ask.from, ask.to);
        scratch.outer_asks.clear();
        for (int row = outer.row_from(); row < outer.row_to(); ++row) {
            for (int w = 0; w < outer.words_per_row(); ++w) {
                std::uint64_t between = outer.word(row, w) & ~opaque.word(row, w);
                for (; between != 0; between &= between - 1) {
                    const int column = 64 * w + std::countr_zero(between);
                    scratch.asks.push_back({row, column, column + 1});
                }
            }
        }
        outer.clear();
    }
    for (const ShadowScratch::Ask& ask : scratch.asks) {
        for (int column = ask.from; column < ask.to; ++column)
            opaque.set(column, ask.row, passes(column, ask.row, sun) == 0.0);
    }
    scratch.asks.clear();
}

void Shadow::fill(const Body& body, const SunOnGrid& sun, ShadowScratch& scratch, CellMask& cells,
                  std::vector<ShadowScratch::Ask>& asks) const {
    scratch.corners.resize(body.corners.size());
    Point2* at = scratch.corners.data();
    Point2 least{1e300, 1e300}, most{-1e300, -1e300};
    for (std::size_t i = 0; i < body.corners.size(); ++i) {
        const Corner& c = body.corners[i];
        at[i] = {c.x - sun.slant_x * c.off_m, c.y - sun.slant_y * c.off_m};
        least = {std::min(least.x_m, at[i].x_m), std::min(least.y_m, at[i].y_m)};
        most = {std::max(most.x_m, at[i].x_m), std::max(most.y_m, at[i].y_m)};
    }
    const double margin = margin_m(sun), margin_x = margin * columns_per_m_, margin_y = margin * rows_per_m_;
    if (most.x_m < -margin_x || least.x_m > grid_->columns - 1 + margin_x || most.y_m < -margin_y ||
        least.y_m > grid_->rows - 1 + margin_y) {
        return;
    }
    scratch.faces_sun.resize(body.normals.size() + 1);
    char* facing = scratch.faces_sun.data() + 1;
    facing[-1] = 0;  // the cut looks away
    for (std::size_t i = 0; i < body.normals.size(); ++i)
        facing[i] = dot(body.normals[i], sun.dir) > 0.0 ? 1 : 0;
    SpanFill fill(scratch, cells, asks, margin_x, margin_y);
    using Side = SpanFill::Side;
    // Edges between a lit face and one in the dark make the outline, the lit face to the left: it lies to the right of
    // what runs down the rows and to the left of what runs up.
    for (const Body::Edge& e : body.edges) {
        if (facing[e.left] == facing[e.right]) continue;
        const Point2 a = at[facing[e.left] != 0 ? e.a : e.b], b = at[facing[e.left] != 0 ? e.b : e.a];
        if (a.y_m > b.y_m) {
            fill.segment<Side::first>(b, a);
        } else {
            fill.segment<Side::last>(a, b);
        }
    }
    fill.fill_convex();
}

void Shadow::fill(const Sheet& sheet, const SunOnGrid& sun, ShadowScratch& scratch, CellMask& cells) const {
    if (sheet.corners.size() < 3) return;
    const double margin = margin_m(sun);
    SpanFill fill(scratch, cells, scratch.asks, margin * columns_per_m_, margin * rows_per_m_);
    const auto at = [&sun](const Corner& c) {
        return Point2{c.x - sun.slant_x * c.off_m, c.y - sun.slant_y * c.off_m};
    };
    Point2 last = at(sheet.corners.back());
    for (const Corner& c : sheet.corners) {
        const Point2 next = at(c);
        const Point2 &lower = last.y_m > next.y_m ? next : last, &upper = last.y_m > next.y_m ? last : next;
        if (sheet.convex) {
            fill.segment<SpanFill::Side::either>(lower, upper);
        } else {
            fill.segment<SpanFill::Side::note>(lower, upper);
        }
        last = next;
    }
    if (sheet.convex) {
        fill.fill_convex();
    } else {
        fill.fill_noted();
    }
}

/// Where the crown is a unit ball, the rays along `d` that meet it pass its middle nearer than 1. Along a row that is a
/// stretch; where the cells' plane cuts the crown, the part of it whose way out lies behind the plane is left out.
void Shadow::fill_crown(const SunOnGrid& sun, const std::array<int, 4>& box, ShadowScratch& scratch,
                        CellMask& cells) const {
    const Crown& k = crown_;
    Point3 d{sun.dir.x_m * k.per_radius, sun.dir.y_m * k.per_radius, sun.dir.z_m * k.per_half};
    d = d * (1.0 / norm(d));
    const auto across = [&d](Point3 p) { return p - d * dot(p, d); };
    const Point3 x = across(k.step_x), first = across(k.first), y = across(k.step_y);
    const double xx = dot(x, x), per_x = 1.0 / std::sqrt(xx);
    const Point3 side = cross(d, x * per_x);
    const double side0 = dot(side, first), side1 = dot(side, y);
    const double middle0 = -dot(x, first) / xx, middle1 = -dot(x, y) / xx;
    const double ahead0 = dot(k.first, d), ahead_x = dot(k.step_x, d), ahead_y = dot(k.step_y, d);
    const double right = grid_->columns;
    const auto ask = [&](int row, double from, double to) {
        if (!(to >= 0.0) || !(from < right)) return;
        const int a = ceiling(std::max(from, 0.0));
        const int b = std::min(static_cast<int>(std::min(to, right)) + 1, grid_->columns);
        if (a < b) scratch.asks.push_back({row, a, b});
    };
    for (int row = box[1]; row <= box[3]; ++row) {
        const double h = side0 + row * side1;
        const double half2 = 1.0 - h * h;
        if (half2 < -4.0 * k.blur) continue;
        const double middle = middle0 + row * middle1;
        const double reach = std::sqrt(std::max(half2, 0.0) + 4.0 * k.blur) * per_x;
        if (half2 < 64.0 * k.blur) {
            ask(row, middle - reach, middle + reach);
            continue;
        }
        const double root = std::sqrt(half2), half = root * per_x;
        double from = middle - half, to = middle + half, margin = 2.0 * k.blur / root * per_x + 1e-9;
        if (k.cut) {
            const double base = ahead0 + row * ahead_y;
            const double ahead_from = base + ahead_x * from, ahead_to = base + ahead_x * to;
            const std::array<double, 2> section = k.section[static_cast<std::size_t>(row)];
            const bool none = section[0] > section[1];
            constexpr double near = 1e-4;
            if (std::abs(ahead_from) < near || std::abs(ahead_to) < near || std::isnan(section[1]) ||
                (none && (ahead_from > 0.0) != (ahead_to > 0.0))) {
                ask(row, middle - reach, middle + reach);
                continue;
            }
            if (none && ahead_from > 0.0) continue;
            if (ahead_from > 0.0) from = section[0];
            if (ahead_to > 0.0) to = section[1];
            margin = std::max(margin, 1e-3);
        }
        if (!(to > -1.0) || !(from < right + 1.0)) continue;
        const int a = ceiling(std::max(from, 0.0)), b = std::min(ceiling(std::min(to, right)), grid_->columns);
        if (a < b) cells.set_span(row, a, b);
        ask(row, from - margin, from + margin);
        ask(row, to - margin, to + margin);
    }
}

}  // namespace wg::site
