#include "core/sun/clear_sky.h"

#include <cmath>

#include "core/quantity/constants.h"

namespace wg::sun {

double haurwitz_global_w_m2(double cos_zenith) noexcept {
    if (!(cos_zenith > 0.0)) return 0.0;
    return 1098.0 * cos_zenith * std::exp(-0.059 / cos_zenith);
}

ClearSky ineichen_perez(double apparent_zenith_deg, double absolute_air_mass, double linke_turbidity, double altitude_m,
                        double extraterrestrial_normal_w_m2) noexcept {
    if (!(apparent_zenith_deg < 90.0)) return {};
    const double cos_zenith = std::cos(radians(apparent_zenith_deg));
    const double fh1 = std::exp(-altitude_m / 8000.0);
    const double fh2 = std::exp(-altitude_m / 1250.0);
    const double cg1 = 5.09e-5 * altitude_m + 0.868;
    const double cg2 = 3.92e-5 * altitude_m + 0.0387;
    const double tl = linke_turbidity;

    ClearSky sky;
    sky.global_w_m2 =
        cg1 * extraterrestrial_normal_w_m2 * cos_zenith * std::exp(-cg2 * absolute_air_mass * (fh1 + fh2 * (tl - 1.0)));
    const double by_path =
        extraterrestrial_normal_w_m2 * (0.664 + 0.163 / fh1) * std::exp(-0.09 * absolute_air_mass * (tl - 1.0));
    const double by_share = sky.global_w_m2 * (1.0 - (0.1 - 0.2 * std::exp(-tl)) / (0.1 + 0.882 / fh1)) / cos_zenith;
    sky.beam_normal_w_m2 = std::fmin(by_path, by_share);
    sky.diffuse_w_m2 = sky.global_w_m2 - sky.beam_normal_w_m2 * cos_zenith;
    return sky;
}

}  // namespace wg::sun
