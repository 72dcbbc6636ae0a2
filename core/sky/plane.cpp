#include "core/sky/plane.h"

#include <cmath>

#include "core/quantity/constants.h"
#include "core/sky/perez.h"

namespace wg::sky {

const char* name_of(DiffuseModel model) noexcept {
    switch (model) {
        case DiffuseModel::isotropic: return "Liu-Jordan 1963 (isotropic)";
        case DiffuseModel::hay_davies: return "Hay-Davies 1980";
        case DiffuseModel::perez_1990: return "Perez 1990";
    }
    return "";
}

double cos_incidence(double tilt_deg, double azimuth_deg, double sun_zenith_deg, double sun_azimuth_deg) noexcept {
    const double tilt = radians(tilt_deg);
    const double zenith = radians(sun_zenith_deg);
    return std::cos(tilt) * std::cos(zenith) +
           std::sin(tilt) * std::sin(zenith) * std::cos(radians(sun_azimuth_deg - azimuth_deg));
}

PlaneLight plane_light(const SkyState& sky, double tilt_deg, double azimuth_deg, double albedo,
                       DiffuseModel model) noexcept {
    const double cos_tilt = std::cos(radians(tilt_deg));
    const double sin_tilt = std::sin(radians(tilt_deg));
    const double towards_sun =
        std::fmax(0.0, cos_incidence(tilt_deg, azimuth_deg, sky.sun_zenith_deg, sky.sun_azimuth_deg));
    const double cos_zenith = std::cos(radians(sky.sun_zenith_deg));
    const bool sun_up = sky.sun_zenith_deg < 90.0;
    const double beam_normal = sun_up ? sky.beam_normal_w_m2 : 0.0;

    PlaneLight light;
    light.beam_w_m2 = beam_normal * towards_sun;
    light.ground_w_m2 = sky.global_w_m2 * albedo * 0.5 * (1.0 - cos_tilt);
    const double sky_view = 0.5 * (1.0 + cos_tilt);
    switch (model) {
        case DiffuseModel::isotropic: light.isotropic_w_m2 = sky.diffuse_w_m2 * sky_view; break;
        case DiffuseModel::hay_davies: {
            const double anisotropy = std::fmin(1.0, beam_normal / sky.extraterrestrial_normal_w_m2);
            light.isotropic_w_m2 = sky.diffuse_w_m2 * (1.0 - anisotropy) * sky_view;
            light.circumsolar_w_m2 =
                sky.diffuse_w_m2 * anisotropy * towards_sun / std::fmax(cos_zenith, hay_davies_cos_floor);
            break;
        }
        case DiffuseModel::perez_1990: {
            if (!(sky.diffuse_w_m2 > 0.0)) break;
            if (!sun_up) {  // the model knows no sun below the horizon
                light.isotropic_w_m2 = sky.diffuse_w_m2 * sky_view;
                break;
            }
            const PerezBrightness b = perez_brightness(beam_normal, sky.diffuse_w_m2, sky.extraterrestrial_normal_w_m2,
                                                       sky.sun_zenith_deg, sky.relative_air_mass);
            light.isotropic_w_m2 = sky.diffuse_w_m2 * (1.0 - b.f1) * sky_view;
            light.circumsolar_w_m2 = sky.diffuse_w_m2 * b.f1 * towards_sun / std::fmax(cos_zenith, perez_cos_floor);
            light.horizon_w_m2 = sky.diffuse_w_m2 * b.f2 * sin_tilt;
            // The fitted horizon term can outweigh the rest on steep planes; light is never negative.
            if (light.sky_diffuse_w_m2() < 0.0) {
                light.isotropic_w_m2 = light.circumsolar_w_m2 = light.horizon_w_m2 = 0.0;
            }
            break;
        }
    }
    return light;
}

}  // namespace wg::sky
