#pragma once
// Demonstration equipment from resources (invented) in the chamber.

#include <fstream>
#include <map>
#include <memory>
#include <sstream>
#include <stdexcept>
#include <string>

#include "core/equipment/codec.h"
#include "core/rating/rating.h"

namespace wg::rating_test {

inline std::string resource(const std::string& path) {
    std::ifstream in(std::string(WG_RESOURCES_DIR) + "/" + path);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

inline const refrigerant::Properties& properties(Refrigerant which) {
    static std::map<Refrigerant, std::shared_ptr<const refrigerant::Properties>> loaded;
    auto& slot = loaded[which];
    if (!slot) {
        const std::string file = std::string(name_of(which)) + ".json";
        auto made = refrigerant::Properties::from_json(resource("refrigerants/" + file), file);
        if (!made) throw std::runtime_error(text_of(made.problems()));
        slot = made.value();
    }
    return *slot;
}

inline const Catalogue& catalogue() {
    static const Catalogue loaded = [] {
        auto made = catalogue_from_json(resource("equipment/invented.json"), "invented.json");
        if (!made) throw std::runtime_error(text_of(made.problems()));
        return std::move(made).value();
    }();
    return loaded;
}

inline rating::Item item(const std::string& block, const std::string& collector, int collectors,
                         const std::string& cylinder) {
    rating::Item out;
    out.collector = *find_collector(catalogue(), collector);
    out.collectors = collectors;
    out.block = *find_block(catalogue(), block);
    out.cylinder = *find_cylinder(catalogue(), cylinder);
    out.refrigerant = &properties(out.block.refrigerant);
    return out;
}

inline rating::Chamber chamber(const rating::Air& air) {
    rating::Chamber out;
    out.air = air;
    return out;
}

inline rating::Rating rated(const rating::Item& item, const rating::Air& air, const rating::Test& test = {}) {
    auto made = rating::rate(item, chamber(air), test);
    if (!made) throw std::runtime_error(text_of(made.problems()));
    return std::move(made).value();
}

}  // namespace wg::rating_test
