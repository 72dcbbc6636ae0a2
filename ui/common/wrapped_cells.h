#pragma once
// Rows of a table as high as their wrapped text needs: Qt measures without the padding of the style sheet, and not
// again when a column changes its width, and so cuts the last line.

#include <QStyledItemDelegate>

class QTableView;

namespace wg::ui {

class WrappedCells : public QStyledItemDelegate {
    Q_OBJECT
   public:
    /// Takes over the cells of a table that has its model, and keeps its rows as high as they need.
    static void use_in(QTableView& table);
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

   private:
    explicit WrappedCells(QTableView& table);
    void fit_rows_soon();

    QTableView* table_ = nullptr;
    bool waiting_ = false;
};

}  // namespace wg::ui
