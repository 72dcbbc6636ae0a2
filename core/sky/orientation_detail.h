#pragma once
// What one orientation and many share. Inside this room only. East, north and up are a plane's normal.

#include <vector>

#include "core/sky/orientation.h"

namespace wg::sky::detail {

/// What has to be added to the plain sum of an hour's parts where its sky, less the circumsolar light, is negative.
[[nodiscard]] double dark_horizon_correction_w_m2(const DarkHorizon& dark, double east, double north, double up,
                                                  double sin_tilt, double sky_view) noexcept;
/// The same for all hours concerned at this tilt, kWh/m2.
[[nodiscard]] double dark_horizon_kwh_m2(const std::vector<DarkHorizon>& hours, double east, double north, double up,
                                         double sin_tilt, double sky_view) noexcept;
/// Everything but beam and circumsolar light, before that correction.
[[nodiscard]] double diffuse_and_ground_kwh_m2(const DaylightYear& year, double up, double sin_tilt, double albedo,
                                               double sky_view) noexcept;

}  // namespace wg::sky::detail
