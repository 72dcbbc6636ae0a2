#pragma once
// The last step of a reader: let the light correct the minute at which the sun stands for it.

#include "core/weather/year.h"

namespace wg::weather::detail {

/// Where the light fixes the minute beyond doubt and the format's rule contradicts it by more than five minutes, takes
/// the minute from the light, moves all rows by the whole hours in it, and says so in `remarks`.
void adopt_minute_of_light(Year& year);

}  // namespace wg::weather::detail
