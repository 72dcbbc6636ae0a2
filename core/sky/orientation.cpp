#include "core/sky/orientation.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <cstddef>
#include <optional>

#include "core/quantity/constants.h"
#include "core/sky/orientation_detail.h"

namespace wg::sky {
namespace {

// One diffuse model of a year, hour by hour.
struct Parts {
    const std::vector<double>* circumsolar = nullptr;  // null: none
    const std::vector<double>* isotropic = nullptr;
    const std::vector<double>* horizon = nullptr;  // null: none
};

Parts parts_of(const PreparedYear& year, DiffuseModel model) {
    switch (model) {
        case DiffuseModel::isotropic: return {nullptr, &year.diffuse_w_m2, nullptr};
        case DiffuseModel::hay_davies:
            return {&year.circumsolar_hay_davies_w_m2, &year.isotropic_hay_davies_w_m2, nullptr};
        case DiffuseModel::perez_1990:
            return {&year.circumsolar_perez_w_m2, &year.isotropic_perez_w_m2, &year.horizon_perez_w_m2};
    }
    return {};
}

// Isotropic light (1 + cos b)/2 and horizon light sin b together are cos(b/2) (iso cos(b/2) + 2 horizon sin(b/2)):
// below zero beyond a tilt when the horizon term is negative, and possibly at any tilt when the isotropic one is.
std::optional<DarkHorizon> dark_horizon_of(const PreparedYear& year, const Parts& parts, std::size_t i) {
    const double isotropic = (*parts.isotropic)[i];
    const double horizon = (*parts.horizon)[i];
    if (!(isotropic < 0.0) && !(horizon < 0.0)) return std::nullopt;
    DarkHorizon dark;
    // A little early, so that rounding cannot hide the border; what lies before it is seen to be positive and left.
    dark.from_tan_half_tilt = isotropic < 0.0 ? -1.0 : isotropic / (-2.0 * horizon) * (1.0 - 1e-9);
    const double circumsolar = (*parts.circumsolar)[i];
    dark.circumsolar_east = circumsolar * year.sun_east[i];
    dark.circumsolar_north = circumsolar * year.sun_north[i];
    dark.circumsolar_up = circumsolar * year.sun_up[i];
    dark.isotropic_w_m2 = isotropic;
    dark.horizon_w_m2 = horizon;
    dark.hour = static_cast<std::uint16_t>(i);
    return dark;
}

void sort_by_tilt(std::vector<DarkHorizon>& dark) {
    std::stable_sort(dark.begin(), dark.end(), [](const DarkHorizon& a, const DarkHorizon& b) {
        return a.from_tan_half_tilt < b.from_tan_half_tilt;
    });
}

bool is_derived(const PreparedYear& year) {
    return year.circumsolar_hay_davies_w_m2.size() == year.sun_up.size() &&
           year.circumsolar_perez_w_m2.size() == year.sun_up.size();
}

}  // namespace

namespace detail {

double dark_horizon_correction_w_m2(const DarkHorizon& dark, double east, double north, double up, double sin_tilt,
                                    double sky_view) noexcept {
    const double rest = dark.isotropic_w_m2 * 0.5 * (1.0 + up) + dark.horizon_w_m2 * sin_tilt;
    if (!(rest < 0.0)) return 0.0;
    const double c = east * dark.circumsolar_east + north * dark.circumsolar_north + up * dark.circumsolar_up;
    const double around_sun = c > 0.0 ? c : 0.0;
    // The plain sum counts sky_view * rest and around_sun; the model takes from the circumsolar light what the rest
    // lacks, as far as it goes, and counts no rest.
    return std::fmax(rest, -around_sun) - sky_view * rest;
}

double dark_horizon_kwh_m2(const std::vector<DarkHorizon>& hours, double east, double north, double up, double sin_tilt,
                           double sky_view) noexcept {
    if (hours.empty()) return 0.0;
    const double tan_half = up > -1.0 ? sin_tilt / (1.0 + up) : 1e300;
    double sum_w_h = 0.0;
    for (const DarkHorizon& dark : hours) {
        if (dark.from_tan_half_tilt > tan_half) break;
        sum_w_h += dark_horizon_correction_w_m2(dark, east, north, up, sin_tilt, sky_view);
    }
    return 1e-3 * sum_w_h;
}

double diffuse_and_ground_kwh_m2(const DaylightYear& year, double up, double sin_tilt, double albedo,
                                 double sky_view) noexcept {
    return sky_view * (0.5 * (1.0 + up) * year.isotropic_kwh_m2 + sin_tilt * year.horizon_kwh_m2) +
           0.5 * (1.0 - up) * albedo * year.global_kwh_m2;
}

}  // namespace detail

DaylightYear daylight(const PreparedYear& source, DiffuseModel model) {
    if (!is_derived(source)) {
        PreparedYear complete = source;
        derive(complete);
        return daylight(complete, model);
    }
    const PreparedYear& year = source;
    const Parts parts = parts_of(year, model);
    DaylightYear day;
    day.model = model;
    const std::size_t count = year.sun_up.size();
    for (std::vector<double>* series : {&day.direct_east, &day.direct_north, &day.direct_up})
        series->resize(count + 8);
    std::size_t kept = 0;
    for (std::size_t i = 0; i < count; ++i) {
        day.isotropic_kwh_m2 += 1e-3 * (*parts.isotropic)[i];
        day.global_kwh_m2 += 1e-3 * year.global_w_m2[i];
        if (parts.horizon != nullptr) {
            day.horizon_kwh_m2 += 1e-3 * (*parts.horizon)[i];
            if (const auto dark = dark_horizon_of(year, parts, i)) day.dark_horizon.push_back(*dark);
        }
        const double direct = year.beam_normal_w_m2[i] + (parts.circumsolar != nullptr ? (*parts.circumsolar)[i] : 0.0);
        if (!(year.sun_up[i] > 0.0) || !(direct > 0.0)) continue;
        day.direct_east[kept] = direct * year.sun_east[i];
        day.direct_north[kept] = direct * year.sun_north[i];
        day.direct_up[kept] = direct * year.sun_up[i];
        ++kept;
    }
    for (std::vector<double>* series : {&day.direct_east, &day.direct_north, &day.direct_up}) {
        std::fill(series->begin() + static_cast<std::ptrdiff_t>(kept), series->end(), 0.0);
        series->resize((kept + 7) / 8 * 8);
    }
    sort_by_tilt(day.dark_horizon);
    return day;
}

double orientation_kwh_m2(const DaylightYear& year, double tilt_deg, double azimuth_deg, double albedo,
                          double sky_view) noexcept {
    const double tilt = radians(tilt_deg);
    const double azimuth = radians(azimuth_deg);
    const double east = std::sin(tilt) * std::sin(azimuth);
    const double north = std::sin(tilt) * std::cos(azimuth);
    const double up = std::cos(tilt);
    const double* e = year.direct_east.data();
    const double* n = year.direct_north.data();
    const double* u = year.direct_up.data();
    // Eight lanes in a fixed order: the same digits whatever vector width the compiler picks.
    std::array<double, 8> lanes{};
    const std::size_t count = year.direct_up.size();
    for (std::size_t i = 0; i < count; i += 8) {
        for (std::size_t k = 0; k < 8; ++k) {
            const double direct = east * e[i + k] + north * n[i + k] + up * u[i + k];
            lanes[k] += direct > 0.0 ? direct : 0.0;
        }
    }
    const double direct_w_h =
        ((lanes[0] + lanes[1]) + (lanes[2] + lanes[3])) + ((lanes[4] + lanes[5]) + (lanes[6] + lanes[7]));
    const double sin_tilt = std::sqrt(std::fmax(0.0, 1.0 - up * up));
    return 1e-3 * direct_w_h + detail::diffuse_and_ground_kwh_m2(year, up, sin_tilt, albedo, sky_view) +
           detail::dark_horizon_kwh_m2(year.dark_horizon, east, north, up, sin_tilt, sky_view);
}

std::vector<double> even_steps(double first, double last, double step) {
    assert(step > 0.0);
    std::vector<double> values;
    // Half a step of allowance lets 0..90 by 0.1 end at 90 in spite of rounding.
    for (int i = 0; first + step * i < last + 0.5 * step; ++i)
        values.push_back(first + step * i);
    return values;
}

DaylightHours daylight_hours(const PreparedYear& source, DiffuseModel model) {
    if (!is_derived(source)) {
        PreparedYear complete = source;
        derive(complete);
        return daylight_hours(complete, model);
    }
    const PreparedYear& year = source;
    const Parts parts = parts_of(year, model);
    DaylightHours day;
    day.model = model;
    assert(year.sun_up.size() <= 65536);
    for (std::size_t i = 0; i < year.sun_up.size(); ++i) {
        const double direct = year.sun_up[i] > 0.0 ? year.beam_normal_w_m2[i] +
                                                         (parts.circumsolar != nullptr ? (*parts.circumsolar)[i] : 0.0)
                                                   : 0.0;
        const double isotropic = (*parts.isotropic)[i];
        const double horizon = parts.horizon != nullptr ? (*parts.horizon)[i] : 0.0;
        if (direct == 0.0 && isotropic == 0.0 && horizon == 0.0 && year.global_w_m2[i] == 0.0) continue;
        day.hour.push_back(static_cast<std::uint16_t>(i));
        day.direct_east.push_back(static_cast<float>(direct * year.sun_east[i]));
        day.direct_north.push_back(static_cast<float>(direct * year.sun_north[i]));
        day.direct_up.push_back(static_cast<float>(direct * year.sun_up[i]));
        day.isotropic_w_m2.push_back(static_cast<float>(isotropic));
        day.horizon_w_m2.push_back(static_cast<float>(horizon));
        day.global_w_m2.push_back(static_cast<float>(year.global_w_m2[i]));
        if (parts.horizon == nullptr) continue;
        if (const auto dark = dark_horizon_of(year, parts, i)) {
            day.dark_horizon.push_back(*dark);
            day.dark_horizon.back().hour = static_cast<std::uint16_t>(day.hour.size() - 1);
        }
    }
    sort_by_tilt(day.dark_horizon);
    return day;
}

}  // namespace wg::sky
