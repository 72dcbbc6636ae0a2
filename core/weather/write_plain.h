#pragma once
// A weather year as our own plain CSV (docs/weather-format.md).

#include <string>

#include "core/weather/year.h"

namespace wg::weather {

/// The year as text, LF line ends, every figure with the fewest digits that give the same double again: `read_plain`
/// of it is the same year bit for bit, and writing that again gives the same text. Series shorter than 8,760 hours are
/// left out as columns; source and remarks are held to one line of 500 bytes.
[[nodiscard]] std::string write_plain(const Year& year);

}  // namespace wg::weather
