#include <algorithm>
#include <cmath>
#include <optional>

#include "ui/drawing/surface_parts.h"

namespace wg::ui::face {

using namespace Qt::StringLiterals;

namespace {

constexpr double moved_m = 0.0005;  ///< half a millimetre: finer than anything set out on a roof
constexpr double stub_m = 0.18;     ///< tubes are drawn this far out of the plate

bool same_place(const site::PlacedCollector& a, const site::PlacedCollector& b) {
    if (a.outline.size() != b.outline.size()) return false;
    for (std::size_t i = 0; i < a.outline.size(); ++i) {
        if (std::hypot(a.outline[i].x_m - b.outline[i].x_m, a.outline[i].y_m - b.outline[i].y_m) > moved_m) return false;
    }
    return std::hypot(a.liquid_connection.x_m - b.liquid_connection.x_m,
                      a.liquid_connection.y_m - b.liquid_connection.y_m) <= moved_m;
}

QColor colour_of(const Theme& theme, double utilisation) {
    if (utilisation > 1.0) return theme.stop;
    if (utilisation > 0.9) return theme.caution;
    return theme.ready;
}

void stub(Pass& pass, QPointF a, QPointF b, double width) {
    pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(width), Qt::SolidLine, Qt::FlatCap));
    pass.painter.drawLine(a, b);
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(1.0)));
    const double r = pass.line(width) * 0.5 + pass.line(1.0);
    pass.painter.drawEllipse(b, r, r);
    pass.placer.keep_free(QRectF(a, b).normalized().adjusted(-r, -r, r, r));
}

void tubes(Pass& pass, const Drawn& one) {
    const double turn = one.placed.connection_turn_deg * M_PI / 180.0;
    const Point2 out{std::sin(turn) * stub_m, -std::cos(turn) * stub_m};
    const auto end_of = [&](Point2 from) { return pass.view.map({from.x_m + out.x_m, from.y_m + out.y_m}); };
    const QPointF suction = end_of(one.placed.suction_connection);
    const QPointF liquid = end_of(one.placed.liquid_connection);
    stub(pass, pass.view.map(one.placed.suction_connection), suction, 3.2);
    stub(pass, pass.view.map(one.placed.liquid_connection), liquid, 1.6);
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    const QPointF downwards(std::sin(turn), std::cos(turn));
    const auto say = [&](QPointF at, const QString& word) {
        const auto place = pass.placer.place(at, pass.letters.size(word), pass.letters.line() * 0.35, downwards);
        if (!place.far) pass.letters.draw_in(pass.painter, place.box, word, pass.theme.collector_line, plate);
    };
    const double apart = std::hypot(suction.x() - liquid.x(), suction.y() - liquid.y());
    if (apart < pass.letters.width(u"suction"_s)) {
        // Too close together to tell apart at this scale.
        say((suction + liquid) / 2.0, u"connections"_s);
    } else {
        say(suction, u"suction"_s);
        say(liquid, u"liquid"_s);
    }
}

/// Words in the middle of the plate, as many lines as have room between the fixing points.
QStringList plate_words(const Pass& pass, const Drawn& one) {
    QString label = QString::fromStdString(one.placement->label);
    if (label.isEmpty()) label = u"collector"_s;
    QStringList lines{label};
    const CollectorModel* model = pass.what.collector;
    if (model == nullptr && pass.what.plan != nullptr) model = &pass.what.plan->collector;
    if (model != nullptr) {
        lines << u"%1 \u00d7 %2\u202fmm"_s.arg(millimetres(model->length_m), millimetres(model->width_m));
    }
    lines << (one.placement->hand == Hand::left ? u"connections left"_s : u"connections right"_s);
    return lines;
}

