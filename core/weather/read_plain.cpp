// Our own plain CSV: docs/weather-format.md.

#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/quantity/utf8.h"
#include "core/weather/adopt_minute.h"
#include "core/weather/plain_header.h"
#include "core/weather/read.h"

namespace wg::weather {
namespace {

using namespace detail;

constexpr int longest_missing_rows_h = 6;
constexpr double assumed_wind_m_s = 3.0;  // common practice, no published source

// Minutes since 1970 of a stamp `yyyy-mm-dd HH:MM`, T or blank between, seconds only as :00. 24:00 ends a day.
std::optional<std::int64_t> minutes_of(std::string_view text) {
    if (text.size() == 19 && text.substr(16) == ":00") text = text.substr(0, 16);
    if (text.size() != 16 || text[4] != '-' || text[7] != '-' || (text[10] != ' ' && text[10] != 'T') ||
        text[13] != ':') {
        return std::nullopt;
    }
    const std::optional<int> year = whole_number(text.substr(0, 4));
    const std::optional<int> month = whole_number(text.substr(5, 2));
    const std::optional<int> day = whole_number(text.substr(8, 2));
    const std::optional<int> hour = whole_number(text.substr(11, 2));
    const std::optional<int> minute = whole_number(text.substr(14, 2));
    if (!year || !month || !day || !hour || !minute) return std::nullopt;
    if (*year < 1000 || *month < 1 || *month > 12 || *day < 1 || *day > days_in_month(*year, *month) || *hour < 0 ||
        *hour > 24 || *minute < 0 || *minute > 59 || (*hour == 24 && *minute != 0)) {
        return std::nullopt;
    }
    return (days_from_civil({*year, *month, *day}) * 24 + *hour) * 60 + *minute;
}

struct RowTime {
    int month = 1, day = 1, hour = 0;
    bool leap_day() const { return month == 2 && day == 29; }
};

RowTime time_of(std::int64_t minutes) {
    const std::int64_t days = (minutes >= 0 ? minutes : minutes - 1439) / 1440;
    const CivilDate date = civil_from_days(days);
    return {date.month, date.day, static_cast<int>((minutes - 1440 * days) / 60)};
}

// Turns stamps into the hours they stand for. Stamps that lie off the full hour by the same minutes in every row belong
// to a clock that is set apart by those minutes: the rows are kept and the clock's offset is changed.
class Clock {
   public:
    explicit Clock(StampOf stamp) : back_(stamp == StampOf::start ? 0 : stamp == StampOf::middle ? 30 : 60) {}

    // nullopt when the minute is not that of the first row.
    std::optional<RowTime> row_time(std::int64_t stamp_minutes) {
        const std::int64_t start = stamp_minutes - back_;
        if (!known_) {
            known_ = true;
            const std::int64_t past = ((start % 60) + 60) % 60;
            off_ = static_cast<int>(past);
            // A year that begins at 23:30 of the day before is one that begins late by the clock half an hour ahead.
            const RowTime first = time_of(start - past);
            if (past > 0 && first.month == 12 && first.day == 31 && first.hour == 23) off_ -= 60;
        }
        if ((start - off_) % 60 != 0) return std::nullopt;
        RowTime time = time_of(start - off_);
        // Typical years join months of several years: the end of 28 February, written as midnight of 1 March of a leap
        // year, is no 29 February.
        if (time.leap_day() && time.hour == 23 && last_.month == 2 && last_.day == 28 && last_.hour == 22)
            time.day = 28;
        last_ = time;
        return time;
    }
    [[nodiscard]] int off_min() const { return off_; }

