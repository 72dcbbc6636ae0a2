#include "core/site/shadow.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include "core/site/vec.h"

namespace wg::site {
namespace {

/// Smallest whole number not below `x`; `x` within int's range. (std::ceil is a library call on plain x86-64.)
inline int ceiling(double x) noexcept {
    const int i = static_cast<int>(x);
    return i + (static_cast<double>(i) < x ? 1 : 0);
}

}  // namespace

/// Takes the segments of one outline and finds the columns that each row has inside it.
class SpanFill {
   public:
    SpanFill(ShadowScratch& scratch, ShadowScratch::Cover& cover, double margin_x, double margin_y)
        : scratch_(scratch),
          cover_(cover),
          columns_(cover.sure.columns()),
          rows_(cover.sure.rows()),
          margin_x_(margin_x),
          margin_y_(margin_y),
          row_from_(rows_),
          row_to_(0) {}

    /// Rows are met half-open, a.y_m <= row < b.y_m: each corner counts once. With `Note` the crossings are kept one by
    /// one, else only the first and last of each row.
    template <bool Note>
    void segment(Point2 a, Point2 b) {
        if (a.y_m > b.y_m) std::swap(a, b);
        if (!(b.y_m >= -margin_y_) || !(a.y_m <= rows_ - 1 + margin_y_)) return;
        const double top = rows_;
        const int from = ceiling(std::clamp(a.y_m, 0.0, top)), to = ceiling(std::clamp(b.y_m, 0.0, top));
        const double rise = b.y_m - a.y_m;
        const bool level = !(rise > 1e-12);
        const double slope = level ? 0.0 : (b.x_m - a.x_m) / rise;
        const double margin = level ? 1e300 : margin_x_ + margin_y_ * std::abs(slope);
        const double least = std::min(a.x_m, b.x_m) - margin_x_, most = std::max(a.x_m, b.x_m) + margin_x_;
        const double right = columns_;
        for (int row = from; row < to; ++row) {
            const double x = a.x_m + slope * (row - a.y_m);
            const double in_grid = std::min(std::max(x, -1.0), right);
            const int column = ceiling(in_grid);
            if constexpr (Note) {
                scratch_.crossings.push_back({row, column});
            } else {
                const auto i = static_cast<std::size_t>(row);
                scratch_.low[i] = std::min(scratch_.low[i], column);
                scratch_.high[i] = std::max(scratch_.high[i], column);
            }
            const double gap = column - in_grid;
            if (gap <= margin || gap >= 1.0 - margin) ask(row, std::max(x - margin, least), std::min(x + margin, most));
        }
        row_from_ = std::min(row_from_, from);
        row_to_ = std::max(row_to_, to);
        // Rows just beyond the ends.
        const int below = ceiling(std::clamp(a.y_m - margin_y_, 0.0, top));
        const int above = ceiling(std::clamp(b.y_m + margin_y_, 0.0, top));
        for (int row = below; row < std::max(from, below); ++row)
            ask(row, std::max(a.x_m - margin, least), std::min(a.x_m + margin, most));
        for (int row = to; row < above; ++row)
            ask(row, std::max(b.x_m - margin, least), std::min(b.x_m + margin, most));
    }

    void fill_convex() {
        for (int row = row_from_; row < row_to_; ++row) {
            const auto i = static_cast<std::size_t>(row);
            const int from = std::max(0, scratch_.low[i]), to = scratch_.high[i];
            if (from < to) cover_.sure.set_span(row, from, to);
            scratch_.low[i] = columns_;
            scratch_.high[i] = -1;
        }
    }

    void fill_noted() {
        std::vector<std::array<int, 2>>& at = scratch_.crossings;
        std::sort(at.begin(), at.end());
        for (std::size_t i = 0; i + 1 < at.size(); i += 2) {
            const int from = std::max(0, at[i][1]), to = std::min(columns_, at[i + 1][1]);
            if (at[i][0] == at[i + 1][0] && from < to) cover_.sure.set_span(at[i][0], from, to);
        }
        at.clear();
    }

