#include "core/sky/sky_temperature.h"

#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"
#include "core/sun/clear_sky.h"

namespace wg::sky {
namespace {

constexpr double lowest_useful_sun_up = 0.17364817766693033;  // sin 10 deg
constexpr std::size_t longest_fill_h = 36;

}  // namespace

double clear_sky_emissivity(double dew_point_c, double hour_of_day, double pressure_pa) noexcept {
    return 0.711 + dew_point_c * (0.0056 + 0.000073 * dew_point_c) + 0.013 * std::cos(radians(15.0 * hour_of_day)) +
           1.2e-6 * (pressure_pa - 1.0e5);
}

double sky_temperature_k(double air_c, double clear_emissivity, double cover, double cloud_weight) noexcept {
    const double emissivity = clear_emissivity + (1.0 - clear_emissivity) * cover * cloud_weight;
    return kelvin(air_c) * std::sqrt(std::sqrt(std::fmax(0.0, emissivity)));
}

double net_long_wave_w_m2(double plate_k, double emittance, double tilt_deg, double sky_k, double ground_k,
                          double sky_view) noexcept {
    const auto fourth = [](double t) { return (t * t) * (t * t); };
    const double view = sky_view * 0.5 * (1.0 + std::cos(radians(tilt_deg)));
    return emittance * stefan_boltzmann_w_m2k4 *
           (view * fourth(sky_k) + (1.0 - view) * fourth(ground_k) - fourth(plate_k));
}

std::vector<double> cover_from_light(const std::vector<double>& global_w_m2, const std::vector<double>& sun_up) {
    const std::size_t n = global_w_m2.size();
    std::vector<double> cover(n, 0.5);
    std::size_t last = n;  // last daylight hour seen; n: none
    for (std::size_t i = 0; i < n; ++i) {
        if (sun_up[i] < lowest_useful_sun_up) continue;
        const double share = global_w_m2[i] / sun::haurwitz_global_w_m2(sun_up[i]);
        cover[i] = std::fmin(1.0, std::fmax(0.0, 1.0 - share));
        const std::size_t first_gap = last == n ? 0 : last + 1;
        if (i - first_gap <= longest_fill_h) {
            const double from = last == n ? cover[i] : cover[last];
            const double steps = static_cast<double>(i - first_gap + 1);
            for (std::size_t k = first_gap; k < i; ++k) {
                cover[k] = from + (cover[i] - from) * static_cast<double>(k - first_gap + 1) / steps;
            }
        }
        last = i;
    }
    if (last != n && n - last <= longest_fill_h) {
        for (std::size_t k = last + 1; k < n; ++k)
            cover[k] = cover[last];
    }
    return cover;
}

}  // namespace wg::sky
