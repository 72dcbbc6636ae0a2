#include "ui/drawing/readings_painter.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

using Points = std::vector<commissioning::Curve::Point>;

constexpr double band_row_lines = 3.7;  ///< height of one band in lines of lettering

QString axis_title(const std::string& label, const std::string& unit) {
    return unit.empty() ? qs(label) : QStringLiteral("%1, %2").arg(qs(label), qs(unit));
}

QPolygonF mapped(const PlotFrame& frame, const Points& points) {
    QPolygonF line;
    for (const auto& point : points)
        if (std::isfinite(point.x) && std::isfinite(point.y)) line << frame.map(point.x, point.y);
    return line;
}

/// A round dot in a ring of the ground's colour: seen on line and band alike.
void draw_reading(QPainter& painter, QPointF at, double size, const Theme& theme, double line) {
    painter.setPen(QPen(theme.panel, line));
    painter.setBrush(theme.text);
    painter.drawEllipse(at, size, size);
}

std::vector<LegendItem> legend_of(const commissioning::Curve& curve, const Theme& theme, double line) {
    std::vector<LegendItem> items;
    items.push_back({QObject::tr("read"), [&theme, line](QPainter& p, const QRectF& box) {
                         draw_reading(p, box.center(), box.height() * 0.32, theme, line);
                     }});
    if (!curve.fitted.empty()) {
        items.push_back({curve.fitted_label.empty() ? QObject::tr("fitted") : qs(curve.fitted_label),
                         [&theme, line](QPainter& p, const QRectF& box) {
                             p.setPen(QPen(theme.accent, 2.0 * line));
                             p.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
                         }});
    }
    if (!curve.low.empty() && !curve.high.empty()) {
        items.push_back({QObject::tr("expected"), [&theme, line](QPainter& p, const QRectF& box) {
                             QPainterPath path;
                             path.addRect(box);
                             paint_hatch(p, path, theme.note, box.height() * 0.4, 0.8 * line, true);
                             p.setPen(QPen(theme.note, line));
                             p.setBrush(Qt::NoBrush);
                             p.drawRect(box);
                         }});
    }
    if (curve.limit) {
        items.push_back({curve.limit_label.empty() ? QObject::tr("limit") : qs(curve.limit_label),
                         [&theme, line](QPainter& p, const QRectF& box) {
                             p.setPen(QPen(theme.stop, 1.8 * line, Qt::DashLine, Qt::FlatCap));
                             p.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
                         }});
    }
    return items;
}

void mark_axis(Axis& axis, double from, double to, double steps) {
    const double step = round_step(to - from, steps);
    for (double at = std::ceil(from / step - 1e-9) * step; at <= to + 1e-9 * step; at += step)
        axis.marks.push_back({at, number(std::fabs(at) < 1e-9 * step ? 0.0 : at, decimals_for(step)), false});
}

}  // namespace

PlotFrame readings_frame(const commissioning::Curve& curve, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    double x_low = 0.0, x_high = 0.0, y_low = 0.0, y_high = 0.0;
    bool any = false;
    for (const Points* points : {&curve.read, &curve.fitted, &curve.low, &curve.high}) {
        for (const auto& point : *points) {
            if (!std::isfinite(point.x) || !std::isfinite(point.y)) continue;
            x_low = any ? std::min(x_low, point.x) : point.x;
            x_high = any ? std::max(x_high, point.x) : point.x;
            y_low = any ? std::min(y_low, point.y) : point.y;
            y_high = any ? std::max(y_high, point.y) : point.y;
            any = true;
        }
    }
    if (curve.limit && std::isfinite(*curve.limit)) {
        y_low = std::min(y_low, *curve.limit);
        y_high = std::max(y_high, *curve.limit);
    }
    // Room round flat courses too; from nought where nought is near, so that a small rise does not look like a big one.
    const double span = std::max(y_high - y_low, 1e-3 * std::max(1.0, std::fabs(y_high)));
    PlotFrame frame;
    frame.x_from = x_low;
    frame.x_to = x_high > x_low ? x_high + 0.02 * (x_high - x_low) : x_low + 1.0;
    frame.y_from = y_low >= 0.0 && y_low < 2.0 * span ? 0.0 : y_low - 0.15 * span;
    frame.y_to = y_high + 0.12 * span;
    Axis y;
    mark_axis(y, frame.y_from, frame.y_to, 5.0);
    double widest = 0.0;
    for (const AxisMark& mark : y.marks)
        widest = std::max(widest, letters.width(mark.text));
    const int rows = paint_legend(nullptr, area, legend_of(curve, paper_theme(), 1.0), paper_theme(), letters);
    frame.plot = plot_area(area, letters, widest, rows);
    return frame;
}

