#pragma once
// What a purchase list would order of whom, before it takes a number.

#include <QDialog>
#include <vector>

#include "core/quote/purchase.h"

class QCheckBox;
class QTableWidget;

namespace wg::ui {

class PurchaseDialog : public QDialog {
    Q_OBJECT
   public:
    PurchaseDialog(const std::vector<quote::PurchaseGroup>& groups, const QString& currency, QWidget* parent = nullptr);
    [[nodiscard]] bool with_prices() const;
    [[nodiscard]] QTableWidget* table() const { return table_; }

   private:
    QTableWidget* table_ = nullptr;
    QCheckBox* prices_ = nullptr;
};

}  // namespace wg::ui
