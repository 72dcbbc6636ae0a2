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
constexpr int sqlite_busy = 5;
constexpr int sqlite_locked = 6;
constexpr int sqlite_readonly = 8;
constexpr int sqlite_corrupt = 11;
constexpr int sqlite_full = 13;
constexpr int sqlite_not_a_database = 26;

const char* remedy_for(int code) {
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

}  // namespace

Database::Database(std::string path)
    : path_(std::move(path)), connection_("wg-store-" + QUuid::createUuid().toString(QUuid::WithoutBraces)) {}

Database::~Database() {
    database_.close();
    database_ = QSqlDatabase();  // removeDatabase wants no handle to be left
    QSqlDatabase::removeDatabase(connection_);
}

Result<std::unique_ptr<Database>> Database::open(const std::string& path, Access access) {
    if (!QSqlDatabase::isDriverAvailable("QSQLITE")) {
        return Problem{path, "Qt's SQLite driver is not installed", "Install the package libqt6sql6-sqlite"};
    }
    std::unique_ptr<Database> opened(new Database(path));
    opened->database_ = QSqlDatabase::addDatabase("QSQLITE", opened->connection_);
    opened->database_.setDatabaseName(to_qt(path));
    QString options = "QSQLITE_BUSY_TIMEOUT=" + QString::number(busy_timeout_ms);
    if (access == Access::read_only) options += ";QSQLITE_OPEN_READONLY";
    opened->database_.setConnectOptions(options);
    if (!opened->database_.open()) return opened->problem(opened->database_.lastError());
    return opened;
}

Result<QSqlQuery> Database::query(const QString& sql, const QVariantList& values) const {
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
    return QFileInfo(to_qt(path_)).fileName().toStdString();
}

Problem Database::problem(const QSqlError& error) const {
    const int code = error.nativeErrorCode().toInt() & 0xff;  // the low byte of an extended code is the primary one
    const QString text = error.databaseText().isEmpty() ? error.driverText() : error.databaseText();
    return {name(), text.toStdString(), remedy_for(code)};
}

Transaction::~Transaction() {
    // Nothing can be done about a failed rollback here: SQLite rolls back at the next opening.
    if (open_) static_cast<void>(database_.run("ROLLBACK"));
}

std::optional<Problem> Transaction::begin() {
    std::optional<Problem> problem = database_.run("BEGIN IMMEDIATE");
    open_ = !problem;
    return problem;
}

std::optional<Problem> Transaction::commit() {
    std::optional<Problem> problem = database_.run("COMMIT");
    if (!problem) open_ = false;
    return problem;
}

}  // namespace wg::store
