#include "ui/drawing/run_painter.h"

#include <QPainterPath>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/site/geometry.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/drawing/run_labels.h"
#include "ui/drawing/see_through.h"

namespace wg::ui {
namespace {

using namespace Qt::StringLiterals;

/// Isometric view after turning the sketch by a quarter circle so many times.
struct Isometric {
    int quarter = 0;
    double units_per_m = 1.0;
    QPointF shift;
    [[nodiscard]] QPointF flat(Point3 p) const {
        double x = p.x_m;
        double y = p.y_m;
        for (int i = 0; i < quarter; ++i) {
            const double turned = -y;
            y = x;
            x = turned;
        }
        static const double c = std::cos(M_PI / 6.0);
        return {(x - y) * c, -(x + y) * 0.5 - p.z_m};
    }
    [[nodiscard]] QPointF map(Point3 p) const { return flat(p) * units_per_m + shift; }
};

struct Pass {
    QPainter& painter;
    const Job& job;
    const plan::Plan& plan;
    const Theme& theme;
    Isometric view;
    Lettering letters;
    Lettering bold;
    RunLabels labels;
    double line_units = 1.0;
    double words_most = 0.0;  ///< wider labels go over two lines
    [[nodiscard]] double line(double factor) const { return line_units * theme.line_scale * factor; }
};

std::vector<Point3> corners_of(const Surface& surface, double up_azimuth_deg) {
    const site::Frame frame = site::frame_of(surface, up_azimuth_deg);
    std::vector<Point3> corners;
    corners.reserve(surface.outline.size());
    for (Point2 p : surface.outline)
        corners.push_back(site::to_space(frame, p));
    return corners;
}

/// Roofs and walls lead the eye; level ground only where a collector stands on it.
bool is_shown(const Surface& surface, const plan::Plan& plan) {
    if (surface.kind == SurfaceKind::roof || surface.kind == SurfaceKind::wall) return true;
    return std::any_of(plan.placements.begin(), plan.placements.end(),
                       [&](const plan::PlacementPlan& p) { return p.surface_id == surface.id; });
}

/// Everything that has to be inside the picture; the house only goes as far as it is behind that.
std::vector<Point3> needed_points(const Job& job, const plan::Plan& plan) {
    std::vector<Point3> points;
    for (const pipework::Leg& leg : plan.run.legs) {
        points.push_back(leg.from);
        points.push_back(leg.to);
    }
    for (const plan::PlacementPlan& placement : plan.placements) {
        points.insert(points.end(), placement.placed.corners.begin(), placement.placed.corners.end());
    }
    const Choice* choice = find_choice(job, plan.choice_id);
    const CylinderSpot* spot = choice != nullptr ? find_spot(job.site, choice->spot_id) : nullptr;
    if (spot != nullptr) {
        const double r = plan.cylinder.diameter_m / 2.0;
        for (const double side : {-r, r}) {
            points.push_back({spot->position.x_m + side, spot->position.y_m + side, spot->position.z_m});
            points.push_back({spot->position.x_m + side, spot->position.y_m - side, spot->position.z_m});
        }
    }
    if (!plan.run.legs.empty()) {
        const Point3 start = plan.run.legs.front().from;
        const Point3 end = plan.run.legs.back().to;
        points.push_back({end.x_m, end.y_m, end.z_m + plan.cylinder.height_m});
        points.push_back({start.x_m, start.y_m, end.z_m});  // foot of the lift's plumb line
    }
    return points;
}

QRectF flat_bounds(const Isometric& view, const std::vector<Point3>& points) {
    double left = std::numeric_limits<double>::infinity();
    double top = left;
    double right = -left;
    double bottom = -left;
    for (Point3 p : points) {
        const QPointF at = view.flat(p);
        left = std::min(left, at.x());
        right = std::max(right, at.x());
        top = std::min(top, at.y());
        bottom = std::max(bottom, at.y());
    }
    return {QPointF(left, top), QPointF(right, bottom)};
}

/// The quarter turn in which the legs are seen longest, so that none is looked at end-on.
int best_quarter(const plan::Plan& plan) {
    int best = 0;
    double best_score = -1.0;
    for (int quarter = 0; quarter < 4; ++quarter) {
        Isometric view;
        view.quarter = quarter;
        double seen = 0.0;
        for (const pipework::Leg& leg : plan.run.legs) {
            const QPointF d = view.flat(leg.to) - view.flat(leg.from);
            seen += std::hypot(d.x(), d.y());
        }
        // The collector's face should look towards the reader: its plate then covers the most area.
        double area = 0.0;
        if (!plan.placements.empty() && plan.placements.front().placed.corners.size() == 4) {
            const auto& c = plan.placements.front().placed.corners;
            const QPointF u = view.flat(c[1]) - view.flat(c[0]);
            const QPointF v = view.flat(c[3]) - view.flat(c[0]);
            area = -(u.x() * v.y() - u.y() * v.x());
        }
        const double score = seen + 3.0 * area;
        if (score > best_score) {
            best_score = score;
            best = quarter;
        }
    }
    return best;
}

void house(Pass& pass) {
    const QColor ink = see_through(pass.painter, pass.theme.muted, 0.55, pass.theme.panel);
    for (const Surface& surface : pass.job.site.surfaces) {
        if (!is_shown(surface, pass.plan)) continue;
        QPolygonF polygon;
        for (Point3 p : corners_of(surface, pass.job.site.sketch_up_azimuth_deg))
            polygon << pass.view.map(p);
        const QColor& tint = surface.kind == SurfaceKind::roof     ? pass.theme.roof
                             : surface.kind == SurfaceKind::wall   ? pass.theme.wall
                             : surface.kind == SurfaceKind::ground ? pass.theme.soil
                                                                   : pass.theme.terrace;
        pass.painter.setBrush(see_through(pass.painter, tint, 0.28, pass.theme.panel));
        pass.painter.setPen(QPen(ink, pass.line(0.8)));
        pass.painter.drawPolygon(polygon);
    }
}

void ends(Pass& pass) {
    for (const plan::PlacementPlan& placement : pass.plan.placements) {
        QPolygonF plate;
        for (Point3 p : placement.placed.corners)
            plate << pass.view.map(p);
        pass.painter.setBrush(see_through(pass.painter, pass.theme.collector_fill, pass.theme.panel));
        pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(2.0)));
        pass.painter.drawPolygon(plate);
        for (qsizetype i = 0; i < plate.size(); ++i) {
            pass.labels.keep_free_line(plate[i], plate[(i + 1) % plate.size()], pass.line(3.0));
        }
    }
    const Choice* choice = find_choice(pass.job, pass.plan.choice_id);
    const CylinderSpot* spot = choice != nullptr ? find_spot(pass.job.site, choice->spot_id) : nullptr;
    if (spot == nullptr) return;
    // The cylinder as a can: two ellipses and its sides.
    const QPointF foot = pass.view.map(spot->position);
    const double height = pass.plan.cylinder.height_m * pass.view.units_per_m;
    const double rx = pass.plan.cylinder.diameter_m / 2.0 * pass.view.units_per_m * 1.22;
    const double ry = rx * 0.577;
    QPainterPath can;
    can.moveTo(foot.x() - rx, foot.y() - height);
    can.lineTo(foot.x() - rx, foot.y());
    can.arcTo(QRectF(foot.x() - rx, foot.y() - ry, 2 * rx, 2 * ry), 180.0, 180.0);
    can.lineTo(foot.x() + rx, foot.y() - height);
    can.arcTo(QRectF(foot.x() - rx, foot.y() - height - ry, 2 * rx, 2 * ry), 0.0, 180.0);
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.setPen(QPen(pass.theme.text, pass.line(1.4)));
    pass.painter.drawPath(can);
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.drawEllipse(QRectF(foot.x() - rx, foot.y() - height - ry, 2 * rx, 2 * ry));
    pass.labels.keep_free(QRectF(foot.x() - rx, foot.y() - height - ry, 2 * rx, height + 2 * ry));
}

