#pragma once
// Long-wave sky temperature for sources without long-wave.

#include <vector>

namespace wg::sky {

/// Emissivity of a cloudless sky: Berdahl and Martin, Solar Energy 32, 1984 (Duffie and Beckman eq. 3.9.2), with the
/// correction for station pressure of Martin and Berdahl, Solar Energy 33, 1984. `hour_of_day` 0..24 from midnight.
/// Fitted to dew points of about -20..30 deg C.
[[nodiscard]] double clear_sky_emissivity(double dew_point_c, double hour_of_day, double pressure_pa) noexcept;

/// Weight of observed opaque cloud: Martin and Berdahl 1984, exp(-base/8.2 km) for a cloud base of 1.8 km, the black
/// underside of low and middle cloud.
inline constexpr double observed_cloud_weight = 0.80;
/// Weight of cover worked out from light: Crawford and Duchon, J. Applied Meteorology 38, 1999.
inline constexpr double light_cloud_weight = 1.0;

/// Sky temperature, K, with clouds: emissivity e + (1 - e) * cover * cloud_weight. `cover` 0..1.
[[nodiscard]] double sky_temperature_k(double air_c, double clear_emissivity, double cover,
                                       double cloud_weight) noexcept;

/// Net long-wave that one face of a plate gains, W/m2 (negative: loses): emittance times sigma times F Ts^4 + (1 - F)
/// Tg^4 - Tp^4, with the view of the sky F = `sky_view` (1 + cos tilt)/2 and all that is not sky at the ground's
/// temperature, grey surfaces and a sky evenly cold over its dome (Duffie and Beckman, Solar Engineering of Thermal
/// Processes, section 3.9). A real sky is warmer near its edge: a wall gains up to some 10 W/m2 more than this.
/// Temperatures in K over 0, `emittance` and `sky_view` (the share of the open sky left by obstacles) 0..1, tilt
/// 0..180. The balance of a collector plate in core/heatpump uses the same sum with the ground at air temperature.
[[nodiscard]] double net_long_wave_w_m2(double plate_k, double emittance, double tilt_deg, double sky_k,
                                        double ground_k, double sky_view = 1.0) noexcept;

/// Effective cloud cover as the share of clear-sky light that is lacking, 1 - global/clear (Crawford and Duchon 1999),
/// with Haurwitz' clear sky. Hours with the sun under 10 deg are filled by straight lines between the daylight hours
/// around them. `sun_up` is the sine of the sun's elevation. A stretch of more than 36 h without such hours counts as
/// half covered.
[[nodiscard]] std::vector<double> cover_from_light(const std::vector<double>& global_w_m2,
                                                   const std::vector<double>& sun_up);

}  // namespace wg::sky
