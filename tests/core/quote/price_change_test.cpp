// Why a job costs something else today than what was agreed.
#include "core/quote/price_change.h"

#include <gtest/gtest.h>

#include <random>

namespace wg::quote {
namespace price_change_test {
namespace {

const std::string own = "00000000-0000-4000-8000-0000000000a1";

FrozenLine line(const std::string& key, double quantity, std::int64_t price) {
    return {key, "Line " + key, "pc", quantity, {price}, line_net({price}, quantity), false};
}

FrozenOffer offer(std::vector<FrozenLine> lines, std::int64_t discount = 0, double rate = 0.2) {
    FrozenOffer out;
    out.currency = "EUR";
    out.lines = std::move(lines);
    for (const FrozenLine& each : out.lines)
        out.net += each.net;
    out.discount = {discount};
    out.net -= out.discount;
    out.taxes = {{"Tax", rate, out.net, scaled(out.net, rate)}};
    out.gross = out.net + out.taxes[0].tax;
    out.to_bring = out.gross;
    return out;
}

Money sum_of(const PriceChange& change) {
    return change.unit_prices.net + change.amounts.net + change.office.net + change.words.net + change.discount +
           change.tax;
}

TEST(PriceChange, tells_dearer_lines_from_more_of_them_and_from_the_offices_own) {
    const FrozenOffer agreed =
        offer({line("a", 4, 100), line("b", 2, 250), line("c", 1, 900), line(own, 1, 70), line("e", 1, 30)});
    const FrozenOffer today = offer({line("a", 4, 110), line("b", 3, 250), line("d", 1, 55), line("e", 1, 45)}, 10);
    const auto made = price_change(agreed, today, {"e"});
    ASSERT_TRUE(made.ok());
    const PriceChange& change = made.value();
    EXPECT_EQ(change.unit_prices, (CauseSum{1, {40}})) << "a";
    EXPECT_EQ(change.amounts, (CauseSum{3, {250 + 55 - 900}})) << "b more, d new, c gone";
    EXPECT_EQ(change.office, (CauseSum{2, {15 - 70}})) << "e changed by hand, one of its own taken out";
    EXPECT_EQ(change.discount.minor, -10);
    EXPECT_EQ(change.gross, today.gross - agreed.gross);
    EXPECT_EQ(sum_of(change), change.gross);
    EXPECT_FALSE(change.tax_rates);
    EXPECT_FALSE(change.nothing());
    EXPECT_TRUE(price_change(agreed, agreed, {}).value().nothing());
}

TEST(PriceChange, a_line_that_is_dearer_and_more_is_told_as_both) {
    const PriceChange change = price_change(offer({line("a", 2, 100)}), offer({line("a", 5, 130)}), {}).value();
    EXPECT_EQ(change.unit_prices, (CauseSum{1, {60}})) << "30 more for each of the 2 agreed";
    EXPECT_EQ(change.amounts, (CauseSum{1, {390}})) << "3 more at today's 130";
}

TEST(PriceChange, other_words_and_another_rate_of_tax_are_told) {
    const FrozenOffer agreed = offer({line("a", 2, 100)});
    FrozenOffer today = offer({line("a", 2, 100)}, 0, 0.19);
    today.lines[0].text = "Another name";
    const PriceChange change = price_change(agreed, today, {}).value();
    EXPECT_EQ(change.words, (CauseSum{1, {0}}));
    EXPECT_TRUE(change.tax_rates);
    EXPECT_EQ(change.gross.minor, -2);
    EXPECT_EQ(change.tax.minor, -2);
    // A class more at the same rate is no other rate.
    FrozenOffer split = agreed;
    split.taxes = {{"Full", 0.2, {100}, {20}}, {"Standard", 0.2, {100}, {20}}};
    EXPECT_FALSE(price_change(agreed, split, {}).value().tax_rates);
}

TEST(PriceChange, causes_add_up_to_the_difference_whatever_the_lines) {
    std::mt19937 random(11);
    const auto some = [&] {
        std::vector<FrozenLine> lines;
        for (int i = 0; i < 12; ++i)
            lines.push_back(line(std::string(1, static_cast<char>('a' + random() % 6)),
                                 static_cast<double>(random() % 5), static_cast<std::int64_t>(random() % 2000) - 300));
        return offer(lines, static_cast<std::int64_t>(random() % 100));
    };
    for (int i = 0; i < 500; ++i) {
        const PriceChange change = price_change(some(), some(), {"b"}).value();
        EXPECT_EQ(sum_of(change), change.gross);
        EXPECT_EQ(change.gross, change.today_gross - change.agreed_gross);
    }
}

TEST(PriceChange, figures_beyond_all_sums_are_no_overflow) {
    FrozenOffer agreed = offer({line("a", 1, 100)});
    FrozenOffer today = agreed;
    agreed.lines[0].quantity = 1e12;
    agreed.lines[0].unit_price = {100'000'000'000'000};
    today.lines[0].quantity = 2.0;
    EXPECT_EQ(sum_of(price_change(agreed, today, {}).value()), today.gross - agreed.gross);
    today.currency = "CHF";
    EXPECT_FALSE(price_change(agreed, today, {}).ok()) << "two currencies";
}

}  // namespace
}  // namespace price_change_test
}  // namespace wg::quote
