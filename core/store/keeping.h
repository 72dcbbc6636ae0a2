#pragma once
// A backup a day, and which of them stay.

#include <cstdint>
#include <string>
#include <vector>

#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace wg::store {

/// How many stay. Counted over those that are there, not over the calendar: a firm that was closed for two months still
/// has its last seven days of work.
struct Keeping {
    int days = 7;
    int weeks = 5;    ///< the last of each
    int months = 12;  ///< the last of each
    /// Together; beyond it the oldest go first, the newest `at_least` never.
    std::int64_t most_bytes = std::int64_t{20} << 30;
    int at_least = 3;
};

struct KeptBackup {
    std::string day;  ///< ISO 8601 date
    std::int64_t bytes = 0;
    friend bool operator==(const KeptBackup&, const KeptBackup&) = default;
};

/// Days whose backups need not stay, oldest first. A day after `today` (a clock that went wrong) stays.
[[nodiscard]] std::vector<std::string> superseded(std::vector<KeptBackup> kept, CivilDate today,
                                                  const Keeping& keeping = {});

/// Folder beside a store's file that holds its daily backups, and the file of one day in it.
[[nodiscard]] std::string daily_folder(const std::string& store_path);
[[nodiscard]] std::string daily_file(const std::string& store_path, const std::string& day);

/// Makes today's backup of a store's file when there is none, then removes those that need not stay; nothing is removed
/// when none could be made. Returns the file, or nothing when today's is there or another window is at it. Needs a
/// thread without a Store of its own for this file.
[[nodiscard]] Result<std::string> keep_daily_backup(const std::string& store_path, CivilDate today,
                                                    const Keeping& keeping = {});

}  // namespace wg::store