   private:
    int back_;
    bool known_ = false;
    int off_ = 0;
    RowTime last_;
};

struct Rows {
    std::vector<RowHour> hours;
    bool leap_day = false;
    int off_min = 0;
};

void read_values(const Line& line, const std::vector<Field>& fields, const PlainHeader& header, RawYear& raw,
                 Problems& problems) {
    const std::vector<PlainColumn>& columns = plain_columns();
    std::string buffer;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        if (!header.at[c]) continue;
        const Field& found = fields[*header.at[c]];
        const Field field = {with_point(found.text, header.separator, buffer), found.column};
        std::vector<double>& series = raw.*columns[c].series;
        series.push_back(columns[c].light ? read_light(field, columns[c].quantity, line.number, raw, problems)
                                          : read_value(field, columns[c].quantity, line.number, problems));
    }
}

// False when reading stopped.
bool read_rows(Lines& lines, const PlainHeader& header, RawYear& raw, Rows& rows, Problems& problems) {
    Clock clock(header.stamp);
    std::vector<Field> fields;
    while (const auto line = lines.next()) {
        if (line->text.find_first_not_of(",; \t") == std::string_view::npos || line->text.front() == '#') continue;
        split(line->text, fields, header.separator);
        if (fields.size() != header.width) {
            problems.add(line->number, 1,
                         "the row has " + std::to_string(fields.size()) + " fields, the column names are " +
                             std::to_string(header.width),
                         header.separator == ','
                             ? "Write the missing fields; with decimal commas part fields by semicolons"
                             : "Write the missing fields, or leave out those too many");
            return false;
        }
        const Field& stamp = fields[header.time_at];
        const std::optional<std::int64_t> minutes = minutes_of(stamp.text);
        if (!minutes) {
            problems.add(line->number, stamp.column, "'" + for_message(stamp.text, 30) + "' is no date and time",
                         "Write it as 2027-06-21 14:00");
            return false;
        }
        const std::optional<RowTime> time = clock.row_time(*minutes);
        if (!time) {
            problems.add(line->number, stamp.column,
                         "'" + for_message(stamp.text, 30) + "' has another minute of the hour than the first row",
                         "Give one row an hour, all at the same minute");
            return false;
        }
        if (time->leap_day()) {
            rows.leap_day = true;
            continue;
        }
        rows.hours.push_back({hour_of_year(time->month, time->day, time->hour), line->number});
        read_values(*line, fields, header, raw, problems);
        if (problems.full()) return false;
    }
    rows.off_min = clock.off_min();
    return problems.empty();
}

// Refuses rows that are doubled, out of order or missing for long; tells how many hours are missing otherwise.
int missing_rows(const Rows& rows, int last_line, std::vector<std::string>& remarks, Problems& problems) {
    std::string words;
    const DaylightSaving seen = daylight_saving(rows.hours, words);
    const bool clocks_change = seen == DaylightSaving::looks_like;
    int missing_h = 0;
    int before = -1;
    for (const RowHour& row : rows.hours) {
        const int step = row.hour - before;
        if (step >= 1 && step <= longest_missing_rows_h + 1 && !(clocks_change && step == 2)) {
            missing_h += step - 1;
            before = row.hour;
            continue;
        }
        std::string what = "the row is for " + hour_in_words(row.hour) + ", expected " +
                           (before + 1 < hours_in_year ? hour_in_words(before + 1) : "the end of the year");
        if (step == 0) what += ": this hour was there already";
        if (step < 0) what += ": rows are out of order";
        if (step > 1) what += ": " + counted(step - 1, "hour is missing", "hours are missing");
        if (clocks_change) what += "; " + words;
        problems.add(row.line, 1, what,
                     clocks_change ? standard_time_remedy
                     : step > 1    ? "Fill the gap; only up to six hours are bridged"
                                   : "Sort the rows by time and leave out those that are doubled");
        return 0;
    }
    if (seen == DaylightSaving::may_be) remarks.push_back("Check the stamps: " + words + ".");
    const int at_end = hours_in_year - 1 - before;
    if (at_end <= longest_missing_rows_h) return missing_h + at_end;
    problems.add(last_line, 1, "the file ends after " + std::to_string(rows.hours.size()) + " of 8760 hours",
                 "Give a whole year, from the first to the last hour");
    return 0;
}

// Puts every row at its hour; hours without one are marked missing in every series.
void spread(RawYear& raw, const Rows& rows) {
    const std::vector<RowHour>& hours = rows.hours;
    for (std::vector<double> RawYear::*member :
         {&RawYear::global, &RawYear::beam, &RawYear::diffuse, &RawYear::air, &RawYear::dew_point, &RawYear::humidity,
          &RawYear::wind, &RawYear::pressure, &RawYear::long_wave, &RawYear::cover}) {
        std::vector<double>& series = raw.*member;
        std::vector<double> year(hours_in_year, missing);
        for (std::size_t i = 0; i < series.size(); ++i)
            year[static_cast<std::size_t>(hours[i].hour)] = series[i];
        series = std::move(year);
    }
    raw.line_of_row.assign(hours_in_year, hours.back().line);
    for (std::size_t i = hours.size(); i-- > 0;) {
        const int from = i == 0 ? 0 : hours[i - 1].hour + 1;
        for (int h = from; h <= hours[i].hour; ++h)
            raw.line_of_row[static_cast<std::size_t>(h)] = hours[i].line;
    }
}

// The least needed columns leave wind and humidity open: values that are told, not hidden.
void assume_what_is_not_there(RawYear& raw, const PlainHeader& header) {
    if (!header.has(&RawYear::wind)) {
        std::fill(raw.wind.begin(), raw.wind.end(), assumed_wind_m_s);
        raw.year.remarks.push_back("No wind in the file: " + fixed(assumed_wind_m_s, 1) + " m/s assumed all year.");
    }
    if (header.has(&RawYear::dew_point) || header.has(&RawYear::humidity)) return;
    for (std::size_t day = 0; day < 365; ++day) {
        double least = missing;
        for (std::size_t i = 24 * day; i < 24 * day + 24; ++i)
            least = std::fmin(least, raw.air[i]);  // fmin passes over what is missing
        std::fill_n(raw.dew_point.begin() + static_cast<std::ptrdiff_t>(24 * day), 24, least);
    }
    raw.year.remarks.push_back("No humidity in the file: the dew point is taken as the day's lowest air temperature.");
}

}  // namespace

