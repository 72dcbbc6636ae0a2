#include "ui/window/history_dialog.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/common/wrapped_cells.h"

namespace wg::ui {
namespace {

constexpr int history_wide = 980;
constexpr int history_high = 560;

QString local_time(const std::string& utc) {
    const QDateTime at = QDateTime::fromString(qs(utc), Qt::ISODate).toLocalTime();
    return at.isValid() ? at.toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(utc);
}

}  // namespace

HistoryDialog::HistoryDialog(store::Store& store, std::string job_id, QWidget* parent)
    : QDialog(parent), store_(store), job_id_(std::move(job_id)) {
    setWindowTitle(tr("History of this job"));
    size_for_screen(*this, history_wide, history_high);
    revisions_ = reading_table({tr("Revision"), tr("Saved"), tr("By")}, this);
    revisions_->setAccessibleName(tr("Revisions"));
    revisions_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    revisions_->horizontalHeader()->setSectionResizeMode(2, QHeaderView::Stretch);
    revisions_->setMinimumWidth(320);
    changes_ = reading_table({tr("Where"), tr("Before"), tr("After")}, this);
    changes_->setAccessibleName(tr("What it changed"));
    share_width(*changes_, {5, 3, 3});
    WrappedCells::use_in(*changes_);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    auto* right = new QVBoxLayout;
    right->addWidget(words_);
    right->addWidget(changes_, 1);
    auto* row = new QHBoxLayout;
    row->addWidget(revisions_);
    row->addLayout(right, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    back_ = buttons->addButton(tr("Bring this revision back"), QDialogButtonBox::ActionRole);
    back_->setToolTip(tr("As an edit that can be undone; the record stays as it is."));
    connect(back_, &QPushButton::clicked, this, &HistoryDialog::bring_back);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addLayout(row, 1);
    column->addWidget(buttons);
    connect(revisions_, &QTableWidget::itemSelectionChanged, this, &HistoryDialog::show_changes);

    const auto found = store::JobHistory(store_).revisions(job_id_);
    if (!found) {
        words_->setText(qs(text_of(found.problems())));
        back_->setEnabled(false);
        return;
    }
    rows_ = found.value();
    for (const store::JobRevision& revision : rows_) {
        add_reading_row(*revisions_, {QString::number(revision.revision), local_time(revision.changed_at),
                                      revision.changed_by.empty() ? tr("not told") : qs(revision.changed_by)});
    }
    revisions_->selectRow(0);
}

void HistoryDialog::show_changes() {
    changes_->setRowCount(0);
    const int row = revisions_->currentRow();
    if (row < 0 || row >= static_cast<int>(rows_.size())) return;
    back_->setEnabled(row > 0);  // the newest is what is open
    const auto found = store::JobHistory(store_).changes(job_id_, rows_[static_cast<std::size_t>(row)].revision);
    if (!found) {
        words_->setText(qs(text_of(found.problems())));
        back_->setEnabled(false);
        return;
    }
    const bool first = row + 1 == static_cast<int>(rows_.size());
    words_->setText(first                   ? tr("The job as it was first saved.")
                    : found.value().empty() ? tr("Nothing of the job itself changed.")
                                            : tr("Changes: %1").arg(found.value().size()));
    for (const merge::Change& change : found.value()) {
        const QString after = change.kind == merge::Change::Kind::added && change.after.empty() ? tr("added")
                              : change.kind == merge::Change::Kind::removed                     ? tr("removed")
                                                                                                : qs(change.after);
        add_reading_row(*changes_, {with_capital(qs(change.where)), qs(change.before), after});
    }
}

void HistoryDialog::bring_back() {
    const int row = revisions_->currentRow();
    if (row <= 0 || row >= static_cast<int>(rows_.size())) return;
    const Result<Job> earlier = store_.load_revision(job_id_, rows_[static_cast<std::size_t>(row)].revision);
    if (!earlier) {
        words_->setText(qs(text_of(earlier.problems())));
        return;
    }
    Q_EMIT back_asked(earlier.value());
    accept();
}

}  // namespace wg::ui
