// Rules of place that a collector breaks, shown where they are broken: the strip asked for, the gap, the rule in words.

#include <QPainterPathStroker>
#include <algorithm>
#include <cmath>

#include "ui/common/mark.h"
#include "ui/drawing/surface_parts.h"

namespace wg::ui::face {

using namespace Qt::StringLiterals;

namespace {

using fixing::TightSpot;

constexpr std::size_t most_labels = 4;  ///< more would hide the drawing that they are about

QColor ink_of(const Pass& pass, const TightSpot& spot) {
    return colour_of(mark_of(spot.severity), pass.theme);
}

const Drawn* drawn_of(const std::vector<Drawn>& drawn, const std::string& placement_id) {
    const auto at =
        std::find_if(drawn.begin(), drawn.end(), [&](const Drawn& one) { return one.placement->id == placement_id; });
    return at == drawn.end() ? nullptr : &*at;
}

/// Outline `asked_m` outside a path.
QPainterPath widened(const QPainterPath& path, double asked_units) {
    QPainterPathStroker stroker;
    stroker.setWidth(asked_units * 2.0);
    stroker.setJoinStyle(Qt::RoundJoin);
    return stroker.createStroke(path).united(path).simplified();
}

}  // namespace

void tight_strips(Pass& pass, const std::vector<Drawn>& drawn) {
    if (pass.what.tight == nullptr) return;
    QPainter& painter = pass.painter;
    painter.save();
    painter.setBrush(Qt::NoBrush);
    std::vector<std::pair<std::string, bool>> done;  // plate or thing, and whose strip
    for (const TightSpot& spot : *pass.what.tight) {
        const Drawn* plate = drawn_of(drawn, spot.placement_id);
        if (plate == nullptr || plate->placed.outline.size() < 3) continue;
        // The figure of the gap comes last, on top; names keep off its place.
        const QPointF middle = (pass.view.map(spot.on_plate) + pass.view.map(spot.on_thing)) / 2.0;
        const double line = pass.letters.line();
        if (spot.gap_m > 0.0) pass.placer.keep_free({middle.x() - line, middle.y() - line, 3.5 * line, 2.0 * line});
        if (spot.over) {
            painter.setPen(QPen(ink_of(pass, spot), pass.line(2.6)));
            if (!spot.thing_outline.empty()) painter.drawPath(path_of(spot.thing_outline, pass.view));
            continue;
        }
        const std::pair<std::string, bool> strip{spot.maker_asks ? spot.placement_id : spot.thing_id, spot.maker_asks};
        if (std::find(done.begin(), done.end(), strip) != done.end()) continue;
        done.push_back(strip);
        QPen pen(ink_of(pass, spot), pass.line(1.2), Qt::CustomDashLine, Qt::FlatCap);
        pen.setDashPattern({5.0, 3.0});
        painter.setPen(pen);
        const QPainterPath round =
            spot.maker_asks ? path_of(plate->placed.outline, pass.view) : path_of(spot.thing_outline, pass.view);
        painter.drawPath(widened(round, spot.asked_m * pass.view.units_per_m));
    }
    painter.restore();
}

void tight_gaps(Pass& pass, const std::vector<Drawn>& drawn) {
    if (pass.what.tight == nullptr) return;
    std::vector<const TightSpot*> spots;
    for (const TightSpot& spot : *pass.what.tight) {
        // Two plates too near to each other are one gap, not two.
        const bool told = std::any_of(spots.begin(), spots.end(), [&](const TightSpot* other) {
            return other->placement_id == spot.thing_id && other->thing_id == spot.placement_id;
        });
        if (!told && drawn_of(drawn, spot.placement_id) != nullptr) spots.push_back(&spot);
    }
    std::stable_sort(spots.begin(), spots.end(),
                     [](const TightSpot* a, const TightSpot* b) { return a->severity > b->severity; });
    const double line = pass.letters.line();
    for (const TightSpot* spot : spots) {
        const QPointF a = pass.view.map(spot->on_plate);
        const QPointF b = pass.view.map(spot->on_thing);
        if (std::hypot(b.x() - a.x(), b.y() - a.y()) < 1.0) continue;
        DimensionPen pen = pass.dimension_pen();
        pen.lettering = &pass.bold;
        pen.line = pen.text = ink_of(pass, *spot);
        pen.line_units = pass.line(1.8);
        pass.placer.keep_free(draw_dimension(pass.painter, a, b, millimetres(spot->gap_m), pen));
        pass.placer.keep_free_line(a, b, pass.line(4.0));
    }
    for (const Drawn& one : drawn)
        pass.placer.keep_free(bounds_of(one.placed.outline, pass.view));
    for (std::size_t i = 0; i < std::min(spots.size(), most_labels); ++i) {
        const TightSpot& spot = *spots[i];
        const auto mark = mark_of(spot.severity);
        const QColor ink = ink_of(pass, spot);
        // "stop: 0.12 m to roof window" over "0.30 m asked (survey)".
        const QStringList parts = QString::fromStdString(spot.text).split(u"; "_s);
        const QString first = u"%1: %2"_s.arg(word_of(mark), parts.front());
        const QString second = parts.size() > 1 ? parts.back() : QString();
        const double pad = line * 0.35;
        const double sign = line * 1.05;
        const double width = std::max(sign + pad + pass.bold.width(first), pass.letters.width(second)) + 2.0 * pad;
        const double height = line * (second.isEmpty() ? 1.0 : 2.0) + pad;
        const QPointF anchor = (pass.view.map(spot.on_plate) + pass.view.map(spot.on_thing)) / 2.0;
        const auto place = pass.placer.place(anchor, {width, height}, line * 0.8);
        // Whole on the canvas, also where only its edge is free.
        QRectF box = place.box;
        const QRectF seen = QRectF(pass.painter.viewport()).adjusted(4.0, 4.0, -4.0, -4.0);
        box.moveLeft(std::clamp(box.left(), seen.left(), std::max(seen.left(), seen.right() - box.width())));
        box.moveTop(std::clamp(box.top(), seen.top(), std::max(seen.top(), seen.bottom() - box.height())));
        pass.painter.setPen(QPen(ink, pass.line(1.0)));
        pass.painter.drawLine(anchor, box.center());
        pass.painter.setBrush(pass.theme.panel);
        pass.painter.drawRoundedRect(box, 3.0, 3.0);
        const double y = box.top() + pad / 2.0;
        paint_mark(pass.painter, {box.left() + pad, y, sign, sign}, mark, pass.theme);
        pass.bold.draw(pass.painter, {box.left() + pad * 1.6 + sign, y}, Qt::AlignLeft | Qt::AlignTop, first, ink);
        if (!second.isEmpty()) {
            pass.letters.draw(pass.painter, {box.left() + pad, y + line}, Qt::AlignLeft | Qt::AlignTop, second,
                              pass.theme.text);
        }
    }
}

}  // namespace wg::ui::face
