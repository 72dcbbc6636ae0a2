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
    const std::set<std::string> optional = {"note",
                                            "invented",
                                            "pack",
                                            "hours",
                                            "hours_per_m",
                                            "hours_per_point",
                                            "hours_per_collector",
                                            "labour_cost",
                                            "labour_rates",
                                            "discount_groups",
                                            "difficulty",
                                            "travel",
                                            "supplier",
                                            "supplier_number",
                                            "cost",
                                            "supplier_price",
                                            "discount_group",
                                            "service"};
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

PriceList shipped() {
    return price_list_from_json(shipped_text(), "invented.json").value();
}

bool same(const PriceList& a, const PriceList& b) {
    return price_list_to_json(a) == price_list_to_json(b) && a.items == b.items && a.tasks == b.tasks &&
           a.difficulty == b.difficulty && a.travel == b.travel && a.tax_rates == b.tax_rates &&
           a.labour_rates == b.labour_rates && a.discount_groups == b.discount_groups &&
           a.labour_cost == b.labour_cost && a.note == b.note;
}

TEST(PriceList, written_and_read_again_is_the_same_list) {
    PriceList list = shipped();
    list.items[0].quantity_prices = {{5.0, {44000}}, {10.0, {43001}}};
    list.items[0].waste_percent = 2.5;
    list.tax_rates = {{"standard", "VAT", 0.2, "2020-01-01"}, {"standard", "VAT", 0.21, "2027-07-01"}};
    const std::string text = price_list_to_json(list);
    const Result<PriceList> read = price_list_from_json(text, "written.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_TRUE(same(read.value(), list));
    EXPECT_EQ(price_list_to_json(read.value()), text);
}

TEST(PriceList, a_list_of_the_first_schema_reads_as_before) {
    json old = json::parse(shipped_text());
    old["schema"] = 1;
    for (const char* field : {"labour_cost", "labour_rates", "discount_groups", "difficulty", "travel"})
        old.erase(field);
    for (json& item : old["items"]) {
        for (const char* field : {"cost", "supplier_price", "discount_group", "supplier", "supplier_number", "service"})
            item.erase(field);
    }
    for (json& task : old["tasks"]) {
        task.erase("rate");
        task.erase("slower_by");
    }
    const Result<PriceList> read = price_list_from_json(old.dump(), "old.json");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    const PriceList now = shipped();
    for (std::size_t i = 0; i < now.items.size(); ++i)
        EXPECT_EQ(read.value().items[i].price, now.items[i].price);
    EXPECT_FALSE(read.value().travel.has_value());
}

TEST(PriceList, cost_and_margin_give_the_price_and_discount_gives_the_cost) {
    json list = json::parse(shipped_text());
    json& item = list["items"][0];
    item.erase("price");
    item["cost"] = 10.01;
    item["margin_percent"] = 35.5;
    Result<PriceList> read = price_list_from_json(list.dump(), "x");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().items[0].price.minor, 1356) << "10.01 x 1.355 = 13.563550";
    item.erase("cost");
    item["supplier_price"] = 19.99;
    item["discount_group"] = "a";  // 35 %
    read = price_list_from_json(list.dump(), "x");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().items[0].cost->minor, 1299) << "19.99 x 0.65 = 12.9935";
    item["cost"] = 12.0;
    EXPECT_TRUE(names(problems_of(list), "cost")) << "two of them";
    item.erase("cost");
    item["discount_group"] = "nowhere";
    EXPECT_TRUE(names(problems_of(list), "discount_group"));
    item.erase("discount_group");
    item.erase("supplier_price");
    EXPECT_TRUE(names(problems_of(list), "price")) << "a margin over nothing";
}

TEST(PriceList, what_stretches_hours_and_prices_of_many_is_checked) {
    const json whole = json::parse(shipped_text());
    const auto with = [&whole](const char* pointer, const json& value) {
        json list = whole;
        list[json::json_pointer(pointer)] = value;
        return problems_of(list);
    };
    EXPECT_TRUE(names(with("/difficulty/height/1/over_m", 2), "height[1]"));
    EXPECT_TRUE(names(with("/difficulty/covering/0/covering", "thatch"), "covering"));
    EXPECT_TRUE(names(with("/difficulty/access/1/id", "ladder"), "access[1]"));
    EXPECT_TRUE(names(with("/difficulty/height/0/factor", 11), "factor"));
    EXPECT_TRUE(names(with("/difficulty/each_storey", -0.1), "each_storey"));
    EXPECT_TRUE(names(with("/tasks/0/slower_by", json::array({"rain"})), "slower_by"));
    EXPECT_TRUE(names(with("/tasks/0/rate", "none"), "rate"));
    EXPECT_TRUE(names(with("/travel/trips", 0), "trips"));
    EXPECT_TRUE(names(with("/items/0/waste_percent", 101), "waste_percent"));
    const json falling = json::parse(R"([{"from": 10, "price": 4}, {"from": 5, "price": 3}])");
    EXPECT_TRUE(names(with("/items/0/quantity_prices", falling), "quantity_prices[1]"));
    const json twice = json::parse(R"([{"tax_class": "s", "label": "VAT", "rate": 0.2, "valid_from": "2027-01-01"},
                                       {"tax_class": "s", "label": "VAT", "rate": 0.1, "valid_from": "2027-01-01"}])");
    EXPECT_TRUE(names(with("/tax_rates", twice), "tax_rates[1]"));
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
