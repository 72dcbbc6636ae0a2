#include "ui/drawing/surface_parts.h"

#include <QImage>
#include <QLocale>
#include <QPaintEngine>
#include <QPainterPathStroker>
#include <algorithm>
#include <cmath>

#include "core/site/geometry.h"
#include "ui/common/paper_words.h"
#include "ui/drawing/see_through.h"

namespace wg::ui::face {
namespace {

using namespace Qt::StringLiterals;

/// How a covering is suggested: distance of level courses and of upright lines (0: none), every other course staggered.
struct Courses {
    double course_m = 0.0;
    double upright_m = 0.0;
    bool staggered = false;
};

Courses courses_of(Covering covering) {
    switch (covering) {
        case Covering::clay_tile: return {0.34, 0.0, false};
        case Covering::concrete_tile: return {0.36, 0.30, false};
        case Covering::slate: return {0.20, 0.25, true};
        case Covering::standing_seam: return {0.0, 0.50, false};
        case Covering::membrane: return {0.0, 1.50, false};
        case Covering::masonry: return {0.25, 0.50, true};
        case Covering::render: return {0.0, 0.0, false};
        case Covering::timber: return {0.0, 0.14, false};
        case Covering::paving: return {0.50, 0.50, false};
        case Covering::soil: return {0.60, 0.80, true};
    }
    return {};
}

constexpr double least_course_lines =
    5.0;  ///< courses closer than this many line widths would only make the tint darker

constexpr double most_courses = 1000.0;  ///< beyond this a surface is no roof, and drawing it must not hang the program

void hatch_lines(Pass& pass, const QRectF& box, double step, const QPen& pen) {
    pass.painter.setPen(pen);
    const double reach = box.height();
    if (step <= 0.0 || (box.width() + reach) / step > most_courses) return;
    for (double x = box.left() - reach; x < box.right(); x += step) {
        pass.painter.drawLine(QPointF(x, box.bottom()), QPointF(x + reach, box.top()));
    }
}

}  // namespace

QColor surface_tint(const Theme& theme, SurfaceKind kind) {
    switch (kind) {
        case SurfaceKind::roof: return theme.roof;
        case SurfaceKind::wall: return theme.wall;
        case SurfaceKind::terrace: return theme.terrace;
        case SurfaceKind::ground: return theme.soil;
    }
    return theme.panel;
}

QPainterPath path_of(const std::vector<Point2>& outline, const PlaneView& view) {
    QPolygonF polygon;
    for (Point2 corner : outline)
        polygon << view.map(corner);
    QPainterPath path;
    path.addPolygon(polygon);
    path.closeSubpath();
    return path;
}

QRectF bounds_of(const std::vector<Point2>& outline, const PlaneView& view) {
    return path_of(outline, view).boundingRect();
}

QString millimetres(double metres) {
    if (!std::isfinite(metres)) return u"\u2014"_s;
    const long long whole = std::llround(metres * 1000.0);
    QString digits = QString::number(std::abs(whole));
    for (qsizetype at = digits.size() - 3; at > 0; at -= 3)
        digits.insert(at, QChar(0x2009));
    return whole < 0 ? u"\u2212"_s + digits : digits;
}

void fill_surface(Pass& pass) {
    const QPainterPath path = path_of(pass.what.surface->outline, pass.view);
    pass.painter.fillPath(path, surface_tint(pass.theme, pass.what.surface->kind));
    const Courses courses = courses_of(pass.what.surface->covering);
    const double unit = pass.view.units_per_m;
    const QRectF box = path.boundingRect();
    const QColor ink =
        see_through(pass.painter, pass.theme.text, 0.10, surface_tint(pass.theme, pass.what.surface->kind));
    pass.painter.save();
    pass.painter.setClipPath(path, Qt::IntersectClip);
    pass.painter.setPen(QPen(ink, pass.line(0.6)));
    // Level and upright lines are sharper without it on a screen, and painted in half the time.
    const QPaintEngine* engine = pass.painter.paintEngine();
    if (engine != nullptr && engine->type() == QPaintEngine::Raster)
        pass.painter.setRenderHint(QPainter::Antialiasing, false);
    const double least = pass.line(least_course_lines);
    const bool level = courses.course_m * unit >= least && box.height() < most_courses * courses.course_m * unit;
    const bool upright = courses.upright_m * unit >= least && box.width() < most_courses * courses.upright_m * unit;
    int row = 0;
    const double course = level ? courses.course_m * unit : box.height() + 1.0;
    for (double y = box.bottom(); y > box.top(); y -= course, ++row) {
        if (level && row > 0) pass.painter.drawLine(QPointF(box.left(), y), QPointF(box.right(), y));
        if (!upright) continue;
        const double step = courses.upright_m * unit;
        const double start = courses.staggered && row % 2 == 1 ? step / 2.0 : 0.0;
        for (double x = box.left() + start; x < box.right(); x += step) {
            pass.painter.drawLine(QPointF(x, y), QPointF(x, y - course));
        }
    }
    pass.painter.restore();
}

void rafters(Pass& pass) {
    const Surface& surface = *pass.what.surface;
    if (!surface.rafters.present) return;
    const std::vector<double> lines = site::rafter_lines(surface);
    if (static_cast<double>(lines.size()) > most_courses) return;
    const QPainterPath path = path_of(surface.outline, pass.view);
    const QRectF box = path.boundingRect();
    const QColor ink = see_through(pass.painter, pass.theme.muted, 0.75, surface_tint(pass.theme, surface.kind));
    pass.painter.save();
    pass.painter.setClipPath(path, Qt::IntersectClip);
    QPen pen(ink, pass.line(0.8));
    pen.setDashPattern({9.0, 5.0});
    pass.painter.setPen(pen);
    for (double x_m : lines) {
        const double x = pass.view.map({x_m, 0.0}).x();
        pass.painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
    }
    pass.painter.restore();
}

void rafter_figure(Pass& pass) {
    const Surface& surface = *pass.what.surface;
    if (!surface.rafters.present) return;
    const std::vector<double> lines = site::rafter_lines(surface);
    if (lines.size() < 2 || static_cast<double>(lines.size()) > most_courses) return;
    const QRectF box = bounds_of(surface.outline, pass.view);
    const double line = pass.letters.line();
    const QString figure = millimetres(surface.rafters.spacing_m);
    const QString word = say("rafters");
    const double word_width = pass.letters.width(word) + line * 0.8;
    for (double y : {box.top() + line * 1.9, box.bottom() - line * 0.9}) {
        for (std::size_t i = lines.size() - 1; i > 0; --i) {
            const double a = pass.view.map({lines[i - 1], 0.0}).x();
            const double b = pass.view.map({lines[i], 0.0}).x();
            const QRectF room(a - word_width, y - line * 1.2, b - a + word_width + line * 0.3, line * 1.7);
            if (room.left() < box.left() || !pass.placer.is_free(room)) continue;
            if (pass.letters.width(figure) >= (b - a) * 0.9) {
                const QString both = say("rafters every %1\u202fmm").arg(figure);
                const QRectF at = pass.letters.box({b, y}, Qt::AlignRight | Qt::AlignVCenter, both);
                if (at.left() < box.left() || !pass.placer.is_free(at)) continue;
                pass.letters.draw_in(pass.painter, at, both, pass.theme.muted, pass.dimension_pen().plate);
                pass.placer.keep_free(at);
                return;
            }
            draw_dimension(pass.painter, {a, y}, {b, y}, figure, pass.dimension_pen());
            const QRectF at = pass.letters.box({a - line * 0.4, y}, Qt::AlignRight | Qt::AlignVCenter, word);
            pass.letters.draw_in(pass.painter, at, word, pass.theme.muted, pass.dimension_pen().plate);
            pass.placer.keep_free(room);
            return;
        }
    }
}

void keep_outs(Pass& pass) {
    for (const KeepOut& zone : pass.what.surface->keep_outs) {
        if (zone.outline.size() < 3) continue;
        const QPainterPath path = path_of(zone.outline, pass.view);
        const QRectF box = path.boundingRect();
        const bool selected = zone.id == pass.what.selected_id;
        const QColor ground = surface_tint(pass.theme, pass.what.surface->kind);
        pass.painter.fillPath(path, see_through(pass.painter, pass.theme.panel, 0.6, ground));
        pass.painter.save();
        pass.painter.setClipPath(path, Qt::IntersectClip);
        hatch_lines(pass, box, pass.letters.line() * 0.55, QPen(pass.theme.hatch, pass.line(0.8)));
        pass.painter.restore();
        pass.painter.setBrush(Qt::NoBrush);
        pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.text, pass.line(selected ? 2.4 : 1.2)));
        pass.painter.drawPath(path);
        if (zone.clearance_m > 0.0) {
            QPainterPathStroker stroker;
            stroker.setWidth(zone.clearance_m * 2.0 * pass.view.units_per_m);
            stroker.setJoinStyle(Qt::RoundJoin);
            const QPainterPath kept = stroker.createStroke(path).united(path).simplified();
            pass.painter.save();
            pass.painter.setClipPath(path_of(pass.what.surface->outline, pass.view), Qt::IntersectClip);
            pass.painter.setPen(QPen(pass.theme.hatch, pass.line(0.9), Qt::DashLine));
            pass.painter.drawPath(kept);
            pass.painter.restore();
        }
        pass.placer.keep_free(box);
    }
}

