#include "ui/drawing/house_labels.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/quantity/constants.h"
#include "core/site/occluders.h"
#include "ui/common/format.h"
#include "ui/drawing/house_inks.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

using scene::Kind;

constexpr std::size_t most_labels = 40;  ///< more is no longer read

struct Wanted {
    int rank = 0;
    std::size_t thing = 0;
    QPointF at;
};

double area_of(const QPolygonF& outline) {
    double twice = 0.0;
    for (qsizetype i = 0; i < outline.size(); ++i) {
        const QPointF a = outline[i], b = outline[(i + 1) % outline.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return std::abs(twice) / 2.0;
}

/// The topmost thing painted over a place; -1: none. Crowns are seen through.
int top_at(const HouseDrawing& what, const std::vector<HouseOutline>& outlines, QPointF at) {
    for (auto o = outlines.rbegin(); o != outlines.rend(); ++o) {
        if (what.scene->things[static_cast<std::size_t>(o->thing)].kind == Kind::crown) continue;
        if (o->bounds.contains(at) && o->outline.containsPoint(at, Qt::OddEvenFill)) return o->thing;
    }
    return -1;
}

std::vector<Wanted> wanted_labels(const HouseDrawing& what, const HouseView& view,
                                  const std::vector<HouseOutline>& outlines) {
    const double least_area = 2.0 * what.text_units * what.text_units;
    std::set<int> face_shown;
    for (const HouseOutline& o : outlines) {
        if (o.face && area_of(o.outline) >= least_area) face_shown.insert(o.thing);
    }
    std::vector<Wanted> all;
    for (std::size_t i = 0; i < what.scene->things.size(); ++i) {
        const scene::Thing& thing = what.scene->things[i];
        if (thing.label.empty() || (what.moving && thing.kind != Kind::collector)) continue;
        const QPointF at = view.map(thing.anchor);
        if (!what.area.contains(at)) continue;
        const int index = static_cast<int>(i);
        switch (thing.kind) {
            case Kind::collector:
                if (!face_shown.contains(index) || top_at(what, outlines, at) != index) break;
                all.push_back({thing.id == what.collector_id ? 0 : 2, i, at});
                break;
            case Kind::surface: {
                if (!face_shown.contains(index)) break;
                // A collector or a window over the middle does not hide a roof.
                const int top = top_at(what, outlines, at);
                const Kind over = top < 0 ? Kind::ground : what.scene->things[static_cast<std::size_t>(top)].kind;
                if (top != index && over != Kind::collector && over != Kind::keep_out) break;
                all.push_back({thing.id == what.selected_id ? 1 : 4, i, at});
                break;
            }
            case Kind::obstacle: all.push_back({5, i, at}); break;
            case Kind::cylinder: all.push_back({3, i, at}); break;
            default: break;
        }
    }
    std::stable_sort(all.begin(), all.end(), [](const Wanted& a, const Wanted& b) { return a.rank < b.rank; });
    return all;
}

QPointF nearest_in(const QRectF& box, QPointF to) {
    return {std::clamp(to.x(), box.left(), box.right()), std::clamp(to.y(), box.top(), box.bottom())};
}

/// A ring on the ground: north, and where the sun stands.
void compass(QPainter& painter, const HouseDrawing& what, const HouseView& view, const Theme& theme,
             const Lettering& letters, LabelPlacer& placer) {
    const double line = what.line_units * theme.line_scale;
    const double r = letters.line() * 2.2;
    const QPointF middle(what.area.left() + r * 1.6, what.area.bottom() - r * 1.45);
    const auto on_ring = [&](double bearing_deg, double share) {
        const Point3 d = site::to_sketch(std::sin(radians(bearing_deg)), std::cos(radians(bearing_deg)), 0.0,
                                         what.scene->sketch_up_azimuth_deg);
        const Point2 p = scene::seen(view.axes, {}, d);
        return middle + QPointF(p.x_m, -p.y_m) * (r * share);
    };
    QPolygonF ring;
    for (int i = 0; i < 48; ++i)
        ring << on_ring(i * 7.5, 1.0);
    QColor plate = theme.panel;
    plate.setAlphaF(0.85F);
    painter.setPen(QPen(theme.text, line));
    painter.setBrush(plate);
    painter.drawPolygon(ring);
    for (int i = 0; i < 8; ++i)
        painter.drawLine(on_ring(i * 45.0, i % 2 == 0 ? 0.82 : 0.9), on_ring(i * 45.0, 1.0));
    painter.setBrush(theme.text);
    painter.drawPolygon(
        QPolygonF({on_ring(0.0, 0.95), on_ring(140.0, 0.35), on_ring(180.0, 0.12), on_ring(220.0, 0.35)}));
    const Lettering bold(what.text_units, true);
    bold.draw(painter,
              on_ring(0.0, 1.0) + (on_ring(0.0, 1.0) - middle) / (r / (letters.line() * 0.6)) +
                  QPointF(0.0, on_ring(0.0, 1.0).y() > middle.y() ? letters.line() * 0.25 : -letters.line() * 0.25),
              Qt::AlignCenter, QStringLiteral("N"), theme.text);
    if (what.sun.up) {  // how high it stands is said in words
        const QPointF sun = on_ring(what.sun.azimuth_deg, 1.0);
        painter.setPen(QPen(theme.caution, 1.5 * line));
        painter.drawLine(middle + (sun - middle) * 0.55, sun);
        painter.setBrush(what.sun.behind_horizon ? theme.panel : theme.caution);
        painter.drawEllipse(sun, letters.line() * 0.30, letters.line() * 0.30);
    }
    placer.keep_free(QRectF(middle.x() - 1.5 * r, middle.y() - 1.6 * r, 3.0 * r, 3.0 * r));
}

}  // namespace

std::vector<QRectF> paint_house_labels(QPainter& painter, const HouseDrawing& what, const HouseView& view,
                                       const Theme& theme, const std::vector<HouseOutline>& outlines) {
    const Lettering letters(what.text_units);
    const Lettering bold(what.text_units, true);
    LabelPlacer placer(what.area);
    compass(painter, what, view, theme, letters, placer);
    std::vector<QRectF> places;
    if (!what.labels) return places;
    for (const HouseOutline& o : outlines) {  // what the picture is about stays seen
        if (what.scene->things[static_cast<std::size_t>(o.thing)].kind == Kind::collector) placer.keep_free(o.bounds);
    }
    const double line = what.line_units * theme.line_scale;
    std::vector<Wanted> shown;
    for (const Wanted& one : wanted_labels(what, view, outlines)) {
        if (places.size() >= most_labels) break;
        const Lettering& hand = one.rank < 2 ? bold : letters;
        const QString text = qs(what.scene->things[one.thing].label);
        const LabelPlacer::Label label = placer.find(one.at, hand.size(text), letters.line() * 0.5, {0.0, -1.0});
        if (!placer.is_free(label.box)) continue;
        placer.keep_free(label.box);
        placer.keep_free_line(one.at, nearest_in(label.box, one.at), line);
        places.push_back(label.box);
        shown.push_back(one);
    }
    // All leaders first: where one passes a label it goes under it.
    painter.setBrush(theme.text);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        painter.setPen(QPen(theme.text, 0.7 * line));
        painter.drawLine(shown[i].at, nearest_in(places[i], shown[i].at));
        painter.drawEllipse(shown[i].at, 1.6 * what.line_units, 1.6 * what.line_units);
    }
    QColor plate = theme.panel;
    plate.setAlphaF(0.85F);
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const bool chosen = shown[i].rank < 2;
        (chosen ? bold : letters)
            .draw_in(painter, places[i], qs(what.scene->things[shown[i].thing].label),
                     chosen ? theme.accent : theme.text, plate);
    }
    return places;
}

}  // namespace wg::ui
