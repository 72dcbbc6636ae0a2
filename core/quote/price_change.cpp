#include "core/quote/price_change.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/uuid.h"
#include "core/quote/change_order.h"
#include "core/quote/frozen_reader.h"

namespace wg::quote {
namespace {

void add(CauseSum& cause, Money net) {
    ++cause.lines;
    cause.net += net;
}

bool same_amount(const FrozenLine& a, const FrozenLine& b) {
    return a.unit == b.unit && std::fabs(a.quantity - b.quantity) < 5e-4;  // counted in thousandths
}

/// A line of both: what another price a unit does to the amount agreed, and what is left is the other amount.
void add_changed(const ChangedLine& line, PriceChange& out) {
    const bool dearer = line.before.unit_price != line.after.unit_price;
    const bool more = !same_amount(line.before, line.after);
    if (!dearer && !more) return add(line.difference.minor == 0 ? out.words : out.unit_prices, line.difference);
    if (!more) return add(out.unit_prices, line.difference);
    if (!dearer) return add(out.amounts, line.difference);
    const auto a_unit = static_cast<double>((line.after.unit_price - line.before.unit_price).minor);
    const double sum = a_unit * line.before.quantity;
    // A text from elsewhere may hold any figures: beyond all sums nothing is told apart.
    if (std::fabs(sum) > static_cast<double>(max_frozen_minor)) return add(out.unit_prices, line.difference);
    const Money by_price{std::llround(sum)};
    add(out.unit_prices, by_price);
    add(out.amounts, line.difference - by_price);
}

/// Whatever they are called, and however many lines each has: two classes may have one rate.
bool same_rates(const FrozenOffer& a, const FrozenOffer& b) {
    const auto within = [](const FrozenOffer& of, const FrozenOffer& other) {
        return std::all_of(of.taxes.begin(), of.taxes.end(), [&other](const FrozenTax& one) {
            return std::any_of(other.taxes.begin(), other.taxes.end(),
                               [&one](const FrozenTax& two) { return std::fabs(one.rate - two.rate) < 5e-5; });
        });
    };
    return within(a, b) && within(b, a);
}

}  // namespace

Result<PriceChange> price_change(const FrozenOffer& agreed, const FrozenOffer& today,
                                 const std::set<std::string>& by_office) {
    const auto compared = change_order(agreed, today);
    if (!compared.ok()) return compared.problems();
    const ChangeOrder& change = compared.value();
    PriceChange out;
    out.agreed_gross = agreed.gross;
    out.today_gross = today.gross;
    out.gross = change.gross;
    out.to_bring = change.to_bring;
    out.discount = Money{} - change.discount;
    out.tax = change.tax;
    out.tax_rates = !same_rates(agreed, today);
    for (const ChangedLine& line : change.lines) {
        const bool dropped = line.kind == ChangedLine::Kind::dropped;
        const std::string& key = dropped ? line.before.key : line.after.key;
        if (dropped ? is_uuid(key) : by_office.count(key) > 0) {
            add(out.office, line.difference);
        } else if (line.kind == ChangedLine::Kind::changed) {
            add_changed(line, out);
        } else {
            add(out.amounts, line.difference);
        }
    }
    return out;
}

}  // namespace wg::quote