   private:
    void ask(int row, double from, double to) {
        const double right = columns_;
        if (!(to >= 0.0) || !(from < right)) return;
        const int first = ceiling(std::max(from, 0.0));
        const int behind = std::min(static_cast<int>(std::min(to, right)) + 1, columns_);
        if (first < behind) cover_.asks.push_back({row, first, behind});
    }

    ShadowScratch& scratch_;
    ShadowScratch::Cover& cover_;
    int columns_, rows_;
    double margin_x_, margin_y_;
    int row_from_, row_to_;
};

double Shadow::margin_m(const SunOnGrid& sun) const noexcept {
    return fuzz_m_ + scale_m_ * sun.stretch * (1e-11 + 1e-15 * sun.stretch);
}

bool Shadow::may_touch(const SunOnGrid& sun, const Ball& ball, std::array<int, 4>& cells) const noexcept {
    if (!(ball.radius_m >= 0.0)) return false;
    const double x = ball.middle.x - sun.slant_x * ball.middle.off_m;
    const double y = ball.middle.y - sun.slant_y * ball.middle.off_m;
    // One cell more on each side than the ball's shadow: rounding is far smaller.
    const double reach_x = ball.radius_m * (columns_per_m_ + std::abs(sun.slant_x)) + 1.0;
    const double reach_y = ball.radius_m * (rows_per_m_ + std::abs(sun.slant_y)) + 1.0;
    const double right = grid_->columns, top = grid_->rows;
    if (!(x + reach_x >= 0.0 && x - reach_x < right && y + reach_y >= 0.0 && y - reach_y < top)) return false;
    cells = {static_cast<int>(std::max(0.0, x - reach_x)), static_cast<int>(std::max(0.0, y - reach_y)),
             static_cast<int>(std::min(right - 1.0, x + reach_x)), static_cast<int>(std::min(top - 1.0, y + reach_y))};
    return true;
}

void Shadow::ask_all(const SunOnGrid& sun, const std::array<int, 4>& cells, CellMask& opaque, CellMask& crown) const {
    for (int row = cells[1]; row <= cells[3]; ++row) {
        for (int column = cells[0]; column <= cells[2]; ++column) {
            const std::size_t i = static_cast<std::size_t>(row) * static_cast<std::size_t>(grid_->columns) +
                                  static_cast<std::size_t>(column);
            const double passed = occluder_->passes(grid_->middles[i], sun.dir, 0.5);
            if (passed == 1.0) continue;
            (passed == 0.0 ? opaque : crown).set(column, row, true);
        }
    }
}

bool Shadow::cast(const SunOnGrid& sun, ShadowScratch& scratch, CellMask& opaque, CellMask& crown) const {
    std::array<int, 4> cells{};
    if (!sun.before() || !may_touch(sun, whole_, cells)) return false;
    if (!sharp_ || sun.grazing()) {
        ask_all(sun, cells, opaque, crown);
        return true;
    }
    if (may_touch(sun, solid_, cells)) cast_solid(sun, scratch, opaque);
    if (!may_touch(sun, crown_ball_, cells)) return true;
    ShadowScratch::Cover& cover = scratch.cover;
    fill_crown(sun, cover);
    for (const ShadowScratch::Ask& ask : cover.asks) {
        for (int column = ask.from; column < ask.to; ++column) {
            const std::size_t i = static_cast<std::size_t>(ask.row) * static_cast<std::size_t>(grid_->columns) +
                                  static_cast<std::size_t>(column);
            cover.sure.set(column, ask.row, occluder_->passes(grid_->middles[i], sun.dir, 0.5) != 1.0);
        }
    }
    crown.add(cover.sure);
    cover.sure.clear();
    cover.asks.clear();
    return true;
}

void Shadow::cast_solid(const SunOnGrid& sun, ShadowScratch& scratch, CellMask& opaque) const {
    ShadowScratch::Cover& cover = scratch.cover;
    for (const Sheet& sheet : sheets_)
        fill(sheet, sun, scratch, cover);
    if (!bodies_.empty()) fill(bodies_.front(), sun, scratch, cover);
    if (bodies_.size() > 1) {  // between what is surely inside and what is surely outside every cell is asked
        ShadowScratch::Cover& outer = scratch.outer;
        fill(bodies_[1], sun, scratch, outer);
        for (const ShadowScratch::Ask& ask : outer.asks)
            outer.sure.set_span(ask.row, ask.from, ask.to);
        outer.asks.clear();
        for (int row = outer.sure.row_from(); row < outer.sure.row_to(); ++row) {
            for (int w = 0; w < outer.sure.words_per_row(); ++w) {
                std::uint64_t between = outer.sure.word(row, w) & ~cover.sure.word(row, w);
                while (between != 0) {
                    const int column = 64 * w + std::countr_zero(between);
                    cover.asks.push_back({row, column, column + 1});
                    between &= between - 1;
                }
            }
        }
        outer.sure.clear();
    }
    for (const ShadowScratch::Ask& ask : cover.asks) {
        for (int column = ask.from; column < ask.to; ++column) {
            const std::size_t i = static_cast<std::size_t>(ask.row) * static_cast<std::size_t>(grid_->columns) +
                                  static_cast<std::size_t>(column);
            cover.sure.set(column, ask.row, occluder_->passes(grid_->middles[i], sun.dir, 0.5) == 0.0);
        }
    }
    opaque.add(cover.sure);
    cover.sure.clear();
    cover.asks.clear();
}

void Shadow::fill(const Body& body, const SunOnGrid& sun, ShadowScratch& scratch, ShadowScratch::Cover& cover) const {
    std::vector<Point2>& at = scratch.corners;
    at.clear();
    for (const Corner& c : body.corners)
        at.push_back({c.x - sun.slant_x * c.off_m, c.y - sun.slant_y * c.off_m});
    std::vector<char>& facing = scratch.faces_sun;
    facing.clear();
    for (const Point3& n : body.normals)
        facing.push_back(dot(n, sun.dir) > 0.0 ? 1 : 0);
    const double margin = margin_m(sun);
    SpanFill fill(scratch, cover, margin * columns_per_m_, margin * rows_per_m_);
    for (const Body::Edge& e : body.edges) {  // edges between a lit face and one in the dark make the outline
        const char left = facing[static_cast<std::size_t>(e.left)];
        const char right = e.right < 0 ? char{0} : facing[static_cast<std::size_t>(e.right)];
        if (left != right) fill.segment<false>(at[static_cast<std::size_t>(e.a)], at[static_cast<std::size_t>(e.b)]);
    }
    fill.fill_convex();
}

void Shadow::fill(const Sheet& sheet, const SunOnGrid& sun, ShadowScratch& scratch, ShadowScratch::Cover& cover) const {
    if (sheet.corners.size() < 3) return;
    const double margin = margin_m(sun);
    SpanFill fill(scratch, cover, margin * columns_per_m_, margin * rows_per_m_);
    const auto at = [&sun](const Corner& c) {
        return Point2{c.x - sun.slant_x * c.off_m, c.y - sun.slant_y * c.off_m};
    };
    Point2 last = at(sheet.corners.back());
    for (const Corner& c : sheet.corners) {
        const Point2 next = at(c);
        if (sheet.convex) {
            fill.segment<false>(last, next);
        } else {
            fill.segment<true>(last, next);
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
void Shadow::fill_crown(const SunOnGrid& sun, ShadowScratch::Cover& cover) const {
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
        if (a < b) cover.asks.push_back({row, a, b});
    };
    std::array<int, 4> cells{};
    if (!may_touch(sun, crown_ball_, cells)) return;
    for (int row = cells[1]; row <= cells[3]; ++row) {
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
        if (a < b) cover.sure.set_span(row, a, b);
        ask(row, from - margin, from + margin);
        ask(row, to - margin, to + margin);
    }
}

}  // namespace wg::site
