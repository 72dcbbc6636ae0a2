#pragma once
// At which minute of the hour the sun stands for the light of a source, found from the light itself: global less
// diffuse equals beam times the sine of the sun's height only for the right moment.

#include <optional>

#include "core/weather/year.h"

namespace wg::weather {

struct ClosureMinute {
    double minute = 30.0;          ///< from the start of the row's hour; may lie outside 0..60 when stamps are wrong
    double off_w_m2 = 0.0;         ///< root mean square of what does not close, at that minute
    double off_stated_w_m2 = 0.0;  ///< the same at the year's own `sun_minute`
    int hours = 0;                 ///< hours looked at
    /// Readings so consistent that the minute is beyond doubt: they were made at one moment, not averaged.
    [[nodiscard]] bool sharp() const noexcept {
        return hours >= 200 && off_w_m2 < 3.0 && off_stated_w_m2 > 4.0 * off_w_m2;
    }
};

/// Looks from 90 minutes before to 90 minutes after the year's `sun_minute`, over hours with beam above 200 W/m2 and
/// the sun above 5 deg. nullopt when there are fewer than 50 such hours.
[[nodiscard]] std::optional<ClosureMinute> closure_minute(const Year& year);

}  // namespace wg::weather
