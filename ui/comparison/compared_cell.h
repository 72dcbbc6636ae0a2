#pragma once
// Paints one cell of the comparison: the figure right-aligned and heavier where it differs, its range below, and beside
// them the mark and word for the best and the signed difference.

#include <QStyledItemDelegate>

namespace wg::ui {

class ComparedCellDelegate : public QStyledItemDelegate {
    Q_OBJECT
   public:
    enum Role {
        small_print = Qt::UserRole + 1,
        signed_change,
        is_different,
        is_best,
        is_known,
    };
    using QStyledItemDelegate::QStyledItemDelegate;
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
};

}  // namespace wg::ui
