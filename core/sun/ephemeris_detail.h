#pragma once
// What single and batch positions share. Inside this room only.

#include <cmath>

#include "core/quantity/constants.h"

namespace wg::sun::detail {

// Four days: the shortest strong terms (the moon's pull, 29.5 days; nutation, 13.7 days) are still well resolved.
constexpr double cell_s = 4.0 * 86400.0;
constexpr double sin_upper_limb = -0.014543898;  // sin(upper_limb_elevation_deg)

inline double horner_5(const double* c, double t) noexcept {
    return c[0] + t * (c[1] + t * (c[2] + t * (c[3] + t * (c[4] + t * c[5]))));
}

struct SinCos {
    double sin, cos;
};

// Sine and cosine of an angle in turns, within 1e-11: the nearest quarter turn taken off, then the series.
inline SinCos sin_cos_of_turns(double turns) noexcept {
    const double quarter = std::floor(4.0 * turns + 0.5);
    const double x = 2.0 * pi * (turns - 0.25 * quarter);
    const double q = x * x;
    const double s =
        x * (1.0 + q * (-1.0 / 6.0 + q * (1.0 / 120.0 + q * (-1.0 / 5040.0 + q * (1.0 / 362880.0 - q / 39916800.0)))));
    const double c =
        1.0 + q * (-0.5 + q * (1.0 / 24.0 +
                               q * (-1.0 / 720.0 + q * (1.0 / 40320.0 + q * (-1.0 / 3628800.0 + q / 479001600.0)))));
    const auto which = static_cast<int>(quarter) & 3;
    const double sin_part = (which & 1) != 0 ? c : s;
    const double cos_part = (which & 1) != 0 ? s : c;
    return {(which & 2) != 0 ? -sin_part : sin_part, (which == 1 || which == 2) ? -cos_part : cos_part};
}

// Arc sine within 2e-8 rad (Abramowitz and Stegun, Handbook of Mathematical Functions, 4.4.46), for refraction only,
// which changes by less than 1e-8 rad with it. `x` from -0.015 to 1.
inline double refraction_asin(double x) noexcept {
    const double p = 1.5707963050 +
                     x * (-0.2145988016 +
                          x * (0.0889789874 +
                               x * (-0.0501743046 +
                                    x * (0.0308918810 + x * (-0.0170881256 + x * (0.0066700901 - x * 0.0012624911))))));
    const double high = 0.5 * pi - std::sqrt(1.0 - x < 0.0 ? 0.0 : 1.0 - x) * p;
    const double low = x * (1.0 + x * x / 6.0);
    return x < 0.0 ? low : high;
}

// Turns a direction upwards by the refraction of eq. 42 of the report, 1.02' cot(e + 10.3/(e + 5.11)), e in degrees.
// The cotangent of the sum comes from the direction itself and the short series for the tangent of the second part
// (under 0.05 rad); the turn (under 0.012 rad) by series as well. `up` not below `sin_upper_limb`. Returns the new `up`
// and the factor of east and north.
struct Lifted {
    double up, stretch;
};
inline Lifted refracted(double level, double up, double air) noexcept {
    const double elevation_deg = degrees(refraction_asin(up));
    const double extra = radians(10.3 / (elevation_deg + 5.11));
    const double tan_extra = extra * (1.0 + extra * extra * (1.0 / 3.0 + extra * extra * (2.0 / 15.0)));
    const double cotangent = (level - up * tan_extra) / (up + level * tan_extra);
    const double lift = radians(air * 1.02 / 60.0) * cotangent;
    const double sin_lift = lift * (1.0 - lift * lift / 6.0);
    const double cos_lift = 1.0 - lift * lift / 2.0 * (1.0 - lift * lift / 12.0);
    // Straight up there is no level part to stretch; the tiny floor only keeps the quotient finite.
    const double floored = level > 1e-150 ? level : 1e-150;
    return {up * cos_lift + level * sin_lift, cos_lift - up / floored * sin_lift};
}

}  // namespace wg::sun::detail
