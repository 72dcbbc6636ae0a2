#pragma once
// Readings of the day as pictures: a course over time with fitted line, band and limit; and what a reading should be
// beside what it was. Told apart by shape and line, so that grey print and sunlight lose nothing.

#include <QPainter>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

[[nodiscard]] PlotFrame readings_frame(const commissioning::Curve& curve, const QRectF& area, double text_units);
void paint_readings(QPainter& painter, const commissioning::Curve& curve, const QRectF& area, const Theme& theme,
                    double text_units);

/// Height that the bands want, one below the other.
[[nodiscard]] double bands_height(std::size_t bands, double text_units);
void paint_bands(QPainter& painter, const std::vector<commissioning::Band>& bands, const QRectF& area,
                 const Theme& theme, double text_units);

}  // namespace wg::ui
