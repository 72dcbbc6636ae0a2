#include "ui/visit/outline_tool.h"

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/quantity/outline.h"
#include "core/sketch/open_outline.h"
#include "core/sketch/typed.h"
#include "ui/common/format.h"
#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/visit/snap_by_hand.h"
#include "ui/visit/typed_length.h"

namespace wg::ui {
namespace {

/// Lengths finer than this mean nothing on a sketch.
double to_mm(double value_m) {
    return std::round(value_m * 1000.0) / 1000.0;
}

double direction_deg(const Point2& from, const Point2& to) {
    return degrees(std::atan2(to.y_m - from.y_m, to.x_m - from.x_m));
}

/// Inner angle at a corner, 0..180.
double corner_deg(const Point2& before, const Point2& at, const Point2& after) {
    const double turn = wrap_180(direction_deg(at, after) - direction_deg(at, before));
    return std::abs(turn);
}

}  // namespace

OutlineTool::OutlineTool(QString what, std::vector<std::vector<Point2>> others, Done done)
    : what_(std::move(what)), done_(std::move(done)) {
    scene_.outlines = std::move(others);
}

void OutlineTool::look(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    snap_ = sketch::snap(scene_, at, snap_by_hand(reach_m, modifiers));
    seen_ = true;
    key_heading_.reset();
}

void OutlineTool::hover(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    look(at, reach_m, modifiers);
}

void OutlineTool::drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    look(at, reach_m, modifiers);
}

bool OutlineTool::press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    look(at, reach_m, modifiers);
    if (snap_.kind == sketch::SnapKind::close)
        close();
    else
        set_corner(snap_.point);
    return true;
}

void OutlineTool::set_corner(Point2 at) {
    problem_.clear();
    at = {to_mm(at.x_m), to_mm(at.y_m)};
    std::vector<Point2>& drawn = scene_.drawn;
    if (!drawn.empty() && std::hypot(at.x_m - drawn.back().x_m, at.y_m - drawn.back().y_m) < 0.005) {
        problem_ = tr("This is where the last corner lies.");
        return;
    }
    // An edge that crosses an earlier one can never close rightly: say so at once, not at the end.
    if (const auto edge = sketch::crossed_edge(drawn, at)) {
        problem_ = tr("This edge would meet edge %1. Put the corner elsewhere.").arg(*edge + 1);
        typed_.clear();
        return;
    }
    drawn.push_back(at);
    typed_.clear();
    key_heading_.reset();
}

void OutlineTool::close() {
    if (scene_.drawn.size() < 3) {
        problem_ = tr("An outline needs at least three corners.");
        return;
    }
    if (const auto fault = outline_fault(scene_.drawn)) {
        problem_ = tr("It cannot be closed: %1.").arg(QString::fromStdString(fault->text()));
        return;
    }
    finished_ = true;
    if (done_) done_(scene_.drawn);
}

std::optional<double> OutlineTool::last_heading_deg() const {
    const std::vector<Point2>& drawn = scene_.drawn;
    if (drawn.size() < 2) return std::nullopt;
    return direction_deg(drawn[drawn.size() - 2], drawn.back());
}

double OutlineTool::heading_deg() const {
    if (key_heading_) return *key_heading_;
    if (seen_ && !scene_.drawn.empty()) {
        const Point2& from = scene_.drawn.back();
        if (std::hypot(snap_.point.x_m - from.x_m, snap_.point.y_m - from.y_m) > 1e-6)
            return direction_deg(from, snap_.point);
    }
    // Without a pointer: on with a right angle to the left, as round a house.
    const auto last = last_heading_deg();
    return last ? *last + 90.0 : 0.0;
}

void OutlineTool::enter(Point2 middle) {
    if (typed_.isEmpty()) {
        if (scene_.drawn.empty())
            set_corner(seen_ ? snap_.point : middle);
        else
            close();
        return;
    }
    if (scene_.drawn.empty()) {
        problem_ = tr("Set the first corner first: click, or Enter with nothing typed.");
        return;
    }
    const auto step = sketch::step(typed_.toStdString());
    if (!step) {
        problem_ = QString::fromStdString(step.problems().front().text());
        return;
    }
    double heading = heading_deg();
    if (step.value().turn_deg) heading = last_heading_deg().value_or(0.0) + *step.value().turn_deg;
    const std::size_t before = scene_.drawn.size();
    set_corner(sketch::end_of(scene_.drawn.back(), heading, step.value().length_m));
    // The pointer still lies where it showed the way to this corner; it says nothing of the next.
    if (scene_.drawn.size() > before) seen_ = false;
}

