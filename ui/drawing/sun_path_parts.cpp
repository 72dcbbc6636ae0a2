#include "ui/drawing/sun_path_parts.h"

#include <QObject>
#include <QPolygonF>
#include <algorithm>
#include <utility>

#include "ui/common/format.h"

namespace wg::ui::sun_path {

Inks inks_of(const Theme& theme) {
    Inks inks{theme.muted, theme.muted, theme.ready, theme.caution, theme.accent, theme.note};
    if (theme.kind == ThemeKind::sunlight) inks.behind = inks.sun = inks.hours = inks.tree = theme.text;
    return inks;
}

QColor thin(QColor colour, double share) {
    colour.setAlphaF(static_cast<float>(share));
    return colour;
}

namespace {

QPainterPath box_path(const QRectF& box) {
    QPainterPath path;
    path.addRect(box);
    return path;
}

}  // namespace

void fill_horizon(QPainter& painter, const QPainterPath& path, const Theme& theme, double line) {
    painter.setPen(QPen(inks_of(theme).horizon, 1.5 * line));
    painter.setBrush(thin(inks_of(theme).horizon, 0.55));
    painter.drawPath(path);
}
void fill_obstacle(QPainter& painter, const QPainterPath& path, const Theme& theme, double line, bool tree) {
    const QColor ink = tree ? inks_of(theme).tree : inks_of(theme).obstacle;
    painter.setPen(QPen(ink, 1.2 * line));
    painter.setBrush(thin(ink, 0.30));
    painter.drawPath(path);
    if (tree) paint_hatch(painter, path, thin(ink, 0.8), 7.0 * line, line, false);
}
void fill_behind(QPainter& painter, const QPainterPath& path, const Theme& theme, double line) {
    const QColor ink = inks_of(theme).behind;
    paint_hatch(painter, path, thin(ink, 0.65), 9.0 * line, line, true);
    painter.setPen(QPen(ink, 1.2 * line, Qt::DashDotLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(path);
}

std::vector<Block> blocks_of(const SunPathPicture& picture, const SunPathFrame& where) {
    std::vector<Block> blocks;
    std::vector<std::pair<double, const SkylineStep*>> by_x;
    for (const SkylineStep& step : picture.skyline)
        by_x.emplace_back(where.x_of(step.azimuth_deg), &step);
    std::sort(by_x.begin(), by_x.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    const double half = by_x.empty() ? 0.0 : 180.0 / static_cast<double>(by_x.size());
    const auto at = [&](double x, double height) {
        return where.frame.map(std::clamp(x, where.frame.x_from, where.frame.x_to), std::min(height, where.frame.y_to));
    };
    double last_x = 0.0;
    double last_height = 0.0;
    const auto end = [&] {
        if (blocks.empty()) return;
        blocks.back().path.lineTo(at(last_x + half, last_height));
        blocks.back().path.lineTo(at(last_x + half, 0.0));
        blocks.back().path.closeSubpath();
    };
    for (const auto& [x, step] : by_x) {
        const double height = step->elevation_deg;
        if (!(height > 0.0) || x + half < where.frame.x_from || x - half > where.frame.x_to) continue;
        const bool goes_on = !blocks.empty() && blocks.back().steps.back()->id == step->id && x - last_x < 2.5 * half;
        if (!goes_on) {
            end();
            blocks.emplace_back();
            blocks.back().path.moveTo(at(x - half, 0.0));
            blocks.back().path.lineTo(at(x - half, height));
        }
        Block& block = blocks.back();
        const QPointF top = at(x, height);
        block.path.lineTo(top);
        if (block.steps.empty() || top.y() < block.top.y()) block.top = top;
        block.steps.push_back(step);
        last_x = x;
        last_height = height;
    }
    end();
    return blocks;
}

void paint_marks(const PictureInk& ink, const SunPathPicture& picture, const SunPathFrame& where, LabelPlacer& placer) {
    QPainter& painter = ink.painter;
    const double r = ink.letters.line() * 0.38;
    const auto label = [&](QPointF at, const QString& text, const QColor& colour) {
        if (text.isEmpty()) return;
        const LabelPlacer::Label place = placer.place(at, ink.letters.size(text), r * 1.6, {0.0, -1.0});
        ink.letters.draw_in(painter, place.box, text, colour, thin(ink.theme.panel, 0.9));
    };
    if (picture.now && picture.now->elevation_deg > 0.0) {
        const QPointF at = where.frame.map(where.x_of(picture.now->azimuth_deg), picture.now->elevation_deg);
        painter.setPen(QPen(ink.theme.panel, 2.0 * ink.line));
        painter.setBrush(inks_of(ink.theme).sun);
        painter.drawEllipse(at, r, r);
        label(at, picture.now->label, ink.theme.text);
    }
    if (picture.marked) {
        const QPointF at = where.frame.map(where.x_of(picture.marked->azimuth_deg),
                                           std::clamp(picture.marked->elevation_deg, 0.0, where.frame.y_to));
        painter.setPen(QPen(ink.theme.accent, 1.6 * ink.line, Qt::DashLine));
        painter.drawLine(QPointF(at.x(), where.frame.plot.top()), QPointF(at.x(), where.frame.plot.bottom()));
        painter.setPen(QPen(ink.theme.panel, 1.5 * ink.line));
        painter.setBrush(ink.theme.accent);
        painter.drawPolygon(
            QPolygonF({at + QPointF(0, -r), at + QPointF(r, 0), at + QPointF(0, r), at + QPointF(-r, 0)}));
        label(at,
              QObject::tr("%1°, %2° high")
                  .arg(number(picture.marked->azimuth_deg), number(picture.marked->elevation_deg, 1)),
              ink.theme.accent);
    }
}

std::vector<LegendItem> legend_of(const SunPathPicture& picture, const Theme& theme, double line) {
    const Inks inks = inks_of(theme);
    const auto stroke = [line](const QColor& ink, double width, Qt::PenStyle style) {
        return [=](QPainter& painter, const QRectF& box) {
            painter.setPen(QPen(ink, width * line, style));
            painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
        };
    };
    std::vector<LegendItem> items{{QObject::tr("Sun on the 21st of the month"), stroke(inks.sun, 2.2, Qt::SolidLine)},
                                  {QObject::tr("Standard time, Dec to Jun"), stroke(inks.hours, 1.3, Qt::SolidLine)},
                                  {QObject::tr("Jun to Dec"), stroke(inks.hours, 1.3, Qt::DashLine)}};
    const bool trees = std::any_of(picture.skyline.begin(), picture.skyline.end(),
                                   [](const SkylineStep& s) { return s.tree && s.elevation_deg > 0.0; });
    const bool solid = std::any_of(picture.skyline.begin(), picture.skyline.end(),
                                   [](const SkylineStep& s) { return !s.tree && s.elevation_deg > 0.0; });
    if (solid) {
        items.push_back({QObject::tr("Obstacle"), [theme, line](QPainter& painter, const QRectF& box) {
                             fill_obstacle(painter, box_path(box), theme, line, false);
                         }});
    }
    if (trees) {
        items.push_back({QObject::tr("Tree"), [theme, line](QPainter& painter, const QRectF& box) {
                             fill_obstacle(painter, box_path(box), theme, line, true);
                         }});
    }
    if (!picture.horizon.empty()) {
        items.push_back({QObject::tr("Surveyed horizon"), [theme, line](QPainter& painter, const QRectF& box) {
                             fill_horizon(painter, box_path(box), theme, line);
                         }});
    }
    if (picture.plate && picture.plate->tilt_deg > 0.5) {
        items.push_back(
            {QObject::tr("Behind the collector's face"), [theme, line](QPainter& painter, const QRectF& box) {
                 fill_behind(painter, box_path(box), theme, line);
             }});
    }
    return items;
}

}  // namespace wg::ui::sun_path
