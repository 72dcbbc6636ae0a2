#include "ui/drawing/plot_frame.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double swatch_width = 1.7;  // in lines of lettering

}  // namespace

QPointF PlotFrame::map(double x, double y) const {
    return {plot.left() + (x - x_from) / (x_to - x_from) * plot.width(),
            plot.bottom() - (y - y_from) / (y_to - y_from) * plot.height()};
}

QPointF PlotFrame::value_at(QPointF at) const {
    return {x_from + (at.x() - plot.left()) / plot.width() * (x_to - x_from),
            y_from + (plot.bottom() - at.y()) / plot.height() * (y_to - y_from)};
}

QRectF plot_area(const QRectF& area, const Lettering& letters, double widest_y_text, int legend_rows) {
    const double line = letters.line();
    const double left = line * 1.6 + widest_y_text;
    const double top = legend_rows > 0 ? line * (1.4 * legend_rows + 0.6) : line * 0.6;
    return area.adjusted(left, top, -line * 1.3, -line * 2.7);
}

void paint_grid(const PictureInk& ink, const PlotFrame& frame, const Axis& x, const Axis& y) {
    // In sunlight rules are black and thick, which is right for forms; under curves a grid must stay behind them.
    const bool sunlight = ink.theme.kind == ThemeKind::sunlight;
    const auto grid = [&](bool strong) {
        if (sunlight) return QPen(QColor(strong ? 0x808080 : 0xc0c0c0), ink.line * 0.5);
        return QPen(strong ? ink.theme.muted : ink.theme.rule_line, ink.line * (strong ? 1.0 : 0.8));
    };
    for (const AxisMark& mark : x.marks) {
        ink.painter.setPen(grid(mark.strong));
        ink.painter.drawLine(frame.map(mark.at, frame.y_from), frame.map(mark.at, frame.y_to));
    }
    for (const AxisMark& mark : y.marks) {
        ink.painter.setPen(grid(mark.strong));
        ink.painter.drawLine(frame.map(frame.x_from, mark.at), frame.map(frame.x_to, mark.at));
    }
}

void paint_axes(const PictureInk& ink, const PlotFrame& frame, const Axis& x, const Axis& y) {
    const double line = ink.letters.line();
    ink.painter.setPen(QPen(ink.theme.muted, ink.line));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawRect(frame.plot);
    for (const AxisMark& mark : x.marks) {
        const QPointF at = frame.map(mark.at, frame.y_from);
        ink.painter.setPen(QPen(ink.theme.muted, ink.line));
        ink.painter.drawLine(at, at + QPointF(0.0, line * 0.25));
        if (mark.text.isEmpty()) continue;
        ink.letters.draw(ink.painter, at + QPointF(0.0, line * 0.3), Qt::AlignHCenter | Qt::AlignTop, mark.text,
                         ink.theme.text);
    }
    for (const AxisMark& mark : y.marks) {
        const QPointF at = frame.map(frame.x_from, mark.at);
        ink.painter.setPen(QPen(ink.theme.muted, ink.line));
        ink.painter.drawLine(at, at - QPointF(line * 0.25, 0.0));
        if (mark.text.isEmpty()) continue;
        ink.letters.draw(ink.painter, at - QPointF(line * 0.4, 0.0), Qt::AlignRight | Qt::AlignVCenter, mark.text,
                         ink.theme.text);
    }
    const QRectF& plot = frame.plot;
    ink.letters.draw(ink.painter, {plot.center().x(), plot.bottom() + line * 1.45}, Qt::AlignHCenter | Qt::AlignTop,
                     x.title, ink.theme.muted);
    double widest = 0.0;
    for (const AxisMark& mark : y.marks)
        widest = std::max(widest, ink.letters.width(mark.text));
    ink.letters.draw(ink.painter, {plot.left() - widest - line * 0.55, plot.center().y()},
                     Qt::AlignHCenter | Qt::AlignBottom, y.title, ink.theme.muted, -90.0);
}

