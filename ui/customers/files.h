#pragma once
// Tables of customers as files for other programs.

#include <QString>
#include <cstddef>
#include <set>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace wg::ui {

/// As a spreadsheet where the name ends with .xlsx, else as CSV. `rows`: the headings first. `dates`: columns of ISO
/// 8601 days or moments, which a spreadsheet takes as dates; all others stay text, so that a postcode keeps its zeros.
[[nodiscard]] Result<bool> write_table(const QString& path, const QString& name,
                                       const std::vector<std::vector<std::string>>& rows,
                                       const std::set<std::size_t>& dates = {});
/// Of both, for a file dialog; CSV first where the table is likely to come back.
[[nodiscard]] QString table_files(bool csv_first = false);

}  // namespace wg::ui
