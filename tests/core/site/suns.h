#pragma once
// Plain years of suns for the tests: no weather, so that every figure has its reason in the geometry.

#include <cmath>

#include "core/quantity/constants.h"
#include "core/sky/prepared.h"

namespace wg::site {

/// Declination by Cooper 1969, hour angle by the clock, beam by height.
inline sky::PreparedYear year_at(double latitude_deg) {
    sky::PreparedYear year;
    for (int hour = 0; hour < 8760; ++hour) {
        const double declination = radians(23.45 * std::sin(2.0 * pi * (284.0 + hour / 24 + 1) / 365.0));
        const double angle = radians(15.0 * (hour % 24 + 0.5 - 12.0)), latitude = radians(latitude_deg);
        year.sun_east.push_back(-std::cos(declination) * std::sin(angle));
        year.sun_north.push_back(std::sin(declination) * std::cos(latitude) -
                                 std::cos(declination) * std::cos(angle) * std::sin(latitude));
        const double up =
            std::sin(declination) * std::sin(latitude) + std::cos(declination) * std::cos(angle) * std::cos(latitude);
        year.sun_up.push_back(up);
        year.beam_normal_w_m2.push_back(up > 0.0 ? 800.0 * std::pow(up, 0.3) : 0.0);
    }
    return year;
}

}  // namespace wg::site
