#include "core/parts/price_entry.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <limits>
#include <sstream>

namespace wg::parts {
namespace price_entry_test {
namespace {

PriceList shipped() {
    std::ifstream file(std::string(WG_RESOURCES_DIR) + "/prices/invented.json");
    std::stringstream text;
    text << file.rdbuf();
    return price_list_from_json(text.str(), "invented.json").value();
}

TEST(PriceEntry, amounts_are_whole_hundredths_or_none) {
    for (const std::int64_t minor : {0LL, 1LL, 99LL, 101LL, 12345LL, 999'999'999LL, 1'000'000'000LL}) {
        ASSERT_TRUE(money_of_units(units_of(Money{minor})).has_value()) << minor;
        EXPECT_EQ(money_of_units(units_of(Money{minor}))->minor, minor);
    }
    for (const double wrong : {-0.01, 0.001, 12.345, 1e7 + 0.01, std::numeric_limits<double>::infinity(), std::nan("")})
        EXPECT_FALSE(money_of_units(wrong).has_value()) << wrong;
    EXPECT_EQ(minor_of_units(0.3125), 31.25);
    EXPECT_EQ(share_of_percent(7.7), 0.077) << "as the file would have it";
    EXPECT_EQ(percent_of_share(0.077), 7.7);
}

TEST(PriceEntry, prices_of_quantities_are_written_and_read) {
    const std::vector<QuantityPrice> prices = {{0.5, {700}}, {50.0, {690}}, {100.0, {5}}};
    EXPECT_EQ(quantity_prices_text(prices), "0.5: 7.00; 50: 6.90; 100: 0.05");
    EXPECT_EQ(quantity_prices_from(quantity_prices_text(prices)).value(), prices);
    EXPECT_EQ(quantity_prices_from(" 50 : 6,90 ; ").value(), (std::vector<QuantityPrice>{{50.0, {690}}}));
    EXPECT_TRUE(quantity_prices_from("").value().empty());
    for (const char* wrong : {"50", "50:", ":6", "50: 6.901", "50: 6; 50: 5", "50: 6; 40: 5", "-1: 5", "1e3: 5",
                              "1.000.000: 5", "2000000: 5", "50: 6: 5", "nan: 1", "50: x"})
        EXPECT_FALSE(quantity_prices_from(wrong).ok()) << wrong;
}

TEST(PriceEntry, costs_follow_the_discount_of_their_group) {
    PriceList list = shipped();
    list.discount_groups.push_back({"mine", "", 35.0});
    list.items[0].supplier_price = Money{780};
    list.items[0].discount_group = "mine";
    list.items[1].supplier_price.reset();
    list.items[1].discount_group.clear();
    list.items[1].cost = Money{123};
    reckon_costs(list);
    EXPECT_EQ(list.items[0].cost->minor, 507);
    EXPECT_EQ(list.items[1].cost->minor, 123);
    list.discount_groups.back().percent = 50.0;
    reckon_costs(list);
    EXPECT_EQ(list.items[0].cost->minor, 390);
    // As the file's reader has it.
    EXPECT_EQ(price_list_from_json(price_list_to_json(list), "l").value().items[0].cost, list.items[0].cost);
}

TEST(PriceEntry, what_stands_beside_the_items_is_judged_as_the_reader_judges_it) {
    const PriceList good = shipped();
    EXPECT_TRUE(problems_beside_items(good).empty());
    const auto refused = [&](const auto& change, const char* word) {
        PriceList list = good;
        change(list);
        const auto problems = problems_beside_items(list);
        const auto whole = price_list_from_json(price_list_to_json(list), "l");
        EXPECT_FALSE(whole.ok()) << word;
        EXPECT_NE(text_of(problems).find(word), std::string::npos) << text_of(problems);
    };
    refused([](PriceList& l) { l.discount_groups = {{"a", "", 101.0}}; }, "percent");
    refused([](PriceList& l) { l.difficulty.heights = {{8.0, 1.1}, {8.0, 1.2}}; }, "rising order");
    refused([](PriceList& l) { l.tax_rates = {{"s", "VAT", 0.2, "2027-02-30"}}; }, "valid_from");
    refused([](PriceList& l) { l.tasks[0].rate = "nobody"; }, "labour_rates");
    refused([](PriceList& l) { l.tasks[0].id = l.items[0].id; }, "used twice");
    refused([](PriceList& l) { l.currency = "JPY"; }, "hundredths");
    refused([](PriceList& l) { l.tariffs.years = 0; }, "years");
    refused(
        [](PriceList& l) {
            l.items[0].supplier_price = Money{100};
            l.items[0].discount_group = "gone";
        },
        "discount_groups");
}

}  // namespace
}  // namespace price_entry_test
}  // namespace wg::parts
