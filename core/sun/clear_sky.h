#pragma once
// Light under a cloudless sky.

namespace wg::sun {

/// Global on the horizontal, W/m2: Haurwitz, J. Meteorology 2 and 3, 1945-46, with the exponent 0.059 in common use.
/// Needs no site data; about 5 to 10 % off in very clean or very hazy air. `cos_zenith` of the apparent zenith; zero or
/// less gives 0.
[[nodiscard]] double haurwitz_global_w_m2(double cos_zenith) noexcept;

struct ClearSky {
    double global_w_m2 = 0.0;
    double beam_normal_w_m2 = 0.0;
    double diffuse_w_m2 = 0.0;
};

/// Ineichen and Perez, Solar Energy 73, 2002. `apparent_zenith_deg` 0..90, beyond it darkness;
/// `absolute_air_mass` is the relative one times pressure over 101,325 Pa; `linke_turbidity` 1..10.
[[nodiscard]] ClearSky ineichen_perez(double apparent_zenith_deg, double absolute_air_mass, double linke_turbidity,
                                      double altitude_m, double extraterrestrial_normal_w_m2) noexcept;

}  // namespace wg::sun
