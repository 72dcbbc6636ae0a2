#pragma once
// Water vapour in air by the Magnus formula over water (WMO Guide to Instruments, No. 8, annex 4.B), -45..60 deg C.

namespace wg::weather {

[[nodiscard]] double saturation_pressure_pa(double air_c) noexcept;
/// Inverse of saturation_pressure_pa. `vapour_pa` over 0.
[[nodiscard]] double dew_point_of_vapour_c(double vapour_pa) noexcept;
/// `relative_humidity` 0..1; below 0.001 it is taken as 0.001, where dew point loses its meaning.
[[nodiscard]] double dew_point_c(double air_c, double relative_humidity) noexcept;
[[nodiscard]] double relative_humidity(double air_c, double dew_point_c) noexcept;

}  // namespace wg::weather
