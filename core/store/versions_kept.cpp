#include "core/store/versions_kept.h"

#include <QDateTime>
#include <QFileInfo>
#include <QSysInfo>
#include <QUuid>
#include <QVariant>

#ifdef Q_OS_UNIX
#include <sys/stat.h>
#endif

#include "core/merge/versions_codec.h"
#include "core/quantity/sha256.h"
#include "core/quantity/utf8.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

constexpr std::size_t longest_seat_name = 200;
// As core/merge reads them at most.
constexpr quint32 most_versions_bytes = 64U << 20U;

Problem damaged(const Database& database, const std::string& job_id) {
    return {database.name(), "the versions of job " + for_message(job_id) + " are damaged",
            "Go back to the last backup, or check the store"};
}

std::string hash_of(const QByteArray& bytes) {
    return sha256_hex(std::string(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

// As qCompress writes it: four bytes of size, the highest first. What has not its hash, or claims more than versions
// may have, is not unpacked.
std::optional<std::string> unpacked(const QByteArray& content, const std::string& sha256) {
    if (content.size() < 5 || hash_of(content) != sha256) return std::nullopt;
    quint32 size = 0;
    for (qsizetype i = 0; i < 4; ++i)
        size = (size << 8U) | static_cast<quint8>(content[i]);
    if (size == 0 || size > most_versions_bytes) return std::nullopt;
    const QByteArray text = qUncompress(content);
    if (text.isEmpty()) return std::nullopt;
    return text.toStdString();
}

// What is the same as long as it is the same file at the same place of the same machine.
QString anchor_of(const Database& database, const std::string& by) {
    QString machine = QString::fromLatin1(QSysInfo::machineUniqueId());
    if (machine.isEmpty()) machine = QSysInfo::machineHostName();
    if (database.dialect() == Dialect::postgresql) return machine + '|' + to_qt(by);
    const QFileInfo file(to_qt(database.path()));
    if (!file.exists()) return machine + "|in memory";
    QString itself = QString::number(file.birthTime().toMSecsSinceEpoch());
#ifdef Q_OS_UNIX
    struct stat found = {};
    if (::stat(database.path().c_str(), &found) == 0) itself += '|' + QString::number(found.st_ino);
#endif
    return machine + '|' + file.canonicalFilePath() + '|' + itself;
}

}  // namespace

Result<std::optional<KeptVersions>> read_versions(const Database& database, const std::string& job_id) {
    Result<QSqlQuery> found =
        database.query("SELECT revision, content_sha256, content FROM job_versions WHERE job_id = ?", {to_qt(job_id)});
    if (!found) return found.problems();
    QSqlQuery& row = found.value();
    if (!row.next()) return std::optional<KeptVersions>();
    const std::optional<std::string> text = unpacked(row.value(2).toByteArray(), row.value(1).toString().toStdString());
    if (!text) return damaged(database, job_id);
    Result<merge::Versions> versions = merge::versions_from_json(*text, "versions of job " + for_message(job_id));
    if (!versions) return versions.problems();
    if (versions.value().job_id != job_id) return damaged(database, job_id);
    return std::optional<KeptVersions>(KeptVersions{row.value(0).toLongLong(), std::move(versions.value())});
}

std::optional<Problem> write_versions(const Database& database, std::int64_t revision,
                                      const merge::Versions& versions) {
    const std::string text = merge::versions_to_json(versions);
    // Level 1: half the time of the usual one for a tenth more bytes.
    const QByteArray packed =
        qCompress(reinterpret_cast<const uchar*>(text.data()), static_cast<qsizetype>(text.size()), 1);
    return database.run(
        "INSERT INTO job_versions (job_id, revision, content_sha256, content) VALUES (?, ?, ?, ?) "
        "ON CONFLICT (job_id) DO UPDATE SET revision = excluded.revision, content_sha256 = excluded.content_sha256, "
        "content = excluded.content",
        {to_qt(versions.job_id), QVariant::fromValue(static_cast<qlonglong>(revision)), to_qt(hash_of(packed)),
         packed});
}

Result<std::vector<std::string>> damaged_versions(const Database& database) {
    Result<QSqlQuery> found =
        database.query("SELECT job_id, content_sha256, content FROM job_versions", {}, Fetch::row_by_row);
    if (!found) return found.problems();
    std::vector<std::string> out;
    while (found.value().next()) {
        const QSqlQuery& row = found.value();
        if (hash_of(row.value(2).toByteArray()) != row.value(1).toString().toStdString())
            out.push_back(row.value(0).toString().toStdString());
    }
    return out;
}

Result<merge::Seat> seat_of(const Database& database, const std::string& by) {
    const QString anchor = anchor_of(database, by);
    std::string name = by.empty() ? QSysInfo::machineHostName().toStdString() : by;
    if (name.size() > longest_seat_name || !is_utf8(name)) name = "a machine";
    const Result<QVariant> known = database.value("SELECT id FROM seat WHERE anchor = ?", {anchor});
    if (!known) return known.problems();
    if (known.value().isValid()) {
        const std::string id = known.value().toString().toStdString();
        if (auto problem = database.run("UPDATE seat SET name = ? WHERE anchor = ? AND name <> ?",
                                        {to_qt(name), anchor, to_qt(name)}))
            return *problem;
        return merge::Seat{id, name};
    }
    const QString id = QUuid::createUuid().toString(QUuid::WithoutBraces);
    if (auto problem = database.run("INSERT INTO seat (anchor, id, name) VALUES (?, ?, ?)", {anchor, id, to_qt(name)}))
        return *problem;
    return merge::Seat{id.toStdString(), name};
}

}  // namespace wg::store
