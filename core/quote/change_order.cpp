#include "core/quote/change_order.h"

#include <cmath>
#include <deque>
#include <map>

namespace wg::quote {
namespace {

bool same_line(const FrozenLine& a, const FrozenLine& b) {
    // Quantities count in thousandths.
    return a.text == b.text && a.unit == b.unit && a.unit_price == b.unit_price && a.net == b.net &&
           std::fabs(a.quantity - b.quantity) < 5e-4;
}

Money tax_of(const FrozenOffer& offer) {
    return offer.gross - offer.net;
}

}  // namespace

Result<ChangeOrder> change_order(const FrozenOffer& agreed, const FrozenOffer& newer) {
    if (agreed.currency != newer.currency) {
        return Problem{"change order", "one quote is in " + agreed.currency + ", the other in " + newer.currency,
                       "Issue the newer quote with a price list in " + agreed.currency};
    }
    if (!agreed.lines_are_the_sum || !newer.lines_are_the_sum) {
        return Problem{"change order", "an older program kept one of the quotes without its own lines",
                       "Compare the two papers by hand, or issue the quote again"};
    }
    std::map<std::string, std::deque<const FrozenLine*>> before;
    for (const FrozenLine& line : agreed.lines)
        before[line.key].push_back(&line);
    ChangeOrder out;
    out.currency = agreed.currency;
    for (const FrozenLine& line : newer.lines) {
        std::deque<const FrozenLine*>& known = before[line.key];
        if (known.empty()) {
            out.lines.push_back({ChangedLine::Kind::added, {}, line, line.net});
            continue;
        }
        const FrozenLine& was = *known.front();
        known.pop_front();
        if (same_line(was, line)) {
            ++out.unchanged;
        } else {
            out.lines.push_back({ChangedLine::Kind::changed, was, line, line.net - was.net});
        }
    }
    for (const FrozenLine& line : agreed.lines) {
        std::deque<const FrozenLine*>& left = before[line.key];
        if (left.empty() || left.front() != &line) continue;
        left.pop_front();
        out.lines.push_back({ChangedLine::Kind::dropped, line, {}, Money{} - line.net});
    }
    out.discount = newer.discount - agreed.discount;
    out.net = newer.net - agreed.net;
    out.tax = tax_of(newer) - tax_of(agreed);
    out.gross = newer.gross - agreed.gross;
    out.agreed_gross = agreed.gross;
    out.new_gross = newer.gross;
    out.to_bring = newer.to_bring - agreed.to_bring;
    return out;
}

}  // namespace wg::quote
