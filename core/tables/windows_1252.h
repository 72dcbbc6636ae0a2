#pragma once
// The one-byte encoding of western European Windows programs.

#include <optional>
#include <string>
#include <string_view>

namespace wg::tables {

/// As UTF-8, by the table that Unicode publishes (MAPPINGS/VENDORS/MICSFT/WINDOWS/CP1252.TXT). Nothing when a byte is
/// one of the five that it leaves undefined.
[[nodiscard]] std::optional<std::string> utf8_of_windows_1252(std::string_view bytes);

}  // namespace wg::tables
