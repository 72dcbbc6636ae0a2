#pragma once
// Global light parted into beam and diffuse where a source gives the sum only.

namespace wg::weather {

/// Diffuse share of the hour's global by its clearness index kt (global over extraterrestrial, both horizontal): Erbs,
/// Klein and Duffie, Solar Energy 28, 1982. kt below 0 counts as 0; above 0.8 the share is 0.165.
[[nodiscard]] double diffuse_share_erbs(double clearness) noexcept;

/// Beam that a clean atmosphere lets through, W/m2, mean over an hour with the sun up for `up_share` of it:
/// extraterrestrial times 0.7^(m^0.678), m the relative air mass (Meinel and Meinel, Applied Solar Energy, 1976). 0
/// with the sun down.
[[nodiscard]] double clean_air_beam_w_m2(double cos_zenith, double extraterrestrial_normal_w_m2,
                                         double up_share = 1.0) noexcept;

struct Split {
    double beam_normal_w_m2 = 0.0;
    double diffuse_w_m2 = 0.0;
    double clearness = 0.0;
};

/// The split of one hour. `cos_zenith` of the sun as seen, at the moment that stands for the hour. With the sun at or
/// below the horizon all light is diffuse. A low sun (under about 4 deg) divides a small figure by a smaller one: beam
/// is held to clean_air_beam_w_m2 and the rest counted as diffuse, so that beam * cos_zenith + diffuse equals global in
/// every case. `up_share`, over 0 to 1, is the share of the hour with the sun up.
[[nodiscard]] Split split_erbs(double global_w_m2, double cos_zenith, double extraterrestrial_normal_w_m2,
                               double up_share = 1.0) noexcept;

}  // namespace wg::weather
