#include "ui/drawing/plan_painter.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/site/geometry.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/drawing/plot_frame.h"
#include "ui/drawing/see_through.h"

namespace wg::ui {
namespace {

using namespace Qt::StringLiterals;

struct Bounds {
    double left = std::numeric_limits<double>::infinity();
    double right = -std::numeric_limits<double>::infinity();
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void take(double x, double y) {
        left = std::min(left, x);
        right = std::max(right, x);
        low = std::min(low, y);
        high = std::max(high, y);
    }
    [[nodiscard]] bool empty() const { return left > right; }
};

Bounds bounds_of(const Site& site) {
    Bounds all;
    for (const Surface& surface : site.surfaces) {
        for (Point2 p : outline_in_plan(surface, site.sketch_up_azimuth_deg))
            all.take(p.x_m, p.y_m);
    }
    for (const Obstacle& obstacle : site.obstacles) {
        for (Point2 p : outline_in_plan(obstacle))
            all.take(p.x_m, p.y_m);
    }
    for (const CylinderSpot& spot : site.spots)
        all.take(spot.position.x_m, spot.position.y_m);
    for (const Room& room : site.rooms)
        for (const Point2& p : room.outline)
            all.take(p.x_m, p.y_m);
    if (all.empty()) {
        // An empty sketch shows ten metres square to start on.
        all.take(-5.0, -5.0);
        all.take(5.0, 5.0);
    }
    return all;
}

struct Pass {
    QPainter& painter;
    const SiteDrawing& what;
    const SiteView& view;
    const Theme& theme;
    Lettering letters;
    Lettering bold;
    LabelPlacer placer;
    [[nodiscard]] double line(double factor) const { return what.line_units * theme.line_scale * factor; }
};

QPolygonF mapped(const std::vector<Point2>& outline, const SiteView& view) {
    QPolygonF polygon;
    for (Point2 p : outline)
        polygon << view.map(p.x_m, p.y_m);
    return polygon;
}

void grid(Pass& pass, const QRectF& area) {
    const double unit = pass.view.units_per_m;
    // Lines every metre, heavier every five; metre lines are left out when they would crowd.
    const double crowded = pass.letters.line() * 0.6;
    // Black lines in the sun are for what was measured.
    const double share = pass.theme.kind == ThemeKind::sunlight ? 0.16 : 0.55;
    const QColor ink = see_through(pass.painter, pass.theme.rule_line, share, pass.theme.panel);
    for (const auto& [step_m, weight] : {std::pair{1.0, 0.4}, {5.0, 0.9}}) {
        if (step_m * unit < crowded) continue;
        pass.painter.setPen(QPen(ink, pass.line(weight)));
        const Point2 low = pass.view.unmap(area.bottomLeft());
        const Point2 high = pass.view.unmap(area.topRight());
        for (double x = std::ceil(low.x_m / step_m) * step_m; x <= high.x_m; x += step_m) {
            const double at = pass.view.map(x, 0.0).x();
            pass.painter.drawLine(QPointF(at, area.top()), QPointF(at, area.bottom()));
        }
        for (double y = std::ceil(low.y_m / step_m) * step_m; y <= high.y_m; y += step_m) {
            const double at = pass.view.map(0.0, y).y();
            pass.painter.drawLine(QPointF(area.left(), at), QPointF(area.right(), at));
        }
    }
}

void label(Pass& pass, QPointF anchor, const QString& text, const QColor& colour, bool bold, double clear = 0.0) {
    if (!pass.what.labels || text.isEmpty()) return;
    const Lettering& letters = bold ? pass.bold : pass.letters;
    const auto place = pass.placer.place(anchor, letters.size(text), clear + pass.letters.line() * 0.4);
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.8F);
    if (place.far) {
        pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.6)));
        pass.painter.drawLine(anchor, place.box.center());
    }
    letters.draw_in(pass.painter, place.box, text, colour, plate);
}

void slope_arrow(Pass& pass, const Surface& surface, const QPolygonF& polygon) {
    const double bearing = (surface.azimuth_deg - pass.what.job->site.sketch_up_azimuth_deg) * M_PI / 180.0;
    const QPointF down(std::sin(bearing), -std::cos(bearing));
    const double length = pass.letters.line() * 1.6;
    const QPointF middle = polygon.boundingRect().center();
    const QPointF tip = middle + down * length;
    const QPointF across(-down.y(), down.x());
    pass.painter.setPen(QPen(pass.theme.muted, pass.line(1.0)));
    pass.painter.drawLine(middle - down * length * 0.4, tip);
    pass.painter.drawLine(tip, tip - down * length * 0.25 + across * length * 0.14);
    pass.painter.drawLine(tip, tip - down * length * 0.25 - across * length * 0.14);
    pass.placer.keep_free_line(middle - down * length * 0.4, tip, pass.line(3.0));
}

