#pragma once
// Rows of heat_values.json: values of public libraries, written by heat_values.py beside it. Its "columns" name them.

#include <fstream>
#include <nlohmann/json.hpp>
#include <string>

namespace wg::outside {

inline const nlohmann::json& heat_values() {
    static const nlohmann::json values =
        nlohmann::json::parse(std::ifstream(std::string(WG_TESTS_DIR) + "/reference/heat_values.json"));
    return values;
}

}  // namespace wg::outside
