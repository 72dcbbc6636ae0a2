#pragma once
// Lines and comma-separated fields of a text from outside, with the place of each kept for messages.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"

namespace wg::weather::detail {

inline constexpr std::size_t longest_line = 16384;
inline constexpr std::size_t largest_file = 64u * 1024u * 1024u;

struct Field {
    std::string_view text;   ///< without surrounding blanks and quotes
    std::size_t column = 1;  ///< of its first character in the line, from 1
};

struct Line {
    std::string_view text;  ///< without line end
    int number = 0;         ///< from 1
};

/// Walks over the lines of a text: LF or CRLF, a leading UTF-8 byte order mark skipped.
class Lines {
   public:
    explicit Lines(std::string_view text);
    [[nodiscard]] std::optional<Line> next();
    [[nodiscard]] int last_number() const noexcept { return number_; }

   private:
    std::string_view rest_;
    int number_ = 0;
};

/// Splits at commas (or another separator) outside double quotes.
void split(std::string_view line, std::vector<Field>& fields, char separator = ',');

/// A finite number filling the whole text; nullopt else (also for "nan", "inf", hex and trailing letters).
[[nodiscard]] std::optional<double> number(std::string_view text);
/// A whole number of up to nine digits, optional minus.
[[nodiscard]] std::optional<int> whole_number(std::string_view text);

/// Case-sensitive: weather formats write their keywords one way.
[[nodiscard]] bool starts_with(std::string_view text, std::string_view prefix);

/// Gathers problems and stops a reader when there are too many to be of use.
class Problems {
   public:
    explicit Problems(std::string file) : file_(std::move(file)) {}
    void add(int line, std::size_t column, std::string what, std::string remedy);
    [[nodiscard]] bool empty() const noexcept { return list_.empty(); }
    [[nodiscard]] bool full() const noexcept { return list_.size() >= most; }
    [[nodiscard]] std::vector<Problem> take();

   private:
    static constexpr std::size_t most = 20;
    std::string file_;
    std::vector<Problem> list_;
};

/// Refuses what no weather year can be: empty, too large, a line too long. True when the text may be read.
[[nodiscard]] bool plausible_text(std::string_view text, Problems& problems);

}  // namespace wg::weather::detail
