#pragma once
// Whole files in and out, with problems that say what to do.

#include <QString>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace wg::ui {

/// At most 64 MB: no table of customers is longer.
[[nodiscard]] Result<std::string> bytes_of_file(const QString& path);
/// Written beside it and put in its place when whole.
[[nodiscard]] Result<bool> write_file_whole(const QString& path, std::string_view bytes);

}  // namespace wg::ui
