#pragma once
// Header and columns of our own plain CSV. Inside this room only; the format is told in docs/weather-format.md.

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/weather/raw_year.h"

namespace wg::weather::detail {

inline constexpr std::size_t longest_plain_text = 500;  ///< bytes of source and of each remark
inline constexpr std::size_t most_plain_remarks = 100;

/// What a stamp marks of its hour.
enum class StampOf { start, middle, end };

/// One column that is known: its name, what it holds, and where it goes.
struct PlainColumn {
    const char* name;
    Quantity quantity;
    std::vector<double> RawYear::*series;
    bool light;
};
/// Every column but `time`. Several may lead to the same series: only one of them may be in a file.
[[nodiscard]] const std::vector<PlainColumn>& plain_columns();

struct PlainHeader {
    int place_line = 1;   ///< of latitude
    int column_line = 1;  ///< of the column names
    char separator = ',';
    StampOf stamp = StampOf::start;
    bool sun_minute_given = false;
    std::size_t width = 0;
    std::size_t time_at = 0;
    std::vector<std::optional<std::size_t>> at;  ///< as in plain_columns()
    [[nodiscard]] bool has(std::vector<double> RawYear::*series) const;
};

/// A first line by which the format is known: a comment, or column names of ours.
[[nodiscard]] bool looks_plain(std::string_view first_line);

/// Reads up to and with the line of column names; place, source and remarks go to `year`. False when refused.
[[nodiscard]] bool read_plain_header(Lines& lines, const std::string& file_name, Year& year, PlainHeader& header,
                                     Problems& problems);

/// The text on one printable line of at most `most_bytes`; of such a line the line itself.
[[nodiscard]] std::string one_line(std::string_view text, std::size_t most_bytes = longest_plain_text);

/// A figure with a point, or with one comma where fields are parted by semicolons. `buffer` holds the changed text.
[[nodiscard]] std::string_view with_point(std::string_view text, char separator, std::string& buffer);

}  // namespace wg::weather::detail
