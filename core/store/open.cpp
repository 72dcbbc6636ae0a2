// Opening: look at the file without touching it, then bring it up to date.

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include "core/store/backup.h"
#include "core/store/database.h"
#include "core/store/migrations.h"
#include "core/store/open.h"
#include "core/store/search.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr const char* in_memory = ":memory:";

// Files up to this size are read through before they are opened (well under a second). Larger ones are left to
// the backup of the day, which checks before it copies.
constexpr qint64 check_at_open_bytes = qint64{64} * 1024 * 1024;

// SQLite file format, section 1.3: header of 100 bytes, application id in bytes 68..71, big-endian.
constexpr qint64 header_bytes = 100;
constexpr qsizetype application_id_at = 68;
constexpr qsizetype user_version_at = 60;

quint32 big_endian(const QByteArray& bytes, qsizetype at) {
    quint32 out = 0;
    for (qsizetype i = 0; i < 4; ++i)
        out = (out << 8U) | static_cast<quint8>(bytes[at + i]);
    return out;
}

std::optional<Problem> check_header(const QString& path, const std::string& name) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return Problem{name, file.errorString().toStdString(), "Check that the file may be read"};
    }
    const QByteArray header = file.read(header_bytes);
    if (header.size() < header_bytes || !header.startsWith(QByteArray("SQLite format 3\0", 16))) {
        return Problem{name, "this is not a database", "Choose the firm's job database, or a name that is not in use"};
    }
    if (big_endian(header, application_id_at) != static_cast<quint32>(application_id)) {
        return Problem{name, "this database belongs to another program",
                       "Choose the firm's job database, or a name that is not in use"};
    }
    // Told from the header already, so that SQLite need not lay its own files beside a database that is refused.
    const qint64 version = big_endian(header, user_version_at);
    if (version > newest_version()) return newer_program(name, version);
    return std::nullopt;
}

// Everything that can be told without writing.
std::optional<Problem> inspect(const std::string& path) {
    const QFileInfo info(to_qt(path));
    const std::string name = info.fileName().toStdString();
    if (info.isDir()) return Problem{name, "is a folder", "Choose a file"};
    if (!info.exists() || info.size() == 0) {
        if (info.absoluteDir().exists()) return std::nullopt;
        return Problem{name, "the folder " + info.absolutePath().toStdString() + " does not exist", "Create it first"};
    }
    if (std::optional<Problem> problem = check_header(info.filePath(), name)) return problem;

    Result<std::unique_ptr<Database>> opened = Database::open(path, Access::read_only);
    if (!opened) return opened.problems().front();
    const Database& database = *opened.value();
    const Result<QVariant> version = database.value("PRAGMA user_version");
    if (!version) return version.problems().front();
    // A version that still waits in the write-ahead log.
    if (version.value().toInt() > newest_version()) return newer_program(name, version.value().toInt());
    if (info.size() > check_at_open_bytes) return std::nullopt;
    const Result<QVariant> checked = database.value("PRAGMA quick_check(1)");
    if (!checked) return checked.problems().front();
    if (checked.value().toString() == "ok") return std::nullopt;
    return Problem{name, "is damaged: " + checked.value().toString().toStdString(), "Go back to the last backup"};
}

std::optional<Problem> prepare(const Database& database, bool fresh) {
    if (fresh) {
        // Before the switch to WAL, so that the file's first page carries the mark from its first write on.
        if (auto problem = database.run(QStringLiteral("PRAGMA application_id = %1").arg(application_id))) {
            return problem;
        }
    }
    for (const char* pragma : {"PRAGMA foreign_keys = ON", "PRAGMA synchronous = FULL", "PRAGMA trusted_schema = OFF",
                               "PRAGMA cell_size_check = ON"}) {
        if (auto problem = database.run(pragma)) return problem;
    }
    const Result<QVariant> mode = database.value("PRAGMA journal_mode = WAL");
    if (!mode) return mode.problems().front();
    if (mode.value().toString() == "wal" || database.path() == in_memory) return std::nullopt;
    return Problem{database.name(), "cannot be opened for several windows at once (write-ahead log)",
                   "Keep the file on a local disk"};
}

QString backup_name(const Database& database, int version, Instant now) {
    const QString stamp = to_qt(iso8601(now)).replace(':', '-');
    const QString stem = to_qt(database.path()) + QStringLiteral(".version-%1.%2").arg(version).arg(stamp);
    QString name = stem + ".backup";
    for (int i = 2; QFileInfo::exists(name); ++i)
        name = stem + QStringLiteral("-%1.backup").arg(i);
    return name;
}

