#pragma once
// Two small pictures of a weather year: its months as bars, and clear mornings against clear afternoons.

#include <array>

#include "core/sky/clear_days.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct WeatherMonths {
    std::array<double, 12> beam_kwh_m2{};  ///< on the horizontal
    std::array<double, 12> diffuse_kwh_m2{};
    std::array<double, 12> air_c{};
};
[[nodiscard]] PlotFrame weather_months_frame(const WeatherMonths& months, const QRectF& area, double text_units);
void paint_weather_months(QPainter& painter, const WeatherMonths& months, const QRectF& area, const Theme& theme,
                          double text_units);

void paint_clear_days(QPainter& painter, const sky::ClearDayProfile& profile, const QRectF& area, const Theme& theme,
                      double text_units);

}  // namespace wg::ui
