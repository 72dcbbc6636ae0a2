// What the page of equipment says about the item on screen: what stands against it, its versions, and what can be done.

#include <QLabel>
#include <QPushButton>
#include <QTabWidget>

#include "core/equipment/codec.h"
#include "core/plan/reference_overlay.h"
#include "ui/common/elided_label.h"
#include "ui/common/format.h"
#include "ui/common/versions_view.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/item_fields.h"
#include "ui/equipment/item_form.h"
#include "ui/equipment/item_list.h"
#include "ui/equipment/item_plot.h"

namespace wg::ui {
namespace {

std::string_view view_of(const QByteArray& bytes) {
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

Result<ItemDraft> draft_of_version(const std::vector<store::EquipmentVersion>& items, std::int64_t version) {
    for (const store::EquipmentVersion& one : items) {
        if (one.version != version) continue;
        const auto read = drafts_of(QByteArray::fromStdString(one.content), one.item_id);
        if (read && read.value().size() == 1) return read.value().front();
    }
    return Problem{"version " + std::to_string(version), "cannot be read: it was saved by rules that have changed",
                   "It stays in the store as it is"};
}

}  // namespace

void EquipmentPage::judge() {
    judge_delay_.stop();
    const Known* known = current();
    sound_ = false;
    if (known == nullptr && !drafts_.contains(current_)) {
        title_->setText({});
        state_->setText(tr("No item is chosen."));
        refresh_buttons();
        return;
    }
    const ItemDraft draft = form_->draft();
    const bool was_draft = drafts_.contains(current_);
    const bool same = known != nullptr && (known->program || text_of(draft) == text_of(known->saved));
    if (same) {
        drafts_.remove(current_);
        bases_.remove(current_);
    } else {
        drafts_.insert(current_, draft);
        if (!bases_.contains(current_))
            bases_.insert(current_, known != nullptr && known->version ? known->version->version : 0);
    }
    if (same == was_draft && !keep_delay_.isActive()) keep_delay_.start();
    const QByteArray text = text_of(draft);
    const Result<Catalogue> read = catalogue_from_json(view_of(text), "item");
    std::vector<Problem> found;
    if (!read) {
        found = read.problems();
    } else {
        found = plan::problems_beside(all_, read.value(), "item", known != nullptr ? current_.toStdString() : "");
    }
    sound_ = found.empty();
    const QStringList others = form_->show_problems(by_field(draft.kind, found));
    if (read) {
        plot_->show_item(read.value(), all_);
    } else {
        plot_->show_reason(tr("The curves follow once the data are complete."));
    }
    const QString name = name_of_draft(draft);
    title_->setText(name.isEmpty() ? tr("%1 without a name").arg(words_of(draft.kind))
                                   : tr("%1: %2").arg(words_of(draft.kind), name));
    QStringList words;
    if (known == nullptr) {
        words << tr("New, not saved yet.");
    } else if (known->program) {
        words << tr("Comes with the program and stays as it is. Take it as a start with 'New from this one'.");
    } else if (known->version) {
        words << tr("Version %1, saved %2.")
                     .arg(number(static_cast<int>(known->version->version)), day(known->version->saved_at));
        if (known->version->came) words << tr("Came with a job from another machine.");
        if (known->version->withdrawn) words << tr("Withdrawn: jobs that name it go on with it, others do not see it.");
        words
            << (known->version->approved_by.empty()
                    ? tr("Nobody has approved this version.")
                    : tr("Approved by %1, %2.").arg(qs(known->version->approved_by), day(known->version->approved_at)));
        if (!same) words << tr("Changed since, not saved.");
    }
    words << others;
    state_->setText(words.join(QLatin1Char(' ')));
    const int count = static_cast<int>(found.size());
    problems_->setVisible(count > 0);
    problems_->setText(count == 1 ? tr("1 problem") : tr("%1 problems").arg(number(count)));
    if (was_draft != drafts_.contains(current_)) show_list(current_);
    refresh_buttons();
}

void EquipmentPage::refresh_buttons() {
    const Known* known = current();
    const bool unsaved = drafts_.contains(current_);
    const bool own = known != nullptr && known->version.has_value();
    const bool withdrawn = own && known->version->withdrawn;
    save_->setEnabled(unsaved && sound_);
    drop_->setEnabled(unsaved);
    from_this_->setEnabled(known != nullptr || unsaved);
    approve_->setEnabled(own && !unsaved && !withdrawn);
    withdraw_->setEnabled(own && !unsaved);
    withdraw_->setText(withdrawn ? tr("Bring back") : tr("Withdraw"));
    if (known == nullptr && !unsaved) problems_->hide();
}

void EquipmentPage::show_history() {
    if (side_->currentWidget() != history_) return;
    const Known* known = current();
    if (known == nullptr) {
        history_->show_reason(tr("Versions begin when the item is saved."));
        return;
    }
    if (known->program) {
        history_->show_reason(tr("Items of the program have no versions here; they change with the program."));
        return;
    }
    const Result<store::EquipmentKept> kept = store::EquipmentBook(store_).history(current_.toStdString());
    if (!kept) {
        history_->show_reason(qs(wg::text_of(kept.problems())));
        return;
    }
    std::vector<KeptVersion> versions;
    versions.reserve(kept.value().items.size());
    for (const store::EquipmentVersion& one : kept.value().items) {
        const QString approved =
            one.approved_by.empty() ? tr("nobody") : tr("%1, %2").arg(qs(one.approved_by), day(one.approved_at));
        versions.push_back({one.version, one.saved_at, one.saved_by, approved, one.withdrawn});
    }
    history_->show_versions(std::move(versions), [items = kept.value().items](std::int64_t before, std::int64_t after) {
        const Result<ItemDraft> then = draft_of_version(items, before);
        const Result<ItemDraft> now = draft_of_version(items, after);
        using Changes = Result<std::vector<VersionChange>>;
        if (!then.ok() || !now.ok()) return Changes((then.ok() ? now : then).problems());
        return Changes(changes_between(then.value(), now.value()));
    });
}

QString EquipmentPage::state_words() const {
    return state_->text();
}

bool EquipmentPage::can_save() const {
    return save_->isEnabled();
}

int EquipmentPage::unsaved() {
    if (judge_delay_.isActive()) judge();
    return static_cast<int>(drafts_.size());
}

void EquipmentPage::select(const QString& key) {
    list_->select(key);
}

}  // namespace wg::ui
