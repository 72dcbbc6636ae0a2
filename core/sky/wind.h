#pragma once
// Wind at the height of a plate from the wind at a station's mast.

namespace wg::sky {

/// Roughness of the open grass at a weather station, m (WMO Guide to Instruments, No. 8, ch. 5: class 'open').
inline constexpr double station_roughness_m = 0.03;
/// Height above which the ground's roughness is no longer felt, m (Wieringa, Boundary-Layer Meteorology 10, 1976).
inline constexpr double blending_height_m = 60.0;

/// Factor on the wind at 10 m in the same terrain: ln(z/z0)/ln(10/z0). `roughness_m` 0.0002..2. Heights under twice the
/// roughness, where the profile has no meaning, take the value there; heights over 60 m the value at 60 m.
[[nodiscard]] double wind_factor_log(double height_m, double roughness_m) noexcept;

/// The same by a power law, (z/10)^exponent. `height_m` over 0; exponent 0.1..0.4.
[[nodiscard]] double wind_factor_power(double height_m, double exponent) noexcept;

/// Factor from a station's mast at 10 m in its own open terrain to `height_m` in another terrain, by the wind they
/// share at the blending height.
[[nodiscard]] double wind_factor_other_terrain(double height_m, double roughness_m,
                                               double mast_roughness_m = station_roughness_m) noexcept;

}  // namespace wg::sky
