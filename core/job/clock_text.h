#pragma once
// Hours of the day and days of the year as people type them.

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg {

/// "6-8, 17:30-22, weekdays 12-13, weekends 9-11". Over midnight as "22-6". Empty: no window. Hours 0 to 24, at most 24
/// windows.
[[nodiscard]] Result<std::vector<ClockWindow>> clock_windows_from_text(std::string_view typed);
[[nodiscard]] std::string text_of(const std::vector<ClockWindow>& windows);

/// "24.12-2.1, 15.7-28.7": day.month, ends included. Empty: none. At most 24 periods.
[[nodiscard]] Result<std::vector<HolidayPeriod>> holidays_from_text(std::string_view typed);
[[nodiscard]] std::string text_of(const std::vector<HolidayPeriod>& holidays);

}  // namespace wg