const char* passage_word(RoutePointKind kind) {
    switch (kind) {
        case RoutePointKind::roof_passage: return marked("through roof");
        case RoutePointKind::wall_passage: return marked("through wall");
        case RoutePointKind::floor_passage: return marked("through floor");
        case RoutePointKind::free: break;
    }
    return "";
}

/// Broken between words to lines of at most this width.
QStringList lines_of(const Lettering& letters, const QString& text, double width) {
    QStringList lines{QString()};
    for (const QString& word : text.split(QLatin1Char(' '))) {
        QString& last = lines.back();
        const QString longer = last.isEmpty() ? word : last + QLatin1Char(' ') + word;
        if (last.isEmpty() || letters.width(longer) <= width)
            last = longer;
        else
            lines += word;
    }
    return lines;
}

void label(Pass& pass, QPointF anchor, const QString& text, const QColor& colour, bool bold = false) {
    const Lettering& letters = bold ? pass.bold : pass.letters;
    // Long words find a place beside the drawing more easily one below the other.
    const QStringList lines = lines_of(letters, text, pass.words_most);
    double width = 0.0;
    for (const QString& one : lines)
        width = std::max(width, letters.width(one));
    const QSizeF size(width, letters.line() * static_cast<double>(lines.size()));
    const RunLabels::Place place = pass.labels.place(anchor, size, pass.letters.line(), text);
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    if (place.leader) {
        pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.6)));
        pass.painter.drawLine(place.line);
    }
    QRectF slot(place.box.topLeft(), QSizeF(width, letters.line()));
    for (const QString& one : lines) {
        letters.draw_in(pass.painter, slot, one, colour, plate);
        slot.translate(0.0, letters.line());
    }
}

