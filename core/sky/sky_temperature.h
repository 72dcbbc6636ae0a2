#pragma once
// Long-wave sky temperature for sources without long-wave.

#include <vector>

namespace wg::sky {

/// Emissivity of a cloudless sky: Berdahl and Martin, Solar Energy 32, 1984 (Duffie and Beckman eq. 3.9.2), with the
/// correction for station pressure of Martin and Berdahl, Solar Energy 33, 1984. `hour_of_day` 0..24 from midnight.
/// Fitted to dew points of about -20..30 deg C.
[[nodiscard]] double clear_sky_emissivity(double dew_point_c, double hour_of_day, double pressure_pa) noexcept;

/// Sky temperature, K, with clouds: emissivity e + (1 - e) * cover * 0.80 (Martin and Berdahl: exp(-base/8.2 km) for a
/// cloud base of 1.8 km, the black underside of low and middle cloud). `cover` 0..1.
[[nodiscard]] double sky_temperature_k(double air_c, double clear_emissivity, double cover) noexcept;

/// Cloud cover from light: global / clear = 1 - 0.75 N^3.4 (Kasten and Czeplak, Solar Energy 24, 1980) turned round, with
/// Haurwitz' clear sky. Hours with the sun under 10 deg are filled between the daylight hours around them.
/// `sun_up` is the sine of the sun's elevation. A day or more without such hours counts as half covered.
[[nodiscard]] std::vector<double> cover_from_light(const std::vector<double>& global_w_m2,
                                                   const std::vector<double>& sun_up);

}  // namespace wg::sky
