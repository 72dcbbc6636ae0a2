#pragma once
// The parts of a made-up year. Inside this room only; `synthesise` in climate.h puts them together.

#include <vector>

#include "core/quantity/result.h"
#include "core/sun/year.h"
#include "core/weather/climate.h"
#include "core/weather/random.h"

namespace wg::weather::detail {

/// Fills global, beam and diffuse; gives each day's clearness relative to its month's mean.
[[nodiscard]] Result<std::vector<double>> make_light(const Climate& climate, const sun::YearSun& sun, Random& random,
                                                     Year& year);
/// Fills air and dew point. `clearness` as from make_light.
void make_air(const Climate& climate, const std::vector<double>& clearness, Random& random, Year& year);
/// Fills wind and pressure.
void make_wind_and_pressure(const Climate& climate, Random& random, Year& year);

/// Value at an hour of a series given for the middle of each day, joined by straight lines round the year.
[[nodiscard]] double between_days(const std::vector<double>& daily, int hour);

}  // namespace wg::weather::detail
