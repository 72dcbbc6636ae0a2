// Hourly series on a grid of orientations. What depends on the tilt alone (sky and ground) is worked out once a tilt,
// what depends on the azimuth alone (the level part of the sun vector) once an azimuth; what is left for a plane's hour
// is two products, two sums, a maximum and a store.

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstddef>

#include "core/quantity/constants.h"
#include "core/sky/orientation.h"
#include "core/sky/orientation_detail.h"

namespace wg::sky {
namespace {

void light_of(std::size_t count, const float* up, const float* level, const float* base, float cos_tilt, float sin_tilt,
              float* __restrict out) {
    for (std::size_t i = 0; i < count; ++i) {
        const float direct = up[i] * cos_tilt + level[i] * sin_tilt;
        out[i] = (direct > 0.0F ? direct : 0.0F) + base[i];
    }
}

}  // namespace

void orientation_series(const DaylightHours& hours, std::span<const double> tilts_deg,
                        std::span<const double> azimuths_deg, double albedo, double sky_view, std::span<float> w_m2) {
    const std::size_t count = hours.hour.size();
    assert(w_m2.size() == count * tilts_deg.size() * azimuths_deg.size());

    std::vector<float> base(count * tilts_deg.size());
    for (std::size_t t = 0; t < tilts_deg.size(); ++t) {
        const double cos_tilt = std::cos(radians(tilts_deg[t]));
        const auto sky = static_cast<float>(sky_view * 0.5 * (1.0 + cos_tilt));
        const auto horizon = static_cast<float>(sky_view * std::sqrt(std::fmax(0.0, 1.0 - cos_tilt * cos_tilt)));
        const auto ground = static_cast<float>(albedo * 0.5 * (1.0 - cos_tilt));
        float* of_tilt = &base[t * count];
        for (std::size_t i = 0; i < count; ++i) {
            of_tilt[i] =
                sky * hours.isotropic_w_m2[i] + horizon * hours.horizon_w_m2[i] + ground * hours.global_w_m2[i];
        }
    }

    std::vector<float> level(count);
    for (std::size_t a = 0; a < azimuths_deg.size(); ++a) {
        const double sin_azimuth = std::sin(radians(azimuths_deg[a]));
        const double cos_azimuth = std::cos(radians(azimuths_deg[a]));
        const auto towards_east = static_cast<float>(sin_azimuth);
        const auto towards_north = static_cast<float>(cos_azimuth);
        for (std::size_t i = 0; i < count; ++i)
            level[i] = hours.direct_east[i] * towards_east + hours.direct_north[i] * towards_north;
        for (std::size_t t = 0; t < tilts_deg.size(); ++t) {
            const double sin_tilt = std::sin(radians(tilts_deg[t]));
            const double cos_tilt = std::cos(radians(tilts_deg[t]));
            float* out = &w_m2[(t * azimuths_deg.size() + a) * count];
            light_of(count, hours.direct_up.data(), level.data(), &base[t * count], static_cast<float>(cos_tilt),
                     static_cast<float>(sin_tilt), out);
            const double tan_half = cos_tilt > -1.0 ? std::fabs(sin_tilt) / (1.0 + cos_tilt) : 1e300;
            const double sin_sky = std::sqrt(std::fmax(0.0, 1.0 - cos_tilt * cos_tilt));
            for (const DarkHorizon& dark : hours.dark_horizon) {
                if (dark.from_tan_half_tilt > tan_half) break;
                out[dark.hour] += static_cast<float>(detail::dark_horizon_correction_w_m2(
                    dark, sin_tilt * sin_azimuth, sin_tilt * cos_azimuth, cos_tilt, sin_sky, sky_view));
            }
        }
    }
}

}  // namespace wg::sky
