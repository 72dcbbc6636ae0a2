#include "core/store/hashed_rows.h"

#include <QByteArray>
#include <QVariant>

#include "core/quantity/sha256.h"

namespace wg::store {
namespace {

bool has_its_hash(const std::string& bytes, const QSqlQuery& row) {
    return sha256_hex(bytes) == row.value(0).toString().toStdString();
}

}  // namespace

std::string bytes_of(const QVariant& content) {
    const QByteArray bytes = content.toByteArray();
    return {bytes.constData(), static_cast<std::size_t>(bytes.size())};
}

Result<std::string> hashed_content(const Database& database, const QString& sql, const QVariantList& values,
                                   const std::string& what, const Problem& missing) {
    Result<QSqlQuery> found = database.query(sql, values);
    if (!found) return found.problems();
    if (!found.value().next()) return missing;
    std::string bytes = bytes_of(found.value().value(1));
    if (!has_its_hash(bytes, found.value()))
        return Problem{what, "is damaged: its content no longer has its hash", "Go back to the last backup"};
    return bytes;
}

Result<std::vector<std::string>> rows_without_hash(const Database& database, const QString& sql,
                                                   const std::function<std::string(const QSqlQuery&)>& name) {
    Result<QSqlQuery> found = database.query(sql, {}, Fetch::row_by_row);
    if (!found) return found.problems();
    std::vector<std::string> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        if (!has_its_hash(bytes_of(row.value(1)), row)) out.push_back(name(row));
    }
    return out;
}

Result<std::vector<std::string>> rows_without_hash(const Database& database, const QString& sql) {
    return rows_without_hash(database, sql, [](const QSqlQuery& row) { return row.value(2).toString().toStdString(); });
}

}  // namespace wg::store
