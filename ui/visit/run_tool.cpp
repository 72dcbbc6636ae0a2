#include "ui/visit/run_tool.h"

#include <cmath>

#include "core/job/words.h"
#include "core/sketch/typed.h"
#include "ui/common/format.h"
#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/visit/snap_by_hand.h"
#include "ui/visit/typed_length.h"

namespace wg::ui {
namespace {

double mm(double value_m) {
    return std::round(value_m * 1000.0) / 1000.0;
}

/// A level may lie below the ground, a length may not: the sign is read here.
std::optional<double> level_m(QString typed, QString& problem) {
    typed = typed.trimmed();
    const bool below = typed.startsWith(QLatin1Char('-'));
    if (below) typed.remove(0, 1);
    bool plain = false;
    const double number = QString(typed).replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&plain);
    if (plain && number == 0.0) return 0.0;
    const auto length = sketch::length_m(typed.toStdString());
    if (!length) {
        problem = QString::fromStdString(length.problems().front().text());
        return std::nullopt;
    }
    return below ? -length.value() : length.value();
}

}  // namespace

RunTool::RunTool(Ends ends, LevelAt level_at, Done done)
    : ends_(ends), level_at_(std::move(level_at)), done_(std::move(done)) {}

std::optional<Point3> RunTool::last() const {
    if (!points_.empty()) return points_.back().position;
    return ends_.collector;
}

void RunTool::look(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    // The last leg alone gives right angles and the way straight on; legs straight up or down are points in plan.
    sketch::Scene scene;
    const auto leg_end = [&scene](const Point3& p) {
        const Point2 in_plan{p.x_m, p.y_m};
        if (scene.drawn.empty() || scene.drawn.back() != in_plan) scene.drawn.push_back(in_plan);
    };
    if (ends_.collector) leg_end(*ends_.collector);
    for (const RoutePoint& point : points_)
        leg_end(point.position);
    if (scene.drawn.size() > 2) scene.drawn.erase(scene.drawn.begin(), scene.drawn.end() - 2);
    if (ends_.block) {
        // Its place as a corner to hold at, and to be in line with.
        const Point2 block{ends_.block->x_m, ends_.block->y_m};
        scene.outlines.push_back({block, block, block});
    }
    snap_ = sketch::snap(scene, at, snap_by_hand(reach_m, modifiers));
    seen_ = true;
}

void RunTool::hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    look(at, reach_m, modifiers);
}

void RunTool::drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    look(at, reach_m, modifiers);
}

bool RunTool::press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    look(at, reach_m, modifiers);
    add(snap_.point);
    return true;
}

void RunTool::add(Point2 at) {
    problem_.clear();
    // On from the last bend level; the first one at the roof or the ground under it.
    const double level = points_.empty() ? level_at_(at) : points_.back().position.z_m;
    const Point3 position{mm(at.x_m), mm(at.y_m), mm(level)};
    if (const auto before = last()) {
        const double off = std::hypot(position.x_m - before->x_m, position.y_m - before->y_m);
        if (off < 0.005 && std::abs(position.z_m - before->z_m) < 0.005) {
            problem_ = tr("This is where the run already is.");
            return;
        }
    }
    RoutePoint point;
    point.position = position;
    points_.push_back(point);
    typed_.clear();
}

void RunTool::pass(RoutePointKind kind) {
    if (points_.empty()) {
        problem_ = tr("Click the passage first, then say what it goes through.");
        return;
    }
    problem_.clear();
    RoutePoint& point = points_.back();
    point.kind = point.kind == kind ? RoutePointKind::free : kind;
}

void RunTool::enter() {
    if (typed_.isEmpty()) {
        if (points_.empty()) {
            problem_ = tr("No bend is set yet: click one, or Escape.");
            return;
        }
        finished_ = true;
        if (done_) done_(points_);
        return;
    }
    const auto from = last();
    if (!from) {
        problem_ = tr("Click the first bend before its level.");
        return;
    }
    const auto level = level_m(typed_, problem_);
    if (!level) return;
    if (std::abs(*level - from->z_m) < 0.005) {
        problem_ = tr("The run is at that level already.");
        return;
    }
    problem_.clear();
    RoutePoint point;
    point.position = {from->x_m, from->y_m, mm(*level)};
    points_.push_back(point);
    typed_.clear();
}

bool RunTool::key(const QKeyEvent& event, Point2 middle) {
    switch (event.key()) {
        case Qt::Key_Escape: finished_ = true; return true;
        case Qt::Key_Return:
        case Qt::Key_Enter: enter(); return true;
        case Qt::Key_Backspace:
            problem_.clear();
            if (!typed_.isEmpty())
                typed_.chop(1);
            else if (!points_.empty())
                points_.pop_back();
            return true;
        case Qt::Key_Insert: add(seen_ ? snap_.point : middle); return true;
        case Qt::Key_Left:
        case Qt::Key_Right:
        case Qt::Key_Up:
        case Qt::Key_Down: {
            // Without a pointer: the last bend is moved to its place.
            if (points_.empty()) return true;
            const double step = (event.modifiers() & Qt::ShiftModifier) != 0 ? 1.0 : 0.05;
            Point3& at = points_.back().position;
            if (event.key() == Qt::Key_Left) at.x_m = mm(at.x_m - step);
            if (event.key() == Qt::Key_Right) at.x_m = mm(at.x_m + step);
            if (event.key() == Qt::Key_Up) at.y_m = mm(at.y_m + step);
            if (event.key() == Qt::Key_Down) at.y_m = mm(at.y_m - step);
            return true;
        }
        default: break;
    }
    if (typed_.isEmpty() && (event.modifiers() & (Qt::ControlModifier | Qt::MetaModifier)) == 0) {
        if (event.key() == Qt::Key_R) return pass(RoutePointKind::roof_passage), true;
        if (event.key() == Qt::Key_W) return pass(RoutePointKind::wall_passage), true;
        if (event.key() == Qt::Key_F) return pass(RoutePointKind::floor_passage), true;
    }
    if (!types_length(event, typed_, QStringLiteral(".,-'\""))) return false;
    problem_.clear();
    typed_ += event.text();
    return true;
}

