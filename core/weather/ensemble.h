#pragma once
// Many years of one climate, to say in what range a year's figures lie instead of giving a single one.

#include <array>
#include <cstddef>
#include <vector>

#include "core/quantity/result.h"
#include "core/weather/climate.h"
#include "core/weather/year.h"

namespace wg::weather {

inline constexpr int most_ensemble_years = 500;

/// How a month's light and temperature scatter from year to year: the climate's own figures, or what is assumed
/// (docs/handbook/weather.md). The light's is bounded so that no year is darker than a fifth of the mean or lighter
/// than a cloudless one.
struct YearToYear {
    std::array<double, 12> global_variation{};  ///< standard deviation over mean
    std::array<double, 12> air_spread_k{};      ///< standard deviation
};
/// The climate must be one that `synthesise` takes; of any other the figures mean nothing.
[[nodiscard]] YearToYear year_to_year(const Climate& climate);

/// The climate with each month's light brought down to the most that `synthesise` takes, for means of imported years,
/// which may be brighter than the cloudless month of the model; the source then says how many months were. The climate
/// must otherwise be one that `synthesise` takes.
[[nodiscard]] Climate within_cloudless(Climate climate);

/// Monthly means of year `number` (1..most_ensemble_years) of the climate, with a seed of its own. Light and air go
/// together as bright months do with warm ones in the light half of the year. The same number gives the same year
/// whichever others are made.
[[nodiscard]] Result<Climate> climate_in_year(const Climate& climate, int number);

/// Those of the years 1 to `count`, quicker than one by one.
[[nodiscard]] Result<std::vector<Climate>> climates_in_years(const Climate& climate, int count);

/// `synthesise(climate_in_year(...))`, and a remark.
[[nodiscard]] Result<Year> ensemble_year(const Climate& climate, int number);

/// Years 1 to `count` (1..most_ensemble_years), about 0.6 MB each.
[[nodiscard]] Result<std::vector<Year>> ensemble(const Climate& climate, int count);

/// Below `p10` lie 10 % of the years, below `p90` 90 %: straight lines between the ordered values, of which the first
/// stands at 0 and the last at 1 (type 7 of Hyndman and Fan, The American Statistician 50(4), 1996). Where a figure is
/// to be reached in nine of ten years, p10 is meant.
struct Quantiles {
    double p10 = 0.0;
    double p50 = 0.0;
    double p90 = 0.0;
    std::size_t count = 0;  ///< years behind them
};
/// Refuses an empty list and values that are not finite.
[[nodiscard]] Result<Quantiles> quantiles(std::vector<double> values);

}  // namespace wg::weather