void pipe(Pass& pass) {
    QPolygonF line;
    line << pass.view.map(pass.plan.run.legs.front().from);
    for (const pipework::Leg& leg : pass.plan.run.legs)
        line << pass.view.map(leg.to);
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(pass.theme.panel, pass.line(6.0), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    pass.painter.drawPolyline(line);
    pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(3.0), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    pass.painter.drawPolyline(line);
    for (qsizetype i = 1; i < line.size(); ++i)
        pass.labels.keep_free_line(line[i - 1], line[i], pass.line(5.0));

    const double r = pass.letters.line() * 0.28;
    for (std::size_t i = 0; i < pass.plan.run.legs.size(); ++i) {
        const pipework::Leg& leg = pass.plan.run.legs[i];
        const QPointF at = pass.view.map(leg.to);
        if (i + 1 == pass.plan.run.legs.size()) continue;
        pass.painter.setBrush(pass.theme.panel);
        pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(1.6)));
        if (leg.ends_at == RoutePointKind::free) {
            pass.painter.drawEllipse(at, r, r);
        } else {
            // A passage: the sleeve seen as two short bars across the pipe.
            const QPointF before = line[static_cast<qsizetype>(i)];
            QPointF d = at - before;
            const double n = std::max(std::hypot(d.x(), d.y()), 1e-6);
            d /= n;
            const QPointF across(-d.y(), d.x());
            pass.painter.setPen(QPen(pass.theme.text, pass.line(2.4), Qt::SolidLine, Qt::FlatCap));
            for (double k : {-0.6, 0.6}) {
                const QPointF bar = at + d * (r * k);
                pass.painter.drawLine(bar - across * r * 2.0, bar + across * r * 2.0);
            }
        }
        pass.labels.keep_free(QRectF(at.x() - 2 * r, at.y() - 2 * r, 4 * r, 4 * r));
    }
}

void figures(Pass& pass) {
    // The longest words first: figures go in where they leave room.
    label(pass, pass.view.map(pass.plan.run.legs.front().from), say("collector"), pass.theme.collector_line);
    label(pass, pass.view.map(pass.plan.run.legs.back().to), say("block on the cylinder"), pass.theme.text);
    for (std::size_t i = 0; i < pass.plan.run.legs.size(); ++i) {
        const pipework::Leg& leg = pass.plan.run.legs[i];
        if (leg.ends_at != RoutePointKind::free && i + 1 < pass.plan.run.legs.size()) {
            label(pass, pass.view.map(leg.to), say(passage_word(leg.ends_at)), pass.theme.text);
        }
    }
    for (const pipework::Leg& leg : pass.plan.run.legs) {
        if (leg.length_m < 0.005) continue;
        label(pass, (pass.view.map(leg.from) + pass.view.map(leg.to)) / 2.0, length_m(leg.length_m), pass.theme.text,
              true);
    }
}

