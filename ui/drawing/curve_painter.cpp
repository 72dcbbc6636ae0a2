#include "ui/drawing/curve_painter.h"

#include <QObject>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <limits>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

using CurvePoints = std::vector<commissioning::Curve::Point>;

bool drawable(const commissioning::Curve::Point& point) {
    return std::isfinite(point.x) && std::isfinite(point.y);
}

struct CurveReach {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    void take(double value) {
        if (!std::isfinite(value)) return;
        low = std::min(low, value);
        high = std::max(high, value);
    }
    /// Ends on whole steps, never empty.
    void round_out(double steps) {
        if (!(high >= low)) low = 0.0, high = 1.0;
        if (!(high > low)) high = low + 1.0;
        const double step = round_step(high - low, steps);
        low = std::floor(low / step + 1e-9) * step;
        high = std::ceil(high / step - 1e-9) * step;
    }
};

Axis curve_axis(double from, double to, double steps, const QString& title) {
    Axis axis;
    axis.title = title;
    const double step = round_step(to - from, steps);
    for (double at = std::ceil(from / step - 1e-9) * step; at <= to + 1e-9 * step; at += step)
        axis.marks.push_back({at, number(at, decimals_for(step)), false});
    return axis;
}

QString with_curve_unit(const std::string& label, const std::string& unit) {
    return unit.empty() ? qs(label) : qs(label) + QStringLiteral(", ") + qs(unit);
}

QPainterPath path_of(const CurvePoints& points, const PlotFrame& frame) {
    QPainterPath path;
    bool down = false;
    for (const auto& point : points) {
        if (!drawable(point)) {
            down = false;
            continue;
        }
        const QPointF at = frame.map(point.x, point.y);
        if (down) {
            path.lineTo(at);
        } else {
            path.moveTo(at);
        }
        down = true;
    }
    return path;
}

QPainterPath band_path(const commissioning::Curve& curve, const PlotFrame& frame) {
    QPolygonF around;
    for (const auto& point : curve.high)
        if (drawable(point)) around << frame.map(point.x, point.y);
    for (auto it = curve.low.rbegin(); it != curve.low.rend(); ++it)
        if (drawable(*it)) around << frame.map(it->x, it->y);
    QPainterPath path;
    if (around.size() >= 3) path.addPolygon(around);
    path.closeSubpath();
    return path;
}

std::vector<LegendItem> curve_legend(const commissioning::Curve& curve, const Theme& theme, double line) {
    std::vector<LegendItem> items;
    items.push_back({QObject::tr("read"), [theme, line](QPainter& p, const QRectF& box) {
                         p.setPen(QPen(theme.text, 1.6 * line));
                         p.setBrush(theme.panel);
                         p.drawEllipse(box.center(), 3.4 * line, 3.4 * line);
                     }});
    const auto stroke = [](QPen pen) {
        return [pen](QPainter& p, const QRectF& box) {
            p.setPen(pen);
            p.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
        };
    };
    if (!curve.fitted.empty()) {
        const QString words = curve.fitted_label.empty() ? QObject::tr("fitted curve") : qs(curve.fitted_label);
        items.push_back({words, stroke(QPen(theme.accent, 2.0 * line))});
    }
    if (curve.limit) {
        const QString words = curve.limit_label.empty() ? QObject::tr("limit") : qs(curve.limit_label);
        items.push_back({words, stroke(QPen(theme.stop, 1.8 * line, Qt::DashLine))});
    }
    if (!curve.low.empty() && !curve.high.empty()) {
        items.push_back({QObject::tr("expected"), [theme, line](QPainter& p, const QRectF& box) {
                             QPainterPath path;
                             path.addRect(box);
                             paint_hatch(p, path, theme.muted, 4.0 * line, 0.8 * line, true);
                         }});
    }
    return items;
}

}  // namespace

PlotFrame reading_curve_frame(const commissioning::Curve& curve, const QRectF& area, double text_units) {
    CurveReach x, y;
    for (const CurvePoints* points : {&curve.read, &curve.fitted, &curve.low, &curve.high}) {
        for (const auto& point : *points) {
            if (!drawable(point)) continue;
            x.take(point.x);
            y.take(point.y);
        }
    }
    if (curve.limit) y.take(*curve.limit);
    // A pressure that hardly moves is drawn against zero only where zero is not far off.
    if (y.low > 0.0 && y.low < 0.6 * y.high) y.take(0.0);
    x.round_out(8.0);
    y.round_out(6.0);
    const Lettering letters(text_units);
    double widest = 0.0;
    for (const AxisMark& mark : curve_axis(y.low, y.high, 6.0, {}).marks)
        widest = std::max(widest, letters.width(mark.text));
    const int rows = paint_legend(nullptr, area, curve_legend(curve, paper_theme(), 1.0), paper_theme(), letters);
    PlotFrame frame;
    frame.plot = plot_area(area, letters, widest + letters.line() * 0.4, rows);
    frame.x_from = x.low;
    frame.x_to = x.high;
    frame.y_from = y.low;
    frame.y_to = y.high;
    return frame;
}

void paint_reading_curve(QPainter& painter, const commissioning::Curve& curve, const QRectF& area, const Theme& theme,
                         double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = reading_curve_frame(curve, area, text_units);
    const Axis x = curve_axis(frame.x_from, frame.x_to, 8.0, with_curve_unit(curve.x_label, curve.x_unit));
    const Axis y = curve_axis(frame.y_from, frame.y_to, 6.0, with_curve_unit(curve.y_label, curve.y_unit));
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, y);
    paint_hatch(painter, band_path(curve, frame), theme.muted, 6.0 * ink.line, 0.6 * ink.line, true);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.accent, 2.0 * ink.line));
    painter.drawPath(path_of(curve.fitted, frame));
    if (curve.limit && std::isfinite(*curve.limit)) {
        painter.setPen(QPen(theme.stop, 1.8 * ink.line, Qt::DashLine));
        painter.drawLine(frame.map(frame.x_from, *curve.limit), frame.map(frame.x_to, *curve.limit));
    }
    painter.setPen(QPen(theme.text, 1.6 * ink.line));
    painter.setBrush(theme.panel);
    for (const auto& point : curve.read)
        if (drawable(point)) painter.drawEllipse(frame.map(point.x, point.y), 3.4 * ink.line, 3.4 * ink.line);
    paint_axes(ink, frame, x, y);
    paint_legend(&painter, area, curve_legend(curve, theme, ink.line), theme, letters);
    painter.restore();
}

}  // namespace wg::ui
