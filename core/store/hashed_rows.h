#pragma once
// Contents that are stored beside their SHA-256: given out only while they have it, and found when they lost it.

#include <QSqlQuery>
#include <QString>
#include <QVariantList>
#include <functional>
#include <string>
#include <vector>

#include "core/store/database.h"

namespace wg::store {

/// Bytes of a column, or a text's in UTF-8.
[[nodiscard]] std::string bytes_of(const QVariant& content);

/// Content of the one row of a statement whose first columns are `sha256, content`. No row is the problem `missing`;
/// a content without its hash is a problem of `what`.
[[nodiscard]] Result<std::string> hashed_content(const Database& database, const QString& sql,
                                                 const QVariantList& values, const std::string& what,
                                                 const Problem& missing);

/// What the rows are called (`name`, for lists of `check`) whose content has lost its hash. The statement's first
/// columns are `sha256, content`; `name` reads the ones after them.
[[nodiscard]] Result<std::vector<std::string>> rows_without_hash(
    const Database& database, const QString& sql, const std::function<std::string(const QSqlQuery&)>& name);
/// The third column is the name.
[[nodiscard]] Result<std::vector<std::string>> rows_without_hash(const Database& database, const QString& sql);

}  // namespace wg::store