void keep_out_labels(Pass& pass) {
    for (const KeepOut& zone : pass.what.surface->keep_outs) {
        if (zone.outline.size() < 3) continue;
        const QRectF box = bounds_of(zone.outline, pass.view);
        const QString label = zone.label.empty() ? say("keep out") : QString::fromStdString(zone.label);
        QColor solid = pass.theme.panel;
        solid.setAlphaF(0.9F);
        const QRectF in_middle = pass.letters.box(box.center(), Qt::AlignCenter, label);
        if (in_middle.width() < box.width()) {
            pass.letters.draw_in(pass.painter, in_middle, label, pass.theme.text, solid);
        } else {
            const auto place = pass.placer.find(QPointF(box.center().x(), box.bottom()), pass.letters.size(label),
                                                pass.letters.line() * 0.35, {0.0, 1.0});
            // Far off and over another name it would make both unreadable, and name nothing.
            if (place.far && !pass.placer.is_free(place.box)) continue;
            pass.placer.keep_free(place.box);
            pass.letters.draw_in(pass.painter, place.box, label, pass.theme.text, solid);
        }
    }
}

void outline(Pass& pass) {
    const Surface& surface = *pass.what.surface;
    const QPainterPath path = path_of(surface.outline, pass.view);
    const QRectF box = path.boundingRect();
    const bool selected = surface.id == pass.what.selected_id;
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(selected ? pass.theme.accent : pass.theme.text, pass.line(1.6), Qt::SolidLine,
                             Qt::SquareCap, Qt::MiterJoin));
    pass.painter.drawPath(path);
    QString low;
    QString high;
    switch (surface.kind) {
        case SurfaceKind::roof:
            low = surface.tilt_deg > 3.0 ? say("eaves") : QString();
            high = surface.roof_form == RoofForm::duo_pitch || surface.roof_form == RoofForm::hip ? say("ridge")
                   : surface.tilt_deg > 3.0                                                       ? say("top edge")
                                                                                                  : QString();
            break;
        case SurfaceKind::wall: low = say("foot of the wall"); break;
        case SurfaceKind::terrace:
        case SurfaceKind::ground: break;
    }
    const double inset = pass.letters.line() * 0.3;
    const auto edge_word = [&](const QString& word, QPointF at, Qt::Alignment hold) {
        if (word.isEmpty() || pass.letters.width(word) > box.width() * 0.5) return;
        const QRectF place = pass.letters.box(at, hold, word);
        QColor plate = surface_tint(pass.theme, surface.kind);
        plate.setAlphaF(0.85F);
        pass.letters.draw_in(pass.painter, place, word, pass.theme.muted, plate);
        pass.placer.keep_free(place);
    };
    // At the corner of the outline, so that the words stay on the surface when it is no rectangle.
    Point2 low_left{1e9, 1e9};
    Point2 high_left{1e9, -1e9};
    for (Point2 p : surface.outline) {
        if (p.y_m < low_left.y_m - 1e-6 || (p.y_m < low_left.y_m + 1e-6 && p.x_m < low_left.x_m)) low_left = p;
        if (p.y_m > high_left.y_m + 1e-6 || (p.y_m > high_left.y_m - 1e-6 && p.x_m < high_left.x_m)) high_left = p;
    }
    edge_word(low, pass.view.map(low_left) + QPointF(inset * 2.0, -inset), Qt::AlignLeft | Qt::AlignBottom);
    edge_word(high, pass.view.map(high_left) + QPointF(inset * 2.0, inset), Qt::AlignLeft | Qt::AlignTop);
}

}  // namespace wg::ui::face
