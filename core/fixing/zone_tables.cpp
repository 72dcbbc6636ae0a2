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

}  // namespace

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

Coefficient flat(char zone) {
    switch (zone) {
        case 'F': return {-1.8, -2.5, 0, 0};
        case 'G': return {-1.2, -2.0, 0, 0};
        case 'H': return {-0.7, -1.2, 0, 0};
        default: return {-0.2, -0.2, 0.2, 0.2};
    }
}

Coefficient wall(char zone) {
    switch (zone) {
        case 'A': return {-1.2, -1.4, 0, 0};
        case 'B': return {-0.8, -1.1, 0, 0};
        case 'C': return {-0.5, -0.5, 0, 0};
        case 'D': return {0, 0, 0.8, 1.0};
        default: return {-0.5, -0.5, 0, 0};
    }
}

}  // namespace wg::fixing::tables
