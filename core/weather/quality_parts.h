#pragma once
// The parts of `assess`. Inside this room only.

#include "core/sun/year.h"
#include "core/weather/quality.h"

namespace wg::weather::detail {

inline constexpr int least_clear_days = 10;        ///< for the year's shift
inline constexpr int least_clear_season_days = 5;  ///< for a season's

/// Sets `flags` of every hour and the counts that follow from them.
void add_flags(const Year& year, const sun::YearSun& sun, QualityReport& report);
/// Sets the shifts of the year and of the seasons.
void add_shifts(const Year& year, const sun::YearSun& sun, QualityReport& report);
/// Says in words what the figures of the report mean.
void add_remarks(const Year& year, QualityReport& report);

}  // namespace wg::weather::detail
