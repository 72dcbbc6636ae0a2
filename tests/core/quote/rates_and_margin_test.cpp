// Properties of the margin and of dated tax rates, over offers and lists made at random; figures invented.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>

#include "core/quote/margin.h"
#include "tests/tools/sweep.h"

namespace wg::quote {
namespace rates_and_margin_test {
namespace {

TEST(MarginOfAny, parts_the_net_into_what_is_known_and_what_is_not) {
    std::mt19937 random(5);
    const auto below = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };
    TaxRules rules;
    rules.rates = {{"standard", "VAT 20 %", 0.2}, {"reduced", "VAT 7 %", 0.07}};
    for (int i = 0; i < sweep::cases(2000); ++i) {
        std::vector<parts::Line> lines;
        std::int64_t cost = 0, sold = 0;
        int unknown = 0;
        const int count = 1 + below(8);
        for (int k = 0; k < count; ++k) {
            parts::Line line;
            line.item_id = line.text = "line " + std::to_string(k);
            line.unit = "pc";
            const std::int64_t quantity = 1 + below(20);
            line.quantity = line.to_buy = static_cast<double>(quantity);
            line.unit_price = {below(100'000)};
            line.net = {line.unit_price.minor * quantity};
            line.tax_class = below(2) == 0 ? "standard" : "reduced";
            sold += line.net.minor;
            if (below(3) != 0) {
                line.unit_cost = Money{below(100'000)};
                cost += line.unit_cost->minor * quantity;
            } else {
                ++unknown;
            }
            lines.push_back(line);
        }
        Offer offer;
        offer.discount_percent = below(2) == 0 ? 0.0 : below(5000) / 100.0;
        const Offered made = offered(lines, offer, "", "EUR", rules).value();
        const Margin margin = margin_of(made);
        ASSERT_EQ(margin.cost.minor, cost) << i;
        ASSERT_EQ(margin.unknown_lines, unknown) << i;
        ASSERT_EQ((margin.sold + margin.unknown_sold).minor, made.quote.net.minor) << i;
        ASSERT_EQ(margin.kept.minor, margin.sold.minor - cost) << i;
        ASSERT_GE(margin.sold.minor, 0) << i;
        ASSERT_GE(margin.unknown_sold.minor, 0) << i;
        if (unknown == 0) ASSERT_EQ(margin.unknown_sold.minor, 0) << i;
        if (unknown == count) ASSERT_EQ(margin.sold.minor, 0) << i;
        ASSERT_EQ(margin.percent.has_value(), cost > 0) << i;
        if (offer.discount_percent == 0.0) ASSERT_EQ(made.quote.net.minor, sold) << i;
    }
}

TEST(TaxRatesOfAnyDay, do_not_depend_on_the_order_of_the_list) {
    std::mt19937 random(6);
    const auto below = [&](int most) { return static_cast<int>(random() % static_cast<unsigned>(most)); };
    TaxRules rules;
    rules.rates = {{"standard", "of the rules", 0.2}, {"zero", "of the rules", 0.0}};
    for (int i = 0; i < sweep::cases(500); ++i) {
        parts::PriceList list;
        std::map<std::pair<std::string, std::string>, double> all;
        for (int k = below(8); k > 0; --k) {
            const std::string tax_class = below(2) == 0 ? "standard" : "reduced";
            const std::string day = "2027-0" + std::to_string(1 + below(9)) + "-15";
            const double rate = below(30) / 100.0;
            if (!all.emplace(std::pair(tax_class, day), rate).second) continue;
            list.tax_rates.push_back({tax_class, tax_class, rate, day});
        }
        const std::string on = "2027-0" + std::to_string(1 + below(9)) + (below(2) == 0 ? "-14" : "-15");
        // The last of each class that began on the day or before, found by going through them all.
        std::map<std::string, double> expected = {{"standard", 0.2}, {"zero", 0.0}};
        for (const auto& [key, rate] : all)  // days of a class rise
            if (key.second <= on) expected[key.first] = rate;
        for (int turn = 0; turn < 3; ++turn) {
            std::map<std::string, double> found;
            for (const TaxRate& rate : tax_rules_on(rules, list, on).rates)
                ASSERT_TRUE(found.emplace(rate.tax_class, rate.rate).second) << "a class twice";
            ASSERT_EQ(found, expected) << i << ' ' << on;
            std::shuffle(list.tax_rates.begin(), list.tax_rates.end(), random);
        }
    }
}

TEST(TaxRatesOfAnyDay, reach_the_quote) {
    parts::PriceList list;
    list.tax_rates = {{"standard", "VAT 21 %", 0.21, "2027-07-01"}};
    TaxRules rules;
    rules.rates = {{"standard", "VAT 20 %", 0.2}};
    parts::Line line;
    line.item_id = line.text = "a";
    line.unit = "pc";
    line.quantity = line.to_buy = 1.0;
    line.unit_price = line.net = {10000};
    line.tax_class = "standard";
    const auto gross = [&](const char* on) {
        return price({line}, "EUR", tax_rules_on(rules, list, on), 0.0).value().gross.minor;
    };
    EXPECT_EQ(gross("2027-06-30"), 12000);
    EXPECT_EQ(gross("2027-07-01"), 12100);
}

}  // namespace
}  // namespace rates_and_margin_test
}  // namespace wg::quote
