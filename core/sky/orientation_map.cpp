#include "core/sky/orientation_map.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

#include "core/quantity/angle.h"

namespace wg::sky {
namespace {

std::size_t index(int tilt, int azimuth) noexcept {
    return static_cast<std::size_t>(tilt * OrientationMap::azimuths + azimuth);
}

/// From the best of the grid in whole degrees: the sum is smooth and has one top around it.
void climb(const DaylightYear& year, double albedo, OrientationMap& map) {
    for (double step = 2.0; step >= 1.0;) {
        bool better = false;
        for (const double tilt_by : {-step, 0.0, step}) {
            for (const double azimuth_by : {-step, 0.0, step}) {
                const double tilt = std::clamp(map.best_tilt_deg + tilt_by, 0.0, 90.0);
                const double azimuth = wrap_360(map.best_azimuth_deg + azimuth_by);
                const double kwh_m2 = orientation_kwh_m2(year, tilt, azimuth, albedo);
                if (kwh_m2 <= map.best_kwh_m2) continue;
                map.best_tilt_deg = tilt;
                map.best_azimuth_deg = azimuth;
                map.best_kwh_m2 = kwh_m2;
                better = true;
            }
        }
        if (!better) step *= 0.5;
    }
}

}  // namespace

double OrientationMap::at(double tilt_deg, double azimuth_deg) const noexcept {
    const double row = std::clamp(tilt_deg, 0.0, 90.0) / step_deg;
    const double column = wrap_360(azimuth_deg) / step_deg;
    const int low_row = std::min(static_cast<int>(row), tilts - 2);
    const int low_column = std::min(static_cast<int>(column), azimuths - 2);
    const double up = row - low_row;
    const double right = column - low_column;
    const auto value = [&](int dr, int dc) { return kwh_m2[index(low_row + dr, low_column + dc)]; };
    return (1.0 - up) * ((1.0 - right) * value(0, 0) + right * value(0, 1)) +
           up * ((1.0 - right) * value(1, 0) + right * value(1, 1));
}

OrientationMap orientation_map(const PreparedYear& source, double albedo, DiffuseModel model) {
    const DaylightYear year = daylight(source, model);
    OrientationMap map;
    map.model = year.model;
    map.kwh_m2 = orientation_grid(year, even_steps(0.0, 90.0, OrientationMap::step_deg),
                                  even_steps(0.0, 360.0, OrientationMap::step_deg), albedo)
                     .kwh_m2;
    map.least_kwh_m2 = map.best_kwh_m2 = map.kwh_m2.front();
    // A level plate looks nowhere; its bearing is taken as that of the noon sun.
    map.best_azimuth_deg = source.latitude_deg < 0.0 ? 0.0 : 180.0;
    for (int tilt = 0; tilt < OrientationMap::tilts; ++tilt) {
        for (int azimuth = 0; azimuth + 1 < OrientationMap::azimuths; ++azimuth) {
            const double kwh_m2 = map.kwh_m2[index(tilt, azimuth)];
            map.least_kwh_m2 = std::min(map.least_kwh_m2, kwh_m2);
            if (tilt == 0 || kwh_m2 <= map.best_kwh_m2) continue;
            map.best_tilt_deg = tilt * OrientationMap::step_deg;
            map.best_azimuth_deg = azimuth * OrientationMap::step_deg;
            map.best_kwh_m2 = kwh_m2;
        }
    }
    climb(year, albedo, map);
    return map;
}

}  // namespace wg::sky