int paint_legend(QPainter* painter, const QRectF& area, const std::vector<LegendItem>& items, const Theme& theme,
                 const Lettering& letters) {
    const double line = letters.line();
    const double left = area.left() + line * 0.15;  // thick strokes stay inside
    double x = left;
    int row = 0;
    for (const LegendItem& item : items) {
        const double width = line * (swatch_width + 0.4) + letters.width(item.text);
        if (x > left && x + width > area.right()) {
            x = left;
            ++row;
        }
        if (painter != nullptr) {
            const double middle = area.top() + line * (1.4 * row + 0.6);
            item.swatch(*painter, QRectF(x, middle - line * 0.4, line * swatch_width, line * 0.8));
            letters.draw(*painter, {x + line * (swatch_width + 0.4), middle}, Qt::AlignLeft | Qt::AlignVCenter,
                         item.text, theme.text);
        }
        x += width + line * 1.2;
    }
    return items.empty() ? 0 : row + 1;
}

QColor value_colour(double value, double low, double high) {
    if (!std::isfinite(value) || !(high > low)) return quantity_colour(std::isfinite(value) ? 1.0 : value);
    return quantity_colour(1.0 - std::clamp((value - low) / (high - low), 0.0, 1.0));
}

QColor load_colour(double value, double low, double high) {
    if (!std::isfinite(value) || !(high > low)) return quantity_colour(std::isfinite(value) ? 0.0 : value);
    return quantity_colour(std::clamp((value - low) / (high - low), 0.0, 1.0));
}

double round_step(double span, double steps) {
    const double rough = span / std::max(1.0, steps);
    if (!(rough > 0.0) || !std::isfinite(rough)) return 1.0;
    const double power = std::pow(10.0, std::floor(std::log10(rough)));
    for (const double factor : {1.0, 2.0, 5.0}) {
        if (rough <= factor * power) return factor * power;
    }
    return 10.0 * power;
}

int decimals_for(double step) {
    int decimals = 0;
    if (!(step > 0.0) || !std::isfinite(step)) return 0;
    // One more as long as rounding would change the mark: 2.5 keeps its half.
    for (double rest = step; decimals < 6 && std::fabs(rest - std::round(rest)) > 1e-6 * rest; rest *= 10.0)
        ++decimals;
    return decimals;
}

void paint_colour_bar(const PictureInk& ink, const QRectF& bar, double low, double high, const QString& unit,
                      bool dark_is_much) {
    const double line = ink.letters.line();
    constexpr int bands = 64;
    for (int i = 0; i < bands; ++i) {
        const double share = (i + 0.5) / bands;
        const double top = bar.bottom() - bar.height() * (i + 1) / bands;
        // A little taller than the band: no seams between neighbours.
        ink.painter.fillRect(QRectF(bar.left(), top, bar.width(), bar.height() / bands + 0.6 * ink.line),
                             dark_is_much ? load_colour(share, 0.0, 1.0) : value_colour(share, 0.0, 1.0));
    }
    ink.painter.setPen(QPen(ink.theme.muted, ink.line));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawRect(bar);
    const double step = round_step(high - low, std::min(6.0, bar.height() / (line * 1.6)));
    for (double at = std::ceil(low / step - 1e-9) * step; at <= high + 1e-9 * step; at += step) {
        const double y = bar.bottom() - (at - low) / std::max(1e-12, high - low) * bar.height();
        ink.painter.setPen(QPen(ink.theme.muted, ink.line));
        ink.painter.drawLine(QPointF(bar.right(), y), QPointF(bar.right() + line * 0.25, y));
        ink.letters.draw(ink.painter, {bar.right() + line * 0.4, y}, Qt::AlignLeft | Qt::AlignVCenter,
                         number(at, decimals_for(step)), ink.theme.text);
    }
    ink.letters.draw(ink.painter, {bar.left(), bar.top() - line * 0.3}, Qt::AlignLeft | Qt::AlignBottom, unit,
                     ink.theme.muted);
}

void paint_hatch(QPainter& painter, const QPainterPath& path, const QColor& colour, double gap, double width,
                 bool rising) {
    const QRectF box = path.boundingRect();
    if (box.isEmpty() || !(gap > 0.0)) return;
    painter.save();
    painter.setClipPath(path, Qt::IntersectClip);
    painter.setPen(QPen(colour, width));
    const double slant = box.height();
    for (double x = box.left() - slant; x < box.right() + slant; x += gap) {
        if (rising) {
            painter.drawLine(QPointF(x, box.bottom()), QPointF(x + slant, box.top()));
        } else {
            painter.drawLine(QPointF(x, box.top()), QPointF(x + slant, box.bottom()));
        }
    }
    painter.restore();
}

}  // namespace wg::ui
