#include "core/aftercare/calendar.h"

#include <algorithm>

namespace wg::aftercare {

CivilDate months_after(CivilDate date, int months) noexcept {
    const int count = date.year * 12 + date.month - 1 + months;
    CivilDate out;
    out.year = count >= 0 ? count / 12 : (count - 11) / 12;
    out.month = count - out.year * 12 + 1;
    out.day = std::min(date.day, days_in_month(out.year, out.month));
    return out;
}

CivilDate days_after(CivilDate date, int days) noexcept {
    return civil_from_days(days_from_civil(date) + days);
}

int days_between(CivilDate from, CivilDate to) noexcept {
    return static_cast<int>(days_from_civil(to) - days_from_civil(from));
}

bool before(CivilDate a, CivilDate b) noexcept {
    return days_from_civil(a) < days_from_civil(b);
}

CivilDate monday_of(CivilDate date) noexcept {
    // 1 January 1970 was a Thursday.
    const std::int64_t days = days_from_civil(date);
    const std::int64_t weekday = ((days + 3) % 7 + 7) % 7;
    return civil_from_days(days - weekday);
}

int iso_week(CivilDate date) noexcept {
    const CivilDate thursday = days_after(monday_of(date), 3);
    return (day_of_year(thursday) - 1) / 7 + 1;
}

std::optional<CivilDate> day_of(const Reading& reading) {
    constexpr std::size_t date_bytes = 10;
    if (!instant_from_iso8601(reading.taken_at)) return std::nullopt;
    const Result<CivilDate> day = date_from_iso8601(std::string_view(reading.taken_at).substr(0, date_bytes));
    return day ? std::optional<CivilDate>(day.value()) : std::nullopt;
}

}  // namespace wg::aftercare