void paint_readings(QPainter& painter, const commissioning::Curve& curve, const QRectF& area, const Theme& theme,
                    double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = readings_frame(curve, area, text_units);
    Axis x, y;
    x.title = axis_title(curve.x_label, curve.x_unit);
    y.title = axis_title(curve.y_label, curve.y_unit);
    mark_axis(x, frame.x_from, frame.x_to, std::max(2.0, frame.plot.width() / (letters.line() * 4.0)));
    mark_axis(y, frame.y_from, frame.y_to, 5.0);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, y);
    painter.save();
    painter.setClipRect(frame.plot, Qt::IntersectClip);
    if (!curve.low.empty() && !curve.high.empty()) {
        QPolygonF outline = mapped(frame, curve.low);
        const QPolygonF high = mapped(frame, curve.high);
        for (auto it = high.crbegin(); it != high.crend(); ++it)
            outline << *it;
        QPainterPath path;
        path.addPolygon(outline);
        paint_hatch(painter, path, theme.note, letters.line() * 0.5, 0.8 * ink.line, true);
        painter.setPen(QPen(theme.note, ink.line));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolyline(mapped(frame, curve.low));
        painter.drawPolyline(high);
    }
    if (curve.limit && std::isfinite(*curve.limit)) {
        painter.setPen(QPen(theme.stop, 1.8 * ink.line, Qt::DashLine, Qt::FlatCap));
        painter.drawLine(frame.map(frame.x_from, *curve.limit), frame.map(frame.x_to, *curve.limit));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.accent, 2.0 * ink.line));
    painter.drawPolyline(mapped(frame, curve.fitted));
    painter.restore();
    // Readings of a logger come close together: small then, so that the course is seen.
    const double size = letters.line() * (curve.read.size() > 60 ? 0.12 : 0.24);
    for (const QPointF& at : mapped(frame, curve.read))
        draw_reading(painter, at, size, theme, curve.read.size() > 60 ? 0.0 : ink.line);
    paint_axes(ink, frame, x, y);
    paint_legend(&painter, area, legend_of(curve, theme, ink.line), theme, letters);
    painter.restore();
}

double bands_height(std::size_t bands, double text_units) {
    return static_cast<double>(bands) * band_row_lines * Lettering(text_units).line();
}

void paint_bands(QPainter& painter, const std::vector<commissioning::Band>& bands, const QRectF& area,
                 const Theme& theme, double text_units) {
    const Lettering letters(text_units);
    const Lettering strong(text_units, true);
    const double line = letters.line();
    const double pen = text_units / 13.0 * theme.line_scale;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    double top = area.top();
    for (const commissioning::Band& band : bands) {
        const QString unit = qs(band.unit);
        const bool outside = band.outside();
        // Words above, the bar below: they never meet, however narrow the place.
        letters.draw(painter, {area.left(), top + line * 0.6}, Qt::AlignLeft | Qt::AlignVCenter, qs(band.label),
                     theme.text);
        const QString read = band.read ? quantity(*band.read, unit, band.decimals) : QObject::tr("not read");
        strong.draw(painter, {area.right(), top + line * 0.6}, Qt::AlignRight | Qt::AlignVCenter,
                    outside ? QObject::tr("%1, outside").arg(read) : read,
                    band.read ? (outside ? theme.stop : theme.text) : theme.muted);
        const QRectF bar(area.left() + line, top + line * 1.45, std::max(1.0, area.width() - 2.0 * line), line * 0.8);
        // The band takes the middle half, so that a reading outside is still in the picture.
        const double span = std::max(1e-9, band.high - band.low);
        const auto x_of = [&](double value) {
            const double share = 0.25 + 0.5 * (value - band.low) / span;
            return bar.left() + std::clamp(share, 0.0, 1.0) * bar.width();
        };
        painter.setPen(QPen(theme.muted, pen));
        painter.drawLine(QPointF(bar.left(), bar.center().y()), QPointF(bar.right(), bar.center().y()));
        QPainterPath path;
        path.addRect(QRectF(QPointF(x_of(band.low), bar.top()), QPointF(x_of(band.high), bar.bottom())));
        painter.fillPath(path, theme.panel);
        paint_hatch(painter, path, theme.note, line * 0.4, 0.8 * pen, true);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(theme.note, 1.2 * pen));
        painter.drawPath(path);
        painter.drawLine(QPointF(x_of(band.mid), bar.top()), QPointF(x_of(band.mid), bar.bottom()));
        letters.draw(painter, {x_of(band.low), bar.bottom() + line * 0.1}, Qt::AlignHCenter | Qt::AlignTop,
                     number(band.low, band.decimals), theme.muted);
        letters.draw(painter, {x_of(band.high), bar.bottom() + line * 0.1}, Qt::AlignHCenter | Qt::AlignTop,
                     quantity(band.high, unit, band.decimals), theme.muted);
        if (band.read && std::isfinite(*band.read)) {
            const double x = x_of(*band.read);
            const double half = line * 0.32;
            painter.setPen(QPen(theme.panel, pen));
            painter.setBrush(outside ? theme.stop : theme.text);
            // A wedge that points down into the bar; the words above say where it is outside.
            painter.drawPolygon(QPolygonF{QPointF(x - half, bar.top() - half), QPointF(x + half, bar.top() - half),
                                          QPointF(x, bar.center().y() + half)});
        }
        top += line * band_row_lines;
    }
    painter.restore();
}

}  // namespace wg::ui
