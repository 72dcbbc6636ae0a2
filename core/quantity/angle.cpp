#include "core/quantity/angle.h"

#include <array>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg {

double wrap_360(double angle_deg) noexcept {
    const double wrapped = std::fmod(angle_deg, 360.0);
    const double positive = wrapped < 0.0 ? wrapped + 360.0 : wrapped;
    return positive >= 360.0 ? 0.0 : positive;  // -1e-17 + 360 rounds to 360
}

double wrap_180(double angle_deg) noexcept {
    const double wrapped = wrap_360(angle_deg);
    return wrapped > 180.0 ? wrapped - 360.0 : wrapped;
}

double angular_separation_deg(double zenith_a_deg, double azimuth_a_deg, double zenith_b_deg,
                              double azimuth_b_deg) noexcept {
    // Haversine on co-latitudes: no loss of digits near zero.
    const double za = radians(zenith_a_deg);
    const double zb = radians(zenith_b_deg);
    const double half_dz = std::sin(0.5 * (za - zb));
    const double half_da = std::sin(0.5 * radians(azimuth_a_deg - azimuth_b_deg));
    const double h = half_dz * half_dz + std::sin(za) * std::sin(zb) * half_da * half_da;
    return degrees(2.0 * std::asin(std::sqrt(std::fmin(1.0, std::fmax(0.0, h)))));
}

const char* compass_point(double azimuth_deg) noexcept {
    static constexpr std::array<const char*, 16> points = {"N", "NNE", "NE", "ENE", "E", "ESE", "SE", "SSE",
                                                           "S", "SSW", "SW", "WSW", "W", "WNW", "NW", "NNW"};
    const auto index = static_cast<unsigned>(std::floor(wrap_360(azimuth_deg) / 22.5 + 0.5)) % 16U;
    return points[index];
}

}  // namespace wg
