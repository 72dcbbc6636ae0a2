#pragma once
// Curves over one common axis in panels below each other, each with its own unit and legend; screen and paper alike.

#include <optional>
#include <vector>

#include "ui/drawing/plot_frame.h"

namespace wg::ui {

struct Curve {
    QString name;  ///< empty: not in the legend
    QColor colour;
    Qt::PenStyle style = Qt::SolidLine;
    double width = 2.0;
    std::vector<QPointF> points;
    bool filled = false;  ///< down to zero, hatched
};
/// Area between two curves of the same x.
struct CurveBand {
    QString name;
    QColor colour;
    std::vector<QPointF> upper, lower;
};
/// Stretch of the axis that is hatched over.
struct CurveSpan {
    double from = 0.0, to = 0.0;
};
/// A place on a curve that has a name.
struct CurveMark {
    QPointF at;
    QString text;
};

struct CurvesPanel {
    QString unit;
    double low = 0.0, high = 1.0;
    double share = 1.0;  ///< of the height, against the other panels
    std::vector<CurveBand> bands;
    std::vector<Curve> curves;
    std::vector<CurveSpan> spans;
    QString span_name;
    std::vector<CurveMark> marks;
};

struct CurvesPicture {
    Axis x;
    double x_from = 0.0, x_to = 1.0;
    std::vector<CurvesPanel> panels;
    std::optional<double> cursor;
};

/// Round ends that take in everything the panel holds; `with_zero`: zero is always in it.
void fit_panel(CurvesPanel& panel, bool with_zero);
/// Means over an hour, a year or the like as steps, the first from `from`.
[[nodiscard]] std::vector<QPointF> steps_of(const std::vector<double>& values, double from = 0.0);

/// Marks of a panel of that height in painter units, in lettering of that line height; two at least.
[[nodiscard]] Axis panel_axis(const CurvesPanel& panel, double height, double line);
[[nodiscard]] std::vector<PlotFrame> curves_frames(const CurvesPicture& picture, const QRectF& area, double text_units);
void paint_curves(QPainter& painter, const CurvesPicture& picture, const QRectF& area, const Theme& theme,
                  double text_units);
/// Value of the common axis at a place in any panel; none outside.
[[nodiscard]] std::optional<double> curves_x_at(const std::vector<PlotFrame>& frames, QPointF at);

}  // namespace wg::ui
