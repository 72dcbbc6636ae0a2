#pragma once
// Compressor and refrigerant circuit at given evaporating and condensing temperatures, from the tables; and the same
// as a smooth map, built once for a block, that the year of operation uses.

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/quantity/result.h"
#include "core/refrigerant/properties.h"

namespace wg::heatpump {

struct CycleState {
    double mass_flow_kg_s = 0.0;
    double evaporator_w = 0.0;  ///< heat taken up
    double work_w = 0.0;        ///< electricity of the compressor
    double pressure_ratio = 1.0;
    double discharge_c = 0.0;
    double suction_rate_w_k = 0.0;  ///< mass flow times heat capacity of the suction gas
};

/// What of a block's data cannot be computed with: field, value, allowed range. Empty: usable.
[[nodiscard]] std::vector<Problem> problems_of(const BlockModel& block, const refrigerant::Properties& refrigerant);

/// Block efficiencies, both of the pressure ratio. Their floors (0.05, 0.10) keep the search for the operating point
/// monotone outside the envelope; no point below a floor is ever returned.
[[nodiscard]] double volumetric_efficiency(const BlockModel& block, double pressure_ratio) noexcept;
[[nodiscard]] double overall_efficiency(const BlockModel& block, double pressure_ratio) noexcept;

/// Straight from the tables, the compressor by its curves or by its maker's data (compressor.h). Temperatures are
/// saturation at the compressor's suction and in the condenser, within the refrigerant's saturation range.
[[nodiscard]] CycleState cycle_at(const BlockModel& block, const refrigerant::Properties& refrigerant,
                                  double evaporating_c, double condensing_c) noexcept;

/// Evaporator heat and work with their slopes.
struct CycleSlopes {
    double evaporator_w = 0.0, evaporator_by_te = 0.0, evaporator_by_tc = 0.0;
    double work_w = 0.0, work_by_te = 0.0, work_by_tc = 0.0;
};

/// Bicubic map over (evaporating, condensing). Those two rather than (evaporating, water): the least lift puts a crease
/// into the latter, and a condenser zone that is only partly colder than the refrigerant has no single water
/// temperature. Error against cycle_at below 0.07 % within the envelope.
class CycleMap {
   public:
    CycleMap(const BlockModel& block, const refrigerant::Properties& refrigerant);
    [[nodiscard]] CycleSlopes at(double evaporating_c, double condensing_c) const noexcept {
        const Place p = place(evaporating_c, condensing_c);
        const Cell& c = cells_[p.cell];
        Pair row[4];
        Pair row_slope[4];
        for (std::size_t i = 0; i < 4; ++i)
            for (std::size_t k = 0; k < 2; ++k) {
                const double c1 = c[4 * i + 1][k];
                const double c2 = c[4 * i + 2][k];
                const double c3 = c[4 * i + 3][k];
                row[i][k] = c[4 * i][k] + p.y * (c1 + p.y * (c2 + p.y * c3));
                row_slope[i][k] = c1 + p.y * (2.0 * c2 + p.y * (3.0 * c3));
            }
        Pair f;
        Pair by_te;
        Pair by_tc;
        for (std::size_t k = 0; k < 2; ++k) {
            f[k] = row[0][k] + p.x * (row[1][k] + p.x * (row[2][k] + p.x * row[3][k]));
            by_te[k] = (row[1][k] + p.x * (2.0 * row[2][k] + p.x * (3.0 * row[3][k]))) * te_per_step_;
            by_tc[k] = (row_slope[0][k] + p.x * (row_slope[1][k] + p.x * (row_slope[2][k] + p.x * row_slope[3][k]))) *
                       tc_per_step_;
        }
        return {f[0], by_te[0], by_tc[0], f[1], by_te[1], by_tc[1]};
    }
    [[nodiscard]] double discharge_c(double evaporating_c, double condensing_c) const noexcept;
    [[nodiscard]] double suction_rate_w_k(double evaporating_c, double condensing_c) const noexcept;
    [[nodiscard]] double lowest_condensing_c() const noexcept { return tc_first_; }
    [[nodiscard]] double highest_condensing_c() const noexcept { return tc_last_; }

   private:
    using Patch = std::array<double, 16>;  ///< coefficient of te^i tc^j at 4 i + j, both in grid steps
    /// Coefficients of evaporator heat and work side by side: both are wanted together.
    using Pair = std::array<double, 2>;
    using Cell = std::array<Pair, 16>;
    struct Place {
        std::size_t cell;
        double x, y;
    };
    [[nodiscard]] Place place(double evaporating_c, double condensing_c) const noexcept {
        const double x = (evaporating_c - te_first_) * te_per_step_;
        const double y = (condensing_c - tc_first_) * tc_per_step_;
        const double i = static_cast<double>(static_cast<int>(std::min(std::max(x, 0.0), te_last_cell_)));
        const double j = static_cast<double>(static_cast<int>(std::min(std::max(y, 0.0), tc_last_cell_)));
        return {
            static_cast<std::size_t>(static_cast<int>(i)) * tc_cells_ + static_cast<std::size_t>(static_cast<int>(j)),
            x - i, y - j};
    }
    [[nodiscard]] static double value(const Patch& patch, double x, double y) noexcept;

    double te_first_ = 0.0, te_per_step_ = 1.0, tc_first_ = 0.0, tc_last_ = 0.0, tc_per_step_ = 1.0;
    double te_last_cell_ = 0.0, tc_last_cell_ = 0.0;
    std::size_t te_cells_ = 0, tc_cells_ = 0;
    std::vector<Cell> cells_;
    std::vector<Patch> discharge_, suction_rate_;
};

}  // namespace wg::heatpump
