#pragma once
// The year's sum on many orientations, a few microseconds each: for searching a good place, where the hours themselves
// are not wanted.

#include <vector>

#include "core/sky/prepared.h"

namespace wg::sky {

/// Hours with the sun up only, vectors already multiplied by beam and circumsolar light (Hay-Davies or isotropic).
struct DaylightYear {
    DiffuseModel model = DiffuseModel::hay_davies;
    std::vector<double> direct_east, direct_north, direct_up;  ///< W/m2; length padded with zeros to a multiple of 8
    double isotropic_kwh_m2 = 0.0;                             ///< on the horizontal, all hours
    double global_kwh_m2 = 0.0;                                ///< on the horizontal, all hours
};

/// Perez, whose horizon term bends at zero, can't be summed this way: use plane_year for it. Asking for it gives
/// Hay-Davies, and `model` says so.
[[nodiscard]] DaylightYear daylight(const PreparedYear& year, DiffuseModel model = DiffuseModel::hay_davies);

/// Front face, without shade; equals plane_year(...).unshaded_kwh_m2 to rounding.
[[nodiscard]] double orientation_kwh_m2(const DaylightYear& year, double tilt_deg, double azimuth_deg, double albedo,
                                        double sky_view = 1.0) noexcept;

}  // namespace wg::sky
