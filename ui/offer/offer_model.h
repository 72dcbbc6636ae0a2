#pragma once
// What is offered as a table: the parts list with the office's changes, its own lines, options and subsidies.

#include <QAbstractTableModel>
#include <vector>

#include "core/plan/plan.h"

namespace wg::ui {

/// A line of the table.
struct OfferRow {
    enum class Kind { planned, changed, own, option, subsidy };
    Kind kind = Kind::planned;
    quote::OfferedLine line;
    bool ticked = false;  ///< an option that the client wants
};

/// Of a plan without a price the bare parts list.
[[nodiscard]] std::vector<OfferRow> offer_rows(const plan::Plan& plan);

class OfferModel : public QAbstractTableModel {
    Q_OBJECT
   public:
    enum Column {
        column_text,
        column_needed,
        column_to_buy,
        column_price,
        column_net,
        column_how,
        column_why,
        column_count
    };

    using QAbstractTableModel::QAbstractTableModel;
    void set_rows(std::vector<OfferRow> rows, const QString& currency);
    [[nodiscard]] const OfferRow* row(int index) const;
    /// The row of this change or own line, or of the parts list's item; -1: none.
    [[nodiscard]] int row_of(const std::string& element_id, const std::string& item_id) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

   private:
    std::vector<OfferRow> rows_;
    QString currency_;
};

}  // namespace wg::ui
