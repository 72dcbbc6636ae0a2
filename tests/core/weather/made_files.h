#pragma once
// Small, regular weather years written out in each public format, so that readers are tested without real files.

#include <array>
#include <cmath>
#include <cstdio>
#include <functional>
#include <string>
#include <vector>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/sun/year.h"
#include "core/weather/diffuse_split.h"

namespace wg::weather {

/// One hour as a file would have it.
struct MadeHour {
    int month = 1, day = 1, hour = 0;  ///< hour 0..23 starts the hour
    double global = 0.0, beam = 0.0, diffuse = 0.0;
    double air_c = 10.0, dew_c = 5.0, humidity = 70.0, wind = 3.0, pressure_pa = 100000.0, long_wave = 300.0,
           cover = 4.0;
};

/// A year of half-clear sky at a place, consistent with the sun at `minute` of each hour.
inline std::vector<MadeHour> made_year(double latitude, double longitude, double altitude, double utc_offset,
                                       double minute = 30.0) {
    const sun::YearSun sun = sun::year_sun({latitude, longitude, altitude, utc_offset, minute, sun::weather_sun_year});
    std::vector<MadeHour> hours(8760);
    for (int h = 0; h < 8760; ++h) {
        const auto i = static_cast<std::size_t>(h);
        MadeHour& row = hours[i];
        row.month = month_of_hour(h);
        row.day = (h - first_hour_of_month(row.month)) / 24 + 1;
        row.hour = h % 24;
        const double up = sun.up[i] > 0.0 ? sun.up[i] : 0.0;
        const double clearness = 0.35 + 0.3 * (row.day % 3) / 2.0;
        row.global = clearness * up * sun.extraterrestrial_normal_w_m2[i] * sun.up_share[i];
        const Split split = split_erbs(row.global, sun.up[i], sun.extraterrestrial_normal_w_m2[i], sun.up_share[i]);
        row.beam = split.beam_normal_w_m2;
        row.diffuse = split.diffuse_w_m2;
        row.air_c = 10.0 - 10.0 * std::cos(2.0 * pi * h / 8760.0) + 3.0 * std::sin(2.0 * pi * (h % 24 - 9) / 24.0);
        row.dew_c = row.air_c - 4.0;
    }
    return hours;
}

inline std::string formatted(const char* format, double value) {
    char out[64];
    std::snprintf(out, sizeof out, format, value);
    return out;
}

inline std::string epw_row(const MadeHour& r) {
    return "2001," + std::to_string(r.month) + "," + std::to_string(r.day) + "," + std::to_string(r.hour + 1) +
           ",60,?9," + formatted("%.2f", r.air_c) + "," + formatted("%.2f", r.dew_c) + "," +
           formatted("%.0f", r.humidity) + "," + formatted("%.0f", r.pressure_pa) + ",9999,9999," +
           formatted("%.2f", r.long_wave) + "," + formatted("%.3f", r.global) + "," + formatted("%.3f", r.beam) + "," +
           formatted("%.3f", r.diffuse) + ",999999,999999,999999,9999,180," + formatted("%.1f", r.wind) + ",6," +
           formatted("%.0f", r.cover) + ",20.0,420,9,999999999,0,0.05,0,88,0,0,0\n";
}

inline std::string epw_header(const std::string& place = "Made Up,-,XXX,made,000000,47.400,9.200,1.0,520.0") {
    return "LOCATION," + place +
           "\nDESIGN CONDITIONS,0\nTYPICAL/EXTREME PERIODS,0\nGROUND TEMPERATURES,0\nHOLIDAYS/DAYLIGHT "
           "SAVINGS,No,0,0,0\nCOMMENTS 1,made for a test\nCOMMENTS 2\nDATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31\n";
}

inline std::string epw_text(const std::vector<MadeHour>& hours) {
    std::string text = epw_header();
    for (const MadeHour& r : hours)
        text += epw_row(r);
    return text;
}

inline std::string tmy3_row(const MadeHour& r) {
    char stamp[40];
    std::snprintf(stamp, sizeof stamp, "%02d/%02d/2001,%02d:00", r.month, r.day, r.hour + 1);
    return std::string(stamp) + "," + formatted("%.3f", r.global) + "," + formatted("%.3f", r.beam) + "," +
           formatted("%.3f", r.diffuse) + "," + formatted("%.0f", r.cover) + "," + formatted("%.2f", r.air_c) + "," +
           formatted("%.2f", r.dew_c) + "," + formatted("%.0f", r.humidity) + "," +
           formatted("%.2f", r.pressure_pa / 100.0) + "," + formatted("%.1f", r.wind) + "\n";
}

inline std::string tmy3_header(const std::string& place = "000000,\"MADE, UP\",XX,1.0,47.400,9.200,520") {
    return place +
           "\nDate (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),OpqCld (tenths),Dry-bulb "
           "(C),Dew-point "
           "(C),RHum (%),Pressure (mbar),Wspd (m/s)\n";
}

inline std::string tmy3_text(const std::vector<MadeHour>& hours) {
    std::string text = tmy3_header();
    for (const MadeHour& r : hours)
        text += tmy3_row(r);
    return text;
}

inline std::string pvgis_row(const MadeHour& r) {
    char stamp[40];
    std::snprintf(stamp, sizeof stamp, "2001%02d%02d:%02d00", r.month, r.day, r.hour);
    return std::string(stamp) + "," + formatted("%.2f", r.air_c) + "," + formatted("%.2f", r.humidity) + "," +
           formatted("%.3f", r.global) + "," + formatted("%.3f", r.beam) + "," + formatted("%.3f", r.diffuse) + "," +
           formatted("%.2f", r.long_wave) + "," + formatted("%.2f", r.wind) + ",180.0," +
           formatted("%.1f", r.pressure_pa) + "\r\n";
}

inline std::string pvgis_header(const std::string& extra = "") {
    return "Latitude (decimal degrees): 47.400\r\nLongitude (decimal degrees): 9.200\r\nElevation (m): 520.0\r\n" +
           extra + "month,year\r\n1,2001\r\n2,2001\r\ntime(UTC),T2m,RH,G(h),Gb(n),Gd(h),IR(h),WS10m,WD10m,SP\r\n";
}

/// Rows of `hours` are UTC hours here.
inline std::string pvgis_text(const std::vector<MadeHour>& hours, const std::string& extra = "") {
    std::string text = pvgis_header(extra);
    for (const MadeHour& r : hours)
        text += pvgis_row(r);
    return text + "\r\nT2m: 2-m air temperature (degree Celsius)\r\n";
}

/// The text with line `number` (from 1) put through `change`.
inline std::string with_line(const std::string& text, int number,
                             const std::function<std::string(std::string)>& change) {
    std::size_t from = 0;
    for (int i = 1; i < number; ++i)
        from = text.find('\n', from) + 1;
    const std::size_t to = text.find('\n', from) + 1;
    return text.substr(0, from) + change(text.substr(from, to - from)) + text.substr(to);
}

/// A row with its field `index` (from 0) replaced.
inline std::string with_field(const std::string& row, std::size_t index, const std::string& value) {
    std::size_t from = 0;
    for (std::size_t i = 0; i < index; ++i)
        from = row.find(',', from) + 1;
    std::size_t to = row.find(',', from);
    if (to == std::string::npos) to = row.find_first_of("\r\n", from);
    return row.substr(0, from) + value + row.substr(to);
}

}  // namespace wg::weather
