#include "ui/equipment/item_history.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/format.h"
#include "ui/common/wrapped_cells.h"
#include "ui/equipment/item_text.h"

namespace wg::ui {
namespace {

QTableWidget* history_table(const QStringList& heads, QWidget* parent) {
    auto* table = new QTableWidget(0, static_cast<int>(heads.size()), parent);
    table->setHorizontalHeaderLabels(heads);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    WrappedCells::use_in(*table);
    return table;
}

void history_cell(QTableWidget& table, int row, int column, const QString& text) {
    auto* item = new QTableWidgetItem(text);
    item->setToolTip(text);
    table.setItem(row, column, item);
}

QByteArray content_of(const store::EquipmentVersion& version) {
    return QByteArray::fromStdString(version.content);
}

}  // namespace

ItemHistory::ItemHistory(QWidget* parent) : QWidget(parent) {
    versions_ = history_table({tr("Version"), tr("Saved"), tr("By"), tr("Approved by")}, this);
    versions_->setAccessibleName(tr("Versions, newest first"));
    words_ = new QLabel(this);
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    versions_->horizontalHeader()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    changes_ = history_table({tr("Field"), tr("Before"), tr("Then")}, this);
    changes_->setAccessibleName(tr("What changed with this version"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 0, 0);
    column->setSpacing(8);
    column->addWidget(versions_, 2);
    column->addWidget(words_);
    column->addWidget(changes_, 3);
    connect(versions_, &QTableWidget::currentCellChanged, this, [this](int row, int, int before) {
        if (row != before) explain();
    });
}

void ItemHistory::show_reason(const QString& reason) {
    kept_.clear();
    versions_->setRowCount(0);
    versions_->hide();
    changes_->hide();
    words_->setText(reason);
}

void ItemHistory::show_versions(store::EquipmentKept kept) {
    kept_ = std::move(kept.items);
    versions_->show();
    versions_->setRowCount(static_cast<int>(kept_.size()));
    for (int row = 0; row < versions_->rowCount(); ++row) {
        const store::EquipmentVersion& v = kept_[static_cast<std::size_t>(row)];
        const QString version = QString::number(v.version);
        history_cell(*versions_, row, 0, v.withdrawn ? tr("%1, withdrawn").arg(version) : version);
        history_cell(*versions_, row, 1, day(v.saved_at));
        history_cell(*versions_, row, 2, qs(v.saved_by));
        history_cell(*versions_, row, 3,
                     v.approved_by.empty() ? tr("nobody") : tr("%1, %2").arg(qs(v.approved_by), day(v.approved_at)));
    }
    if (!kept_.empty()) versions_->setCurrentCell(0, 0);
    explain();
}

void ItemHistory::explain() {
    const int row = versions_->currentRow();
    changes_->setRowCount(0);
    changes_->hide();
    if (row < 0 || row >= static_cast<int>(kept_.size())) {
        words_->setText(tr("No version can be read."));
        return;
    }
    const store::EquipmentVersion& now = kept_[static_cast<std::size_t>(row)];
    if (row + 1 >= static_cast<int>(kept_.size())) {
        words_->setText(tr("Version %1 is the first one kept.").arg(now.version));
        return;
    }
    const store::EquipmentVersion& before = kept_[static_cast<std::size_t>(row) + 1];
    if (now.withdrawn != before.withdrawn && now.content == before.content) {
        words_->setText(now.withdrawn
                            ? tr("Withdrawn with version %1; the data stayed as they were.").arg(now.version)
                            : tr("Brought back with version %1; the data stayed as they were.").arg(now.version));
        return;
    }
    const auto one = drafts_of(content_of(before), before.item_id);
    const auto other = drafts_of(content_of(now), now.item_id);
    if (!one || !other || one.value().size() != 1 || other.value().size() != 1) {
        words_->setText(tr("One of the two cannot be read by this program: it was saved by rules that have changed."));
        return;
    }
    const std::vector<FieldChange> changes = changes_between(one.value().front(), other.value().front());
    words_->setText(changes.empty() ? tr("Version %1 writes the same data another way.").arg(now.version)
                                    : tr("Changed from version %1 to %2:").arg(before.version).arg(now.version));
    changes_->setVisible(!changes.empty());
    changes_->setRowCount(static_cast<int>(changes.size()));
    for (int i = 0; i < changes_->rowCount(); ++i) {
        const FieldChange& change = changes[static_cast<std::size_t>(i)];
        history_cell(*changes_, i, 0, change.field);
        history_cell(*changes_, i, 1, change.before);
        history_cell(*changes_, i, 2, change.after);
    }
}

}  // namespace wg::ui