/// True when at least the name was written.
bool words_on_plate(Pass& pass, const Drawn& one) {
    const QRectF box = bounds_of(one.placed.outline, pass.view);
    QStringList lines = plate_words(pass, one);
    const double line = pass.letters.line();
    for (; !lines.isEmpty(); lines.removeLast()) {
        double width = pass.bold.width(lines.front());
        for (const QString& text : lines) width = std::max(width, pass.letters.width(text));
        const double height = line * static_cast<double>(lines.size());
        const QRectF block(box.center().x() - width / 2.0, box.center().y() - height / 2.0, width, height);
        if (width > box.width() * 0.9 || height > box.height() * 0.8 || !pass.placer.is_free(block)) continue;
        for (qsizetype i = 0; i < lines.size(); ++i) {
            const QRectF at(block.left(), block.top() + line * static_cast<double>(i), width, line);
            (i == 0 ? pass.bold : pass.letters).draw_in(pass.painter, at, lines[i], pass.theme.collector_line);
        }
        pass.placer.keep_free(block);
        return true;
    }
    return false;
}

struct Mark {
    int number = 0;
    QPointF at;
    bool known = false;
    double utilisation = 0.0;
    QPointF inwards;  ///< towards the plate's middle line and along its long side: where its number stands best
};

/// Cross in a ring filled from below like a gauge, so that the share can be read without colour.
void cross(Pass& pass, const Mark& mark, double radius) {
    const QRectF ring(mark.at.x() - radius, mark.at.y() - radius, 2.0 * radius, 2.0 * radius);
    pass.painter.setPen(Qt::NoPen);
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.drawEllipse(ring);
    if (mark.known) {
        const double share = std::clamp(mark.utilisation, 0.0, 1.0);
        pass.painter.save();
        QPainterPath disc;
        disc.addEllipse(ring);
        pass.painter.setClipPath(disc, Qt::IntersectClip);
        pass.painter.fillRect(QRectF(ring.left(), ring.bottom() - ring.height() * share, ring.width(),
                                     ring.height() * share),
                              colour_of(pass.theme, mark.utilisation));
        pass.painter.restore();
    }
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(pass.theme.text, pass.line(1.0)));
    pass.painter.drawEllipse(ring);
    const double arm = radius * 1.5;
    pass.painter.drawLine(mark.at - QPointF(arm, 0.0), mark.at + QPointF(arm, 0.0));
    pass.painter.drawLine(mark.at - QPointF(0.0, arm), mark.at + QPointF(0.0, arm));
    if (mark.known && mark.utilisation > 1.0) {
        // A square round the ring: over the limit also without colour.
        pass.painter.setPen(QPen(pass.theme.stop, pass.line(1.8)));
        pass.painter.drawRect(ring.adjusted(-radius * 0.7, -radius * 0.7, radius * 0.7, radius * 0.7));
    }
}

std::vector<Mark> marks_of(const Pass& pass, const Drawn& one) {
    const double turn = one.placement->turn_deg * M_PI / 180.0;
    const QPointF up(-std::sin(turn), -std::cos(turn));
    const QPointF right(std::cos(turn), -std::sin(turn));
    const QPointF middle = bounds_of(one.placed.outline, pass.view).center();
    const auto inwards = [&](QPointF at) {
        return (right + (QPointF::dotProduct(at - middle, up) >= 0.0 ? -up : up)) * M_SQRT1_2;
    };
    std::vector<Mark> marks;
    if (one.planned != nullptr && !one.moved && !one.planned->fixing.points.empty()) {
        for (const fixing::FixingPoint& point : one.planned->fixing.points) {
            const QPointF at = pass.view.map(point.position);
            marks.push_back({point.number, at, true, point.utilisation, inwards(at)});
        }
        return marks;
    }
    const bool numbered = one.planned != nullptr && !one.planned->fixing.points.empty();
    int number = numbered ? one.planned->fixing.points.front().number : 1;
    for (Point2 point : one.placed.fixing_points) {
        const QPointF at = pass.view.map(point);
        marks.push_back({number++, at, false, 0.0, inwards(at)});
    }
    return marks;
}

}  // namespace

