#include "core/weather/altitude.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/weather/humidity.h"

namespace wg::weather {
namespace {

constexpr double lowest_m = -450.0;
constexpr double highest_m = 6000.0;
constexpr double dry_air_gas_constant_j_kgk = 287.05287;  // ISO 2533
constexpr double lowest_air_c = -70.0;
constexpr double highest_air_c = 60.0;

std::string signed_fixed(double value, int decimals) {
    return (value < 0.0 ? "" : "+") + fixed(value, decimals);
}

}  // namespace

double pressure_moved_pa(double pressure_pa, double air_c, double higher_m) noexcept {
    const double share = 1.0 - standard_lapse_k_per_m * higher_m / kelvin(air_c);
    return pressure_pa * std::pow(share, gravity_m_s2 / (dry_air_gas_constant_j_kgk * standard_lapse_k_per_m));
}

Result<MovedYear> at_altitude(const Year& year, double altitude_m) {
    if (!(altitude_m >= lowest_m && altitude_m <= highest_m)) {
        return Problem{"altitude", "is " + fixed(altitude_m, 0) + " m, outside -450 to 6000",
                       "Enter the height above sea level in metres"};
    }
    MovedYear moved{year, altitude_m - year.altitude_m, {}};
    if (std::fabs(moved.higher_m) < 1.0) return moved;
    const double warmer_k = -standard_lapse_k_per_m * moved.higher_m;
    Year& out = moved.year;
    out.altitude_m = altitude_m;
    for (std::size_t i = 0; i < out.air_c.size(); ++i) {
        const double air_c = year.air_c[i];
        out.air_c[i] = std::clamp(air_c + warmer_k, lowest_air_c, highest_air_c);
        const double humidity = relative_humidity(air_c, year.dew_point_c[i]);
        out.dew_point_c[i] = std::fmin(out.air_c[i], dew_point_c(out.air_c[i], humidity));
        out.pressure_pa[i] = pressure_moved_pa(year.pressure_pa[i], air_c, moved.higher_m);
        if (!out.sky_long_wave_w_m2.empty()) {
            out.sky_long_wave_w_m2[i] *= std::pow(kelvin(out.air_c[i]) / kelvin(air_c), 4.0);
        }
    }
    out.remarks.push_back("Moved from " + fixed(year.altitude_m, 0) + " to " + fixed(altitude_m, 0) + " m: air " +
                          signed_fixed(warmer_k, 2) +
                          " K (6.5 K a kilometre, ISO 2533), dew point at the same relative humidity, pressure by the "
                          "barometric formula; light and wind unchanged.");
    if (std::fabs(moved.higher_m) > caution_height_m) {
        moved.caution = "The weather is from " + fixed(std::fabs(moved.higher_m), 0) + " m " +
                        (moved.higher_m > 0.0 ? "lower" : "higher") +
                        ": valleys that fill with cold air, fog and snow make a difference that no rule corrects. "
                        "Look for a year from a like height.";
    }
    return moved;
}

}  // namespace wg::weather
