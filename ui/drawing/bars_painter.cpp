#include "ui/drawing/bars_painter.h"

#include <QLocale>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double bar_share = 0.7;  // of a month's width

struct Ends {
    double low = 0.0, high = 0.0, step = 1.0;
};

Ends ends_of(const BarsPicture& picture) {
    Ends ends;
    for (std::size_t month = 0; month < 12; ++month) {
        double above = 0.0;
        double below = 0.0;
        for (const BarPart& part : picture.parts) {
            const double value = part.values[month];
            if (!std::isfinite(value)) continue;
            if (picture.stacked) {
                (value >= 0.0 ? above : below) += value;
            } else {
                above = std::max(above, value);
                below = std::min(below, value);
            }
        }
        for (const BarLine& line : picture.lines) {
            if (std::isfinite(line.values[month])) above = std::max(above, line.values[month]);
            if (std::isfinite(line.values[month])) below = std::min(below, line.values[month]);
        }
        ends.high = std::max(ends.high, above);
        ends.low = std::min(ends.low, below);
    }
    ends.step = round_step(ends.high - ends.low, 6.0);
    if (picture.counts) ends.step = std::max(ends.step, 1.0);
    ends.low = std::floor(ends.low / ends.step) * ends.step;
    ends.high = std::max(ends.low + ends.step, std::ceil(ends.high * 1.02 / ends.step) * ends.step);
    return ends;
}

Axis months_axis() {
    Axis axis;
    for (int month = 1; month <= 12; ++month)
        axis.marks.push_back({month - 0.5, QLocale::c().monthName(month, QLocale::ShortFormat), false});
    return axis;
}

Axis values_axis(const BarsPicture& picture) {
    const Ends ends = ends_of(picture);
    Axis axis;
    axis.title = picture.y_title;
    const int decimals = decimals_for(ends.step);
    const int count = static_cast<int>(std::lround((ends.high - ends.low) / ends.step));
    for (int i = 0; i <= count; ++i) {
        const double at = ends.low + i * ends.step;
        axis.marks.push_back({at, number(at, decimals), std::fabs(at) < 1e-9 && ends.low < 0.0});
    }
    return axis;
}

void fill_bar(const PictureInk& ink, const QRectF& box, const QColor& colour, BarHatch hatch) {
    ink.painter.fillRect(box, colour);
    QPainterPath path;
    path.addRect(box);
    const QColor lines = qGray(colour.rgb()) > 128 ? colour.darker(190) : colour.lighter(190);
    const double gap = 6.0 * ink.line;
    if (hatch == BarHatch::rising || hatch == BarHatch::crossed)
        paint_hatch(ink.painter, path, lines, gap, ink.line, true);
    if (hatch == BarHatch::falling || hatch == BarHatch::crossed)
        paint_hatch(ink.painter, path, lines, gap, ink.line, false);
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(QPen(ink.theme.kind == ThemeKind::sunlight ? ink.theme.text : ink.theme.panel, ink.line));
    ink.painter.drawRect(box);
}

void paint_line_sample(const PictureInk& ink, const BarLine& line, const QRectF& box) {
    const QPointF middle = box.center();
    ink.painter.setPen(QPen(line.colour, 2.4 * ink.line, line.style));
    ink.painter.drawLine(QPointF(box.left(), middle.y()), QPointF(box.right(), middle.y()));
    ink.painter.setPen(Qt::NoPen);
    ink.painter.setBrush(line.colour);
    ink.painter.drawEllipse(middle, 3.2 * ink.line, 3.2 * ink.line);
}

std::vector<LegendItem> legend_of(const BarsPicture& picture, const PictureInk& ink) {
    std::vector<LegendItem> items;
    for (const BarPart& part : picture.parts) {
        items.push_back(
            {part.name, [&part, ink](QPainter&, const QRectF& box) { fill_bar(ink, box, part.colour, part.hatch); }});
    }
    for (const BarLine& line : picture.lines) {
        items.push_back({line.name, [&line, ink](QPainter&, const QRectF& box) { paint_line_sample(ink, line, box); }});
    }
    return items;
}

/// Names alone, to know the rows of the legend before there is a painter.
std::vector<LegendItem> legend_names(const BarsPicture& picture) {
    std::vector<LegendItem> items;
    for (const BarPart& part : picture.parts)
        items.push_back({part.name, {}});
    for (const BarLine& line : picture.lines)
        items.push_back({line.name, {}});
    return items;
}

