#pragma once
// A table as a spreadsheet file.

#include <string>
#include <variant>
#include <vector>

#include "core/quantity/result.h"
#include "core/quantity/time.h"

namespace wg::sheets {

/// Text stays text, whatever it begins with: never a formula. Numbers are finite. Days and moments (UTC) are those of
/// the years 1900 to 9999: a spreadsheet knows no others as dates.
using Cell = std::variant<std::string, double, CivilDate, Instant>;

struct Sheet {
    std::string name;                ///< 1..31 characters, none of [ ] : * ? / and the backslash
    std::vector<std::string> heads;  ///< written bold, stay in sight when scrolling
    std::vector<std::vector<Cell>> rows;
};

/// Up to 1,048,575 rows of up to 16,384 cells of up to 32,767 characters (ISO/IEC 29500 as spreadsheets read it).
/// Written beside `path` and put in its place when whole. `made_at`: written into the file's properties. Refused: what
/// does not fit, text that is not UTF-8, numbers that are none, a place that cannot be written to.
[[nodiscard]] Result<bool> write_xlsx(const std::string& path, const Sheet& sheet, Instant made_at);

}  // namespace wg::sheets
