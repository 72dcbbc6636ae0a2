#include "core/sun/extraterrestrial.h"

#include <cmath>

#include "core/quantity/constants.h"

namespace wg::sun {

double extraterrestrial_day_j_m2(double latitude_deg, double declination_deg, double normal_w_m2) noexcept {
    const double latitude = radians(latitude_deg);
    const double declination = radians(declination_deg);
    const double ss = std::sin(latitude) * std::sin(declination);
    const double cc = std::cos(latitude) * std::cos(declination);
    // cos(sunset hour angle) = -ss/cc; at the poles cc is zero and the sign of ss decides.
    double sunset = 0.0;
    if (ss >= cc) {
        sunset = pi;
    } else if (ss > -cc) {
        sunset = std::acos(-ss / cc);
    }
    return 86400.0 / pi * normal_w_m2 * (cc * std::sin(sunset) + sunset * ss);
}

double relative_air_mass(double apparent_zenith_deg) noexcept {
    const double zenith_deg = std::fmin(90.0, apparent_zenith_deg);
    return 1.0 / (std::cos(radians(zenith_deg)) + 0.50572 * std::pow(6.07995 + (90.0 - zenith_deg), -1.6364));
}

double standard_pressure_pa_at(double altitude_m) noexcept {
    return standard_pressure_pa * std::pow(1.0 - 2.25577e-5 * altitude_m, 5.25588);
}

}  // namespace wg::sun
