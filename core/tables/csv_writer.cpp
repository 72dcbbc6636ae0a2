#include "core/tables/csv_writer.h"

#include <algorithm>

namespace wg::tables {
namespace {

constexpr std::string_view runs_as_formula = "=+-@\t\r";

// An optional sign, digits, and at most one point with digits: what a spreadsheet takes as a number and nothing else.
bool is_plain_number(std::string_view text) {
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
    const auto points = std::count(text.begin(), text.end(), '.');
    return !text.empty() && text.find_first_not_of("0123456789.") == std::string_view::npos && points <= 1 &&
           text.front() != '.' && text.back() != '.';
}

// Within a number the sign does no harm; but "+34600..." would lose its plus, so a plus is always guarded. A text that
// looks guarded by itself gets one more, so that only that one is taken away.
bool needs_guard(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of('\''), text.size()));
    if (text.empty() || runs_as_formula.find(text.front()) == std::string_view::npos) return false;
    return text.front() != '-' || !is_plain_number(text);
}

void append_cell(std::string& out, std::string_view text, char separator) {
    const bool guard = needs_guard(text);
    const bool quote =
        text.find(separator) != std::string_view::npos || text.find_first_of("\"\r\n") != std::string_view::npos;
    if (quote) out += '"';
    if (guard) out += '\'';
    for (const char c : text) {
        if (c == '"') out += '"';
        out += c;
    }
    if (quote) out += '"';
}

}  // namespace

std::string write_csv(const std::vector<std::vector<std::string>>& rows, char separator) {
    std::string out;
    for (const std::vector<std::string>& row : rows) {
        // A line with one empty cell would be read as an empty line.
        if (row.size() == 1 && row.front().empty())
            out += "\"\"";
        else
            for (std::size_t i = 0; i < row.size(); ++i) {
                if (i > 0) out += separator;
                append_cell(out, row[i], separator);
            }
        out += "\r\n";
    }
    return out;
}

std::string_view without_guard(std::string_view cell) {
    if (cell.size() >= 2 && cell.front() == '\'' && needs_guard(cell.substr(1))) cell.remove_prefix(1);
    return cell;
}

}  // namespace wg::tables
