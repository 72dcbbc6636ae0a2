#pragma once
// What a table of prices would do to a list, line by line: new, changed and gone items, or the problems.

#include <QAbstractTableModel>
#include <vector>

#include "core/parts/price_import.h"

namespace wg::ui {

/// Items that stay the same are counted, not shown.
class ImportChangesModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column {
        column_line,
        column_what,
        column_id,
        column_item,
        column_old,
        column_new,
        column_percent,
        column_also,
        column_count
    };
    explicit ImportChangesModel(QObject* parent = nullptr);

    /// Both must outlive the next call, or the model.
    void show_preview(const parts::ImportPreview* preview, const parts::PriceList* into);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    /// "supplier's price": a field in words.
    [[nodiscard]] static QString field_words(parts::ImportField field);

   private:
    [[nodiscard]] QString taken_text(const parts::ImportRow& row, int column) const;
    [[nodiscard]] QString gone_text(const parts::PriceItem& item, int column) const;
    [[nodiscard]] QString other_changes(const parts::ImportRow& row) const;

    const parts::ImportPreview* preview_ = nullptr;
    const parts::PriceList* into_ = nullptr;
    std::vector<std::size_t> shown_;  ///< rows of the preview; after them the items that are gone
};

class ImportProblemsModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column { column_where, column_what, column_remedy, column_count };
    explicit ImportProblemsModel(QObject* parent = nullptr);
    void show_problems(std::vector<Problem> problems);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

   private:
    std::vector<Problem> problems_;
};

}  // namespace wg::ui
