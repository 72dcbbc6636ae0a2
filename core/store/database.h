#pragma once
// One connection to one SQLite file or PostgreSQL database: the few calls the store needs, with problems instead of
// Qt's error objects.

#include <QDeadlineTimer>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QString>
#include <QVariantList>
#include <memory>
#include <optional>
#include <string>

#include "core/quantity/result.h"
#include "core/store/connection.h"
#include "core/store/dialect.h"

namespace wg::store {

enum class Access { read_only, read_write };
/// A server's answer comes whole, or row by row: then no other query may run before the last row was read.
enum class Fetch { whole, row_by_row };

/// Closes the connection and gives its name back when it goes. Every query has to be gone before.
class Database {
   public:
    [[nodiscard]] static Result<std::unique_ptr<Database>> open(const std::string& path, Access access);
    /// A connection that is lost later is made anew by the next statement outside a transaction.
    [[nodiscard]] static Result<std::unique_ptr<Database>> connect(const Connection& connection);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    /// Runs one statement; the query stands before its first row. Each ? is replaced by the next value.
    [[nodiscard]] Result<QSqlQuery> query(const QString& sql, const QVariantList& values = {},
                                          Fetch fetch = Fetch::whole) const;
    /// Runs one statement for its effect.
    [[nodiscard]] std::optional<Problem> run(const QString& sql, const QVariantList& values = {}) const;
    /// First column of the first row; an invalid QVariant when there is no row.
    [[nodiscard]] Result<QVariant> value(const QString& sql, const QVariantList& values = {}) const;

    [[nodiscard]] Dialect dialect() const noexcept { return connection_ ? Dialect::postgresql : Dialect::sqlite; }
    [[nodiscard]] const Wording& words() const { return wording(dialect()); }
    /// The file, or the server's address.
    [[nodiscard]] const std::string& path() const noexcept { return path_; }
    /// The file's or the database's name for messages.
    [[nodiscard]] std::string name() const;
    /// Nothing with a file.
    [[nodiscard]] const std::optional<Connection>& connection() const noexcept { return connection_; }

   private:
    friend class Transaction;
    explicit Database(std::string path);
    [[nodiscard]] Problem problem(const QSqlError& error) const;
    [[nodiscard]] std::optional<Problem> log_in() const;
    [[nodiscard]] Result<QString> filled(const QString& sql, const QVariantList& values) const;
    [[nodiscard]] Result<QSqlQuery> query_server(const QString& sql, const QVariantList& values, Fetch fetch) const;

    std::string path_;
    std::optional<Connection> connection_;
    QString id_;
    mutable QSqlDatabase database_;                ///< a handle; connecting again changes nothing that a caller sees
    mutable std::optional<Problem> out_of_reach_;  ///< what the last attempt came to that took its time
    mutable QDeadlineTimer rest_;                  ///< no other attempt before
    mutable bool in_transaction_ = false;  ///< then a lost connection is not made anew behind the transaction's back
};

/// A write transaction: taken at once (so that nobody else writes in between), undone unless committed.
class Transaction {
   public:
    explicit Transaction(const Database& database) : database_(database) {}
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    /// `first`: run before the turn to write is waited for.
    [[nodiscard]] std::optional<Problem> begin(const char* first = "");
    /// Reads only, all of one moment; ends with the object.
    [[nodiscard]] std::optional<Problem> begin_reading();
    [[nodiscard]] std::optional<Problem> commit();

   private:
    [[nodiscard]] std::optional<Problem> begin_with(const char* sql);

    const Database& database_;
    bool open_ = false;
};

}  // namespace wg::store
