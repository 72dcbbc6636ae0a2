#include "ui/prices/price_history.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/parts/price_changes.h"
#include "ui/common/dialog_size.h"
#include "ui/common/format.h"
#include "ui/common/reading_table.h"

namespace wg::ui {
namespace {

constexpr int price_history_wide = 980;
constexpr int price_history_high = 560;
constexpr int versions_wide = 420;

}  // namespace

PriceHistory::PriceHistory(store::Store& store, std::string list_id, QWidget* parent)
    : QDialog(parent), store_(store), list_id_(std::move(list_id)) {
    setWindowTitle(tr("Versions of the price list"));
    size_for_screen(*this, price_history_wide, price_history_high);
    versions_ = reading_table({tr("Version"), tr("Saved"), tr("By"), tr("Note")}, this);
    versions_->setAccessibleName(tr("Versions"));
    versions_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    versions_->horizontalHeader()->setSectionResizeMode(3, QHeaderView::Stretch);
    versions_->setMinimumWidth(versions_wide);
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
    connect(versions_, &QTableWidget::itemSelectionChanged, this, &PriceHistory::show_changes);
    const auto found = store::PriceBook(store_).history(list_id_);
    if (!found.ok()) {
        add_reading_row(*changes_, {qs(text_of(found.problems())), {}, {}});
        return;
    }
    rows_ = found.value();
    for (const store::PriceListVersion& version : rows_) {
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

void PriceHistory::show_changes() {
    changes_->setRowCount(0);
    const int row = versions_->currentRow();
    if (row < 0 || row >= static_cast<int>(rows_.size())) return;
    const auto read = [this](int version) -> Result<parts::PriceList> {
        const auto text = store::PriceBook(store_).content(list_id_, version);
        if (!text.ok()) return text.problems();
        return parts::price_list_from_json(text.value(), "price list " + list_id_);
    };
    const int version = rows_[static_cast<std::size_t>(row)].version;
    if (version == 1) {
        add_reading_row(*changes_, {tr("The list as it was first saved"), {}, {}});
        return;
    }
    const Result<parts::PriceList> before = read(version - 1);
    const Result<parts::PriceList> after = read(version);
    if (!before.ok() || !after.ok()) {
        add_reading_row(*changes_, {qs(text_of((before.ok() ? after : before).problems())), {}, {}});
        return;
    }
    const std::vector<parts::PriceChange> changes = parts::price_changes(before.value(), after.value());
    for (const parts::PriceChange& change : changes) {
        add_reading_row(*changes_, {with_capital(qs(change.where)), qs(change.before),
                                    change.after.empty() ? tr("removed") : qs(change.after)});
    }
    if (changes.empty()) add_reading_row(*changes_, {tr("Nothing in the list itself changed"), {}, {}});
}

}  // namespace wg::ui
