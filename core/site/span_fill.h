#pragma once
// From the outline of a shadow to the columns of each row. Used by `Shadow` alone.

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <vector>

#include "core/site/shadow.h"

namespace wg::site {

/// Smallest whole number not below `x`; `x` within int's range. (std::ceil is a library call on plain x86-64.)
inline int ceiling(double x) noexcept {
    const int i = static_cast<int>(x);
    return i + (static_cast<double>(i) < x ? 1 : 0);
}

/// Takes the segments of one outline and finds the columns that each row has inside it.
class SpanFill {
   public:
    /// Which end of its rows a segment gives: the first column inside, the first behind, both as may be; or its
    /// crossings are kept one by one, for outlines that cross a row more than twice.
    enum class Side { first, last, either, note };

    SpanFill(ShadowScratch& scratch, CellMask& cells, std::vector<ShadowScratch::Ask>& asks, double margin_x,
             double margin_y)
        : scratch_(scratch),
          cells_(cells),
          asks_(asks),
          columns_(cells.columns()),
          rows_(cells.rows()),
          margin_x_(margin_x),
          margin_y_(margin_y),
          row_from_(rows_),
          row_to_(0) {}

    /// Rows are met half-open, a.y_m <= row < b.y_m: each corner counts once. `a` is the lower end.
    template <Side side>
    void segment(Point2 a, Point2 b) {
        if (!(b.y_m >= -margin_y_) || !(a.y_m <= rows_ - 1 + margin_y_)) return;
        const double top = rows_;
        const int from = ceiling(std::min(std::max(a.y_m, 0.0), top)),
                  to = ceiling(std::min(std::max(b.y_m, 0.0), top));
        const double rise = b.y_m - a.y_m;
        const bool level = !(rise > 1e-12);
        const double slope = level ? 0.0 : (b.x_m - a.x_m) / rise;
        // Columns in whole numbers of 2^-32, row by row: what that rounds is part of the margin.
        const double margin = level ? 1e300 : margin_x_ + margin_y_ * std::abs(slope) + (to - from + 2) / fine;
        const double start = a.x_m + slope * (from - a.y_m);
        if (margin < 0.25 && std::abs(start) < 1e9 && std::abs(slope) * (to - from) < 1e9) {
            std::int64_t x = static_cast<std::int64_t>(start * fine);
            const std::int64_t step = static_cast<std::int64_t>(slope * fine);
            const auto near = static_cast<std::uint32_t>(margin * fine) + 1;
            for (int row = from; row < to; ++row, x += step) {
                put<side>(row, static_cast<int>(x >> 32) + 1);
                if (static_cast<std::uint32_t>(x) + near <= 2 * near) {
                    const double at = static_cast<double>(x) / fine;
                    ask(row, at - margin, at + margin);
                }
            }
        } else {
            const double least = std::min(a.x_m, b.x_m) - margin_x_, most = std::max(a.x_m, b.x_m) + margin_x_;
            for (int row = from; row < to; ++row) {
                const double x = a.x_m + slope * (row - a.y_m);
                put<side>(row, ceiling(std::min(std::max(x, -1.0), static_cast<double>(columns_))));
                ask(row, std::max(x - margin, least), std::min(x + margin, most));
            }
        }
        row_from_ = std::min(row_from_, from);
        row_to_ = std::max(row_to_, to);
        // Rows just beyond the ends, and all of a level segment.
        const int below = ceiling(std::min(std::max(a.y_m - margin_y_, 0.0), top));
        const int above = ceiling(std::min(std::max(b.y_m + margin_y_, 0.0), top));
        if (below < from || to < above) {
            const double least = std::min(a.x_m, b.x_m) - margin_x_, most = std::max(a.x_m, b.x_m) + margin_x_;
            for (int row = below; row < from; ++row)
                ask(row, std::max(a.x_m - margin, least), std::min(a.x_m + margin, most));
            for (int row = to; row < above; ++row)
                ask(row, std::max(b.x_m - margin, least), std::min(b.x_m + margin, most));
        }
    }

    void fill_convex() {
        if (row_from_ >= row_to_) return;
        int* low = scratch_.low.data();
        int* high = scratch_.high.data();
        cells_.touch_rows(row_from_, row_to_);
        std::uint64_t* words = cells_.row(row_from_);
        const int words_per_row = cells_.words_per_row();
        for (int row = row_from_; row < row_to_; ++row, words += words_per_row) {
            const int from = std::max(0, low[row]), to = std::min(high[row], columns_);
            low[row] = columns_;
            high[row] = -1;
            if (from >= to) continue;
            if (words_per_row == 1) {
                *words |= (~std::uint64_t{0} << from) & (~std::uint64_t{0} >> (64 - to));
            } else {
                CellMask::set_bits(words, from, to);
            }
        }
    }

    void fill_noted() {
        std::vector<std::array<int, 2>>& at = scratch_.crossings;
        std::sort(at.begin(), at.end());
        for (std::size_t i = 0; i + 1 < at.size(); i += 2) {
            const int from = std::max(0, at[i][1]), to = std::min(columns_, at[i + 1][1]);
            if (at[i][0] == at[i + 1][0] && from < to) cells_.set_span(at[i][0], from, to);
        }
        at.clear();
    }

   private:
    static constexpr double fine = 4294967296.0;

    template <Side side>
    void put(int row, int column) {
        const auto i = static_cast<std::size_t>(row);
        if constexpr (side == Side::note) scratch_.crossings.push_back({row, column});
        if constexpr (side == Side::first || side == Side::either) scratch_.low[i] = std::min(scratch_.low[i], column);
        if constexpr (side == Side::last || side == Side::either) scratch_.high[i] = std::max(scratch_.high[i], column);
    }

    void ask(int row, double from, double to) {
        const double right = columns_;
        if (!(to >= 0.0) || !(from < right)) return;
        const int first = ceiling(std::max(from, 0.0));
        const int behind = std::min(static_cast<int>(std::min(to, right)) + 1, columns_);
        if (first < behind) asks_.push_back({row, first, behind});
    }

    ShadowScratch& scratch_;
    CellMask& cells_;
    std::vector<ShadowScratch::Ask>& asks_;
    int columns_, rows_;
    double margin_x_, margin_y_;
    int row_from_, row_to_;
};

}  // namespace wg::site
