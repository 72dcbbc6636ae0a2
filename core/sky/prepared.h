#pragma once
// A weather year made ready for any plane: sun vectors and the parts of the sky's light, once for each hour.

#include <vector>

#include "core/sky/plane.h"
#include "core/weather/year.h"

namespace wg::sky {

/// Structure of arrays over the hours of the year. Vectors point to the sun: east, north, up (true north).
struct PreparedYear {
    double latitude_deg = 0.0;
    double longitude_deg = 0.0;
    std::vector<double> sun_east, sun_north, sun_up;  ///< unit vector at the hour's sun minute
    std::vector<double> beam_normal_w_m2;
    std::vector<double> diffuse_w_m2;
    std::vector<double> global_w_m2;
    std::vector<double> extraterrestrial_normal_w_m2;
    std::vector<double> sky_temperature_k;
    std::vector<double> air_c, dew_point_c, wind_10m_m_s, pressure_pa;
    bool sky_temperature_measured = false;  ///< from the file's long-wave; else Berdahl and Martin with clouds
    // What the diffuse models need of each hour whatever the plane; filled by `derive`.
    std::vector<double> circumsolar_hay_davies_w_m2;  ///< diffuse from around the sun, on a plane facing the sun
    std::vector<double> isotropic_hay_davies_w_m2;    ///< the remaining diffuse on the horizontal
    std::vector<double> circumsolar_perez_w_m2;       ///< as above, Perez 1990
    std::vector<double> isotropic_perez_w_m2;
    std::vector<double> horizon_perez_w_m2;  ///< signed brightening near the horizon, on a vertical plane
};

/// Fills the derived series from the others. `plane_year` does it on a copy when they are missing, at a cost.
void derive(PreparedYear& year);

/// Positions for the year 2027 of the civil calendar (a year without 29 February); the month's own year is not kept in
/// a typical year. Hours in which the sun rises or sets use the position in the middle of the part above the horizon.
/// Sun as seen, that is with refraction. Beam in hours with the sun below the horizon is dropped (the quality report
/// counts such hours); diffuse and global stay as the file has them. All series of the year must be complete.
[[nodiscard]] PreparedYear prepare(const weather::Year& year);

/// Light on a plane in each hour. `beam_share` (empty or 8760 values 0..1) is the share of the plane in the sun.
struct PlaneYear {
    std::vector<double> beam_w_m2;  ///< beam with circumsolar, after shade
    std::vector<double> sky_diffuse_w_m2;
    std::vector<double> ground_w_m2;
    std::vector<double> rear_w_m2;  ///< on the rear face, times `rear_open`; beam there without shade
    double total_kwh_m2 = 0.0;      ///< front face, after shade
    double unshaded_kwh_m2 = 0.0;   ///< front face, without beam shade
};

struct PlaneInput {
    double tilt_deg = 35.0;
    double azimuth_deg = 180.0;
    double albedo = 0.2;
    DiffuseModel model = DiffuseModel::hay_davies;
    double sky_view = 1.0;  ///< share of the unobstructed sky diffuse that reaches the plane, 0..1
    /// Share of the unobstructed ground before the plane that it sees, 0..1.
    double ground_view = 1.0;
    /// Light from standing things before the plane (walls, trees, hills) for each W/m2 of global: their reflectance
    /// times the share of the plane's view that they take, 0..1.
    double from_things = 0.0;
    double rear_open = 0.0;  ///< 1: free rear face sees ground and sky; 0: close to a roof or wall, no light
    /// Reflectance of the ground in each hour, 0..1, in place of `albedo`: snow (ground.h). Empty: `albedo` all year.
    std::vector<double> albedo_of_hour;
};

/// The sums of `beam_w_m2`, `sky_diffuse_w_m2` and `ground_w_m2` over the year make `total_kwh_m2`.
[[nodiscard]] PlaneYear plane_year(const PreparedYear& year, const PlaneInput& input,
                                   const std::vector<float>& beam_share);
/// The same into `plane`, whose memory is used again: for many planes one after the other.
void plane_year(const PreparedYear& year, const PlaneInput& input, const std::vector<float>& beam_share,
                PlaneYear& plane);

}  // namespace wg::sky
