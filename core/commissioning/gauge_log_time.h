#pragma once
// Times as loggers write them. Internal to core/commissioning.

#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/time.h"

namespace wg::commissioning::gauge_log {

struct LogTime {
    std::optional<CivilDate> date;
    double s_of_day = 0.0;          ///< or since the start: hours may be more than 23 where there is no date
    std::optional<int> offset_min;  ///< east of UTC
};

/// 2026-11-28, 2026/11/28 or 28.11.2026.
[[nodiscard]] std::optional<CivilDate> log_date(std::string_view text);

/// A clock (19:20, 7:20:34 PM, 19:20:34,5) or a date as above with a clock after T or a blank, with Z or +01:00 or
/// without.
[[nodiscard]] std::optional<LogTime> log_time(std::string_view text);

/// 28/11/2026 may be two days: told apart from what is no date at all for the message.
[[nodiscard]] bool ambiguous_date(std::string_view text);

}  // namespace wg::commissioning::gauge_log
