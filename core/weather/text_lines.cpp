#include "core/weather/text_lines.h"

#include <charconv>
#include <cmath>

namespace wg::weather::detail {
namespace {

constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

bool blank(char c) {
    return c == ' ' || c == '\t';
}

Field trimmed(std::string_view line, std::size_t from, std::size_t to) {
    while (from < to && blank(line[from]))
        ++from;
    while (to > from && blank(line[to - 1]))
        --to;
    if (to - from >= 2 && line[from] == '"' && line[to - 1] == '"') {
        ++from;
        --to;
    }
    return {line.substr(from, to - from), from + 1};
}

}  // namespace

Lines::Lines(std::string_view text) : rest_(text) {
    if (starts_with(rest_, byte_order_mark)) rest_.remove_prefix(byte_order_mark.size());
}

std::optional<Line> Lines::next() {
    if (rest_.empty()) return std::nullopt;
    const std::size_t end = rest_.find('\n');
    std::string_view text = rest_.substr(0, end);
    rest_.remove_prefix(end == std::string_view::npos ? rest_.size() : end + 1);
    if (!text.empty() && text.back() == '\r') text.remove_suffix(1);
    return Line{text, ++number_};
}

void split(std::string_view line, std::vector<Field>& fields, char separator) {
    fields.clear();
    bool quoted = false;
    std::size_t from = 0;
    for (std::size_t i = 0; i <= line.size(); ++i) {
        if (i < line.size() && line[i] == '"') quoted = !quoted;
        if (i == line.size() || (line[i] == separator && !quoted)) {
            fields.push_back(trimmed(line, from, i));
            from = i + 1;
        }
    }
}

std::optional<double> number(std::string_view text) {
    if (!text.empty() && text.front() == '+') text.remove_prefix(1);
    double value = 0.0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    if (error != std::errc() || stop != end || !std::isfinite(value)) return std::nullopt;
    return value;
}

std::optional<int> whole_number(std::string_view text) {
    if (text.empty() || text.size() > 10) return std::nullopt;
    int value = 0;
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, value);
    if (error != std::errc() || stop != end) return std::nullopt;
    return value;
}

bool starts_with(std::string_view text, std::string_view prefix) {
    return text.substr(0, prefix.size()) == prefix;
}

void Problems::add(int line, std::size_t column, std::string what, std::string remedy) {
    if (full()) return;
    list_.push_back(
        {file_ + ":" + std::to_string(line) + ":" + std::to_string(column), std::move(what), std::move(remedy)});
    if (full()) list_.back().what += " (reading stopped here: too many problems)";
}

std::vector<Problem> Problems::take() {
    return std::move(list_);
}

bool plausible_text(std::string_view text, Problems& problems) {
    if (text.empty()) {
        problems.add(1, 1, "the file is empty", "Fetch the weather file again");
        return false;
    }
    if (text.size() > largest_file) {
        problems.add(1, 1, "the file is larger than 64 MB, too large for one weather year",
                     "Choose a file with hourly values of one year");
        return false;
    }
    Lines lines(text);
    while (const auto line = lines.next()) {
        if (line->text.size() > longest_line) {
            problems.add(line->number, longest_line, "the line is longer than 16384 characters",
                         "The file is damaged or not a weather file; fetch it again");
            return false;
        }
    }
    return true;
}

}  // namespace wg::weather::detail
