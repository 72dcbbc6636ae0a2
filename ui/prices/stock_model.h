#pragma once
// Items and what of them is in stock, as a table to read.

#include <QAbstractTableModel>
#include <QStringList>
#include <vector>

#include "core/parts/prices.h"
#include "core/parts/stock_orders.h"

namespace wg::ui {

class StockModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column { column_text, column_id, column_level, column_on_order, column_free, column_counted, column_count };
    struct Row {
        std::string item_id;
        QString text;  ///< of the price list; empty: the list has no such item
        std::string unit;
        std::optional<std::int64_t> thousandths;  ///< none: it never moved
        std::string counted_at;
        std::int64_t on_order = 0;
        std::int64_t reserved = 0;
        QString orders;        ///< which lists the ordered is of
        QString reservations;  ///< which jobs the reserved is for
    };
    explicit StockModel(QObject* parent = nullptr) : QAbstractTableModel(parent) {}

    /// What moved or was ordered first, then the list's other items in its order, without services.
    void set(const std::vector<parts::PriceItem>& items, const std::vector<parts::ItemStanding>& standings);
    void set_words(const QString& words);
    [[nodiscard]] const Row* row_at(int row) const;
    /// -1: it is not shown.
    [[nodiscard]] int row_of(const std::string& item_id, const std::string& unit) const;
    /// Items of which more was taken than is known to have been there.
    [[nodiscard]] QStringList below_nothing() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

   private:
    void find();

    std::vector<Row> rows_;
    QStringList words_;
    std::vector<std::size_t> shown_;
};

}  // namespace wg::ui
