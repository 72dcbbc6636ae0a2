#include "core/store/database.h"

#include <QFileInfo>
#include <QSqlError>
#include <QUuid>

#include "core/store/text.h"

namespace wg::store {
namespace {

// How long a write waits for another program's write. Saves take milliseconds; a backup of a large file takes longer.
constexpr int busy_timeout_ms = 5000;

// Primary result codes of SQLite (sqlite3.h).
constexpr int sqlite_error = 1;
constexpr int sqlite_busy = 5;
constexpr int sqlite_locked = 6;
constexpr int sqlite_readonly = 8;
constexpr int sqlite_corrupt = 11;
constexpr int sqlite_full = 13;
constexpr int sqlite_not_a_database = 26;

constexpr const char* not_whole =
    "The store is not whole, or was made by another version of the program: look at it with 'warmgable store check', "
    "and restore a backup if that finds faults";

/// SQLite has the code of any wrong statement for it.
bool tells_of_lacking_parts(const QString& text) {
    return text.startsWith(QStringLiteral("no such table")) || text.startsWith(QStringLiteral("no such column")) ||
           text.contains(QStringLiteral("has no column named"));
}

const char* remedy_for(int code, const QString& text) {
    if (code == sqlite_error && tells_of_lacking_parts(text)) return not_whole;
    switch (code) {
        case sqlite_busy:
        case sqlite_locked: return "Another window is writing; try again in a moment";
        case sqlite_readonly: return "Check that the file and its folder may be written to";
        case sqlite_corrupt:
        case sqlite_not_a_database: return "The file is damaged; go back to the last backup";
        case sqlite_full: return "Make room on the disk";
        default: return "Check the disk and the file's permissions";
    }
}

// SQLSTATE (PostgreSQL, appendix A). None: the server could not be reached at all.
const char* remedy_for_state(const QString& state) {
    if (state.isEmpty() || state.startsWith("08") || state.startsWith("57P"))
        return "Check that the server runs, the network, and the settings of the connection";
    if (state == "55P03" || state == "57014") return "Another seat is writing; try again in a moment";
    if (state == "42501") return "Ask whoever looks after the server for the right to do this";
    if (state == "42P01" || state == "42703") return not_whole;  // no such table, no such column
    if (state == "53100" || state == "53200") return "Make room on the server's disk";
    if (state.startsWith("XX")) return "The database is damaged; go back to the last backup";
    return "Ask whoever looks after the server";
}

}  // namespace

Database::Database(std::string path)
    : path_(std::move(path)), id_("wg-store-" + QUuid::createUuid().toString(QUuid::WithoutBraces)) {}

Database::~Database() {
    database_.close();
    database_ = QSqlDatabase();  // removeDatabase wants no handle to be left
    QSqlDatabase::removeDatabase(id_);
}

Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access) {
    if (!QSqlDatabase::isDriverAvailable("QSQLITE")) {
        return Problem{path, "Qt's SQLite driver is not installed", "Install the package libqt6sql6-sqlite"};
    }
    std::unique_ptr<Database> opened(new Database(path));
    opened->database_ = QSqlDatabase::addDatabase("QSQLITE", opened->id_);
    opened->database_.setDatabaseName(to_qt(path));
    QString options = "QSQLITE_BUSY_TIMEOUT=" + QString::number(busy_timeout_ms);
    if (access == Access::read_only) options += ";QSQLITE_OPEN_READONLY";
    opened->database_.setConnectOptions(options);
    if (!opened->database_.open()) return opened->problem(opened->database_.lastError());
    return opened;
}

Result<QSqlQuery> Database::query(const QString& sql, const QVariantList& values, Fetch fetch) const {
    if (connection_) return query_server(sql, values, fetch);
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.prepare(sql)) return problem(query.lastError());
    for (const QVariant& value : values)
        query.addBindValue(value);
    if (!query.exec()) return problem(query.lastError());
    return query;
}

std::optional<Problem> Database::run(const QString& sql, const QVariantList& values) const {
    const Result<QSqlQuery> done = query(sql, values);
    if (!done) return done.problems().front();
    return std::nullopt;
}

Result<QVariant> Database::value(const QString& sql, const QVariantList& values) const {
    Result<QSqlQuery> done = query(sql, values);
    if (!done) return done.problems();
    return done.value().next() ? done.value().value(0) : QVariant();
}

std::string Database::name() const {
    return connection_ ? connection_->name() : QFileInfo(to_qt(path_)).fileName().toStdString();
}

Problem Database::problem(const QSqlError& error) const {
    const QString text = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    if (connection_) {
        const QString first = text.section('\n', 0, 0).remove(QStringLiteral("ERROR:")).trimmed();
        return {name(), first.toStdString(), remedy_for_state(error.nativeErrorCode())};
    }
    const int code = error.nativeErrorCode().toInt() & 0xff;  // the low byte of an extended code is the primary one
    return {name(), text.toStdString(), remedy_for(code, text)};
}

Transaction::~Transaction() {
    if (!open_) return;
    // Nothing can be done about a failed rollback here: the database rolls back by itself when the connection goes.
    static_cast<void>(database_.run("ROLLBACK"));
    database_.in_transaction_ = false;
}

std::optional<Problem> Transaction::begin_with(const char* sql) {
    std::optional<Problem> problem = database_.run(sql);
    open_ = !problem;
    database_.in_transaction_ = open_;
    return problem;
}

std::optional<Problem> Transaction::begin(const char* first) {
    if (std::optional<Problem> problem = begin_with(database_.words().begin_write)) return problem;
    for (const char* statement : {first, database_.words().take_turn}) {
        if (*statement == '\0') continue;
        if (std::optional<Problem> problem = database_.run(statement)) return problem;
    }
    return std::nullopt;
}

std::optional<Problem> Transaction::begin_reading() {
    return begin_with(database_.words().begin_read);
}

std::optional<Problem> Transaction::commit() {
    std::optional<Problem> problem = database_.run("COMMIT");
    if (problem) return problem;
    open_ = false;
    database_.in_transaction_ = false;
    return std::nullopt;
}

}  // namespace wg::store
