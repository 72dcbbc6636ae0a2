#pragma once
// Several files as one archive (ZIP), in memory.

#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace wg::exchange {

/// One entry of the archive.
struct Entry {
    std::string name;  ///< with '/' between folders
    std::string bytes;
};

/// Deflated, but for pictures, which are small already. Equal entries give equal bytes.
[[nodiscard]] Result<std::string> archive_of(const std::vector<Entry>& entries);

}  // namespace wg::exchange
