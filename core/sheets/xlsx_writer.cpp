#include "core/sheets/xlsx_writer.h"

#include <xlsxwriter.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <optional>
#include <system_error>

#include "core/quantity/utf8.h"

namespace wg::sheets {
namespace {

constexpr std::size_t most_rows = 1'048'575;
constexpr std::size_t most_columns = 16'384;
constexpr std::size_t most_characters = 32'767;
constexpr double widest_column = 60.0;
constexpr double least_column = 8.0;

std::size_t characters_of(const std::string& text) {
    // Bytes that do not continue a character. Those above U+FFFF count twice in spreadsheets (UTF-16).
    std::size_t count = 0;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if ((byte & 0xc0U) != 0x80U) count += byte >= 0xf0U ? 2 : 1;
    }
    return count;
}

std::optional<Problem> refuse_text(const std::string& text, const std::string& where) {
    if (!is_utf8(text) || text.find('\0') != std::string::npos) return Problem{where, "is no text", "Correct it first"};
    if (characters_of(text) > most_characters)
        return Problem{where, "is longer than a spreadsheet's cell can be", "Shorten it, or save the list as CSV"};
    return std::nullopt;
}

std::string cell_place(std::size_t row, std::size_t column) {
    return "row " + std::to_string(row + 1) + ", column " + std::to_string(column + 1);
}

std::optional<Problem> refuse_sheet(const Sheet& sheet) {
    if (sheet.rows.size() > most_rows)
        return Problem{sheet.name, "has more rows than a spreadsheet", "Narrow the list, or save it as CSV"};
    if (sheet.heads.size() > most_columns) return Problem{sheet.name, "has too many columns", "Save it as CSV"};
    for (std::size_t i = 0; i < sheet.heads.size(); ++i) {
        if (auto problem = refuse_text(sheet.heads[i], cell_place(0, i))) return problem;
    }
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        if (sheet.rows[row].size() > most_columns) return Problem{sheet.name, "has too many columns", "Save it as CSV"};
        for (std::size_t i = 0; i < sheet.rows[row].size(); ++i) {
            const Cell& cell = sheet.rows[row][i];
            if (const auto* text = std::get_if<std::string>(&cell)) {
                if (auto problem = refuse_text(*text, cell_place(row + 1, i))) return problem;
            } else if (!std::isfinite(std::get<double>(cell))) {
                return Problem{cell_place(row + 1, i), "is no number", "Leave the cell empty"};
            }
        }
    }
    return std::nullopt;
}

Problem not_written(const std::string& path, const std::string& why) {
    return {path, "cannot be written: " + why, "Choose a folder you may write to, with room on the disk"};
}

// As wide as the first rows need, within bounds.
double column_width(const Sheet& sheet, std::size_t column) {
    constexpr std::size_t rows_to_look_at = 200;
    std::size_t longest = characters_of(sheet.heads[column]);
    for (std::size_t row = 0; row < std::min(rows_to_look_at, sheet.rows.size()); ++row) {
        if (column >= sheet.rows[row].size()) continue;
        if (const auto* text = std::get_if<std::string>(&sheet.rows[row][column]))
            longest = std::max(longest, characters_of(*text));
    }
    return std::clamp(static_cast<double>(longest) + 2.0, least_column, widest_column);
}

lxw_error fill(lxw_workbook* book, lxw_worksheet* into, const Sheet& sheet) {
    lxw_format* bold = workbook_add_format(book);
    format_set_bold(bold);
    worksheet_freeze_panes(into, 1, 0);
    for (std::size_t i = 0; i < sheet.heads.size(); ++i) {
        const auto column = static_cast<lxw_col_t>(i);
        worksheet_set_column(into, column, column, column_width(sheet, i), nullptr);
        if (const lxw_error error = worksheet_write_string(into, 0, column, sheet.heads[i].c_str(), bold)) return error;
    }
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        for (std::size_t i = 0; i < sheet.rows[row].size(); ++i) {
            const auto at = static_cast<lxw_row_t>(row + 1);
            const auto column = static_cast<lxw_col_t>(i);
            const Cell& cell = sheet.rows[row][i];
            const auto* text = std::get_if<std::string>(&cell);
            const lxw_error error = text != nullptr
                                        ? worksheet_write_string(into, at, column, text->c_str(), nullptr)
                                        : worksheet_write_number(into, at, column, std::get<double>(cell), nullptr);
            if (error != LXW_NO_ERROR) return error;
        }
    }
    return LXW_NO_ERROR;
}

}  // namespace

Result<bool> write_xlsx(const std::string& path, const Sheet& sheet, Instant made_at) {
    if (auto problem = refuse_sheet(sheet)) return *problem;
    const std::string part = path + ".part";
    lxw_workbook* book = workbook_new(part.c_str());
    if (book == nullptr) return not_written(path, "not enough memory");
    lxw_doc_properties properties{};
    properties.created = static_cast<time_t>(made_at.unix_s);
    workbook_set_properties(book, &properties);
    lxw_worksheet* into = nullptr;
    if (!sheet.name.empty() && workbook_validate_sheet_name(book, sheet.name.c_str()) == LXW_NO_ERROR)
        into = workbook_add_worksheet(book, sheet.name.c_str());
    lxw_error error = into == nullptr ? LXW_ERROR_PARAMETER_VALIDATION : fill(book, into, sheet);
    // Closing frees the book, whatever came before.
    if (into == nullptr) workbook_add_worksheet(book, nullptr);
    const lxw_error closed = workbook_close(book);
    if (error == LXW_NO_ERROR) error = closed;
    std::error_code failed;
    if (error == LXW_NO_ERROR) std::filesystem::rename(part, path, failed);
    if (error == LXW_NO_ERROR && !failed) return true;
    std::error_code ignored;
    std::filesystem::remove(part, ignored);
    if (into == nullptr)
        return Problem{"sheet '" + for_message(sheet.name) + "'", "has a name that spreadsheets refuse",
                       "Give it a short name of letters"};
    return not_written(path, error != LXW_NO_ERROR ? lxw_strerror(error) : failed.message());
}

}  // namespace wg::sheets