bool OutlineTool::key(const QKeyEvent& event, Point2 middle) {
    switch (event.key()) {
        case Qt::Key_Escape: finished_ = true; return true;
        case Qt::Key_Return:
        case Qt::Key_Enter: enter(middle); return true;
        case Qt::Key_Backspace:
            problem_.clear();
            if (!typed_.isEmpty())
                typed_.chop(1);
            else if (!scene_.drawn.empty())
                scene_.drawn.pop_back();
            return true;
        case Qt::Key_Right: key_heading_ = 0.0; return true;
        case Qt::Key_Up: key_heading_ = 90.0; return true;
        case Qt::Key_Left: key_heading_ = 180.0; return true;
        case Qt::Key_Down: key_heading_ = 270.0; return true;
        default: break;
    }
    if (!types_length(event, typed_, QStringLiteral(".,@<-'\""))) return false;
    problem_.clear();
    typed_ += event.text();
    return true;
}

QString OutlineTool::prompt() const {
    if (!problem_.isEmpty()) return problem_;
    if (!typed_.isEmpty()) return tr("Length %1   Enter: take it. \"4.20 @ 90\" turns by 90\u00b0.").arg(typed_);
    const std::size_t count = scene_.drawn.size();
    if (count == 0) return tr("%1: click the first corner.").arg(what_);
    if (count < 3) return tr("%1: click the next corner or type the length.").arg(what_);
    return tr("%1: next corner, or Enter to close it.").arg(what_);
}

QString OutlineTool::words() const {
    QString text;
    if (!scene_.drawn.empty()) {
        const Point2& from = scene_.drawn.back();
        text = tr("%1 long").arg(length_m(std::hypot(snap_.point.x_m - from.x_m, snap_.point.y_m - from.y_m)));
        if (scene_.drawn.size() > 1)
            text += tr(", %1\u00b0 at the corner")
                        .arg(corner_deg(scene_.drawn[scene_.drawn.size() - 2], from, snap_.point), 0, 'f', 1);
        text += QStringLiteral("   ");
    }
    for (const sketch::SnapKind reason : snap_.reasons)
        text += tr(sketch::words_of(reason)) + QStringLiteral("   ");
    return text + tr("Backspace: back one corner. Alt: no snapping. Escape: leave it.");
}

void OutlineTool::paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const {
    const Lettering letters(text_units);
    const double line = 1.5 * theme.line_scale;
    const auto at = [&](const Point2& p) { return view.map(p.x_m, p.y_m); };
    painter.setPen(QPen(theme.accent, line, Qt::DotLine));
    for (const auto& guide : snap_.guides)
        if (guide.size() == 2) painter.drawLine(at(guide[0]), at(guide[1]));
    painter.setPen(QPen(theme.accent, 1.5 * line));
    const std::vector<Point2>& drawn = scene_.drawn;
    for (std::size_t i = 0; i + 1 < drawn.size(); ++i)
        painter.drawLine(at(drawn[i]), at(drawn[i + 1]));
    const DimensionPen pen{&letters, theme.muted, theme.text, theme.panel, theme.line_scale};
    const double off = text_units * 1.2;
    const auto dimension = [&](const Point2& a, const Point2& b) {
        const QPointF p = at(a);
        const QPointF q = at(b);
        const double length = std::hypot(q.x() - p.x(), q.y() - p.y());
        if (length < 1.0) return;
        const QPointF aside((q.y() - p.y()) / length * off, -(q.x() - p.x()) / length * off);
        draw_dimension(painter, p + aside, q + aside, length_m(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m)), pen);
    };
    for (std::size_t i = 0; i + 1 < drawn.size(); ++i)
        dimension(drawn[i], drawn[i + 1]);
    if (!drawn.empty() && seen_) {
        const Point2 to = key_heading_ ? sketch::end_of(drawn.back(), *key_heading_, 1.0) : snap_.point;
        painter.setPen(QPen(theme.accent, line, Qt::DashLine));
        painter.drawLine(at(drawn.back()), at(to));
        dimension(drawn.back(), to);
    }
    painter.setPen(QPen(theme.accent, line));
    painter.setBrush(theme.panel);
    for (const Point2& p : drawn)
        painter.drawEllipse(at(p), 4.0, 4.0);
    if (seen_ && snap_.kind != sketch::SnapKind::none) {
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(at(snap_.point), 7.0, 7.0);
    }
}

}  // namespace wg::ui
