#include "ui/common/versions_view.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QLabel>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"
#include "ui/common/wrapped_cells.h"

namespace wg::ui {
namespace {

constexpr int versions_wide = 1120;
constexpr int versions_high = 600;
constexpr int moment_spare_px = 2 * 8 + 2 * 3 + 6;  ///< padding of the style sheet, the cell's margins

QString moment_of_save(const std::string& utc) {
    const QDateTime at = QDateTime::fromString(qs(utc), Qt::ISODate).toLocalTime();
    return at.isValid() ? at.toString(QStringLiteral("yyyy-MM-dd HH:mm")) : qs(utc);
}

}  // namespace

VersionsView::VersionsView(const QString& note_head, Qt::Orientation orientation, QWidget* parent) : QWidget(parent) {
    versions_ = reading_table({tr("Version"), tr("Saved"), tr("By"), note_head}, this);
    versions_->setAccessibleName(tr("Versions, newest first"));
    changes_ = reading_table({tr("Where"), tr("Before"), tr("After")}, this);
    changes_->setAccessibleName(tr("What the version changed"));
    const int moment_px =
        versions_->fontMetrics().horizontalAdvance(QStringLiteral("0000-00-00 00:00")) + moment_spare_px;
    share_width(*versions_, {3, 4, 5, 6}, {0, moment_px, 0, 0});
    share_width(*changes_, {5, 3, 3});  // where: an item's words, its id and the field
    for (QTableWidget* table : {versions_, changes_})
        WrappedCells::use_in(*table);
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto* told = new QWidget(this);
    auto* under = new QVBoxLayout(told);
    under->setContentsMargins(0, 0, 0, 0);
    under->setSpacing(8);
    under->addWidget(words_);
    under->addWidget(changes_, 1);
    auto* split = new QSplitter(orientation, this);
    split->setChildrenCollapsible(false);
    split->addWidget(versions_);
    split->addWidget(told);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 3);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(split);
    connect(versions_, &QTableWidget::currentCellChanged, this, [this](int row, int, int before) {
        if (row != before) explain();
    });
}

QString VersionsView::words() const {
    return words_->text();
}

void VersionsView::show_reason(const QString& reason) {
    kept_.clear();
    versions_->setRowCount(0);
    versions_->hide();
    changes_->hide();
    words_->setText(reason);
}

void VersionsView::show_versions(std::vector<KeptVersion> versions, ChangesBetween between) {
    versions_->setRowCount(0);
    kept_ = std::move(versions);
    between_ = std::move(between);
    versions_->show();
    for (const KeptVersion& one : kept_) {
        const QString version = QString::number(one.version);
        add_reading_row(*versions_,
                        {one.withdrawn ? tr("%1, withdrawn").arg(version) : version, moment_of_save(one.saved_at),
                         one.saved_by.empty() ? tr("not told") : qs(one.saved_by), one.note});
    }
    if (!kept_.empty()) versions_->setCurrentCell(0, 0);
    explain();
}

void VersionsView::explain() {
    const int row = versions_->currentRow();
    changes_->setRowCount(0);
    changes_->hide();
    if (row < 0 || row >= static_cast<int>(kept_.size())) {
        words_->setText(tr("No version can be read."));
        return;
    }
    const KeptVersion& now = kept_[static_cast<std::size_t>(row)];
    if (row + 1 >= static_cast<int>(kept_.size())) {
        words_->setText(tr("Version %1 is the first one kept.").arg(now.version));
        return;
    }
    const KeptVersion& before = kept_[static_cast<std::size_t>(row) + 1];
    const auto found = between_(before.version, now.version);
    if (!found.ok()) {
        words_->setText(qs(text_of(found.problems())));
        return;
    }
    for (const VersionChange& change : found.value())
        add_reading_row(*changes_, {change.where, change.before, change.after});
    const bool changed = !found.value().empty();
    changes_->setVisible(changed);
    if (changed)
        words_->setText(tr("Changed from version %1 to %2:").arg(before.version).arg(now.version));
    else if (now.withdrawn != before.withdrawn)
        words_->setText(now.withdrawn
                            ? tr("Withdrawn with version %1; the data stayed as they were.").arg(now.version)
                            : tr("Brought back with version %1; the data stayed as they were.").arg(now.version));
    else
        words_->setText(tr("Version %1 holds the same data as the one before.").arg(now.version));
}

VersionsDialog::VersionsDialog(const QString& title, const Result<std::vector<KeptVersion>>& versions,
                               ChangesBetween between, QWidget* parent)
    : QDialog(parent) {
    setWindowTitle(title);
    size_for_screen(*this, versions_wide, versions_high);
    view_ = new VersionsView(tr("Note"), Qt::Horizontal, this);
    if (versions.ok())
        view_->show_versions(versions.value(), std::move(between));
    else
        view_->show_reason(qs(text_of(versions.problems())));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* column = new QVBoxLayout(this);
    column->addWidget(view_, 1);
    column->addWidget(buttons);
}

}  // namespace wg::ui
