#include "core/parts/prices.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <nlohmann/json.hpp>
#include <set>
#include <sstream>

namespace wg::parts {
namespace {

using nlohmann::json;

std::string shipped_text() {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/prices/invented.json");
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<Problem> problems_of(const json& document) {
    const Result<PriceList> result = price_list_from_json(document.dump(), "prices.json");
    return result ? std::vector<Problem>{} : result.problems();
}

bool names(const std::vector<Problem>& problems, const std::string& place) {
    return std::any_of(problems.begin(), problems.end(),
                       [&](const Problem& p) { return p.where.find(place) != std::string::npos; });
}

TEST(PriceList, shipped_list_reads_and_is_marked_invented) {
    const Result<PriceList> result = price_list_from_json(shipped_text(), "invented.json");
    ASSERT_TRUE(result.ok()) << text_of(result.problems());
    const PriceList& list = result.value();
    EXPECT_TRUE(list.invented);
    EXPECT_EQ(list.currency, "EUR");
    EXPECT_EQ(list.labour_hour.minor, 6800);
    EXPECT_GE(list.tasks.size(), 8U);
    ASSERT_NE(find_item(list, "tube-6.35"), nullptr);
    EXPECT_EQ(find_item(list, "tube-6.35")->price.minor, 390);
    EXPECT_EQ(find_item(list, "tube-6.36"), nullptr);
}

TEST(PriceList, decimal_prices_become_exact_cents) {
    json document = json::parse(shipped_text());
    // 0.29 * 100 is 28.999999999999996 in binary; 1.15 * 100 is 114.99999999999999.
    for (const auto& [text, minor] :
         {std::pair<const char*, int>{"0.29", 29}, {"1.15", 115}, {"8.2", 820}, {"99999.99", 9999999}, {"0", 0}}) {
        document["items"][0]["price"] = json::parse(text);
        const Result<PriceList> result = price_list_from_json(document.dump(), "p.json");
        ASSERT_TRUE(result.ok()) << text;
        EXPECT_EQ(result.value().items[0].price.minor, minor) << text;
    }
    document["items"][0]["price"] = 1.005;
    EXPECT_TRUE(names(problems_of(document), "marl-18\".price"));
    document["items"][0]["price"] = -1.0;
    EXPECT_TRUE(names(problems_of(document), "marl-18\".price"));
}

TEST(PriceList, each_missing_field_is_named) {
    const json whole = json::parse(shipped_text());
    const std::set<std::string> optional = {
        "note", "invented", "pack", "hours", "hours_per_m", "hours_per_point", "hours_per_collector"};
    for (const auto& [field, value] : whole.items()) {
        if (optional.count(field) != 0) continue;
        json broken = whole;
        broken.erase(field);
        EXPECT_TRUE(names(problems_of(broken), field)) << field;
    }
    for (const auto& [field, value] : whole["tariffs"].items()) {
        json broken = whole;
        broken["tariffs"].erase(field);
        EXPECT_TRUE(names(problems_of(broken), "tariffs." + field)) << field;
    }
    for (const char* list : {"items", "tasks"}) {
        for (const auto& [field, value] : whole[list][0].items()) {
            if (optional.count(field) != 0) continue;
            json broken = whole;
            broken[list][0].erase(field);
            EXPECT_TRUE(names(problems_of(broken), std::string(list) + "[0]")) << field;
        }
    }
}

TEST(PriceList, wrong_values_are_refused_where_they_stand) {
    const json whole = json::parse(shipped_text());
    json document = whole;
    document["currency"] = "JPY";  // has no hundredths
    EXPECT_TRUE(names(problems_of(document), "currency"));
    document["currency"] = "euro";
    EXPECT_TRUE(names(problems_of(document), "currency"));
    document = whole;
    document["valid_to"] = "2026-01-01";
    EXPECT_TRUE(names(problems_of(document), "valid_to"));
    document["valid_to"] = "31.12.2027";
    EXPECT_TRUE(names(problems_of(document), "valid_to"));
    document = whole;
    document["items"][3]["unit"] = "furlong";
    EXPECT_TRUE(names(problems_of(document), "items[3]"));
    document = whole;
    document["items"][3]["id"] = document["items"][0]["id"];
    EXPECT_TRUE(names(problems_of(document), "items[3]"));
    document = whole;
    document["items"][3]["discount"] = 0.1;
    EXPECT_TRUE(names(problems_of(document), "items[3]"));
    document = whole;
    document["tasks"][0]["hours"] = 0;
    EXPECT_TRUE(names(problems_of(document), "tasks[0]"));
    document = whole;
    document["tariffs"]["years"] = 2.5;
    EXPECT_TRUE(names(problems_of(document), "tariffs.years"));
    document["tariffs"]["years"] = 0;
    EXPECT_TRUE(names(problems_of(document), "tariffs.years"));
    document = whole;
    document["tariffs"]["yearly_rise"] = 2;  // per cent in place of a share
    EXPECT_TRUE(names(problems_of(document), "tariffs.yearly_rise"));
}

}  // namespace
}  // namespace wg::parts
