#pragma once
// Days of the week, holidays and windows of the clock, in local standard time.

#include <array>
#include <vector>

#include "core/job/job.h"

namespace wg::season {

inline constexpr int days_in_year = 365;

class Calendar {
   public:
    /// `first_weekday`: of 1 January, 0 Monday.
    Calendar(const std::vector<HolidayPeriod>& holidays, int first_weekday) noexcept;

    [[nodiscard]] int weekday(int day) const noexcept { return (day + first_weekday_) % 7; }  ///< 0 Monday
    [[nodiscard]] bool weekend(int day) const noexcept { return weekday(day) >= 5; }
    [[nodiscard]] bool holiday(int day) const noexcept { return holiday_[static_cast<std::size_t>(day)]; }
    /// The day before the household is back; never in a year that is all holidays.
    [[nodiscard]] bool last_of_holiday(int day) const noexcept;

    /// Share of a span of time within one day that lies in any of the windows; windows that overlap count once.
    [[nodiscard]] double share_in(const std::vector<ClockWindow>& windows, int day, double begin_s,
                                  double length_s) const noexcept;
    [[nodiscard]] bool in(const std::vector<ClockWindow>& windows, int day, double at_s) const noexcept;

   private:
    int first_weekday_;
    std::array<bool, days_in_year> holiday_{};
};

/// Day of the year from 0; the day after the month's last counts as its last.
[[nodiscard]] int day_of_year(int month, int day) noexcept;

}  // namespace wg::season
