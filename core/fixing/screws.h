#pragma once
// Screws in timber beyond plain withdrawal.

namespace wg::fixing {

inline constexpr double root_share = 0.7;           ///< core diameter of a wood screw over its outer one (practice)
inline constexpr double screw_steel_n_mm2 = 500.0;  ///< assumed tensile strength; most wood screws have more

/// Characteristic shear of one screw through a thin steel bracket, N: EN 1995-1-1:2004 8.2.3, equations (8.9) a and b,
/// without the rope effect; effective diameter 1.1 x core (8.7.1), embedment (8.15) without pre-drilling, yield moment
/// (8.14) with screw_steel_n_mm2. Formulas from memory. 0 when a figure is not above 0.
[[nodiscard]] double screw_shear_n(double diameter_mm, double grip_mm, double density_kg_m3);

/// Its parts: embedment (8.15) by the effective diameter, N/mm2, and yield moment (8.14), N mm.
[[nodiscard]] double screw_embedment_n_mm2(double diameter_mm, double density_kg_m3);
[[nodiscard]] double screw_yield_nmm(double diameter_mm);

/// Effective number of screws acting together, n^0.9 (EN 1995-1-1 8.7.2, equation 8.41); used for shear too.
[[nodiscard]] double screws_together(int screws);

}  // namespace wg::fixing
