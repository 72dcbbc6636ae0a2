#pragma once
// A horizon as it was read with compass and inclinometer, from pasted text or a CSV file.

#include <string>
#include <string_view>
#include <vector>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg::site {

/// Lines of bearing and elevation in degrees, split by tab, semicolon, comma or blanks; decimal comma where tab or
/// semicolon split. A first line of words is a heading, lines that are empty or begin with # are passed over. Bearings
/// 0..360 as the compass showed them; `declination_deg` (east positive) makes them true. Elevations 0..80. In order of
/// true bearing. Problems name the line: no two numbers, out of range, a bearing twice, more than 720 lines, nothing at
/// all.
[[nodiscard]] Result<std::vector<HorizonPoint>> horizon_from_text(std::string_view text, double declination_deg);

/// The same the other way, bearings as the compass would show them; one decimal, semicolons.
[[nodiscard]] std::string horizon_to_text(const std::vector<HorizonPoint>& horizon, double declination_deg);

}  // namespace wg::site
