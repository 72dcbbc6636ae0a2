#include "ui/drawing/curves_painter.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/drawing/see_through.h"

namespace wg::ui {
namespace {

QPainterPath path_of(const std::vector<QPointF>& points, const PlotFrame& frame) {
    QPainterPath path;
    bool down = false;
    for (const QPointF& point : points) {
        if (!std::isfinite(point.y())) {
            down = false;
            continue;
        }
        const QPointF at = frame.map(point.x(), point.y());
        if (down) {
            path.lineTo(at);
        } else {
            path.moveTo(at);
        }
        down = true;
    }
    return path;
}

void fill_area(const PictureInk& ink, const QPainterPath& path, const QColor& colour) {
    ink.painter.fillPath(path, see_through(ink.painter, colour, 0.27, ink.theme.panel));
    paint_hatch(ink.painter, path, colour, 7.0 * ink.line, 0.8 * ink.line, true);
}

void fill_span(const PictureInk& ink, const QRectF& box) {
    QPainterPath path;
    path.addRect(box);
    ink.painter.fillPath(path, see_through(ink.painter, ink.theme.shade_fill, ink.theme.panel));
    paint_hatch(ink.painter, path, ink.theme.muted, 9.0 * ink.line, 0.8 * ink.line, false);
}

std::vector<LegendItem> legend_of(const CurvesPanel& panel, const PictureInk& ink) {
    std::vector<LegendItem> items;
    for (const Curve& curve : panel.curves) {
        if (curve.name.isEmpty()) continue;
        items.push_back({curve.name, [&curve, ink](QPainter& painter, const QRectF& box) {
                             if (curve.filled) {
                                 QPainterPath path;
                                 path.addRect(box);
                                 fill_area(ink, path, curve.colour);
                             }
                             painter.setPen(QPen(curve.colour, curve.width * ink.line, curve.style, Qt::FlatCap));
                             const double y = curve.filled ? box.top() : box.center().y();
                             painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
                         }});
    }
    for (const CurveBand& band : panel.bands) {
        items.push_back({band.name, [&band, ink](QPainter&, const QRectF& box) {
                             QPainterPath path;
                             path.addRect(box);
                             fill_area(ink, path, band.colour);
                         }});
    }
    if (!panel.spans.empty() && !panel.span_name.isEmpty()) {
        items.push_back({panel.span_name, [ink](QPainter&, const QRectF& box) { fill_span(ink, box); }});
    }
    return items;
}

std::vector<LegendItem> legend_names(const CurvesPanel& panel) {
    std::vector<LegendItem> items;
    for (const Curve& curve : panel.curves) {
        if (!curve.name.isEmpty()) items.push_back({curve.name, {}});
    }
    for (const CurveBand& band : panel.bands)
        items.push_back({band.name, {}});
    if (!panel.spans.empty() && !panel.span_name.isEmpty()) items.push_back({panel.span_name, {}});
    return items;
}

/// Where a panel and its legend stand: from the top of `area`, by the panels' shares.
struct Places {
    std::vector<QRectF> panels;  ///< with the legend's rows on top
    std::vector<PlotFrame> frames;
};

Places places_of(const CurvesPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    const double line = letters.line();
    double widest = 0.0;
    double shares = 0.0;
    double legends = 0.0;
    std::vector<double> tops;
    for (const CurvesPanel& panel : picture.panels) {
        for (const AxisMark& mark : panel_axis(panel, area.height(), line).marks)
            widest = std::max(widest, letters.width(mark.text));
        shares += panel.share;
    }
    const double left = line * 2.2 + widest;
    for (const CurvesPanel& panel : picture.panels) {
        // In the width that it is painted in: a row more than reckoned would lie on the curves.
        const int rows =
            paint_legend(nullptr, area.adjusted(left, 0.0, 0.0, 0.0), legend_names(panel), paper_theme(), letters);
        tops.push_back(line * (rows > 0 ? 1.4 * rows + 0.3 : 0.5));
        legends += tops.back();
    }
    const double foot = line * 2.7;
    const double gap = line * 0.7;
    const double free = std::max(
        line, area.height() - foot - legends - gap * static_cast<double>(std::max<std::size_t>(1, tops.size()) - 1));
    Places places;
    double y = area.top();
    for (std::size_t i = 0; i < tops.size(); ++i) {
        const CurvesPanel& panel = picture.panels[i];
        const double height = free * panel.share / std::max(1e-9, shares);
        const QRectF whole(area.left(), y, area.width(), tops[i] + height);
        places.panels.push_back(whole);
        places.frames.push_back(
            {whole.adjusted(left, tops[i], -line * 1.3, 0.0), picture.x_from, picture.x_to, panel.low, panel.high});
        y = whole.bottom() + gap;
    }
    return places;
}

void paint_bands(const PictureInk& ink, const CurvesPanel& panel, const PlotFrame& frame) {
    for (const CurveBand& band : panel.bands) {
        std::vector<QPointF> ring = band.upper;
        ring.insert(ring.end(), band.lower.rbegin(), band.lower.rend());
        QPainterPath path = path_of(ring, frame);
        path.closeSubpath();
        fill_area(ink, path, band.colour);
    }
}

void paint_lines(const PictureInk& ink, const CurvesPanel& panel, const PlotFrame& frame) {
    for (const Curve& curve : panel.curves) {
        const QPainterPath path = path_of(curve.points, frame);
        if (curve.filled && !curve.points.empty()) {
            QPainterPath area = path;
            area.lineTo(frame.map(curve.points.back().x(), 0.0));
            area.lineTo(frame.map(curve.points.front().x(), 0.0));
            area.closeSubpath();
            fill_area(ink, area, curve.colour);
        }
        ink.painter.setBrush(Qt::NoBrush);
        ink.painter.setPen(QPen(curve.colour, curve.width * ink.line, curve.style, Qt::FlatCap, Qt::RoundJoin));
        ink.painter.drawPath(path);
    }
}

void paint_marks(const PictureInk& ink, const CurvesPanel& panel, const PlotFrame& frame) {
    const double line = ink.letters.line();
    for (const CurveMark& mark : panel.marks) {
        const QPointF at = frame.map(mark.at.x(), mark.at.y());
        ink.painter.setPen(QPen(ink.theme.text, ink.line, Qt::DashLine));
        ink.painter.drawLine(at, frame.map(mark.at.x(), frame.y_from));
        ink.painter.setPen(QPen(ink.theme.panel, 1.5 * ink.line));
        ink.painter.setBrush(ink.theme.text);
        ink.painter.drawEllipse(at, 5.0 * ink.line, 5.0 * ink.line);
        const QSizeF size = ink.letters.size(mark.text) + QSizeF(line * 0.6, line * 0.2);
        // Beside the foot of its line, where no curve that rises from the left comes by.
        const double right = at.x() + line * 0.5 + size.width() < frame.plot.right() ? 1.0 : -1.0;
        const double x = right > 0.0 ? at.x() + line * 0.5 : at.x() - line * 0.5 - size.width();
        const QRectF box(QPointF(x, frame.plot.bottom() - size.height() - line * 0.4), size);
        ink.letters.draw_in(ink.painter, box, mark.text, ink.theme.text, ink.theme.panel);
    }
}

void paint_panel(const PictureInk& ink, const CurvesPicture& picture, const Places& places, std::size_t i) {
    const CurvesPanel& panel = picture.panels[i];
    const PlotFrame& frame = places.frames[i];
    const Axis y = panel_axis(panel, frame.plot.height(), ink.letters.line());
    Axis x = picture.x;
    if (i + 1 < picture.panels.size()) {
        x.title.clear();
        for (AxisMark& mark : x.marks)
            mark.text.clear();
    }
    paint_grid(ink, frame, x, y);
    ink.painter.save();
    ink.painter.setClipRect(frame.plot.adjusted(-ink.line, -ink.line, ink.line, ink.line), Qt::IntersectClip);
    for (const CurveSpan& span : panel.spans)
        fill_span(ink, QRectF(frame.map(span.from, frame.y_to), frame.map(span.to, frame.y_from)));
    paint_bands(ink, panel, frame);
    paint_lines(ink, panel, frame);
    paint_marks(ink, panel, frame);
    if (picture.cursor) {
        ink.painter.setPen(QPen(ink.theme.accent, 1.6 * ink.line));
        ink.painter.drawLine(frame.map(*picture.cursor, frame.y_from), frame.map(*picture.cursor, frame.y_to));
    }
    ink.painter.restore();
    paint_axes(ink, frame, x, y);
    const QRectF whole = places.panels[i];
    const QRectF legend(frame.plot.left(), whole.top(), whole.right() - frame.plot.left(), whole.height());
    paint_legend(&ink.painter, legend, legend_of(panel, ink), ink.theme, ink.letters);
}

}  // namespace

void fit_panel(CurvesPanel& panel, bool with_zero) {
    double low = with_zero ? 0.0 : 1e300;
    double high = with_zero ? 0.0 : -1e300;
    const auto take = [&](const std::vector<QPointF>& points) {
        for (const QPointF& point : points) {
            if (!std::isfinite(point.y())) continue;
            low = std::min(low, point.y());
            high = std::max(high, point.y());
        }
    };
    for (const Curve& curve : panel.curves)
        take(curve.points);
    for (const CurveBand& band : panel.bands) {
        take(band.upper);
        take(band.lower);
    }
    if (low > high) low = high = 0.0;
    const double step = round_step(high - low, 5.0);
    panel.low = std::floor(low / step + 1e-9) * step;
    panel.high = std::max(panel.low + step, std::ceil(high / step - 1e-9) * step);
}

/// Round marks as close as their lettering allows; a low panel has its two ends at least.
Axis panel_axis(const CurvesPanel& panel, double height, double line) {
    Axis axis;
    axis.title = panel.unit;
    const double span = panel.high - panel.low;
    double step = round_step(span, std::clamp(height / (line * 1.25), 1.0, 7.0));
    if (step > span * (1.0 + 1e-9)) step = span;
    const double first = std::ceil(panel.low / step - 1e-9) * step;
    const bool from_low = step == span;  // round marks would miss the panel's ends
    for (double at = from_low ? panel.low : first; at <= panel.high + 1e-9 * step; at += step) {
        const double clean = std::fabs(at) < 1e-9 * step ? 0.0 : at;
        axis.marks.push_back(
            {clean, number(clean, decimals_for(step)), clean == 0.0 && panel.low < 0.0 && panel.high > 0.0});
    }
    return axis;
}

std::vector<QPointF> steps_of(const std::vector<double>& values, double from) {
    std::vector<QPointF> points;
    points.reserve(values.size() * 2);
    for (std::size_t i = 0; i < values.size(); ++i) {
        points.emplace_back(from + static_cast<double>(i), values[i]);
        points.emplace_back(from + static_cast<double>(i) + 1.0, values[i]);
    }
    return points;
}

std::vector<PlotFrame> curves_frames(const CurvesPicture& picture, const QRectF& area, double text_units) {
    return places_of(picture, area, text_units).frames;
}

void paint_curves(QPainter& painter, const CurvesPicture& picture, const QRectF& area, const Theme& theme,
                  double text_units) {
    const Places places = places_of(picture, area, text_units);
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * std::min(theme.line_scale, 1.4)};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < picture.panels.size(); ++i)
        paint_panel(ink, picture, places, i);
    painter.restore();
}

std::optional<double> curves_x_at(const std::vector<PlotFrame>& frames, QPointF at) {
    for (const PlotFrame& frame : frames) {
        if (frame.plot.contains(at)) return frame.value_at(at).x();
    }
    return std::nullopt;
}

}  // namespace wg::ui
