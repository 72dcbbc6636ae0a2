#pragma once
// A yearly figure by tilt and bearing as a chequer of cells with their figures, and where the choice's plate lies.

#include <QString>
#include <vector>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct FacingPicture {
    QString title;  ///< of the figure, with unit
    int decimals = 0;
    std::vector<double> tilts_deg, bearings_deg;          ///< rising, even steps
    std::vector<double> values;                           ///< by tilt, then bearing
    std::vector<QString> second;                          ///< small text under each value; empty: none
    double here_tilt_deg = -1.0, here_bearing_deg = 0.0;  ///< tilt under 0: no mark
    bool equator_south = true;                            ///< the bearings are shown with this side in the middle
};

[[nodiscard]] PlotFrame facing_frame(const FacingPicture& picture, const QRectF& area, double text_units);
void paint_facing(QPainter& painter, const FacingPicture& picture, const QRectF& area, const Theme& theme,
                  double text_units);
/// Index of the cell under a place; -1: none.
[[nodiscard]] int facing_at(const FacingPicture& picture, const PlotFrame& frame, QPointF at);

}  // namespace wg::ui
