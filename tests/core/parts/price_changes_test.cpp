// What a version changed, in words.
#include "core/parts/price_changes.h"

#include <gtest/gtest.h>

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
    EXPECT_EQ(changes[0].after, "added");
    EXPECT_EQ(changes[1].where, "Item b (b): price");
    EXPECT_EQ(changes[1].before, "2.00 EUR");
    EXPECT_EQ(changes[1].after, "2.50 EUR");
    EXPECT_EQ(changes[2].where, "Item b (b): cost");
    EXPECT_EQ(changes[2].before, "not told");
    EXPECT_EQ(changes[3].where, "Item c (c)");
    EXPECT_EQ(changes[3].after, "");
    EXPECT_EQ(changes[4].where, "name of the list");
    EXPECT_EQ(changes[5].where, "travel");
}

}  // namespace
}  // namespace price_changes_test
}  // namespace wg::parts
