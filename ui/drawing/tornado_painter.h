#pragma once
// What each unsure input does to one figure: a bar from its low to its high about the middle, widest on top.

#include <QString>
#include <vector>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct TornadoPicture {
    QString title;  ///< of the figure's axis, with unit
    int decimals = 0;
    double nominal = 0.0;
    struct Row {
        QString label;
        QString low_text, high_text;  ///< the input's own values
        double at_low = 0.0, at_high = 0.0;
        QString share;  ///< "88 %"
    };
    std::vector<Row> rows;  ///< widest first
};

inline constexpr std::size_t most_tornado_rows = 12;

[[nodiscard]] PlotFrame tornado_frame(const TornadoPicture& picture, const QRectF& area, double text_units);
void paint_tornado(QPainter& painter, const TornadoPicture& picture, const QRectF& area, const Theme& theme,
                   double text_units);
/// The row under a place of the picture, in words; empty: none.
[[nodiscard]] QString tornado_words(const TornadoPicture& picture, const PlotFrame& frame, QPointF at);

}  // namespace wg::ui
