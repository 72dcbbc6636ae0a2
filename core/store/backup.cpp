#include "core/store/backup.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <cstdio>
#ifdef Q_OS_UNIX
#include <unistd.h>
#endif

#include "core/store/copy.h"
#include "core/store/export.h"
#include "core/store/open.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

// A server's contents as a file; closed again, so that nothing is left beside it.
std::optional<Problem> copy_to_file(const Database& database, const QString& path, int version) {
    const bool newest = version == newest_version();
    const Result<std::unique_ptr<Database>> file =
        newest ? open_file(path.toStdString(), Instant{}) : new_file_of_version(path.toStdString(), version);
    if (!file) return file.problems().front();
    std::optional<Problem> copied =
        newest ? copy_everything(database, *file.value()) : copy_of_older(database, *file.value());
    if (copied) return copied;
    // One file and no log beside it, as VACUUM INTO leaves it.
    const Result<QVariant> mode = file.value()->value("PRAGMA journal_mode = DELETE");
    if (!mode) return mode.problems().front();
    return std::nullopt;
}

// A backup that is written over the store's own file looks, by place and number on the disk, like the file it was made
// of. With the seats in it, numbers of edits would be given twice, and other machines would take the new edits for ones
// they know. A store of a version before seats has none to forget.
std::optional<Problem> forget_seats(const QString& path) {
    const Result<std::unique_ptr<Database>> copy = Database::open(path.toStdString(), Access::read_write);
    if (!copy) return copy.problems().front();
    const Result<QVariant> kept =
        copy.value()->value("SELECT 1 FROM sqlite_master WHERE type = 'table' AND name = 'seat'");
    if (!kept) return kept.problems().front();
    if (!kept.value().isValid()) return std::nullopt;
    return copy.value()->run("DELETE FROM seat");
}

std::optional<Problem> check_copy(const QString& path) {
    const Result<std::unique_ptr<Database>> copy = Database::open(path.toStdString(), Access::read_only);
    if (!copy) return copy.problems().front();
    const Result<std::string> found = damage(*copy.value());
    if (!found) return found.problems().front();
    if (found.value().empty()) return std::nullopt;
    return Problem{copy.value()->name(), "the copy is damaged: " + found.value(),
                   "Check the job database and the disk, then try again"};
}

}  // namespace

// VACUUM INTO does not promise that the copy has reached the disk.
bool flush_to_disk(const QString& path) {
#ifdef Q_OS_UNIX
    QFile file(path);
    return file.open(QIODevice::ReadWrite) && ::fsync(file.handle()) == 0;
#else
    static_cast<void>(path);
    return true;
#endif
}

bool replace_file(const QString& from, const QString& to) {
#ifdef Q_OS_UNIX
    return std::rename(QFile::encodeName(from).constData(), QFile::encodeName(to).constData()) == 0;
#else
    return (!QFile::exists(to) || QFile::remove(to)) && QFile::rename(from, to);
#endif
}

namespace {

std::optional<Problem> write_checked(const Database& database, const QString& to_path, int version) {
    const QFileInfo target(to_path);
    const std::string name = target.fileName().toStdString();
    if (target.exists()) return Problem{name, "exists already", "Choose another name"};
    if (!target.absoluteDir().exists()) {
        return Problem{name, "the folder " + target.absolutePath().toStdString() + " does not exist",
                       "Create it first"};
    }
    const QString part = to_path + ".part";
    QFile::remove(part);  // left by a backup that was cut short
    std::optional<Problem> problem =
        database.connection() ? copy_to_file(database, part, version) : database.run("VACUUM INTO ?", {part});
    if (!problem) problem = forget_seats(part);
    if (!problem) problem = check_copy(part);
    if (!problem && !flush_to_disk(part)) {
        problem = Problem{name, "could not be written to the disk", "Check the disk and its free space"};
    }
    if (!problem && !QFile::rename(part, to_path)) {
        problem = Problem{name, "could not be given its name", "Choose another name or folder"};
    }
    if (problem) {
        for (const char* rest : {"", "-wal", "-shm", "-journal"})
            QFile::remove(part + rest);
    }
    return problem;
}

}  // namespace

std::optional<Problem> write_backup(const Database& database, const QString& to_path) {
    return write_checked(database, to_path, newest_version());
}

std::optional<Problem> write_older_backup(const Database& database, int version, const QString& folder) {
    const Connection to = database.connection().value_or(Connection{});
    const QString stem = QDir(folder).filePath(to_qt(plain_file_name(to.database + "-" + to.host, "server")) +
                                               ".version-" + QString::number(version));
    QString name = stem + ".backup";
    for (int i = 2; QFileInfo::exists(name); ++i)
        name = stem + QStringLiteral("-%1.backup").arg(i);
    if (!QDir().mkpath(folder))
        return Problem{folder.toStdString(), "cannot be made", "Check the rights of the folder above it"};
    return write_checked(database, name, version);
}

Result<std::string> damage(const Database& database) {
    std::string out;
    if (database.dialect() == Dialect::postgresql)
        return out;  // its pages carry no marks of ours; keys it holds itself
    Result<QSqlQuery> integrity = database.query("PRAGMA integrity_check(20)");
    if (!integrity) return integrity.problems();
    while (integrity.value().next()) {
        const std::string line = integrity.value().value(0).toString().toStdString();
        if (line != "ok") out += (out.empty() ? "" : "; ") + line;
    }
    Result<QSqlQuery> references = database.query("PRAGMA foreign_key_check");
    if (!references) return references.problems();
    while (references.value().next()) {
        const std::string table = references.value().value(0).toString().toStdString();
        const std::string parent = references.value().value(2).toString().toStdString();
        if (!out.empty()) out += "; ";
        out.append("a row of ").append(table).append(" names one that ").append(parent).append(" does not have");
    }
    return out;
}

}  // namespace wg::store
