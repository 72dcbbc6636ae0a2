#include "core/weather/diffuse_split.h"

#include <cmath>

#include "core/quantity/constants.h"
#include "core/sun/extraterrestrial.h"

namespace wg::weather {

double diffuse_share_erbs(double clearness) noexcept {
    const double k = std::fmax(0.0, clearness);
    if (k <= 0.22) return 1.0 - 0.09 * k;
    if (k <= 0.80) return 0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)));
    return 0.165;
}

double clean_air_beam_w_m2(double cos_zenith, double extraterrestrial_normal_w_m2, double up_share) noexcept {
    if (!(cos_zenith > 0.0)) return 0.0;
    const double air_mass = sun::relative_air_mass(degrees(std::acos(std::fmin(1.0, cos_zenith))));
    return up_share * extraterrestrial_normal_w_m2 * std::pow(0.7, std::pow(air_mass, 0.678));
}

Split split_erbs(double global_w_m2, double cos_zenith, double extraterrestrial_normal_w_m2, double up_share) noexcept {
    Split split;
    if (!(cos_zenith > 0.0) || !(up_share > 0.0) || !(global_w_m2 > 0.0)) {
        split.diffuse_w_m2 = std::fmax(0.0, global_w_m2);
        return split;
    }
    split.clearness = global_w_m2 / (extraterrestrial_normal_w_m2 * cos_zenith * up_share);
    const double diffuse = global_w_m2 * diffuse_share_erbs(split.clearness);
    split.beam_normal_w_m2 = std::fmin((global_w_m2 - diffuse) / cos_zenith,
                                       clean_air_beam_w_m2(cos_zenith, extraterrestrial_normal_w_m2, up_share));
    split.diffuse_w_m2 = global_w_m2 - split.beam_normal_w_m2 * cos_zenith;
    return split;
}

}  // namespace wg::weather
