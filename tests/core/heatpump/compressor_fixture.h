#pragma once
// Blocks with displacement and efficiencies turned into blocks with ten coefficients, by least squares over a range.

#include <array>
#include <cmath>
#include <functional>
#include <vector>

#include "core/heatpump/compressor.h"
#include "tests/core/heatpump/fixture.h"

namespace wg::heatpump_test {

inline std::array<double, 10> terms(double s, double d) {
    return {1.0, s, d, s * s, s * d, d * d, s * s * s, s * s * d, s * d * d, d * d * d};
}

/// Least squares in shares of the value: normal equations with pivots, temperatures in units of 50 K.
inline TenCoefficients fitted(const std::vector<CompressorState>& states, const std::vector<double>& values) {
    constexpr double unit_k = 50.0;
    std::array<std::array<double, 11>, 10> m{};
    for (std::size_t n = 0; n < states.size(); ++n) {
        auto row = terms(states[n].evaporating_c / unit_k, states[n].condensing_c / unit_k);
        for (double& x : row)
            x /= values[n];
        for (std::size_t i = 0; i < 10; ++i) {
            for (std::size_t j = 0; j < 10; ++j)
                m[i][j] += row[i] * row[j];
            m[i][10] += row[i];
        }
    }
    for (std::size_t i = 0; i < 10; ++i) {
        std::size_t pivot = i;
        for (std::size_t r = i + 1; r < 10; ++r)
            if (std::abs(m[r][i]) > std::abs(m[pivot][i])) pivot = r;
        std::swap(m[i], m[pivot]);
        for (std::size_t r = 0; r < 10; ++r) {
            if (r == i) continue;
            const double factor = m[r][i] / m[i][i];
            for (std::size_t k = i; k < 11; ++k)
                m[r][k] -= factor * m[i][k];
        }
    }
    constexpr std::array<int, 10> degree = {0, 1, 1, 2, 2, 2, 3, 3, 3, 3};
    TenCoefficients out{};
    for (std::size_t i = 0; i < 10; ++i)
        out[i] = m[i][10] / m[i][i] / std::pow(unit_k, degree[i]);
    return out;
}

/// The same compressor stated by ten coefficients over the range of `like` and at its rating conditions.
inline BlockModel by_data(const BlockModel& block, const refrigerant::Properties& fluid, CompressorData like) {
    std::vector<CompressorState> states;
    std::vector<double> output;
    std::vector<double> power;
    for (double te = like.evaporating_min_c; te <= like.evaporating_max_c + 1e-9; te += 2.5)
        for (double tc = like.condensing_min_c; tc <= like.condensing_max_c + 1e-9; tc += 2.5) {
            if (!like.covers(te, tc) || tc < te + block.least_lift_k) continue;
            BlockModel rated = block;
            rated.superheat_k = like.rated_superheat_k(te);
            rated.subcooling_k = like.subcooling_k;
            const auto at = heatpump::cycle_at(rated, fluid, te, tc);
            states.push_back({te, tc});
            output.push_back(like.output == CompressorOutput::capacity_w ? at.evaporator_w
                                                                         : 3600.0 * at.mass_flow_kg_s);
            power.push_back(at.work_w);
        }
    like.output_coefficients = fitted(states, output);
    like.power_w = fitted(states, power);
    BlockModel out = block;
    out.compressor = like;
    return out;
}

}  // namespace wg::heatpump_test
