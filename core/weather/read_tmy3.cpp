// TMY3: Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156, 2008.

#include <cmath>

#include "core/quantity/time.h"
#include "core/quantity/utf8.h"
#include "core/weather/adopt_minute.h"
#include "core/weather/raw_year.h"
#include "core/weather/read.h"

namespace wg::weather {
namespace {

using namespace detail;

constexpr double mark = -9899.0;  // the format writes -9900 for missing
constexpr Quantity global = {"GHI", "W/m2", lowest_light_w_m2, 1500, infinite, mark};
constexpr Quantity beam = {"DNI", "W/m2", lowest_light_w_m2, 1400, infinite, mark};
constexpr Quantity diffuse = {"DHI", "W/m2", lowest_light_w_m2, 1000, infinite, mark};
constexpr Quantity air = {"Dry-bulb", "deg C", -70, 60, infinite, mark};
constexpr Quantity dew = {"Dew-point", "deg C", -90, 60, infinite, mark};
constexpr Quantity humidity = {"RHum", "%", 0, 110, infinite, mark};
constexpr Quantity pressure = {"Pressure", "Pa", 50000, 110000, infinite, mark, 100.0};
constexpr Quantity wind = {"Wspd", "m/s", 0, 60, infinite, mark};
constexpr Quantity cover = {"OpqCld", "parts of 1", 0, 1, infinite, mark, 0.1};

constexpr std::size_t none = static_cast<std::size_t>(-1);

struct Columns {
    std::size_t date = none, time = none, global = none, beam = none, diffuse = none, air = none, dew = none,
                humidity = none, pressure = none, wind = none, cover = none;
};

// A column by its name up to the unit's bracket, since files differ in how they close it.
std::size_t column(const std::vector<Field>& header, std::string_view name) {
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (starts_with(header[i].text, name)) return i;
    }
    return none;
}

Columns find_columns(const Line& line, const std::vector<Field>& header, Problems& problems) {
    Columns c;
    c.date = column(header, "Date (MM/DD/YYYY");
    c.time = column(header, "Time (HH:MM");
    c.global = column(header, "GHI (W/m^2");
    c.beam = column(header, "DNI (W/m^2");
    c.diffuse = column(header, "DHI (W/m^2");
    c.air = column(header, "Dry-bulb (C");
    c.dew = column(header, "Dew-point (C");
    c.humidity = column(header, "RHum (%");
    c.pressure = column(header, "Pressure (mbar");
    c.wind = column(header, "Wspd (m/s");
    c.cover = column(header, "OpqCld (tenths");
    const auto need = [&](std::size_t at, const char* name) {
        if (at != none) return;
        problems.add(line.number, 1, std::string("there is no column '") + name + "'",
                     "The file is no TMY3 file or lacks what is needed; fetch it again");
    };
    need(c.date, "Date (MM/DD/YYYY)");
    need(c.time, "Time (HH:MM)");
    need(c.global, "GHI (W/m^2)");
    need(c.air, "Dry-bulb (C)");
    need(c.wind, "Wspd (m/s)");
    if (c.dew == none && c.humidity == none) need(none, "Dew-point (C)");
    return c;
}

void read_place(const Line& line, const std::vector<Field>& fields, Year& year, Problems& problems) {
    if (fields.size() < 7) {
        problems.add(line.number, 1,
                     "the first line has " + std::to_string(fields.size()) + " fields, at least 7 are needed",
                     "The first line must give station, name, state, time zone, latitude, longitude and elevation");
        return;
    }
    const auto figure = [&](std::size_t i, const char* what) {
        const std::optional<double> value = number(fields[i].text);
        if (!value) {
            problems.add(line.number, fields[i].column,
                         std::string(what) + " is '" + for_message(fields[i].text, 30) + "', not a number",
                         "Correct the first line");
        }
        return value.value_or(0.0);
    };
    year.utc_offset_h = figure(3, "time zone");
    year.latitude_deg = figure(4, "latitude");
    year.longitude_deg = figure(5, "longitude");
    year.altitude_m = figure(6, "elevation");
    year.source = "TMY3 " + for_message(fields[0].text) + " " + for_message(fields[1].text);
}

struct Stamp {
    int month = 0, day = 0, hour = -1;  ///< hour 0..23 is the start of the hour
};

// `MM/DD/YYYY` and `HH:MM`, the end of the hour. Midnight is written 24:00 of the same or 00:00 of the next day.
std::optional<Stamp> read_stamp(std::string_view date, std::string_view time) {
    if (date.size() != 10 || date[2] != '/' || date[5] != '/' || time.size() != 5 || time[2] != ':') {
        return std::nullopt;
    }
    const std::optional<int> month = whole_number(date.substr(0, 2));
    const std::optional<int> day = whole_number(date.substr(3, 2));
    const std::optional<int> year = whole_number(date.substr(6, 4));
    const std::optional<int> hour = whole_number(time.substr(0, 2));
    if (!month || !day || !year || !hour || time.substr(3, 2) != "00") return std::nullopt;
    if (*year < 1000 || *month < 1 || *month > 12 || *day < 1 || *day > days_in_month(*year, *month) || *hour < 0 ||
        *hour > 24) {
        return std::nullopt;
    }
    if (*hour > 0) return Stamp{*month, *day, *hour - 1};
    const CivilDate before = civil_from_days(days_from_civil({*year, *month, *day}) - 1);
    return Stamp{before.month, before.day, 23};
}

void read_row(int line, const std::vector<Field>& f, const Columns& c, RawYear& raw, Problems& problems) {
    const auto value = [&](std::size_t at, const Quantity& quantity) {
        return at < f.size() ? read_value(f[at], quantity, line, problems) : missing;
    };
    const auto light = [&](std::size_t at, const Quantity& quantity) {
        return at < f.size() ? read_light(f[at], quantity, line, raw, problems) : missing;
    };
    raw.line_of_row.push_back(line);
    raw.global.push_back(light(c.global, global));
    raw.beam.push_back(light(c.beam, beam));
    raw.diffuse.push_back(light(c.diffuse, diffuse));
    raw.air.push_back(value(c.air, air));
    raw.dew_point.push_back(value(c.dew, dew));
    raw.humidity.push_back(value(c.humidity, humidity));
    raw.pressure.push_back(value(c.pressure, pressure));
    raw.wind.push_back(value(c.wind, wind));
    raw.cover.push_back(value(c.cover, cover));
}

}  // namespace

