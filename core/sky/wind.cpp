#include "core/sky/wind.h"

#include <cmath>

namespace wg::sky {
namespace {

// ln(z/z0) within the range in which the logarithmic profile is used.
double profile(double height_m, double roughness_m) noexcept {
    const double z = std::fmin(blending_height_m, std::fmax(2.0 * roughness_m, height_m));
    return std::log(z / roughness_m);
}

}  // namespace

double wind_factor_log(double height_m, double roughness_m) noexcept {
    return profile(height_m, roughness_m) / profile(10.0, roughness_m);
}

double wind_factor_power(double height_m, double exponent) noexcept {
    return std::pow(height_m / 10.0, exponent);
}

double wind_factor_other_terrain(double height_m, double roughness_m, double mast_roughness_m) noexcept {
    return profile(blending_height_m, mast_roughness_m) / profile(10.0, mast_roughness_m) *
           profile(height_m, roughness_m) / profile(blending_height_m, roughness_m);
}

}  // namespace wg::sky
