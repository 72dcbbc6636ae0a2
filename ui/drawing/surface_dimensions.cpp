#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <optional>

#include "ui/common/paper_words.h"
#include "ui/drawing/surface_parts.h"

namespace wg::ui {

std::optional<double> reach_m(const std::vector<Point2>& outline, Point2 from, double dx, double dy) {
    double nearest = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 a = outline[i];
        const Point2 b = outline[(i + 1) % outline.size()];
        // Axis-parallel ray: compare across the ray first, then measure along it.
        const double across_a = dx != 0.0 ? a.y_m - from.y_m : a.x_m - from.x_m;
        const double across_b = dx != 0.0 ? b.y_m - from.y_m : b.x_m - from.x_m;
        if ((across_a > 0.0) == (across_b > 0.0)) continue;
        const double t = across_a / (across_a - across_b);
        const double along =
            dx != 0.0 ? (a.x_m + t * (b.x_m - a.x_m) - from.x_m) * dx : (a.y_m + t * (b.y_m - a.y_m) - from.y_m) * dy;
        if (along > -1e-9 && along < nearest) nearest = along;
    }
    if (!std::isfinite(nearest)) return std::nullopt;
    return std::max(nearest, 0.0);
}

namespace face {

using namespace Qt::StringLiterals;

namespace {

struct Side {
    Point2 from;  ///< corner or middle of the collector's side
    double dx = 0.0;
    double dy = 0.0;
    std::optional<double> distance_m;
};

/// Where a collector's side is measured from: a share along the side when it lies square to the direction, else the
/// corner that sticks out furthest.
Point2 start_of(const std::vector<Point2>& outline, double dx, double dy, double share) {
    const auto along = [&](Point2 p) { return p.x_m * dx + p.y_m * dy; };
    Point2 furthest = outline.front();
    for (Point2 p : outline) {
        if (along(p) > along(furthest)) furthest = p;
    }
    for (std::size_t i = 0; i < outline.size(); ++i) {
        Point2 a = outline[i];
        Point2 b = outline[(i + 1) % outline.size()];
        if (along(furthest) - std::min(along(a), along(b)) > 1e-6) continue;
        if (a.x_m > b.x_m + 1e-9 || (std::abs(a.x_m - b.x_m) <= 1e-9 && a.y_m > b.y_m)) std::swap(a, b);
        return {a.x_m + (b.x_m - a.x_m) * share, a.y_m + (b.y_m - a.y_m) * share};
    }
    return furthest;
}

/// The four ways out of a collector: right, left, up, down.
std::vector<Side> sides_of(const SurfaceDrawing& what, const Drawn& one, const std::vector<Drawn>& drawn) {
    std::vector<Side> sides{{{}, 1.0, 0.0, {}}, {{}, -1.0, 0.0, {}}, {{}, 0.0, 1.0, {}}, {{}, 0.0, -1.0, {}}};
    // Upright lines start a third along, clear of the fixing points in the middle and at the ends.
    constexpr double level_share = 0.5;
    constexpr double upright_share = 0.32;
    for (Side& side : sides) {
        side.from = start_of(one.placed.outline, side.dx, side.dy, side.dy == 0.0 ? level_share : upright_share);
        side.distance_m = reach_m(what.surface->outline, side.from, side.dx, side.dy);
        for (const Drawn& other : drawn) {
            if (&other == &one || other.placed.outline.size() < 3) continue;
            const auto gap = reach_m(other.placed.outline, side.from, side.dx, side.dy);
            if (gap && (!side.distance_m || *gap < *side.distance_m)) side.distance_m = gap;
        }
    }
    return sides;
}

void draw_side(Pass& pass, const Side& side) {
    if (!side.distance_m || *side.distance_m < 0.005) return;
    const QPointF a = pass.view.map(side.from);
    const QPointF b =
        pass.view.map({side.from.x_m + side.dx * *side.distance_m, side.from.y_m + side.dy * *side.distance_m});
    const QRectF box = draw_dimension(pass.painter, a, b, millimetres(*side.distance_m), pass.dimension_pen());
    pass.placer.keep_free(box);
    pass.placer.keep_free_line(a, b, pass.line(2.0));
}

double distance_or_far(const Side& side) {
    return side.distance_m.value_or(std::numeric_limits<double>::infinity());
}

}  // namespace

void collector_dimensions(Pass& pass, const std::vector<Drawn>& drawn) {
    for (const Drawn& one : drawn) {
        if (one.placed.outline.size() < 3) continue;
        const std::vector<Side> sides = sides_of(pass.what, one, drawn);
        if (pass.what.collector_dimensions_all_round && one.placement->id == pass.what.selected_id) {
            for (const Side& side : sides)
                draw_side(pass, side);
        } else {
            draw_side(pass, distance_or_far(sides[0]) < distance_or_far(sides[1]) ? sides[0] : sides[1]);
            draw_side(pass, distance_or_far(sides[2]) < distance_or_far(sides[3]) ? sides[2] : sides[3]);
        }
    }
}

void overall_dimensions(Pass& pass) {
    const QRectF box = bounds_of(pass.what.surface->outline, pass.view);
    const double line = pass.letters.line();
    const double gap = line * 0.7;
    DimensionPen pen = pass.dimension_pen();
    pen.plate = QColor();
    pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.5)));
    for (double x : {box.left(), box.right()}) {
        pass.painter.drawLine(QPointF(x, box.top() - line * 0.15), QPointF(x, box.top() - gap - line * 0.3));
    }
    for (double y : {box.top(), box.bottom()}) {
        pass.painter.drawLine(QPointF(box.right() + line * 0.15, y), QPointF(box.right() + gap + line * 1.3, y));
    }
    pass.placer.keep_free(draw_dimension(pass.painter, {box.left(), box.top() - gap}, {box.right(), box.top() - gap},
                                         millimetres(box.width() / pass.view.units_per_m), pen));
    // The figure of an upright dimension stands left of its line: the line keeps a line of text away from the edge.
    const double right = box.right() + gap + line;
    pass.placer.keep_free(draw_dimension(pass.painter, {right, box.bottom()}, {right, box.top()},
                                         millimetres(box.height() / pass.view.units_per_m), pen));
}

