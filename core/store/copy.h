#pragma once
// Everything of one database into another, of either kind.

#include <optional>

#include "core/store/database.h"

namespace wg::store {

/// Into an empty database of the newest version, in one transaction; before it is committed every table is read again
/// and has to give the same digest as the one it came from. Seats stay behind: whoever edits the copy gets a new one.
[[nodiscard]] std::optional<Problem> copy_everything(const Database& from, const Database& to);

/// Into an empty file of the same, older version, table by table and column by column as that version has them;
/// compared before it counts. `from` is in a transaction in which nobody else writes.
[[nodiscard]] std::optional<Problem> copy_of_older(const Database& from, const Database& to);

/// SHA-256 over the rows of all tables, in the order of their keys; the same on both kinds. The search, which follows
/// from the jobs, is left out, and what tells the machine: versions of fields and seats.
[[nodiscard]] Result<std::string> digest_of_everything(const Database& database);

}  // namespace wg::store
