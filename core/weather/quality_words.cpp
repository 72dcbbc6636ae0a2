// The report in words.

#include <cmath>

#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/weather/quality_parts.h"

namespace wg::weather {
namespace {

constexpr std::array<const char*, 12> months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

std::string padded(const std::string& text, std::size_t width) {
    return text.size() >= width ? text : std::string(width - text.size(), ' ') + text;
}

// First hour with a flag, "21 Jun 14 h".
std::string first_hour_text(const QualityReport& report, Flag flag) {
    for (std::size_t i = 0; i < report.flags.size(); ++i) {
        if (!report.has(i, flag)) continue;
        const int hour = static_cast<int>(i);
        const int month = month_of_hour(hour);
        return std::to_string((hour - first_hour_of_month(month)) / 24 + 1) + " " +
               months[static_cast<std::size_t>(month - 1)] + " " + std::to_string(hour % 24) + " h";
    }
    return {};
}

void remark_on_flags(QualityReport& report) {
    const auto remark = [&report](Flag flag, int from, const std::string& text, const char* todo) {
        const int hours = report.hours(flag);
        if (hours < from) return;
        report.remarks.push_back(text + " in " + counted(hours, "hour", "hours") + ", first on " +
                                 first_hour_text(report, flag) + ": " + todo + ".");
    };
    remark(Flag::above_clear_sky, 25, "Clearly more light than under a very clean sky",
           "check unit and calibration of global");
    remark(Flag::stuck, 1, "Air or light stands still", "the logger may have stopped");
    remark(Flag::jump, 5, "Air temperature jumps by over 10 K", "a fault, or months of two years put together");
}

// Stamps that follow the clocks of summer stand an hour off those of winter.
void remark_on_seasons(QualityReport& report) {
    const std::optional<double>& winter = report.season_shift_min[0];
    const std::optional<double>& summer = report.season_shift_min[2];
    if (!winter || !summer) return;
    const double apart_min = std::fabs(*summer - *winter);
    if (apart_min < 25.0) return;
    const std::string apart =
        "Clear days of June to August stand " + fixed(apart_min, 0) + " minutes off those of December to February: ";
    report.remarks.push_back(apart +
                             (apart_min > 40.0 && apart_min < 80.0
                                  ? "the stamps look like daylight saving time. Ask for the file in standard time."
                                  : "the clock may have been changed within the year, or hills shade one side."));
}

}  // namespace

const std::array<const char*, 4>& season_names() noexcept {
    static constexpr std::array<const char*, 4> names = {"Dec-Feb", "Mar-May", "Jun-Aug", "Sep-Nov"};
    return names;
}

void detail::add_remarks(const Year& year, QualityReport& report) {
    const auto remark = [&](std::string text) { report.remarks.push_back(std::move(text)); };
    if (report.hours_light_below_horizon > 0) {
        remark("Light with the sun below the horizon in " + counted(report.hours_light_below_horizon, "hour", "hours") +
               ": time zone, longitude or stamps may be wrong.");
    }
    if (report.hours_closure_off > 87) {  // one hour in a hundred
        remark("Global, beam and diffuse do not fit together in " + counted(report.hours_closure_off, "hour", "hours") +
               " (over 50 W/m2 and over 15 %).");
    }
    if (report.hours_above_extraterrestrial > 10) {
        remark("More light than above the atmosphere in " +
               counted(report.hours_above_extraterrestrial, "hour", "hours") + ".");
    }
    remark_on_flags(report);
    if (std::fabs(report.best_shift_min) > 30.0) {
        remark("Clear mornings and afternoons would be symmetric with the stamps " +
               fixed(std::fabs(report.best_shift_min), 0) + " minutes " +
               (report.best_shift_min > 0.0 ? "later" : "earlier") +
               ": check the time zone and what the stamps mean, or expect hills and haze on one side.");
    }
    remark_on_seasons(report);
    // Across the date line the two differ by a day.
    const double solar_offset_h = std::remainder(year.utc_offset_h - year.longitude_deg / 15.0, 24.0);
    if (std::fabs(solar_offset_h) > 3.0) {
        remark("Time zone and longitude differ by " + fixed(std::fabs(solar_offset_h), 1) +
               " hours: check the sign of the longitude (east is positive).");
    }
    const bool north = year.latitude_deg > 20.0;
    const bool south = year.latitude_deg < -20.0;
    const double winter_less_summer = report.air_mean_c[0] - report.air_mean_c[6];
    if ((north && winter_less_summer > 2.0) || (south && winter_less_summer < -2.0)) {
        remark("January and July temperatures do not suit the hemisphere: check the sign of the latitude.");
    }
    if (report.global_year_kwh_m2 < 500.0 || report.global_year_kwh_m2 > 2700.0) {
        remark("Global of the year is " + fixed(report.global_year_kwh_m2, 0) +
               " kWh/m2; inhabited places lie between 500 and 2700.");
    }
    if (report.wind_mean_m_s < 0.5) remark("Mean wind is " + fixed(report.wind_mean_m_s, 2) + " m/s: hardly any.");
}

std::string text(const Year& year, const QualityReport& report) {
    std::string out;
    out += year.source + " (" + year.format + ")" + (year.invented ? ", invented" : "") + "\n";
    out += "Place: " + fixed(std::fabs(year.latitude_deg), 3) + (year.latitude_deg < 0.0 ? " S, " : " N, ") +
           fixed(std::fabs(year.longitude_deg), 3) + (year.longitude_deg < 0.0 ? " W, " : " E, ") +
           fixed(year.altitude_m, 0) + " m, UTC" + (year.utc_offset_h < 0.0 ? "" : "+") + fixed(year.utc_offset_h, 1) +
           " h\n";
    out += "Sun at minute " + fixed(year.sun_minute, 0) + " of each hour\n\n";
    out += "Month   Global     Beam  Diffuse    Air\n";
    out += "        kWh/m2   kWh/m2   kWh/m2  deg C\n";
    const auto row = [&](const std::string& name, double global, double beam, double diffuse, double air) {
        out += name + std::string(5 - name.size(), ' ') + padded(fixed(global, 1), 9) + padded(fixed(beam, 1), 9) +
               padded(fixed(diffuse, 1), 9) + padded(fixed(air, 1), 7) + "\n";
    };
    double beam_year = 0.0;
    for (std::size_t m = 0; m < 12; ++m) {
        row(months[m], report.global_kwh_m2[m], report.beam_horizontal_kwh_m2[m], report.diffuse_kwh_m2[m],
            report.air_mean_c[m]);
        beam_year += report.beam_horizontal_kwh_m2[m];
    }
    row("Year", report.global_year_kwh_m2, beam_year, report.diffuse_year_kwh_m2, report.air_mean_year_c);
    out += "\nBeam facing the sun: " + fixed(report.beam_normal_year_kwh_m2, 0) + " kWh/m2 a year\n";
    out += "Air: " + fixed(report.air_min_c, 1) + " to " + fixed(report.air_max_c, 1) + " deg C\n";
    out += "Mean wind at 10 m: " + fixed(report.wind_mean_m_s, 1) + " m/s\n";
    out += "Long-wave from the sky: ";
    out += year.sky_long_wave_w_m2.empty() ? "not in the file, worked out from humidity and cloud\n" : "in the file\n";
    out += "Hours with light below the horizon: " + std::to_string(report.hours_light_below_horizon) + "\n";
    out += "Hours in which global, beam and diffuse do not fit: " + std::to_string(report.hours_closure_off) + "\n";
    out +=
        "Hours above the light outside the atmosphere: " + std::to_string(report.hours_above_extraterrestrial) + "\n";
    out += "Hours above a very clean sky: " + std::to_string(report.hours(Flag::above_clear_sky)) + "\n";
    out += "Hours in which air or light stands still: " + std::to_string(report.hours(Flag::stuck)) + "\n";
    out += "Jumps of the temperature: " + std::to_string(report.hours(Flag::jump)) + "\n";
    if (report.clear_days < detail::least_clear_days) {
        out += "Symmetry of clear days: too few clear days to tell\n";
    } else {
        out += "Symmetry of clear days: stamps off by " + fixed(report.best_shift_min, 0) + " minutes (" +
               counted(report.clear_days, "clear day", "clear days") + ")\n";
    }
    for (std::size_t s = 0; s < season_names().size(); ++s) {
        if (!report.season_shift_min[s]) continue;
        out += std::string("  ") + season_names()[s] + ": " + fixed(*report.season_shift_min[s], 0) + " minutes (" +
               counted(report.season_clear_days[s], "clear day", "clear days") + ")\n";
    }
    if (report.closure) {
        out += "Light fits together best with the sun at minute " + fixed(report.closure->minute, 0) + " (" +
               fixed(report.closure->off_w_m2, 1) + " W/m2 off)\n";
    }
    out += report.remarks.empty() ? "\nNo fault found in the figures.\n" : "\nFaults found in the figures:\n";
    for (const std::string& remark : report.remarks)
        out += "- " + remark + "\n";
    if (!year.remarks.empty()) out += "Changed or assumed while reading:\n";
    for (const std::string& remark : year.remarks)
        out += "- " + remark + "\n";
    return out;
}

}  // namespace wg::weather
