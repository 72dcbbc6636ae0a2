#pragma once
// The table of declared values that people fill in from a data sheet.

#include <QAbstractTableModel>
#include <QStyledItemDelegate>
#include <vector>

#include "core/rating/declared_file.h"

namespace wg::ui {

/// "Heat-up time", as the column names it.
[[nodiscard]] QString quantity_words(rating::Quantity quantity);
/// "Heat-up time, air 7 °C": with its conditions, short.
[[nodiscard]] QString declared_words(const rating::Declared& declared);

class DeclaredModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column { what, value, tolerance, air, cycle, water, column_count };

    explicit DeclaredModel(QObject* parent = nullptr);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// Text as people type it; false, and refused() with the reason, when it is no such figure.
    bool setData(const QModelIndex& index, const QVariant& text, int role) override;

    /// Lines for the values that sheets usually have, without figures yet.
    void set_usual();
    void set_values(std::vector<rating::Declared> values);
    /// A further line like the one given (-1: the first usual one), without a figure. Returns its row.
    int add_like(int row);
    void remove(int row);
    /// Lines with a figure; a line still without one counts for nothing.
    [[nodiscard]] std::vector<rating::Declared> values() const;
    [[nodiscard]] const rating::Declared& at(int row) const { return rows_[static_cast<std::size_t>(row)]; }
    /// What stands in the way of a fit, in words; empty: nothing.
    [[nodiscard]] QString trouble() const;

   Q_SIGNALS:
    void refused(const QString& why);
    void edited();

   private:
    [[nodiscard]] QString text_of(const rating::Declared& declared, int column) const;
    [[nodiscard]] QString change(rating::Declared& declared, int column, const QVariant& entered) const;

    std::vector<rating::Declared> rows_;  ///< value 0: none entered yet
};

/// Choices for quantity and cycle, text for the rest.
class DeclaredDelegate : public QStyledItemDelegate {
    Q_OBJECT
   public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                        const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;
};

}  // namespace wg::ui
