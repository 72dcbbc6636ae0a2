#include "ui/rules/rule_history.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/rules/rule_draft.h"

namespace wg::ui {
namespace {

constexpr int rule_history_wide = 1000;
constexpr int rule_history_high = 560;
constexpr int rule_versions_wide = 420;

}  // namespace

RuleHistory::RuleHistory(store::Store& store, std::string id, QWidget* parent)
    : QDialog(parent), store_(store), id_(std::move(id)) {
    setWindowTitle(tr("Versions of the rule set"));
    size_for_screen(*this, rule_history_wide, rule_history_high);
    versions_ = reading_table({tr("Version"), tr("Saved"), tr("By"), tr("Note")}, this);
    versions_->setAccessibleName(tr("Versions"));
    versions_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    versions_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    versions_->setMinimumWidth(rule_versions_wide);
    changes_ = reading_table({tr("Where"), tr("Before"), tr("After")}, this);
    changes_->setAccessibleName(tr("What the version changed"));
    auto* row = new QHBoxLayout;
    row->addWidget(versions_);
    row->addWidget(changes_, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(row, 1);
    column->addWidget(buttons);
    connect(versions_, &QTableWidget::itemSelectionChanged, this, &RuleHistory::show_changes);
    const auto found = store::RuleBook(store_).history(id_);
    if (!found.ok()) {
        add_reading_row(*changes_, {qs(text_of(found.problems())), {}, {}});
        return;
    }
    rows_ = found.value();
    for (const store::RuleSetVersion& version : rows_) {
        const QDateTime at = QDateTime::fromString(qs(version.saved_at), Qt::ISODate).toLocalTime();
        QString note = qs(version.note);
        if (version.withdrawn) note = note.isEmpty() ? tr("withdrawn") : tr("withdrawn: %1").arg(note);
        add_reading_row(*versions_,
                        {QString::number(version.version),
                         at.isValid() ? at.toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(version.saved_at),
                         version.saved_by.empty() ? tr("not told") : qs(version.saved_by), note});
    }
    if (!rows_.empty()) versions_->selectRow(0);
}

void RuleHistory::show_changes() {
    changes_->setRowCount(0);
    const int row = versions_->currentRow();
    if (row < 0 || row >= static_cast<int>(rows_.size())) return;
    const auto read = [this](std::int64_t version) -> Result<RuleDraft> {
        const auto text = store::RuleBook(store_).content(id_, version);
        if (!text.ok()) return text.problems();
        return RuleDraft::read(text.value(), "rule set '" + id_ + "'");
    };
    const std::int64_t version = rows_[static_cast<std::size_t>(row)].version;
    if (version == 1) {
        add_reading_row(*changes_, {tr("The set as it was first saved"), {}, {}});
        return;
    }
    const Result<RuleDraft> before = read(version - 1);
    const Result<RuleDraft> after = read(version);
    if (!before.ok() || !after.ok()) {
        add_reading_row(*changes_, {qs(text_of((before.ok() ? after : before).problems())), {}, {}});
        return;
    }
    const std::vector<RuleChange> changes = changes_between(before.value(), after.value());
    for (const RuleChange& change : changes)
        add_reading_row(*changes_, {change.what, change.before.isEmpty() ? tr("left out") : change.before,
                                    change.after.isEmpty() ? tr("left out") : change.after});
    if (changes.empty()) add_reading_row(*changes_, {tr("Nothing in the set itself changed"), {}, {}});
}

}  // namespace wg::ui
