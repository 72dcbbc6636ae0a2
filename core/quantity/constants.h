#pragma once
// Physical constants and the few conversions that every room needs.

#include <numbers>

namespace wg {

inline constexpr double stefan_boltzmann_w_m2k4 = 5.670374419e-8;  ///< CODATA 2018, exact
inline constexpr double gravity_m_s2 = 9.80665;                    ///< standard gravity, ISO 80000-3
inline constexpr double kelvin_offset = 273.15;                    ///< ITS-90
inline constexpr double standard_pressure_pa = 101325.0;
inline constexpr double water_specific_heat_j_kgk = 4180.0;  ///< 10-60 deg C mean, within 0.1 %
inline constexpr double water_density_kg_m3 = 1000.0;        ///< as litres are counted in EU 812/2013
inline constexpr double joule_per_kwh = 3.6e6;

inline constexpr double pi = std::numbers::pi;
[[nodiscard]] constexpr double radians(double angle_deg) noexcept {
    return angle_deg * (pi / 180.0);
}
[[nodiscard]] constexpr double degrees(double angle_rad) noexcept {
    return angle_rad * (180.0 / pi);
}
[[nodiscard]] constexpr double kelvin(double celsius) noexcept {
    return celsius + kelvin_offset;
}
[[nodiscard]] constexpr double celsius(double kelvins) noexcept {
    return kelvins - kelvin_offset;
}

}  // namespace wg
