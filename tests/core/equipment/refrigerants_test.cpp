// A refrigerant that blocks can name stands in all the places that DEVELOPERS.md lists.

#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "core/equipment/equipment.h"
#include "core/equipment/keys.h"

namespace {

using namespace wg;

std::string text_of_file(const std::string& path) {
    std::ifstream in(path);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}
std::string resource(const std::string& path) {
    return text_of_file(std::string(WG_RESOURCES_DIR) + "/" + path);
}

TEST(Refrigerants, every_one_has_key_table_test_values_index_entry_and_price) {
    const std::string script = text_of_file(std::string(WG_TESTS_DIR) + "/reference/make_refrigerants.py");
    const auto values =
        nlohmann::json::parse(text_of_file(std::string(WG_TESTS_DIR) + "/reference/coolprop_values.json"));
    const auto index = nlohmann::json::parse(resource("index.json"))["refrigerants"];
    const std::string prices = resource("prices/invented.json");
    const auto& keys = equipment_keys::refrigerant();
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const std::string& key = keys[i];
        EXPECT_EQ(name_of(static_cast<Refrigerant>(i)), key) << "equipment.cpp and keys.h differ";
        EXPECT_NE(script.find("\"" + key + "\": dict("), std::string::npos) << key << " is not in the script";
        EXPECT_TRUE(values["fluids"].contains(key)) << key << ": run the script";
        const std::string path = "refrigerants/" + key + ".json";
        const auto table = nlohmann::json::parse(resource(path), nullptr, false);
        ASSERT_TRUE(table.is_object()) << path;
        EXPECT_EQ(table["name"], key);
        EXPECT_NE(std::find(index.begin(), index.end(), path), index.end()) << path << " is not in index.json";
        EXPECT_NE(prices.find("\"refrigerant-" + key + "\""), std::string::npos) << key << " has no price";
    }
    EXPECT_EQ(index.size(), keys.size());
    EXPECT_EQ(values["fluids"].size(), keys.size());
}

}  // namespace