void surface_in_plan(Pass& pass, const Surface& surface) {
    const Site& site = pass.what.job->site;
    const QPolygonF polygon = mapped(outline_in_plan(surface, site.sketch_up_azimuth_deg), pass.view);
    if (polygon.size() < 3) return;
    const bool selected = surface.id == pass.what.selected_id;
    const bool upright = surface.tilt_deg > 80.0;
    QColor tint;
    switch (surface.kind) {
        case SurfaceKind::roof: tint = pass.theme.roof; break;
        case SurfaceKind::wall: tint = pass.theme.wall; break;
        case SurfaceKind::terrace: tint = pass.theme.terrace; break;
        case SurfaceKind::ground: tint = pass.theme.soil; break;
    }
    pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.text,
                             pass.line(upright ? 3.0 : (selected ? 2.4 : 1.0)), Qt::SolidLine, Qt::FlatCap,
                             Qt::MiterJoin));
    pass.painter.setBrush(tint);
    pass.painter.drawPolygon(polygon);
    if (!upright && surface.tilt_deg > 3.0) {
        // Ridge as a heavy line, eaves as a line with a gutter beside it.
        double low = std::numeric_limits<double>::infinity();
        double high = -low;
        for (Point2 p : surface.outline) {
            low = std::min(low, p.y_m);
            high = std::max(high, p.y_m);
        }
        for (std::size_t i = 0; i < surface.outline.size(); ++i) {
            const std::size_t j = (i + 1) % surface.outline.size();
            const Point2 a = surface.outline[i];
            const Point2 b = surface.outline[j];
            const QPointF from = polygon[static_cast<qsizetype>(i)];
            const QPointF to = polygon[static_cast<qsizetype>(j)];
            if (std::abs(a.y_m - high) < 1e-6 && std::abs(b.y_m - high) < 1e-6) {
                pass.painter.setPen(QPen(pass.theme.text, pass.line(2.6), Qt::SolidLine, Qt::FlatCap));
                pass.painter.drawLine(from, to);
            } else if (std::abs(a.y_m - low) < 1e-6 && std::abs(b.y_m - low) < 1e-6) {
                const double bearing = (surface.azimuth_deg - site.sketch_up_azimuth_deg) * M_PI / 180.0;
                const QPointF shift = QPointF(-std::sin(bearing), std::cos(bearing)) * pass.line(3.0);
                pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.8)));
                pass.painter.drawLine(from + shift, to + shift);
            }
        }
        slope_arrow(pass, surface, polygon);
    }
}

void obstacle_in_plan(Pass& pass, const Obstacle& obstacle) {
    const QPolygonF polygon = mapped(outline_in_plan(obstacle), pass.view);
    if (polygon.size() < 3) return;
    const bool selected = obstacle.id == pass.what.selected_id;
    const bool tree = obstacle.kind == ObstacleKind::tree;
    const QColor fill = see_through(pass.painter, tree ? pass.theme.ready : pass.theme.shade_fill, tree ? 0.16 : 0.30,
                                    pass.theme.panel);
    QPen pen(selected ? pass.theme.accent : pass.theme.text, pass.line(selected ? 2.4 : 1.2));
    if (obstacle.kind == ObstacleKind::tree) pen.setStyle(Qt::DashLine);
    pass.painter.setPen(pen);
    pass.painter.setBrush(fill);
    pass.painter.drawPolygon(polygon);
    const QPointF foot = pass.view.map(obstacle.base.x_m, obstacle.base.y_m);
    if (obstacle.kind == ObstacleKind::box && polygon.size() == 4) {
        pass.painter.setPen(QPen(pass.theme.text, pass.line(0.6)));
        pass.painter.drawLine(polygon[0], polygon[2]);
        pass.painter.drawLine(polygon[1], polygon[3]);
    } else if (obstacle.kind == ObstacleKind::tree) {
        pass.painter.setPen(Qt::NoPen);
        pass.painter.setBrush(pass.theme.text);
        const double trunk = pass.line(2.5);
        pass.painter.drawEllipse(foot, trunk, trunk);
    }
    QRectF kept = polygon.boundingRect();
    if (obstacle.kind == ObstacleKind::tree) {
        const double trunk = pass.line(6.0);
        kept = QRectF(foot.x() - trunk, foot.y() - trunk, 2.0 * trunk, 2.0 * trunk);
    }
    pass.placer.keep_free(kept);
}

