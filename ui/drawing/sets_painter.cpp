#include "ui/drawing/sets_painter.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double radius = 0.42;  // in lines of lettering

void paint_mark(QPainter& painter, QPointF at, double r, const SetsPicture::Point& point, const Theme& theme,
                double line) {
    const QColor ink = point.front ? theme.accent : theme.muted;
    painter.setPen(QPen(ink, (point.front ? 2.2 : 1.4) * line));
    painter.setBrush(point.stopped ? QBrush(Qt::NoBrush) : QBrush(point.front ? ink : theme.panel));
    if (point.present) {
        painter.drawRect(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
    } else {
        painter.drawEllipse(at, r, r);
    }
    if (point.stopped) {
        painter.drawLine(at + QPointF(-r, -r), at + QPointF(r, r));
        painter.drawLine(at + QPointF(-r, r), at + QPointF(r, -r));
    }
    // A bar through the mark: told by shape, not by colour alone.
    if (point.missed) {
        painter.setPen(QPen(theme.text, 2.2 * line));
        painter.drawLine(at + QPointF(-1.7 * r, 0.0), at + QPointF(1.7 * r, 0.0));
    }
}

std::vector<LegendItem> legend(const SetsPicture& picture, const Theme& theme, double line) {
    std::vector<LegendItem> items;
    const auto add = [&](const QString& words, const SetsPicture::Point& like) {
        items.push_back({words, [like, &theme, line](QPainter& painter, const QRectF& box) {
                             paint_mark(painter, box.center(), box.height() * 0.45, like, theme, line);
                         }});
    };
    const auto any = [&picture](bool SetsPicture::Point::*what) {
        return std::any_of(picture.points.begin(), picture.points.end(), [what](const auto& p) { return p.*what; });
    };
    SetsPicture::Point front, present, missed, stopped;
    front.front = present.present = missed.missed = stopped.stopped = true;
    add(QObject::tr("Not beaten in both"), front);
    add(QObject::tr("Another set is better or as good in both"), SetsPicture::Point());
    add(QObject::tr("The choice's own set"), present);
    if (any(&SetsPicture::Point::missed)) add(QObject::tr("Misses the comfort asked for"), missed);
    if (any(&SetsPicture::Point::stopped)) add(QObject::tr("Something stands against it"), stopped);
    return items;
}

/// Where a leader from `from` meets the label, not its middle: it would strike the words through.
QPointF nearest_on(const QRectF& box, QPointF from) {
    return {std::clamp(from.x(), box.left(), box.right()), std::clamp(from.y(), box.top(), box.bottom())};
}

/// Labels of all points that have a price, those of the front first; index into points with its place.
std::vector<std::pair<std::size_t, LabelPlacer::Label>> labels_of(const SetsPicture& picture, const PlotFrame& frame,
                                                                  const Lettering& letters, LabelPlacer& places) {
    const double r = radius * letters.line();
    std::vector<std::pair<std::size_t, LabelPlacer::Label>> labels;
    for (const bool front : {true, false}) {
        for (std::size_t i = 0; i < picture.points.size(); ++i) {
            const SetsPicture::Point& p = picture.points[i];
            if (!p.priced || p.front != front) continue;
            const QPointF at = frame.map(p.cost, p.short_l);
            const auto label =
                places.place(at, letters.size(p.label), 1.5 * r, QPointF(1.0, p.short_l > 0.0 ? 0.0 : -0.7));
            if (label.far) places.keep_free_line(at, nearest_on(label.box, at), 0.25 * letters.line());
            labels.emplace_back(i, label);
        }
    }
    return labels;
}

}  // namespace

PlotFrame sets_frame(const SetsPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    double low = 1e300, high = -1e300, most = 0.0;
    for (const SetsPicture::Point& p : picture.points) {
        if (!p.priced) continue;
        low = std::min(low, p.cost);
        high = std::max(high, p.cost);
        most = std::max(most, p.short_l);
    }
    if (low > high) low = high = 0.0;
    PlotFrame frame;
    const double span = std::max(high - low, 1e-6 + 0.01 * std::fabs(high));
    frame.x_from = low - 0.08 * span;
    frame.x_to = high + 0.25 * span;  // labels stand to the right
    most = std::max(most, 1.0);
    frame.y_from = -0.06 * most;
    frame.y_to = 1.1 * most;
    const int rows = paint_legend(nullptr, area, legend(picture, current_theme(), 1.0), current_theme(), letters);
    frame.plot = plot_area(area, letters, letters.width(number(most)) + letters.line(), rows);
    return frame;
}