/// Lift as an upright dimension at the right: plumb line below the upper end, levels carried across from both.
void lift(Pass& pass, double x) {
    const QPointF collector = pass.view.map(pass.plan.run.legs.front().from);
    const QPointF block = pass.view.map(pass.plan.run.legs.back().to);
    const double lift_units = pass.plan.run.lift_m * pass.view.units_per_m;
    if (std::abs(lift_units) < pass.letters.line() * 0.5) return;
    // Heights are true upright in this view, so the block's level below the collector lies straight under it.
    const QPointF level(collector.x(), collector.y() + lift_units);
    const QString text = pass.plan.run.lift_m >= 0.0 ? say("lift %1").arg(length_m(pass.plan.run.lift_m))
                                                     : say("drop %1").arg(length_m(-pass.plan.run.lift_m));
    // Words that do not fit upright stand beside the line: it moves in by what they need.
    const double wide = pass.letters.width(text) + pass.letters.line();
    if (std::abs(lift_units) < wide) x -= std::max(0.0, wide - pass.letters.line() * 2.0);
    pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.8), Qt::DashLine));
    pass.painter.drawLine(collector, level);
    pass.painter.drawLine(level, block);
    pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.6), Qt::DotLine));
    pass.painter.drawLine(collector, QPointF(x, collector.y()));
    pass.painter.drawLine(level, QPointF(x, level.y()));
    DimensionPen pen{&pass.letters, pass.theme.muted, pass.theme.text, QColor(), pass.line(1.0)};
    pass.labels.take(draw_dimension(pass.painter, {x, level.y()}, {x, collector.y()}, text, pen), text);
    for (const QLineF& line : {QLineF(collector, level), QLineF(level, block), QLineF(x, level.y(), x, collector.y())})
        pass.labels.keep_free_line(line.p1(), line.p2(), pass.line(1.5));
}

}  // namespace

std::vector<RunLabel> paint_run(QPainter& painter, const Job& job, const plan::Plan& plan, const QRectF& area,
                                const Theme& theme, double text_units, double line_units) {
    const Lettering letters(text_units);
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    if (plan.run.legs.empty()) {
        letters.draw(painter, area.center(), Qt::AlignCenter,
                     say("No run yet: place a collector and choose a spot for the cylinder"), theme.muted);
        painter.restore();
        return {};
    }
    const double line = letters.line();
    const double words = area.width() - 0.8 * line;
    const QStringList summary = lines_of(
        letters,
        say("Run %1 one way, %2, %3, %4 %5")
            .arg(length_m(plan.run.length_m), plan.run.bends == 1 ? say("1 bend") : say("%1 bends").arg(plan.run.bends),
                 plan.run.passages == 1 ? say("1 passage") : say("%1 passages").arg(plan.run.passages),
                 plan.run.lift_m >= 0.0 ? say("lift") : say("drop"), length_m(std::abs(plan.run.lift_m))),
        words);
    const QStringList foot = lines_of(letters, say("Not to scale in depth; figures are true lengths"), words);
    const double head_room = line * (0.6 + static_cast<double>(summary.size()));
    const double foot_room = line * (0.6 + static_cast<double>(foot.size()));
    const double lift_room = line * 3.5;  // beside the picture for the lift
    const QRectF picture = area.adjusted(line * 0.2, head_room, -line * 0.2, -foot_room);
    const QRectF room = picture.adjusted(line * 1.5, line, -line - lift_room, -line);
    Isometric view;
    view.quarter = best_quarter(plan);
    const QRectF flat = flat_bounds(view, needed_points(job, plan));
    view.units_per_m = std::min(std::max(room.width(), 1.0) / std::max(flat.width(), 0.1),
                                std::max(room.height(), 1.0) / std::max(flat.height(), 0.1));
    view.shift = room.center() - flat.center() * view.units_per_m;
    Pass pass{painter,
              job,
              plan,
              theme,
              view,
              letters,
              Lettering(text_units, true),
              RunLabels(picture),
              line_units,
              0.3 * picture.width()};
    painter.save();
    painter.setClipRect(picture, Qt::IntersectClip);
    house(pass);
    painter.restore();
    // What labels must stay clear of is drawn before the first is placed.
    ends(pass);
    lift(pass, room.right() + lift_room * 0.7);
    pipe(pass);
    figures(pass);
    QPointF at = area.topLeft() + QPointF(line * 0.4, line * 0.3);
    const auto write = [&](const QStringList& lines, const QColor& ink) {
        for (const QString& one : lines) {
            letters.draw(painter, at, Qt::AlignLeft | Qt::AlignTop, one, ink);
            pass.labels.take(letters.box(at, Qt::AlignLeft | Qt::AlignTop, one), one);
            at.ry() += line;
        }
    };
    write(summary, theme.text);
    at = QPointF(area.left() + line * 0.4, area.bottom() - line * (0.3 + static_cast<double>(foot.size())));
    write(foot, theme.muted);
    painter.restore();
    return pass.labels.taken();
}

}  // namespace wg::ui
