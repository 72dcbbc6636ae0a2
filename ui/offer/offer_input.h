#pragma once
// What the papers of an offer are made from beside job and plan: the other choices on offer, tariffs, who supplies
// what, and which quote takes whose place.

#include <QDate>
#include <QString>
#include <memory>
#include <string>
#include <vector>

#include "core/store/purchase_book.h"
#include "core/store/quote_book.h"
#include "ui/documents/documents.h"

namespace wg::ui {

class JobSession;

/// At most so many choices stand on one quote.
inline constexpr std::size_t most_on_offer = 3;

/// Choices marked as on offer, without the one on screen, in the job's order and at most `most_on_offer` - 1.
[[nodiscard]] std::vector<std::string> beside_on_offer(const JobSession& session);
/// Why they cannot go out yet: still being planned, no plan, a stop; empty: they can, or there are none.
[[nodiscard]] QString why_not_beside(JobSession& session);

/// Null when there is no plan.
[[nodiscard]] std::shared_ptr<PaperInput> offer_input(JobSession& session, const Firm& firm, const QDate& today);

/// Puts what is in stock, on order, reserved and taken for the job of the plan's items into `supply_of`, in the unit of
/// their lines, and what its earlier purchase lists ordered into `ordered_before`.
/// Refused: a book that cannot be read; the input stays as it was.
[[nodiscard]] std::optional<Problem> take_stock(store::Store& store, PaperInput& input);
/// What the purchase list of the input orders, as it is kept.
[[nodiscard]] std::vector<store::PurchaseOrdered> ordered_lines(const PaperInput& input);

/// Of the newest quote that is neither withdrawn nor declined; empty: none. `quotes` newest first.
[[nodiscard]] std::string number_overtaken(const std::vector<store::IssuedQuote>& quotes,
                                           const std::map<std::string, std::vector<store::QuoteAnswer>>& answers);

/// The order that an accepted quote came to. Refused: a snapshot that cannot be read, a quote that is not accepted.
[[nodiscard]] Result<OrderInput> order_of(store::Store& store, const store::IssuedQuote& quote,
                                          const std::vector<store::QuoteAnswer>& answers);
/// The same with what `newer` changes of it.
[[nodiscard]] Result<OrderInput> change_of_order(store::Store& store, const store::IssuedQuote& agreed,
                                                 const std::vector<store::QuoteAnswer>& answers,
                                                 const store::IssuedQuote& newer);

}  // namespace wg::ui
