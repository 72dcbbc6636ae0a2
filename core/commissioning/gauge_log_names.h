#pragma once
// What the columns of a gauge's log hold, by their names and units. Internal to core/commissioning.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace wg::commissioning::gauge_log {

enum class Holds {
    unknown,
    date,               ///< and the clock stands in another column
    time,               ///< clock, or date and clock
    elapsed,            ///< number times factor: s
    absolute,           ///< number times factor: Pa
    gauge,              ///< number times factor: Pa over the air
    either,             ///< a pressure whose unit leaves open over what
    unitless_pressure,  ///< named a pressure, without a unit that is known
    temperature,        ///< (number - offset) times factor: deg C
};

struct ColumnName {
    Holds holds = Holds::unknown;
    double factor = 1.0;
    double offset = 0.0;
    bool from_start = false;  ///< of a time: named as elapsed, so no clock
    std::string name;
};

/// By the name and what stands below it in a line of units; the latter may be empty.
[[nodiscard]] ColumnName column_named(std::string_view name, std::string_view unit);

/// Whether the text alone is a unit that is known: "mbar", "[s]", "deg C".
[[nodiscard]] bool is_unit(std::string_view text);

struct LogField {
    std::string_view text;   ///< without surrounding blanks and quotes
    std::size_t column = 1;  ///< of its first character, from 1
    bool in_quotes = false;
};

/// Splits outside double quotes.
void split(std::string_view line, char separator, std::vector<LogField>& fields);

}  // namespace wg::commissioning::gauge_log
