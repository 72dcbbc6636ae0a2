#pragma once
// A backup put in the place of a store's file.

#include <string>

#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace wg::store {

/// Checks a copy of the backup, keeps a copy of the present file beside it, and only then puts the first in the place
/// of the second, at once. The backup itself is read and nothing else. Returns the copy of the present file; empty:
/// there was none. Refused, with everything as it was: a backup that is damaged, of another program or newer; a store
/// that another window has open.
[[nodiscard]] Result<std::string> restore_backup(const std::string& backup_path, const std::string& store_path,
                                                 Instant now);

}  // namespace wg::store
