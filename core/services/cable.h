#pragma once
// Copper cable by IEC 60364-5-52: what it carries as laid, and what it loses.

#include <array>

#include "core/job/house.h"

namespace wg::services {

/// Sections the tables below know, mm2.
inline constexpr std::array<double, 6> cable_sections_mm2{1.5, 2.5, 4.0, 6.0, 10.0, 16.0};

/// Current that PVC-insulated copper carries at 30 deg C, no other circuit beside it, A: IEC 60364-5-52 tables B.52.2
/// (two loaded conductors), B.52.4 (three) and B.52.10 (method E, multi-core). 0 for other sections.
[[nodiscard]] double ampacity_a(CableMethod method, int phases, double section_mm2) noexcept;

/// Factor for the air around PVC cable: table B.52.14, straight between its rows, 10 to 60 deg C; colder counts as 10,
/// hotter carries nothing.
[[nodiscard]] double ambient_factor(double ambient_c) noexcept;
/// Factor for so many circuits bunched, the cable's own counted: table B.52.17, first row. Between columns the next
/// larger number counts; above 20 as 20.
[[nodiscard]] double grouping_factor(int circuits) noexcept;

/// Voltage drop of a copper circuit, V: u = b (rho1 L/S cos + lambda L sin) I with b 2 single phase, 1 three phase,
/// rho1 0.0225 ohm mm2/m, lambda 0.00008 ohm/m (IEC 60364-5-52 annex G). Length one way.
[[nodiscard]] double voltage_drop_v(int phases, double length_m, double section_mm2, double current_a,
                                    double cos_phi) noexcept;
/// Resistance of a fault's way out and back in the cable, warm, ohm; protective conductor of the same section.
[[nodiscard]] double loop_resistance_ohm(double length_m, double section_mm2) noexcept;

/// Smallest of the standard ratings 6, 10, 13, 16, 20, 25, 32, 40 A that is not below; 0 when there is none.
[[nodiscard]] double breaker_at_least_a(double current_a) noexcept;
/// Range of the magnetic release in multiples of the rating (IEC 60898-1, table 7): B 3 to 5, C 5 to 10, D 10 to 20.
/// Other letters count as C.
struct ReleaseRange {
    double holds = 5.0;
    double trips = 10.0;
};
[[nodiscard]] ReleaseRange release_range(char curve) noexcept;

/// Separation distance to a lightning protection system, m: s = k_i k_c/k_m l (IEC 62305-3, 6.3).
[[nodiscard]] double separation_distance_m(double k_i, double k_c, double k_m, double length_m) noexcept;

}  // namespace wg::services
