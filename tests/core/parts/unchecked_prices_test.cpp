// Prices still those of an invented list.
#include "core/parts/unchecked_prices.h"

#include <gtest/gtest.h>

namespace wg::parts {
namespace unchecked_prices_test {
namespace {

PriceItem item(const char* id, const char* text, std::int64_t minor) {
    PriceItem out;
    out.id = id;
    out.text = text;
    out.price = {minor};
    return out;
}

PriceList invented_list() {
    PriceList out;
    out.items = {item("a", "Plate", 40000), item("b", "Tube", 700), item("c", "Given away", 0)};
    out.labour_hour = {6800};
    out.labour_rates = {{"cert", "certified work", {7800}, {}}};
    out.travel = Travel{{62}, {5200}, 50.0, 1, "standard"};
    out.tariffs = {};
    out.tariffs.electricity_minor_kwh = 30.0;
    return out;
}

TEST(UncheckedPrices, a_copy_has_them_all_and_each_that_is_changed_goes) {
    const PriceList invented = invented_list();
    PriceList list = invented;
    const std::size_t all = same_prices(list, invented).size();
    const auto names = same_prices(list, invented);
    EXPECT_EQ(names[0], "Plate (a)");
    EXPECT_EQ(names[1], "Tube (b)");
    EXPECT_EQ(names[2], "an hour of work") << "nothing is said of what costs nothing";
    list.items[0].price = {41000};
    EXPECT_EQ(same_prices(list, invented).size(), all - 1);
    list.labour_hour = {6900};
    list.labour_rates[0].hour = {7900};
    list.travel.reset();
    list.tariffs.electricity_minor_kwh = 31.0;
    EXPECT_EQ(same_prices(list, invented).size(), all - 6);
    list.items[1].id = "own";
    EXPECT_EQ(same_prices(list, invented).size(), all - 7) << "another item that costs the same";
}

}  // namespace
}  // namespace unchecked_prices_test
}  // namespace wg::parts
