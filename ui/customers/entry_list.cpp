#include "ui/customers/entry_list.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/common/plain_table.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int entry_row_px = 38;
constexpr int rows_shown = 2;
constexpr int text_margin_px = 12;

/// Says in the free row what it is for, and in the cell that is being written in what it holds.
class EntryDelegate : public QStyledItemDelegate {
   public:
    EntryDelegate(EntryList& list, const EntryList::Words& words, int first_text)
        : QStyledItemDelegate(&list), list_(list), words_(words), first_text_(first_text) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        QStyledItemDelegate::paint(painter, option, index);
        if (index.column() != first_text_ || index.row() + 1 != index.model()->rowCount() ||
            !list_.row_is_empty(index.row()))
            return;
        painter->save();
        painter->setPen(current_theme().muted);
        painter->setFont(option.font);
        painter->drawText(option.rect.adjusted(text_margin_px, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, words_.hint);
        painter->restore();
    }

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override {
        QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
        if (auto* line = qobject_cast<QLineEdit*>(editor)) line->setPlaceholderText(words_.heads.value(index.column()));
        return editor;
    }

   private:
    EntryList& list_;
    EntryList::Words words_;
    int first_text_;
};

}  // namespace

EntryList::EntryList(const Words& words, int first_text, QWidget* parent) : QWidget(parent), first_text_(first_text) {
    auto* title = new QLabel(words.title, this);
    title->setProperty("role", QStringLiteral("title"));
    add_ = new QPushButton(words.add, this);
    remove_ = new QPushButton(words.remove, this);
    for (QPushButton* button : {add_, remove_})
        button->setProperty("role", QStringLiteral("link"));
    table_ = new QTableWidget(0, static_cast<int>(words.heads.size()), this);
    make_plain(*table_, entry_row_px);
    table_->setSelectionBehavior(QAbstractItemView::SelectItems);
    table_->setHorizontalHeaderLabels(words.heads);
    table_->setAccessibleName(words.title);
    table_->setEditTriggers(QAbstractItemView::AllEditTriggers);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table_->setMinimumHeight((rows_shown + 1) * entry_row_px + 4);
    table_->setItemDelegate(new EntryDelegate(*this, words, first_text));
    auto* head = new QHBoxLayout;
    head->setSpacing(8);
    head->addWidget(title, 1);
    head->addWidget(add_);
    head->addWidget(remove_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    column->addLayout(head);
    column->addWidget(table_);
    connect(add_, &QPushButton::clicked, this, &EntryList::begin_entry);
    connect(remove_, &QPushButton::clicked, this, &EntryList::remove_row);
    connect(table_, &QTableWidget::currentCellChanged, this, &EntryList::refresh);
    connect(table_, &QTableWidget::cellChanged, this, &EntryList::refresh);
    refresh();
}

void EntryList::begin_entry() {
    const int row = table_->rowCount() - 1;
    if (row < 0) return;
    table_->setFocus(Qt::OtherFocusReason);
    table_->setCurrentCell(row, first_text_);
    table_->scrollToItem(table_->item(row, first_text_));
    if (!table_->isPersistentEditorOpen(table_->item(row, first_text_)))
        table_->editItem(table_->item(row, first_text_));
}

bool EntryList::row_is_empty(int row) const {
    for (int column = 0; column < table_->columnCount(); ++column) {
        const QTableWidgetItem* item = table_->item(row, column);
        if (item != nullptr && !item->text().trimmed().isEmpty()) return false;
    }
    return true;
}

void EntryList::remove_row() {
    const int row = table_->currentRow();
    if (row < 0 || row + 1 >= table_->rowCount()) return;
    table_->removeRow(row);
    refresh();
    Q_EMIT row_removed();
}

void EntryList::refresh() {
    // The free row cannot be taken away: it is where the next one is written.
    const int row = table_->currentRow();
    remove_->setEnabled(row >= 0 && row + 1 < table_->rowCount());
}

}  // namespace wg::ui
