#include "core/refrigerant/tables.h"

#include <algorithm>
#include <cmath>

namespace wg::refrigerant {

namespace {

struct Split {
    std::size_t cell;
    double share;
};

Split split(double position, std::size_t node_count) noexcept {
    const double held = std::clamp(position, 0.0, static_cast<double>(node_count - 2));
    const auto cell = static_cast<std::size_t>(held);
    return {cell, position - static_cast<double>(cell)};
}

/// Hermite weights for values and slopes at both ends.
struct Weights {
    explicit Weights(double t) noexcept
        : f0((1.0 + 2.0 * t) * (1.0 - t) * (1.0 - t)),
          d0(t * (1.0 - t) * (1.0 - t)),
          f1(t * t * (3.0 - 2.0 * t)),
          d1(t * t * (t - 1.0)) {}
    double f0, d0, f1, d1;
};

}  // namespace

std::vector<double> node_slopes(const std::vector<double>& f) {
    const std::size_t n = f.size();
    std::vector<double> d(n);
    const auto from_end = [&](std::size_t i, auto at) {
        // Five-point one-sided formulas for the first two nodes, read from either end.
        if (i == 0) return (-25.0 * at(0) + 48.0 * at(1) - 36.0 * at(2) + 16.0 * at(3) - 3.0 * at(4)) / 12.0;
        return (-3.0 * at(0) - 10.0 * at(1) + 18.0 * at(2) - 6.0 * at(3) + at(4)) / 12.0;
    };
    const auto forward = [&](std::size_t k) { return f[k]; };
    const auto backward = [&](std::size_t k) { return f[n - 1 - k]; };
    for (std::size_t i = 0; i < 2; ++i) {
        d[i] = from_end(i, forward);
        d[n - 1 - i] = -from_end(i, backward);
    }
    for (std::size_t i = 2; i + 2 < n; ++i)
        d[i] = (f[i - 2] - 8.0 * f[i - 1] + 8.0 * f[i + 1] - f[i + 2]) / 12.0;
    return d;
}

void SurfaceTable::build(std::size_t rows, std::size_t columns, const std::vector<double>& row_major) {
    rows_ = rows;
    columns_ = columns;
    nodes_.assign(rows * columns, {});
    for (std::size_t r = 0; r < rows; ++r) {
        const auto begin = row_major.begin() + static_cast<std::ptrdiff_t>(r * columns);
        const std::vector<double> line(begin, begin + static_cast<std::ptrdiff_t>(columns));
        const auto slopes = node_slopes(line);
        for (std::size_t c = 0; c < columns; ++c) {
            nodes_[r * columns + c].f = line[c];
            nodes_[r * columns + c].by_column = slopes[c];
        }
    }
    std::vector<double> line(rows);
    for (std::size_t c = 0; c < columns; ++c) {
        for (std::size_t r = 0; r < rows; ++r)
            line[r] = nodes_[r * columns + c].f;
        auto slopes = node_slopes(line);
        for (std::size_t r = 0; r < rows; ++r)
            nodes_[r * columns + c].by_row = slopes[r];
        for (std::size_t r = 0; r < rows; ++r)
            line[r] = nodes_[r * columns + c].by_column;
        slopes = node_slopes(line);
        for (std::size_t r = 0; r < rows; ++r)
            nodes_[r * columns + c].by_both = slopes[r];
    }
}

SurfaceTable::Slice SurfaceTable::slice(std::size_t row_cell, double row_share, std::size_t column) const noexcept {
    const Weights w(row_share);
    const Node& a = nodes_[row_cell * columns_ + column];
    const Node& b = nodes_[(row_cell + 1) * columns_ + column];
    return {w.f0 * a.f + w.d0 * a.by_row + w.f1 * b.f + w.d1 * b.by_row,
            w.f0 * a.by_column + w.d0 * a.by_both + w.f1 * b.by_column + w.d1 * b.by_both};
}

SurfaceTable::Spot SurfaceTable::spot(double row, double column) const noexcept {
    const Split r = split(row, rows_);
    const Split c = split(column, columns_);
    const Weights by_row(r.share);
    const Weights by_column(c.share);
    return {r.cell * columns_ + c.cell,
            {by_row.f0, by_row.d0, by_row.f1, by_row.d1},
            {by_column.f0, by_column.d0, by_column.f1, by_column.d1}};
}

double SurfaceTable::value(const Spot& spot) const noexcept {
    const Node* here = &nodes_[spot.node];
    const Node* there = here + columns_;
    const auto& r = spot.row;
    double sum = 0.0;
    for (std::size_t k = 0; k < 2; ++k) {
        const Node& a = here[k];
        const Node& b = there[k];
        sum += spot.column[2 * k] * (r[0] * a.f + r[1] * a.by_row + r[2] * b.f + r[3] * b.by_row);
        sum += spot.column[2 * k + 1] * (r[0] * a.by_column + r[1] * a.by_both + r[2] * b.by_column + r[3] * b.by_both);
    }
    return sum;
}

SurfaceTable::Position SurfaceTable::find(double row, double wanted) const noexcept {
    const Split r = split(row, rows_);
    const Slice last = slice(r.cell, r.share, columns_ - 1);
    if (wanted > last.f)
        return {false, static_cast<double>(columns_ - 1) + (wanted - last.f) / std::max(last.by_column, 1e-12)};
    if (wanted < slice(r.cell, r.share, 0).f) return {false, -1.0};
    std::size_t low = 0;
    std::size_t high = columns_ - 1;
    while (high - low > 1) {
        const std::size_t mid = (low + high) / 2;
        if (slice(r.cell, r.share, mid).f <= wanted)
            low = mid;
        else
            high = mid;
    }
    const Slice a = slice(r.cell, r.share, low);
    const Slice b = slice(r.cell, r.share, low + 1);
    const double rise = b.f - a.f;
    const double c2 = 3.0 * rise - 2.0 * a.by_column - b.by_column;
    const double c3 = a.by_column + b.by_column - 2.0 * rise;
    // Newton kept between shrinking ends; the slope vanishes at column 0, where the spacing is quadratic.
    double from = 0.0;
    double to = 1.0;
    double t = rise > 0.0 ? (wanted - a.f) / rise : 0.0;
    for (int i = 0; i < 60; ++i) {
        const double miss = a.f + t * (a.by_column + t * (c2 + t * c3)) - wanted;
        if (miss > 0.0)
            to = t;
        else
            from = t;
        const double slope = a.by_column + t * (2.0 * c2 + t * 3.0 * c3);
        double next = slope > 0.0 ? t - miss / slope : 0.5 * (from + to);
        if (!(next > from && next < to)) next = 0.5 * (from + to);
        if (std::abs(next - t) < 1e-13) {
            t = next;
            break;
        }
        t = next;
    }
    return {true, static_cast<double>(low) + t};
}

}  // namespace wg::refrigerant
