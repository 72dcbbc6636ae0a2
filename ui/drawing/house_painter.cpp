#include "ui/drawing/house_painter.h"

#include <QPainterPath>
#include <QPen>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

#include "core/quantity/constants.h"
#include "core/scene/convex.h"
#include "core/site/vec.h"
#include "ui/common/format.h"
#include "ui/drawing/house_inks.h"
#include "ui/drawing/house_labels.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {

using site::dot;
using namespace house;

namespace {

using scene::Fragment;
using scene::Kind;

constexpr int patches_in_path = 8;
constexpr std::size_t smooth_below = 400;

/// A fragment on screen. Faces that show their back to the eye and are not sheets are not seen.
struct Seen {
    QPolygonF outline;
    bool shows = false;
    bool face = true;  ///< the side of the normal is seen
};

/// An ellipsoid with an upright axis shows as an ellipse with an upright axis.
QPolygonF crown_outline(const Fragment& f, const HouseView& view) {
    constexpr int corners = 60;
    const double across = f.radius_m * view.units_per_m;
    const double along =
        std::hypot(f.half_height_m * view.axes.up.z_m, f.radius_m * view.axes.to_eye.z_m) * view.units_per_m;
    const QPointF middle = view.map(f.middle);
    QPolygonF out;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2.0 * pi * i / corners;
        out << middle + QPointF(across * std::cos(angle), along * std::sin(angle));
    }
    return out;
}

Seen seen_of(const Fragment& f, const HouseView& view) {
    Seen out;
    switch (f.shape) {
        case Fragment::Shape::polygon:
            out.face = dot(f.normal, view.axes.to_eye) > 0.0;
            out.shows = out.face || f.two_sided;
            if (!out.shows) return out;
            [[fallthrough]];
        case Fragment::Shape::line:
            for (const Point3 p : f.corners)
                out.outline << view.map(p);
            out.shows = true;
            return out;
        case Fragment::Shape::body: {
            if (f.radius_m > 0.0) {
                out.outline = crown_outline(f, view);
                out.shows = true;
                return out;
            }
            std::vector<Point2> points;
            points.reserve(f.corners.size());
            for (const Point3 p : f.corners) {
                const QPointF at = view.map(p);
                points.push_back({at.x(), at.y()});
            }
            for (const Point2 p : scene::hull_of(std::move(points)))
                out.outline << QPointF(p.x_m, p.y_m);
            out.shows = out.outline.size() >= 3;
            return out;
        }
    }
    return out;
}

struct Pass {
    QPainter& painter;
    const HouseDrawing& what;
    const HouseView& view;
    const Theme& theme;
    [[nodiscard]] double line(double factor) const { return what.line_units * theme.line_scale * factor; }
    [[nodiscard]] const scene::Thing& thing(int index) const {
        return what.scene->things[static_cast<std::size_t>(index)];
    }
    [[nodiscard]] bool selected(const scene::Thing& one) const {
        if (one.id.empty()) return false;
        return one.kind == Kind::collector ? one.id == what.collector_id
                                           : one.kind == Kind::surface && one.id == what.selected_id;
    }
    [[nodiscard]] bool night() const { return !what.sun.up; }
    /// Smooth lines cost a large site more than a frame of many has time for.
    [[nodiscard]] bool smooth() const { return !what.moving || what.order->fragments().size() < smooth_below; }
};

/// Outlines of one light, several in one path: where neighbours touch or lie over each other no seam shows. Not all in
/// one: a path with hundreds of edges takes the rasterizer many times as long.
void fill_shadows(const Pass& pass, const std::vector<scene::ShadowPatch>& patches, const QColor& tint, double lit,
                  double shade) {
    pass.painter.setPen(Qt::NoPen);
    pass.painter.setRenderHint(QPainter::Antialiasing, pass.smooth());
    for (std::size_t i = 0; i < patches.size();) {
        QPainterPath path;
        path.setFillRule(Qt::WindingFill);
        const double passes = patches[i].passes;
        for (int n = 0; i < patches.size() && n < patches_in_path && patches[i].passes == passes; ++i, ++n) {
            QPolygonF outline;
            for (const Point3 p : patches[i].corners)
                outline << pass.view.map(p);
            path.addPolygon(outline);
            path.closeSubpath();
        }
        pass.painter.setBrush(in_light(tint, shade + passes * (lit - shade), pass.theme));
        pass.painter.drawPath(path);
    }
    pass.painter.setRenderHint(QPainter::Antialiasing, pass.smooth());
}