void paint_month(const PictureInk& ink, const BarsPicture& picture, const PlotFrame& frame, std::size_t month) {
    const double left = static_cast<double>(month) + (1.0 - bar_share) / 2.0;
    const double each = bar_share / static_cast<double>(std::max<std::size_t>(1, picture.parts.size()));
    double above = 0.0;
    double below = 0.0;
    for (std::size_t i = 0; i < picture.parts.size(); ++i) {
        const BarPart& part = picture.parts[i];
        const double value = part.values[month];
        if (!std::isfinite(value) || value == 0.0) continue;
        double from = 0.0;
        double x = left;
        double width = bar_share;
        if (picture.stacked) {
            double& end = value >= 0.0 ? above : below;
            from = end;
            end += value;
        } else {
            x += static_cast<double>(i) * each;
            width = each;
        }
        fill_bar(ink, QRectF(frame.map(x, from), frame.map(x + width, from + value)).normalized(), part.colour,
                 part.hatch);
    }
}

void paint_lines(const PictureInk& ink, const BarsPicture& picture, const PlotFrame& frame) {
    for (const BarLine& line : picture.lines) {
        QPainterPath path;
        bool down = false;
        for (std::size_t month = 0; month < 12; ++month) {
            if (!std::isfinite(line.values[month])) {
                down = false;
                continue;
            }
            const QPointF at = frame.map(static_cast<double>(month) + 0.5, line.values[month]);
            if (down) {
                path.lineTo(at);
            } else {
                path.moveTo(at);
            }
            down = true;
        }
        // A rim of the ground's colour keeps a dark line apart from dark bars.
        ink.painter.setBrush(Qt::NoBrush);
        ink.painter.setPen(QPen(ink.theme.panel, 5.0 * ink.line));
        ink.painter.drawPath(path);
        ink.painter.setPen(QPen(line.colour, 2.4 * ink.line, line.style));
        ink.painter.drawPath(path);
        ink.painter.setPen(QPen(ink.theme.panel, ink.line));
        ink.painter.setBrush(line.colour);
        for (std::size_t month = 0; month < 12; ++month) {
            if (!std::isfinite(line.values[month])) continue;
            ink.painter.drawEllipse(frame.map(static_cast<double>(month) + 0.5, line.values[month]), 4.0 * ink.line,
                                    4.0 * ink.line);
        }
    }
}

}  // namespace

PlotFrame bars_frame(const BarsPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    const Ends ends = ends_of(picture);
    double widest = 0.0;
    for (const AxisMark& mark : values_axis(picture).marks)
        widest = std::max(widest, letters.width(mark.text));
    const int rows = paint_legend(nullptr, area, legend_names(picture), paper_theme(), letters);
    PlotFrame frame{plot_area(area, letters, widest + letters.line() * 0.6, rows), 0.0, 12.0, ends.low, ends.high};
    frame.plot.setBottom(frame.plot.bottom() + letters.line() * 1.2);  // months need no title below
    return frame;
}

void paint_bars(QPainter& painter, const BarsPicture& picture, const QRectF& area, const Theme& theme,
                double text_units) {
    const PlotFrame frame = bars_frame(picture, area, text_units);
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * std::min(theme.line_scale, 1.4)};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const Axis values = values_axis(picture);
    paint_grid(ink, frame, {}, values);
    if (picture.cursor) {
        const auto month = static_cast<double>(*picture.cursor);
        QColor tint = theme.muted;
        tint.setAlpha(50);
        painter.fillRect(QRectF(frame.map(month, frame.y_to), frame.map(month + 1.0, frame.y_from)), tint);
    }
    for (std::size_t month = 0; month < 12; ++month)
        paint_month(ink, picture, frame, month);
    paint_lines(ink, picture, frame);
    paint_axes(ink, frame, months_axis(), values);
    paint_legend(&painter, area, legend_of(picture, ink), theme, letters);
    painter.restore();
}

std::optional<std::size_t> month_at(const PlotFrame& frame, QPointF at) {
    if (!frame.plot.contains(at)) return std::nullopt;
    return static_cast<std::size_t>(std::clamp(frame.value_at(at).x(), 0.0, 11.999));
}

}  // namespace wg::ui
