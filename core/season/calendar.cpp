#include "core/season/calendar.h"

#include <algorithm>

#include "core/quantity/time.h"

namespace wg::season {
namespace {

constexpr double hour_s = 3600.0;
constexpr double day_s = 24.0 * hour_s;

}  // namespace

int day_of_year(int month, int day) noexcept {
    const int first = first_hour_of_month(month) / 24;
    const int next = first_hour_of_month(month + 1) / 24;
    return std::min(first + day - 1, next - 1);
}

Calendar::Calendar(const std::vector<HolidayPeriod>& holidays, int first_weekday) noexcept
    : first_weekday_(first_weekday) {
    for (const HolidayPeriod& period : holidays) {
        const int last = day_of_year(period.to_month, period.to_day);
        for (int day = day_of_year(period.from_month, period.from_day);; day = (day + 1) % days_in_year) {
            holiday_[static_cast<std::size_t>(day)] = true;
            if (day == last) break;
        }
    }
}

bool Calendar::last_of_holiday(int day) const noexcept {
    return holiday(day) && !holiday((day + 1) % days_in_year);
}

bool Calendar::in(const std::vector<ClockWindow>& windows, int day, double at_s) const noexcept {
    const bool today_free = weekend(day);
    const bool yesterday_free = weekend((day + days_in_year - 1) % days_in_year);
    return std::any_of(windows.begin(), windows.end(), [&](const ClockWindow& w) {
        const bool today = today_free ? w.weekends : w.weekdays;
        const bool yesterday = yesterday_free ? w.weekends : w.weekdays;
        const double from_s = w.from_h * hour_s;
        const double to_s = w.to_h * hour_s;
        if (w.from_h <= w.to_h) return today && at_s >= from_s && at_s < to_s;
        return (today && at_s >= from_s) || (yesterday && at_s < to_s);
    });
}

double Calendar::share_in(const std::vector<ClockWindow>& windows, int day, double begin_s,
                          double length_s) const noexcept {
    if (windows.empty() || !(length_s > 0.0)) return 0.0;
    // Between two edges of windows nothing changes: the span is walked from edge to edge.
    const double end_s = std::min(begin_s + length_s, day_s);
    double inside_s = 0.0;
    double at_s = begin_s;
    while (at_s < end_s) {
        double next_s = end_s;
        for (const ClockWindow& w : windows)
            for (const double edge_s : {w.from_h * hour_s, w.to_h * hour_s})
                if (edge_s > at_s) next_s = std::min(next_s, edge_s);
        if (in(windows, day, at_s)) inside_s += next_s - at_s;
        at_s = next_s;
    }
    return inside_s / length_s;
}

}  // namespace wg::season
