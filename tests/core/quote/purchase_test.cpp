// What has to be ordered, by supplier; and the words of letters.
#include "core/quote/purchase.h"

#include <gtest/gtest.h>

#include "core/quote/letter_words.h"

namespace wg::quote {
namespace purchase_test {

OfferedLine part(const std::string& item, double needed, double to_buy) {
    OfferedLine out;
    out.line.item_id = item;
    out.line.text = "Part " + item;
    out.line.unit = "m";
    out.line.quantity = needed;
    out.line.to_buy = to_buy;
    return out;
}

TEST(PurchaseList, groups_by_supplier_with_packs_and_leaves_out_what_is_not_bought) {
    Offered offer;
    offer.lines = {part("tube", 11.4, 15.0), part("tape", 2.0, 2.0), part("hook", 6.0, 6.0),
                   part("glue", 1.0, 1.0),   part("fit", 3.0, 3.0),  part("none", 1.0, 0.0)};
    offer.lines[3].left_out = true;
    offer.lines[4].line.labour = true;
    OfferedLine own = part("", 1.0, 1.0);
    own.line.text = "Ladder rail";
    own.supplier = " aldermere METALS ";
    offer.lines.push_back(own);
    Option wanted{part("valve", 1.0, 1.0), true, {}};
    Option unwanted{part("lamp", 1.0, 1.0), false, {}};
    offer.options = {wanted, unwanted};
    const auto supply = [](const std::string& item) -> Supply {
        if (item == "tube") return {"Bracken Supply", "T-6", 5.0};
        if (item == "hook") return {"Aldermere Metals", "H 11", 0.0};
        if (item == "valve") return {"Bracken Supply", "V-1", 0.0};
        return {};
    };
    const auto groups = purchase_list(offer, supply);
    ASSERT_EQ(groups.size(), 3U);
    EXPECT_EQ(groups[0].supplier, "Aldermere Metals");
    ASSERT_EQ(groups[0].lines.size(), 2U);
    EXPECT_EQ(groups[0].lines[1].text, "Ladder rail") << "capitals and spaces make no other supplier";
    EXPECT_EQ(groups[1].supplier, "Bracken Supply");
    ASSERT_EQ(groups[1].lines.size(), 2U);
    EXPECT_EQ(groups[1].lines[0].number, "T-6");
    EXPECT_EQ(groups[1].lines[0].packs, 3.0);
    EXPECT_EQ(groups[1].lines[0].needed, 11.4);
    EXPECT_EQ(groups[1].lines[1].packs, 0.0);
    EXPECT_TRUE(groups[2].supplier.empty()) << "no supplier told";
    ASSERT_EQ(groups[2].lines.size(), 1U);
    EXPECT_EQ(groups[2].lines[0].item_id, "tape");
}

TEST(PurchaseList, a_quantity_set_by_the_office_takes_whole_packs_that_hold_it) {
    Offered offer;
    offer.lines = {part("tube", 11.4, 15.001), part("tube", 11.4, 15.0004)};
    const auto groups = purchase_list(offer, [](const std::string&) -> Supply { return {"", "", 5.0}; });
    ASSERT_EQ(groups.size(), 1U);
    EXPECT_EQ(groups[0].lines[0].packs, 4.0) << "a thousandth more is another pack";
    EXPECT_EQ(groups[0].lines[1].packs, 3.0) << "less than quantities count is none";
    EXPECT_EQ(purchase_list(offer, nullptr)[0].lines[0].packs, 0.0);
    EXPECT_TRUE(purchase_list(Offered{}, nullptr).empty());
}

TEST(PurchaseList, stock_goes_off_the_need_and_packs_are_made_of_the_rest) {
    std::optional<double> stock;
    const auto ordered = [&](const OfferedLine& line, double pack, double waste) {
        Offered offer;
        offer.lines = {line};
        return purchase_list(offer,
                             [&](const std::string&) -> Supply {
                                 return {"P", "", pack, waste, stock};
                             })
            .at(0)
            .lines.at(0);
    };
    // 11.4 m with 5 % are 11.97 m: three lengths of 5 m.
    EXPECT_EQ(ordered(part("tube", 11.4, 15.0), 5.0, 0.05).to_order, 15.0) << "no stock is kept";
    EXPECT_FALSE(ordered(part("tube", 11.4, 15.0), 5.0, 0.05).in_stock.has_value());
    stock = 2.0;
    PurchaseLine line = ordered(part("tube", 11.4, 15.0), 5.0, 0.05);
    EXPECT_EQ(line.to_order, 10.0) << "9.97 m are missing";
    EXPECT_EQ(line.packs, 2.0);
    EXPECT_EQ(line.in_stock, 2.0);
    EXPECT_EQ(line.needed, 11.4);
    stock = 1.96;
    EXPECT_EQ(ordered(part("tube", 11.4, 15.0), 5.0, 0.05).to_order, 15.0) << "10.01 m are missing";
    stock = 12.0;
    line = ordered(part("tube", 11.4, 15.0), 5.0, 0.05);
    EXPECT_EQ(line.to_order, 0.0);
    EXPECT_EQ(line.packs, 0.0);
    stock = 0.4;
    EXPECT_EQ(ordered(part("tube", 11.4, 11.97), 0.0, 0.05).to_order, 11.57) << "not sold in packs";
    for (const double nothing : {0.0, -2.0}) {
        stock = nothing;
        line = ordered(part("tube", 11.4, 15.0), 5.0, 0.05);
        EXPECT_EQ(line.to_order, 15.0);
        EXPECT_EQ(line.in_stock, nothing) << "told as it is";
    }
    // What the office set is what is wanted, whatever the plan came to.
    OfferedLine set = part("tube", 11.4, 20.0);
    set.source = LineSource::changed;
    stock = 2.0;
    EXPECT_EQ(ordered(set, 5.0, 0.05).to_order, 20.0);
    stock = 5.0;
    EXPECT_EQ(ordered(set, 5.0, 0.05).to_order, 15.0);
}

TEST(PurchaseList, lines_of_one_item_take_from_stock_one_after_the_other) {
    Offered offer;
    offer.lines = {part("hook", 6.0, 6.0), part("hook", 6.0, 6.0), part("hook", 6.0, 6.0)};
    const auto lines = purchase_list(offer,
                                     [](const std::string&) -> Supply {
                                         return {"P", "", 0.0, 0.0, 8.0};
                                     })
                           .at(0)
                           .lines;
    EXPECT_EQ(lines[0].to_order, 0.0);
    EXPECT_EQ(lines[1].in_stock, 2.0);
    EXPECT_EQ(lines[1].to_order, 4.0);
    EXPECT_EQ(lines[2].to_order, 6.0);
}

PurchaseLine bought(const OfferedLine& line, const Supply& supply) {
    Offered offer;
    offer.lines = {line};
    return purchase_list(offer, [&](const std::string&) { return supply; }).at(0).lines.at(0);
}

TEST(PurchaseList, what_is_on_order_goes_off_and_what_others_reserved_does_not) {
    Supply supply;
    supply.on_order = 10.0;
    PurchaseLine line = bought(part("tube", 12.0, 12.0), supply);
    EXPECT_EQ(line.to_order, 2.0);
    EXPECT_EQ(line.on_order, 10.0);
    EXPECT_FALSE(line.in_stock.has_value());
    supply.reserved = 10.0;
    EXPECT_EQ(bought(part("tube", 12.0, 12.0), supply).to_order, 12.0) << "it was ordered for another job";
    supply.in_stock = 3.0;
    line = bought(part("tube", 12.0, 12.0), supply);
    EXPECT_EQ(line.to_order, 9.0);
    EXPECT_EQ(line.reserved, 10.0);
    supply.in_stock = -4.0;
    supply.reserved = 0.0;
    EXPECT_EQ(bought(part("tube", 12.0, 12.0), supply).to_order, 2.0) << "a stock below nothing counts as none";
    supply.reserved = 99.0;
    EXPECT_EQ(bought(part("tube", 12.0, 12.0), supply).to_order, 12.0) << "never more than is wanted";
}

TEST(PurchaseList, lines_of_one_item_take_from_stock_and_then_from_orders) {
    Offered offer;
    offer.lines = {part("tube", 4.0, 4.0), part("tube", 4.0, 4.0), part("tube", 4.0, 4.0)};
    Supply supply;
    supply.in_stock = 3.0;
    supply.on_order = 6.0;
    supply.reserved = 1.0;
    const auto lines = purchase_list(offer, [&](const std::string&) { return supply; }).at(0).lines;
    EXPECT_EQ(lines[0].to_order + lines[1].to_order + lines[2].to_order, 4.0) << "12 wanted, 8 free";
    EXPECT_EQ(lines[0].to_order, 0.0);
    EXPECT_EQ(lines[1].in_stock, 0.0);
    EXPECT_EQ(lines[1].on_order, 5.0);
    EXPECT_EQ(lines[2].to_order, 4.0);
}

TEST(PurchaseList, pieces_are_bought_whole) {
    OfferedLine line = part("valve", 1.5, 1.5);
    line.line.unit = "pc";
    EXPECT_EQ(bought(line, {}).to_order, 2.0);
    EXPECT_EQ(bought(line, {}).wanted, 2.0);
    Supply supply;
    supply.in_stock = 0.5;  // of an older book
    EXPECT_EQ(bought(line, supply).to_order, 2.0);
}

TEST(PurchaseList, a_service_is_ordered_and_no_stock_is_looked_for) {
    Supply supply;
    supply.service = true;
    supply.in_stock = 9.0;
    const PurchaseLine line = bought(part("hire", 1.0, 1.0), supply);
    EXPECT_EQ(line.to_order, 1.0);
    EXPECT_TRUE(line.service);
    EXPECT_FALSE(line.in_stock.has_value());
}

TEST(PurchaseList, prices_are_the_suppliers_less_the_discount_by_what_is_ordered) {
    parts::PriceList list;
    list.discount_groups = {{"a", "tube", 35.0}};
    parts::PriceItem item;
    item.id = "tube";
    item.supplier = "Pellow";
    item.supplier_price = Money{777};
    item.cost = Money{505};
    item.discount_group = "a";
    item.pack = 5.0;
    list.items = {item};
    const Supply supply = supply_in(list, "tube");
    EXPECT_EQ(supply.list_price, Money{777});
    EXPECT_EQ(supply.discount_percent, 35.0);
    EXPECT_EQ(supply.cost, Money{505});
    EXPECT_TRUE(supply_in(list, "other").supplier.empty());
    Offered offer;
    offer.lines = {part("tube", 11.4, 15.0), part("tape", 2.0, 2.0)};
    offer.lines[1].supplier = "Pellow";
    const auto groups = purchase_list(offer, [&](const std::string& id) { return supply_in(list, id); });
    ASSERT_EQ(groups.size(), 1U);
    EXPECT_EQ(groups[0].lines[0].net, Money{7576}) << "75.7575, rounded once";
    EXPECT_EQ(groups[0].net, Money{7576});
    EXPECT_EQ(groups[0].without_price, 1);
}

TEST(PurchaseList, the_net_of_a_line_is_rounded_once) {
    const auto net = [](double quantity, std::int64_t list_minor, double discount) {
        Supply supply;
        supply.list_price = Money{list_minor};
        supply.discount_percent = discount;
        supply.cost = Money{1};  // the list price says it
        return bought(part("x", quantity, quantity), supply).net;
    };
    EXPECT_EQ(net(500.0, 15, 33.0), Money{5025});
    EXPECT_EQ(net(24.0, 441, 35.0), Money{6880});
    EXPECT_EQ(net(3.0, 1000, 0.0), Money{3000});
    EXPECT_EQ(net(1.0, 100, 12.5), Money{88}) << "half up";
    Supply cost_alone;
    cost_alone.cost = Money{505};
    EXPECT_EQ(bought(part("x", 15.0, 15.0), cost_alone).net, Money{7575});
}

TEST(PurchaseList, what_was_taken_for_the_job_is_not_ordered_again) {
    Supply supply;
    supply.in_stock = 0.0;
    supply.taken = 10.0;
    PurchaseLine line = bought(part("clip", 11.0, 11.0), supply);
    EXPECT_EQ(line.to_order, 1.0) << "ten are at the job, one more is planned";
    EXPECT_EQ(line.wanted, 11.0) << "the need stays whole: what reserves takes off itself what was taken";
    EXPECT_EQ(line.taken, 10.0);
    EXPECT_EQ(bought(part("clip", 10.0, 10.0), supply).to_order, 0.0);
    supply.in_stock = 3.0;
    supply.reserved = 3.0;
    EXPECT_EQ(bought(part("clip", 11.0, 11.0), supply).to_order, 1.0) << "what is there is another job's";
    supply.reserved = 0.0;
    EXPECT_EQ(bought(part("clip", 14.0, 14.0), supply).to_order, 1.0);
    supply.pack = 5.0;
    EXPECT_EQ(bought(part("clip", 14.0, 15.0), supply).to_order, 5.0);
    supply.taken = -2.0;
    EXPECT_EQ(bought(part("clip", 3.0, 3.0), supply).to_order, 0.0) << "more came back than was taken: of stock";
    Offered offer;
    offer.lines = {part("clip", 6.0, 6.0), part("clip", 6.0, 6.0)};
    supply = {};
    supply.taken = 10.0;
    const auto lines = purchase_list(offer, [&](const std::string&) { return supply; }).at(0).lines;
    EXPECT_EQ(lines[0].to_order, 0.0);
    EXPECT_EQ(lines[1].taken, 4.0);
    EXPECT_EQ(lines[1].to_order, 2.0);
}

TEST(PurchaseList, work_hire_and_own_lines_are_not_ordered_again) {
    Offered offer;
    offer.lines = {part("hire", 3.0, 3.0), part("", 2.0, 2.0), part("tube", 4.0, 4.0)};
    offer.lines[1].line.text = "Ladder rail";
    const auto supply = [](const std::string& id) {
        Supply out;
        out.service = id == "hire";
        return out;
    };
    const auto lines = [&](const OrderedBefore& before) { return purchase_list(offer, supply, before).at(0).lines; };
    auto now = lines({{{"hire", "m"}, 2.0}, {{"Ladder rail", "m"}, 2.0}, {{"tube", "m"}, 4.0}});
    EXPECT_EQ(now[0].to_order, 1.0);
    EXPECT_EQ(now[0].ordered_before, 2.0);
    EXPECT_EQ(now[1].to_order, 0.0);
    EXPECT_EQ(now[2].to_order, 4.0) << "of what stock is kept, stock and orders tell";
    now = lines({{{"hire", "pc"}, 9.0}, {{"Ladder", "m"}, 9.0}});
    EXPECT_EQ(now[0].to_order, 3.0) << "in another unit";
    EXPECT_EQ(now[1].to_order, 2.0);
}

TEST(StockNeeds, are_what_the_job_takes_without_packs_services_work_and_own_lines) {
    Offered offer;
    offer.lines = {part("tube", 10.0, 15.0), part("tube", 2.0, 5.0), part("hire", 1.0, 1.0),
                   part("", 1.0, 1.0),       part("fit", 3.0, 3.0),  part("gone", 1.0, 1.0)};
    offer.lines[4].line.labour = true;
    offer.lines[5].left_out = true;
    offer.options = {Option{part("valve", 1.0, 1.0), true, {}}, Option{part("lamp", 1.0, 1.0), false, {}}};
    const auto needs = stock_needs(offer, [](const std::string& id) {
        Supply supply;
        supply.service = id == "hire";
        supply.waste_share = id == "tube" ? 0.1 : 0.0;
        supply.pack = 5.0;
        return supply;
    });
    ASSERT_EQ(needs.size(), 2U);
    EXPECT_EQ(needs[0].item_id, "tube");
    EXPECT_NEAR(needs[0].quantity, 13.2, 1e-9);
    EXPECT_EQ(needs[1].item_id, "valve");
}

TEST(LetterWords, fields_are_filled_once_and_what_is_none_stays_and_is_told) {
    const std::map<std::string, std::string> fields = {{"client", "M. {number} Lind"}, {"number", "Q-1"}};
    const FilledWords filled = filled_words("Dear {client}, {number}: {x} {Number} {} { {number", fields);
    EXPECT_EQ(filled.text, "Dear M. {number} Lind, Q-1: {x} {Number} {} { {number");
    EXPECT_EQ(filled.unknown, std::vector<std::string>{"x"});
    EXPECT_EQ(filled_words("", fields).text, "");
    EXPECT_EQ(filled_words("{{number}}", fields).text, "{Q-1}");
}

}  // namespace purchase_test
}  // namespace wg::quote
