#pragma once
// A weather year at another height than the one it was taken at: what a roof up the hill from the station needs.

#include <string>

#include "core/quantity/result.h"
#include "core/weather/year.h"

namespace wg::weather {

/// Fall of air temperature with height in the standard atmosphere (ISO 2533:1975). Real slopes have less in winter, and
/// in a valley's inversion the sign turns.
inline constexpr double standard_lapse_k_per_m = 0.0065;
/// Above this difference of height a caution goes with the result (common practice, no published source).
inline constexpr double caution_height_m = 400.0;

/// Station pressure moved up or down by `higher_m` (negative: down) in air of `air_c` at the station, by the barometric
/// formula of a layer with the standard lapse (ISO 2533). Keeps to -450..6000 m.
[[nodiscard]] double pressure_moved_pa(double pressure_pa, double air_c, double higher_m) noexcept;

struct MovedYear {
    Year year;
    double higher_m = 0.0;  ///< new height less the year's
    std::string caution;    ///< empty when there is nothing to beware of
};

/// The year at `altitude_m` (-450..6000, else a problem): air by the standard lapse, dew point at the same relative
/// humidity, pressure by the barometric formula, long-wave from the sky with the fourth power of the air's absolute
/// temperature. Light, wind and cloud stay as they are. A remark says what was changed; less than a metre changes
/// nothing.
[[nodiscard]] Result<MovedYear> at_altitude(const Year& year, double altitude_m);

}  // namespace wg::weather
