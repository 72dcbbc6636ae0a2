#pragma once
// Tables 7.1 to 7.6 of EN 1991-1-4:2005, pressure and force coefficients. Duo-pitch and flat roofs as published;
// mono-pitch and hip roofs, walls and canopies from memory. Suction is what the table gives as negative (0 where it
// gives none), pressure as positive. Values between pitches run straight, suction and pressure each for itself, so
// signs never mix.

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
/// Table 7.5, hip roofs: zones F G H I J K L M N, pitch 5..75.
[[nodiscard]] Coefficient hip(char zone, double pitch_deg);
/// Table 7.2: zones F G H I; sharp eaves, or a parapet by its height over the roof's, straight between the rows.
[[nodiscard]] Coefficient flat(char zone, double parapet_over_height = 0.0);
/// Table 7.1: zones A to E; D and E by the building's height over its depth, straight between the rows.
[[nodiscard]] Coefficient wall(char zone, double height_over_depth = 1.0);
/// Table 7.6, canopies of one slope: greatest and least force coefficient, pitch 0..30; the least of an open canopy and
/// of one blocked beneath, since nobody knows what will stand there.
struct CanopyForce {
    double down = 0.0;  ///< 0 or more
    double up = 0.0;    ///< 0 or less
};
[[nodiscard]] CanopyForce canopy(double pitch_deg);

}  // namespace wg::fixing::tables
