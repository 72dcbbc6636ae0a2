#pragma once
// A whole copy of the database as a file, made while it is in use.

#include <QString>
#include <optional>

#include "core/store/database.h"

namespace wg::store {

/// Writes the copy under another name first, checks it, and only then gives it its name: a file called `to_path` is
/// whole. Refused when `to_path` exists.
[[nodiscard]] std::optional<Problem> write_backup(const Database& database, const QString& to_path);

/// The same of a server's database that is of an older version, as a file of that version; `database` is in a
/// transaction in which nobody else writes. Under a name of its own in `folder`, which is made.
[[nodiscard]] std::optional<Problem> write_older_backup(const Database& database, int version, const QString& folder);

/// Whether the file's content has reached the disk.
[[nodiscard]] bool flush_to_disk(const QString& path);
/// Renames over what is there, at once.
[[nodiscard]] bool replace_file(const QString& from, const QString& to);

/// PRAGMA integrity_check and foreign_key_check in words; empty when whole, and always on a server.
[[nodiscard]] Result<std::string> damage(const Database& database);

}  // namespace wg::store
