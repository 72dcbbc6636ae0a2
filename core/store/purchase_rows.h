#pragma once
// Lines of purchase lists with what came of them, for the books that reckon with them.

#include <QString>
#include <QVariantList>
#include <string>
#include <vector>

#include "core/parts/stock_orders.h"
#include "core/store/database.h"

namespace wg::store {

struct PurchaseRow {
    std::string paper_id;
    parts::ListedLine listed;
};

/// By list, oldest first, and position. `where` is of the tables `purchase_line l` and `purchase_paper p`.
[[nodiscard]] Result<std::vector<PurchaseRow>> purchase_lines(const Database& database, const QString& where,
                                                              const QVariantList& values);

[[nodiscard]] Problem lost_purchase(const char* what, const char* remedy);

}  // namespace wg::store
