#pragma once
// Rule sets for tests of the store: the program's own text under another id.

#include <fstream>
#include <sstream>
#include <string>

namespace wg::store::test {

inline std::string rule_set_text(const std::string& id, const std::string& label) {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/rules/assumed.json");
    std::stringstream read;
    read << file.rdbuf();
    std::string text = read.str();
    const auto put = [&text](const std::string& what, const std::string& instead) {
        const std::size_t at = text.find(what);
        if (at != std::string::npos) text.replace(at, what.size(), instead);
    };
    put("\"id\": \"assumed\"", "\"id\": \"" + id + '"');
    put("\"label\": \"Neutral default (assumed)\"", "\"label\": \"" + label + '"');
    return text;
}

}  // namespace wg::store::test