/// Under the roofs, so that it shows through them: broken outline, hatched where no pipe may go.
void room_in_plan(Pass& pass, const Room& room) {
    const QPolygonF polygon = mapped(room.outline, pass.view);
    if (polygon.size() < 3) return;
    const bool selected = room.id == pass.what.selected_id;
    if (room.no_pipe) {
        QPainterPath path;
        path.addPolygon(polygon);
        path.closeSubpath();
        paint_hatch(pass.painter, path, selected ? pass.theme.accent : pass.theme.muted, pass.letters.line() * 0.55,
                    pass.line(0.8), true);
    }
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.text, pass.line(selected ? 2.4 : 1.2),
                             Qt::DashLine, Qt::FlatCap, Qt::MiterJoin));
    pass.painter.drawPolygon(polygon);
}

/// True to scale as far as a cylinder of 0.6 m can be seen.
double spot_radius(const Pass& pass) {
    return std::max(0.30 * pass.view.units_per_m, pass.letters.line() * 0.42);
}

void spot_in_plan(Pass& pass, const CylinderSpot& spot) {
    const QPointF at = pass.view.map(spot.position.x_m, spot.position.y_m);
    const bool selected = spot.id == pass.what.selected_id;
    const bool used = pass.what.choice != nullptr && pass.what.choice->spot_id == spot.id;
    const double r = spot_radius(pass);
    pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.text, pass.line(selected ? 2.6 : 1.4),
                             used ? Qt::SolidLine : Qt::DashLine));
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.drawEllipse(at, r, r);
    pass.painter.setPen(QPen(pass.theme.text, pass.line(1.0)));
    pass.painter.drawLine(at - QPointF(r * 0.6, 0), at + QPointF(r * 0.6, 0));
    pass.painter.drawLine(at - QPointF(0, r * 0.6), at + QPointF(0, r * 0.6));
    pass.placer.keep_free(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
}

