#include "core/quantity/time.h"

#include <array>
#include <cstdio>

namespace wg {
namespace {

constexpr std::array<int, 13> month_start_day = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365};

// Reads exactly `count` digits; false when there are fewer.
bool read_digits(std::string_view& text, int count, int& value) {
    if (text.size() < static_cast<std::size_t>(count)) return false;
    value = 0;
    for (int i = 0; i < count; ++i) {
        const char c = text[static_cast<std::size_t>(i)];
        if (c < '0' || c > '9') return false;
        value = value * 10 + (c - '0');
    }
    text.remove_prefix(static_cast<std::size_t>(count));
    return true;
}

bool read_char(std::string_view& text, char wanted) {
    if (text.empty() || text.front() != wanted) return false;
    text.remove_prefix(1);
    return true;
}

bool read_date(std::string_view& text, CivilDate& date) {
    return read_digits(text, 4, date.year) && read_char(text, '-') && read_digits(text, 2, date.month) &&
           read_char(text, '-') && read_digits(text, 2, date.day) && date.month >= 1 && date.month <= 12 &&
           date.day >= 1 && date.day <= days_in_month(date.year, date.month);
}

Problem not_a_time(std::string_view text) {
    return {"", "'" + std::string(text) + "' is not a date and time with an offset",
            "Write it as 2027-06-21T12:30:00Z or 2027-06-21T12:30:00+02:00"};
}

}  // namespace

std::int64_t days_from_civil(CivilDate date) noexcept {
    const std::int64_t y = date.month <= 2 ? date.year - 1 : date.year;
    const std::int64_t era = (y >= 0 ? y : y - 399) / 400;
    const std::int64_t yoe = y - era * 400;
    const std::int64_t doy = (153 * (date.month + (date.month > 2 ? -3 : 9)) + 2) / 5 + date.day - 1;
    const std::int64_t doe = yoe * 365 + yoe / 4 - yoe / 100 + doy;
    return era * 146097 + doe - 719468;
}

CivilDate civil_from_days(std::int64_t days) noexcept {
    const std::int64_t z = days + 719468;
    const std::int64_t era = (z >= 0 ? z : z - 146096) / 146097;
    const std::int64_t doe = z - era * 146097;
    const std::int64_t yoe = (doe - doe / 1460 + doe / 36524 - doe / 146096) / 365;
    const std::int64_t doy = doe - (365 * yoe + yoe / 4 - yoe / 100);
    const std::int64_t mp = (5 * doy + 2) / 153;
    CivilDate date;
    date.day = static_cast<int>(doy - (153 * mp + 2) / 5 + 1);
    date.month = static_cast<int>(mp < 10 ? mp + 3 : mp - 9);
    date.year = static_cast<int>(yoe + era * 400 + (date.month <= 2 ? 1 : 0));
    return date;
}

bool is_leap_year(int year) noexcept {
    return (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
}

int days_in_month(int year, int month) noexcept {
    if (month == 2 && is_leap_year(year)) return 29;
    return month_start_day[static_cast<std::size_t>(month)] - month_start_day[static_cast<std::size_t>(month) - 1];
}

int day_of_year(CivilDate date) noexcept {
    return static_cast<int>(days_from_civil(date) - days_from_civil({date.year, 1, 1})) + 1;
}

Result<Instant> instant_from_iso8601(std::string_view text) {
    std::string_view rest = text;
    CivilDate date;
    int hour = 0;
    int minute = 0;
    int second = 0;
    if (!read_date(rest, date)) return not_a_time(text);
    if (!read_char(rest, 'T') && !read_char(rest, ' ')) return not_a_time(text);
    if (!read_digits(rest, 2, hour) || !read_char(rest, ':') || !read_digits(rest, 2, minute)) {
        return not_a_time(text);
    }
    if (read_char(rest, ':')) {
        if (!read_digits(rest, 2, second)) return not_a_time(text);
        if (read_char(rest, '.')) {
            while (!rest.empty() && rest.front() >= '0' && rest.front() <= '9')
                rest.remove_prefix(1);
        }
    }
    if (hour > 23 || minute > 59 || second > 59) return not_a_time(text);

    std::int64_t offset_s = 0;
    if (!read_char(rest, 'Z')) {
        const bool west = !rest.empty() && rest.front() == '-';
        if (!read_char(rest, '+') && !read_char(rest, '-')) return not_a_time(text);
        int offset_h = 0;
        int offset_min = 0;
        if (!read_digits(rest, 2, offset_h)) return not_a_time(text);
        read_char(rest, ':');
        if (!rest.empty() && !read_digits(rest, 2, offset_min)) return not_a_time(text);
        if (offset_h > 14 || offset_min > 59) return not_a_time(text);
        offset_s = (west ? -1 : 1) * (offset_h * 3600 + offset_min * 60);
    }
    if (!rest.empty()) return not_a_time(text);
    return Instant{days_from_civil(date) * 86400 + hour * 3600 + minute * 60 + second - offset_s};
}

Result<CivilDate> date_from_iso8601(std::string_view text) {
    std::string_view rest = text;
    CivilDate date;
    if (!read_date(rest, date) || !rest.empty()) {
        return Problem{"", "'" + std::string(text) + "' is not a date", "Write it as 2027-06-21"};
    }
    return date;
}

std::string iso8601(Instant instant) {
    std::int64_t days = instant.unix_s / 86400;
    std::int64_t second_of_day = instant.unix_s % 86400;
    if (second_of_day < 0) {
        second_of_day += 86400;
        --days;
    }
    const int s = static_cast<int>(second_of_day);
    char clock[16];
    std::snprintf(clock, sizeof clock, "T%02d:%02d:%02dZ", s / 3600, s / 60 % 60, s % 60);
    return iso8601(civil_from_days(days)) + clock;
}

std::string iso8601(CivilDate date) {
    char out[40];
    std::snprintf(out, sizeof out, "%04d-%02d-%02d", date.year, date.month, date.day);
    return out;
}

int month_of_hour(int hour_of_year) noexcept {
    const int day = hour_of_year / 24;
    int month = 1;
    while (month < 12 && day >= month_start_day[static_cast<std::size_t>(month)])
        ++month;
    return month;
}

int first_hour_of_month(int month) noexcept {
    return 24 * month_start_day[static_cast<std::size_t>(month) - 1];
}

}  // namespace wg
