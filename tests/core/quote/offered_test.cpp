// What is offered: changes, own lines, options, subsidies, instalments; totals against a published example.
#include "core/quote/offered.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

namespace wg::quote {
namespace offered_test {

parts::Line planned(const std::string& item, double to_buy, std::int64_t price_minor,
                    const std::string& tax_class = "standard") {
    parts::Line out;
    out.item_id = item;
    out.text = "Planned " + item;
    out.unit = "m";
    out.quantity = out.to_buy = to_buy;
    out.unit_price = {price_minor};
    out.net = line_net(out.unit_price, to_buy);
    out.tax_class = tax_class;
    return out;
}

OfferLine own(const std::string& text, double quantity, std::int64_t price_minor,
              const std::string& tax_class = "standard") {
    OfferLine out;
    out.id = "own-" + text;
    out.text = text;
    out.quantity = quantity;
    out.unit_price_minor = price_minor;
    out.tax_class = tax_class;
    return out;
}

TaxRules rules(bool by_total = true, Rounding rounding = Rounding::half_up) {
    TaxRules out;
    out.rates = {{"standard", "Standard", 0.21}, {"reduced", "Reduced", 0.06}, {"none", "Exempt", 0.0}};
    out.tax_by_total = by_total;
    out.rounding = rounding;
    return out;
}

Offered of(const std::vector<parts::Line>& lines, const Offer& offer, const TaxRules& with = rules()) {
    const auto result = offered(lines, offer, "choice", "EUR", with);
    EXPECT_TRUE(result.ok());
    return result ? result.value() : Offered{};
}

bool finds(const Offered& offered, const std::string& code) {
    return std::any_of(offered.findings.begin(), offered.findings.end(),
                       [&](const Finding& f) { return f.code == code; });
}

// CEN/TC 434, example 1 of EN 16931 as published with the validation artefacts of the European Commission
// (ConnectingEurope/eInvoicing-EN16931, ubl/examples/ubl-tc434-example1.xml): quantities, prices and rates of all
// twenty lines, the taxable amounts, taxes and totals.
TEST(Offered, totals_of_example_1_of_en_16931) {
    struct Row {
        double quantity;
        std::int64_t price, net;
        const char* rate;
    };
    constexpr std::array<Row, 20> rows = {
        {{2, 995, 1990, "reduced"},   {1, 985, 985, "reduced"},     {1, 829, 829, "reduced"},
         {2, 723, 1446, "reduced"},   {1, 3500, 3500, "reduced"},   {1, 3500, 3500, "reduced"},
         {1, 1065, 1065, "reduced"},  {1, 155, 155, "reduced"},     {3, 479, 1437, "reduced"},
         {1, 829, 829, "reduced"},    {2, 829, 1658, "reduced"},    {1, 995, 995, "reduced"},
         {2, 165, 330, "reduced"},    {1, 1080, 1080, "standard"},  {1, 390, 390, "reduced"},
         {2, 380, 760, "standard"},   {2, 467, 934, "standard"},    {1, 1863, 1863, "standard"},
         {6, 1702, 10212, "reduced"}, {6, -1833, -10998, "reduced"}}};  // the last is taken back
    Offer offer;
    for (std::size_t i = 0; i < rows.size(); ++i)
        offer.lines.push_back(own(std::to_string(i), rows[i].quantity, rows[i].price, rows[i].rate));
    const Offered out = of({}, offer);
    for (std::size_t i = 0; i < rows.size(); ++i)
        EXPECT_EQ(out.lines[i].line.net.minor, rows[i].net) << "line " << i + 1;
    ASSERT_EQ(out.quote.taxes.size(), 2U);
    EXPECT_EQ(out.quote.taxes[1].net.minor, 18323);  // at 6 %
    EXPECT_EQ(out.quote.taxes[1].tax.minor, 1099);
    EXPECT_EQ(out.quote.taxes[0].net.minor, 4637);  // at 21 %
    EXPECT_EQ(out.quote.taxes[0].tax.minor, 974);
    EXPECT_EQ(out.quote.net.minor, 22960);
    EXPECT_EQ(out.quote.gross.minor, 25033);
}

// Worked by hand: 100.00 at 21 % and 33.33 at 6 %, 7.5 % off: 7.50 and 2.49975 -> 2.50 off; taxed 92.50 and 30.83,
// 19.425 -> 19.43 and 1.8498 -> 1.85.
TEST(Offered, a_discount_is_shared_by_tax_rate_before_tax) {
    Offer offer;
    offer.discount_percent = 7.5;
    offer.lines = {own("a", 1.0, 10000), own("b", 1.0, 3333, "reduced")};
    const Offered out = of({}, offer);
    EXPECT_EQ(out.quote.lines_net.minor, 13333);
    EXPECT_EQ(out.quote.discount.minor, 1000);
    EXPECT_EQ(out.quote.net.minor, 12333);
    EXPECT_EQ(out.quote.taxes[0].tax.minor, 1943);
    EXPECT_EQ(out.quote.taxes[1].tax.minor, 185);
    EXPECT_EQ(out.quote.gross.minor, 12333 + 1943 + 185);
}

TEST(Offered, a_change_stays_and_tells_when_the_plan_has_overtaken_it) {
    Offer offer;
    LineChange change;
    change.id = "change";
    change.item = "tube";
    change.quantity = 12.0;
    change.unit_price_minor = 650;
    change.planned_quantity = 10.0;
    change.reason = "from stock";
    offer.changes = {change};
    Offered out = of({planned("tube", 10.0, 740), planned("clip", 13.0, 120)}, offer);
    EXPECT_EQ(out.lines[0].line.net.minor, 7800);
    EXPECT_EQ(out.lines[0].source, LineSource::changed);
    EXPECT_EQ(out.lines[0].planned_quantity, 10.0);
    EXPECT_EQ(out.lines[0].planned_price.minor, 740);
    EXPECT_FALSE(out.lines[0].overtaken);
    EXPECT_EQ(out.lines[1].source, LineSource::plan);
    EXPECT_TRUE(out.findings.empty());
    out = of({planned("tube", 15.0, 740), planned("clip", 19.0, 120)}, offer);
    EXPECT_EQ(out.lines[0].line.to_buy, 12.0) << "kept through planning anew";
    EXPECT_TRUE(out.lines[0].overtaken);
    ASSERT_TRUE(finds(out, "offer.change-overtaken"));
    EXPECT_NE(out.findings[0].message.find("15 m"), std::string::npos) << out.findings[0].message;
    out = of({planned("clip", 19.0, 120)}, offer);
    EXPECT_TRUE(finds(out, "offer.change-without-line"));
}

TEST(Offered, a_line_left_out_stands_in_the_list_and_in_no_sum) {
    Offer offer;
    LineChange change;
    change.id = "change";
    change.item = "tube";
    change.left_out = true;
    offer.changes = {change};
    const Offered out = of({planned("tube", 10.0, 740), planned("clip", 10.0, 100)}, offer);
    ASSERT_EQ(out.lines.size(), 2U);
    EXPECT_TRUE(out.lines[0].left_out);
    EXPECT_EQ(out.quote.lines.size(), 1U);
    EXPECT_EQ(out.quote.net.minor, 1000);
}

TEST(Offered, a_change_for_one_choice_goes_before_one_for_all_and_others_do_not_apply) {
    Offer offer;
    const auto priced = [](const char* id, const char* choice, std::int64_t minor) {
        LineChange change;
        change.id = id;
        change.choice_id = choice;
        change.item = "tube";
        change.unit_price_minor = minor;
        return change;
    };
    offer.changes = {priced("mine", "choice", 2), priced("all", "", 1), priced("other", "other", 3)};
    offer.lines = {own("here", 1.0, 100)};
    offer.lines.push_back(own("elsewhere", 1.0, 100));
    offer.lines.back().choice_id = "other";
    const Offered out = of({planned("tube", 1.0, 740)}, offer);
    EXPECT_EQ(out.lines[0].line.unit_price.minor, 2);
    ASSERT_EQ(out.lines.size(), 2U);
    EXPECT_FALSE(finds(out, "offer.change-without-line")) << "the other choice may have its line";
}

TEST(Offered, options_count_when_ticked_and_tell_their_own_price) {
    Offer offer;
    offer.lines = {own("fixed", 1.0, 10000), own("option", 2.0, 5000)};
    offer.lines[1].to_tick = true;
    Offered out = of({}, offer);
    EXPECT_EQ(out.quote.gross.minor, 12100);
    ASSERT_EQ(out.options.size(), 1U);
    EXPECT_EQ(out.options[0].gross.minor, 12100);
    offer.lines[1].ticked = true;
    out = of({}, offer);
    EXPECT_EQ(out.quote.gross.minor, 24200);
}

TEST(Offered, subsidies_are_taken_off_after_tax_and_never_below_nothing) {
    Offer offer;
    offer.lines = {own("system", 1.0, 100000), own("grant", 1.0, 30000)};
    offer.lines[1].kind = OfferLineKind::subsidy;
    Offered out = of({}, offer);
    EXPECT_EQ(out.quote.gross.minor, 121000);
    EXPECT_EQ(out.granted.minor, 30000);
    EXPECT_EQ(out.to_bring.minor, 91000);
    offer.lines[1].unit_price_minor = 130000;
    out = of({}, offer);
    EXPECT_EQ(out.to_bring.minor, 0);
    EXPECT_TRUE(finds(out, "offer.subsidies"));
}

TEST(Offered, instalments_add_up_to_the_cent_or_say_that_they_are_not_a_hundred) {
    Offer offer;
    offer.lines = {own("system", 1.0, 99999)};  // 1209.99 with tax
    offer.instalments = {{"1", "on order", 33.33, {}}, {"2", "on delivery", 33.33, {}}, {"3", "at the end", 33.34, {}}};
    Offered out = of({}, offer);
    std::int64_t sum = 0;
    for (const InstalmentSum& part : out.instalments)
        sum += part.sum.minor;
    EXPECT_EQ(sum, 120999);
    EXPECT_FALSE(finds(out, "offer.instalments"));
    offer.instalments[2].percent = 30.0;
    out = of({}, offer);
    EXPECT_TRUE(finds(out, "offer.instalments"));
}

TEST(Offered, a_tax_class_that_is_not_known_is_a_problem) {
    Offer offer;
    offer.lines = {own("x", 1.0, 100, "luxury")};
    EXPECT_FALSE(offered({}, offer, "choice", "EUR", rules()).ok());
    offer.lines[0].to_tick = true;
    EXPECT_FALSE(offered({}, offer, "choice", "EUR", rules()).ok()) << "an option's too";
}

// Random offers: sums by a second way, in whole cents throughout.
TEST(Offered, sums_hold_for_any_offer) {
    constexpr unsigned seed = 90211;
    std::mt19937 random(seed);
    const auto below = [&random](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    const char* classes[] = {"standard", "reduced", "none"};
    for (int round = 0; round < 500; ++round) {
        Offer offer;
        std::vector<parts::Line> lines;
        for (int i = below(12); i > 0; --i)
            lines.push_back(planned("p" + std::to_string(i), below(20000) / 1000.0, below(90000), classes[below(3)]));
        for (int i = below(8); i > 0; --i) {
            offer.lines.push_back(
                own("o" + std::to_string(i), below(5000) / 1000.0, below(90000) - 20000, classes[below(3)]));
            offer.lines.back().to_tick = below(3) == 0;
            offer.lines.back().ticked = below(2) == 0;
        }
        offer.discount_percent = below(2) == 0 ? 0.0 : below(10000) / 100.0;
        const int first = below(10001);
        offer.instalments = {{"1", "", first / 100.0, {}}, {"2", "", (10000 - first) / 100.0, {}}};
        for (const bool by_total : {true, false}) {
            const Offered out = of(lines, offer, rules(by_total));
            std::int64_t net = 0, tax = 0, discount = 0, parts_sum = 0;
            for (const TaxSum& t : out.quote.taxes) {
                EXPECT_EQ(t.lines.minor - t.discount.minor, t.net.minor);
                const double exact = static_cast<double>(t.net.minor) * t.rate.rate;
                const double most = by_total ? 0.5000001 : 0.5 * static_cast<double>(out.quote.lines.size() + 1);
                EXPECT_LE(std::fabs(static_cast<double>(t.tax.minor) - exact), most) << "seed " << seed << ' ' << round;
                net += t.net.minor;
                tax += t.tax.minor;
                discount += t.discount.minor;
            }
            std::int64_t in = 0;
            for (const OfferedLine& line : out.lines)
                in += line.line.net.minor;
            for (const Option& option : out.options)
                in += option.ticked ? option.line.line.net.minor : 0;
            EXPECT_EQ(out.quote.lines_net.minor, in);
            EXPECT_EQ(out.quote.net.minor, in - discount);
            EXPECT_EQ(out.quote.net.minor, net);
            EXPECT_EQ(out.quote.gross.minor, net + tax);
            for (const InstalmentSum& part : out.instalments)
                parts_sum += part.sum.minor;
            EXPECT_EQ(parts_sum, out.quote.gross.minor);
        }
    }
}

}  // namespace offered_test
}  // namespace wg::quote
