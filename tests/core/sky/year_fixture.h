#pragma once
// Weather years for the tests of this room.

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>

#include "core/sky/prepared.h"
#include "core/weather/climate.h"
#include "core/weather/read.h"

namespace wg::sky {

inline std::string text_of_file(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

inline weather::Climate harrowmere() {
    const std::string path = std::string(WG_RESOURCES_DIR) + "/climates/harrowmere.json";
    return weather::climate_from_json(text_of_file(path), path).value();
}

inline const PreparedYear& harrowmere_year() {
    static const PreparedYear year = prepare(weather::synthesise(harrowmere()).value());
    return year;
}

}  // namespace wg::sky
