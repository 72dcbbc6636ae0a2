#pragma once
// A year's light on every tilt and bearing at one place, for a picture of it. Free horizon, no shade.

#include <vector>

#include "core/sky/orientation.h"

namespace wg::sky {

struct OrientationMap {
    static constexpr int step_deg = 5;
    static constexpr int tilts = 19;     ///< 0..90
    static constexpr int azimuths = 73;  ///< 0..360, both ends the same
    DiffuseModel model = DiffuseModel::hay_davies;
    std::vector<double> kwh_m2;  ///< [tilt * azimuths + azimuth]
    double best_tilt_deg = 0.0;  ///< to whole degrees
    double best_azimuth_deg = 0.0;
    double best_kwh_m2 = 0.0;
    double least_kwh_m2 = 0.0;
    /// Straight lines between the grid's points. Tilt 0..90, any bearing.
    [[nodiscard]] double at(double tilt_deg, double azimuth_deg) const noexcept;
};

[[nodiscard]] OrientationMap orientation_map(const PreparedYear& year, double albedo,
                                             DiffuseModel model = DiffuseModel::hay_davies);

}  // namespace wg::sky
