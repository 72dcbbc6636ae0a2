#pragma once
// The year's light on many orientations: for searching a good place and for the map of tilt and azimuth. All models,
// front face, without shade; equal to plane_year(...).unshaded_kwh_m2 to rounding (tested: 1e-9).
//
//     const DaylightYear day = daylight(year, DiffuseModel::perez_1990);
//     const double one = orientation_kwh_m2(day, 35.0, 180.0, 0.2);
//     const OrientationGrid map = orientation_grid(day, even_steps(0, 90, 5), even_steps(0, 360, 5), 0.2);

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "core/sky/prepared.h"

namespace wg::sky {

/// An hour whose horizon term (Perez) can outweigh the rest of the sky on some plane and is then held at zero. Few
/// hours do so on planes of up to 90 deg; each is looked at by itself.
struct DarkHorizon {
    double from_tan_half_tilt = 0.0;  ///< smallest tangent of half the tilt at which it can happen
    double circumsolar_east = 0.0, circumsolar_north = 0.0, circumsolar_up = 0.0;  ///< sun vector times W/m2
    double isotropic_w_m2 = 0.0, horizon_w_m2 = 0.0;
    std::uint16_t hour = 0;  ///< of the year; in DaylightHours the place in its list
};

/// Hours with the sun up only, vectors already multiplied by beam and circumsolar light.
struct DaylightYear {
    DiffuseModel model = DiffuseModel::hay_davies;
    std::vector<double> direct_east, direct_north, direct_up;  ///< W/m2; length padded with zeros to a multiple of 8
    double isotropic_kwh_m2 = 0.0;                             ///< on the horizontal, all hours
    double horizon_kwh_m2 = 0.0;                               ///< on a vertical plane, signed; Perez only
    double global_kwh_m2 = 0.0;                                ///< on the horizontal, all hours
    std::vector<DarkHorizon> dark_horizon;                     ///< ascending in from_tan_half_tilt; Perez only
};

[[nodiscard]] DaylightYear daylight(const PreparedYear& year, DiffuseModel model = DiffuseModel::hay_davies);

/// The year's sum on one plane, kWh/m2. `sky_view` scales the diffuse of the sky but for the circumsolar part, as in
/// plane_year. Tilt 0..180.
[[nodiscard]] double orientation_kwh_m2(const DaylightYear& year, double tilt_deg, double azimuth_deg, double albedo,
                                        double sky_view = 1.0) noexcept;

/// Values from `first` to `last` inclusive, `step` over 0 apart.
[[nodiscard]] std::vector<double> even_steps(double first, double last, double step);

struct OrientationGrid {
    std::vector<double> tilts_deg, azimuths_deg;
    std::vector<double> kwh_m2;  ///< tilt by tilt, all azimuths of each
    [[nodiscard]] double at(std::size_t tilt, std::size_t azimuth) const {
        return kwh_m2[tilt * azimuths_deg.size() + azimuth];
    }
};

/// The year's sums for every tilt with every azimuth. Tilts 0..180 (others are taken one by one), azimuths as they
/// come; azimuths half a turn apart share their work. One pass over the hours an axis, whatever the number of tilts: at
/// one axis an hour lights all tilts up to one at which it goes dark, so its vector goes into the bin of that tilt and
/// the sums over the bins give every tilt (docs/handbook/sky.md).
[[nodiscard]] OrientationGrid orientation_grid(const DaylightYear& year, std::vector<double> tilts_deg,
                                               std::vector<double> azimuths_deg, double albedo, double sky_view = 1.0);

/// What hourly series on many planes need: the hours with any light.
struct DaylightHours {
    DiffuseModel model = DiffuseModel::hay_davies;
    std::vector<std::uint16_t> hour;                          ///< of the year, ascending; every other hour is dark
    std::vector<float> direct_east, direct_north, direct_up;  ///< sun vector times beam and circumsolar light, W/m2
    std::vector<float> isotropic_w_m2, horizon_w_m2, global_w_m2;
    std::vector<DarkHorizon> dark_horizon;
};

[[nodiscard]] DaylightHours daylight_hours(const PreparedYear& year, DiffuseModel model = DiffuseModel::hay_davies);

/// Light on every plane of a grid in every hour of `hours.hour`, W/m2: for tilt i and azimuth k the
/// hours.hour.size() values from (i * azimuths + k) * hours.hour.size(). `w_m2` has exactly that many in all. Within
/// 0.001 W/m2 of plane_year: single precision carries 6e-8 of at most some 1,500 W/m2 through five operations.
void orientation_series(const DaylightHours& hours, std::span<const double> tilts_deg,
                        std::span<const double> azimuths_deg, double albedo, double sky_view, std::span<float> w_m2);

}  // namespace wg::sky
