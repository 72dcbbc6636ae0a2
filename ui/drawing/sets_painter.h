#pragma once
// Sets of equipment by what they cost and how much water they leave short.

#include <QString>
#include <vector>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct SetsPicture {
    QString cost_title, comfort_title;
    struct Point {
        QString label;
        double cost = 0.0;
        double short_l = 0.0;
        bool front = false;    ///< not beaten in both
        bool stopped = false;  ///< something stands against it
        bool missed = false;   ///< the comfort asked for
        bool present = false;
        bool priced = true;  ///< false: not drawn
    };
    std::vector<Point> points;
    int selected = -1;
};

[[nodiscard]] PlotFrame sets_frame(const SetsPicture& picture, const QRectF& area, double text_units);
void paint_sets(QPainter& painter, const SetsPicture& picture, const QRectF& area, const Theme& theme,
                double text_units);
/// Nearest point within reach of the pointer; -1: none.
[[nodiscard]] int set_at(const SetsPicture& picture, const QRectF& area, QPointF at, double text_units);

}  // namespace wg::ui
