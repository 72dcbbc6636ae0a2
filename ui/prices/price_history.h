#pragma once
// The versions of a price list: who saved which, when and why, and what changed from the one before.

#include <QDialog>
#include <string>
#include <vector>

#include "core/parts/prices.h"
#include "core/store/price_book.h"

class QTableWidget;

namespace wg::ui {

class PriceHistory : public QDialog {
    Q_OBJECT
   public:
    PriceHistory(store::Store& store, std::string list_id, QWidget* parent = nullptr);
    [[nodiscard]] QTableWidget* versions() const { return versions_; }
    [[nodiscard]] QTableWidget* changes() const { return changes_; }

   private:
    void show_changes();

    store::Store& store_;
    std::string list_id_;
    std::vector<store::PriceListVersion> rows_;
    QTableWidget* versions_ = nullptr;
    QTableWidget* changes_ = nullptr;
};

}  // namespace wg::ui
