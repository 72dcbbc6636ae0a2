#pragma once
// Tables of customers as files for other programs.

#include <QString>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace wg::ui {

/// As a spreadsheet where the name ends with .xlsx, else as CSV. `rows`: the headings first.
[[nodiscard]] Result<bool> write_table(const QString& path, const QString& name,
                                       const std::vector<std::vector<std::string>>& rows);
/// Of both, for a file dialog.
[[nodiscard]] QString table_files();

}  // namespace wg::ui
