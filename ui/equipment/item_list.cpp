#include "ui/equipment/item_list.h"

#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/common/wrapped_cells.h"
#include "ui/drawing/fields.h"
#include "ui/equipment/item_fields.h"

namespace wg::ui {
namespace {

constexpr int key_role = Qt::UserRole;
constexpr int name_column = 0, kind_column = 1, source_column = 2, approved_column = 3;
constexpr int list_row_px = 40;

}  // namespace

ItemList::ItemList(QWidget* parent) : QWidget(parent) {
    search_ = new QLineEdit(this);
    search_->setProperty("role", QStringLiteral("search"));
    search_->setPlaceholderText(tr("Search by maker, name or id"));
    search_->setAccessibleName(tr("Search equipment"));
    search_->setClearButtonEnabled(true);
    kind_ = new CalmCombo(this);
    kind_->setAccessibleName(tr("Kind"));
    kind_->addItem(tr("All kinds"), -1);
    for (const store::ItemKind kind : {store::ItemKind::collector, store::ItemKind::block, store::ItemKind::cylinder,
                                       store::ItemKind::fixing_method})
        kind_->addItem(words_of(kind), static_cast<int>(kind));
    table_ = new QTableWidget(0, 4, this);
    table_->setHorizontalHeaderLabels({tr("Name"), tr("Kind"), tr("Source"), tr("Approved")});
    table_->setAccessibleName(tr("Equipment"));
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    table_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setMinimumSectionSize(list_row_px);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table_->horizontalHeader()->setHighlightSections(false);
    table_->horizontalHeader()->setSectionResizeMode(name_column, QHeaderView::Stretch);
    table_->setColumnWidth(kind_column, 84);
    table_->setColumnWidth(source_column, 84);
    table_->setColumnWidth(approved_column, 84);
    WrappedCells::use_in(*table_);
    count_ = new QLabel(this);
    count_->setProperty("role", QStringLiteral("muted"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(search_);
    column->addWidget(kind_);
    column->addWidget(table_, 1);
    column->addWidget(count_);
    connect(search_, &QLineEdit::textChanged, this, [this] { fill(selected()); });
    connect(kind_, &QComboBox::activated, this, [this] { fill(selected()); });
    connect(table_, &QTableWidget::currentCellChanged, this, [this](int row, int, int before) {
        if (!filling_ && row >= 0 && row != before) Q_EMIT chosen(selected());
    });
}

bool ItemList::matches(const ItemEntry& entry) const {
    const int kind = kind_->currentData().toInt();
    if (kind >= 0 && kind != static_cast<int>(entry.kind)) return false;
    const QString text = QStringList{entry.maker, entry.name, entry.id, words_of(entry.kind)}.join(QLatin1Char(' '));
    const QStringList words = search_->text().simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    return std::all_of(words.begin(), words.end(),
                       [&text](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

QString ItemList::source_words(const ItemEntry& entry) {
    if (entry.unsaved) return tr("not saved");
    if (entry.withdrawn) return tr("firm, withdrawn");
    if (entry.came) return tr("came with a job");
    const QString whose = entry.program ? tr("program") : tr("firm");
    return entry.invented ? tr("%1, invented").arg(whose) : whose;
}

void ItemList::show_entries(std::vector<ItemEntry> entries, const QString& key) {
    entries_ = std::move(entries);
    fill(key, true);
}

void ItemList::fill(const QString& key, bool keep) {
    const QString before = selected();
    filling_ = true;
    table_->setRowCount(0);
    for (const ItemEntry& entry : entries_) {
        if (!matches(entry) && !(keep && entry.key == key)) continue;
        const int row = table_->rowCount();
        table_->insertRow(row);
        const QString name = entry.maker.isEmpty() ? entry.name : QStringLiteral("%1\n%2").arg(entry.name, entry.maker);
        const QString cells[] = {name.isEmpty() ? tr("without a name") : name, short_words_of(entry.kind),
                                 source_words(entry), entry.approved_by};
        for (int column = 0; column < 4; ++column) {
            auto* item = new QTableWidgetItem(cells[column]);
            item->setToolTip(column == name_column ? QStringLiteral("%1 (%2)").arg(cells[column], entry.id)
                                                   : cells[column]);
            table_->setItem(row, column, item);
        }
        table_->item(row, name_column)->setData(key_role, entry.key);
    }
    const int shown = table_->rowCount();
    const int all = static_cast<int>(entries_.size());
    count_->setText(shown == all ? tr("%1 items").arg(number(all))
                                 : tr("%1 of %2 items").arg(number(shown), number(all)));
    select(key);
    filling_ = false;
    if (selected() != before) Q_EMIT chosen(selected());
}

QString ItemList::selected() const {
    const QTableWidgetItem* item = table_->item(table_->currentRow(), name_column);
    return item == nullptr ? QString() : item->data(key_role).toString();
}

void ItemList::select(const QString& key) {
    for (int row = 0; row < table_->rowCount(); ++row) {
        if (table_->item(row, name_column)->data(key_role).toString() != key) continue;
        table_->setCurrentCell(row, name_column);
        return;
    }
    if (table_->rowCount() > 0) table_->setCurrentCell(0, name_column);
}

}  // namespace wg::ui
