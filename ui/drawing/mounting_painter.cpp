// What the fitter has to keep on the plate itself: which side is level, and where the pipes go from its connections.

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/fixing/layout_rules.h"
#include "core/job/words.h"
#include "ui/common/format.h"
#include "ui/common/paper_words.h"
#include "ui/drawing/surface_parts.h"

namespace wg::ui::face {

using namespace Qt::StringLiterals;

bool is_selected(const SurfaceDrawing& what, const std::string& placement_id) {
    const auto& also = what.also_selected;
    return placement_id == what.selected_id || std::find(also.begin(), also.end(), placement_id) != also.end();
}

namespace {
constexpr double least_depth_lines = 2.2;  ///< of a plate that has room for the level beside its crosses
}

const CollectorModel* model_of(const Pass& pass) {
    return pass.what.collector != nullptr ? pass.what.collector
           : pass.what.plan != nullptr    ? &pass.what.plan->collector
                                          : nullptr;
}

void level_mark(Pass& pass, const Drawn& one) {
    const CollectorModel* model = model_of(pass);
    if (model == nullptr) return;
    const std::vector<Point2>& o = one.placed.outline;
    if (o.size() < 4 || one.placed.corners.size() < 4) return;
    // Sides from corner to corner: 0 and 2 long, 1 and 3 short. The lower one of those asked for, in space: a plate on
    // a frame lies askew in the drawing of its terrace.
    const std::vector<Point3>& corners = one.placed.corners;
    const auto height = [&](std::size_t at) { return corners[at % 4].z_m + corners[(at + 1) % 4].z_m; };
    const auto slant = [&](std::size_t at) { return std::abs(corners[(at + 1) % 4].z_m - corners[at % 4].z_m); };
    std::size_t side = model->level_side == LevelSide::short_side ? 1 : 0;
    if (model->level_side == LevelSide::either && slant(1) < slant(0)) side = 1;
    if (height(side + 2) < height(side)) side += 2;
    const QPointF a = pass.view.map(o[side]);
    const QPointF b = pass.view.map(o[(side + 1) % 4]);
    const QPointF middle = pass.view.map({(o[0].x_m + o[2].x_m) / 2.0, (o[0].y_m + o[2].y_m) / 2.0});
    const double length = std::hypot(b.x() - a.x(), b.y() - a.y());
    const double line = pass.letters.line();
    const double reach = line * 1.1;
    const double true_length = side % 2 == 0 ? model->length_m : model->width_m;
    const bool level = slant(side) <= true_length * std::sin(fixing::level_tolerance_deg * M_PI / 180.0) + 1e-9;
    // Where the plate is small on the sheet its crosses need the room; what is out of level is said all the same.
    const QPointF across = pass.view.map(o[(side + 2) % 4]) - b;
    if (length < 1e-6) return;
    if (level && (length < reach * 3.0 || std::hypot(across.x(), across.y()) < line * least_depth_lines)) return;
    const QPointF along = (b - a) / length;
    QPointF inwards(-along.y(), along.x());
    if (QPointF::dotProduct(middle - a, inwards) < 0.0) inwards = -inwards;
    const double half = line * 0.24;
    // Where no fixing point lies: the middle, else beside it.
    QPointF at;
    double least = std::numeric_limits<double>::infinity();
    for (const double share : {0.5, 0.42, 0.58, 0.34, 0.66, 0.25, 0.75}) {
        const QPointF tried = a + along * (length * share) + inwards * (half + pass.line(3.0));
        double crowded = 0.0;
        for (double s = -reach; s <= reach; s += half) {
            const QPointF cell = tried + along * s;
            crowded += pass.placer.crowding({cell.x() - half, cell.y() - half, 2.0 * half, 2.0 * half});
        }
        if (crowded >= least - 1e-9) continue;
        least = crowded;
        at = tried;
    }
    const QColor ink = level ? pass.theme.collector_line : pass.theme.stop;
    pass.painter.save();
    pass.painter.translate(at);
    pass.painter.rotate(std::atan2(along.y(), along.x()) * 180.0 / M_PI);
    pass.painter.setPen(QPen(ink, pass.line(1.2)));
    pass.painter.setBrush(pass.theme.panel);
    pass.painter.drawRoundedRect(QRectF(-reach, -half, 2.0 * reach, 2.0 * half), half * 0.5, half * 0.5);
    pass.painter.drawLine(QPointF(-half * 1.3, -half), QPointF(-half * 1.3, half));
    pass.painter.drawLine(QPointF(half * 1.3, -half), QPointF(half * 1.3, half));
    pass.painter.setBrush(ink);
    pass.painter.setPen(Qt::NoPen);
    const double off = level ? 0.0 : half * 2.6;  // the bubble has run away
    pass.painter.drawEllipse(QPointF(off, 0.0), half * 0.8, half * 0.55);
    if (!level) {
        pass.painter.setPen(QPen(ink, pass.line(1.8)));
        pass.painter.drawLine(QPointF(-reach, half * 1.4), QPointF(reach, -half * 1.4));
    }
    pass.painter.restore();
    pass.placer.keep_free_line(at - along * reach, at + along * reach, 2.0 * half);
}

namespace {

/// Place and words where the run leaves the surface.
struct Leaving {
    QPointF at;
    QPointF way{0.0, 1.0};  ///< unit length, in which it goes on
    QString words;
};

Leaving leaving_of(const Pass& pass) {
    const site::SurfaceRun& run = *pass.what.run;
    Leaving out;
    out.at = pass.view.map(run.line.empty() ? run.connections.front() : run.line.back());
    const QPointF towards = pass.view.map(run.towards) - out.at;
    const double length = std::hypot(towards.x(), towards.y());
    if (length > 1.0) out.way = towards / length;
    const QString to = run.line.empty() ? say("start of the run")
                       : run.to_block   ? say("block")
                                        : say(wg::text_of(run.next));
    out.words = say("to %1, %2").arg(to, length_m(run.next_m));
    return out;
}

}  // namespace

void run_line(Pass& pass) {
    if (pass.what.run == nullptr) return;
    const site::SurfaceRun& run = *pass.what.run;
    QPainter& painter = pass.painter;
    const auto draw = [&](const QPolygonF& line, double width) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(pass.theme.panel, pass.line(width + 2.8), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(line);
        painter.setPen(QPen(pass.theme.collector_line, pass.line(width), Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(line);
        for (qsizetype i = 1; i < line.size(); ++i)
            pass.placer.keep_free_line(line[i - 1], line[i], pass.line(width + 1.0));
    };
    QPolygonF line;
    for (const Point2 p : run.line)
        line << pass.view.map(p);
    if (!line.isEmpty()) {
        // Short tubes of their own join several plates to where the run starts.
        for (const Point2 from : run.connections)
            draw({pass.view.map(from), line.front()}, 1.4);
    }
    if (line.size() > 1) draw(line, 2.4);
    const Leaving leaves = leaving_of(pass);
    const double r = pass.letters.line() * 0.26;
    const QPen ink(pass.theme.collector_line, pass.line(1.6));
    if (run.passage) {
        painter.setPen(ink);
        painter.setBrush(pass.theme.panel);
        painter.drawRect(QRectF(leaves.at.x() - r, leaves.at.y() - r, 2.0 * r, 2.0 * r));
        painter.drawLine(leaves.at + QPointF(-r, r), leaves.at + QPointF(r, -r));
    } else {
        const double shaft = pass.letters.line() * 1.6;
        const QPointF tip = leaves.at + leaves.way * shaft;
        const QPointF side(-leaves.way.y(), leaves.way.x());
        QPen broken = ink;
        if (run.behind) broken.setDashPattern({3.0, 2.0});
        painter.setPen(broken);
        painter.drawLine(leaves.at, tip);
        painter.setPen(Qt::NoPen);
        painter.setBrush(pass.theme.collector_line);
        const QPointF back = tip - leaves.way * (r * 2.0);
        painter.drawPolygon(QPolygonF({tip, back + side * r, back - side * r}));
        pass.placer.keep_free_line(leaves.at, tip, 2.0 * r);
    }
    for (std::size_t i = 1; i + (run.passage ? 1 : 0) < run.line.size(); ++i) {
        painter.setPen(ink);
        painter.setBrush(pass.theme.panel);
        painter.drawEllipse(pass.view.map(run.line[i]), r * 0.8, r * 0.8);
    }
    pass.placer.keep_free(QRectF(leaves.at.x() - r, leaves.at.y() - r, 2.0 * r, 2.0 * r));
}

void run_words(Pass& pass) {
    if (pass.what.run == nullptr) return;
    const site::SurfaceRun& run = *pass.what.run;
    QColor plate = pass.theme.panel;
    plate.setAlphaF(0.88F);
    const auto say = [&](QPointF at, const QString& words, QPointF prefer) {
        const auto place = pass.placer.place(at, pass.letters.size(words), pass.letters.line() * 0.45, prefer);
        if (place.far) {
            pass.painter.setPen(QPen(pass.theme.collector_line, pass.line(0.7)));
            pass.painter.drawLine(at, place.box.center());
        }
        pass.letters.draw_in(pass.painter, place.box, words, pass.theme.collector_line, plate);
    };
    const Leaving leaves = leaving_of(pass);
    say(leaves.at + (run.passage ? QPointF() : leaves.way * (pass.letters.line() * 1.6)), leaves.words, leaves.way);
    for (std::size_t i = 1; i < run.line.size(); ++i) {
        const QPointF a = pass.view.map(run.line[i - 1]);
        const QPointF b = pass.view.map(run.line[i]);
        const QString words = length_m(run.lengths_m[i - 1]);
        if (std::hypot(b.x() - a.x(), b.y() - a.y()) < pass.letters.line() * 1.5) continue;
        // A leg's length is worth a free place beside it, not a blot.
        const auto place =
            pass.placer.find((a + b) / 2.0, pass.letters.size(words), pass.letters.line() * 0.45, {1.0, 0.0});
        if (!place.far && pass.placer.is_free(place.box)) say((a + b) / 2.0, words, {1.0, 0.0});
    }
}

}  // namespace wg::ui::face
