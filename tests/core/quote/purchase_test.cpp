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
