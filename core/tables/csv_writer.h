#pragma once
// Comma-separated text for other programs: RFC 4180, UTF-8.

#include <string>
#include <string_view>
#include <vector>

namespace wg::tables {

/// Lines end with CR LF. Text that a spreadsheet would run as a formula (it begins with = + - @, tab or CR and is no
/// number) gets an apostrophe before it (OWASP, "CSV Injection"); `without_guard` takes it away again. `separator`:
/// ',' ';' or tab.
[[nodiscard]] std::string write_csv(const std::vector<std::vector<std::string>>& rows, char separator = ',');

/// The cell as it was before `write_csv` guarded it.
[[nodiscard]] std::string_view without_guard(std::string_view cell);

}  // namespace wg::tables
