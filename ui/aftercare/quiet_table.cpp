#include "ui/aftercare/quiet_table.h"

#include <QHeaderView>

#include "ui/common/wrapped_cells.h"

namespace wg::ui {
namespace {

constexpr int row_px = 36;

}  // namespace

QTableWidget* quiet_table(const QStringList& heads, QWidget* parent) {
    auto* table = new QTableWidget(parent);
    table->setColumnCount(static_cast<int>(heads.size()));
    table->setHorizontalHeaderLabels(heads);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setAlternatingRowColors(true);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->verticalHeader()->hide();
    table->verticalHeader()->setMinimumSectionSize(row_px);
    WrappedCells::use_in(*table);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

QTableWidgetItem* put_cell(QTableWidget& table, int row, int column, const QString& text, bool figure) {
    auto* item = new QTableWidgetItem(text);
    item->setToolTip(text);
    if (figure) {
        // Right under the head of their column.
        item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        if (QTableWidgetItem* head = table.horizontalHeaderItem(column))
            head->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
    }
    table.setItem(row, column, item);
    return item;
}

void fit_columns(QTableWidget& table, const std::vector<int>& columns, int most_px) {
    for (const int column : columns) {
        table.resizeColumnToContents(column);
        if (table.columnWidth(column) > most_px) table.setColumnWidth(column, most_px);
    }
}

}  // namespace wg::ui
