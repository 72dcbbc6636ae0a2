#pragma once
// Editors of the table of values: a list where there is a choice; while somebody types, the range or what is wrong is
// told.

#include <QStyledItemDelegate>

namespace wg::ui {

class RuleEntry : public QStyledItemDelegate {
    Q_OBJECT
   public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;

   Q_SIGNALS:
    /// As typed; empty: the entry would be taken.
    void judged(const QString& problem) const;
};

}  // namespace wg::ui
