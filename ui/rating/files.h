#pragma once
// Small text files that people choose.

#include <QString>
#include <string>

#include "core/quantity/result.h"

namespace wg::ui {

/// Refused when it cannot be read or is longer than 16 MiB.
[[nodiscard]] Result<std::string> read_small_file(const QString& path);
/// Whole or not at all.
[[nodiscard]] Result<bool> write_small_file(const QString& path, const std::string& text);

}  // namespace wg::ui
