#pragma once
// Comma-separated text from outside: RFC 4180, with what spreadsheets make of it (semicolons, tabs, Windows-1252).

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace wg::tables {

/// What a file may hold before it is refused: far more than an office's lists, far less than what stops a machine.
struct CsvLimits {
    std::size_t bytes = 32U << 20U;
    std::size_t rows = 200'000;
    std::size_t columns = 256;
    std::size_t cell_bytes = 64U << 10U;
    std::size_t cells = 2'000'000;
};

struct CsvTable {
    std::vector<std::vector<std::string>>
        rows;                          ///< cells as UTF-8; rows may differ in length; empty lines are left out
    std::vector<int> line_of_row;      ///< of the file, from 1; quoted cells may span lines
    char separator = ',';              ///< ',' ';' or tab
    std::string encoding;              ///< "UTF-8" or "Windows-1252"
    std::vector<std::string> assumed;  ///< what the file does not say and was taken so, in words
};

/// The whole table, or what is wrong with it by line (at most 20). The separator is the one that parts the first lines
/// most evenly. Refused: nothing in it, a quote that is never closed, text after a closed quote, bytes that are neither
/// UTF-8 nor Windows-1252, a spreadsheet's own file, more than the limits.
[[nodiscard]] Result<CsvTable> read_csv(std::string_view bytes, const std::string& file_name,
                                        const CsvLimits& limits = {});

}  // namespace wg::tables
