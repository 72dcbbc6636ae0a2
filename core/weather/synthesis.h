#pragma once
// The parts of a made-up year. Inside this room only; `synthesise` in climate.h puts them together.

#include <array>
#include <vector>

#include "core/quantity/result.h"
#include "core/sun/year.h"
#include "core/weather/climate.h"
#include "core/weather/random.h"

namespace wg::weather::detail {

/// What `synthesise` refuses before it makes anything: figures outside climate_range.
[[nodiscard]] std::vector<Problem> problems_of(const Climate& climate);
/// `synthesise` for callers that have checked the climate and keep its sun: position of `climate`, minute 30,
/// sun::weather_sun_year.
[[nodiscard]] Result<Year> synthesise_with(const Climate& climate, const sun::YearSun& sun);

/// Fills global, beam and diffuse; gives each day's clearness relative to its month's mean.
[[nodiscard]] Result<std::vector<double>> make_light(const Climate& climate, const sun::YearSun& sun, Random& random,
                                                     Year& year);
/// The largest monthly means that make_light takes: a share of what cloudless months in very clean air give.
[[nodiscard]] std::array<double, 12> most_global_kwh_m2_day(const Climate& climate, const sun::YearSun& sun);

/// How daily clearness scatters about a month's mean (over 0 to 0.8) in the distribution that make_light draws from.
struct DaySpread {
    double deviation;    ///< standard
    double persistence;  ///< correlation of one day with the next
};
[[nodiscard]] DaySpread day_spread(double mean_clearness);

/// Fills air and dew point. `clearness` as from make_light.
void make_air(const Climate& climate, const std::vector<double>& clearness, Random& random, Year& year);
/// Fills wind and pressure.
void make_wind_and_pressure(const Climate& climate, Random& random, Year& year);

/// Value at an hour of a series given for the middle of each day, joined by straight lines round the year.
[[nodiscard]] double between_days(const std::vector<double>& daily, int hour);

}  // namespace wg::weather::detail
