#pragma once
// A weather year with all that its pictures need, worked out once, off the window's thread.

#include <memory>
#include <vector>

#include "core/plan/reference.h"
#include "core/sky/clear_days.h"
#include "core/weather/quality.h"

namespace wg::ui {

struct YearLook {
    std::shared_ptr<const plan::PreparedWeather> weather;
    weather::QualityReport report;
    sky::ClearDayProfile clear_days;
    std::vector<double> sunrise_h, sunset_h;  ///< of each day, local standard time; NaN: none that day
};

/// `weather` not null.
[[nodiscard]] std::shared_ptr<const YearLook> look_at(const std::shared_ptr<const plan::PreparedWeather>& weather);

}  // namespace wg::ui
