#pragma once
// Light on a tilted plane for one moment.

namespace wg::sky {

enum class DiffuseModel { isotropic, hay_davies, perez_1990 };
[[nodiscard]] const char* name_of(DiffuseModel model) noexcept;

struct SkyState {
    double beam_normal_w_m2 = 0.0;
    double diffuse_w_m2 = 0.0;
    double global_w_m2 = 0.0;
    double extraterrestrial_normal_w_m2 = 1361.0;
    double sun_zenith_deg = 90.0;  ///< apparent
    double sun_azimuth_deg = 180.0;
    double relative_air_mass = 1.0;  ///< only Perez uses it
};

struct PlaneLight {
    double beam_w_m2 = 0.0;
    double circumsolar_w_m2 = 0.0;
    double isotropic_w_m2 = 0.0;
    double horizon_w_m2 = 0.0;
    double ground_w_m2 = 0.0;
    [[nodiscard]] double sky_diffuse_w_m2() const noexcept { return circumsolar_w_m2 + isotropic_w_m2 + horizon_w_m2; }
    [[nodiscard]] double total_w_m2() const noexcept { return beam_w_m2 + sky_diffuse_w_m2() + ground_w_m2; }
};

[[nodiscard]] double cos_incidence(double tilt_deg, double azimuth_deg, double sun_zenith_deg,
                                   double sun_azimuth_deg) noexcept;

/// Liu and Jordan 1963 / Hay and Davies 1980 / Perez et al. 1990 (all-sites composite).
[[nodiscard]] PlaneLight plane_light(const SkyState& sky, double tilt_deg, double azimuth_deg, double albedo,
                                     DiffuseModel model) noexcept;

}  // namespace wg::sky