void edges(const Pass& pass, const Fragment& f, const QPolygonF& outline, const scene::Thing& thing) {
    QColor ink = pass.theme.text;
    double width = 0.9;
    if (pass.selected(thing)) {
        ink = pass.theme.accent;
        width = 2.6;
    } else if (thing.kind == Kind::collector) {
        ink = pass.theme.collector_line;
        width = 1.4;
    } else {
        ink.setAlphaF(0.75F);
    }
    pass.painter.setPen(QPen(ink, pass.line(width), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    pass.painter.setBrush(Qt::NoBrush);
    if (std::all_of(f.drawn.begin(), f.drawn.end(), [](char c) { return c != 0; })) {
        pass.painter.drawPolygon(outline);
        return;
    }
    const qsizetype n = outline.size();
    for (qsizetype i = 0; i < n; ++i) {
        if (f.drawn[static_cast<std::size_t>(i)] != 0) pass.painter.drawLine(outline[i], outline[(i + 1) % n]);
    }
}

void polygon(const Pass& pass, const Fragment& f, const Seen& seen, const std::vector<scene::ShadowPatch>& patches) {
    const scene::Thing& thing = pass.thing(f.thing);
    const Point3 normal = seen.face ? f.normal : Point3{-f.normal.x_m, -f.normal.y_m, -f.normal.z_m};
    QColor tint = tint_of(thing, pass.theme);
    if (!seen.face) tint = mixed(tint, pass.theme.hatch, 0.35);  // a sheet from behind
    const double cosine = pass.what.shadows->sun ? dot(normal, pass.what.shadows->to_sun) : 0.0;
    const double shade = shaded(normal, pass.view.axes.right, pass.night());
    const double lit = cosine > 0.0 ? sunlit(cosine) : shade;
    const QColor fill = in_light(tint, lit, pass.theme);
    // Filled to whole pixels: parts of what was cut then meet without a seam; the edges drawn over it are smooth.
    pass.painter.setRenderHint(QPainter::Antialiasing, false);
    pass.painter.setPen(Qt::NoPen);
    pass.painter.setBrush(fill);
    pass.painter.drawConvexPolygon(seen.outline);
    pass.painter.setRenderHint(QPainter::Antialiasing, pass.smooth());
    if (cosine > 0.0) fill_shadows(pass, patches, tint, lit, shade);
    edges(pass, f, seen.outline, thing);
}

void body(const Pass& pass, const Fragment& f, const Seen& seen) {
    const scene::Thing& thing = pass.thing(f.thing);
    QColor fill = in_light(tint_of(thing, pass.theme), pass.what.shadows->sun ? 0.72 : 0.34, pass.theme);
    QColor ink = pass.theme.text;
    ink.setAlphaF(0.75F);
    if (thing.kind == Kind::crown) {
        // Something is seen through a crown, as some light passes it.
        fill.setAlphaF(pass.theme.kind == ThemeKind::sunlight ? 0.35F : 0.50F);
        ink = pass.theme.ready;
    }
    pass.painter.setPen(f.whole ? QPen(ink, pass.line(0.9)) : QPen(Qt::NoPen));
    pass.painter.setBrush(fill);
    pass.painter.drawConvexPolygon(seen.outline);
}

void segment(const Pass& pass, const Fragment& f, const Seen& seen) {
    const scene::Thing& thing = pass.thing(f.thing);
    QPen pen(pass.theme.collector_line, pass.line(thing.kind == Kind::route ? 2.6 : 1.6), Qt::SolidLine, Qt::RoundCap);
    if (thing.kind == Kind::post_line) pen = QPen(pass.theme.muted, pass.line(0.9), Qt::DashLine);
    pass.painter.setPen(pen);
    pass.painter.drawLine(seen.outline[0], seen.outline[1]);
}

void ground(const Pass& pass) {
    QPolygonF outline;
    for (const Point3 p : pass.what.scene->ground.corners)
        outline << pass.view.map(p);
    const QColor tint = tint_of(pass.thing(0), pass.theme);
    const bool sun = pass.what.shadows->sun;
    const double shade = shaded({0, 0, 1}, pass.view.axes.right, pass.night());
    const double lit = sun ? sunlit(pass.what.shadows->to_sun.z_m) : shade;
    pass.painter.setPen(Qt::NoPen);
    pass.painter.setBrush(in_light(tint, lit, pass.theme));
    pass.painter.drawConvexPolygon(outline);
    if (sun) fill_shadows(pass, pass.what.shadows->ground, tint, lit, shade);
}

/// Not only as a line.
bool shows_face(const Fragment& f, const HouseView& view) {
    constexpr double least_cosine = 0.06;
    return f.shape == Fragment::Shape::body || dot(f.normal, view.axes.to_eye) > least_cosine;
}

/// The run and the cylinder also where walls, roof and ground hide them.
void hidden_parts(const Pass& pass) {
    QColor ink = pass.theme.collector_line;
    ink.setAlphaF(0.8F);
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(ink, pass.line(1.2), Qt::DotLine, Qt::RoundCap));
    QPolygonF run;
    for (const Point3 p : pass.what.scene->run)
        run << pass.view.map(p);
    pass.painter.drawPolyline(run);
    const auto& rings = pass.what.scene->cylinder;
    if (rings.size() != 2) return;
    ink = pass.theme.note;
    pass.painter.setPen(QPen(ink, pass.line(1.2), Qt::DotLine));
    std::array<QPolygonF, 2> seen;
    for (std::size_t k = 0; k < 2; ++k) {
        for (const Point3 p : rings[k])
            seen[k] << pass.view.map(p);
        pass.painter.drawPolygon(seen[k]);
    }
    qsizetype left = 0, right = 0;
    for (qsizetype i = 0; i < seen[0].size(); ++i) {
        if (seen[0][i].x() < seen[0][left].x()) left = i;
        if (seen[0][i].x() > seen[0][right].x()) right = i;
    }
    for (const qsizetype i : {left, right})
        pass.painter.drawLine(seen[0][i], seen[1][i]);
}

}  // namespace

