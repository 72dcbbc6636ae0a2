#pragma once
// Brightness coefficients of Perez, Ineichen, Seals, Michalsky and Stewart, Solar Energy 44(5), 1990, table 6 (all
// sites composite).

namespace wg::sky {

struct PerezBrightness {
    int bin = 1;      ///< clearness bin 1..8
    double f1 = 0.0;  ///< circumsolar, not below 0
    double f2 = 0.0;  ///< horizon, signed
};

/// `diffuse_w_m2` over 0; `apparent_zenith_deg` 0..90.
[[nodiscard]] PerezBrightness perez_brightness(double beam_normal_w_m2, double diffuse_w_m2,
                                               double extraterrestrial_normal_w_m2, double apparent_zenith_deg,
                                               double relative_air_mass) noexcept;

/// cos 85 deg: floor of the cosine of zenith in the model's circumsolar term.
inline constexpr double perez_cos_floor = 0.087155742747658174;
/// cos 89 deg: the same in Hay and Davies, who leave the horizon open; chosen as in common implementations.
inline constexpr double hay_davies_cos_floor = 0.01745;

}  // namespace wg::sky
