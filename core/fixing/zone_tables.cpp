#include "core/fixing/zone_tables.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace wg::fixing::tables {
namespace {

constexpr std::array<double, 5> pitches_deg{5.0, 15.0, 30.0, 45.0, 60.0};
using Rows = std::array<Coefficient, 5>;  ///< by pitch

Coefficient by_pitch(const Rows& rows, double pitch_deg) {
    if (pitch_deg <= pitches_deg.front()) return rows.front();
    for (std::size_t i = 1; i < rows.size(); ++i) {
        if (pitch_deg > pitches_deg[i]) continue;
        const double t = (pitch_deg - pitches_deg[i - 1]) / (pitches_deg[i] - pitches_deg[i - 1]);
        const auto between = [t](double a, double b) { return a + t * (b - a); };
        const Coefficient &a = rows[i - 1], &b = rows[i];
        return {between(a.suction_10, b.suction_10), between(a.suction_1, b.suction_1),
                between(a.pressure_10, b.pressure_10), between(a.pressure_1, b.pressure_1)};
    }
    return rows.back();
}

// Columns: suction for 10 m2, for 1 m2, pressure for 10 m2, for 1 m2.
constexpr Rows across_f{
    {{-1.7, -2.5, 0, 0}, {-0.9, -2.0, 0.2, 0.2}, {-0.5, -1.5, 0.7, 0.7}, {0, 0, 0.7, 0.7}, {0, 0, 0.7, 0.7}}};
constexpr Rows across_g{
    {{-1.2, -2.0, 0, 0}, {-0.8, -1.5, 0.2, 0.2}, {-0.5, -1.5, 0.7, 0.7}, {0, 0, 0.7, 0.7}, {0, 0, 0.7, 0.7}}};
constexpr Rows across_h{
    {{-0.6, -1.2, 0, 0}, {-0.3, -0.3, 0.2, 0.2}, {-0.2, -0.2, 0.4, 0.4}, {0, 0, 0.6, 0.6}, {0, 0, 0.7, 0.7}}};
constexpr Rows across_i{
    {{-0.6, -0.6, 0, 0}, {-0.4, -0.4, 0, 0}, {-0.4, -0.4, 0, 0}, {-0.2, -0.2, 0, 0}, {-0.2, -0.2, 0, 0}}};
constexpr Rows across_j{
    {{-0.6, -0.6, 0.2, 0.2}, {-1.0, -1.5, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.3, -0.3, 0, 0}, {-0.3, -0.3, 0, 0}}};

constexpr Rows along_f{
    {{-1.6, -2.2, 0, 0}, {-1.3, -2.0, 0, 0}, {-1.1, -1.5, 0, 0}, {-1.1, -1.5, 0, 0}, {-1.1, -1.5, 0, 0}}};
constexpr Rows along_g{
    {{-1.3, -2.0, 0, 0}, {-1.3, -2.0, 0, 0}, {-1.4, -2.0, 0, 0}, {-1.4, -2.0, 0, 0}, {-1.2, -2.0, 0, 0}}};
constexpr Rows along_h{
    {{-0.7, -1.2, 0, 0}, {-0.6, -1.2, 0, 0}, {-0.8, -1.2, 0, 0}, {-0.9, -1.2, 0, 0}, {-0.8, -1.0, 0, 0}}};
constexpr Rows along_i{
    {{-0.6, -0.6, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.5, -0.5, 0, 0}}};

constexpr Rows high_f{
    {{-2.3, -2.5, 0, 0}, {-2.5, -2.8, 0, 0}, {-1.1, -2.3, 0, 0}, {-0.6, -1.3, 0, 0}, {-0.5, -1.0, 0, 0}}};
constexpr Rows high_g{
    {{-1.3, -2.0, 0, 0}, {-1.3, -2.0, 0, 0}, {-0.8, -1.5, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.5, -0.5, 0, 0}}};
constexpr Rows high_h{
    {{-0.8, -1.2, 0, 0}, {-0.9, -1.2, 0, 0}, {-0.8, -0.8, 0, 0}, {-0.7, -0.7, 0, 0}, {-0.5, -0.5, 0, 0}}};

constexpr Rows side_up{
    {{-2.1, -2.6, 0, 0}, {-2.4, -2.9, 0, 0}, {-2.1, -2.9, 0, 0}, {-1.5, -2.4, 0, 0}, {-1.2, -2.0, 0, 0}}};
constexpr Rows side_low{
    {{-2.1, -2.4, 0, 0}, {-1.6, -2.4, 0, 0}, {-1.3, -2.0, 0, 0}, {-1.3, -2.0, 0, 0}, {-1.2, -2.0, 0, 0}}};
constexpr Rows side_g{
    {{-1.8, -2.0, 0, 0}, {-1.9, -2.5, 0, 0}, {-1.5, -2.0, 0, 0}, {-1.4, -2.0, 0, 0}, {-1.2, -2.0, 0, 0}}};
constexpr Rows side_h{
    {{-0.6, -1.2, 0, 0}, {-0.8, -1.2, 0, 0}, {-1.0, -1.3, 0, 0}, {-1.0, -1.3, 0, 0}, {-1.0, -1.3, 0, 0}}};
constexpr Rows side_i{
    {{-0.5, -0.5, 0, 0}, {-0.7, -1.2, 0, 0}, {-0.8, -1.2, 0, 0}, {-0.9, -1.2, 0, 0}, {-0.7, -1.2, 0, 0}}};

// Table 7.5, from memory.
constexpr Rows hip_f{
    {{-1.7, -2.5, 0, 0}, {-0.9, -2.0, 0.2, 0.2}, {-0.5, -1.5, 0.5, 0.5}, {0, 0, 0.7, 0.7}, {0, 0, 0.7, 0.7}}};
constexpr Rows hip_g{
    {{-1.2, -2.0, 0, 0}, {-0.8, -1.5, 0.2, 0.2}, {-0.5, -1.5, 0.7, 0.7}, {0, 0, 0.7, 0.7}, {0, 0, 0.7, 0.7}}};
constexpr Rows hip_h{
    {{-0.6, -1.2, 0, 0}, {-0.3, -0.3, 0.2, 0.2}, {-0.2, -0.2, 0.4, 0.4}, {0, 0, 0.6, 0.6}, {0, 0, 0.7, 0.7}}};
constexpr Rows hip_i{
    {{-0.3, -0.3, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.4, -0.4, 0, 0}, {-0.3, -0.3, 0, 0}, {-0.3, -0.3, 0, 0}}};
constexpr Rows hip_j{
    {{-0.6, -0.6, 0, 0}, {-1.0, -1.5, 0, 0}, {-0.7, -1.2, 0, 0}, {-0.6, -0.6, 0, 0}, {-0.6, -0.6, 0, 0}}};
constexpr Rows hip_k{
    {{-0.6, -0.6, 0, 0}, {-1.2, -2.0, 0, 0}, {-0.5, -0.5, 0, 0}, {-0.3, -0.3, 0, 0}, {-0.3, -0.3, 0, 0}}};
constexpr Rows hip_l{
    {{-1.2, -2.0, 0, 0}, {-1.4, -2.0, 0, 0}, {-1.4, -2.0, 0, 0}, {-1.3, -2.0, 0, 0}, {-1.2, -2.0, 0, 0}}};
constexpr Rows hip_m{
    {{-0.6, -1.2, 0, 0}, {-0.6, -1.2, 0, 0}, {-0.8, -1.2, 0, 0}, {-0.8, -1.2, 0, 0}, {-0.4, -0.4, 0, 0}}};
constexpr Rows hip_n{
    {{-0.4, -0.4, 0, 0}, {-0.3, -0.3, 0, 0}, {-0.2, -0.2, 0, 0}, {-0.2, -0.2, 0, 0}, {-0.2, -0.2, 0, 0}}};

/// Straight between entries, held beyond the ends.
template <std::size_t n>
double between(const std::array<double, n>& at, const std::array<double, n>& value, double x) {
    if (x <= at.front()) return value.front();
    for (std::size_t i = 1; i < n; ++i) {
        if (x > at[i]) continue;
        return value[i - 1] + (value[i] - value[i - 1]) * (x - at[i - 1]) / (at[i] - at[i - 1]);
    }
    return value.back();
}

}  // namespace

