#pragma once
// The reference with the firm's own rule sets in it, as the store has them now.

#include <QString>
#include <memory>
#include <vector>

#include "core/job/job.h"
#include "core/plan/own_rules.h"
#include "core/store/rule_book.h"

namespace wg::ui {

class FirmRules {
   public:
    FirmRules(store::Store& store, std::shared_ptr<const plan::Reference> program);

    /// What the sets are laid over from now on: the program's data, with the firm's prices.
    void lay_over(std::shared_ptr<const plan::Reference> program);
    /// Reads the firm's sets when they are others than before. What is wrong with some, in words; empty: nothing. An
    /// unreadable store leaves what was there.
    QString refresh();
    /// The program's sets and the firm's, withdrawn ones left out.
    [[nodiscard]] std::shared_ptr<const plan::Reference> reference() const { return reference_; }
    /// `reference` with the withdrawn set that the job names; null: the job names none.
    [[nodiscard]] std::shared_ptr<const plan::Reference> with_named(const plan::Reference& reference,
                                                                    const Job& job) const;
    /// `reference` with all that are withdrawn: for looking at jobs, not for choosing.
    [[nodiscard]] std::shared_ptr<const plan::Reference> with_withdrawn(
        std::shared_ptr<const plan::Reference> reference) const;
    /// Id of the set for a new job.
    [[nodiscard]] std::string for_new_jobs() const;

   private:
    store::Store& store_;
    std::shared_ptr<const plan::Reference> program_, reference_;
    std::vector<store::RuleSetVersion> versions_;
    std::vector<plan::OwnRules> withdrawn_;
};

}  // namespace wg::ui
