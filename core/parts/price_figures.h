#pragma once
// Figures as spreadsheets and suppliers write them: "1.234,50 EUR", "1,234.50", "1 234,5", "12 %".
// For the room's own .cpp files.

#include <optional>
#include <string>
#include <string_view>

#include "core/parts/price_import.h"

namespace wg::parts {

struct WrittenFigure {
    std::string digits;      ///< "-1234.5": sign, digits, at most one point; no thousands
    const char* wrong = "";  ///< in words that follow the figure; empty: nothing
    const char* remedy = "";
};

/// The figure without the marks between thousands (point, comma, space, apostrophe; groups of three).
[[nodiscard]] WrittenFigure read_figure(std::string_view text, DecimalSign sign);

/// What a figure by itself shows of the sign; `undecided`: it has none, or can be read in two ways.
[[nodiscard]] DecimalSign sign_shown_by(std::string_view text);
/// "1.234" and "1,234": a thousand, or one and a bit.
[[nodiscard]] bool reads_two_ways(std::string_view text);

/// Without spaces around it, no-break ones included.
[[nodiscard]] std::string_view without_outer_spaces(std::string_view text);
/// Takes the code or sign of the currency, or a percent sign, off the end or the front; false: it is of another
/// currency.
[[nodiscard]] bool take_off_currency(std::string_view& text, const std::string& currency);

}  // namespace wg::parts