Coefficient hip(char zone, double pitch_deg) {
    const auto rows = [zone]() -> const Rows& {
        switch (zone) {
            case 'F': return hip_f;
            case 'G': return hip_g;
            case 'H': return hip_h;
            case 'I': return hip_i;
            case 'J': return hip_j;
            case 'K': return hip_k;
            case 'L': return hip_l;
            case 'M': return hip_m;
            default: return hip_n;
        }
    };
    Coefficient c = by_pitch(rows(), pitch_deg);
    if (pitch_deg > 60.0 && zone <= 'H')  // row 75 deg: 0.8 in F, G and H
        c.pressure_10 = c.pressure_1 = 0.7 + 0.1 * std::min(1.0, (pitch_deg - 60.0) / 15.0);
    return c;
}

Coefficient duo_across(char zone, double pitch_deg) {
    Coefficient c = by_pitch(zone == 'F'   ? across_f
                             : zone == 'G' ? across_g
                             : zone == 'H' ? across_h
                             : zone == 'I' ? across_i
                                           : across_j,
                             pitch_deg);
    // Row 75 deg: 0.8 in F, G and H.
    if (pitch_deg > 60.0 && zone <= 'H')
        c.pressure_10 = c.pressure_1 = 0.7 + 0.1 * std::min(1.0, (pitch_deg - 60.0) / 15.0);
    return c;
}

