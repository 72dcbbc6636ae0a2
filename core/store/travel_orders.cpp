// Papers of orders that travel with the quotes they belong to.

#include <algorithm>

#include "core/quantity/utf8.h"
#include "core/store/quote_book.h"
#include "core/store/sql_store.h"
#include "core/store/travel.h"

namespace wg::store {

std::optional<Problem> Travel::send_orders(Outgoing& out) const {
    const OrderBook book(*store_);
    const Result<std::vector<OrderPaper>> papers = book.papers_of(out.parcel.job.id);
    if (!papers) return papers.problems().front();
    for (const OrderPaper& one : papers.value()) {
        const Result<std::string> bytes = book.paper(one.id);
        if (!bytes) {
            out.missing.push_back("paper of order " + for_message(one.number) + ": " + bytes.problems().front().what);
            continue;
        }
        const auto quote = std::find_if(out.parcel.quotes.begin(), out.parcel.quotes.end(),
                                        [&one](const exchange::SentQuote& sent) { return sent.id == one.quote_id; });
        if (quote == out.parcel.quotes.end()) continue;  // papers_of gives those of the job's quotes alone
        quote->orders.push_back(
            {one.id, key_of(one.kind), one.number, one.kept_at, one.kept_by, bytes.value(), one.takes_place_of});
    }
    return std::nullopt;
}

std::optional<Problem> Travel::add_orders(const exchange::SentQuote& sent, Taken& out) {
    OrderBook book(*store_);
    for (const exchange::SentOrder& one : sent.orders) {
        const auto kind = order_kind_from_key(one.kind);
        if (!kind) continue;  // core/exchange has refused others
        bool taken_by_other = false;
        const Result<bool> added =
            book.put({one.id, *kind, sent.id, one.number, std::string(), one.kept_at, one.kept_by, one.takes_place_of},
                     one.paper, taken_by_other);
        if (!added) return added.problems().front();
        if (added.value()) ++out.orders;
        if (taken_by_other)
            out.left_out.push_back("paper of order " + for_message(one.number) +
                                   ": another one has this number here; give the seat that travels a suffix of its own "
                                   "for its numbers");
    }
    return std::nullopt;
}

}  // namespace wg::store
