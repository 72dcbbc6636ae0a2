#include "core/sheets/xlsx_writer.h"

#include <xlsxwriter.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <optional>
#include <string_view>
#include <system_error>

#include "core/quantity/utf8.h"

namespace wg::sheets {
namespace {

constexpr std::size_t most_rows = 1'048'575;
constexpr std::size_t most_columns = 16'384;
constexpr std::size_t most_characters = 32'767;
constexpr double widest_column = 60.0;
constexpr std::uint8_t paper_a4 = 9;  ///< ECMA-376, paperSize
constexpr double least_column = 8.0;
constexpr std::size_t day_characters = 10;
constexpr std::size_t moment_characters = 16;
constexpr std::int64_t day_s = 86'400;
constexpr const char* day_format = "yyyy-mm-dd";
constexpr const char* moment_format = "yyyy-mm-dd hh:mm";

std::size_t characters_of(std::string_view text) {
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

CivilDate date_of(const Cell& cell) {
    if (const auto* day = std::get_if<CivilDate>(&cell)) return *day;
    const std::int64_t s = std::get<Instant>(cell).unix_s;
    return civil_from_days(s / day_s - (s % day_s < 0 ? 1 : 0));
}

/// Of a moment with its time, to the minute; of a day without.
lxw_datetime datetime_of(const Cell& cell) {
    const CivilDate date = date_of(cell);
    lxw_datetime out{date.year, date.month, date.day, 0, 0, 0.0};
    if (const auto* moment = std::get_if<Instant>(&cell)) {
        const std::int64_t s = (moment->unix_s % day_s + day_s) % day_s;
        out.hour = static_cast<int>(s / 3600);
        out.min = static_cast<int>(s / 60 % 60);
        out.sec = static_cast<double>(s % 60);
    }
    return out;
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
            } else if (const auto* figure = std::get_if<double>(&cell)) {
                if (!std::isfinite(*figure))
                    return Problem{cell_place(row + 1, i), "is no number", "Leave the cell empty"};
            } else if (const int year = date_of(cell).year; year < 1900 || year > 9999) {
                return Problem{cell_place(row + 1, i), "is a day before 1900 or after 9999", "Write it as text"};
            }
        }
    }
    return std::nullopt;
}

Problem not_written(const std::string& path, const std::string& why) {
    return {path, "cannot be written: " + why, "Choose a folder you may write to, with room on the disk"};
}

std::size_t longest_line(std::string_view text) {
    std::size_t longest = 0;
    for (std::size_t from = 0; from <= text.size();) {
        const std::size_t end = std::min(text.find('\n', from), text.size());
        longest = std::max(longest, characters_of(text.substr(from, end - from)));
        from = end + 1;
    }
    return longest;
}

// As wide as the first rows need, within bounds.
double column_width(const Sheet& sheet, std::size_t column) {
    constexpr std::size_t rows_to_look_at = 200;
    std::size_t longest = characters_of(sheet.heads[column]);
    for (std::size_t row = 0; row < std::min(rows_to_look_at, sheet.rows.size()); ++row) {
        if (column >= sheet.rows[row].size()) continue;
        const Cell& cell = sheet.rows[row][column];
        if (const auto* text = std::get_if<std::string>(&cell))
            longest = std::max(longest, longest_line(*text));
        else if (std::holds_alternative<CivilDate>(cell))
            longest = std::max(longest, day_characters);
        else if (std::holds_alternative<Instant>(cell))
            longest = std::max(longest, moment_characters);
    }
    return std::clamp(static_cast<double>(longest) + 2.0, least_column, widest_column);
}

/// How the cells of a sheet look.
struct Formats {
    lxw_format* bold;
    lxw_format* day;
    lxw_format* moment;
    lxw_format* lines;  ///< a text of several lines shows them
};

Formats formats_of(lxw_workbook* book) {
    const Formats out{workbook_add_format(book), workbook_add_format(book), workbook_add_format(book),
                      workbook_add_format(book)};
    format_set_bold(out.bold);
    format_set_bottom(out.bold, LXW_BORDER_THIN);
    for (const auto& [format, words] : {std::pair{out.day, day_format}, std::pair{out.moment, moment_format}}) {
        format_set_num_format(format, words);
        format_set_align(format, LXW_ALIGN_LEFT);
    }
    format_set_text_wrap(out.lines);
    format_set_align(out.lines, LXW_ALIGN_VERTICAL_TOP);
    return out;
}

lxw_error write_cell(lxw_worksheet* into, lxw_row_t row, lxw_col_t column, const Cell& cell, const Formats& formats) {
    if (const auto* text = std::get_if<std::string>(&cell)) {
        const bool lines = text->find('\n') != std::string::npos;
        return worksheet_write_string(into, row, column, text->c_str(), lines ? formats.lines : nullptr);
    }
    if (const auto* figure = std::get_if<double>(&cell))
        return worksheet_write_number(into, row, column, *figure, nullptr);
    lxw_datetime when = datetime_of(cell);
    return worksheet_write_datetime(into, row, column, &when,
                                    std::holds_alternative<Instant>(cell) ? formats.moment : formats.day);
}

lxw_error fill(lxw_workbook* book, lxw_worksheet* into, const Sheet& sheet) {
    const Formats formats = formats_of(book);
    worksheet_freeze_panes(into, 1, 0);
    // On paper: all columns on one page's width, the heads on each page.
    worksheet_set_landscape(into);
    worksheet_set_paper(into, paper_a4);
    worksheet_fit_to_pages(into, 1, 0);
    worksheet_repeat_rows(into, 0, 0);
    for (std::size_t i = 0; i < sheet.heads.size(); ++i) {
        const auto column = static_cast<lxw_col_t>(i);
        worksheet_set_column(into, column, column, column_width(sheet, i), nullptr);
        if (const lxw_error error = worksheet_write_string(into, 0, column, sheet.heads[i].c_str(), formats.bold))
            return error;
    }
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        for (std::size_t i = 0; i < sheet.rows[row].size(); ++i) {
            const auto at = static_cast<lxw_row_t>(row + 1);
            const auto column = static_cast<lxw_col_t>(i);
            const lxw_error error = write_cell(into, at, column, sheet.rows[row][i], formats);
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
