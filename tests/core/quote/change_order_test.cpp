// The difference of two quotes, and what is read back of a frozen one.
#include "core/quote/change_order.h"

#include <gtest/gtest.h>

#include <random>

namespace wg::quote {
namespace change_order_test {

FrozenLine line(const std::string& key, double quantity, std::int64_t price) {
    return {key, "Line " + key, "pc", quantity, {price}, line_net({price}, quantity), false};
}

FrozenOffer offer(std::vector<FrozenLine> lines, std::int64_t discount = 0) {
    FrozenOffer out;
    out.currency = "EUR";
    out.lines = std::move(lines);
    for (const FrozenLine& each : out.lines)
        out.net += each.net;
    out.discount = {discount};
    out.net -= out.discount;
    out.gross = out.net + scaled(out.net, 0.2);
    out.to_bring = out.gross;
    return out;
}

TEST(ChangeOrder, tells_added_dropped_and_changed_lines_and_counts_the_same) {
    const FrozenOffer agreed = offer({line("a", 1, 100), line("b", 2, 250), line("c", 1, 900)});
    const FrozenOffer newer = offer({line("a", 1, 100), line("d", 3, 40), line("b", 3, 250)}, 50);
    const auto made = change_order(agreed, newer);
    ASSERT_TRUE(made.ok());
    const ChangeOrder& change = made.value();
    EXPECT_EQ(change.unchanged, 1);
    ASSERT_EQ(change.lines.size(), 3U);
    EXPECT_EQ(change.lines[0].kind, ChangedLine::Kind::added);
    EXPECT_EQ(change.lines[0].difference.minor, 120);
    EXPECT_EQ(change.lines[1].kind, ChangedLine::Kind::changed);
    EXPECT_EQ(change.lines[1].difference.minor, 250);
    EXPECT_EQ(change.lines[2].kind, ChangedLine::Kind::dropped);
    EXPECT_EQ(change.lines[2].before.key, "c");
    EXPECT_EQ(change.lines[2].difference.minor, -900);
    EXPECT_EQ(change.gross.minor, newer.gross.minor - agreed.gross.minor);
    EXPECT_FALSE(change.nothing());
    EXPECT_TRUE(change_order(agreed, agreed).value().nothing());
}

TEST(ChangeOrder, lines_discount_and_tax_are_the_difference_of_the_prices_whatever_the_lines) {
    std::mt19937 random(7);
    const auto some = [&] {
        std::vector<FrozenLine> lines;
        for (int i = 0; i < 12; ++i) {
            // Few keys, so that several lines share one.
            lines.push_back(line(std::string(1, static_cast<char>('a' + random() % 6)),
                                 static_cast<double>(random() % 5), static_cast<std::int64_t>(random() % 2000) - 300));
        }
        return offer(lines, static_cast<std::int64_t>(random() % 100));
    };
    for (int i = 0; i < 500; ++i) {
        const FrozenOffer agreed = some();
        const FrozenOffer newer = some();
        const ChangeOrder change = change_order(agreed, newer).value();
        Money sum;
        std::size_t added = 0;
        std::size_t dropped = 0;
        for (const ChangedLine& each : change.lines) {
            sum += each.difference;
            added += each.kind == ChangedLine::Kind::added ? 1 : 0;
            dropped += each.kind == ChangedLine::Kind::dropped ? 1 : 0;
        }
        EXPECT_EQ(sum - change.discount + change.tax, change.gross);
        EXPECT_EQ(agreed.lines.size() - dropped + added, newer.lines.size());
        EXPECT_EQ(static_cast<std::size_t>(change.unchanged) + change.lines.size() - dropped, newer.lines.size());
    }
}

TEST(ChangeOrder, two_currencies_or_lines_that_were_not_kept_are_refused) {
    const FrozenOffer agreed = offer({line("a", 1, 100)});
    FrozenOffer other = agreed;
    other.currency = "GBP";
    EXPECT_FALSE(change_order(agreed, other).ok());
    other = agreed;
    other.lines_are_the_sum = false;
    EXPECT_FALSE(change_order(other, agreed).ok());
    EXPECT_FALSE(change_order(agreed, other).ok());
}

const std::string whole = R"({"choice":{"label":"A"},"money":{"currency":"EUR","parts":[],
 "offered":[{"item":"x","text":"X","to_buy":2,"unit":"pc","unit_price_minor":50,"net_minor":100,"labour":false},
 {"item":"y","text":"Y","to_buy":1,"unit":"pc","unit_price_minor":70,"net_minor":70,"labour":false,"left_out":true}],
 "instalments":[{"text":"on order","percent":100,"sum_minor":108}],
 "quote":{"net_minor":90,"discount_minor":10,"gross_minor":108,"taxes":[{"label":"VAT","rate":0.2,"net_minor":90,"tax_minor":18}]}}})";

std::string with(const std::string& from, const std::string& to) {
    std::string text = whole;
    const auto at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

TEST(FrozenOffer, is_read_back_with_the_lines_that_count) {
    const auto read = frozen_offer(whole, "quote 1");
    ASSERT_TRUE(read.ok()) << text_of(read.problems());
    EXPECT_EQ(read.value().choice_label, "A");
    ASSERT_EQ(read.value().lines.size(), 1U);
    EXPECT_EQ(read.value().lines[0].key, "x");
    EXPECT_EQ(read.value().gross.minor, 108);
    EXPECT_EQ(read.value().to_bring.minor, 108);
    ASSERT_EQ(read.value().instalments.size(), 1U);
    EXPECT_EQ(read.value().taxes[0].tax.minor, 18);
    EXPECT_TRUE(read.value().lines_are_the_sum);
}

TEST(FrozenOffer, what_is_wrong_in_it_is_told_and_an_older_one_says_that_its_lines_are_not_the_sum) {
    for (const std::string& bad :
         {std::string(), std::string("{"), std::string("[]"), std::string("{\"money\":7}"),
          with("\"net_minor\":100", "\"net_minor\":101"), with("\"to_buy\":2", "\"to_buy\":\"2\""),
          with("\"to_buy\":2", "\"to_buy\":1e300"), with("\"gross_minor\":108", "\"gross_minor\":1e30"),
          with("\"offered\":[", "\"offered\":[7,"), with("\"quote\":{", "\"quote\":null,\"q\":{")}) {
        const auto read = frozen_offer(bad, "quote 1");
        ASSERT_FALSE(read.ok()) << bad;
        EXPECT_EQ(read.problems().front().where, "quote 1");
        EXPECT_FALSE(read.problems().front().remedy.empty());
    }
    const auto older = frozen_offer(with("\"offered\"", "\"other\""), "quote 1");
    ASSERT_TRUE(older.ok());
    EXPECT_FALSE(older.value().lines_are_the_sum);
}

}  // namespace change_order_test
}  // namespace wg::quote
