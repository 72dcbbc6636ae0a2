#pragma once
// Whole files in and out, with problems that say what to do.

#include <QString>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace wg::ui {

/// At most 64 MB: no table of customers is longer.
[[nodiscard]] Result<std::string> bytes_of_file(const QString& path);
/// Written beside it and put in its place when whole.
[[nodiscard]] Result<bool> write_file_whole(const QString& path, std::string_view bytes);

/// As a spreadsheet where the name ends with .xlsx, else as CSV. `rows`: the headings first.
[[nodiscard]] Result<bool> write_table(const QString& path, const QString& name,
                                       const std::vector<std::vector<std::string>>& rows);
/// Of both, for a file dialog.
[[nodiscard]] QString table_files();

}  // namespace wg::ui
