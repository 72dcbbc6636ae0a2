#include "core/weather/humidity.h"

#include <cmath>

namespace wg::weather {

double saturation_pressure_pa(double air_c) noexcept {
    return 611.2 * std::exp(17.62 * air_c / (243.12 + air_c));
}

double dew_point_of_vapour_c(double vapour_pa) noexcept {
    const double g = std::log(vapour_pa / 611.2);
    return 243.12 * g / (17.62 - g);
}

double dew_point_c(double air_c, double relative_humidity) noexcept {
    return dew_point_of_vapour_c(std::fmax(0.001, relative_humidity) * saturation_pressure_pa(air_c));
}

double relative_humidity(double air_c, double dew_point_c) noexcept {
    return saturation_pressure_pa(dew_point_c) / saturation_pressure_pa(air_c);
}

}  // namespace wg::weather
