#pragma once
// The offer of an issued quote, read back from the plan that was frozen with it (docs/plan-format.md, "money").

#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/money.h"
#include "core/quantity/result.h"

namespace wg::quote {

struct FrozenLine {
    std::string key;  ///< price item, task, or id of an own line: what the same line has in another quote
    std::string text;
    std::string unit;
    double quantity = 0.0;  ///< to buy
    Money unit_price;
    Money net;
    bool labour = false;
    friend bool operator==(const FrozenLine&, const FrozenLine&) = default;
};

struct FrozenTax {
    std::string label;
    double rate = 0.0;  ///< 0..1
    Money net;
    Money tax;
    friend bool operator==(const FrozenTax&, const FrozenTax&) = default;
};

struct FrozenInstalment {
    std::string text;
    double percent = 0.0;
    Money sum;
    friend bool operator==(const FrozenInstalment&, const FrozenInstalment&) = default;
};

struct FrozenOffer {
    std::string currency;
    std::string choice_id;  ///< empty: an older program did not keep it
    std::string choice_label;
    std::vector<FrozenLine> lines;  ///< those that count: left out ones and options that were not ticked are not here
    Money discount;
    Money net;
    std::vector<FrozenTax> taxes;
    Money gross;
    Money granted;
    Money to_bring;
    std::vector<FrozenInstalment> instalments;
    /// False: an older program froze the parts list alone, and its lines are not the sum.
    bool lines_are_the_sum = true;
};

/// `where` names the quote in problems. Refused: text that is no plan, one without a price, sums that are no numbers.
[[nodiscard]] Result<FrozenOffer> frozen_offer(std::string_view plan_json, const std::string& where);

}  // namespace wg::quote
