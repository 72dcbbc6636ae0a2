#pragma once
// The shipped climates, and the light outside the atmosphere that bounds their figures.

#include <array>
#include <cmath>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <vector>

#include "core/quantity/time.h"
#include "core/sun/year.h"
#include "core/weather/climate.h"
#include "core/weather/climate_table.h"

namespace wg::weather {

inline std::string resource_text(const std::string& path) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/" + path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

inline const std::vector<Climate>& places() {
    static const std::vector<Climate> all =
        climates_from_csv(resource_text("climates/places.csv"), "places.csv").value();
    return all;
}

inline const Climate& place(const std::string& id) {
    for (const Climate& climate : places()) {
        if (climate.id == id) return climate;
    }
    throw std::runtime_error("no place " + id);
}

inline sun::YearSun sun_of(const Climate& climate) {
    return sun::year_sun({climate.latitude_deg, climate.longitude_deg, climate.altitude_m, climate.utc_offset_h, 30.0,
                          sun::weather_sun_year});
}

/// Mean daily light on the horizontal outside the atmosphere, kWh/m2.
inline std::array<double, 12> extraterrestrial_kwh_m2_day(const sun::YearSun& sun) {
    std::array<double, 12> out{};
    for (int month = 1; month <= 12; ++month) {
        double sum = 0.0;
        const int from = first_hour_of_month(month);
        const int to = first_hour_of_month(month + 1);
        for (int h = from; h < to; ++h) {
            const auto i = static_cast<std::size_t>(h);
            sum += sun.up_share[i] * std::fmax(0.0, sun.up[i]) * sun.extraterrestrial_normal_w_m2[i];
        }
        out[static_cast<std::size_t>(month) - 1] = 1e-3 * sum * 24.0 / (to - from);
    }
    return out;
}

}  // namespace wg::weather