std::optional<Problem> apply(const Database& database, const Migration& step) {
    Transaction transaction(database);
    if (auto problem = transaction.begin()) return problem;
    const Result<QVariant> version = database.value("PRAGMA user_version");
    if (!version) return version.problems().front();
    // Another window may have taken the step since.
    if (version.value().toInt() >= step.version) return std::nullopt;
    if (auto problem = take_step(database, step)) return problem;
    return transaction.commit();
}

std::optional<Problem> migrate(const Database& database, Instant now) {
    const Result<QVariant> version = database.value("PRAGMA user_version");
    if (!version) return version.problems().front();
    const int from = version.value().toInt();
    if (from > 0 && from < newest_version()) {
        if (auto problem = write_backup(database, backup_name(database, from, now))) return problem;
    }
    for (const Migration& step : migrations(Dialect::sqlite)) {
        if (step.version <= from) continue;
        if (auto problem = apply(database, step)) return problem;
    }
    return std::nullopt;
}

}  // namespace

Problem newer_program(const std::string& name, std::int64_t version) {
    return {name,
            "was written by a newer program (database version " + std::to_string(version) + "; this one knows up to " +
                std::to_string(newest_version()) + ")",
            "Open it with the newer program"};
}

std::optional<Problem> take_step(const Database& database, const Migration& step) {
    for (const char* statement : step.statements) {
        if (auto problem = database.run(statement)) {
            problem->what =
                std::string("step ") + std::to_string(step.version) + " (" + step.what + "): " + problem->what;
            return problem;
        }
    }
    if (step.index_again) {
        if (auto problem = index_all_jobs(database)) return problem;
    }
    if (step.then != nullptr) {
        if (auto problem = step.then(database)) return problem;
    }
    return database.run(QString::fromLatin1(database.words().set_version).arg(step.version));
}

Result<std::unique_ptr<Database>> open_file(const std::string& path, Instant now) {
    bool fresh = true;
    if (path != in_memory) {
        if (std::optional<Problem> problem = inspect(path)) return *problem;
        fresh = QFileInfo(to_qt(path)).size() == 0;
    }
    Result<std::unique_ptr<Database>> opened = Database::open(path, Access::read_write);
    if (!opened) return opened.problems();
    if (std::optional<Problem> problem = prepare(*opened.value(), fresh)) return *problem;
    if (std::optional<Problem> problem = migrate(*opened.value(), now)) return *problem;
    return opened;
}

Result<std::unique_ptr<Database>> new_file_of_version(const std::string& path, int version) {
    Result<std::unique_ptr<Database>> opened = Database::open(path, Access::read_write);
    if (!opened) return opened;
    if (std::optional<Problem> problem = prepare(*opened.value(), true)) return *problem;
    for (const Migration& step : migrations(Dialect::sqlite)) {
        if (step.version > version) break;
        if (auto problem = apply(*opened.value(), step)) return *problem;
    }
    return opened;
}

Result<std::unique_ptr<Store>> Store::open(const std::string& path, Instant now, const std::string& by) {
    Result<std::unique_ptr<Database>> opened = open_file(path, now);
    if (!opened) return opened.problems();
    return std::unique_ptr<Store>(new SqlStore(std::move(opened).value(), by));
}

Result<std::unique_ptr<Store>> Store::open_beside(const std::string& path) {
    if (path == in_memory) return Problem{path, "has no second connection", "Open a file"};
    if (!QFileInfo::exists(to_qt(path)))
        return Problem{QFileInfo(to_qt(path)).fileName().toStdString(), "is not there", "Open it first"};
    Result<std::unique_ptr<Database>> opened = Database::open(path, Access::read_write);
    if (!opened) return opened.problems();
    if (std::optional<Problem> problem = prepare(*opened.value(), false)) return *problem;
    return std::unique_ptr<Store>(new SqlStore(std::move(opened.value()), std::string()));
}

Result<std::unique_ptr<Store>> Store::open_place(const std::string& place, Instant now, const std::string& by) {
    if (!is_address(place)) return open(place, now, by);
    const Result<Connection> connection = connection_from_address(place);
    if (!connection) return connection.problems();
    return connect(connection.value(), by);
}

std::function<Result<std::unique_ptr<Store>>()> Store::beside() const {
    return [place = path()] { return open_beside(place); };
}

std::function<Result<std::unique_ptr<Store>>()> SqlStore::beside() const {
    if (!database_->connection()) return Store::beside();
    return [connection = *database_->connection(), by = by_]() -> Result<std::unique_ptr<Store>> {
        Result<std::unique_ptr<Database>> opened = Database::connect(connection);
        if (!opened) return opened.problems();
        return std::unique_ptr<Store>(new SqlStore(std::move(opened).value(), by));
    };
}

Result<bool> Store::copy_to(Store& other) {
    return Problem{path(), "cannot be copied to " + other.path(), "Open both as files or on a server"};
}

Store::~Store() = default;

}  // namespace wg::store
