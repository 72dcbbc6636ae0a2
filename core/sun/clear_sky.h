#pragma once
// Light under a cloudless sky.

#include <array>
#include <vector>

#include "core/quantity/result.h"
#include "core/sun/year.h"

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

/// Structure of arrays, one value an hour of the year, W/m2: means over the hour, or readings at the input's minute.
struct ClearSkyYear {
    std::vector<double> global_w_m2, beam_normal_w_m2, diffuse_w_m2;
};

/// The Linke turbidity in the middle of hour 0..8759 of a year without 29 February: straight lines between the middles
/// of the months, December joined to January.
[[nodiscard]] double linke_turbidity_at(const std::array<double, 12>& by_month, int hour) noexcept;

/// A year without clouds by Ineichen and Perez, with air mass by Kasten and Young and the standard pressure at the
/// place's height. Refuses a turbidity outside 1..10 and a height outside -430..9000 m. Hours with the sun up for a
/// part have the light of that part's middle times its share.
[[nodiscard]] Result<ClearSkyYear> clear_sky_year(const YearSunInput& place,
                                                  const std::array<double, 12>& linke_turbidity_by_month);
/// The same from a sun that is at hand already: `sun` is of `place`.
[[nodiscard]] Result<ClearSkyYear> clear_sky_year(const YearSunInput& place, const YearSun& sun,
                                                  const std::array<double, 12>& linke_turbidity_by_month);

}  // namespace wg::sun
