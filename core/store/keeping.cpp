#include "core/store/keeping.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLockFile>
#include <QStorageInfo>
#include <algorithm>
#include <memory>

#include "core/store/store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

// So that the last of the room is left to the jobs themselves.
constexpr qint64 spare_bytes = qint64{100} << 20;

constexpr const char* suffix = ".sqlite";

// Monday to Sunday; 1970-01-01 was a Thursday.
std::int64_t week_of(CivilDate day) {
    return (days_from_civil(day) + 3) / 7;
}

std::int64_t month_of(CivilDate day) {
    return std::int64_t{12} * day.year + day.month;
}

std::vector<KeptBackup> backups_in(const QDir& folder, const std::string& store_path) {
    const QString stem = QFileInfo(to_qt(daily_file(store_path, {}))).completeBaseName();
    std::vector<KeptBackup> kept;
    for (const QFileInfo& file : folder.entryInfoList({stem + "*" + suffix}, QDir::Files)) {
        const std::string day = file.completeBaseName().mid(stem.size()).toStdString();
        if (date_from_iso8601(day)) kept.push_back({day, file.size()});
    }
    return kept;
}

}  // namespace

std::vector<std::string> superseded(std::vector<KeptBackup> kept, CivilDate today, const Keeping& keeping) {
    std::sort(kept.begin(), kept.end(), [](const KeptBackup& a, const KeptBackup& b) { return a.day > b.day; });
    const std::string last_day = iso8601(today);
    int days = 0;
    int weeks = 0;
    int months = 0;
    std::int64_t week = -1;
    std::int64_t month = -1;
    std::int64_t bytes = 0;
    int stay = 0;
    std::vector<std::string> gone;
    for (const KeptBackup& backup : kept) {
        const Result<CivilDate> day = date_from_iso8601(backup.day);
        if (!day || backup.day > last_day) continue;
        const bool of_days = ++days <= keeping.days;
        const bool last_of_week = week_of(day.value()) != week && ++weeks <= keeping.weeks;
        const bool last_of_month = month_of(day.value()) != month && ++months <= keeping.months;
        week = week_of(day.value());
        month = month_of(day.value());
        const bool room = stay < keeping.at_least || bytes + backup.bytes <= keeping.most_bytes;
        if ((of_days || last_of_week || last_of_month) && room) {
            bytes += backup.bytes;
            ++stay;
        } else {
            gone.push_back(backup.day);
        }
    }
    std::reverse(gone.begin(), gone.end());
    return gone;
}

std::string daily_folder(const std::string& store_path) {
    return QFileInfo(to_qt(store_path)).absoluteDir().filePath("backups").toStdString();
}

std::string daily_file(const std::string& store_path, const std::string& day) {
    const QString name = QFileInfo(to_qt(store_path)).completeBaseName() + '-' + to_qt(day) + suffix;
    return QDir(to_qt(daily_folder(store_path))).filePath(name).toStdString();
}

Result<std::string> keep_daily_backup(const std::string& store_path, CivilDate today, const Keeping& keeping) {
    const QDir folder(to_qt(daily_folder(store_path)));
    const std::string file = daily_file(store_path, iso8601(today));
    if (QFileInfo::exists(to_qt(file))) return std::string();
    if (!folder.mkpath(".")) {
        return Problem{"daily backup", "the folder " + folder.path().toStdString() + " cannot be made",
                       "Check the rights of the folder above it"};
    }
    QLockFile lock(folder.filePath(".lock"));
    lock.setStaleLockTime(0);
    if (!lock.tryLock(0)) {
        if (lock.error() == QLockFile::LockFailedError) return std::string();
        return Problem{"daily backup", "the folder " + folder.path().toStdString() + " cannot be written to",
                       "Check its rights and the disk"};
    }
    const qint64 size = QFileInfo(to_qt(store_path)).size();
    const QStorageInfo disk(folder.path());
    if (disk.isValid() && disk.bytesAvailable() < size + spare_bytes) {
        return Problem{"daily backup", "the disk has " + std::to_string(disk.bytesAvailable() >> 20) + " MB left",
                       "Make room on the disk; the jobs themselves go on being saved"};
    }
    {
        const Result<std::unique_ptr<Store>> opened = Store::open_beside(store_path);
        if (!opened) return opened.problems();
        const Result<bool> made = opened.value()->backup(file);
        if (!made) return made.problems();
    }
    for (const std::string& day : superseded(backups_in(folder, store_path), today, keeping))
        QFile::remove(to_qt(daily_file(store_path, day)));
    return file;
}

}  // namespace wg::store
