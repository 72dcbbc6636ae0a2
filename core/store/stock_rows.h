#pragma once
// Rows of the book of stock, for the books that reckon with them.

#include <QString>
#include <QVariantList>
#include <string>
#include <vector>

#include "core/parts/stock.h"
#include "core/store/database.h"

namespace wg::store {

/// In the order of the book; `where` begins with WHERE or is empty.
[[nodiscard]] Result<std::vector<parts::StockMove>> stock_moves(const Database& database, const QString& where,
                                                                const QVariantList& values);
/// "?,?,?" and the values for it; 1,000 at most.
struct ItemsNamed {
    QString places;
    QVariantList values;
};
[[nodiscard]] Result<ItemsNamed> items_named(const std::vector<std::string>& item_ids);

}  // namespace wg::store
