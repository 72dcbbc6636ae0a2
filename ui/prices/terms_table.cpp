#include "ui/prices/terms_table.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/heading_label.h"
#include "ui/drawing/fields.h"

namespace wg::ui {
namespace {

/// Offers what can be chosen in place of typing it.
class ChoiceDelegate : public QStyledItemDelegate {
   public:
    ChoiceDelegate(std::function<QStringList()> choices, QObject* parent)
        : QStyledItemDelegate(parent), choices_(std::move(choices)) {}

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& /*option*/,
                          const QModelIndex& /*index*/) const override {
        auto* made = new CalmCombo(parent);
        made->addItems(choices_());
        return made;
    }
    void setEditorData(QWidget* editor, const QModelIndex& index) const override {
        auto* combo = static_cast<CalmCombo*>(editor);
        combo->setCurrentIndex(combo->findText(index.data(Qt::EditRole).toString()));
    }
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override {
        const auto* combo = static_cast<CalmCombo*>(editor);
        if (combo->currentIndex() >= 0) model->setData(index, combo->currentText(), Qt::EditRole);
    }

   private:
    std::function<QStringList()> choices_;
};

}  // namespace

TermsTable::TermsTable(TermsRows rows, std::function<bool(const Change&)> offer, QWidget* parent)
    : QWidget(parent), rows_(std::move(rows)), offer_(std::move(offer)) {
    auto* heading = heading_label(rows_.title, this);
    table_ = new QTableWidget(this);
    const auto columns = static_cast<int>(rows_.columns.size());
    table_->setColumnCount(columns);
    table_->setAccessibleName(rows_.title);
    table_->verticalHeader()->hide();
    table_->setTabKeyNavigation(false);
    table_->setShowGrid(false);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);  // it is as high as its rows
    QHeaderView* header = table_->horizontalHeader();
    header->setHighlightSections(false);
    for (int at = 0; at < columns; ++at) {
        const TermsColumn& column = rows_.columns[static_cast<std::size_t>(at)];
        auto* item = new QTableWidgetItem(column.words);
        item->setTextAlignment((column.figure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
        if (!column.tip.isEmpty()) item->setToolTip(column.tip);
        table_->setHorizontalHeaderItem(at, item);
        header->setSectionResizeMode(at, column.width == 0 ? QHeaderView::Stretch : QHeaderView::Interactive);
        if (column.width > 0) table_->setColumnWidth(at, column.width);
        if (column.choices) {
            const auto offered = [this, at] { return rows_.columns[static_cast<std::size_t>(at)].choices(*list_); };
            table_->setItemDelegateForColumn(at, new ChoiceDelegate(offered, table_));
        }
    }
    auto* none = new QLabel(rows_.none, this);
    none->setProperty("role", QStringLiteral("muted"));
    none->setWordWrap(true);
    none_ = none;
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(heading, 1);
    if (rows_.add) {
        add_ = new QPushButton(tr("Add a row"), this);
        add_->setAccessibleName(tr("Add a row to: %1").arg(rows_.title));
        remove_ = new QPushButton(tr("Remove the row"), this);
        remove_->setAccessibleName(tr("Remove a row from: %1").arg(rows_.title));
        head->addWidget(add_);
        head->addWidget(remove_);
        connect(add_, &QPushButton::clicked, this, [this] {
            if (!add_row()) return;
            const int last = table_->rowCount() - 1;
            int lacking = 0;  // what a row that was begun lacks
            while (begun_ && lacking + 1 < table_->columnCount() && !table_->item(last, lacking)->text().isEmpty())
                ++lacking;
            table_->setCurrentCell(last, lacking);
            table_->edit(table_->currentIndex());
        });
        connect(remove_, &QPushButton::clicked, this, [this] { remove_row(table_->currentRow()); });
        connect(table_, &QTableWidget::itemSelectionChanged, this,
                [this] { remove_->setEnabled(editable_ && table_->currentRow() >= 0); });
    }
    column->addLayout(head);
    lack_ = new QLabel(this);
    lack_->setProperty("role", QStringLiteral("caution"));
    lack_->setWordWrap(true);
    lack_->hide();
    column->addWidget(none_);
    column->addWidget(table_);
    column->addWidget(lack_);
    connect(table_, &QTableWidget::cellChanged, this, &TermsTable::take_cell);
}

void TermsTable::show_list(const parts::PriceList& list, bool editable) {
    list_ = &list;
    editable_ = editable;
    begun_.reset();
    fill();
}

bool TermsTable::is_begun(int row) const {
    return begun_ && row == rows_.count(*list_);
}

const parts::PriceList& TermsTable::list_of(int row) const {
    return is_begun(row) ? *begun_ : *list_;
}

QString TermsTable::unfinished() const {
    return begun_ ? rows_.lacks(*begun_, rows_.count(*begun_) - 1) : QString();
}

void TermsTable::fill() {
    filling_ = true;
    const int row_was = table_->currentRow();
    const int column_was = table_->currentColumn();
    const int rows = rows_.count(*list_) + (begun_ ? 1 : 0);
    table_->setRowCount(rows);
    for (int row = 0; row < rows; ++row) {
        for (int column = 0; column < table_->columnCount(); ++column) {
            const TermsColumn& kind = rows_.columns[static_cast<std::size_t>(column)];
            const QString text = rows_.text(list_of(row), row, column);
            auto* item = new QTableWidgetItem(text);
            if (!editable_) item->setFlags(item->flags() & ~Qt::ItemIsEditable);
            if (kind.figure) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            item->setToolTip(text);
            table_->setItem(row, column, item);
        }
    }
    if (row_was >= 0 && row_was < rows) table_->setCurrentCell(row_was, column_was);
    int height = table_->horizontalHeader()->sizeHint().height() + 2 * table_->frameWidth();
    for (int row = 0; row < rows; ++row)
        height += table_->rowHeight(row);
    table_->setFixedHeight(height + 4);
    table_->setVisible(rows > 0);
    none_->setVisible(rows == 0);
    lack_->setText(unfinished());
    lack_->setVisible(begun_.has_value());
    if (add_ != nullptr) {
        add_->setEnabled(editable_ && !begun_);
        remove_->setEnabled(editable_ && table_->currentRow() >= 0);
    }
    filling_ = false;
}

void TermsTable::take_cell(int row, int column) {
    if (filling_ || !editable_ || list_ == nullptr || row < 0) return;
    if (row >= rows_.count(*list_) && !is_begun(row)) return;
    const QString entry = table_->item(row, column)->text().trimmed();
    if (entry != rows_.text(list_of(row), row, column)) {
        if (is_begun(row))
            take_begun(column, entry);
        else
            offer_([&](parts::PriceList& list) { return rows_.put(list, row, column, entry); });
    }
    // Later: the cell that was just entered must not go while its table still tells of it.
    QMetaObject::invokeMethod(
        this, [this] { fill(); }, Qt::QueuedConnection);
}

void TermsTable::take_begun(int column, const QString& entry) {
    const int last = rows_.count(*begun_) - 1;
    parts::PriceList wanted = *begun_;
    const QString wrong = rows_.put(wanted, last, column, entry);
    if (!wrong.isEmpty()) {
        offer_([&](parts::PriceList&) { return wrong; });  // who refuses says so
        return;
    }
    if (!rows_.lacks(wanted, last).isEmpty()) {
        begun_ = std::move(wanted);
        return;
    }
    // Whole: into the list as it is by now, cell by cell.
    const bool taken = offer_([&](parts::PriceList& list) {
        QString refused = rows_.add(list);
        const int row = rows_.count(list) - 1;
        for (int at = 0; at < table_->columnCount() && refused.isEmpty(); ++at)
            refused = rows_.put(list, row, at, rows_.text(wanted, last, at));
        return refused;
    });
    if (!taken) return;
    begun_.reset();
    Q_EMIT begun();
}

bool TermsTable::add_row() {
    if (!editable_ || !rows_.add || list_ == nullptr || begun_) return false;
    if (rows_.lacks) {
        parts::PriceList with = *list_;
        if (!rows_.add(with).isEmpty()) return false;
        begun_ = std::move(with);
        fill();
        Q_EMIT begun();
        return true;
    }
    const bool taken = offer_([this](parts::PriceList& list) { return rows_.add(list); });
    if (taken) fill();
    return taken;
}

bool TermsTable::remove_row(int row) {
    if (!editable_ || !rows_.remove || list_ == nullptr || row < 0) return false;
    if (is_begun(row)) {
        begun_.reset();
        fill();
        Q_EMIT begun();
        return true;
    }
    if (row >= rows_.count(*list_)) return false;
    const bool taken = offer_([&](parts::PriceList& list) {
        rows_.remove(list, row);
        return QString();
    });
    if (taken) fill();
    return taken;
}

}  // namespace wg::ui
