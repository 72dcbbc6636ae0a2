#pragma once
// The paper of an issued quote made again from what was frozen: for large print, or when a copy is asked for in another
// manner. The paper that went out stays the one that counts.

#include <memory>

#include "core/plan/plan.h"
#include "core/store/quote_book.h"
#include "ui/common/planner.h"
#include "ui/documents/documents.h"

namespace wg::ui {

/// The job as it was saved for the quote is planned again with `reference`, and the plan is held against the frozen
/// one: only when both are the same to the letter is there a paper. Refused: a revision that is no longer here (data
/// were erased), a plan that comes out otherwise, since prices, rules, equipment or weather are no longer the same.
[[nodiscard]] Result<std::shared_ptr<PaperInput>> input_again(store::Store& store, const store::IssuedQuote& quote,
                                                              const plan::Reference& reference,
                                                              const PlanFunction& plan_function = {});

}  // namespace wg::ui
