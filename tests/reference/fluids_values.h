#pragma once
// Rows of fluids_values.json: viscosities and pressure losses of public libraries, written by fluids_values.py beside
// it. Its "columns" name them.

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

namespace wg::outside {

inline const nlohmann::json& fluids_values() {
    static const nlohmann::json values =
        nlohmann::json::parse(std::ifstream(std::string(WG_TESTS_DIR) + "/reference/fluids_values.json"));
    return values;
}

}  // namespace wg::outside
