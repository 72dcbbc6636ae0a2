// What the page of rule sets does with the firm's book and with files.

#include <QCheckBox>
#include <QDateTime>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QTableView>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/versions_view.h"
#include "ui/common/whole_file.h"
#include "ui/rules/rule_model.h"
#include "ui/rules/rule_page.h"

namespace wg::ui {
bool RulePage::make_own(const QString& id, const QString& label) {
    if (id.trimmed().isEmpty() || label.trimmed().isEmpty() || current() == nullptr) return false;
    if (is_programs(id)) {
        Q_EMIT problem(tr("'%1' is the id of a set that comes with the program. Choose another.").arg(id));
        return false;
    }
    RuleDraft draft = model_->draft();
    draft.put({QStringLiteral("id")}, id);
    draft.put({QStringLiteral("label")}, label.trimmed());
    const auto saved = store::RuleBook(store_).save(id.toStdString(), draft.text().toStdString(), 0, {},
                                                    Instant{QDateTime::currentSecsSinceEpoch()});
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    read_sets();
    shown_id_ = id;
    fill_choice();
    if (const Entry* entry = current()) show_entry(*entry);
    Q_EMIT said(tr("'%1' is a rule set of the firm's own now").arg(label.trimmed()));
    Q_EMIT sets_changed();
    return true;
}

bool RulePage::set_assumed(bool assumed) {
    const Entry* entry = current();
    if (entry == nullptr || !entry->own) return false;
    RuleDraft draft = model_->draft();
    draft.put({QStringLiteral("assumed")}, assumed);
    const std::vector<Problem> problems = assumed ? std::vector<Problem>{} : draft.problems();
    if (problems.empty()) {
        model_->set_assumed(assumed);
        return true;
    }
    refresh_state();  // the box as it was
    QStringList names;
    for (const RuleRow& row : draft.rows())
        if (draft.is_assumed(row)) names << QStringLiteral("%1, %2").arg(row.group_name, row.field->label);
    if (names.isEmpty()) {
        tell(problems);
        return false;
    }
    const int count = static_cast<int>(names.size());
    constexpr int most_named = 4;
    QString list = names.mid(0, most_named).join(QStringLiteral("; "));
    if (count > most_named) list += tr("; and %1 more").arg(number(count - most_named));
    Q_EMIT problem(tr("The set stays assumed: state a source for %1. Search for 'assumed' to see them.").arg(list));
    return false;
}

bool RulePage::save_version(const QString& note, Instant now) {
    Entry* entry = entry_of(shown_id_);
    if (entry == nullptr || !entry->own) return false;
    const RuleDraft draft = model_->draft();
    const auto saved = store::RuleBook(store_).save(shown_id_.toStdString(), draft.text().toStdString(), base_,
                                                    note.trimmed().toStdString(), now);
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    entry->set = draft;
    entry->version = saved.value();
    base_ = entry->version.version;
    fill_choice();
    refresh_state();
    Q_EMIT said(tr("Version %1 of '%2' saved").arg(saved.value().version).arg(draft.label()));
    Q_EMIT sets_changed();
    return true;
}

bool RulePage::withdraw(const QString& note, Instant now) {
    Entry* entry = entry_of(shown_id_);
    if (entry == nullptr || !entry->own) return false;
    const auto done = store::RuleBook(store_).withdraw(shown_id_.toStdString(), entry->version.version,
                                                       note.trimmed().toStdString(), now);
    if (!tell(done.ok() ? std::vector<Problem>{} : done.problems())) return false;
    entry->version = done.value();
    base_ = entry->version.version;
    fill_choice();
    refresh_state();
    Q_EMIT said(
        for_new_jobs_ == shown_id_
            ? tr("'%1' is withdrawn. New jobs use the program's set until another is chosen").arg(entry->set.label())
            : tr("'%1' is withdrawn").arg(entry->set.label()));
    Q_EMIT sets_changed();
    return true;
}

bool RulePage::use_for_new_jobs() {
    const Entry* entry = current();
    if (entry == nullptr || (entry->own && entry->version.withdrawn)) return false;
    const auto done = store::RuleBook(store_).choose_for_new_jobs(shown_id_.toStdString());
    if (!tell(done.ok() ? std::vector<Problem>{} : done.problems())) return false;
    for_new_jobs_ = shown_id_;
    refresh_state();
    Q_EMIT said(tr("New jobs use '%1'").arg(entry->set.label()));
    Q_EMIT sets_changed();
    return true;
}

void RulePage::discard_changes() {
    if (const Entry* entry = current()) show_entry(*entry);
}

bool RulePage::import_file(const QString& path) {
    const Result<std::string> text = read_whole(path, mebibyte);  // as the book has it
    if (!tell(text.ok() ? std::vector<Problem>{} : text.problems())) return false;
    return import_text(text.value(), QFileInfo(path).fileName(), Instant{QDateTime::currentSecsSinceEpoch()});
}

bool RulePage::import_text(const std::string& text, const QString& file_name, Instant now) {
    if (has_changes()) {
        Q_EMIT problem(tr("The rule set on screen has changes. Save or discard them first."));
        return false;
    }
    const Result<RuleDraft> read = RuleDraft::read(text, file_name.toStdString());
    if (!tell(read.ok() ? std::vector<Problem>{} : read.problems())) return false;
    const QString id = read.value().id();
    if (is_programs(id)) {
        Q_EMIT problem(
            tr("'%1' is the id of a set that comes with the program. Give the file's set another id.").arg(id));
        return false;
    }
    const Entry* known = entry_of(id);
    const auto saved =
        store::RuleBook(store_).save(id.toStdString(), text, known == nullptr ? 0 : known->version.version,
                                     tr("from %1").arg(file_name).toStdString(), now);
    if (!tell(saved.ok() ? std::vector<Problem>{} : saved.problems())) return false;
    shown_id_ = id;
    reload();
    Q_EMIT said(tr("'%1' is version %2 of the set in the list").arg(read.value().label()).arg(saved.value().version));
    Q_EMIT sets_changed();
    return true;
}

bool RulePage::export_file(const QString& path) {
    const Result<bool> written = write_whole(path, model_->draft().text());
    if (!tell(written.ok() ? std::vector<Problem>{} : written.problems())) return false;
    Q_EMIT said(tr("Saved: %1").arg(path));
    return true;
}

void RulePage::add_item(RuleGroup group) {
    search_->clear();
    const int row = model_->add_item(group);
    if (row < 0) return;
    const QModelIndex place = model_->index(row, RuleModel::column_figure);
    table_->setCurrentIndex(place);
    table_->scrollTo(place, QAbstractItemView::PositionAtCenter);
    table_->setFocus();
}

void RulePage::ask_import() {
    const QString path = QFileDialog::getOpenFileName(this, tr("Read a rule set"), {}, tr("Rule sets (*.json)"));
    if (!path.isEmpty()) import_file(path);
}

void RulePage::ask_export() {
    const QString path = QFileDialog::getSaveFileName(
        this, tr("Write the rule set"), QStringLiteral("%1.json").arg(shown_id_), tr("Rule sets (*.json)"));
    if (!path.isEmpty()) export_file(path);
}

std::unique_ptr<VersionsDialog> RulePage::versions() {
    const std::string id = shown_id_.toStdString();
    const auto kept = kept_versions(store::RuleBook(store_).history(id));
    const auto between = [this, id](std::int64_t before, std::int64_t after) -> Result<std::vector<VersionChange>> {
        const auto read = [&](std::int64_t version) -> Result<RuleDraft> {
            const auto text = store::RuleBook(store_).content(id, version);
            if (!text.ok()) return text.problems();
            return RuleDraft::read(text.value(), "rule set '" + id + "'");
        };
        const Result<RuleDraft> then = read(before);
        const Result<RuleDraft> now = read(after);
        if (!then.ok() || !now.ok()) return (then.ok() ? now : then).problems();
        std::vector<VersionChange> changes = changes_between(then.value(), now.value());
        for (VersionChange& change : changes) {
            if (change.before.isEmpty()) change.before = tr("left out");
            if (change.after.isEmpty()) change.after = tr("left out");
        }
        return changes;
    };
    return std::make_unique<VersionsDialog>(tr("Versions of the rule set"), kept, between, this);
}

}  // namespace wg::ui
