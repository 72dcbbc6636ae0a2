// What the page of rule sets says about the one on screen, and what can be done with it.

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTableView>

#include "ui/common/format.h"
#include "ui/common/versions_head.h"
#include "ui/rules/rule_model.h"
#include "ui/rules/rule_page.h"

namespace wg::ui {

QString RulePage::state_words() const {
    return state_->text();
}

QString RulePage::line_words() const {
    return line_->text();
}

void RulePage::refresh_state() {
    const Entry* entry = current();
    const bool own = entry != nullptr && entry->own;
    const bool changed = has_changes();
    const bool withdrawn = own && entry->version.withdrawn;
    head_->allow(own, withdrawn, changed);
    add_->setEnabled(own);
    remove_->setEnabled(own && model_->is_item(table_->currentIndex().row()));
    assumed_->setEnabled(own);
    assumed_->setChecked(entry != nullptr && model_->draft().assumed());
    if (entry == nullptr) {
        standard_->setEnabled(false);
        state_->setText(tr("There is no rule set."));
        return;
    }
    const Entry* chosen = for_new_jobs_.isEmpty() ? nullptr : entry_of(for_new_jobs_);
    const bool chosen_holds = chosen != nullptr && !chosen->version.withdrawn;
    const bool standard = chosen_holds ? for_new_jobs_ == shown_id_ : programs_first() == shown_id_;
    standard_->setEnabled(!standard && !withdrawn);
    const RuleDraft& draft = model_->draft();
    const int values = static_cast<int>(draft.rows().size());
    const int assumed = draft.count_assumed();
    QStringList words{assumed == 0 ? tr("%1 values, all with a source.").arg(number(values))
                                   : tr("%1 values, %2 of them assumed.").arg(number(values), number(assumed))};
    for (const QString& misnamed : draft.misnamed_rates())
        words << tr("\u25b2 %1: the name stands on quotes.").arg(misnamed);
    if (draft.assumed()) words << tr("\u25c6 Assumed: a caution goes with every plan.");
    if (standard) words << tr("New jobs use this set.");
    if (!own) {
        words << tr("It comes with the program and is not changed: make a set of the firm's own from it.");
    } else {
        words << tr("Version %1, saved %2%3.")
                     .arg(number(static_cast<int>(entry->version.version)), day(entry->version.saved_at),
                          entry->version.saved_by.empty() ? QString() : tr(" by %1").arg(qs(entry->version.saved_by)));
        if (entry->version.came) words << tr("Came with a job from another machine.");
        if (withdrawn) words << tr("Withdrawn: jobs that name it go on with it, others do not see it.");
        if (changed) words << tr("Changes are not saved yet.");
        if (changed && base_ != entry->version.version)
            words << tr("\u25b2 The changes began with version %1: discard them to see what was saved since.")
                         .arg(number(static_cast<int>(base_)));
        const std::vector<Problem> problems = changed ? draft.problems() : std::vector<Problem>{};
        if (!problems.empty()) {
            words << (problems.size() == 1
                          ? tr("\u25b2 1 problem:")
                          : tr("\u25b2 %1 problems, the first:").arg(number(static_cast<int>(problems.size()))));
            words << qs(problems.front().text());
        }
    }
    state_->setText(words.join(QLatin1Char(' ')));
}

}  // namespace wg::ui
