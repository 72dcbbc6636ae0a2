#pragma once
// A year of hours at one look: days across, hours of the day up, a colour for the value.

#include <cstdint>
#include <vector>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct CarpetPicture {
    const std::vector<double>* values = nullptr;  ///< 8,760; null or short: nothing is drawn
    QString unit;                                 ///< of the scale
    double low = 0.0, high = 1.0;                 ///< ends of the colours
    bool dark_is_much = false;                    ///< for loads; otherwise much is pale, as light looks
    /// 8,760 numbers of flag, 0: nothing; empty: none. Marked over the colours in the caution colour.
    std::vector<std::uint8_t> flags;
    QString flag_words;          ///< for the legend, "in doubt"
    bool flag_lozenges = false;  ///< flagged hours as black lozenges with a white rim: seen without colour
    int cursor = -1;             ///< hour of the year in a ring; -1: none
    /// Lines over the picture, such as sunrise and sunset: hour of day for each of 365 days; NaN: none that day.
    std::vector<double> line_a, line_b;
    QString line_words;
};

/// Round ends for the colours of a series.
void set_scale(CarpetPicture& picture, double least, double most);

struct CarpetFrame {
    PlotFrame frame;  ///< days 0..365 across, hours 0..24 up
    QRectF bar;
};
[[nodiscard]] CarpetFrame carpet_frame(const CarpetPicture& picture, const QRectF& area, double text_units);
void paint_carpet(QPainter& painter, const CarpetPicture& picture, const QRectF& area, const Theme& theme,
                  double text_units);
/// Hour of the year at a place in the picture; -1 outside.
[[nodiscard]] int hour_at(const CarpetFrame& where, QPointF at);

}  // namespace wg::ui