QString RunTool::prompt() const {
    if (!problem_.isEmpty()) return problem_;
    if (!typed_.isEmpty()) return tr("Straight up or down to %1 over ground   Enter: take it.").arg(typed_);
    if (points_.empty()) return tr("Run: click where it first bends, from the collector on.");
    return tr("Next bend, or type a level. Enter: on to the block.");
}

QString RunTool::words() const {
    QString text;
    if (const auto from = last(); from && seen_) {
        text = tr("%1 long at %2 over ground   ")
                   .arg(length_m(std::hypot(snap_.point.x_m - from->x_m, snap_.point.y_m - from->y_m)),
                        length_m(from->z_m));
    }
    for (const sketch::SnapKind reason : snap_.reasons)
        text += tr(sketch::words_of(reason)) + QStringLiteral("   ");
    return text +
           tr("R, W, F: passage through roof, wall, floor. Backspace: back one. Insert: bend here; arrows move it. "
              "Alt: no snapping.");
}

void RunTool::paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const {
    const Lettering letters(text_units);
    const double line = 1.5 * theme.line_scale;
    const auto at = [&](double x, double y) { return view.map(x, y); };
    std::vector<Point3> corners;
    if (ends_.collector) corners.push_back(*ends_.collector);
    for (const RoutePoint& point : points_)
        corners.push_back(point.position);
    painter.setPen(QPen(theme.accent, 2.0 * line));
    for (std::size_t i = 0; i + 1 < corners.size(); ++i)
        painter.drawLine(at(corners[i].x_m, corners[i].y_m), at(corners[i + 1].x_m, corners[i + 1].y_m));
    const DimensionPen pen{&letters, theme.muted, theme.text, theme.panel, theme.line_scale};
    const auto dimension = [&](Point2 a, Point2 b) {
        const QPointF p = at(a.x_m, a.y_m);
        const QPointF q = at(b.x_m, b.y_m);
        const double length = std::hypot(q.x() - p.x(), q.y() - p.y());
        if (length < 2.0 * text_units) return;
        const QPointF aside((q.y() - p.y()) / length * text_units * 1.2, -(q.x() - p.x()) / length * text_units * 1.2);
        draw_dimension(painter, p + aside, q + aside, length_m(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m)), pen);
    };
    for (std::size_t i = 0; i + 1 < corners.size(); ++i)
        dimension({corners[i].x_m, corners[i].y_m}, {corners[i + 1].x_m, corners[i + 1].y_m});
    painter.setPen(QPen(theme.accent, line, Qt::DotLine));
    for (const auto& guide : snap_.guides)
        if (guide.size() == 2) painter.drawLine(at(guide[0].x_m, guide[0].y_m), at(guide[1].x_m, guide[1].y_m));
    if (const auto from = last(); from && seen_) {
        painter.setPen(QPen(theme.accent, line, Qt::DashLine));
        painter.drawLine(at(from->x_m, from->y_m), at(snap_.point.x_m, snap_.point.y_m));
        dimension({from->x_m, from->y_m}, snap_.point);
    }
    if (ends_.block && !points_.empty()) {
        painter.setPen(QPen(theme.muted, line, Qt::DotLine));
        painter.drawLine(at(points_.back().position.x_m, points_.back().position.y_m),
                         at(ends_.block->x_m, ends_.block->y_m));
    }
    const auto name = [&](const std::optional<Point3>& end, const QString& text) {
        if (!end) return;
        const QPointF middle = at(end->x_m, end->y_m);
        painter.setPen(QPen(theme.accent, line));
        painter.setBrush(theme.accent);
        painter.drawEllipse(middle, 4.5, 4.5);
        const QRectF box = letters.box(middle - QPointF(9.0, 0.0), Qt::AlignRight | Qt::AlignVCenter, text);
        letters.draw_in(painter, box, text, theme.text, theme.panel);
    };
    name(ends_.collector, tr("collector"));
    name(ends_.block, tr("block"));
    for (std::size_t i = 0; i < points_.size(); ++i) {
        const RoutePoint& point = points_[i];
        const QPointF middle = at(point.position.x_m, point.position.y_m);
        painter.setPen(QPen(theme.accent, line));
        painter.setBrush(point.kind == RoutePointKind::free ? theme.panel : theme.accent);
        if (point.kind == RoutePointKind::free)
            painter.drawEllipse(middle, 4.5, 4.5);
        else
            painter.drawRect(QRectF(middle - QPointF(5, 5), QSizeF(10, 10)));
        // Where several lie over each other their levels stand under each other.
        int above = 0;
        for (std::size_t k = 0; k < i; ++k) {
            const Point3& other = points_[k].position;
            if (std::hypot(other.x_m - point.position.x_m, other.y_m - point.position.y_m) < 0.005) ++above;
        }
        QString text = length_m(point.position.z_m);
        if (point.kind != RoutePointKind::free) text += QStringLiteral(" ") + QString::fromUtf8(text_of(point.kind));
        const QRectF box = letters.box(middle + QPointF(9.0, text_units * (0.9 + 1.35 * above)),
                                       Qt::AlignLeft | Qt::AlignVCenter, text);
        letters.draw_in(painter, box, text, theme.text, theme.panel);
    }
}

}  // namespace wg::ui
