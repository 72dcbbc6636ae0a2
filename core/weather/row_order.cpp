#include "core/weather/row_order.h"

#include "core/quantity/time.h"
#include "core/weather/year.h"

namespace wg::weather::detail {
namespace {

constexpr int any_common_year = 2001;
constexpr int last_night_hour = 3;  // clocks change between midnight and four in the morning

std::string two_digits(int value) {
    return (value < 10 ? "0" : "") + std::to_string(value);
}

// Months in which clocks go forward: March, April (northern spring), September to November (southern spring).
bool spring(int hour) {
    const int month = month_of_hour(hour);
    return month == 3 || month == 4 || (month >= 9 && month <= 11);
}

bool at_night(int hour) {
    return hour % 24 <= last_night_hour;
}

}  // namespace

int hour_of_year(int month, int day, int hour) noexcept {
    if (month < 1 || month > 12 || day < 1 || day > days_in_month(any_common_year, month) || hour < 0 || hour > 23) {
        return -1;
    }
    return first_hour_of_month(month) + 24 * (day - 1) + hour;
}

std::string hour_in_words(int hour_of_year) {
    const int month = month_of_hour(hour_of_year);
    const int day = (hour_of_year - first_hour_of_month(month)) / 24 + 1;
    return "month " + two_digits(month) + " day " + two_digits(day) + ", the hour from " +
           two_digits(hour_of_year % 24) + ":00";
}

DaylightSaving daylight_saving(const std::vector<RowHour>& rows, std::string& words) {
    const RowHour* missing_before = nullptr;
    const RowHour* doubled = nullptr;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        const int step = rows[i].hour - rows[i - 1].hour;
        if (step == 1) continue;
        if (step == 2 && missing_before == nullptr && at_night(rows[i].hour - 1)) {
            missing_before = &rows[i];
        } else if (step == 0 && doubled == nullptr && at_night(rows[i].hour)) {
            doubled = &rows[i];
        } else {
            return DaylightSaving::no;
        }
    }
    if (missing_before == nullptr) return DaylightSaving::no;
    if (doubled == nullptr) {
        if (!spring(missing_before->hour - 1)) return DaylightSaving::no;
        words = "this may be daylight saving time: one hour of a night is missing before line " +
                std::to_string(missing_before->line);
        return DaylightSaving::may_be;
    }
    words = "this looks like daylight saving time: one hour is missing before line " +
            std::to_string(missing_before->line) + " and one is doubled at line " + std::to_string(doubled->line);
    return DaylightSaving::looks_like;
}

Calendar::Answer Calendar::accept(int month, int day, int hour, int line) {
    if (month == 2 && day == 29 && hour >= 0 && hour < 24) {
        if (lost_) return Answer::lost;
        if (next_ == first_hour_of_month(3)) {
            leap_ = true;
            return Answer::skip_leap_day;
        }
        return Answer::wrong;
    }
    const int here = hour_of_year(month, day, hour);
    if (here >= 0) rows_.push_back({here, line});
    if (lost_) return Answer::lost;
    if (here < 0 || here != next_) return Answer::wrong;
    ++next_;
    return Answer::take;
}

void Calendar::lost_at(int line, std::size_t column, const std::string& row) {
    lost_ = true;
    line_ = line;
    column_ = column;
    what_ = "the row is for " + row + ", expected " +
            (next_ >= hours_in_year ? std::string("no further row after 8760 hours") : hour_in_words(next_));
}

bool Calendar::whole(int last_line, Problems& problems) const {
    if (lost_) {
        std::string words;
        if (daylight_saving(rows_, words) != DaylightSaving::no) {
            problems.add(line_, column_, what_ + "; " + words, standard_time_remedy);
        } else {
            problems.add(line_, column_, what_, order_remedy);
        }
        return false;
    }
    if (next_ == hours_in_year) return true;
    problems.add(last_line, 1, "the file ends after " + std::to_string(next_) + " of 8760 hours",
                 "The file was cut off; fetch it again");
    return false;
}

}  // namespace wg::weather::detail
