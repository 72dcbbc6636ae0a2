#pragma once
// Versions of the jobs' fields in the store, and the machine that edits count for.

#include <cstdint>
#include <optional>
#include <string>

#include "core/merge/versions.h"
#include "core/store/database.h"

namespace wg::store {

struct KeptVersions {
    std::int64_t revision = 0;  ///< of the job that they describe
    merge::Versions versions;
};

/// Nothing when the job was never saved by a program that keeps versions. Refused: damaged ones.
[[nodiscard]] Result<std::optional<KeptVersions>> read_versions(const Database& database, const std::string& job_id);
[[nodiscard]] std::optional<Problem> write_versions(const Database& database, std::int64_t revision,
                                                    const merge::Versions& versions);
/// Jobs whose versions no longer have their hash, by id.
[[nodiscard]] Result<std::vector<std::string>> damaged_versions(const Database& database);

/// The machine that this store's edits count for, made when it is not known yet. In a file it is bound to the machine,
/// the file's place and the file itself (its number and day of birth on the disk): a copy of the file, or a backup put
/// in its place, is another one, since numbers of edits would be given twice. On a server it is bound to machine and
/// user. `by`: its name for people. Within a write transaction.
[[nodiscard]] Result<merge::Seat> seat_of(const Database& database, const std::string& by);

}  // namespace wg::store
