#include "core/quote/quote.h"

#include <gtest/gtest.h>

#include <random>

namespace wg::quote {
namespace {

parts::Line line(const std::string& text, std::int64_t net_minor, const std::string& tax_class, bool labour = false) {
    parts::Line out;
    out.item_id = text;
    out.text = text;
    out.unit = "pc";
    out.quantity = 1.0;
    out.to_buy = 1.0;
    out.unit_price = {net_minor};
    out.net = {net_minor};
    out.tax_class = tax_class;
    out.labour = labour;
    return out;
}

TaxRules rules(bool by_total, Rounding rounding = Rounding::half_up) {
    TaxRules out;
    out.rates = {{"standard", "Standard 25 %", 0.25}, {"reduced", "Reduced 12 %", 0.12}, {"none", "Exempt", 0.0}};
    out.tax_by_total = by_total;
    out.rounding = rounding;
    return out;
}

// EN 16931-1, BR-CO-17: tax of a rate = taxable amount of that rate x rate, rounded to two decimals; BR-CO-13 to 15 add
// up. Amounts invented, worked by hand: 1273 + 1000 at 25 % = 568.25; 450 at 12 % = 54; 120.10 exempt.
TEST(Price, sums_follow_en_16931_by_total) {
    const auto result = price({line("a", 127300, "standard"), line("b", 100000, "standard"),
                               line("c", 45000, "reduced"), line("d", 12010, "none")},
                              "EUR", rules(true));
    ASSERT_TRUE(result.ok());
    const Quote& q = result.value();
    ASSERT_EQ(q.taxes.size(), 3U);
    EXPECT_EQ(q.taxes[0].net.minor, 227300);
    EXPECT_EQ(q.taxes[0].tax.minor, 56825);
    EXPECT_EQ(q.taxes[1].tax.minor, 5400);
    EXPECT_EQ(q.taxes[2].tax.minor, 0);
    EXPECT_EQ(q.net.minor, 284310);
    EXPECT_EQ(q.gross.minor, 284310 + 56825 + 5400);
    EXPECT_EQ(q.currency, "EUR");
}

// Three lines of 0.10 at 25 %: by line 0.025 -> 0.03 each, 0.09; by total 0.30 x 25 % = 0.075 -> 0.08.
TEST(Price, tax_by_line_and_by_total_differ_by_rounding) {
    const std::vector<parts::Line> lines = {line("a", 10, "standard"), line("b", 10, "standard"),
                                            line("c", 10, "standard")};
    EXPECT_EQ(price(lines, "EUR", rules(true)).value().taxes[0].tax.minor, 8);
    EXPECT_EQ(price(lines, "EUR", rules(false)).value().taxes[0].tax.minor, 9);
}

TEST(Price, half_even_rounds_the_tie_to_the_even_cent) {
    const std::vector<parts::Line> lines = {line("a", 10, "standard")};  // 2.5 cents
    EXPECT_EQ(price(lines, "EUR", rules(true, Rounding::half_up)).value().taxes[0].tax.minor, 3);
    EXPECT_EQ(price(lines, "EUR", rules(true, Rounding::half_even)).value().taxes[0].tax.minor, 2);
}

TEST(Price, credit_lines_round_away_from_zero_like_charges) {
    EXPECT_EQ(price({line("credit", -10, "standard")}, "EUR", rules(true)).value().taxes[0].tax.minor, -3);
}

TEST(Price, unknown_tax_class_is_a_problem_that_names_the_line) {
    const auto result =
        price({line("plate", 100, "standard"), line("odd", 100, "luxury"), line("bare", 100, "")}, "EUR", rules(true));
    ASSERT_FALSE(result.ok());
    ASSERT_EQ(result.problems().size(), 2U);
    EXPECT_NE(result.problems()[0].where.find("odd"), std::string::npos);
    EXPECT_NE(result.problems()[0].what.find("luxury"), std::string::npos);
    EXPECT_NE(result.problems()[1].what.find("no tax class"), std::string::npos);
}

TEST(Price, labour_comes_last_and_the_rest_keeps_its_order) {
    const auto q = price({line("hours", 1, "standard", true), line("first", 2, "standard"),
                          line("more hours", 3, "standard", true), line("second", 4, "reduced")},
                         "EUR", rules(true))
                       .value();
    ASSERT_EQ(q.lines.size(), 4U);
    EXPECT_EQ(q.lines[0].text, "first");
    EXPECT_EQ(q.lines[1].text, "second");
    EXPECT_EQ(q.lines[2].text, "hours");
    EXPECT_EQ(q.lines[3].text, "more hours");
}

TEST(Price, unused_rates_are_not_shown) {
    EXPECT_EQ(price({line("a", 100, "reduced")}, "EUR", rules(true)).value().taxes.size(), 1U);
}

TEST(Price, nothing_costs_nothing) {
    const auto q = price({}, "EUR", rules(true)).value();
    EXPECT_EQ(q.net.minor, 0);
    EXPECT_EQ(q.gross.minor, 0);
    EXPECT_TRUE(q.taxes.empty());
}

TEST(Price, totals_always_add_up) {
    constexpr unsigned seed = 4217;
    std::mt19937 random(seed);
    const char* classes[] = {"standard", "reduced", "none"};
    for (int round = 0; round < 200; ++round) {
        std::vector<parts::Line> lines;
        std::int64_t sum = 0;
        for (unsigned i = 0; i < 1U + random() % 30U; ++i) {
            lines.push_back(line("x", static_cast<std::int64_t>(random() % 500000U) - 1000, classes[random() % 3U],
                                 random() % 4U == 0U));
            sum += lines.back().net.minor;
        }
        for (const bool by_total : {true, false}) {
            const auto q = price(lines, "EUR", rules(by_total)).value();
            EXPECT_EQ(q.net.minor, sum) << "seed " << seed << " round " << round;
            Money net;
            Money tax;
            for (const TaxSum& s : q.taxes) {
                net += s.net;
                tax += s.tax;
            }
            EXPECT_EQ(net, q.net);
            EXPECT_EQ(net + tax, q.gross);
        }
    }
}

}  // namespace
}  // namespace wg::quote
