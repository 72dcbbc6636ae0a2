#include "core/sky/orientation.h"

#include <array>
#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"

namespace wg::sky {

DaylightYear daylight(const PreparedYear& source, DiffuseModel model) {
    PreparedYear copy;
    const bool derived = source.circumsolar_hay_davies_w_m2.size() == source.sun_up.size();
    if (!derived) {
        copy = source;
        derive(copy);
    }
    const PreparedYear& year = derived ? source : copy;
    DaylightYear day;
    day.model = model == DiffuseModel::isotropic ? model : DiffuseModel::hay_davies;
    const bool circumsolar = day.model == DiffuseModel::hay_davies;
    for (std::size_t i = 0; i < year.sun_up.size(); ++i) {
        day.isotropic_kwh_m2 += 1e-3 * (circumsolar ? year.isotropic_hay_davies_w_m2[i] : year.diffuse_w_m2[i]);
        day.global_kwh_m2 += 1e-3 * year.global_w_m2[i];
        const double direct = year.beam_normal_w_m2[i] + (circumsolar ? year.circumsolar_hay_davies_w_m2[i] : 0.0);
        if (!(year.sun_up[i] > 0.0) || !(direct > 0.0)) continue;
        day.direct_east.push_back(direct * year.sun_east[i]);
        day.direct_north.push_back(direct * year.sun_north[i]);
        day.direct_up.push_back(direct * year.sun_up[i]);
    }
    while (day.direct_up.size() % 8 != 0) {
        day.direct_east.push_back(0.0);
        day.direct_north.push_back(0.0);
        day.direct_up.push_back(0.0);
    }
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
    return 1e-3 * direct_w_h + 0.5 * (1.0 + up) * sky_view * year.isotropic_kwh_m2 +
           0.5 * (1.0 - up) * albedo * year.global_kwh_m2;
}

}  // namespace wg::sky
