#include "core/job/clock_text.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <optional>

namespace wg {
namespace {

constexpr std::size_t most_entries = 24;
constexpr std::array<int, 12> days_of_month{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

class Scanner {
   public:
    explicit Scanner(std::string_view text) : rest_(text) { skip(); }
    [[nodiscard]] bool done() const { return rest_.empty(); }
    bool take(std::string_view word) {
        if (rest_.substr(0, word.size()) != word) return false;
        rest_.remove_prefix(word.size());
        skip();
        return true;
    }
    /// A hyphen, an en dash or the word "to".
    bool take_to() { return take("-") || take("\u2013") || take("to "); }
    bool take_separator() { return take(",") || take(";"); }
    /// Up to four digits.
    std::optional<int> whole() {
        int value = 0;
        std::size_t digits = 0;
        while (digits < rest_.size() && digits < 4 && rest_[digits] >= '0' && rest_[digits] <= '9')
            value = 10 * value + (rest_[digits++] - '0');
        if (digits == 0) return std::nullopt;
        rest_.remove_prefix(digits);
        skip();
        return value;
    }

   private:
    void skip() {
        while (!rest_.empty() && (rest_.front() == ' ' || rest_.front() == '\t'))
            rest_.remove_prefix(1);
    }
    std::string_view rest_;
};

std::optional<double> hour(Scanner& scan) {
    const auto hours = scan.whole();
    if (!hours) return std::nullopt;
    int minutes = 0;
    if (scan.take(":")) {
        const auto read = scan.whole();
        if (!read || *read > 59) return std::nullopt;
        minutes = *read;
    }
    const double value = *hours + minutes / 60.0;
    if (value > 24.0) return std::nullopt;
    return value;
}

std::string hour_text(double hours) {
    const int minutes = static_cast<int>(std::lround(hours * 60.0));
    char out[24];
    if (minutes % 60 == 0)
        std::snprintf(out, sizeof out, "%d", minutes / 60);
    else
        std::snprintf(out, sizeof out, "%d:%02d", minutes / 60, minutes % 60);
    return out;
}

Problem bad_hours() {
    return {"hours of the day", "are not understood",
            "Type them like 6-8, 17:30-22 or weekdays 12-13; over midnight like 22-6"};
}

Problem bad_days() {
    return {"days of the year", "are not understood", "Type day.month to day.month, like 15.7-28.7 or 24.12-2.1"};
}

bool day_and_month(Scanner& scan, int& day, int& month) {
    const auto d = scan.whole();
    if (!d || !scan.take(".")) return false;
    const auto m = scan.whole();
    if (!m || *m < 1 || *m > 12 || *d < 1 || *d > days_of_month[static_cast<std::size_t>(*m - 1)]) return false;
    scan.take(".");
    day = *d;
    month = *m;
    return true;
}

}  // namespace

Result<std::vector<ClockWindow>> clock_windows_from_text(std::string_view typed) {
    std::vector<ClockWindow> out;
    Scanner scan(typed);
    while (!scan.done()) {
        ClockWindow window;
        if (scan.take("weekdays"))
            window.weekends = false;
        else if (scan.take("weekends"))
            window.weekdays = false;
        const auto from = hour(scan);
        if (!from || !scan.take_to()) return bad_hours();
        const auto to = hour(scan);
        if (!to || *from == *to || out.size() == most_entries) return bad_hours();
        window.from_h = *from;
        window.to_h = *to;
        out.push_back(window);
        if (!scan.done() && !scan.take_separator()) return bad_hours();
    }
    return out;
}

std::string text_of(const std::vector<ClockWindow>& windows) {
    std::string out;
    for (const ClockWindow& w : windows) {
        if (!out.empty()) out += ", ";
        if (!w.weekends) out += "weekdays ";
        if (!w.weekdays) out += "weekends ";
        out += hour_text(w.from_h) + "-" + hour_text(w.to_h);
    }
    return out;
}

Result<std::vector<HolidayPeriod>> holidays_from_text(std::string_view typed) {
    std::vector<HolidayPeriod> out;
    Scanner scan(typed);
    while (!scan.done()) {
        HolidayPeriod period;
        if (!day_and_month(scan, period.from_day, period.from_month) || !scan.take_to() ||
            !day_and_month(scan, period.to_day, period.to_month) || out.size() == most_entries)
            return bad_days();
        out.push_back(period);
        if (!scan.done() && !scan.take_separator()) return bad_days();
    }
    return out;
}

std::string text_of(const std::vector<HolidayPeriod>& holidays) {
    std::string out;
    for (const HolidayPeriod& p : holidays) {
        if (!out.empty()) out += ", ";
        out += std::to_string(p.from_day) + "." + std::to_string(p.from_month) + "-" + std::to_string(p.to_day) + "." +
               std::to_string(p.to_month);
    }
    return out;
}

}  // namespace wg
