#pragma once
// Twelve months as bars, stacked or side by side, with lines over them; screen and paper alike.

#include <array>
#include <optional>
#include <vector>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

using MonthValues = std::array<double, 12>;

/// A hatch tells parts apart that a grey print would not.
enum class BarHatch { none, rising, falling, crossed };

struct BarPart {
    QString name;
    QColor colour;
    BarHatch hatch = BarHatch::none;
    MonthValues values{};
};
struct BarLine {
    QString name;
    QColor colour;
    Qt::PenStyle style = Qt::SolidLine;
    MonthValues values{};
};

struct BarsPicture {
    std::vector<BarPart> parts;
    std::vector<BarLine> lines;
    bool stacked = true;
    bool counts = false;                ///< whole things are counted: no mark between one and the next
    QString y_title;                    ///< with the unit
    std::optional<std::size_t> cursor;  ///< month that is pointed at
};

[[nodiscard]] PlotFrame bars_frame(const BarsPicture& picture, const QRectF& area, double text_units);
void paint_bars(QPainter& painter, const BarsPicture& picture, const QRectF& area, const Theme& theme,
                double text_units);
/// Month 0..11 at a place in the picture; none outside.
[[nodiscard]] std::optional<std::size_t> month_at(const PlotFrame& frame, QPointF at);

}  // namespace wg::ui
