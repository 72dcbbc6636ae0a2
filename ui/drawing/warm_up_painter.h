#pragma once
// Hours from cold to set-point by month, day beside night.

#include <array>
#include <optional>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct WarmUpPicture {
    std::array<std::optional<double>, 12> day_h, night_h;  ///< none: not reached
};

[[nodiscard]] PlotFrame warm_up_frame(const WarmUpPicture& picture, const QRectF& area, double text_units);
void paint_warm_up(QPainter& painter, const WarmUpPicture& picture, const QRectF& area, const Theme& theme,
                   double text_units);

}  // namespace wg::ui
