// What the firm keeps, and tax rates that change on a day. Worked by hand, figures invented.
#include "core/quote/margin.h"

#include <gtest/gtest.h>

namespace wg::quote {
namespace margin_test {
namespace {

parts::Line line(const std::string& id, double to_buy, std::int64_t price_minor, std::optional<Money> cost) {
    parts::Line out;
    out.item_id = id;
    out.text = id;
    out.unit = "pc";
    out.quantity = out.to_buy = to_buy;
    out.unit_price = {price_minor};
    out.net = line_net(out.unit_price, to_buy);
    out.tax_class = "standard";
    out.unit_cost = cost;
    return out;
}

TaxRules rules() {
    TaxRules out;
    out.rates = {{"standard", "VAT 20 %", 0.2}};
    return out;
}

TEST(Margin, counts_lines_whose_cost_is_known) {
    const std::vector<parts::Line> lines = {line("a", 2.0, 10000, Money{7000}), line("b", 3.0, 1000, std::nullopt)};
    const Margin without = margin_of(offered(lines, Offer{}, "", "EUR", rules()).value());
    EXPECT_EQ(without.cost.minor, 14000);
    EXPECT_EQ(without.sold.minor, 20000);
    EXPECT_EQ(without.kept.minor, 6000);
    EXPECT_EQ(without.unknown_sold.minor, 3000);
    EXPECT_EQ(without.unknown_lines, 1);
    EXPECT_NEAR(*without.percent, 42.857142857, 1e-8);
    Offer offer;
    offer.discount_percent = 10.0;
    const Offered discounted = offered(lines, offer, "", "EUR", rules()).value();
    const Margin with = margin_of(discounted);
    EXPECT_EQ(with.sold.minor, 18000);
    EXPECT_EQ(with.unknown_sold.minor, 2700);
    EXPECT_EQ(with.kept.minor, 4000);
    EXPECT_EQ((with.sold + with.unknown_sold).minor, discounted.quote.net.minor);
}

TEST(Margin, follows_what_the_office_changed) {
    const std::vector<parts::Line> lines = {line("a", 2.0, 10000, Money{7000}), line("b", 1.0, 500, Money{400})};
    Offer offer;
    LineChange change;
    change.id = "c";
    change.item = "a";
    change.quantity = 1.0;
    change.unit_price_minor = 8000;
    LineChange out;
    out.id = "d";
    out.item = "b";
    out.left_out = true;
    offer.changes = {change, out};
    const Margin margin = margin_of(offered(lines, offer, "", "EUR", rules()).value());
    EXPECT_EQ(margin.cost.minor, 7000);
    EXPECT_EQ(margin.kept.minor, 1000);
    EXPECT_FALSE(margin_of(offered({}, Offer{}, "", "EUR", rules()).value()).percent.has_value());
}

TEST(TaxRatesByDay, the_quotes_day_decides) {
    parts::PriceList list;
    list.tax_rates = {{"standard", "VAT 21 %", 0.21, "2027-07-01"},
                      {"standard", "VAT 19 %", 0.19, "2026-01-01"},
                      {"reduced", "VAT 7 %", 0.07, "2027-07-01"}};
    const auto rate = [&](const std::string& on, const std::string& of) {
        for (const TaxRate& r : tax_rules_on(rules(), list, on).rates)
            if (r.tax_class == of) return r.rate;
        return -1.0;
    };
    EXPECT_EQ(rate("2025-12-31", "standard"), 0.2) << "the rule set's, before the list has one";
    EXPECT_EQ(rate("2026-01-01", "standard"), 0.19);
    EXPECT_EQ(rate("2027-06-30", "standard"), 0.19);
    EXPECT_EQ(rate("2027-07-01", "standard"), 0.21);
    EXPECT_EQ(rate("", "standard"), 0.21) << "no day told: the newest";
    EXPECT_EQ(rate("2027-06-30", "reduced"), -1.0);
    EXPECT_EQ(rate("2027-07-02", "reduced"), 0.07);
    EXPECT_EQ(tax_rules_on(rules(), {}, "2027-07-01").rates, rules().rates);
}

}  // namespace
}  // namespace margin_test
}  // namespace wg::quote
