#include "core/weather/quality.h"

#include <cmath>

#include "core/quantity/time.h"
#include "core/weather/quality_parts.h"

namespace wg::weather {
namespace {

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

}  // namespace

QualityReport assess(const Year& year) {
    QualityReport report;
    const sun::YearSun sun = sun::year_sun({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h,
                                            year.sun_minute, sun::weather_sun_year});
    add_sums(year, sun, report);
    detail::add_flags(year, sun, report);
    detail::add_shifts(year, sun, report);
    report.closure = closure_minute(year);
    detail::add_remarks(year, report);
    return report;
}

}  // namespace wg::weather
