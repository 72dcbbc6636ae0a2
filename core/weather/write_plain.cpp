#include "core/weather/write_plain.h"

#include <algorithm>
#include <charconv>
#include <cstdio>

#include "core/quantity/time.h"
#include "core/sun/year.h"
#include "core/weather/plain_header.h"

namespace wg::weather {
namespace {

// The fewest digits that give the same double again, always with a point as decimal mark.
void append(std::string& out, double value) {
    char digits[40];
    const auto done = std::to_chars(digits, digits + sizeof digits, value);
    out.append(digits, done.ptr);
}

// A value as `entry_of` gives it back: one line, no blanks or separators at its ends.
std::string header_text(const std::string& text) {
    std::string out = detail::one_line(text);
    while (!out.empty() && (out.back() == ' ' || out.back() == ',' || out.back() == ';'))
        out.pop_back();
    return out.substr(std::min(out.size(), out.find_first_not_of(' ')));
}

void append_stamp(std::string& out, int hour_of_year) {
    const int month = month_of_hour(hour_of_year);
    char stamp[40];
    std::snprintf(stamp, sizeof stamp, "%04d-%02d-%02d %02d:00", sun::weather_sun_year, month,
                  (hour_of_year - first_hour_of_month(month)) / 24 + 1, hour_of_year % 24);
    out += stamp;
}

}  // namespace

std::string write_plain(const Year& year) {
    struct Column {
        const char* name;
        const std::vector<double>* series;
    };
    const Column all[] = {{"global_w_m2", &year.global_w_m2},    {"beam_normal_w_m2", &year.beam_normal_w_m2},
                          {"diffuse_w_m2", &year.diffuse_w_m2},  {"air_c", &year.air_c},
                          {"dew_point_c", &year.dew_point_c},    {"wind_m_s", &year.wind_m_s},
                          {"pressure_pa", &year.pressure_pa},    {"sky_long_wave_w_m2", &year.sky_long_wave_w_m2},
                          {"cloud_cover_share", &year.sky_cover}};
    std::string out = "# hourly weather of one year, plain CSV, version 1\n";
    const auto line = [&out](const char* key, const std::string& value) {
        out += std::string("# ") + key + ": " + value + "\n";
    };
    const auto figure = [&](const char* key, double value) {
        std::string digits;
        append(digits, value);
        line(key, digits);
    };
    line("source", header_text(year.source));
    line("from_format", header_text(detail::one_line(year.format, 40)));
    line("invented", year.invented ? "yes" : "no");
    figure("latitude_deg", year.latitude_deg);
    figure("longitude_deg", year.longitude_deg);
    figure("altitude_m", year.altitude_m);
    figure("utc_offset_h", year.utc_offset_h);
    line("stamp", "start");
    figure("sun_minute", year.sun_minute);
    for (std::size_t i = 0; i < year.remarks.size() && i < detail::most_plain_remarks; ++i)
        line("remark", header_text(year.remarks[i]));
    out += "time";
    for (const Column& column : all) {
        if (column.series->size() == hours_in_year) out += std::string(",") + column.name;
    }
    out += '\n';
    for (int h = 0; h < hours_in_year; ++h) {
        append_stamp(out, h);
        for (const Column& column : all) {
            if (column.series->size() != hours_in_year) continue;
            out += ',';
            append(out, (*column.series)[static_cast<std::size_t>(h)]);
        }
        out += '\n';
    }
    return out;
}

}  // namespace wg::weather
