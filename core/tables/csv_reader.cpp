#include "core/tables/csv_reader.h"

#include <array>
#include <map>
#include <optional>

#include "core/quantity/text.h"
#include "core/quantity/utf8.h"
#include "core/tables/windows_1252.h"

namespace wg::tables {
namespace {

constexpr std::size_t most_problems = 20;
constexpr std::size_t lines_to_look_at = 50;
constexpr std::array<char, 3> separators = {',', ';', '\t'};

std::string at_line(const std::string& file, int line) {
    return file + ", line " + std::to_string(line);
}

const char* separator_name(char separator) {
    switch (separator) {
        case ';': return "semicolons";
        case '\t': return "tabs";
        default: return "commas";
    }
}

/// Bytes that no comma-separated text begins with or holds.
std::optional<Problem> refuse_other_files(std::string_view bytes, const std::string& file, const CsvLimits& limits) {
    if (bytes.size() > limits.bytes)
        return Problem{file, "is longer than " + std::to_string(limits.bytes >> 20U) + " MB", "Split it into parts"};
    if (bytes.starts_with("PK\x03\x04") || bytes.starts_with("\xd0\xcf\x11\xe0"))
        return Problem{file, "is a spreadsheet's own file, not comma-separated text",
                       "Save the sheet as CSV (UTF-8) and choose that file"};
    if (bytes.starts_with("\xff\xfe") || bytes.starts_with("\xfe\xff"))
        return Problem{file, "is written in UTF-16", "Save it as CSV in UTF-8"};
    if (bytes.find('\0') != std::string_view::npos)
        return Problem{file, "holds bytes that are no text", "Save the table as CSV (UTF-8) and choose that file"};
    if (bytes.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return Problem{file, "is empty", "Choose a file with a line of headings and a line for each entry"};
    return std::nullopt;
}

/// Walks over the cells of a text; a quoted cell may hold separators, line ends and doubled quotes.
class CellWalk {
   public:
    CellWalk(std::string_view text, char separator) : rest_(text), separator_(separator) {}

    enum class End { cell, line, text };
    struct Cell {
        std::string text;
        bool quoted = false;
        int line = 1;            ///< in which it begins
        const char* wrong = "";  ///< in words; empty: nothing
        End end = End::text;
    };

    [[nodiscard]] bool done() const { return at_ >= rest_.size() && !after_separator_; }

    [[nodiscard]] Cell next(std::size_t most_bytes) {
        Cell cell;
        cell.line = line_;
        after_separator_ = false;
        if (at_ < rest_.size() && rest_[at_] == '"') read_quoted(cell, most_bytes);
        read_plain(cell, most_bytes);
        cell.end = read_end();
        return cell;
    }

   private:
    void read_quoted(Cell& cell, std::size_t most_bytes) {
        cell.quoted = true;
        ++at_;
        while (at_ < rest_.size()) {
            const char c = rest_[at_++];
            if (c == '"') {
                if (at_ >= rest_.size() || rest_[at_] != '"') return;
                ++at_;
            } else if (c == '\n' || (c == '\r' && (at_ >= rest_.size() || rest_[at_] != '\n'))) {
                ++line_;
            }
            if (cell.text.size() >= most_bytes)
                cell.wrong = "has a cell that is too long: is a quote missing?";
            else
                cell.text += c;
        }
        cell.wrong = "begins a cell with a quote that is never closed";
    }

    void read_plain(Cell& cell, std::size_t most_bytes) {
        const std::size_t from = at_;
        while (at_ < rest_.size() && rest_[at_] != separator_ && rest_[at_] != '\n' && rest_[at_] != '\r')
            ++at_;
        const std::string_view plain = rest_.substr(from, at_ - from);
        if (!cell.quoted) {
            if (plain.size() > most_bytes)
                cell.wrong = "has a cell that is too long: is it the right file?";
            else
                cell.text = plain;
        } else if (plain.find_first_not_of(" \t") != std::string_view::npos && *cell.wrong == '\0') {
            cell.wrong = "has text behind a closed quote";
        }
    }

    [[nodiscard]] End read_end() {
        if (at_ >= rest_.size()) return End::text;
        const char c = rest_[at_++];
        if (c == separator_) {
            after_separator_ = true;
            return End::cell;
        }
        if (c == '\r' && at_ < rest_.size() && rest_[at_] == '\n') ++at_;
        ++line_;
        return End::line;
    }

    std::string_view rest_;
    char separator_;
    std::size_t at_ = 0;
    int line_ = 1;
    bool after_separator_ = false;  ///< a cell follows, even when there is nothing more
};

/// How evenly a separator parts the first lines.
struct Evenness {
    std::size_t lines = 0;  ///< that have the commonest number of cells, when that is more than one
    std::size_t cells = 0;  ///< that number
    std::size_t wrong = 0;
};

Evenness evenness_of(std::string_view text, char separator, std::size_t most_bytes) {
    std::map<std::size_t, std::size_t> lines_with;
    CellWalk walk(text, separator);
    Evenness out;
    std::size_t cells = 0;
    for (std::size_t lines = 0; lines < lines_to_look_at && !walk.done();) {
        const CellWalk::Cell cell = walk.next(most_bytes);
        if (*cell.wrong != '\0') ++out.wrong;
        ++cells;
        if (cell.end == CellWalk::End::cell) continue;
        if (cells > 1) ++lines_with[cells];
        cells = 0;
        ++lines;
    }
    for (const auto& [count, lines] : lines_with) {
        if (lines >= out.lines) out = {lines, count, out.wrong};
    }
    return out;
}

/// Nothing when every line is one cell.
std::optional<char> separator_of(std::string_view text, std::size_t most_bytes) {
    std::optional<char> best;
    Evenness most;
    for (const char separator : separators) {
        const Evenness one = evenness_of(text, separator, most_bytes);
        if (one.lines == 0) continue;
        const auto rank = [](const Evenness& e) { return std::pair(e.lines, e.cells); };
        const bool better = !best || one.wrong < most.wrong || (one.wrong == most.wrong && rank(one) > rank(most));
        if (!better) continue;
        best = separator;
        most = one;
    }
    return best;
}

class TableReader {
   public:
    TableReader(const std::string& file, const CsvLimits& limits) : file_(file), limits_(limits) {}

    [[nodiscard]] std::vector<Problem> read(std::string_view text, CsvTable& out) {
        CellWalk walk(text, out.separator);
        std::vector<std::string> row;
        int line = 1;
        bool blank = true;
        while (!walk.done() && problems_.size() < most_problems) {
            CellWalk::Cell cell = walk.next(limits_.cell_bytes);
            if (row.empty()) line = cell.line;
            if (*cell.wrong != '\0') problem(cell.line, cell.wrong, "Correct the line in the file");
            blank = blank && cell.text.empty() && !cell.quoted;
            if (row.size() == limits_.columns) {
                problem(line, "has more than " + counted(static_cast<long>(limits_.columns), "cell", "cells"),
                        "Check that it is the right file");
                return problems_;
            }
            row.push_back(std::move(cell.text));
            if (cell.end == CellWalk::End::cell) continue;
            if (row.size() > 1 || !blank) {
                cells_ += row.size();
                if (out.rows.size() == limits_.rows || cells_ > limits_.cells) {
                    problem(line, "is past what is read at once (" + std::to_string(limits_.rows) + " lines)",
                            "Split the file into parts");
                    return problems_;
                }
                out.rows.push_back(std::move(row));
                out.line_of_row.push_back(line);
            }
            row.clear();
            blank = true;
        }
        return problems_;
    }

   private:
    void problem(int line, std::string what, std::string remedy) {
        problems_.push_back({at_line(file_, line), std::move(what), std::move(remedy)});
    }

    const std::string& file_;
    const CsvLimits& limits_;
    std::size_t cells_ = 0;
    std::vector<Problem> problems_;
};

}  // namespace

Result<CsvTable> read_csv(std::string_view bytes, const std::string& file_name, const CsvLimits& limits) {
    const std::string file = for_message(file_name);
    if (std::optional<Problem> refused = refuse_other_files(bytes, file, limits)) return *refused;
    CsvTable out;
    std::string converted;
    std::string_view text = bytes;
    out.encoding = "UTF-8";
    if (text.starts_with("\xef\xbb\xbf")) {
        text.remove_prefix(3);
        if (!is_utf8(text)) return Problem{file, "says that it is UTF-8 and is not", "Save it as CSV in UTF-8 again"};
    } else if (!is_utf8(text)) {
        const std::optional<std::string> from_windows = utf8_of_windows_1252(text);
        if (!from_windows) return Problem{file, "is neither UTF-8 nor Windows-1252", "Save it as CSV in UTF-8"};
        converted = *from_windows;
        text = converted;
        out.encoding = "Windows-1252";
        out.assumed.emplace_back("The file is not UTF-8 and was read as Windows-1252: check letters with accents");
    }
    const std::optional<char> separator = separator_of(text, limits.cell_bytes);
    out.separator = separator.value_or(',');
    out.assumed.emplace_back(separator ? std::string("Cells are parted by ") + separator_name(out.separator)
                                       : std::string("No comma, semicolon or tab parts the lines: one column"));
    std::vector<Problem> problems = TableReader(file, limits).read(text, out);
    if (!problems.empty()) return problems;
    if (out.rows.empty())
        return Problem{file, "holds no line", "Choose a file with a line of headings and a line for each entry"};
    return out;
}

}  // namespace wg::tables
