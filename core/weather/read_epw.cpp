// EnergyPlus weather files: U.S. DOE, EnergyPlus Auxiliary Programs, "Weather Data File Format".

#include <cmath>

#include "core/quantity/utf8.h"
#include "core/weather/adopt_minute.h"
#include "core/weather/raw_year.h"
#include "core/weather/read.h"

namespace wg::weather {
namespace {

using namespace detail;

constexpr std::size_t least_fields = 22;  // up to wind speed; later ones may be cut off
constexpr Quantity air = {"dry bulb temperature", "deg C", -70, 60, 99.9, -infinite};
constexpr Quantity dew = {"dew point", "deg C", -90, 60, 99.9, -infinite};
constexpr Quantity humidity = {"relative humidity", "%", 0, 110, 999, -infinite};
constexpr Quantity pressure = {"station pressure", "Pa", 50000, 110000, 999999, -infinite};
constexpr Quantity long_wave = {"horizontal infrared", "W/m2", 50, 700, 9999, -infinite};
constexpr Quantity global = {"global horizontal", "W/m2", lowest_light_w_m2, 1500, 9999, -infinite};
constexpr Quantity beam = {"direct normal", "W/m2", lowest_light_w_m2, 1400, 9999, -infinite};
constexpr Quantity diffuse = {"diffuse horizontal", "W/m2", lowest_light_w_m2, 1000, 9999, -infinite};
constexpr Quantity wind = {"wind speed", "m/s", 0, 60, 999, -infinite};
constexpr Quantity cover = {"opaque sky cover", "parts of 1", 0, 1, 99, -infinite, 0.1};

void read_location(const Line& line, const std::vector<Field>& fields, Year& year, Problems& problems) {
    if (fields.size() < 10) {
        problems.add(
            line.number, 1,
            "LOCATION has " + std::to_string(fields.size()) + " fields instead of 10, so the place is not known",
            "Fetch the file again");
        return;
    }
    const auto coordinate = [&](std::size_t i, const char* what) {
        const std::optional<double> value = number(fields[i].text);
        if (!value) {
            problems.add(line.number, fields[i].column,
                         std::string(what) + " is '" + for_message(fields[i].text, 30) + "', not a number",
                         "Correct the LOCATION line");
        }
        return value.value_or(0.0);
    };
    year.latitude_deg = coordinate(6, "latitude");
    year.longitude_deg = coordinate(7, "longitude");
    year.utc_offset_h = coordinate(8, "time zone");
    year.altitude_m = coordinate(9, "elevation");
    year.source = for_message(fields[1].text) + ", " + for_message(fields[4].text) + " " + for_message(fields[5].text);
}

// One record an hour is all this reads.
void read_periods(const Line& line, const std::vector<Field>& fields, Problems& problems) {
    if (fields.size() >= 3 && fields[1].text == "1" && fields[2].text == "1") return;
    problems.add(line.number, 1, "DATA PERIODS does not say one period with one record an hour",
                 "Choose an hourly file of one whole year");
}

// Reads the header up to DATA PERIODS; false when it is not there.
bool read_header(Lines& lines, std::vector<Field>& fields, RawYear& raw, int& place_line, Problems& problems) {
    while (const auto line = lines.next()) {
        split(line->text, fields);
        const std::string_view key = fields.front().text;
        if (key == "LOCATION") {
            place_line = line->number;
            read_location(*line, fields, raw.year, problems);
        } else if (key == "DATA PERIODS") {
            read_periods(*line, fields, problems);
            if (place_line == 0) {
                problems.add(line->number, 1, "there is no LOCATION line", "Fetch the file again");
            }
            return true;
        } else if (line->number > 40) {
            break;
        }
    }
    problems.add(lines.last_number(), 1, "there is no DATA PERIODS line", "Fetch the file again");
    return false;
}

void read_row(const Line& line, const std::vector<Field>& f, RawYear& raw, Problems& problems) {
    raw.line_of_row.push_back(line.number);
    raw.air.push_back(read_value(f[6], air, line.number, problems));
    raw.dew_point.push_back(read_value(f[7], dew, line.number, problems));
    raw.humidity.push_back(read_value(f[8], humidity, line.number, problems));
    raw.pressure.push_back(read_value(f[9], pressure, line.number, problems));
    raw.long_wave.push_back(read_value(f[12], long_wave, line.number, problems));
    raw.global.push_back(read_light(f[13], global, line.number, raw, problems));
    raw.beam.push_back(read_light(f[14], beam, line.number, raw, problems));
    raw.diffuse.push_back(read_light(f[15], diffuse, line.number, raw, problems));
    raw.wind.push_back(read_value(f[21], wind, line.number, problems));
    raw.cover.push_back(f.size() > 23 ? read_value(f[23], cover, line.number, problems) : missing);
}

}  // namespace

Result<Year> read_epw(std::string_view text, const std::string& file_name) {
    Problems problems(file_name);
    if (!plausible_text(text, problems)) return problems.take();
    RawYear raw;
    raw.year.format = "EPW";
    raw.year.sun_minute = 30.0;
    Lines lines(text);
    std::vector<Field> fields;
    int place_line = 0;
    if (!read_header(lines, fields, raw, place_line, problems) || !problems.empty()) return problems.take();

    Calendar calendar;
    while (const auto line = lines.next()) {
        if (line->text.empty()) continue;
        split(line->text, fields);
        if (fields.size() < least_fields) {
            if (calendar.is_lost()) break;
            problems.add(line->number, 1,
                         "the row has " + std::to_string(fields.size()) + " fields, at least 22 are needed",
                         "The file was cut off or damaged; fetch it again");
            return problems.take();
        }
        const int month = whole_number(fields[1].text).value_or(0);
        const int day = whole_number(fields[2].text).value_or(0);
        const int hour = whole_number(fields[3].text).value_or(0);
        const Calendar::Answer answer = calendar.accept(month, day, hour - 1, line->number);
        if (answer == Calendar::Answer::wrong) {
            calendar.lost_at(line->number, fields[1].column, "'" + for_message(line->text.substr(0, 30), 30) + "'");
        }
        if (answer != Calendar::Answer::take) continue;
        read_row(*line, fields, raw, problems);
        if (problems.full()) return problems.take();
    }
    if (!calendar.whole(lines.last_number(), problems) || !problems.empty()) return problems.take();
    if (calendar.leap_day_left_out()) raw.year.remarks.push_back("29 February is left out.");
    Result<Year> year = finish(std::move(raw), place_line, problems);
    if (year) adopt_minute_of_light(year.value());
    return year;
}

}  // namespace wg::weather