Coefficient duo_along(char zone, double pitch_deg) {
    return by_pitch(zone == 'F' ? along_f : zone == 'G' ? along_g : zone == 'H' ? along_h : along_i, pitch_deg);
}

Coefficient mono_high(char zone, double pitch_deg) {
    return by_pitch(zone == 'F' ? high_f : zone == 'G' ? high_g : high_h, pitch_deg);
}

Coefficient mono_across(char zone, double pitch_deg) {
    return by_pitch(zone == 'U'   ? side_up
                    : zone == 'L' ? side_low
                    : zone == 'G' ? side_g
                    : zone == 'H' ? side_h
                                  : side_i,
                    pitch_deg);
}

Coefficient flat(char zone, double parapet) {
    constexpr std::array<double, 4> rows{0.0, 0.025, 0.05, 0.10};  // h_p / h; 0: sharp eaves
    switch (zone) {
        case 'F':
            return {between<4>(rows, {-1.8, -1.6, -1.4, -1.2}, parapet),
                    between<4>(rows, {-2.5, -2.2, -2.0, -1.8}, parapet), 0, 0};
        case 'G':
            return {between<4>(rows, {-1.2, -1.1, -0.9, -0.8}, parapet),
                    between<4>(rows, {-2.0, -1.8, -1.6, -1.4}, parapet), 0, 0};
        case 'H': return {-0.7, -1.2, 0, 0};
        default: return {-0.2, -0.2, 0.2, 0.2};
    }
}

Coefficient wall(char zone, double height_over_depth) {
    constexpr std::array<double, 3> rows{0.25, 1.0, 5.0};  // h / d
    switch (zone) {
        case 'A': return {-1.2, -1.4, 0, 0};
        case 'B': return {-0.8, -1.1, 0, 0};
        case 'C': return {-0.5, -0.5, 0, 0};
        case 'D': return {0, 0, between<3>(rows, {0.7, 0.8, 0.8}, height_over_depth), 1.0};
        default: {
            const double lee = between<3>(rows, {-0.3, -0.5, -0.7}, height_over_depth);
            return {lee, lee, 0, 0};
        }
    }
}

CanopyForce canopy(double pitch_deg) {
    constexpr std::array<double, 7> rows{0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0};
    const double open = between<7>(rows, {-0.5, -0.7, -0.9, -1.1, -1.3, -1.6, -1.8}, pitch_deg);
    const double blocked = between<7>(rows, {-1.3, -1.4, -1.4, -1.4, -1.4, -1.4, -1.4}, pitch_deg);
    return {between<7>(rows, {0.2, 0.4, 0.5, 0.7, 0.8, 1.0, 1.2}, pitch_deg), std::min(open, blocked)};
}

}  // namespace wg::fixing::tables
