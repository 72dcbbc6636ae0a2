#include "ui/window/job_files.h"

#include <QFile>
#include <QRegularExpression>

#include "core/job/codec.h"
#include "ui/common/format.h"
#include "ui/common/whole_file.h"

namespace wg::ui {
namespace {

constexpr std::size_t most_job_bytes = 64 * mebibyte;

}  // namespace

Result<std::string> read_job_file(const QString& path) {
    return read_whole(path, most_job_bytes);
}

bool is_exchange_file(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) && file.read(4) == QByteArray("PK\x03\x04", 4);
}

Result<bool> write_job_file(const QString& path, const Job& job) {
    Job copy = job;
    copy.base_sha256 = content_sha256(job);
    copy.base_revision = job.revision;
    return write_whole(path, job_to_json(copy));
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
