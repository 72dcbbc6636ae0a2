#pragma once
// The paper of an issued quote made again from what was frozen with it: for large print, or when a copy is asked for in
// another manner. The paper that went out stays the one that counts.

#include <QByteArray>
#include <memory>
#include <string>

#include "core/plan/plan.h"
#include "core/plan/rule_set.h"
#include "core/store/quote_book.h"
#include "ui/common/planner.h"
#include "ui/documents/documents.h"

namespace wg::ui {

/// What is frozen with a quote that is issued: the plan, and all that its paper is made from. `logo_file`: the firm's,
/// as it was chosen; of no account where the firm has no logo to draw. `rules`: those that the plan was reckoned with;
/// null: they are left out.
[[nodiscard]] std::string snapshot_of(const PaperInput& input, const QByteArray& logo_file,
                                      const plan::RuleSet* rules = nullptr);

struct PrintAgain {
    std::shared_ptr<PaperInput> input;
    /// Frozen by an older program, which kept the plan alone: the firm's block is that of today.
    bool firm_of_today = false;
};

/// From the snapshot alone: nothing that has changed since is looked at. Null: an older program froze it. Refused: a
/// snapshot that cannot be read, or that a newer program wrote.
[[nodiscard]] Result<std::shared_ptr<PaperInput>> input_of_snapshot(const std::string& snapshot,
                                                                    const std::string& number);

/// From the snapshot. Of an older one, the job as it was saved for the quote is planned again with `reference`, and the
/// plan is held against the frozen one: only when both are the same to the letter is there a paper. Refused then: a
/// revision that is no longer here (data were erased), a plan that comes out otherwise, since prices, rules, equipment
/// or weather are no longer the same.
[[nodiscard]] Result<PrintAgain> input_again(store::Store& store, const store::IssuedQuote& quote,
                                             const plan::Reference& reference, const PlanFunction& plan_function = {});

}  // namespace wg::ui
