#include "ui/aftercare/quiet_table.h"

#include <QHeaderView>

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
    table->setWordWrap(true);
    table->setTabKeyNavigation(false);
    table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->verticalHeader()->hide();
    table->verticalHeader()->setMinimumSectionSize(row_px);
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->horizontalHeader()->setHighlightSections(false);
    return table;
}

QTableWidgetItem* put_cell(QTableWidget& table, int row, int column, const QString& text, bool figure) {
    auto* item = new QTableWidgetItem(text);
    item->setToolTip(text);
    if (figure) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
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
