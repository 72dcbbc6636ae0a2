#pragma once
// What a reader gathers before it is a weather year: values as found, gaps marked, and the rules that close or refuse
// the gaps. Inside this room only.

#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"
#include "core/weather/row_order.h"
#include "core/weather/text_lines.h"
#include "core/weather/year.h"

namespace wg::weather::detail {

/// Marks a value the file does not have. Never leaves this room.
inline constexpr double missing = std::numeric_limits<double>::quiet_NaN();

/// One column of an hourly file: what it is called in messages, its range, and from where on a value means 'missing'.
struct Quantity {
    const char* name;
    const char* unit;
    double lowest;
    double highest;
    double missing_from;   ///< values at or above: missing
    double missing_below;  ///< values at or below: missing
    double scale = 1.0;    ///< file unit to SI
};

struct RawYear {
    Year year;  ///< place and source; its series are filled by `finish`
    std::vector<double> global, beam, diffuse, air, dew_point, humidity, wind, pressure, long_wave, cover;
    std::vector<int> line_of_row;
    int small_negatives = 0;  ///< light from -5 to 0 W/m2 set to 0
    RawYear();
    [[nodiscard]] std::size_t rows() const noexcept { return line_of_row.size(); }
};

inline constexpr double infinite = std::numeric_limits<double>::infinity();
/// Offset of a pyranometer at night, W/m2: light down to here counts as darkness, lower values as an error.
inline constexpr double lowest_light_w_m2 = -5.0;

/// Reads one field. Text that is no number, or a value out of range, is a problem and gives `missing`. An empty field
/// or the format's mark for missing gives `missing` without a problem.
[[nodiscard]] double read_value(const Field& field, const Quantity& quantity, int line, Problems& problems);
/// The same for light: from -5 W/m2 to 0 counts as 0 and is counted.
[[nodiscard]] double read_light(const Field& field, const Quantity& quantity, int line, RawYear& raw,
                                Problems& problems);

/// Checks place and time zone, closes short gaps, splits light where parts are missing, and says so in `remarks`.
/// `header_line` is where the place stands.
[[nodiscard]] Result<Year> finish(RawYear raw, int header_line, Problems& problems);

/// Whether a place's figures can be one. Adds problems.
void check_place(const Year& year, int header_line, Problems& problems);

}  // namespace wg::weather::detail