Result<Year> read_tmy3(std::string_view text, const std::string& file_name) {
    Problems problems(file_name);
    if (!plausible_text(text, problems)) return problems.take();
    RawYear raw;
    raw.year.format = "TMY3";
    raw.year.sun_minute = 30.0;
    Lines lines(text);
    std::vector<Field> fields;
    const std::optional<Line> first = lines.next();
    if (first) {
        split(first->text, fields);
        read_place(*first, fields, raw.year, problems);
    }
    const std::optional<Line> second = lines.next();
    if (!second) problems.add(1, 1, "the file ends after its first line", "The file was cut off; fetch it again");
    if (!problems.empty()) return problems.take();
    split(second->text, fields);
    const Columns columns = find_columns(*second, fields, problems);
    if (!problems.empty()) return problems.take();
    const std::size_t header_fields = fields.size();

    Calendar calendar;
    while (const auto line = lines.next()) {
        if (line->text.empty()) continue;
        split(line->text, fields);
        if (fields.size() != header_fields) {
            if (calendar.is_lost()) break;
            problems.add(
                line->number, 1,
                "the row has " + std::to_string(fields.size()) + " fields, the header " + std::to_string(header_fields),
                "The file was cut off or damaged; fetch it again");
            return problems.take();
        }
        const std::string_view date = fields[columns.date].text;
        const std::string_view time = fields[columns.time].text;
        const std::optional<Stamp> stamp = read_stamp(date, time);
        if (!stamp) {
            if (calendar.is_lost()) break;
            problems.add(line->number, fields[columns.date].column,
                         "'" + for_message(date, 20) + "' and '" + for_message(time, 20) + "' are no date and time",
                         "Write them as MM/DD/YYYY and HH:00");
            return problems.take();
        }
        const Calendar::Answer answer = calendar.accept(stamp->month, stamp->day, stamp->hour, line->number);
        if (answer == Calendar::Answer::wrong) {
            calendar.lost_at(line->number, fields[columns.date].column,
                             for_message(date, 20) + " " + for_message(time, 20));
        }
        if (answer != Calendar::Answer::take) continue;
        read_row(line->number, fields, columns, raw, problems);
        if (problems.full()) return problems.take();
    }
    if (!calendar.whole(lines.last_number(), problems) || !problems.empty()) return problems.take();
    if (calendar.leap_day_left_out()) raw.year.remarks.push_back("29 February is left out.");
    Result<Year> year = finish(std::move(raw), 1, problems);
    if (year) adopt_minute_of_light(year.value());
    return year;
}

}  // namespace wg::weather
