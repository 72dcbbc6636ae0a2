#include "core/weather/quality.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/sun/clear_sky.h"
#include "core/sun/ephemeris.h"
#include "core/sun/extraterrestrial.h"
#include "core/sun/year.h"

namespace wg::weather {
namespace {

constexpr double light_at_night_w_m2 = 5.0;
constexpr double sin_1_deg = 0.0174524064;
constexpr double closure_w_m2 = 50.0;
constexpr double closure_share = 0.15;
constexpr double extraterrestrial_margin_w_m2 = 20.0;  // low sun: the mean over an hour against one moment
constexpr double clear_day_share = 0.85;               // of Haurwitz' clear sky over the day
constexpr int least_clear_days = 10;
constexpr double largest_shift_min = 120.0;

void add_sums(const Year& year, const sun::YearSun& sun, QualityReport& report) {
    std::array<double, 12> hours{};
    report.air_min_c = report.air_max_c = year.air_c.front();
    for (int h = 0; h < hours_in_year; ++h) {
        const auto i = static_cast<std::size_t>(h);
        const auto month = static_cast<std::size_t>(month_of_hour(h) - 1);
        hours[month] += 1.0;
        report.global_kwh_m2[month] += 1e-3 * year.global_w_m2[i];
        report.beam_horizontal_kwh_m2[month] += 1e-3 * year.beam_normal_w_m2[i] * std::fmax(0.0, sun.up[i]);
        report.diffuse_kwh_m2[month] += 1e-3 * year.diffuse_w_m2[i];
        report.air_mean_c[month] += year.air_c[i];
        report.beam_normal_year_kwh_m2 += 1e-3 * year.beam_normal_w_m2[i];
        report.air_mean_year_c += year.air_c[i] / hours_in_year;
        report.wind_mean_m_s += year.wind_m_s[i] / hours_in_year;
        report.air_min_c = std::fmin(report.air_min_c, year.air_c[i]);
        report.air_max_c = std::fmax(report.air_max_c, year.air_c[i]);
    }
    for (std::size_t m = 0; m < 12; ++m) {
        report.air_mean_c[m] /= hours[m];
        report.global_year_kwh_m2 += report.global_kwh_m2[m];
        report.diffuse_year_kwh_m2 += report.diffuse_kwh_m2[m];
    }
}

void add_checks(const Year& year, const sun::YearSun& sun, QualityReport& report) {
    for (std::size_t i = 0; i < year.global_w_m2.size(); ++i) {
        const double up = sun.up[i];
        const double global = year.global_w_m2[i];
        const double normal = sun.extraterrestrial_normal_w_m2[i];
        if (sun.up_share[i] == 0.0 && up < -sin_1_deg && global > light_at_night_w_m2) {
            ++report.hours_light_below_horizon;
        }
        const double off = std::fabs(global - year.diffuse_w_m2[i] - year.beam_normal_w_m2[i] * std::fmax(0.0, up));
        if (off > closure_w_m2 && off > closure_share * global) ++report.hours_closure_off;
        if (global > normal * std::fmax(0.0, up) + extraterrestrial_margin_w_m2 || year.beam_normal_w_m2[i] > normal) {
            ++report.hours_above_extraterrestrial;
        }
    }
}

struct ClearHour {
    double start_unix_s, global;
};

// Days whose global comes near the clear-sky sum: their mornings and afternoons should mirror each other.
std::vector<ClearHour> clear_hours(const Year& year, const sun::YearSun& sun, double start_unix_s, int& days) {
    std::vector<ClearHour> hours;
    days = 0;
    for (std::size_t day = 0; day < 365; ++day) {
        double measured = 0.0;
        double clear = 0.0;
        for (std::size_t i = day * 24; i < day * 24 + 24; ++i) {
            measured += year.global_w_m2[i];
            clear += sun::haurwitz_global_w_m2(sun.up[i]);
        }
        if (clear < 1500.0 || measured < clear_day_share * clear) continue;
        ++days;
        for (std::size_t i = day * 24; i < day * 24 + 24; ++i) {
            if (year.global_w_m2[i] <= 0.0) continue;
            hours.push_back({start_unix_s + 3600.0 * static_cast<double>(i), year.global_w_m2[i]});
        }
    }
    return hours;
}

// The light's centre of gravity against the sun's noon, for stamps shifted by `shift_min`: weights global with the
// sun's easting. Zero when morning and afternoon carry the same light at the same height of the sun.
double lopsided(const std::vector<ClearHour>& hours, const sun::Ephemeris& ephemeris, const sun::Place& place,
                double minute) {
    double sum = 0.0;
    for (const ClearHour& h : hours)
        sum += h.global * ephemeris.direction(h.start_unix_s + 60.0 * minute, place).east;
    return sum;
}

void add_shift(const Year& year, const sun::YearSun& sun, QualityReport& report) {
    const double start = sun::year_start_unix_s(sun::weather_sun_year, year.utc_offset_h);
    const std::vector<ClearHour> hours = clear_hours(year, sun, start, report.clear_days);
    if (report.clear_days < least_clear_days) return;
    sun::Observer observer;
    observer.latitude_deg = year.latitude_deg;
    observer.longitude_deg = year.longitude_deg;
    observer.altitude_m = year.altitude_m;
    const sun::Place place(observer);
    const auto start_s = static_cast<std::int64_t>(start);
    const sun::Ephemeris ephemeris(Instant{start_s - 2 * 86400}, Instant{start_s + 367 * 86400},
                                   sun::delta_t_s(sun::weather_sun_year + 0.5));
    // Easting falls with time, so the sum falls with the shift: bisection.
    double low = year.sun_minute - largest_shift_min;
    double high = year.sun_minute + largest_shift_min;
    if (lopsided(hours, ephemeris, place, low) <= 0.0) {
        report.best_shift_min = -largest_shift_min;
        return;
    }
    if (lopsided(hours, ephemeris, place, high) >= 0.0) {
        report.best_shift_min = largest_shift_min;
        return;
    }
    while (high - low > 0.1) {
        const double middle = 0.5 * (low + high);
        (lopsided(hours, ephemeris, place, middle) > 0.0 ? low : high) = middle;
    }
    report.best_shift_min = 0.5 * (low + high) - year.sun_minute;
}

void add_remarks(const Year& year, QualityReport& report) {
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
    if (std::fabs(report.best_shift_min) > 30.0) {
        remark("Clear mornings and afternoons would be symmetric with the stamps " +
               fixed(std::fabs(report.best_shift_min), 0) + " minutes " +
               (report.best_shift_min > 0.0 ? "later" : "earlier") +
               ": check the time zone and what the stamps mean, or expect hills and haze on one side.");
    }
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

std::string padded(const std::string& text, std::size_t width) {
    return text.size() >= width ? text : std::string(width - text.size(), ' ') + text;
}

}  // namespace

QualityReport assess(const Year& year) {
    QualityReport report;
    const sun::YearSun sun = sun::year_sun({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h,
                                            year.sun_minute, sun::weather_sun_year});
    add_sums(year, sun, report);
    add_checks(year, sun, report);
    add_shift(year, sun, report);
    report.closure = closure_minute(year);
    add_remarks(year, report);
    return report;
}

std::string text(const Year& year, const QualityReport& report) {
    static constexpr std::array<const char*, 12> months = {"Jan", "Feb", "Mar", "Apr", "May", "Jun",
                                                           "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
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
    if (report.clear_days < least_clear_days) {
        out += "Symmetry of clear days: too few clear days to tell\n";
    } else {
        out += "Symmetry of clear days: stamps off by " + fixed(report.best_shift_min, 0) + " minutes (" +
               counted(report.clear_days, "clear day", "clear days") + ")\n";
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
