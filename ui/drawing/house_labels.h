#pragma once
// Labels and compass of the whole-house view. Internal to ui/drawing.

#include <QPolygonF>
#include <QRectF>
#include <vector>

#include "ui/drawing/house_painter.h"

namespace wg::ui {

/// What was painted, in the order of painting.
struct HouseOutline {
    QPolygonF outline;
    QRectF bounds;
    int thing = 0;
    bool face = true;  ///< its face is seen, and not at so flat an angle that it is a line
};

/// Labels of what can be seen, most important first; one that finds no free place is left out. Returns their places.
std::vector<QRectF> paint_house_labels(QPainter& painter, const HouseDrawing& what, const HouseView& view,
                                       const Theme& theme, const std::vector<HouseOutline>& outlines);

}  // namespace wg::ui