HouseView fit_house(const scene::Scene& scene, const scene::Camera& camera, const QRectF& area, HouseFit what) {
    HouseView view;
    view.axes = scene::axes_of(camera, scene.sketch_up_azimuth_deg);
    view.middle = scene.middle;
    double left = std::numeric_limits<double>::infinity(), low = left, right = -left, high = -left;
    const auto take = [&](Point3 p) {
        const Point2 at = scene::seen(view.axes, view.middle, p);
        left = std::min(left, at.x_m);
        right = std::max(right, at.x_m);
        low = std::min(low, at.y_m);
        high = std::max(high, at.y_m);
    };
    for (const scene::Polygon& p : scene.polygons) {
        const Kind kind = scene.things[static_cast<std::size_t>(p.thing)].kind;
        if (what == HouseFit::everything || kind == Kind::surface || kind == Kind::collector)
            std::for_each(p.corners.begin(), p.corners.end(), take);
    }
    if (what == HouseFit::own_house && !(left <= right)) return fit_house(scene, camera, area);
    for (const scene::Body& b : scene.bodies) {
        if (what == HouseFit::own_house) break;
        for (const std::vector<Point3>& part : b.skin)
            std::for_each(part.begin(), part.end(), take);
    }
    if (!(left <= right)) std::for_each(scene.ground.corners.begin(), scene.ground.corners.end(), take);
    const double width = std::max(1.0, right - left), height = std::max(1.0, high - low);
    view.units_per_m = std::max(1e-3, std::min(area.width() / width, area.height() / height));
    view.origin =
        area.center() + QPointF(-0.5 * (left + right) * view.units_per_m, 0.5 * (low + high) * view.units_per_m);
    return view;
}

void paint_house(QPainter& painter, const HouseDrawing& what, const HouseView& view, const Theme& theme) {
    if (what.scene == nullptr || what.order == nullptr || what.shadows == nullptr) return;
    const Pass pass{painter, what, view, theme};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, pass.smooth());
    ground(pass);
    const std::vector<Fragment>& fragments = what.order->fragments();
    static const std::vector<scene::ShadowPatch> none;
    const QRectF screen = what.area.isEmpty() ? QRectF(painter.viewport()) : what.area;
    std::vector<HouseOutline> outlines;
    outlines.reserve(fragments.size());
    for (const std::uint32_t i : what.order->back_to_front(view.axes.to_eye)) {
        const Fragment& f = fragments[i];
        Seen seen = seen_of(f, view);
        if (!seen.shows) continue;
        const QRectF bounds = seen.outline.boundingRect();
        if (bounds.right() < screen.left() || bounds.left() > screen.right() || bounds.bottom() < screen.top() ||
            bounds.top() > screen.bottom())
            continue;
        switch (f.shape) {
            case Fragment::Shape::polygon: {
                // Shadows are known on the side that the sun is on.
                const bool known = i < what.shadows->fragment.size();
                polygon(pass, f, seen, known ? what.shadows->fragment[i] : none);
                break;
            }
            case Fragment::Shape::body: body(pass, f, seen); break;
            case Fragment::Shape::line: segment(pass, f, seen); break;
        }
        if (f.shape != Fragment::Shape::line)
            outlines.push_back({std::move(seen.outline), bounds, f.thing, shows_face(f, view)});
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
    hidden_parts(pass);
    paint_house_labels(painter, what, view, theme, outlines);
    painter.restore();
}

const scene::Thing* house_thing_at(const scene::Scene& scene, const scene::Order& order, const HouseView& view,
                                   QPointF at) {
    const std::vector<std::uint32_t> painted = order.back_to_front(view.axes.to_eye);
    for (auto i = painted.rbegin(); i != painted.rend(); ++i) {
        const Fragment& f = order.fragments()[*i];
        if (f.shape == Fragment::Shape::line) continue;
        const Seen seen = seen_of(f, view);
        if (seen.shows && seen.outline.containsPoint(at, Qt::OddEvenFill))
            return &scene.things[static_cast<std::size_t>(f.thing)];
    }
    return nullptr;
}

}  // namespace wg::ui
