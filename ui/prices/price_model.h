#pragma once
// The items of a price list as a table that is edited in place.

#include <QAbstractTableModel>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/parts/prices.h"

namespace wg::ui {

class PriceModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column {
        column_text,
        column_id,
        column_unit,
        column_supplier_price,
        column_group,
        column_cost,
        column_margin,
        column_price,
        column_many,
        column_pack,
        column_waste,
        column_supplier,
        column_number,
        column_tax,
        column_stock,
        column_count
    };
    explicit PriceModel(QObject* parent = nullptr);

    /// Takes a list to show; `editable`: cells can be changed.
    void set_list(parts::PriceList list, bool editable);
    [[nodiscard]] const parts::PriceList& list() const { return list_; }
    /// Takes what stands beside the items; costs follow the discount groups.
    void set_terms(const parts::PriceList& terms);
    /// Shows items in which every word occurs: in text, id, supplier or the supplier's number.
    void set_words(const QString& words);
    /// A new item at the end, shown whatever the words are; its row.
    int add_item();
    void remove_row(int row);
    /// Index into the list's items; nullopt: no such row.
    [[nodiscard]] std::optional<std::size_t> item_of(int row) const;
    [[nodiscard]] int row_of(std::size_t item) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    /// False, and `refused` says why in words, when the entry cannot stand.
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

   Q_SIGNALS:
    void refused(const QString& text);
    void edited();

   private:
    [[nodiscard]] QString text_at(const parts::PriceItem& item, int column) const;
    /// What is wrong with the entry; empty: it is in the item now.
    [[nodiscard]] QString enter(parts::PriceItem& item, int column, const QString& text) const;
    [[nodiscard]] QString enter_buying(parts::PriceItem& item, int column, const QString& text) const;
    [[nodiscard]] QString enter_text(parts::PriceItem& item, int column, const QString& text) const;
    void find();

    parts::PriceList list_;
    bool editable_ = false;
    QStringList words_;
    std::vector<std::size_t> shown_;  ///< items, in the list's order
};

}  // namespace wg::ui
