#pragma once
// What a newer quote changes of the one that was agreed, line by line. Pure.

#include <vector>

#include "core/quote/frozen_offer.h"

namespace wg::quote {

struct ChangedLine {
    enum class Kind { added, dropped, changed };
    Kind kind = Kind::changed;
    FrozenLine before;  ///< empty when added
    FrozenLine after;   ///< empty when dropped
    Money difference;   ///< net, after less before
    friend bool operator==(const ChangedLine&, const ChangedLine&) = default;
};

/// Differences are after less before; lines, discount and tax together are exactly that of the gross.
struct ChangeOrder {
    std::string currency;
    std::vector<ChangedLine> lines;  ///< in the order of the newer quote, then those dropped
    int unchanged = 0;               ///< lines that are the same in both
    Money discount;
    Money net;
    Money tax;
    Money gross;
    Money agreed_gross;  ///< of the quote that was agreed
    Money new_gross;
    Money to_bring;  ///< by the client
    [[nodiscard]] bool nothing() const noexcept { return lines.empty() && gross.minor == 0 && to_bring.minor == 0; }
};

/// Lines are the same one when their key is; several of one key in their order. Refused: two currencies, or a quote
/// whose lines were not kept.
[[nodiscard]] Result<ChangeOrder> change_order(const FrozenOffer& agreed, const FrozenOffer& newer);

}  // namespace wg::quote
