#pragma once
// Years of weather ready for planning, for a plan's figures as a range over years.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/reference.h"

namespace wg::plan {

using WeatherYears = std::vector<std::shared_ptr<const PreparedWeather>>;

/// Years 1 to `count` (1..weather::most_ensemble_years, about 2.5 MB each) of a climate, in that order, made and
/// prepared on two threads; each year depends on climate and number only, so that the threads change nothing.
[[nodiscard]] Result<WeatherYears> weather_ensemble(const weather::Climate& climate, int count);

/// The same of a built-in climate.
[[nodiscard]] Result<WeatherYears> weather_ensemble(const Reference& reference, const std::string& climate_id,
                                                    int count);

/// Years like one of the user's: made from its monthly means, months brighter than a cloudless one lowered to that. The
/// seed follows from the year's source.
[[nodiscard]] Result<WeatherYears> weather_ensemble(const PreparedWeather& like, int count);

/// `count` further years (1..weather::most_ensemble_years) like the reference's weather, at its height: the reference's
/// own further years first, and more made ones of the built-in climate when its weather is that climate's year, else of
/// the weather's monthly means.
[[nodiscard]] Result<WeatherYears> further_years_of(const Reference& reference, const std::string& climate_id,
                                                    int count);

/// How many further years a plan is usually given: enough for the tenth and ninetieth percentile, little enough to wait
/// for.
inline constexpr int usual_further_years = 10;

/// The reference with its weather for the climate (unless it holds the user's own year) and further years like it, all
/// at the site's height: air, dew point and pressure move with it (core/weather/altitude.h), and the year's remarks say
/// so. Without a height, or for one that no year can be moved to, the years stay as they are.
[[nodiscard]] Result<std::shared_ptr<const Reference>> with_weather_and_years(const Reference& reference,
                                                                              const std::string& climate_id,
                                                                              std::optional<double> site_altitude_m,
                                                                              int years = usual_further_years);

}  // namespace wg::plan
