#pragma once
// Readings over time with the curve fitted to them, a band and a limit; screen and paper alike.

#include "core/commissioning/commissioning.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

/// Range that takes in everything the curve holds, with zero and the limit; what is not a number is left out.
[[nodiscard]] PlotFrame reading_curve_frame(const commissioning::Curve& curve, const QRectF& area, double text_units);
/// Readings as rings, the fitted curve as a line, the band hatched, the limit dashed with its name.
void paint_reading_curve(QPainter& painter, const commissioning::Curve& curve, const QRectF& area, const Theme& theme,
                         double text_units);

}  // namespace wg::ui
