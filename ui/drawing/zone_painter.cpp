// Wind zones on the face of a surface: where they end, which they are, how wide.

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

#include "core/site/geometry.h"
#include "ui/drawing/surface_parts.h"

namespace wg::ui::face {

using namespace Qt::StringLiterals;

void zone_lines(Pass& pass) {
    if (pass.what.zones == nullptr) return;
    QColor ink = pass.theme.note;
    ink.setAlphaF(0.85F);
    pass.painter.save();
    pass.painter.setClipPath(path_of(pass.what.surface->outline, pass.view), Qt::IntersectClip);
    QPen pen(ink, pass.line(1.1), Qt::CustomDashLine, Qt::FlatCap);
    pen.setDashPattern({7.0, 3.0, 1.5, 3.0});
    pass.painter.setPen(pen);
    for (const fixing::ZoneBorder& border : pass.what.zones->borders)
        pass.painter.drawLine(pass.view.map(border.from), pass.view.map(border.to));
    pass.painter.restore();
}

void zone_widths(Pass& pass) {
    if (pass.what.zones == nullptr) return;
    const QRectF box = bounds_of(pass.what.surface->outline, pass.view);
    const double line = pass.letters.line();
    DimensionPen pen = pass.dimension_pen();
    pen.line = pen.text = pass.theme.note;
    pen.plate = surface_tint(pass.theme, pass.what.surface->kind);
    int level = 0;
    int upright = 0;
    for (const fixing::ZoneMark& mark : pass.what.zones->marks) {
        QPointF a = pass.view.map(mark.from);
        QPointF b = pass.view.map(mark.to);
        const QString figure = u"%1 \u00b7 %2"_s.arg(QString::fromStdString(mark.word), millimetres(mark.width_m));
        const bool is_level = std::abs(a.y() - b.y()) < std::abs(a.x() - b.x());
        QRectF words;
        if (is_level) {
            // Above the word that names the edge.
            const double y = box.bottom() - line * (1.9 + 1.4 * level++);
            a.setY(y);
            b.setY(y);
            const double width = pass.letters.width(figure);
            words = width + line < std::abs(b.x() - a.x())
                        ? pass.letters.box((a + b) / 2.0, Qt::AlignHCenter | Qt::AlignBottom, figure)
                        : pass.letters.box(b + QPointF(line * 0.4, 0.0), Qt::AlignLeft | Qt::AlignVCenter, figure);
        } else {
            const double x = box.right() - line * (0.8 + 0.9 * upright++);
            a.setX(x);
            b.setX(x);
            words =
                pass.letters.box((a + b) / 2.0 - QPointF(line * 0.4, 0.0), Qt::AlignRight | Qt::AlignVCenter, figure);
        }
        draw_dimension(pass.painter, a, b, QString(), pen);
        pass.letters.draw_in(pass.painter, words, figure, pen.text, pen.plate);
        pass.placer.keep_free(words);
        pass.placer.keep_free_line(a, b, pass.line(2.0));
    }
}

namespace {

/// Freest box of that size within a zone, nearest to its middle.
std::optional<QRectF> free_box(const Pass& pass, const LabelPlacer& taken, const fixing::ZoneArea& zone, QSizeF size) {
    constexpr int steps = 12;
    const QRectF all = bounds_of(zone.outline, pass.view);
    std::optional<QRectF> best;
    double least = 1e9;
    for (int row = 0; row <= steps; ++row) {
        for (int column = 0; column <= steps; ++column) {
            const QPointF at(all.left() + all.width() * column / steps, all.top() + all.height() * row / steps);
            const QRectF box(at.x() - size.width() / 2.0, at.y() - size.height() / 2.0, size.width(), size.height());
            const QPointF corners[] = {box.topLeft(), box.topRight(), box.bottomLeft(), box.bottomRight()};
            // A letter that reaches out of its own zone would name another one.
            const bool inside = std::all_of(std::begin(corners), std::end(corners), [&](QPointF corner) {
                return site::contains(zone.outline, pass.view.unmap(corner));
            });
            if (!inside) continue;
            const double off = std::hypot(at.x() - all.center().x(), at.y() - all.center().y());
            const double cost = taken.crowding(box) * 1000.0 + off / (all.width() + all.height());
            if (cost >= least) continue;
            least = cost;
            best = box;
        }
    }
    return best;
}

}  // namespace

void zone_words(Pass& pass, const std::vector<Drawn>& drawn) {
    if (pass.what.zones == nullptr || !pass.what.dimensions) return;
    struct Area {
        const fixing::ZoneArea* zone;
        double area_m2;
    };
    std::vector<Area> areas;
    for (const fixing::ZoneArea& zone : pass.what.zones->areas)
        areas.push_back({&zone, std::abs(site::signed_area_m2(zone.outline))});
    std::stable_sort(areas.begin(), areas.end(), [](const Area& a, const Area& b) { return a.area_m2 > b.area_m2; });
    std::vector<const Area*> named;
    LabelPlacer taken = pass.placer;
    for (const Drawn& one : drawn)
        taken.keep_free(bounds_of(one.placed.outline, pass.view));
    QColor plate = surface_tint(pass.theme, pass.what.surface->kind);
    plate.setAlphaF(0.9F);
    for (const Area& one : areas) {
        // Pieces of one zone beside each other need their letter once.
        const bool said = std::any_of(named.begin(), named.end(), [&](const Area* other) {
            return other->zone->zone == one.zone->zone && std::abs(other->zone->uplift - one.zone->uplift) < 1e-9 &&
                   site::gap_m(other->zone->outline, one.zone->outline) < 1e-6;
        });
        if (said) continue;
        const QString letter = QString::fromStdString(one.zone->zone);
        const QString value = u"%1 %2%3"_s.arg(letter, one.zone->uplift < 0.0 ? u"\u2212"_s : QString())
                                  .arg(std::abs(one.zone->uplift), 0, 'f', 1);
        QString words = value;
        std::optional<QRectF> place = free_box(pass, taken, *one.zone, pass.bold.size(words));
        if (!place) {
            words = letter;
            place = free_box(pass, taken, *one.zone, pass.bold.size(words));
        }
        if (!place) continue;
        pass.bold.draw_in(pass.painter, *place, words, pass.theme.note, plate);
        pass.placer.keep_free(*place);
        taken.keep_free(*place);
        named.push_back(&one);
    }
}

}  // namespace wg::ui::face
