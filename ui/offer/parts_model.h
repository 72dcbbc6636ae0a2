#pragma once
// The parts list as a table: what, how much, price, and why the line is there.

#include <QAbstractTableModel>
#include <vector>

#include "core/parts/parts.h"

namespace wg::ui {

class PartsModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column { column_text, column_needed, column_to_buy, column_price, column_net, column_why, column_count };

    using QAbstractTableModel::QAbstractTableModel;
    void set_lines(std::vector<parts::Line> lines, const QString& currency);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

   private:
    std::vector<parts::Line> lines_;
    QString currency_;
};

}  // namespace wg::ui
