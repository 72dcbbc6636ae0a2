// Typical year of the European Commission's Joint Research Centre as CSV (PVGIS user manual, "TMY generator").

#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"
#include "core/weather/adopt_minute.h"
#include "core/weather/raw_year.h"
#include "core/weather/read.h"

namespace wg::weather {
namespace {

using namespace detail;

constexpr Quantity air = {"T2m", "deg C", -70, 60, infinite, -infinite};
constexpr Quantity humidity = {"RH", "%", 0, 110, infinite, -infinite};
constexpr Quantity global = {"G(h)", "W/m2", lowest_light_w_m2, 1500, infinite, -infinite};
constexpr Quantity beam = {"Gb(n)", "W/m2", lowest_light_w_m2, 1400, infinite, -infinite};
constexpr Quantity diffuse = {"Gd(h)", "W/m2", lowest_light_w_m2, 1000, infinite, -infinite};
constexpr Quantity long_wave = {"IR(h)", "W/m2", 50, 700, infinite, -infinite};
constexpr Quantity wind = {"WS10m", "m/s", 0, 60, infinite, -infinite};
constexpr Quantity pressure = {"SP", "Pa", 50000, 110000, infinite, -infinite};
constexpr const Quantity* all_quantities[] = {&air, &humidity, &global, &beam, &diffuse, &long_wave, &wind, &pressure};

struct Header {
    int place_line = 1;
    std::size_t width = 0;
    std::size_t columns[8] = {};       ///< as in all_quantities
    std::optional<double> offset_min;  ///< of the light against the stamp, where the header gives it
};

// "Latitude (decimal degrees): 45.000": the figure after the colon.
std::optional<double> figure_after_colon(const Line& line, Problems& problems) {
    const std::size_t colon = line.text.find(':');
    std::string_view rest = colon == std::string_view::npos ? std::string_view() : line.text.substr(colon + 1);
    while (!rest.empty() && rest.front() == ' ')
        rest.remove_prefix(1);
    while (!rest.empty() && (rest.back() == ' ' || rest.back() == ','))
        rest.remove_suffix(1);
    const std::optional<double> value = number(rest);
    if (!value) {
        problems.add(line.number, 1, "'" + for_message(line.text, 50) + "' holds no number after the colon",
                     "Fetch the file again");
    }
    return value;
}

void read_columns(const Line& line, const std::vector<Field>& fields, Header& header, Problems& problems) {
    header.width = fields.size();
    for (std::size_t q = 0; q < 8; ++q) {
        const auto at = std::find_if(fields.begin(), fields.end(),
                                     [&](const Field& f) { return f.text == all_quantities[q]->name; });
        if (at == fields.end()) {
            problems.add(line.number, 1, std::string("there is no column '") + all_quantities[q]->name + "'",
                         "Fetch the typical year with all its columns");
        }
        header.columns[q] = static_cast<std::size_t>(at - fields.begin());
    }
}

// Header lines up to the column names; false when those are not found.
bool read_header(Lines& lines, std::vector<Field>& fields, Year& year, Header& header, Problems& problems) {
    bool latitude = false;
    bool longitude = false;
    bool elevation = false;
    while (const auto line = lines.next()) {
        split(line->text, fields);
        if (starts_with(line->text, "Latitude")) {
            header.place_line = line->number;
            year.latitude_deg = figure_after_colon(*line, problems).value_or(0.0);
            latitude = true;
        } else if (starts_with(line->text, "Longitude")) {
            year.longitude_deg = figure_after_colon(*line, problems).value_or(0.0);
            longitude = true;
        } else if (starts_with(line->text, "Elevation")) {
            year.altitude_m = figure_after_colon(*line, problems).value_or(0.0);
            elevation = true;
        } else if (starts_with(line->text, "Irradiance Time Offset")) {
            const std::optional<double> hours = figure_after_colon(*line, problems);
            if (hours && std::fabs(*hours) <= 1.0) {
                header.offset_min = 60.0 * *hours;
            } else if (hours) {
                problems.add(line->number, 1, "the irradiance time offset is over one hour", "Fetch the file again");
            }
        } else if (starts_with(fields.front().text, "time(UTC)")) {
            if (!latitude || !longitude || !elevation) {
                problems.add(line->number, 1, "the header gives no latitude, longitude or elevation",
                             "Fetch the file again");
            }
            read_columns(*line, fields, header, problems);
            return problems.empty();
        } else if (line->number > 60) {
            break;
        }
    }
    problems.add(lines.last_number(), 1, "there is no line with the column names, 'time(UTC),T2m,...'",
                 "Fetch the typical year as CSV");
    return false;
}

struct Stamp {
    int month = 0, day = 0, hour = 0, minute = 0;
};

// yyyymmdd:HHMM
std::optional<Stamp> read_stamp(std::string_view text) {
    if (text.size() != 13 || text[8] != ':') return std::nullopt;
    const std::optional<int> date = whole_number(text.substr(0, 8));
    const std::optional<int> clock = whole_number(text.substr(9, 4));
    if (!date || !clock || *date < 0 || *clock < 0) return std::nullopt;
    const Stamp stamp{*date / 100 % 100, *date % 100, *clock / 100, *clock % 100};
    if (stamp.hour > 23 || stamp.minute > 59) return std::nullopt;
    return stamp;
}

void read_row(int line, const std::vector<Field>& f, const Header& h, RawYear& raw, Problems& problems) {
    raw.line_of_row.push_back(line);
    raw.air.push_back(read_value(f[h.columns[0]], air, line, problems));
    raw.humidity.push_back(read_value(f[h.columns[1]], humidity, line, problems));
    raw.dew_point.push_back(missing);
    raw.global.push_back(read_light(f[h.columns[2]], global, line, raw, problems));
    raw.beam.push_back(read_light(f[h.columns[3]], beam, line, raw, problems));
    raw.diffuse.push_back(read_light(f[h.columns[4]], diffuse, line, raw, problems));
    raw.long_wave.push_back(read_value(f[h.columns[5]], long_wave, line, problems));
    raw.wind.push_back(read_value(f[h.columns[6]], wind, line, problems));
    raw.pressure.push_back(read_value(f[h.columns[7]], pressure, line, problems));
    raw.cover.push_back(missing);
}

// Turns the rows so that row 0 is the first hour of the local standard day.
void to_local_time(RawYear& raw, int offset_h) {
    const int shift = ((-offset_h) % hours_in_year + hours_in_year) % hours_in_year;
    const auto turn = [&](auto& series) { std::rotate(series.begin(), series.begin() + shift, series.end()); };
    for (std::vector<double>* series : {&raw.global, &raw.beam, &raw.diffuse, &raw.air, &raw.dew_point, &raw.humidity,
                                        &raw.wind, &raw.pressure, &raw.long_wave, &raw.cover}) {
        turn(*series);
    }
    turn(raw.line_of_row);
}

// Rows from the UTC calendar; false when reading stopped.
bool read_rows(Lines& lines, std::vector<Field>& fields, const Header& header, RawYear& raw, int& stamp_minute,
               Problems& problems) {
    Calendar calendar;
    while (calendar.taken() < hours_in_year) {
        const std::optional<Line> line = lines.next();
        if (!line || line->text.empty()) break;
        split(line->text, fields);
        const std::optional<Stamp> stamp = read_stamp(fields.front().text);
        if (calendar.is_lost() && (!stamp || fields.size() != header.width)) break;
        if (!stamp) {
            problems.add(line->number, 1,
                         "'" + for_message(fields.front().text, 20) + "' is no time stamp yyyymmdd:HHMM",
                         "The file was damaged; fetch it again");
            return false;
        }
        if (fields.size() != header.width) {
            problems.add(
                line->number, 1,
                "the row has " + std::to_string(fields.size()) + " fields, the header " + std::to_string(header.width),
                "The file was cut off or damaged; fetch it again");
            return false;
        }
        if (calendar.taken() == 0) stamp_minute = stamp->minute;
        if (stamp->minute != stamp_minute && !calendar.is_lost()) {
            problems.add(line->number, 1,
                         "the row is for '" + for_message(fields.front().text, 20) + "', expected minute " +
                             std::to_string(stamp_minute) + " as in the first row",
                         order_remedy);
            return false;
        }
        const Calendar::Answer answer = calendar.accept(stamp->month, stamp->day, stamp->hour, line->number);
        if (answer == Calendar::Answer::wrong) {
            calendar.lost_at(line->number, 1, "'" + for_message(fields.front().text, 20) + "'");
        }
        if (answer != Calendar::Answer::take) continue;
        read_row(line->number, fields, header, raw, problems);
        if (problems.full()) return false;
    }
    if (calendar.leap_day_left_out()) raw.year.remarks.push_back("29 February is left out.");
    return calendar.whole(lines.last_number(), problems) && problems.empty();
}

}  // namespace

Result<Year> read_pvgis_tmy(std::string_view text, const std::string& file_name) {
    Problems problems(file_name);
    if (!plausible_text(text, problems)) return problems.take();
    RawYear raw;
    raw.year.format = "PVGIS TMY";
    Lines lines(text);
    std::vector<Field> fields;
    Header header;
    if (!read_header(lines, fields, raw.year, header, problems)) return problems.take();
    // The rows' own zone is chosen here, so that it never contradicts the longitude.
    raw.year.utc_offset_h =
        std::fabs(raw.year.longitude_deg) <= 180.0 ? std::round(raw.year.longitude_deg / 15.0) : 0.0;
    check_place(raw.year, header.place_line, problems);
    if (!problems.empty()) return problems.take();
    int stamp_minute = 0;
    if (!read_rows(lines, fields, header, raw, stamp_minute, problems)) return problems.take();

    Year& year = raw.year;
    year.source = "PVGIS typical year, " + fixed(year.latitude_deg, 3) + " " + fixed(year.longitude_deg, 3);
    const int offset_h = static_cast<int>(year.utc_offset_h);
    // The light is read at the stamp plus the header's offset; the row is the hour in which that moment lies.
    const double minute = stamp_minute + header.offset_min.value_or(0.0);
    const double whole_hours = std::floor(minute / 60.0);
    year.sun_minute = minute - 60.0 * whole_hours;
    to_local_time(raw, offset_h + static_cast<int>(whole_hours));
    if (offset_h != 0) {
        year.remarks.push_back("Moved from UTC to local standard time UTC" + std::string(offset_h > 0 ? "+" : "") +
                               std::to_string(offset_h) + "; the hours over the turn of the year close the circle.");
    }
    Result<Year> result = finish(std::move(raw), header.place_line, problems);
    if (result && !header.offset_min) adopt_minute_of_light(result.value());
    return result;
}

}  // namespace wg::weather
