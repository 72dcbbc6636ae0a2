#include "core/store/restore.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <memory>

#include "core/store/backup.h"
#include "core/store/database.h"
#include "core/store/open.h"
#include "core/store/store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

// What SQLite lays beside a file.
constexpr const char* companions[] = {"-wal", "-shm", "-journal"};

void remove_with_companions(const QString& path) {
    QFile::remove(path);
    for (const char* beside : companions)
        QFile::remove(path + beside);
}

// With what still waits in the log.
bool copy_with_log(const QString& from, const QString& to) {
    if (!QFile::copy(from, to)) return false;
    for (const char* beside : {"-wal", "-journal"}) {
        if (QFileInfo::exists(from + beside) && !QFile::copy(from + beside, to + beside)) return false;
    }
    QFile::setPermissions(to, QFile::ReadOwner | QFile::WriteOwner);
    return true;
}

// The copy, brought up to date and looked through; closed again, so that it is one file.
std::optional<Problem> check_incoming(const QString& path, const std::string& name, Instant now) {
    const auto named = [&name](Problem problem) {
        problem.where = name;
        return problem;
    };
    {
        const Result<std::unique_ptr<Store>> opened = Store::open(path.toStdString(), now);
        if (!opened) return named(opened.problems().front());
        const Result<std::string> whole = opened.value()->check();
        if (!whole) return named(whole.problems().front());
        if (whole.value() != "ok") {
            return Problem{name, "is damaged and was not put in place: " + whole.value(), "Take an earlier backup"};
        }
    }
    // An older backup was copied once more before it was brought up to date; it is still there itself.
    const QFileInfo info(path);
    for (const QString& copy : info.dir().entryList({info.fileName() + ".version-*"}, QDir::Files))
        QFile::remove(info.dir().filePath(copy));
    const Result<std::unique_ptr<Database>> file = Database::open(path.toStdString(), Access::read_write);
    if (!file) return named(file.problems().front());
    const Result<QVariant> mode = file.value()->value("PRAGMA journal_mode = DELETE");
    if (!mode) return named(mode.problems().front());
    return std::nullopt;
}

// Only the last connection can leave write-ahead mode; what waits in the log is in the file then.
std::optional<Problem> take_alone(const std::string& store_path) {
    const Result<std::unique_ptr<Database>> present = Database::open(store_path, Access::read_write);
    if (!present) return std::nullopt;  // too damaged to be open anywhere
    const Result<QVariant> mode = present.value()->value("PRAGMA journal_mode = DELETE");
    if (mode && mode.value().toString() == "wal") {
        return Problem{present.value()->name(), "is open in another window", "Close it there first"};
    }
    if (!mode && mode.problems().front().what.find("locked") != std::string::npos) {
        return Problem{present.value()->name(), "is open in another window", "Close it there first"};
    }
    return std::nullopt;
}

QString name_beside(const QString& path, Instant now) {
    const QString stem = path + ".before-restore." + to_qt(iso8601(now)).replace(':', '-');
    QString name = stem + ".backup";
    for (int i = 2; QFileInfo::exists(name); ++i)
        name = stem + QStringLiteral("-%1.backup").arg(i);
    return name;
}

}  // namespace

Result<std::string> restore_backup(const std::string& backup_path, const std::string& store_path, Instant now) {
    const QFileInfo backup(to_qt(backup_path));
    const std::string name = backup.fileName().toStdString();
    if (!backup.isFile() || backup.size() == 0)
        return Problem{name, backup.exists() ? "is no backup" : "is not there", "Choose the file of a backup"};
    const QString store = QFileInfo(to_qt(store_path)).absoluteFilePath();
    if (backup.canonicalFilePath() == QFileInfo(store).canonicalFilePath())
        return Problem{name, "is the store itself", "Choose the file of a backup"};
    const QString incoming = store + ".restoring";
    remove_with_companions(incoming);  // left by a restoring that was cut short
    const auto give_up = [&incoming](const Problem& problem) {
        remove_with_companions(incoming);
        return problem;
    };
    const Problem no_room{name, "could not be copied beside the store", "Check the disk and its free space"};
    if (!copy_with_log(backup.absoluteFilePath(), incoming)) return give_up(no_room);
    if (std::optional<Problem> problem = check_incoming(incoming, name, now)) return give_up(*problem);

    QString before;
    if (QFileInfo::exists(store)) {
        if (std::optional<Problem> problem = take_alone(store_path)) return give_up(*problem);
        // Byte for byte: it may be damaged, which is why somebody restores.
        before = name_beside(store, now);
        if (!copy_with_log(store, before) || !flush_to_disk(before)) {
            remove_with_companions(before);
            return give_up(no_room);
        }
    }
    if (!flush_to_disk(incoming)) return give_up(no_room);
    for (const char* beside : companions)
        QFile::remove(store + beside);
    if (!replace_file(incoming, store)) {
        return give_up({name, "could not be put in the store's place", "Check the rights of the store's folder"});
    }
    return before.toStdString();
}

}  // namespace wg::store
