#include "core/commissioning/gauge_log_time.h"

#include <cstdio>

namespace wg::commissioning::gauge_log {
namespace {

bool digit(char c) {
    return c >= '0' && c <= '9';
}

/// Takes one to `most` digits off the front.
std::optional<int> take_digits(std::string_view& text, std::size_t most) {
    std::size_t n = 0;
    int value = 0;
    for (; n < most && n < text.size() && digit(text[n]); ++n)
        value = value * 10 + (text[n] - '0');
    if (n == 0) return std::nullopt;
    text.remove_prefix(n);
    return value;
}

bool take(std::string_view& text, char wanted) {
    if (text.empty() || text.front() != wanted) return false;
    text.remove_prefix(1);
    return true;
}

std::optional<CivilDate> take_date(std::string_view& text) {
    std::string_view rest = text;
    const std::optional<int> first = take_digits(rest, 4);
    if (!first || rest.empty()) return std::nullopt;
    const bool year_first = text.size() - rest.size() == 4;
    const char mark = rest.front();
    if (!(year_first ? mark == '-' || mark == '/' || mark == '.' : mark == '.')) return std::nullopt;
    rest.remove_prefix(1);
    const std::optional<int> second = take_digits(rest, 2);
    if (!second || !take(rest, mark)) return std::nullopt;
    const std::optional<int> third = take_digits(rest, year_first ? 2 : 4);
    if (!third) return std::nullopt;
    CivilDate date = year_first ? CivilDate{*first, *second, *third} : CivilDate{*third, *second, *first};
    if (date.year < 1990 || date.year > 2200 || date.month < 1 || date.month > 12 || date.day < 1 ||
        date.day > days_in_month(date.year, date.month))
        return std::nullopt;
    text = rest;
    return date;
}

/// Hours, minutes and, where given, seconds with a fraction.
std::optional<double> take_clock(std::string_view& text) {
    const std::optional<int> hours = take_digits(text, 3);
    if (!hours || !take(text, ':')) return std::nullopt;
    const std::optional<int> minutes = take_digits(text, 2);
    if (!minutes || *minutes > 59) return std::nullopt;
    double seconds = 0.0;
    if (take(text, ':')) {
        const std::optional<int> whole = take_digits(text, 2);
        if (!whole || *whole > 59) return std::nullopt;
        seconds = *whole;
        if (take(text, '.') || take(text, ',')) {
            double place = 0.1;
            for (; !text.empty() && digit(text.front()); text.remove_prefix(1), place *= 0.1)
                seconds += place * (text.front() - '0');
        }
    }
    return *hours * 3600.0 + *minutes * 60.0 + seconds;
}

/// AM or PM after a clock of twelve hours: false when it does not fit one.
bool take_half_of_day(std::string_view& text, double& s_of_day) {
    std::string_view rest = text;
    take(rest, ' ');
    if (rest.size() < 2 || (rest[1] != 'M' && rest[1] != 'm')) return true;
    const bool morning = rest[0] == 'A' || rest[0] == 'a';
    if (!morning && rest[0] != 'P' && rest[0] != 'p') return true;
    if (s_of_day < 3600.0 || s_of_day >= 13 * 3600.0) return false;
    if (s_of_day >= 12 * 3600.0) s_of_day -= 12 * 3600.0;
    if (!morning) s_of_day += 12 * 3600.0;
    rest.remove_prefix(2);
    text = rest;
    return true;
}

/// False when what stands there is no offset.
bool take_offset(std::string_view& text, std::optional<int>& offset_min) {
    if (text.empty()) return true;
    if (take(text, 'Z')) {
        offset_min = 0;
        return text.empty();
    }
    const bool west = text.front() == '-';
    if (!west && text.front() != '+') return false;
    text.remove_prefix(1);
    if (text.size() < 2) return false;
    const std::optional<int> hours = take_digits(text, 2);
    std::optional<int> minutes = 0;
    if (!text.empty()) {
        take(text, ':');
        minutes = take_digits(text, 2);
    }
    if (!hours || !minutes || *hours > 14 || *minutes > 59 || !text.empty()) return false;
    offset_min = (west ? -1 : 1) * (*hours * 60 + *minutes);
    return true;
}

}  // namespace

std::optional<CivilDate> log_date(std::string_view text) {
    const std::optional<CivilDate> date = take_date(text);
    return text.empty() ? date : std::nullopt;
}

std::optional<LogTime> log_time(std::string_view text) {
    LogTime time;
    time.date = take_date(text);
    if (time.date) {
        if (!take(text, 'T') && !take(text, ' ')) return std::nullopt;
        while (take(text, ' ')) {
        }
    }
    const std::optional<double> clock = take_clock(text);
    if (!clock) return std::nullopt;
    time.s_of_day = *clock;
    if (!take_half_of_day(text, time.s_of_day) || !take_offset(text, time.offset_min)) return std::nullopt;
    if (time.date && time.s_of_day >= 86400.0) return std::nullopt;
    return time;
}

bool ambiguous_date(std::string_view text) {
    const std::optional<int> first = take_digits(text, 2);
    if (!first || !take(text, '/')) return false;
    const std::optional<int> second = take_digits(text, 2);
    return second && take(text, '/') && take_digits(text, 4).has_value();
}

}  // namespace wg::commissioning::gauge_log
