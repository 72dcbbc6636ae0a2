#pragma once
// Two pictures of the rating test: the heating up over time, and how far computed values lie from declared ones.

#include <vector>

#include "core/rating/rating.h"
#include "ui/drawing/plot_frame.h"

namespace wg::ui {

/// Heating up in the airs of the test; power is shown for one of them.
struct HeatUpPicture {
    struct Course {
        QString label;
        std::vector<rating::CurvePoint> points;
    };
    std::vector<Course> courses;
    std::size_t chosen = 0;
    double set_point_c = 55.0;
};
[[nodiscard]] PlotFrame heat_up_frame(const HeatUpPicture& picture, const QRectF& area, double text_units);
void paint_heat_up(QPainter& painter, const HeatUpPicture& picture, const QRectF& area, const Theme& theme,
                   double text_units);

/// A declared value with what was computed, as shares of the declared one; NaN: could not be computed.
struct OffByRow {
    QString label;
    double before = 0.0;
    double after = 0.0;
    double tolerance = 0.05;
};
/// Height that rows and axes want.
[[nodiscard]] double off_by_height(std::size_t rows, double text_units);
void paint_off_by(QPainter& painter, const std::vector<OffByRow>& rows, const QRectF& area, const Theme& theme,
                  double text_units);

}  // namespace wg::ui
