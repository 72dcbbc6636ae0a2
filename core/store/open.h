#pragma once
// What opening a file and connecting to a server share.

#include <cstdint>
#include <memory>
#include <optional>
#include <string>

#include "core/quantity/time.h"
#include "core/store/database.h"
#include "core/store/migrations.h"

namespace wg::store {

/// Inspects, prepares and brings up to date; see Store::open.
[[nodiscard]] Result<std::unique_ptr<Database>> open_file(const std::string& path, Instant now);

/// A new file with the tables of that version, which need not be the newest.
[[nodiscard]] Result<std::unique_ptr<Database>> new_file_of_version(const std::string& path, int version);

[[nodiscard]] Problem newer_program(const std::string& name, std::int64_t version);
/// The step's statements and its number, in the transaction that is open.
[[nodiscard]] std::optional<Problem> take_step(const Database& database, const Migration& step);

}  // namespace wg::store
