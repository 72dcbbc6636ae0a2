#include <algorithm>
#include <cmath>
#include <limits>

#include "ui/common/paper_words.h"
#include "ui/drawing/see_through.h"
#include "ui/drawing/surface_parts.h"

namespace wg::ui::face {

using namespace Qt::StringLiterals;

namespace {

constexpr double moved_m = 0.0005;  ///< half a millimetre: finer than anything set out on a roof
constexpr double stub_m = 0.18;     ///< tubes are drawn this far out of the plate

bool same_place(const site::PlacedCollector& a, const site::PlacedCollector& b) {
    if (a.outline.size() != b.outline.size()) return false;
    for (std::size_t i = 0; i < a.outline.size(); ++i) {
        if (std::hypot(a.outline[i].x_m - b.outline[i].x_m, a.outline[i].y_m - b.outline[i].y_m) > moved_m)
            return false;
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

/// Unit vector in the plane along which the tubes leave: from the upper edge to that of the connections, also where a
/// frame stands askew on its surface.
Point2 tube_way(const Drawn& one) {
    const Point2 upper = one.placed.outline[3];
    const Point2 lower = one.placed.outline[0];
    const double length = std::hypot(lower.x_m - upper.x_m, lower.y_m - upper.y_m);
    if (length > moved_m) return {(lower.x_m - upper.x_m) / length, (lower.y_m - upper.y_m) / length};
    return {0.0, -1.0};  // seen edge-on
}

QPointF tube_end(const Pass& pass, const Drawn& one, Point2 from) {
    const Point2 way = tube_way(one);
    return pass.view.map({from.x_m + way.x_m * stub_m, from.y_m + way.y_m * stub_m});
}

void tubes(Pass& pass, const Drawn& one) {
    const Point2 suction = one.placed.suction_connection;
    const Point2 liquid = one.placed.liquid_connection;
    stub(pass, pass.view.map(suction), tube_end(pass, one, suction), 3.2);
    stub(pass, pass.view.map(liquid), tube_end(pass, one, liquid), 1.6);
}

void tube_words(Pass& pass, const Drawn& one) {
    const Point2 way = tube_way(one);
    const QPointF suction = tube_end(pass, one, one.placed.suction_connection);
    const QPointF liquid = tube_end(pass, one, one.placed.liquid_connection);
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    const QPointF downwards(way.x_m, -way.y_m);
    const auto put = [&](QPointF at, const QString& word) {
        const auto place = pass.placer.place(at, pass.letters.size(word), pass.letters.line() * 0.35, downwards);
        if (!place.far) pass.letters.draw_in(pass.painter, place.box, word, pass.theme.collector_line, plate);
    };
    const double apart = std::hypot(suction.x() - liquid.x(), suction.y() - liquid.y());
    if (apart < pass.letters.width(say("suction"))) {
        // Too close together to tell apart at this scale.
        put((suction + liquid) / 2.0, say("connections"));
    } else {
        put(suction, say("suction"));
        put(liquid, say("liquid"));
    }
}

/// Words in the middle of the plate, as many lines as have room between the fixing points.
QStringList plate_words(const Pass& pass, const Drawn& one) {
    QString label = QString::fromStdString(one.placement->label);
    if (label.isEmpty()) label = say("collector");
    QStringList lines{label};
    if (const CollectorModel* model = model_of(pass)) {
        lines << u"%1 \u00d7 %2\u202fmm"_s.arg(millimetres(model->length_m), millimetres(model->width_m));
    }
    lines << (one.placement->hand == Hand::left ? say("connections left") : say("connections right"));
    return lines;
}

/// Writes along the plate's long side, so that a turned plate keeps its words too. True when at least the name is
/// there.
bool words_on_plate(Pass& pass, const Drawn& one) {
    const std::vector<Point2>& outline = one.placed.outline;
    const QPointF a = pass.view.map(outline[0]);
    const QPointF b = pass.view.map(outline[1]);
    const QPointF c = pass.view.map(outline[2]);
    const double length = std::hypot(b.x() - a.x(), b.y() - a.y());
    const double depth = std::hypot(c.x() - b.x(), c.y() - b.y());
    if (length < 1e-6) return false;
    QPointF along = (b - a) / length;
    // Read from below or from the right.
    if (along.x() < -1e-6 || (std::abs(along.x()) <= 1e-6 && along.y() > 0.0)) along = -along;
    const QPointF down(-along.y(), along.x());
    const double turn_deg = std::atan2(along.y(), along.x()) * 180.0 / M_PI;
    const QPointF middle = (a + c) / 2.0;
    const double line = pass.letters.line();
    QStringList lines = plate_words(pass, one);
    for (; !lines.isEmpty(); lines.removeLast()) {
        double width = pass.bold.width(lines.front());
        for (const QString& text : lines)
            width = std::max(width, pass.letters.width(text));
        const double rows = static_cast<double>(lines.size());
        if (width > length * 0.9 || line * rows > depth * 0.8) continue;
        std::vector<QRectF> cells;
        bool free = true;
        for (double row = 0.5; row < rows; row += 1.0) {
            for (double x = -width / 2.0 + line / 2.0; x <= width / 2.0; x += line * 0.8) {
                const QPointF at = middle + along * x + down * ((row - rows / 2.0) * line);
                cells.emplace_back(at.x() - line * 0.4, at.y() - line * 0.4, line * 0.8, line * 0.8);
                free = free && pass.placer.is_free(cells.back());
            }
        }
        if (!free) continue;
        for (qsizetype i = 0; i < lines.size(); ++i) {
            const QPointF at = middle + down * ((static_cast<double>(i) + 0.5 - rows / 2.0) * line);
            (i == 0 ? pass.bold : pass.letters)
                .draw(pass.painter, at, Qt::AlignCenter, lines[i], pass.theme.collector_line, turn_deg);
        }
        for (const QRectF& cell : cells)
            pass.placer.keep_free(cell);
        return true;
    }
    return false;
}

struct Mark {
    int number = 0;
    QPointF at;
    bool known = false;
    double utilisation = 0.0;
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
        pass.painter.fillRect(
            QRectF(ring.left(), ring.bottom() - ring.height() * share, ring.width(), ring.height() * share),
            colour_of(pass.theme, mark.utilisation));
        pass.painter.restore();
    }
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(pass.theme.text, pass.line(1.0)));
    pass.painter.drawEllipse(ring);
    const double arm = radius * 1.5;
    pass.painter.drawLine(mark.at - QPointF(arm, 0.0), mark.at + QPointF(arm, 0.0));
    pass.painter.drawLine(mark.at - QPointF(0.0, arm), mark.at + QPointF(0.0, arm));
    // Told apart also without colour: a square over the limit, a triangle near it.
    if (mark.known && mark.utilisation > 1.0) {
        pass.painter.setPen(QPen(pass.theme.stop, pass.line(1.8)));
        pass.painter.drawRect(ring.adjusted(-radius * 0.7, -radius * 0.7, radius * 0.7, radius * 0.7));
    } else if (mark.known && mark.utilisation > 0.9) {
        pass.painter.setPen(QPen(pass.theme.caution, pass.line(1.8)));
        pass.painter.drawPolygon(
            QPolygonF({mark.at + QPointF(0.0, -2.6 * radius), mark.at + QPointF(2.3 * radius, 1.5 * radius),
                       mark.at + QPointF(-2.3 * radius, 1.5 * radius)}));
    }
}

/// A diamond round the point that holds least.
void diamond(Pass& pass, const Mark& mark, double radius) {
    const double reach = radius * 2.9;
    pass.painter.setBrush(Qt::NoBrush);
    pass.painter.setPen(QPen(colour_of(pass.theme, mark.utilisation), pass.line(1.8)));
    pass.painter.drawPolygon(QPolygonF({mark.at + QPointF(0.0, -reach), mark.at + QPointF(reach, 0.0),
                                        mark.at + QPointF(0.0, reach), mark.at + QPointF(-reach, 0.0)}));
}

std::vector<Mark> marks_of(const Pass& pass, const Drawn& one) {
    std::vector<Mark> marks;
    if (one.planned != nullptr && !one.moved && !one.planned->fixing.points.empty()) {
        for (const fixing::FixingPoint& point : one.planned->fixing.points) {
            marks.push_back({point.number, pass.view.map(point.position), true, point.utilisation});
        }
        return marks;
    }
    const bool numbered = one.planned != nullptr && !one.planned->fixing.points.empty();
    int number = numbered ? one.planned->fixing.points.front().number : 1;
    for (Point2 point : one.placed.fixing_points)
        marks.push_back({number++, pass.view.map(point), false, 0.0});
    return marks;
}

struct Number {
    const Mark* mark = nullptr;
    QString text;
    bool worst = false;
    QRectF box;
};

/// All numbers of a plate stand on the same side of their crosses, or each on the outer side: which number belongs to
/// which hole must never be a guess.
void place_numbers(Pass& pass, std::vector<Number>& numbers, double gap) {
    QPointF middle;
    for (const Number& one : numbers)
        middle += one.mark->at / static_cast<double>(numbers.size());
    // The last pattern (0, 0) means outwards, up or down by the half of the plate.
    const QPointF patterns[] = {{1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}, {0, 0}};
    double best = std::numeric_limits<double>::infinity();
    std::vector<QRectF> best_boxes;
    for (const QPointF& pattern : patterns) {
        double crowded = 0.0;
        LabelPlacer tried = pass.placer;
        std::vector<QRectF> boxes;
        for (const Number& one : numbers) {
            const QSizeF size = (one.worst ? pass.bold : pass.letters).size(one.text);
            QPointF side = pattern;
            if (side.isNull()) side = {0.0, one.mark->at.y() > middle.y() ? 1.0 : -1.0};
            const double reach = side.x() == 0.0 ? gap : gap * 0.75;
            const QPointF at(one.mark->at.x() + side.x() * (reach + size.width() / 2.0),
                             one.mark->at.y() + side.y() * (reach + size.height() * 0.42));
            const QRectF box(at.x() - size.width() / 2.0, at.y() - size.height() * 0.42, size.width(),
                             size.height() * 0.84);
            crowded += tried.crowding(box);
            tried.keep_free(box);
            boxes.push_back(box);
        }
        if (crowded < best - 1e-9) {
            best = crowded;
            best_boxes = boxes;
        }
    }
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        numbers[i].box = best_boxes[i];
        pass.placer.keep_free(best_boxes[i]);
    }
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
        const bool selected = is_selected(pass.what, one.placement->id);
        QColor fill = pass.theme.collector_fill;
        if (pass.what.shade_map != nullptr) fill.setAlphaF(0.45F);  // the map must stay readable below
        pass.painter.fillPath(path, see_through(pass.painter, fill, surface_tint(pass.theme, pass.what.surface->kind)));
        pass.painter.setBrush(Qt::NoBrush);
        if (selected) {
            QColor glow = pass.theme.accent;
            glow.setAlphaF(0.30F);
            pass.painter.setPen(QPen(glow, pass.line(8.0), Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
            pass.painter.drawPath(path);
        }
        pass.painter.setPen(
            QPen(pass.theme.collector_line, pass.line(2.4), Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        pass.painter.drawPath(path);
        for (const Mark& mark : marks_of(pass, one)) {
            const double reach = pass.letters.line() * 0.55;
            pass.placer.keep_free(QRectF(mark.at.x() - reach, mark.at.y() - reach, 2.0 * reach, 2.0 * reach));
        }
        tubes(pass, one);
        if (pass.what.level_marks) level_mark(pass, one);
    }
}

void collector_names(Pass& pass, const std::vector<Drawn>& drawn) {
    for (const Drawn& one : drawn) {
        if (one.placed.outline.size() < 3 || words_on_plate(pass, one)) continue;
        const QString name = plate_words(pass, one).front();
        QColor plate = pass.theme.panel;
        plate.setAlphaF(0.85F);
        // Beside the middle of the side with the most room.
        const std::vector<Point2>& outline = one.placed.outline;
        const QPointF middle = bounds_of(outline, pass.view).center();
        LabelPlacer::Label place;
        QPointF anchor;
        double least = std::numeric_limits<double>::infinity();
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const QPointF at = (pass.view.map(outline[i]) + pass.view.map(outline[(i + 1) % outline.size()])) / 2.0;
            const QPointF out = at - middle;
            const double length = std::max(std::hypot(out.x(), out.y()), 1e-6);
            const auto found = pass.placer.find(at, pass.bold.size(name), pass.letters.line() * 0.4, out / length);
            // A label pushed round to the other side would need a leader across the plate.
            const bool astray = QPointF::dotProduct(found.box.center() - at, out) <= 0.0;
            const double crowded = pass.placer.crowding(found.box) + (found.far ? 0.5 : 0.0) + (astray ? 10.0 : 0.0);
            if (crowded >= least) continue;
            least = crowded;
            place = found;
            anchor = at;
        }
        if (place.far) {
            pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(0.7)));
            pass.painter.drawLine(anchor, place.box.center());
        }
        pass.placer.keep_free(place.box);
        pass.bold.draw_in(pass.painter, place.box, name, pass.theme.collector_line, plate);
    }
}

namespace {

/// How much the worst point uses, beside its number where there is room.
void worst_words(Pass& pass, const Mark* worst, double radius) {
    if (worst == nullptr) return;
    // With the number: the words may find room only nearer to another point.
    const QString words =
        say("worst point %1: %2\u202f%").arg(worst->number).arg(std::lround(worst->utilisation * 100.0));
    const QColor ink = colour_of(pass.theme, worst->utilisation);
    const auto place = pass.placer.place(worst->at, pass.bold.size(words), radius * 3.2);
    // Half a word is worse than none: its diamond and the list name the point.
    if (!pass.what.cut_out.isEmpty() && !pass.what.cut_out.contains(place.box)) return;
    if (place.far) {
        pass.painter.setPen(QPen(ink, pass.line(0.7)));
        pass.painter.drawLine(worst->at, place.box.center());
    }
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    pass.bold.draw_in(pass.painter, place.box, words, ink, plate);
}

}  // namespace

void fixing_points(Pass& pass, const std::vector<Drawn>& drawn) {
    const double radius = std::max(pass.letters.line() * 0.30, pass.line(2.5));
    std::vector<std::vector<Mark>> plates;
    for (const Drawn& one : drawn)
        plates.push_back(marks_of(pass, one));
    const Mark* worst = nullptr;
    for (const std::vector<Mark>& marks : plates) {
        for (const Mark& mark : marks) {
            cross(pass, mark, radius);
            if (mark.known && (worst == nullptr || mark.utilisation > worst->utilisation)) worst = &mark;
        }
    }
    if (worst != nullptr) diamond(pass, *worst, radius);
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.85F);
    for (std::size_t plate_index = 0; plate_index < plates.size(); ++plate_index) {
        const std::vector<Mark>& marks = plates[plate_index];
        const std::string& placement_id = drawn[plate_index].placement->id;
        std::vector<Number> numbers;
        for (const Mark& mark : marks) {
            Number one{&mark, QString::number(mark.number), &mark == worst, {}};
            numbers.push_back(one);
        }
        if (numbers.empty()) continue;
        place_numbers(pass, numbers, radius * 1.5);
        for (const Number& one : numbers) {
            const QColor ink = one.worst ? colour_of(pass.theme, one.mark->utilisation) : pass.theme.text;
            (one.worst ? pass.bold : pass.letters).draw_in(pass.painter, one.box, one.text, ink, plate);
            if (pass.what.numbers != nullptr)
                pass.what.numbers->push_back({placement_id, one.mark->number, one.mark->at, one.box});
            if (one.mark->number == pass.what.marked_point && placement_id == pass.what.marked_point_of) {
                pass.painter.setBrush(Qt::NoBrush);
                pass.painter.setPen(QPen(pass.theme.accent, pass.line(2.2)));
                pass.painter.drawEllipse(one.mark->at, radius * 3.4, radius * 3.4);
            }
        }
    }
    worst_words(pass, worst, radius);
    for (const Drawn& one : drawn) {
        if (one.placed.outline.size() >= 3) tube_words(pass, one);
    }
}

}  // namespace wg::ui::face
