// What a version changed, in words.
#include "core/parts/price_changes.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace wg::parts {
namespace price_changes_test {
namespace {

PriceItem item(const char* id, std::int64_t minor) {
    PriceItem out;
    out.id = id;
    out.text = std::string("Item ") + id;
    out.unit = "pc";
    out.price = {minor};
    return out;
}

TEST(PriceChanges, name_item_and_field_and_both_sides) {
    PriceList before;
    before.currency = "EUR";
    before.label = "Old";
    before.items = {item("a", 100), item("b", 200), item("c", 300)};
    PriceList after = before;
    EXPECT_TRUE(price_changes(before, after).empty());
    after.label = "New";
    after.items = {item("d", 400), item("b", 250), item("a", 100)};
    after.items[1].cost = Money{180};
    after.travel = Travel{};
    const std::vector<PriceChange> changes = price_changes(before, after);
    ASSERT_EQ(changes.size(), 6U);
    EXPECT_EQ(changes[0].where, "Item d (d)");
    EXPECT_EQ(changes[0].after, "added: unit pc, price 4.00 EUR, stock kept");
    EXPECT_EQ(changes[1].where, "Item b (b): price");
    EXPECT_EQ(changes[1].before, "2.00 EUR");
    EXPECT_EQ(changes[1].after, "2.50 EUR");
    EXPECT_EQ(changes[2].where, "Item b (b): cost");
    EXPECT_EQ(changes[2].before, "not told");
    EXPECT_EQ(changes[3].where, "Item c (c)");
    EXPECT_EQ(changes[3].before, "was there: unit pc, price 3.00 EUR, stock kept");
    EXPECT_EQ(changes[3].after, "");
    EXPECT_EQ(changes[4].where, "name of the list");
    EXPECT_EQ(changes[5].where, "travel");
}

TEST(PriceChanges, name_every_term_that_changed_with_both_sides) {
    PriceList before;
    before.currency = "EUR";
    before.labour_rates = {{"cert", "certified work", {7800}, Money{4600}}};
    before.discount_groups = {{"a", "tube", 35.0}};
    before.difficulty.heights = {{8.0, 1.15}};
    before.difficulty.coverings = {{Covering::slate, 1.3}};
    before.travel = Travel{{62}, {5200}, 50.0, 2, "standard"};
    before.tax_rates = {{"standard", "VAT", 0.21, "2027-07-01"}};
    PriceList after = before;
    after.labour_rates[0].cost = Money{4700};
    after.discount_groups[0].percent = 36.5;
    after.difficulty.heights[0].factor = 1.2;
    after.difficulty.coverings.clear();
    after.difficulty.each_storey = 0.1;
    after.travel->trips = 3;
    after.tax_rates[0].rate = 0.22;
    after.invented = true;
    after.tax_rates.push_back({"standard", "VAT", 0.23, "2028-01-01"});
    after.tariffs.electricity_minor_kwh = 31.25;
    std::string all;
    for (const PriceChange& one : price_changes(before, after))
        all += one.where + "|" + one.before + "|" + one.after + "\n";
    EXPECT_EQ(all,
              "prices invented or not checked|no|yes\n"
              "certified work (cert): cost of an hour|46.00 EUR|47.00 EUR\n"
              "tube (a): discount|35 %|36.5 %\n"
              "over 8 m (height): hours times|1.15|1.2\n"
              "slates (covering)|was there: hours times 1.3|\n"
              "each storey adds|0 %|10 %\n"
              "travel, trips|2|3\n"
              "tax standard (2027-07-01): rate|21 %|22 %\n"
              "tax standard (2028-01-01)||added: label VAT, rate 23 %\n"
              "electricity, a kWh|0.3|0.3125\n");
    after.travel.reset();
    const auto gone = price_changes(before, after);
    EXPECT_TRUE(std::any_of(gone.begin(), gone.end(), [](const PriceChange& one) {
        return one.where == "travel" && one.before == "was there" && one.after == "not reckoned";
    }));
}

}  // namespace
}  // namespace price_changes_test
}  // namespace wg::parts
