#pragma once
// Job files on disk: whole or not at all.

#include <QString>
#include <string>

#include "core/job/job.h"
#include "core/quantity/result.h"
#include "core/store/store.h"

namespace wg::ui {

/// The file's text; refused when it cannot be read or is larger than 64 MiB.
[[nodiscard]] Result<std::string> read_job_file(const QString& path);
/// Writes beside and renames, so that a full disk leaves the old file as it was. The copy notes the version it was made
/// from (base_sha256, base_revision), so that it can be merged when it comes home.
[[nodiscard]] Result<bool> write_job_file(const QString& path, const Job& job);
/// "2027-0042 Fennimore.json", without characters that file systems mind.
[[nodiscard]] QString job_file_name(const Job& job);

/// "2027-0042 Fennimore.warmgable".
[[nodiscard]] QString exchange_file_name(const Job& job);
/// Whether the file begins as an exchange file does (docs/exchange-format.md).
[[nodiscard]] bool is_exchange_file(const QString& path);
/// How a job that came in a file stands to the desk.
enum class Incoming {
    unknown,     ///< the desk has no job of this id
    same,        ///< equal content
    file_newer,  ///< the desk still has what the file was made from: the file continues it
    desk_newer,  ///< the file is as it was when it left the desk, which has moved on since
    differs,     ///< both changed
};
[[nodiscard]] Incoming incoming(const Job& from_file, store::Store& store);

}  // namespace wg::ui
