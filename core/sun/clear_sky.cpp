#include "core/sun/clear_sky.h"

#include <cmath>
#include <cstddef>
#include <string>

#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/sun/extraterrestrial.h"

namespace wg::sun {

double haurwitz_global_w_m2(double cos_zenith) noexcept {
    if (!(cos_zenith > 0.0)) return 0.0;
    return 1098.0 * cos_zenith * std::exp(-0.059 / cos_zenith);
}

ClearSky ineichen_perez(double apparent_zenith_deg, double absolute_air_mass, double linke_turbidity, double altitude_m,
                        double extraterrestrial_normal_w_m2) noexcept {
    if (!(apparent_zenith_deg < 90.0)) return {};
    const double cos_zenith = std::cos(radians(apparent_zenith_deg));
    const double fh1 = std::exp(-altitude_m / 8000.0);
    const double fh2 = std::exp(-altitude_m / 1250.0);
    const double cg1 = 5.09e-5 * altitude_m + 0.868;
    const double cg2 = 3.92e-5 * altitude_m + 0.0387;
    const double tl = linke_turbidity;

    ClearSky sky;
    sky.global_w_m2 =
        cg1 * extraterrestrial_normal_w_m2 * cos_zenith * std::exp(-cg2 * absolute_air_mass * (fh1 + fh2 * (tl - 1.0)));
    const double by_path =
        extraterrestrial_normal_w_m2 * (0.664 + 0.163 / fh1) * std::exp(-0.09 * absolute_air_mass * (tl - 1.0));
    const double by_share = sky.global_w_m2 * (1.0 - (0.1 - 0.2 * std::exp(-tl)) / (0.1 + 0.882 / fh1)) / cos_zenith;
    sky.beam_normal_w_m2 = std::fmin(by_path, by_share);
    sky.diffuse_w_m2 = sky.global_w_m2 - sky.beam_normal_w_m2 * cos_zenith;
    return sky;
}

double linke_turbidity_at(const std::array<double, 12>& by_month, int hour) noexcept {
    const auto middle_of = [](int month) {
        return 0.5 * (first_hour_of_month(month) + first_hour_of_month(month + 1));
    };
    const double at = hour + 0.5;
    const int month = month_of_hour(hour);
    const int earlier = at < middle_of(month) ? month - 1 : month;  // 0: December before
    const double from = earlier == 0 ? middle_of(12) - 8760.0 : middle_of(earlier);
    const double to = earlier == 12 ? middle_of(1) + 8760.0 : middle_of(earlier + 1);
    const double first = by_month[static_cast<std::size_t>((earlier + 11) % 12)];
    const double second = by_month[static_cast<std::size_t>(earlier % 12)];
    return first + (second - first) * (at - from) / (to - from);
}

Result<ClearSkyYear> clear_sky_year(const YearSunInput& place, const YearSun& sun,
                                    const std::array<double, 12>& by_month) {
    std::vector<Problem> problems;
    for (std::size_t m = 0; m < by_month.size(); ++m) {
        if (by_month[m] >= 1.0 && by_month[m] <= 10.0) continue;
        problems.push_back({"Linke turbidity of month " + std::to_string(m + 1),
                            "it is " + fixed(by_month[m], 2) + ", and 1 (no haze at all) to 10 is possible",
                            "enter a value from 1 to 10; clear country air has 2 to 3, towns 4 to 5"});
    }
    if (!(place.altitude_m >= -430.0 && place.altitude_m <= 9000.0)) {
        problems.push_back({"height of the place", "it is " + fixed(place.altitude_m, 0) + " m",
                            "enter a height from -430 to 9000 m"});
    }
    if (!problems.empty()) return problems;

    const double pressure_share = standard_pressure_pa_at(place.altitude_m) / standard_pressure_pa;
    const bool hour_mean = place.minute == 30.0;
    ClearSkyYear year;
    for (std::vector<double>* series : {&year.global_w_m2, &year.beam_normal_w_m2, &year.diffuse_w_m2})
        series->assign(sun.up.size(), 0.0);
    for (std::size_t i = 0; i < sun.up.size(); ++i) {
        if (!(sun.up[i] > 0.0)) continue;
        const double zenith_deg = degrees(std::acos(std::fmin(1.0, sun.up[i])));
        const ClearSky sky = ineichen_perez(zenith_deg, relative_air_mass(zenith_deg) * pressure_share,
                                            linke_turbidity_at(by_month, static_cast<int>(i)), place.altitude_m,
                                            sun.extraterrestrial_normal_w_m2[i]);
        const double share = hour_mean ? sun.up_share[i] : 1.0;
        year.global_w_m2[i] = share * sky.global_w_m2;
        year.beam_normal_w_m2[i] = share * sky.beam_normal_w_m2;
        year.diffuse_w_m2[i] = share * sky.diffuse_w_m2;
    }
    return year;
}

Result<ClearSkyYear> clear_sky_year(const YearSunInput& place, const std::array<double, 12>& by_month) {
    return clear_sky_year(place, year_sun(place), by_month);
}

}  // namespace wg::sun
