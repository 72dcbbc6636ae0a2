#pragma once
// Invented equipment, and reading of a property table.

#include <fstream>
#include <memory>
#include <sstream>
#include <string>

#include "core/heatpump/moist_air.h"
#include "core/heatpump/operating_point.h"
#include "core/quantity/constants.h"

namespace wg::heatpump_test {

inline std::shared_ptr<const refrigerant::Properties> properties(const std::string& name) {
    std::ifstream in(std::string(WG_RESOURCES_DIR) + "/refrigerants/" + name + ".json");
    std::ostringstream text;
    text << in.rdbuf();
    auto result = refrigerant::Properties::from_json(text.str(), name + ".json");
    return result.ok() ? result.value() : nullptr;
}

inline heatpump::HeatPump pump(const BlockModel& block, const refrigerant::Properties& fluid) {
    auto made = heatpump::HeatPump::make(block, fluid);
    if (!made) std::abort();
    return made.value();
}

inline double dew_point_c(double air_c, double relative_humidity) {
    const double x = std::log(relative_humidity) + 17.62 * air_c / (243.12 + air_c);
    return 243.12 * x / (17.62 - x);
}

inline heatpump::Surroundings surroundings(double light, double air_c, double humidity, double wind,
                                           double sky_below_k) {
    return {light, 0.0, air_c, dew_point_c(air_c, humidity), wind, kelvin(air_c - sky_below_k), standard_pressure_pa};
}

}  // namespace wg::heatpump_test
