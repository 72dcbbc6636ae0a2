#pragma once
// Interpolation used by Properties: cubic Hermite pieces on even grids, slopes from fourth-order differences, so that
// values and first derivatives are continuous.

#include <array>
#include <cstddef>
#include <vector>

namespace wg::refrigerant {

/// Slope at every node of an even grid, per grid step; fourth order inside and at both ends. At least five nodes.
[[nodiscard]] std::vector<double> node_slopes(const std::vector<double>& values);

/// Several curves on one grid: cubic coefficients of all curves of a cell lie side by side.
template <std::size_t curve_count>
class CurveTable {
   public:
    void build(double first, double step, const std::array<std::vector<double>, curve_count>& curves) {
        first_ = first;
        per_step_ = 1.0 / step;
        cells_.assign(curves[0].size() - 1, {});
        for (std::size_t k = 0; k < curve_count; ++k) {
            const auto& f = curves[k];
            const auto d = node_slopes(f);
            for (std::size_t i = 0; i + 1 < f.size(); ++i) {
                const double rise = f[i + 1] - f[i];
                cells_[i][k] = {f[i], d[i], 3.0 * rise - 2.0 * d[i] - d[i + 1], d[i] + d[i + 1] - 2.0 * rise};
            }
        }
    }
    [[nodiscard]] double value(std::size_t curve, double x) const noexcept {
        const Place p = place(x);
        return at(cells_[p.cell][curve], p.share);
    }
    [[nodiscard]] std::array<double, curve_count> values(double x) const noexcept {
        const Place p = place(x);
        std::array<double, curve_count> out{};
        for (std::size_t k = 0; k < curve_count; ++k)
            out[k] = at(cells_[p.cell][k], p.share);
        return out;
    }

   private:
    using Cubic = std::array<double, 4>;
    struct Place {
        std::size_t cell;
        double share;
    };
    [[nodiscard]] Place place(double x) const noexcept {
        const double position = (x - first_) * per_step_;
        const auto last = static_cast<double>(cells_.size() - 1);
        const double floor = position < 0.0 ? 0.0 : (position > last ? last : position);
        const auto cell = static_cast<std::size_t>(floor);
        return {cell, position - static_cast<double>(cell)};
    }
    [[nodiscard]] static double at(const Cubic& c, double t) noexcept {
        return c[0] + t * (c[1] + t * (c[2] + t * c[3]));
    }

    double first_ = 0.0;
    double per_step_ = 1.0;
    std::vector<std::array<Cubic, curve_count>> cells_;
};

/// One field on an even (row, column) grid; position is measured in grid steps.
class SurfaceTable {
   public:
    void build(std::size_t rows, std::size_t columns, const std::vector<double>& row_major);
    [[nodiscard]] double value(double row, double column) const noexcept { return value(spot(row, column)); }
    /// A position prepared once for several tables of the same shape.
    struct Spot {
        std::size_t node = 0;                   ///< of the lower row, lower column
        std::array<double, 4> row{}, column{};  ///< Hermite weights: value and slope here, value and slope there
    };
    [[nodiscard]] Spot spot(double row, double column) const noexcept;
    [[nodiscard]] double value(const Spot& spot) const noexcept;
    /// Column position at which the field, rising along the row, takes `value`; below 0 or past the last column when
    /// it lies outside (then `inside` is false and the position is an extrapolation along the end's slope).
    struct Position {
        bool inside = false;
        double column = 0.0;
    };
    [[nodiscard]] Position find(double row, double value) const noexcept;

   private:
    struct Node {
        double f = 0.0, by_column = 0.0, by_row = 0.0, by_both = 0.0;
    };
    struct Slice {
        double f, by_column;
    };
    [[nodiscard]] Slice slice(std::size_t row_cell, double row_share, std::size_t column) const noexcept;

    std::size_t rows_ = 0;
    std::size_t columns_ = 0;
    std::vector<Node> nodes_;
};

}  // namespace wg::refrigerant
