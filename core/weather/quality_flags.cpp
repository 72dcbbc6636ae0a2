// What is wrong with single hours.

#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/sun/clear_sky.h"
#include "core/sun/extraterrestrial.h"
#include "core/weather/quality_parts.h"

namespace wg::weather {
namespace {

constexpr double light_at_night_w_m2 = 5.0;
constexpr double sin_1_deg = 0.0174524064;
constexpr double closure_w_m2 = 50.0;
constexpr double closure_share = 0.15;
constexpr double extraterrestrial_margin_w_m2 = 20.0;  // low sun: the mean over an hour against one moment
// Limits below: common practice, no published source. Light between clouds exceeds a clean sky by a tenth at most in an
// hour's mean.
constexpr double very_clean_linke = 2.0;
constexpr double above_clear_share = 1.15;
constexpr double above_clear_w_m2 = 40.0;
constexpr std::size_t stuck_air_h = 36;  // files in whole degrees stand still for up to a day
constexpr std::size_t stuck_light_h = 4;
constexpr double stuck_light_w_m2 = 20.0;  // fog holds the light of a dark day near one value
constexpr double jump_k = 10.0;

void set(QualityReport& report, std::size_t hour, Flag flag) {
    report.flags[hour] = static_cast<std::uint8_t>(report.flags[hour] | static_cast<std::uint8_t>(flag));
}

double clean_sky_w_m2(const Year& year, const sun::YearSun& sun, std::size_t i) {
    if (sun.up[i] <= 0.0) return 0.0;
    const double zenith_deg = degrees(std::acos(std::fmin(1.0, sun.up[i])));
    const double air_mass =
        sun::relative_air_mass(zenith_deg) * sun::standard_pressure_pa_at(year.altitude_m) / standard_pressure_pa;
    return sun.up_share[i] * sun::ineichen_perez(zenith_deg, air_mass, very_clean_linke, year.altitude_m,
                                                 sun.extraterrestrial_normal_w_m2[i])
                                 .global_w_m2;
}

void flag_light(const Year& year, const sun::YearSun& sun, QualityReport& report) {
    for (std::size_t i = 0; i < year.global_w_m2.size(); ++i) {
        const double up = sun.up[i];
        const double global = year.global_w_m2[i];
        const double normal = sun.extraterrestrial_normal_w_m2[i];
        if (sun.up_share[i] == 0.0 && up < -sin_1_deg && global > light_at_night_w_m2) {
            set(report, i, Flag::light_below_horizon);
        }
        const double off = std::fabs(global - year.diffuse_w_m2[i] - year.beam_normal_w_m2[i] * std::fmax(0.0, up));
        if (off > closure_w_m2 && off > closure_share * global) set(report, i, Flag::closure_off);
        if (global > normal * std::fmax(0.0, up) + extraterrestrial_margin_w_m2 || year.beam_normal_w_m2[i] > normal) {
            set(report, i, Flag::above_extraterrestrial);
        }
        if (up > 0.0 && global > above_clear_share * clean_sky_w_m2(year, sun, i) + above_clear_w_m2) {
            set(report, i, Flag::above_clear_sky);
        }
    }
}

// Runs of at least `least` equal values, all of them at least `from`.
void flag_stuck(const std::vector<double>& series, double from, std::size_t least, QualityReport& report) {
    std::size_t start = 0;
    for (std::size_t i = 1; i <= series.size(); ++i) {
        if (i < series.size() && series[i] == series[start]) continue;
        if (i - start >= least && series[start] >= from) {
            for (std::size_t k = start; k < i; ++k)
                set(report, k, Flag::stuck);
        }
        start = i;
    }
}

void flag_jumps(const std::vector<double>& air_c, QualityReport& report) {
    for (std::size_t i = 1; i < air_c.size(); ++i) {
        if (std::fabs(air_c[i] - air_c[i - 1]) > jump_k) set(report, i, Flag::jump);
    }
}

}  // namespace

const std::array<FlagWords, flag_count>& flag_words() noexcept {
    static constexpr std::array<FlagWords, flag_count> words = {{
        {Flag::above_extraterrestrial, "above the atmosphere's light", "more light than the sun sends to the earth",
         "Check the unit of global, the time zone and the stamps"},
        {Flag::closure_off, "parts do not fit", "global is not diffuse plus beam on the horizontal",
         "Check which column is which, and the stamps"},
        {Flag::light_below_horizon, "light at night", "light with the sun under the horizon",
         "Check time zone, longitude and stamps"},
        {Flag::above_clear_sky, "above a clear sky", "clearly more light than under a very clean sky",
         "Check unit and calibration of global, and the altitude"},
        {Flag::stuck, "stands still", "air for a day and a half, or light for four hours, without any change",
         "The logger may have stopped: take these hours from a neighbouring station"},
        {Flag::jump, "temperature jumps", "air changes by more than 10 K within an hour",
         "Look at the hours around it: a fault, or months of two years put together"},
    }};
    return words;
}

void detail::add_flags(const Year& year, const sun::YearSun& sun, QualityReport& report) {
    report.flags.assign(year.global_w_m2.size(), 0);
    flag_light(year, sun, report);
    flag_stuck(year.air_c, -273.15, stuck_air_h, report);
    flag_stuck(year.global_w_m2, stuck_light_w_m2, stuck_light_h, report);
    flag_jumps(year.air_c, report);
    for (std::size_t i = 0; i < report.flags.size(); ++i) {
        const auto month = static_cast<std::size_t>(month_of_hour(static_cast<int>(i)) - 1);
        for (std::size_t f = 0; f < flag_count; ++f) {
            if (report.has(i, flag_words()[f].flag)) ++report.flagged_hours[f][month];
        }
    }
    report.hours_above_extraterrestrial = report.hours(Flag::above_extraterrestrial);
    report.hours_closure_off = report.hours(Flag::closure_off);
    report.hours_light_below_horizon = report.hours(Flag::light_below_horizon);
}

int QualityReport::hours(Flag flag) const noexcept {
    int sum = 0;
    for (std::size_t f = 0; f < flag_count; ++f) {
        if (flag_words()[f].flag != flag) continue;
        for (const int month : flagged_hours[f])
            sum += month;
    }
    return sum;
}

}  // namespace wg::weather
