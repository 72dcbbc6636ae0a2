#pragma once
// What a job costs when it is priced today beside what was agreed, and what the difference comes from. Pure.

#include <set>
#include <string>

#include "core/quote/frozen_offer.h"

namespace wg::quote {

/// One cause: how many lines have it, and what they come to without tax, today less agreed.
struct CauseSum {
    int lines = 0;
    Money net;
    friend bool operator==(const CauseSum&, const CauseSum&) = default;
};

/// All sums are today less agreed; causes, discount and tax together are exactly the gross.
struct PriceChange {
    Money agreed_gross;
    Money today_gross;
    Money gross;
    Money to_bring;
    CauseSum unit_prices;  ///< the same line at another price a unit, for the amount agreed
    CauseSum amounts;      ///< the plan asks for another amount, for a line more or for a line less
    CauseSum office;       ///< lines that the office entered or changed by hand
    CauseSum words;        ///< other words or another unit at the same sum
    Money discount;        ///< on net: more of it is below zero
    Money tax;
    bool tax_rates = false;  ///< a rate of tax that the other has not
    [[nodiscard]] bool nothing() const noexcept {
        return gross.minor == 0 && to_bring.minor == 0 && unit_prices == CauseSum{} && amounts == CauseSum{} &&
               office == CauseSum{} && words == CauseSum{} && discount.minor == 0 && !tax_rates;
    }
};

/// `by_office`: keys of today's lines that the office entered or changed. A line dropped since counts as the office's
/// when it was one of its own. Refused: what `change_order` refuses.
[[nodiscard]] Result<PriceChange> price_change(const FrozenOffer& agreed, const FrozenOffer& today,
                                               const std::set<std::string>& by_office);

}  // namespace wg::quote
