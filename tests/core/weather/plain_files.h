#pragma once
// Made weather years written out in our own plain CSV, the way a person or a spreadsheet would.

#include <string>
#include <vector>

#include "tests/core/weather/made_files.h"

namespace wg::weather {

struct PlainStyle {
    std::string place = "# latitude_deg: 47.4\n# longitude_deg: 9.2\n# altitude_m: 520\n# utc_offset_h: 1\n";
    std::string stamp = "start";
    int year = 2027;
    int minute = 0;  ///< added to every stamp
    char separator = ',';
    bool decimal_comma = false;
    bool all_columns = true;  ///< else time, global and air only
};

inline std::string plain_header(const PlainStyle& style) {
    const std::string names =
        style.all_columns ? "time,global_w_m2,beam_normal_w_m2,diffuse_w_m2,air_c,dew_point_c,wind_m_s,pressure_pa"
                          : "time,global_w_m2,air_c";
    std::string columns;
    for (const char c : names)
        columns += c == ',' ? style.separator : c;
    return "# source: made for a test\n" + style.place + "# stamp: " + style.stamp + "\n" + columns + "\n";
}

/// One row; its hour counts in the civil year of the style.
inline std::string plain_row(const MadeHour& r, const PlainStyle& style) {
    const int later = style.stamp == "start" ? 0 : style.stamp == "middle" ? 30 : 60;
    const std::int64_t minutes =
        (days_from_civil({style.year, r.month, r.day}) * 24 + r.hour) * 60 + later + style.minute;
    const CivilDate date = civil_from_days(minutes / 1440);
    char stamp[40];
    std::snprintf(stamp, sizeof stamp, "%04d-%02d-%02d %02d:%02d", date.year, date.month, date.day,
                  static_cast<int>(minutes % 1440) / 60, static_cast<int>(minutes % 60));
    std::string row;
    const auto add = [&](const std::string& figure) {
        row += style.separator;
        for (const char c : figure)
            row += c == '.' && style.decimal_comma ? ',' : c;
    };
    add(formatted("%.3f", r.global));
    if (style.all_columns) {
        add(formatted("%.3f", r.beam));
        add(formatted("%.3f", r.diffuse));
    }
    add(formatted("%.2f", r.air_c));
    if (style.all_columns) {
        add(formatted("%.2f", r.dew_c));
        add(formatted("%.1f", r.wind));
        add(formatted("%.0f", r.pressure_pa));
    }
    return stamp + row + "\n";
}

inline std::string plain_text(const std::vector<MadeHour>& hours, const PlainStyle& style = {}) {
    std::string text = plain_header(style);
    for (const MadeHour& r : hours)
        text += plain_row(r, style);
    return text;
}

}  // namespace wg::weather