Result<Year> read_plain(std::string_view text, const std::string& file_name) {
    Problems problems(file_name);
    if (!plausible_text(text, problems)) return problems.take();
    RawYear raw;
    Lines lines(text);
    PlainHeader header;
    if (!read_plain_header(lines, file_name, raw.year, header, problems)) return problems.take();
    check_place(raw.year, header.place_line, problems);
    if (!problems.empty()) return problems.take();
    Rows rows;
    if (!read_rows(lines, header, raw, rows, problems)) return problems.take();
    const int missing_h = missing_rows(rows, lines.last_number(), raw.year.remarks, problems);
    if (!problems.empty()) return problems.take();
    spread(raw, rows);

    Year& year = raw.year;
    if (rows.leap_day) year.remarks.push_back("29 February is left out.");
    if (missing_h > 0) year.remarks.push_back(counted(missing_h, "row is", "rows are") + " missing and bridged.");
    if (rows.off_min != 0) {
        year.utc_offset_h -= rows.off_min / 60.0;
        year.remarks.push_back("Stamps " + std::to_string(std::abs(rows.off_min)) +
                               " minutes off the full hour: rows kept, on a clock of UTC" +
                               (year.utc_offset_h < 0.0 ? "" : "+") + fixed(year.utc_offset_h, 2) + " h.");
    }
    assume_what_is_not_there(raw, header);
    Result<Year> result = finish(std::move(raw), header.place_line, problems);
    // A minute that is given is meant; the light corrects only what is assumed.
    if (result && !header.sun_minute_given) adopt_minute_of_light(result.value());
    return result;
}

}  // namespace wg::weather