void collectors_and_route(Pass& pass) {
    const Choice* choice = pass.what.choice;
    const plan::Plan* plan = pass.what.plan;
    if (choice == nullptr) return;
    if (plan != nullptr) {
        for (const Placement& placement : choice->placements) {
            const Surface* surface = find_surface(pass.what.job->site, placement.surface_id);
            if (surface == nullptr) continue;
            const site::PlacedCollector placed =
                site::place(*surface, pass.what.job->site.sketch_up_azimuth_deg, placement, plan->collector);
            QPolygonF seen;
            for (Point3 corner : placed.corners)
                seen << pass.view.map(corner.x_m, corner.y_m);
            pass.painter.setBrush(see_through(pass.painter, pass.theme.collector_fill, pass.theme.panel));
            pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(1.8)));
            pass.painter.drawPolygon(seen);
            pass.placer.keep_free(seen.boundingRect());
        }
    }
    QPolygonF route;
    for (Point3 p : route_line(*pass.what.job, *choice, plan != nullptr ? &plan->collector : nullptr).points) {
        route << pass.view.map(p.x_m, p.y_m);
    }
    if (route.size() >= 2) {
        pass.painter.setBrush(Qt::NoBrush);
        pass.painter.setPen(QPen(pass.theme.panel, pass.line(5.0), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        pass.painter.drawPolyline(route);
        pass.painter.setPen(
            QPen(pass.theme.collector_line, pass.line(2.2), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        pass.painter.drawPolyline(route);
        for (qsizetype i = 1; i < route.size(); ++i) {
            pass.placer.keep_free_line(route[i - 1], route[i], pass.line(3.0));
        }
    }
    for (const RoutePoint& point : choice->route) {
        const QPointF at = pass.view.map(point.position.x_m, point.position.y_m);
        const bool selected = point.id == pass.what.selected_id;
        const double r = pass.letters.line() * (selected ? 0.36 : 0.26);
        pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.collector_line, pass.line(1.6)));
        pass.painter.setBrush(pass.theme.panel);
        if (point.kind == RoutePointKind::free) {
            pass.painter.drawEllipse(at, r, r);
        } else {
            pass.painter.drawRect(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
            pass.painter.drawLine(at + QPointF(-r, r), at + QPointF(r, -r));
        }
        pass.placer.keep_free(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
    }
}

void north_arrow(Pass& pass, QPointF middle) {
    const double r = pass.letters.line() * 1.3;
    pass.painter.save();
    pass.painter.translate(middle);
    // The sketch's up bears so many degrees: north lies as far to the other side.
    pass.painter.rotate(-pass.what.job->site.sketch_up_azimuth_deg);
    pass.painter.setPen(QPen(pass.theme.text, pass.line(1.0), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    pass.painter.setBrush(plate);
    pass.painter.drawEllipse(QPointF(0, 0), r, r);
    pass.painter.setBrush(pass.theme.text);
    pass.painter.drawPolygon(QPolygonF({{0.0, -r * 0.9}, {r * 0.32, r * 0.6}, {0.0, r * 0.35}}));
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.drawPolygon(QPolygonF({{0.0, -r * 0.9}, {-r * 0.32, r * 0.6}, {0.0, r * 0.35}}));
    pass.painter.restore();
    const double bearing = -pass.what.job->site.sketch_up_azimuth_deg * M_PI / 180.0;
    const QPointF at = middle + QPointF(std::sin(bearing), -std::cos(bearing)) * (r + pass.letters.line() * 0.55);
    pass.bold.draw(pass.painter, at, Qt::AlignCenter, u"N"_s, pass.theme.text);
}

void underlay(Pass& pass, const UnderlayImage& picture) {
    if (picture.image.isNull() || picture.shrink <= 0.0) return;
    QPainter& painter = pass.painter;
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(picture.opacity);
    painter.translate(pass.view.map(picture.origin.x_m, picture.origin.y_m));
    painter.rotate(-picture.turn_deg);  // screen y runs down
    const double scale = pass.view.units_per_m * picture.metres_per_pixel / picture.shrink;
    painter.scale(scale, scale);
    painter.drawImage(QPointF(0.0, 0.0), picture.image);
    painter.restore();
}

/// Where a photograph was taken from, open to the side it looks to.
void photo_place(Pass& pass, const Photograph& photograph) {
    if (!photograph.taken_from) return;
    const QPointF at = pass.view.map(photograph.taken_from->x_m, photograph.taken_from->y_m);
    const double r = pass.letters.line() * 0.45;
    pass.painter.setPen(QPen(pass.theme.accent, pass.line(1.4)));
    if (photograph.looking_azimuth_deg) {
        const double in_sketch =
            (*photograph.looking_azimuth_deg - pass.what.job->site.sketch_up_azimuth_deg) * M_PI / 180.0;
        for (const double side : {-0.45, 0.45})
            pass.painter.drawLine(at, at + QPointF(std::sin(in_sketch + side), -std::cos(in_sketch + side)) * r * 3.2);
    }
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.drawEllipse(at, r, r);
    pass.painter.setBrush(pass.theme.accent);
    pass.painter.drawEllipse(at, r * 0.4, r * 0.4);
    pass.placer.keep_free(QRectF(at.x() - r, at.y() - r, 2.0 * r, 2.0 * r));
}

void labels(Pass& pass) {
    const Site& site = pass.what.job->site;
    for (const CylinderSpot& spot : site.spots) {
        label(pass, pass.view.map(spot.position.x_m, spot.position.y_m), qs(spot.label), pass.theme.text,
              spot.id == pass.what.selected_id, spot_radius(pass));
    }
    for (const Obstacle& obstacle : site.obstacles) {
        const QPolygonF polygon = mapped(outline_in_plan(obstacle), pass.view);
        if (polygon.isEmpty()) continue;
        const QRectF box = polygon.boundingRect();
        const QPointF anchor =
            obstacle.kind == ObstacleKind::tree ? box.center() : QPointF(box.right(), box.center().y());
        label(pass, anchor, say("%1, top %2").arg(qs(obstacle.label), length_m(obstacle.base.z_m + obstacle.height_m)),
              pass.theme.text, obstacle.id == pass.what.selected_id);
    }
    for (const Room& room : site.rooms) {
        const QPolygonF polygon = mapped(room.outline, pass.view);
        if (polygon.isEmpty()) continue;
        const QString words = room.no_pipe ? say("%1: no pipe").arg(qs(room.label)) : qs(room.label);
        label(pass, polygon.boundingRect().center(), words, pass.theme.text, room.id == pass.what.selected_id);
    }
    for (const Surface& surface : site.surfaces) {
        const QPolygonF polygon = mapped(outline_in_plan(surface, site.sketch_up_azimuth_deg), pass.view);
        if (polygon.isEmpty()) continue;
        // A house's own walls are named by the house: six more labels would only hide its roof.
        const bool own_wall = surface.kind == SurfaceKind::wall && !surface.footprint_edge_id.empty();
        if (own_wall && surface.id != pass.what.selected_id) continue;
        QString text = qs(surface.label);
        if (surface.tilt_deg > 3.0 && surface.tilt_deg < 80.0) {
            text += u" %1\u00b0"_s.arg(std::lround(surface.tilt_deg));
        }
        label(pass, polygon.boundingRect().center(), text, pass.theme.muted, surface.id == pass.what.selected_id);
    }
}

}  // namespace

SiteView fit_site(const Site& site, const QRectF& area, double margin_units, const std::vector<Point2>& also) {
    Bounds all = bounds_of(site);
    for (const Point2& p : also)
        all.take(p.x_m, p.y_m);
    const double width_m = std::max(all.right - all.left, 1.0);
    const double height_m = std::max(all.high - all.low, 1.0);
    SiteView view;
    view.units_per_m = std::min(std::max(area.width() - 2.0 * margin_units, 1.0) / width_m,
                                std::max(area.height() - 2.0 * margin_units, 1.0) / height_m);
    view.origin = {area.center().x() - (all.left + all.right) / 2.0 * view.units_per_m,
                   area.center().y() + (all.low + all.high) / 2.0 * view.units_per_m};
    return view;
}

void paint_site(QPainter& painter, const SiteDrawing& what, const SiteView& view, const Theme& theme) {
    if (what.job == nullptr) return;
    const Site& site = what.job->site;
    const Lettering letters(what.text_units);
    QRectF area = what.area;
    if (area.isEmpty()) {
        const Bounds all = bounds_of(site);
        area = QRectF(view.map(all.left - 1.0, all.high + 1.0), view.map(all.right + 1.0, all.low - 1.0));
    }
    Pass pass{painter, what, view, theme, letters, Lettering(what.text_units, true), LabelPlacer(area)};
    painter.save();
    painter.setClipRect(area, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    for (const UnderlayImage& picture : what.underlays)
        underlay(pass, picture);
    if (what.grid) grid(pass, area);
    // Ground and terraces lie below roofs, walls show as lines on top.
    const auto layer = [](const Surface& s) {
        switch (s.kind) {
            case SurfaceKind::ground: return 0;
            case SurfaceKind::terrace: return 1;
            case SurfaceKind::roof: return 2;
            case SurfaceKind::wall: return 3;
        }
        return 0;
    };
    for (int level = 0; level <= 3; ++level) {
        for (const Surface& surface : site.surfaces) {
            if (layer(surface) == level) surface_in_plan(pass, surface);
        }
    }
    for (const Room& room : site.rooms)
        room_in_plan(pass, room);
    collectors_and_route(pass);
    for (const Obstacle& obstacle : site.obstacles)
        obstacle_in_plan(pass, obstacle);
    for (const CylinderSpot& spot : site.spots)
        spot_in_plan(pass, spot);
    for (const Photograph& photograph : what.job->photographs)
        photo_place(pass, photograph);
    const double line = letters.line();
    const QPointF arrow(area.right() - line * 2.4, area.top() + line * 2.4);
    pass.placer.keep_free(QRectF(arrow.x() - line * 2.2, arrow.y() - line * 2.2, line * 4.4, line * 4.4));
    north_arrow(pass, arrow);
    DimensionPen pen{&letters, theme.muted, theme.text, theme.panel, what.line_units * theme.line_scale};
    const QPointF bar(area.left() + line * 0.8, area.bottom() - line * 0.6);
    if (what.scale_bar) {
        pass.placer.keep_free(QRectF(bar.x(), bar.y() - line * 1.8, line * 12.0, line * 2.0));
        draw_scale_bar(painter, bar, view.units_per_m, line * 9.0, pen);
    }
    labels(pass);
    painter.restore();
}

}  // namespace wg::ui
