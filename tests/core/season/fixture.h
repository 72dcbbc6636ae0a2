#pragma once
// Equipment with invented data and a weather year made of waves and a seeded random walk: temperate, mid-latitude.

#include <cmath>
#include <fstream>
#include <memory>
#include <random>
#include <sstream>
#include <string>

#include "core/quantity/constants.h"
#include "core/season/season.h"

namespace wg::season_test {

inline std::shared_ptr<const refrigerant::Properties> properties(const std::string& name) {
    std::ifstream in(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::ostringstream text;
    text << in.rdbuf();
    auto result = refrigerant::Properties::from_json(text.str(), name + ".json");
    return result.ok() ? result.value() : nullptr;
}

inline std::shared_ptr<const refrigerant::Properties> r134a() {
    static const auto loaded = properties("R134a");
    return loaded;
}

/// `plates` plates of 1.6 m2, R134a, 250 l, draw cycle M at 55 deg C.
inline season::Input equipment(int plates, double displacement_cm3 = 18.0) {
    season::Input input;
    input.collector.name = "test plate";
    input.groups[0].count = plates;
    input.block.name = "test block";
    input.block.displacement_cm3 = displacement_cm3;
    input.cylinder.name = "test cylinder";
    input.cylinder.standing_loss_kwh_24h = 1.94;  // 1.8 W/K
    input.refrigerant = r134a().get();
    return input;
}

/// Mean air 10.4 deg C and about 1,200 kWh/m2 on the plane; the same for the same seed.
inline void add_weather(season::Input& input, double mean_air_c = 10.4, unsigned seed = 1) {
    season::PlateGroup& group = input.groups[0];
    std::mt19937 random(seed);
    std::normal_distribution<double> gauss;
    const double latitude = radians(48.0);
    double front = 0.0;  // slow walk of air masses
    double cloud = 0.5;
    for (int h = 0; h < 8760; ++h) {
        const int day = h / 24;
        const double hour = h % 24 + 0.5;
        if (h % 24 == 0) {
            front = 0.75 * front + 2.0 * gauss(random);
            cloud = std::min(1.0, std::max(0.0, 0.5 * cloud + 0.25 + 0.3 * gauss(random)));
        }
        const double season_wave = std::cos(2.0 * pi * (day - 200) / 365.0);
        const double declination = radians(23.45 * std::sin(2.0 * pi * (day + 284 + 1) / 365.0));
        const double hour_angle = (hour - 12.0) * pi / 12.0;
        const double up = std::sin(latitude) * std::sin(declination) +
                          std::cos(latitude) * std::cos(declination) * std::cos(hour_angle);
        const double tilted = std::sin(latitude - radians(35.0)) * std::sin(declination) +
                              std::cos(latitude - radians(35.0)) * std::cos(declination) * std::cos(hour_angle);
        const double beam = up > 0.0 ? 950.0 * std::exp(-0.16 / std::max(up, 0.05)) * (1.0 - 0.85 * cloud) : 0.0;
        const double diffuse = up > 0.0 ? up * (90.0 + 170.0 * cloud) : 0.0;
        const double air =
            mean_air_c + 9.0 * season_wave + (4.5 - 2.5 * cloud) * std::cos((hour - 15.0) * pi / 12.0) + front;
        group.front_w_m2.push_back(beam * std::max(0.0, tilted) + diffuse);
        group.rear_w_m2.push_back(0.0);
        input.sun_up.push_back(up);
        input.air_c.push_back(air);
        input.dew_point_c.push_back(air - 1.5 - 4.0 * (1.0 - cloud) - 2.0 * std::cos((hour - 15.0) * pi / 12.0) * 0.5);
        group.wind_plate_m_s.push_back(
            std::max(0.1, 2.2 + 0.8 * std::cos((hour - 14.0) * pi / 12.0) + 0.4 * gauss(random)));
        input.sky_k.push_back(kelvin(air - 4.0 - 14.0 * (1.0 - cloud)));
        input.pressure_pa.push_back(98000.0);
    }
}

}  // namespace wg::season_test
