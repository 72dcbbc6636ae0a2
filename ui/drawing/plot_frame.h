#pragma once
// Frame, axes, legend and colour bar that the sky's and the weather's pictures share; screen and paper alike.

#include <QPainter>
#include <QRectF>
#include <QString>
#include <functional>
#include <vector>

#include "ui/common/theme.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {

/// Rectangle in painter units that stands for a range of values; y grows upwards.
struct PlotFrame {
    QRectF plot;
    double x_from = 0.0, x_to = 1.0;
    double y_from = 0.0, y_to = 1.0;
    [[nodiscard]] QPointF map(double x, double y) const;
    [[nodiscard]] QPointF value_at(QPointF painter_position) const;
};

struct AxisMark {
    double at = 0.0;
    QString text;         ///< empty: a line without words
    bool strong = false;  ///< a line drawn darker
};
struct Axis {
    QString title;
    std::vector<AxisMark> marks;
};

/// Painter, colours and lettering of one picture.
struct PictureInk {
    QPainter& painter;
    const Theme& theme;
    const Lettering& letters;
    double line = 1.0;  ///< painter units of a thin line
};

/// Room that axes and a legend of `rows` rows take off an area.
[[nodiscard]] QRectF plot_area(const QRectF& area, const Lettering& letters, double widest_y_text, int legend_rows);
/// Grid lines under the picture.
void paint_grid(const PictureInk& ink, const PlotFrame& frame, const Axis& x, const Axis& y);
/// Frame, marks and titles round the picture.
void paint_axes(const PictureInk& ink, const PlotFrame& frame, const Axis& x, const Axis& y);

struct LegendItem {
    QString text;
    std::function<void(QPainter&, const QRectF& swatch)> swatch;
};
/// In rows from the top left of `area`; returns the rows used. Nothing is painted without a painter.
int paint_legend(QPainter* painter, const QRectF& area, const std::vector<LegendItem>& items, const Theme& theme,
                 const Lettering& letters);

/// Much is pale, little is dark, so that light looks light; even steps of value are even steps to the eye.
[[nodiscard]] QColor value_colour(double value, double low, double high);
/// The other way round, for loads and lacks: much is dark.
[[nodiscard]] QColor load_colour(double value, double low, double high);
/// Upright scale with round marks and the unit above.
void paint_colour_bar(const PictureInk& ink, const QRectF& bar, double low, double high, const QString& unit,
                      bool dark_is_much = false);
/// 1, 2 or 5 times a power of ten, for about `steps` marks over a span; 1 for a span that is nothing.
[[nodiscard]] double round_step(double span, double steps);
/// Decimals that tell marks of this distance apart, 0 to 6: 2 for 0.05, 0 for 20.
[[nodiscard]] int decimals_for(double step);
/// Hatch of own slanted lines, even on paper; in the clip of `path`.
void paint_hatch(QPainter& painter, const QPainterPath& path, const QColor& colour, double gap, double width,
                 bool rising);

}  // namespace wg::ui