void paint_sets(QPainter& painter, const SetsPicture& picture, const QRectF& area, const Theme& theme,
                double text_units) {
    const auto priced = [](const SetsPicture::Point& p) { return p.priced; };
    if (std::none_of(picture.points.begin(), picture.points.end(), priced)) return;
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = sets_frame(picture, area, text_units);
    Axis x, y;
    x.title = picture.cost_title;
    y.title = picture.comfort_title;
    const double dx = round_step(frame.x_to - frame.x_from, 6.0);
    for (double at = std::ceil(frame.x_from / dx) * dx; at <= frame.x_to; at += dx)
        x.marks.push_back({at, number(at), false});
    const double dy = round_step(frame.y_to, 5.0);
    for (double at = 0.0; at <= frame.y_to; at += dy)
        y.marks.push_back({at, number(at, decimals_for(dy)), false});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, y);
    paint_axes(ink, frame, x, y);
    const double r = radius * letters.line();
    // The front as steps: to the right of and above it everything is beaten.
    std::vector<const SetsPicture::Point*> front;
    for (const SetsPicture::Point& p : picture.points)
        if (p.front && p.priced) front.push_back(&p);
    std::sort(front.begin(), front.end(), [](const auto* a, const auto* b) { return a->cost < b->cost; });
    QPainterPath path;
    LabelPlacer places(frame.plot);
    for (std::size_t i = 0; i < front.size(); ++i) {
        const QPointF at = frame.map(front[i]->cost, front[i]->short_l);
        if (i == 0) {
            path.moveTo(at);
        } else {
            const QPointF from = path.currentPosition(), corner(at.x(), from.y());
            path.lineTo(corner);
            path.lineTo(at);
            places.keep_free_line(from, corner, 2.0 * ink.line);
            places.keep_free_line(corner, at, 2.0 * ink.line);
        }
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme.accent, 1.2 * ink.line, Qt::DashLine));
    painter.drawPath(path);
    for (const SetsPicture::Point& p : picture.points) {
        if (!p.priced) continue;
        const QPointF at = frame.map(p.cost, p.short_l);
        places.keep_free(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
    }
    const auto labels = labels_of(picture, frame, letters, places);
    painter.setPen(QPen(theme.muted, 0.8 * ink.line));
    for (const auto& [i, label] : labels) {
        const QPointF at = frame.map(picture.points[i].cost, picture.points[i].short_l);
        if (label.far) painter.drawLine(at, nearest_on(label.box, at));
    }
    for (const auto& [i, label] : labels) {
        const SetsPicture::Point& p = picture.points[i];
        const QPointF at = frame.map(p.cost, p.short_l);
        if (static_cast<int>(i) == picture.selected) {
            painter.setPen(QPen(theme.text, 1.6 * ink.line));
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(at, 1.8 * r, 1.8 * r);
        }
        paint_mark(painter, at, r, p, theme, ink.line);
        letters.draw_in(painter, label.box, p.label, p.front ? theme.text : theme.muted,
                        label.far ? theme.panel : QColor());
    }
    paint_legend(&painter, area, legend(picture, theme, ink.line), theme, letters);
    painter.restore();
}

int set_at(const SetsPicture& picture, const QRectF& area, QPointF at, double text_units) {
    const PlotFrame frame = sets_frame(picture, area, text_units);
    const double reach = 1.5 * Lettering(text_units).line();
    int found = -1;
    double nearest = reach;
    for (std::size_t i = 0; i < picture.points.size(); ++i) {
        if (!picture.points[i].priced) continue;
        const QPointF off = frame.map(picture.points[i].cost, picture.points[i].short_l) - at;
        const double distance = std::hypot(off.x(), off.y());
        if (distance < nearest) {
            nearest = distance;
            found = static_cast<int>(i);
        }
    }
    return found;
}

}  // namespace wg::ui
