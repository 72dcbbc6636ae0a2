#include "core/heatpump/cycle.h"

#include <algorithm>
#include <cmath>

#include "core/heatpump/compressor.h"
#include "core/quantity/constants.h"

namespace wg::heatpump {

double volumetric_efficiency(const BlockModel& block, double pressure_ratio) noexcept {
    return std::max(0.05, block.volumetric_at_unity - block.volumetric_slope * (pressure_ratio - 1.0));
}

double overall_efficiency(const BlockModel& block, double pressure_ratio) noexcept {
    const double from_peak = std::log(std::max(pressure_ratio, 1e-3) / block.overall_peak_at);
    return std::max(0.10, block.overall_peak * (1.0 - block.overall_curvature * from_peak * from_peak));
}

CycleState cycle_at(const BlockModel& block, const refrigerant::Properties& refrigerant, double evaporating_c,
                    double condensing_c) noexcept {
    CycleState out;
    const double p_e = refrigerant.saturation_pressure_pa(evaporating_c);
    const double p_c = refrigerant.saturation_pressure_pa(condensing_c);
    const auto suction = refrigerant.vapour(evaporating_c, block.superheat_k);
    const auto warmer = refrigerant.vapour(evaporating_c, block.superheat_k + 2.0);
    const double liquid_c = std::max(refrigerant.min_c(), condensing_c - block.subcooling_k);
    out.pressure_ratio = p_c / p_e;
    double work_j_kg = 0.0;
    if (block.compressor) {
        const Compressed by_data = compressed_by_data(block, refrigerant, evaporating_c, condensing_c);
        out.mass_flow_kg_s = by_data.mass_flow_kg_s;
        out.work_w = by_data.work_w;
        work_j_kg = by_data.work_w / by_data.mass_flow_kg_s;
    } else {
        const double swept_m3_s = block.displacement_cm3 * 1e-6 * block.speed_rpm / 60.0;
        out.mass_flow_kg_s = swept_m3_s * volumetric_efficiency(block, out.pressure_ratio) * suction.density_kg_m3;
        const auto ideal = refrigerant.isentropic_outlet(suction.entropy_j_kgk, condensing_c);
        work_j_kg = (ideal.enthalpy_j_kg - suction.enthalpy_j_kg) / overall_efficiency(block, out.pressure_ratio);
        out.work_w = out.mass_flow_kg_s * work_j_kg;
    }
    out.evaporator_w = out.mass_flow_kg_s * (suction.enthalpy_j_kg - refrigerant.liquid_enthalpy_j_kg(liquid_c));
    const double discharge_j_kg = suction.enthalpy_j_kg + (1.0 - block.shell_loss) * work_j_kg;
    out.discharge_c = refrigerant.vapour_at_enthalpy(discharge_j_kg, condensing_c).temperature_c;
    out.suction_rate_w_k = out.mass_flow_kg_s * (warmer.enthalpy_j_kg - suction.enthalpy_j_kg) / 2.0;
    return out;
}

std::vector<Problem> problems_of(const BlockModel& block, const refrigerant::Properties& refrigerant) {
    std::vector<Problem> problems;
    const auto check = [&](const char* field, double value, double low, double high) {
        if (value >= low && value <= high) return;
        problems.push_back({"block \"" + block.name + "\"." + field,
                            "the value " + std::to_string(value) + " lies outside " + std::to_string(low) + " to " +
                                std::to_string(high),
                            "Correct the equipment file"});
    };
    if (!block.compressor) {
        check("displacement_cm3", block.displacement_cm3, 0.5, 200.0);
        check("speed_rpm", block.speed_rpm, 500.0, 12000.0);
        check("volumetric_at_unity", block.volumetric_at_unity, 0.5, 1.0);
        check("volumetric_slope", block.volumetric_slope, 0.0, 0.1);
        check("overall_peak", block.overall_peak, 0.2, 0.8);
        check("overall_peak_at", block.overall_peak_at, 1.5, 6.0);
        check("overall_curvature", block.overall_curvature, 0.0, 0.5);
    }
    check("superheat_k", block.superheat_k, 1.0, 20.0);
    check("subcooling_k", block.subcooling_k, 0.0, 15.0);
    check("shell_loss", block.shell_loss, 0.0, 0.3);
    check("least_lift_k", block.least_lift_k, 5.0, 20.0);
    check("evaporating_min_c", block.evaporating_min_c, refrigerant.min_c() + 2.0, 0.0);
    check("evaporating_max_c", block.evaporating_max_c, 5.0, 35.0);
    check("condensing_max_c", block.condensing_max_c, 45.0, refrigerant.max_c() - 2.0);
    check("discharge_max_c", block.discharge_max_c, 80.0, refrigerant.vapour_max_c() - 5.0);
    check("pressure_ratio_max", block.pressure_ratio_max, 3.0, 12.0);
    check("condenser_w_k", block.condenser_w_k, 20.0, 2000.0);
    check("condenser_zone", block.condenser_zone, 0.1, 1.0);
    check("condenser_glide_k", block.condenser_glide_k, 0.0, 15.0);
    check("min_run_s", block.min_run_s, 0.0, 7200.0);
    check("min_rest_s", block.min_rest_s, 0.0, 7200.0);
    check("standby_w", block.standby_w, 0.0, 200.0);
    // Asks the tables: only once the limits lie within them.
    if (problems.empty()) problems = problems_of_data(block, refrigerant);
    return problems;
}

namespace {

constexpr double grid_step_k = 2.5;
// Below this no condenser sits: the coldest water is near 0 deg C and the refrigerant is warmer than the water.
constexpr double coldest_condenser_c = -5.0;

/// Slopes along a line of nodes, per step; fourth-order inside, second-order at the ends.
template <class Get, class Set>
void line_slopes(std::size_t count, Get get, Set set) {
    for (std::size_t i = 0; i < count; ++i) {
        if (i == 0)
            set(i, -1.5 * get(0) + 2.0 * get(1) - 0.5 * get(2));
        else if (i + 1 == count)
            set(i, 1.5 * get(i) - 2.0 * get(i - 1) + 0.5 * get(i - 2));
        else if (i == 1 || i + 2 == count)
            set(i, 0.5 * (get(i + 1) - get(i - 1)));
        else
            set(i, (get(i - 2) - 8.0 * get(i - 1) + 8.0 * get(i + 1) - get(i + 2)) / 12.0);
    }
}

struct Corner {
    double f, x, y, xy;
};

/// Polynomial of a cell from its corners: Hermite in both directions.
std::array<double, 16> patch_of(const Corner& a00, const Corner& a01, const Corner& a10, const Corner& a11) {
    // Rows of M turn (f0, f1, d0, d1) into the coefficients of 1, t, t^2, t^3.
    constexpr double m[4][4] = {{1, 0, 0, 0}, {0, 0, 1, 0}, {-3, 3, -2, -1}, {2, -2, 1, 1}};
    const double f[4][4] = {{a00.f, a01.f, a00.y, a01.y},
                            {a10.f, a11.f, a10.y, a11.y},
                            {a00.x, a01.x, a00.xy, a01.xy},
                            {a10.x, a11.x, a10.xy, a11.xy}};
    std::array<double, 16> out{};
    for (std::size_t i = 0; i < 4; ++i)
        for (std::size_t j = 0; j < 4; ++j) {
            double sum = 0.0;
            for (std::size_t k = 0; k < 4; ++k)
                for (std::size_t l = 0; l < 4; ++l)
                    sum += m[i][k] * f[k][l] * m[j][l];
            out[4 * i + j] = sum;
        }
    return out;
}

std::vector<std::array<double, 16>> patches_of(std::size_t rows, std::size_t columns, const std::vector<double>& f) {
    std::vector<Corner> nodes(rows * columns);
    for (std::size_t i = 0; i < nodes.size(); ++i)
        nodes[i].f = f[i];
    for (std::size_t r = 0; r < rows; ++r)
        line_slopes(
            columns, [&](std::size_t c) { return nodes[r * columns + c].f; },
            [&](std::size_t c, double d) { nodes[r * columns + c].y = d; });
    for (std::size_t c = 0; c < columns; ++c) {
        line_slopes(
            rows, [&](std::size_t r) { return nodes[r * columns + c].f; },
            [&](std::size_t r, double d) { nodes[r * columns + c].x = d; });
        line_slopes(
            rows, [&](std::size_t r) { return nodes[r * columns + c].y; },
            [&](std::size_t r, double d) { nodes[r * columns + c].xy = d; });
    }
    std::vector<std::array<double, 16>> out;
    out.reserve((rows - 1) * (columns - 1));
    for (std::size_t r = 0; r + 1 < rows; ++r)
        for (std::size_t c = 0; c + 1 < columns; ++c) {
            const std::size_t i = r * columns + c;
            out.push_back(patch_of(nodes[i], nodes[i + 1], nodes[i + columns], nodes[i + columns + 1]));
        }
    return out;
}

}  // namespace

CycleMap::CycleMap(const BlockModel& block, const refrigerant::Properties& refrigerant) {
    te_first_ = block.evaporating_min_c;
    te_cells_ = static_cast<std::size_t>(
        std::max(4.0, std::ceil((block.evaporating_max_c - block.evaporating_min_c) / grid_step_k)));
    const double te_step = (block.evaporating_max_c - block.evaporating_min_c) / static_cast<double>(te_cells_);
    te_per_step_ = 1.0 / te_step;
    tc_first_ = coldest_condenser_c;
    tc_last_ = refrigerant.max_c();
    tc_cells_ = static_cast<std::size_t>(std::ceil((tc_last_ - tc_first_) / grid_step_k));
    const double tc_step = (tc_last_ - tc_first_) / static_cast<double>(tc_cells_);
    tc_per_step_ = 1.0 / tc_step;
    te_last_cell_ = static_cast<double>(te_cells_ - 1);
    tc_last_cell_ = static_cast<double>(tc_cells_ - 1);
    const std::size_t rows = te_cells_ + 1;
    const std::size_t columns = tc_cells_ + 1;
    std::vector<double> evaporator(rows * columns);
    std::vector<double> work(rows * columns);
    std::vector<double> discharge(rows * columns);
    std::vector<double> rate(rows * columns);
    for (std::size_t r = 0; r < rows; ++r)
        for (std::size_t c = 0; c < columns; ++c) {
            const double te = te_first_ + te_step * static_cast<double>(r);
            const double tc = std::min(tc_last_, tc_first_ + tc_step * static_cast<double>(c));
            const CycleState state = cycle_at(block, refrigerant, te, tc);
            evaporator[r * columns + c] = state.evaporator_w;
            work[r * columns + c] = state.work_w;
            discharge[r * columns + c] = state.discharge_c;
            rate[r * columns + c] = state.suction_rate_w_k;
        }
    const auto evaporator_patches = patches_of(rows, columns, evaporator);
    const auto work_patches = patches_of(rows, columns, work);
    cells_.resize(evaporator_patches.size());
    for (std::size_t i = 0; i < cells_.size(); ++i)
        for (std::size_t k = 0; k < 16; ++k)
            cells_[i][k] = Pair{evaporator_patches[i][k], work_patches[i][k]};
    discharge_ = patches_of(rows, columns, discharge);
    suction_rate_ = patches_of(rows, columns, rate);
}

double CycleMap::value(const Patch& p, double x, double y) noexcept {
    double sum = 0.0;
    for (std::size_t i = 4; i-- > 0;)
        sum = sum * x + (p[4 * i] + y * (p[4 * i + 1] + y * (p[4 * i + 2] + y * p[4 * i + 3])));
    return sum;
}

double CycleMap::discharge_c(double evaporating_c, double condensing_c) const noexcept {
    const Place at = place(evaporating_c, condensing_c);
    return value(discharge_[at.cell], at.x, at.y);
}

double CycleMap::suction_rate_w_k(double evaporating_c, double condensing_c) const noexcept {
    const Place at = place(evaporating_c, condensing_c);
    return value(suction_rate_[at.cell], at.x, at.y);
}

}  // namespace wg::heatpump
