#include "ui/visit/corner_tool.h"

#include <cmath>

#include "core/roof/linked.h"
#include "core/site/geometry.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/visit/snap_by_hand.h"

namespace wg::ui {
namespace {

double distance_m(const Point2& a, const Point2& b) {
    return std::hypot(a.x_m - b.x_m, a.y_m - b.y_m);
}

Point2 middle_of(const Building& building, std::size_t edge) {
    const Point2& a = building.edges[edge].from;
    const Point2& b = building.edges[(edge + 1) % building.edges.size()].from;
    return {0.5 * (a.x_m + b.x_m), 0.5 * (a.y_m + b.y_m)};
}

}  // namespace

CornerTool::CornerTool(JobSession& session, std::string building_id)
    : session_(session), building_id_(std::move(building_id)) {}

const Building* CornerTool::building() const {
    return find_building(session_.job().site, building_id_);
}

bool CornerTool::finished() const {
    return ended_ || building() == nullptr;
}

void CornerTool::hover(Point2 at, double reach_m, Qt::KeyboardModifiers) {
    over_.reset();
    edge_.reset();
    const Building* now = building();
    if (now == nullptr) return;
    for (std::size_t i = 0; i < now->edges.size(); ++i)
        if (distance_m(now->edges[i].from, at) <= reach_m) over_ = i;
    for (std::size_t i = 0; !over_ && i < now->edges.size(); ++i)
        if (distance_m(middle_of(*now, i), at) <= reach_m) edge_ = i;
}

bool CornerTool::press(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    problem_.clear();
    hover(at, reach_m, modifiers);
    const Building* now = building();
    if (now == nullptr || (!over_ && !edge_)) return false;
    if (edge_) {
        const auto more = roof::with_corner(*now, *edge_, middle_of(*now, *edge_), new_id);
        if (!more) {
            problem_ = qs(more.problems().front().text());
            return true;
        }
        problem_ = set_building(session_, more.value());
        if (!problem_.isEmpty()) return true;
        over_ = *edge_ + 1;
        edge_.reset();
    }
    corner_ = over_;
    dragging_ = true;
    return true;
}

void CornerTool::drag(Point2 at, double reach_m, Qt::KeyboardModifiers modifiers) {
    const Building* now = building();
    if (!dragging_ || now == nullptr || !corner_ || *corner_ >= now->edges.size()) return;
    // The outline without this corner is what has been drawn: its ends give the right angles and parallels.
    sketch::Scene scene;
    const std::size_t count = now->edges.size();
    for (std::size_t i = 1; i < count; ++i)
        scene.drawn.push_back(now->edges[(*corner_ + i) % count].from);
    for (const Building& other : session_.job().site.buildings)
        if (other.id != building_id_) scene.outlines.push_back(roof::footprint_of(other));
    snap_ = sketch::snap(scene, at, snap_by_hand(reach_m, modifiers));
    if (snap_.kind == sketch::SnapKind::close || snap_.kind == sketch::SnapKind::corner) snap_.point = at;
    move_corner(snap_.point);
}

void CornerTool::move_corner(Point2 to) {
    const Building* now = building();
    if (now == nullptr || !corner_) return;
    const auto moved = roof::with_corner_at(*now, *corner_, to);
    problem_ = moved ? set_building(session_, moved.value(), QStringLiteral("corner ") + qs(building_id_))
                     : qs(moved.problems().front().text());
}

void CornerTool::release() {
    dragging_ = false;
    snap_ = {};
    session_.end_merge();
}

void CornerTool::nudge(double dx_m, double dy_m) {
    const Building* now = building();
    if (now == nullptr || !corner_ || *corner_ >= now->edges.size()) return;
    const Point2 at = now->edges[*corner_].from;
    move_corner({at.x_m + dx_m, at.y_m + dy_m});
}

bool CornerTool::key(const QKeyEvent& event, Point2) {
    const Building* now = building();
    if (now == nullptr) return false;
    const std::size_t count = now->edges.size();
    const double step = (event.modifiers() & Qt::ShiftModifier) != 0 ? 0.10 : 0.01;
    switch (event.key()) {
        case Qt::Key_Escape: ended_ = true; return true;
        case Qt::Key_PageDown: corner_ = corner_ ? (*corner_ + 1) % count : 0; return true;
        case Qt::Key_PageUp: corner_ = corner_ ? (*corner_ + count - 1) % count : count - 1; return true;
        case Qt::Key_Left: nudge(-step, 0.0); return true;
        case Qt::Key_Right: nudge(step, 0.0); return true;
        case Qt::Key_Up: nudge(0.0, step); return true;
        case Qt::Key_Down: nudge(0.0, -step); return true;
        case Qt::Key_Insert:
            if (corner_) {
                const auto more = roof::with_corner(*now, *corner_, middle_of(*now, *corner_), new_id);
                problem_ = more ? set_building(session_, more.value()) : qs(more.problems().front().text());
                if (problem_.isEmpty()) corner_ = *corner_ + 1;
            }
            return true;
        case Qt::Key_Delete: {
            if (!corner_) return false;
            const auto less = roof::without_corner(*now, *corner_);
            problem_ = less ? set_building(session_, less.value()) : qs(less.problems().front().text());
            if (problem_.isEmpty()) corner_.reset();
            return true;
        }
        default: return false;
    }
}

QString CornerTool::prompt() const {
    return problem_;
}

QString CornerTool::words() const {
    const Building* now = building();
    if (now == nullptr) return {};
    QString text = corner_ ? tr("Corner %1 of \"%2\".  ").arg(*corner_ + 1).arg(qs(now->label))
                           : tr("Corners of \"%1\".  ").arg(qs(now->label));
    for (const sketch::SnapKind reason : snap_.reasons)
        text += tr(sketch::words_of(reason)) + QStringLiteral("   ");
    return text +
           tr("Drag a corner, or the middle of an edge for a new one. Page keys choose, arrows move, Insert adds, "
              "Delete removes.");
}

void CornerTool::paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const {
    const Building* now = building();
    if (now == nullptr) return;
    const auto at = [&](const Point2& p) { return view.map(p.x_m, p.y_m); };
    const std::size_t count = now->edges.size();
    const double line = 1.5 * theme.line_scale;
    QPolygonF outline;
    for (const FootprintEdge& edge : now->edges)
        outline << at(edge.from);
    painter.setPen(QPen(theme.accent, line));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(outline);
    painter.setPen(QPen(theme.accent, line, Qt::DotLine));
    for (const auto& guide : snap_.guides)
        if (guide.size() == 2) painter.drawLine(at(guide[0]), at(guide[1]));
    const Lettering letters(text_units);
    const DimensionPen pen{&letters, theme.muted, theme.text, theme.panel, theme.line_scale};
    const double round = site::signed_area_m2(roof::footprint_of(*now));
    for (std::size_t i = 0; i < count; ++i) {
        const Point2& a = now->edges[i].from;
        const Point2& b = now->edges[(i + 1) % count].from;
        const double length = distance_m(a, b);
        if (length < 1e-6) continue;
        // Outside of the house, whichever way round it was drawn; screen y runs down.
        const double side = (round > 0.0 ? 1.0 : -1.0) * text_units * 2.2;
        const QPointF out((b.y_m - a.y_m) / length * side, (b.x_m - a.x_m) / length * side);
        if (length * view.units_per_m > text_units * 2.0)
            draw_dimension(painter, at(a) + out, at(b) + out,
                           tr("%1: %2").arg(QString::number(i + 1), length_m(length)), pen);
    }
    for (std::size_t i = 0; i < count; ++i) {
        const QPointF middle = at(middle_of(*now, i));
        painter.setPen(QPen(theme.accent, line));
        painter.setBrush(edge_ == i ? theme.accent : theme.panel);
        painter.drawEllipse(middle, 4.5, 4.5);
        painter.setBrush(corner_ == i || over_ == i ? theme.accent : theme.panel);
        const double half = corner_ == i ? 7.0 : 5.5;
        painter.drawRect(QRectF(at(now->edges[i].from) - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)));
    }
}

}  // namespace wg::ui