Chains chains_of(const SurfaceDrawing& what, const PlaneView& view, const std::vector<Drawn>& drawn) {
    Chains chains;
    if (what.surface == nullptr || what.surface->outline.empty()) return chains;
    // Datum: the left end of the lowest edge, where a tape is hooked.
    Point2 datum{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
    for (Point2 p : what.surface->outline) {
        if (p.y_m < datum.y_m - 1e-6 || (p.y_m < datum.y_m + 1e-6 && p.x_m < datum.x_m)) datum = p;
    }
    chains.datum = datum;
    struct Entry {
        QStringList numbers;
        double object_x_m = 0.0, object_y_m = 0.0;
    };
    std::map<long long, Entry> by_x;  // whole millimetres
    std::map<long long, Entry> by_y;
    const auto note = [&](int number, Point2 at) {
        Entry& x = by_x[std::llround((at.x_m - datum.x_m) * 1000.0)];
        Entry& y = by_y[std::llround((at.y_m - datum.y_m) * 1000.0)];
        if (x.numbers.isEmpty() || at.y_m < x.object_y_m) x.object_y_m = at.y_m;
        if (y.numbers.isEmpty() || at.x_m < y.object_x_m) y.object_x_m = at.x_m;
        x.numbers << QString::number(number);
        y.numbers << QString::number(number);
    };
    for (const Drawn& one : drawn) {
        if (one.planned == nullptr || one.moved) continue;
        for (const fixing::FixingPoint& point : one.planned->fixing.points)
            note(point.number, point.position);
    }
    const auto joined = [](const QStringList& numbers) {
        // Runs of three and more are closed up: "1-4".
        QStringList pieces;
        for (qsizetype i = 0; i < numbers.size();) {
            qsizetype end = i;
            while (end + 1 < numbers.size() && numbers[end + 1].toInt() == numbers[end].toInt() + 1)
                ++end;
            if (end - i >= 2) {
                pieces << u"%1\u2013%2"_s.arg(numbers[i], numbers[end]);
                i = end + 1;
            } else {
                pieces << numbers[i];
                ++i;
            }
        }
        return pieces.join(u", "_s);
    };
    for (const auto& [mm, entry] : by_x) {
        const Point2 at{datum.x_m + static_cast<double>(mm) / 1000.0, entry.object_y_m};
        chains.x.push_back(
            {view.map(at).x(), view.map(at).y(), millimetres(static_cast<double>(mm) / 1000.0), joined(entry.numbers)});
    }
    for (const auto& [mm, entry] : by_y) {
        const Point2 at{entry.object_x_m, datum.y_m + static_cast<double>(mm) / 1000.0};
        chains.y.push_back(
            {view.map(at).y(), view.map(at).x(), millimetres(static_cast<double>(mm) / 1000.0), joined(entry.numbers)});
    }
    return chains;
}

double point_chains(Pass& pass, const std::vector<Drawn>& drawn) {
    const Chains chains = chains_of(pass.what, pass.view, drawn);
    if (chains.x.empty()) return 0.0;
    const QRectF box = bounds_of(pass.what.surface->outline, pass.view);
    const double line = pass.letters.line();
    DimensionPen pen = pass.dimension_pen();
    pen.plate = QColor();
    const QPointF datum = pass.view.map(chains.datum);
    const double depth = draw_chain_x(pass.painter, datum.x(), box.bottom() + line * 0.7, chains.x, pen);
    draw_chain_y(pass.painter, datum.y(), box.left() - line * 0.7, chains.y, pen);
    for (const ChainMark& mark : chains.x) {
        pass.placer.keep_free_line({mark.at, mark.to}, {mark.at, box.bottom()}, pass.line(2.0));
    }
    for (const ChainMark& mark : chains.y) {
        pass.placer.keep_free_line({mark.to, mark.at}, {box.left(), mark.at}, pass.line(2.0));
    }
    return depth;
}

void caption(Pass& pass, double chain_depth_units) {
    const QRectF box = bounds_of(pass.what.surface->outline, pass.view);
    const double line = pass.letters.line();
    const double y = box.bottom() + line * 0.6 + chain_depth_units + (chain_depth_units > 0.0 ? line * 0.7 : 0.0);
    DimensionPen pen = pass.dimension_pen();
    pen.plate = pass.theme.panel;
    const double bar = std::min(box.width() * 0.25, line * 9.0);
    if (pass.what.scale_bar)
        draw_scale_bar(pass.painter, {box.right() - bar, y + line * 1.2}, pass.view.units_per_m, bar - line * 1.2, pen);
    QString text = say("Dimensions in mm");
    if (chain_depth_units > 0.0) {
        const QString full = text + say("; fixing points: number \u00b7 distance from the dot");
        if (pass.letters.width(full) < box.width() - (pass.what.scale_bar ? bar + line : 0.0)) text = full;
    }
    pass.letters.draw(pass.painter, {box.left(), y + line * 1.35}, Qt::AlignLeft | Qt::AlignBottom, text,
                      pass.theme.muted);
    if (pass.what.zones == nullptr) return;
    const fixing::WindZones& zones = *pass.what.zones;
    const auto metres = [](double value) { return u"%1\u202fm"_s.arg(value, 0, 'f', 2); };
    QString words = u"No wind zones: a plate here stands free"_s;
    if (!zones.areas.empty()) {
        words = u"Wind zones, EN 1991-1-4 7.2: letter, suction coefficient; h = %1, e = %2"_s.arg(
            metres(zones.height_m), metres(zones.e_m));
        if (std::abs(zones.e_side_m - zones.e_m) > 0.005) words += u", from the side %1"_s.arg(metres(zones.e_side_m));
        if (pass.letters.width(words) > box.width() + line * 2.0) words = u"Wind zones, EN 1991-1-4 7.2"_s;
    }
    pass.letters.draw(pass.painter, {box.left(), y + line * 2.55}, Qt::AlignLeft | Qt::AlignBottom, words,
                      pass.theme.note);
}

}  // namespace face
}  // namespace wg::ui
