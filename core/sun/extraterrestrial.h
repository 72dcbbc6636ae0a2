#pragma once
// Irradiance above the atmosphere, and the path of light through the air.

namespace wg::sun {

/// Total solar irradiance at 1 AU, W/m2: 1360.8 +- 0.5 measured (Kopp and Lean, Geophys. Res. Lett. 38, 2011), rounded.
inline constexpr double solar_constant_w_m2 = 1361.0;

/// On a plane facing the sun, from its distance. `distance_au` over 0.9.
[[nodiscard]] constexpr double extraterrestrial_normal_w_m2(double distance_au) noexcept {
    return solar_constant_w_m2 / (distance_au * distance_au);
}

/// Daily sum on the horizontal, J/m2, for a latitude, the day's declination and distance, by the closed integral over
/// the day of a point-like sun without refraction (Duffie and Beckman, Solar Engineering of Thermal Processes,
/// eq. 1.10.3). Polar night gives 0, polar day the whole circle.
[[nodiscard]] double extraterrestrial_day_j_m2(double latitude_deg, double declination_deg,
                                               double normal_w_m2) noexcept;

/// Air mass relative to the zenith at sea level (Kasten and Young, Applied Optics 28, 1989). `apparent_zenith_deg`
/// 0..90; beyond 90 the value at 90 (37.9) is kept, since no light comes from there.
[[nodiscard]] double relative_air_mass(double apparent_zenith_deg) noexcept;

/// Station pressure of the standard atmosphere, Pa (ISO 2533), -400..11,000 m.
[[nodiscard]] double standard_pressure_pa_at(double altitude_m) noexcept;

}  // namespace wg::sun
