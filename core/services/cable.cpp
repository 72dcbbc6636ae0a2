#include "core/services/cable.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace wg::services {
namespace {

constexpr double resistivity_ohm_mm2_m = 0.0225;  ///< copper at working temperature, annex G
constexpr double reactance_ohm_m = 0.00008;

using Row = std::array<double, cable_sections_mm2.size()>;
/// In the order of `CableMethod`.
constexpr std::array<Row, 6> two_loaded_a{{{14.5, 19.5, 26.0, 34.0, 46.0, 61.0},
                                           {14.0, 18.5, 25.0, 32.0, 43.0, 57.0},
                                           {17.5, 24.0, 32.0, 41.0, 57.0, 76.0},
                                           {16.5, 23.0, 30.0, 38.0, 52.0, 69.0},
                                           {19.5, 27.0, 36.0, 46.0, 63.0, 85.0},
                                           {22.0, 30.0, 40.0, 51.0, 70.0, 94.0}}};
constexpr std::array<Row, 6> three_loaded_a{{{13.5, 18.0, 24.0, 31.0, 42.0, 56.0},
                                             {13.0, 17.5, 23.0, 29.0, 39.0, 52.0},
                                             {15.5, 21.0, 28.0, 36.0, 50.0, 68.0},
                                             {15.0, 20.0, 27.0, 34.0, 46.0, 62.0},
                                             {17.5, 24.0, 32.0, 41.0, 57.0, 76.0},
                                             {18.5, 25.0, 34.0, 43.0, 60.0, 80.0}}};

}  // namespace

double ampacity_a(CableMethod method, int phases, double section_mm2) noexcept {
    const auto& table = phases == 3 ? three_loaded_a : two_loaded_a;
    const Row& row = table[static_cast<std::size_t>(method)];
    for (std::size_t i = 0; i < row.size(); ++i)
        if (cable_sections_mm2[i] == section_mm2) return row[i];
    return 0.0;
}

double ambient_factor(double ambient_c) noexcept {
    constexpr double first_c = 10.0, step_k = 5.0;
    constexpr std::array<double, 11> factors{1.22, 1.17, 1.12, 1.06, 1.00, 0.94, 0.87, 0.79, 0.71, 0.61, 0.50};
    const double place = std::max(0.0, (ambient_c - first_c) / step_k);
    const double last = static_cast<double>(factors.size() - 1);
    if (place > last) return 0.0;
    const auto i = std::min(static_cast<std::size_t>(place), factors.size() - 2);
    return factors[i] + (factors[i + 1] - factors[i]) * (place - static_cast<double>(i));
}

double grouping_factor(int circuits) noexcept {
    struct Column {
        int circuits;
        double factor;
    };
    constexpr std::array<Column, 12> columns{{{1, 1.00},
                                              {2, 0.80},
                                              {3, 0.70},
                                              {4, 0.65},
                                              {5, 0.60},
                                              {6, 0.57},
                                              {7, 0.54},
                                              {8, 0.52},
                                              {9, 0.50},
                                              {12, 0.45},
                                              {16, 0.41},
                                              {20, 0.38}}};
    for (const Column& column : columns)
        if (circuits <= column.circuits) return column.factor;
    return columns.back().factor;
}

double voltage_drop_v(int phases, double length_m, double section_mm2, double current_a, double cos_phi) noexcept {
    const double b = phases == 3 ? 1.0 : 2.0;
    const double sin_phi = std::sqrt(std::max(0.0, 1.0 - cos_phi * cos_phi));
    return b * (resistivity_ohm_mm2_m * length_m / section_mm2 * cos_phi + reactance_ohm_m * length_m * sin_phi) *
           current_a;
}

double loop_resistance_ohm(double length_m, double section_mm2) noexcept {
    return 2.0 * resistivity_ohm_mm2_m * length_m / section_mm2;
}

double breaker_at_least_a(double current_a) noexcept {
    constexpr std::array<double, 8> ratings_a{6.0, 10.0, 13.0, 16.0, 20.0, 25.0, 32.0, 40.0};
    for (const double rating : ratings_a)
        if (rating >= current_a) return rating;
    return 0.0;
}

ReleaseRange release_range(char curve) noexcept {
    if (curve == 'B') return {3.0, 5.0};
    if (curve == 'D') return {10.0, 20.0};
    return {5.0, 10.0};
}

double separation_distance_m(double k_i, double k_c, double k_m, double length_m) noexcept {
    return k_i * k_c / k_m * length_m;
}

}  // namespace wg::services
