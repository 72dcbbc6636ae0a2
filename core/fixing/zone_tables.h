#pragma once
// Tables 7.1 to 7.4 of EN 1991-1-4:2005, external pressure coefficients. Duo-pitch and flat roofs as published;
// mono-pitch roofs and walls from memory. Suction is what the table gives as negative (0 where it gives none), pressure
// as positive. Values between pitches run straight, suction and pressure each for itself, so signs never mix.

namespace wg::fixing::tables {

struct Coefficient {
    double suction_10 = 0.0, suction_1 = 0.0;    ///< for loaded areas of 10 and 1 m2; 0 or less
    double pressure_10 = 0.0, pressure_1 = 0.0;  ///< 0 or more
};

/// Table 7.4a, wind across the ridge (and the low-eave rows of 7.3a): zones F G H I J, pitch 5..75.
[[nodiscard]] Coefficient duo_across(char zone, double pitch_deg);
/// Table 7.4b, wind along the ridge: zones F G H I.
[[nodiscard]] Coefficient duo_along(char zone, double pitch_deg);
/// Table 7.3a, wind on the high eave: zones F G H.
[[nodiscard]] Coefficient mono_high(char zone, double pitch_deg);
/// Table 7.3b, wind across the slope: zones U (Fup), L (Flow), G, H, I.
[[nodiscard]] Coefficient mono_across(char zone, double pitch_deg);
/// Table 7.2, sharp eaves: zones F G H I.
[[nodiscard]] Coefficient flat(char zone);
/// Table 7.1: zones A to E; D and E for h/d of 1, which bounds lower buildings.
[[nodiscard]] Coefficient wall(char zone);

}  // namespace wg::fixing::tables