std::vector<Drawn> drawn_placements(const SurfaceDrawing& what) {
    std::vector<Drawn> drawn;
    if (what.surface == nullptr || what.choice == nullptr) return drawn;
    const CollectorModel* model = what.collector;
    if (model == nullptr && what.plan != nullptr) model = &what.plan->collector;
    if (model == nullptr) return drawn;
    const double up_azimuth_deg = what.job != nullptr ? what.job->site.sketch_up_azimuth_deg : 0.0;
    for (const Placement& placement : what.choice->placements) {
        if (placement.surface_id != what.surface->id) continue;
        Drawn one;
        one.placement = &placement;
        one.placed = site::place(*what.surface, up_azimuth_deg, placement, *model);
        if (what.plan != nullptr) {
            for (const plan::PlacementPlan& planned : what.plan->placements) {
                if (planned.placement_id == placement.id && planned.surface_id == what.surface->id) {
                    one.planned = &planned;
                }
            }
        }
        one.moved = one.planned == nullptr || !same_place(one.placed, one.planned->placed);
        drawn.push_back(std::move(one));
    }
    return drawn;
}

void collectors(Pass& pass, const std::vector<Drawn>& drawn) {
    for (const Drawn& one : drawn) {
        if (one.placed.outline.size() < 3) continue;
        const QPainterPath path = path_of(one.placed.outline, pass.view);
        const bool selected = one.placement->id == pass.what.selected_id;
        QColor fill = pass.theme.collector_fill;
        if (pass.what.shade_map != nullptr) fill.setAlphaF(0.45F);  // the map must stay readable below
        pass.painter.fillPath(path, fill);
        pass.painter.setBrush(Qt::NoBrush);
        if (selected) {
            QColor glow = pass.theme.accent;
            glow.setAlphaF(0.30F);
            pass.painter.setPen(QPen(glow, pass.line(8.0), Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            pass.painter.drawPath(path);
        }
        pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(2.4), Qt::SolidLine, Qt::SquareCap,
                                 Qt::MiterJoin));
        pass.painter.drawPath(path);
        for (const Mark& mark : marks_of(pass, one)) {
            const double reach = pass.letters.line() * 0.55;
            pass.placer.keep_free(QRectF(mark.at.x() - reach, mark.at.y() - reach, 2.0 * reach, 2.0 * reach));
        }
        tubes(pass, one);
    }
}

void collector_names(Pass& pass, const std::vector<Drawn>& drawn) {
    for (const Drawn& one : drawn) {
        if (one.placed.outline.size() < 3 || words_on_plate(pass, one)) continue;
        const QString name = plate_words(pass, one).front();
        const QRectF box = bounds_of(one.placed.outline, pass.view);
        QColor plate = pass.theme.panel;
        plate.setAlphaF(0.85F);
        const auto place = pass.placer.place({box.right(), box.center().y()}, pass.bold.size(name),
                                             pass.letters.line() * 0.5, {1.0, 0.0});
        pass.bold.draw_in(pass.painter, place.box, name, pass.theme.collector_line, plate);
    }
}

void fixing_points(Pass& pass, const std::vector<Drawn>& drawn) {
    const double radius = std::max(pass.letters.line() * 0.30, pass.line(2.5));
    const Mark* worst = nullptr;
    std::vector<Mark> all;
    for (const Drawn& one : drawn) {
        for (const Mark& mark : marks_of(pass, one)) all.push_back(mark);
    }
    for (const Mark& mark : all) {
        if (mark.known && (worst == nullptr || mark.utilisation > worst->utilisation)) worst = &mark;
    }
    for (const Mark& mark : all) cross(pass, mark, radius);
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    for (const Mark& mark : all) {
        const bool is_worst = &mark == worst;
        QString text = QString::number(mark.number);
        if (is_worst) text += u" \u00b7 %1\u202f%"_s.arg(std::lround(mark.utilisation * 100.0));
        const Lettering& letters = is_worst ? pass.bold : pass.letters;
        const auto place = pass.placer.place(mark.at, letters.size(text), radius * 1.3, mark.inwards);
        if (place.far) {
            pass.painter.setPen(QPen(pass.theme.muted, pass.line(0.7)));
            pass.painter.drawLine(mark.at, place.box.center());
        }
        letters.draw_in(pass.painter, place.box, text, is_worst ? colour_of(pass.theme, mark.utilisation)
                                                                : pass.theme.text, plate);
    }
}

}  // namespace wg::ui::face
