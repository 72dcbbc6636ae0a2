#pragma once
// Parts of the sun-path picture that stand in front of the sky. Internal to ui/drawing.

#include <QPainterPath>
#include <algorithm>
#include <vector>

#include "ui/drawing/sun_path_painter.h"

namespace wg::ui::sun_path {

struct Inks {
    QColor horizon, obstacle, tree, behind, sun, hours;
};
[[nodiscard]] Inks inks_of(const Theme& theme);
[[nodiscard]] QColor thin(QColor colour, double share);

/// Area from the horizon up to a height given for every bearing.
template <class Height>
QPainterPath silhouette(const SunPathFrame& where, Height height_deg) {
    QPainterPath path(where.frame.map(where.frame.x_from, 0.0));
    for (double x = where.frame.x_from; x <= where.frame.x_to + 1e-9; x += 0.5) {
        path.lineTo(where.frame.map(x, std::clamp(height_deg(where.bearing_of(x)), 0.0, where.frame.y_to)));
    }
    path.lineTo(where.frame.map(where.frame.x_to, 0.0));
    path.closeSubpath();
    return path;
}

void fill_horizon(QPainter& painter, const QPainterPath& path, const Theme& theme, double line);
void fill_obstacle(QPainter& painter, const QPainterPath& path, const Theme& theme, double line, bool tree);
void fill_behind(QPainter& painter, const QPainterPath& path, const Theme& theme, double line);

/// Neighbouring steps that belong to the same thing.
struct Block {
    std::vector<const SkylineStep*> steps;
    QPainterPath path;
    QPointF top;
};
[[nodiscard]] std::vector<Block> blocks_of(const SunPathPicture& picture, const SunPathFrame& where);

/// The sun at the moment shown beside, and the horizon's reading being entered.
void paint_marks(const PictureInk& ink, const SunPathPicture& picture, const SunPathFrame& where, LabelPlacer& placer);

[[nodiscard]] std::vector<LegendItem> legend_of(const SunPathPicture& picture, const Theme& theme, double line);

}  // namespace wg::ui::sun_path
