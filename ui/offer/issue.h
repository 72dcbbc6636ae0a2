#pragma once
// Papers that go out: frozen, numbered, printed and kept, all of it or nothing.

#include <QByteArray>
#include <string>
#include <vector>

#include "core/plan/rule_set.h"
#include "core/store/quote_book.h"
#include "ui/documents/documents.h"

namespace wg::ui {

/// `shown`: what the quote on the screen is made from; its plan must have a price. The paper is printed from what is
/// frozen of it (`snapshot_of`, with `rules`) and from nothing else, so that it can be made again. Refused: what cannot
/// be frozen or printed, and what `QuoteBook::issue_next` refuses.
[[nodiscard]] Result<store::IssuedQuote> issue_paper(store::Store& store, const PaperInput& shown,
                                                     const QByteArray& logo_file, Instant now,
                                                     const plan::RuleSet* rules = nullptr);

/// The paper of the order, or of the change of an order, that `input.order` holds, under the next number.
/// `takes_place_of`: ids of the papers that it names as replaced.
[[nodiscard]] Result<store::OrderPaper> keep_order_paper(store::Store& store, PaperInput input, store::NumberKind kind,
                                                         const std::string& quote_id, Instant now,
                                                         const std::vector<std::string>& takes_place_of = {});

}  // namespace wg::ui
