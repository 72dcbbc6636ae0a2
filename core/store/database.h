#pragma once
// One connection to one SQLite file: the few calls the store needs, with problems instead of Qt's error objects.

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariantList>
#include <memory>
#include <optional>
#include <string>

#include "core/quantity/result.h"

namespace wg::store {

enum class Access { read_only, read_write };

/// Closes the connection and gives its name back when it goes. Every query has to be gone before.
class Database {
   public:
    [[nodiscard]] static Result<std::unique_ptr<Database>> open(const std::string& path, Access access);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /// Runs one statement; the query stands before its first row.
    [[nodiscard]] Result<QSqlQuery> query(const QString& sql, const QVariantList& values = {}) const;
    /// Runs one statement for its effect.
    [[nodiscard]] std::optional<Problem> run(const QString& sql, const QVariantList& values = {}) const;
    /// First column of the first row; an invalid QVariant when there is no row.
    [[nodiscard]] Result<QVariant> value(const QString& sql, const QVariantList& values = {}) const;

    [[nodiscard]] const std::string& path() const noexcept { return path_; }
    /// The file's name for messages.
    [[nodiscard]] std::string name() const;

   private:
    explicit Database(std::string path);
    [[nodiscard]] Problem problem(const QSqlError& error) const;

    std::string path_;
    QString connection_;
    QSqlDatabase database_;
};

/// A write transaction: taken at once (so that nobody else writes in between), undone unless committed.
class Transaction {
   public:
    explicit Transaction(const Database& database) : database_(database) {}
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    [[nodiscard]] std::optional<Problem> begin();
    [[nodiscard]] std::optional<Problem> commit();

   private:
    const Database& database_;
    bool open_ = false;
};

}  // namespace wg::store
