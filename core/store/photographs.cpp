// Photographs: the bytes as they came from the camera, by their hash.

#include <QByteArray>
#include <QVariant>

#include "core/quantity/sha256.h"
#include "core/store/hashed_rows.h"
#include "core/store/sql_store.h"
#include "core/store/text.h"

namespace wg::store {
namespace {

using namespace std::string_view_literals;

bool begins_as_picture(std::string_view bytes) {
    return bytes.substr(0, 3) == "\xFF\xD8\xFF"sv || bytes.substr(0, 8) == "\x89PNG\r\n\x1A\n"sv ||
           (bytes.substr(0, 4) == "RIFF"sv && bytes.size() > 12 && bytes.substr(8, 4) == "WEBP"sv);
}

}  // namespace

Result<std::string> SqlStore::add_photograph(std::string_view bytes, Instant now) {
    Transaction transaction(*database_);
    if (auto problem = transaction.begin()) return *problem;
    Result<std::string> added = insert_photograph(bytes, now);
    if (!added) return added;
    if (auto problem = transaction.commit()) return *problem;
    return added;
}

Result<std::string> SqlStore::insert_photograph(std::string_view bytes, Instant now) {
    if (bytes.empty()) return Problem{"photograph", "is empty", "Choose another file"};
    if (bytes.size() > max_photograph_bytes)
        return Problem{"photograph", "is larger than " + std::to_string(max_photograph_bytes >> 20U) + " MB",
                       "Take it at a lower resolution"};
    if (!begins_as_picture(bytes))
        return Problem{"photograph", "is neither JPEG, PNG nor WebP", "Save it as JPEG and add that file"};
    const std::string sha256 = sha256_hex(std::string(bytes));
    const Result<bool> known = has_photograph(sha256);
    if (!known) return known.problems();
    if (known.value()) return sha256;
    const QByteArray content(bytes.data(), static_cast<qsizetype>(bytes.size()));
    if (auto problem =
            database_->run(QStringLiteral("INSERT INTO photograph (sha256, added_at, content) VALUES (?, ?, ?)"),
                           {to_qt(sha256), to_qt(iso8601(now)), content}))
        return *problem;
    return sha256;
}

Result<std::string> SqlStore::photograph(const std::string& sha256) {
    const Result<QVariant> content =
        database_->value(QStringLiteral("SELECT content FROM photograph WHERE sha256 = ?"), {to_qt(sha256)});
    if (!content) return content.problems();
    if (!content.value().isValid())
        return Problem{"photograph", "is not in this firm's store",
                       "Add the file again, or fetch the job with its photographs"};
    std::string bytes = bytes_of(content.value());
    if (sha256_hex(bytes) != sha256)
        return Problem{"photograph", "is damaged: its bytes no longer have their hash", "Go back to the last backup"};
    return bytes;
}

Result<bool> SqlStore::has_photograph(const std::string& sha256) {
    const Result<QVariant> found =
        database_->value(QStringLiteral("SELECT 1 FROM photograph WHERE sha256 = ?"), {to_qt(sha256)});
    if (!found) return found.problems();
    return found.value().isValid();
}

Result<std::vector<std::string>> SqlStore::damaged_photographs() const {
    return rows_without_hash(*database_, "SELECT sha256, content, sha256 FROM photograph");
}

}  // namespace wg::store
