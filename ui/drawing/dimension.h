#pragma once
// Dimensions in trade manner: thin line, oblique ticks, figure above the line, read from below or from the right.

#include <QPainter>
#include <QPointF>
#include <QString>
#include <vector>

#include "ui/drawing/lettering.h"

namespace wg::ui {

struct DimensionPen {
    const Lettering* lettering = nullptr;
    QColor line;
    QColor text;
    QColor plate;  ///< behind the figure; invalid: none
    double line_units = 1.0;
};

/// Dimension line from a to b (painter units), figure above its middle; when the figure is longer than the line it
/// stands beyond b. Returns the box the figure covers (of the unturned bounds for slanting lines).
QRectF draw_dimension(QPainter& painter, QPointF a, QPointF b, const QString& figure, const DimensionPen& pen);

/// One mark of a running chain: where it is on the axis, and what stands there.
struct ChainMark {
    double at = 0.0;  ///< painter x (chain along x) or painter y (chain along y)
    double to = 0.0;  ///< where the projection line starts at the object: painter y, or x
    QString figure;   ///< e.g. "1 240"
    QString numbers;  ///< points it serves, e.g. "1, 4"
};

/// Running dimensions from one datum along x, hanging below `line_y`: figures turned to be read from the right. Marks
/// closer than a line of text are spread with a knee in their projection line. Returns the depth used below line_y.
double draw_chain_x(QPainter& painter, double datum_x, double line_y, std::vector<ChainMark> marks,
                    const DimensionPen& pen);
/// The same along y, standing left of `line_x`; figures read from below.
double draw_chain_y(QPainter& painter, double datum_y, double line_x, std::vector<ChainMark> marks,
                    const DimensionPen& pen);
/// Depth that the longest mark needs, so that a margin can be chosen before drawing.
[[nodiscard]] double chain_depth(const std::vector<ChainMark>& marks, const Lettering& lettering);

/// Scale bar of a round length, at most `most_units` long, from its left lower end.
void draw_scale_bar(QPainter& painter, QPointF left, double units_per_m, double most_units, const DimensionPen& pen);

}  // namespace wg::ui
