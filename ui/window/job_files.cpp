#include "ui/window/job_files.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <QSaveFile>

#include "core/job/codec.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_job_bytes = std::size_t{64} << 20U;

}  // namespace

Result<std::string> read_bytes(const QString& path, std::size_t most) {
    const std::string shown = QDir::toNativeSeparators(path).toStdString();
    QFile file(path);
    if (QFileInfo(path).isDir() || !file.open(QIODevice::ReadOnly)) {
        return Problem{shown, "cannot be read: " + file.errorString().toStdString(),
                       "Choose another file or ask for access"};
    }
    if (file.size() > static_cast<qint64>(most))
        return Problem{shown, "is larger than " + std::to_string(most >> 20U) + " MiB", "Choose a job file"};
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError) {
        return Problem{shown, "cannot be read: " + file.errorString().toStdString(), "Try again"};
    }
    return bytes.toStdString();
}

Result<std::string> read_job_file(const QString& path) {
    return read_bytes(path, most_job_bytes);
}

bool is_exchange_file(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.read(4) == QByteArray("PK\x03\x04", 4);
}

Result<bool> write_bytes(const QString& path, const std::string& bytes) {
    QSaveFile file(path);
    const bool written =
        file.open(QIODevice::WriteOnly) &&
        file.write(bytes.data(), static_cast<qint64>(bytes.size())) == static_cast<qint64>(bytes.size()) &&
        file.commit();
    if (written) return true;
    return Problem{QDir::toNativeSeparators(path).toStdString(),
                   "could not be written: " + file.errorString().toStdString(),
                   "Choose another folder or free some space"};
}

Result<bool> write_job_file(const QString& path, const Job& job) {
    Job copy = job;
    copy.base_sha256 = content_sha256(job);
    copy.base_revision = job.revision;
    return write_bytes(path, job_to_json(copy));
}

namespace {

// Without characters that file systems mind.
QString file_stem_of(const Job& job) {
    QString name = qs(job.number + " " + (job.client.name.empty() ? job.title : job.client.name));
    static const QRegularExpression unwanted(QStringLiteral("[^\\w\\-. ]"),
                                             QRegularExpression::UseUnicodePropertiesOption);
    name = name.remove(unwanted).simplified().left(60);
    return name.isEmpty() ? QStringLiteral("job") : name;
}

}  // namespace

QString job_file_name(const Job& job) {
    return file_stem_of(job) + QStringLiteral(".json");
}

QString exchange_file_name(const Job& job) {
    return file_stem_of(job) + QStringLiteral(".warmgable");
}

Incoming incoming(const Job& from_file, store::Store& store) {
    const Result<Job> known = store.load(from_file.id);
    if (!known.ok()) return Incoming::unknown;
    const std::string on_desk = content_sha256(known.value());
    const std::string in_file = content_sha256(from_file);
    if (on_desk == in_file) return Incoming::same;
    if (from_file.base_sha256.empty()) return Incoming::differs;
    if (on_desk == from_file.base_sha256) return Incoming::file_newer;
    // Only when the desk really once held it: a base from another desk says nothing about this one.
    const Result<Job> base = store.load_revision(from_file.id, from_file.base_revision);
    if (in_file == from_file.base_sha256 && base.ok() && content_sha256(base.value()) == in_file) {
        return Incoming::desk_newer;
    }
    return Incoming::differs;
}

}  // namespace wg::ui
