#include "ui/common/wrapped_cells.h"

#include <QHeaderView>
#include <QTableView>
#include <QTimer>
#include <algorithm>

namespace wg::ui {
namespace {

constexpr int cell_padding_px = 2 * 8;  // as in the style sheet
constexpr int cell_margin_px = 2 * 3;   // of the text within the cell
constexpr int rounding_px = 1;
constexpr int above_and_below_px = 2 * 4;
constexpr int very_high_px = 10000;

}  // namespace

WrappedCells::WrappedCells(QTableView& table) : QStyledItemDelegate(&table), table_(&table) {}

void WrappedCells::use_in(QTableView& table) {
    auto* cells = new WrappedCells(table);
    table.setItemDelegate(cells);
    table.setWordWrap(true);
    // Once after all of a change: with ResizeToContents every cell put in measures the whole table anew.
    table.verticalHeader()->setSectionResizeMode(QHeaderView::Interactive);
    table.verticalHeader()->setDefaultSectionSize(table.verticalHeader()->minimumSectionSize());
    const QAbstractItemModel* model = table.model();
    const auto soon = [cells] { cells->fit_rows_soon(); };
    QObject::connect(table.horizontalHeader(), &QHeaderView::sectionResized, cells, soon);
    QObject::connect(model, &QAbstractItemModel::dataChanged, cells, soon);
    QObject::connect(model, &QAbstractItemModel::rowsInserted, cells, soon);
    QObject::connect(model, &QAbstractItemModel::modelReset, cells, soon);
    QObject::connect(model, &QAbstractItemModel::layoutChanged, cells, soon);
}

void WrappedCells::fit_rows_soon() {
    if (waiting_) return;
    waiting_ = true;
    QTimer::singleShot(0, this, [this] {
        waiting_ = false;
        table_->resizeRowsToContents();
    });
}

QSize WrappedCells::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QSize hint = QStyledItemDelegate::sizeHint(option, index);
    const QString text = index.data(Qt::DisplayRole).toString();
    // A heading across all columns has one line.
    if (text.isEmpty() || table_->columnSpan(index.row(), index.column()) > 1) return hint;
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    int width = table_->columnWidth(index.column()) - cell_padding_px - cell_margin_px;
    if (cell.features.testFlag(QStyleOptionViewItem::HasDecoration)) width -= cell.decorationSize.width() + 4;
    if (cell.features.testFlag(QStyleOptionViewItem::HasCheckIndicator)) width -= 24;
    if (width <= 0) return hint;
    // A line that just fits its column needs no second one; where lines break, the style may break them a word earlier.
    const int longest = cell.fontMetrics.size(0, text).width();
    width += longest <= width + rounding_px ? rounding_px : -2 * rounding_px;
    const QRect whole = cell.fontMetrics.boundingRect(QRect(0, 0, width, very_high_px), Qt::TextWordWrap, text);
    hint.setHeight(std::max(hint.height(), whole.height() + above_and_below_px));
    return hint;
}

}  // namespace wg::ui
