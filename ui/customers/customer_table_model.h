#pragma once
// The firm's customers as a table, fetched from the store page by page.

#include <QAbstractTableModel>
#include <string>
#include <vector>

#include "core/store/customers.h"

namespace wg::ui {

class CustomerTableModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column { number_column, name_column, town_column, phone_column, jobs_column, column_count };

    /// The store must outlive the model.
    explicit CustomerTableModel(store::Store& store, QObject* parent = nullptr);

    void set_query(const QString& query);  ///< empty: all
    void reload();
    [[nodiscard]] const store::CustomerRow* row(int row) const;
    [[nodiscard]] int row_of(const std::string& id) const;  ///< among the rows fetched; -1: none
    [[nodiscard]] int total() const { return total_; }      ///< that match; -1: not known
    [[nodiscard]] QString query() const { return query_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;

   Q_SIGNALS:
    void problem(const QString& text);

   private:
    store::Store& store_;
    QString query_;
    std::vector<store::CustomerRow> rows_;
    int total_ = 0;
    bool at_end_ = false;
};

}  // namespace wg::ui
