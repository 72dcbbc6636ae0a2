#include "core/weather/raw_year.h"

#include <array>
#include <cmath>

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"

namespace wg::weather::detail {
namespace {

std::string found(const Field& field) {
    return "'" + for_message(field.text, 30) + "'";
}

}  // namespace

RawYear::RawYear() {
    for (std::vector<double>* series :
         {&global, &beam, &diffuse, &air, &dew_point, &humidity, &wind, &pressure, &long_wave, &cover}) {
        series->reserve(hours_in_year);
    }
    line_of_row.reserve(hours_in_year);
}

double read_value(const Field& field, const Quantity& quantity, int line, Problems& problems) {
    if (field.text.empty()) return missing;
    const std::optional<double> value = number(field.text);
    if (!value) {
        problems.add(line, field.column, std::string(quantity.name) + " is " + found(field) + ", not a number",
                     "Correct the value, or fetch the file again");
        return missing;
    }
    if (*value >= quantity.missing_from || *value <= quantity.missing_below) return missing;
    const double scaled = *value * quantity.scale;
    if (scaled < quantity.lowest || scaled > quantity.highest) {
        problems.add(line, field.column,
                     std::string(quantity.name) + " is " + found(field) + ", outside " + fixed(quantity.lowest, 0) +
                         " to " + fixed(quantity.highest, 0) + " " + quantity.unit,
                     "Correct the value, or mark it as missing the way the format does");
        return missing;
    }
    return scaled;
}

double read_light(const Field& field, const Quantity& quantity, int line, RawYear& raw, Problems& problems) {
    const double value = read_value(field, quantity, line, problems);
    if (!(value <= 0.0)) return value;
    if (value < 0.0) ++raw.small_negatives;
    return 0.0;
}

void check_place(const Year& year, int header_line, Problems& problems) {
    const auto outside = [&](double value, double low, double high, const char* what) {
        if (value >= low && value <= high) return;
        problems.add(
            header_line, 1,
            std::string(what) + " is " + fixed(value, 3) + ", outside " + fixed(low, 0) + " to " + fixed(high, 0),
            "Correct the place in the file's header");
    };
    outside(year.latitude_deg, -90.0, 90.0, "latitude");
    outside(year.longitude_deg, -180.0, 180.0, "longitude");
    outside(year.altitude_m, -450.0, 6000.0, "altitude in m");
    outside(year.utc_offset_h, -12.0, 14.0, "time zone in hours");
    const double solar_offset_h = year.utc_offset_h - year.longitude_deg / 15.0;
    if (problems.empty() && std::fabs(solar_offset_h) > 6.0 && std::fabs(solar_offset_h) < 18.0) {
        problems.add(header_line, 1,
                     "time zone " + fixed(year.utc_offset_h, 1) + " h and longitude " + fixed(year.longitude_deg, 2) +
                         " deg contradict each other: noon would be more than six hours off",
                     "Check the sign of the longitude (east positive) and of the time zone");
    }
}

}  // namespace wg::weather::detail
