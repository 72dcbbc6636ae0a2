#include "ui/drawing/site_canvas.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/sketch/underlay.h"
#include "ui/common/building_edits.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/house_edits.h"
#include "ui/common/job_session.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

constexpr double nudge_m = 0.01;
constexpr double long_nudge_m = 0.10;
constexpr double grid_snap_m = 0.05;  ///< a sketch by hand is no finer; Alt gives the millimetre

double snapped(double value_m, bool fine) {
    return fine ? value_m : std::round(value_m / grid_snap_m) * grid_snap_m;
}

}  // namespace

SiteCanvas::SiteCanvas(Drags drags, QWidget* parent) : Canvas(parent), drags_(drags) {
    setAccessibleName(drags == Drags::elements ? tr("Plan sketch of the site") : tr("Run in the site plan"));
    setAccessibleDescription(tr("Tab goes to the next element, arrow keys move it by 1 cm, with Shift by 10 cm"));
}

void SiteCanvas::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    selected_.clear();
    then_ = nullptr;
    tool_.reset();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, [this] { refit(); });
        connect(session_, &JobSession::plan_changed, this, [this] { update(); });
        connect(session_, &JobSession::choice_changed, this, [this] { update(); });
    }
    fit();
}

void SiteCanvas::set_selected(const std::string& id) {
    if (selected_ == id) return;
    selected_ = id;
    update();
}

void SiteCanvas::ask_point(const QString& prompt, std::function<void(Point2)> then) {
    if (tool_) set_tool(nullptr);
    then_ = std::move(then);
    prompt_ = prompt;
    setCursor(Qt::CrossCursor);
    setFocus();
    Q_EMIT status(prompt_ + tr("  Enter: in the middle. Escape: leave it."));
    update();
}

void SiteCanvas::set_tool(std::unique_ptr<CanvasTool> tool) {
    then_ = nullptr;
    if (tool_) retired_.push_back(std::move(tool_));
    tool_ = std::move(tool);
    const bool takes_over = tool_ && !tool_->gives_way();
    setCursor(takes_over ? Qt::CrossCursor : Qt::ArrowCursor);
    if (takes_over) setFocus();
    if (tool_ && tool_->wants_quiet()) fit();
    Q_EMIT status(takes_over ? tool_->words() : QString());
    update();
}

void SiteCanvas::after_tool() {
    if (tool_ && tool_->finished()) {
        tool_.reset();
        retired_.clear();
        unsetCursor();
        Q_EMIT status({});
        Q_EMIT tool_ended();
        refit();
        return;
    }
    retired_.clear();
    if (tool_ && !tool_->words().isEmpty()) Q_EMIT status(tool_->words());
    update();
}

void SiteCanvas::answer(Point2 point) {
    const auto then = std::move(then_);
    then_ = nullptr;
    unsetCursor();
    Q_EMIT status({});
    update();
    if (then) then(point);
}

Canvas::Fit SiteCanvas::fit_into(const QRectF& area) const {
    Site shown = session_ != nullptr ? session_->job().site : Site{};
    // The run stays on the house: neighbours and trees would only make it small.
    const bool house_only = drags_ == Drags::bends || (tool_ && tool_->wants_quiet());
    if (house_only && !shown.surfaces.empty()) shown.obstacles.clear();
    std::vector<Point2> corners;
    for (const UnderlayImage& picture : underlays_ ? underlays_() : std::vector<UnderlayImage>{}) {
        const sketch::Underlay lie{picture.metres_per_pixel / picture.shrink, picture.turn_deg, picture.origin};
        for (const double x : {0.0, static_cast<double>(picture.image.width())})
            for (const double y : {0.0, static_cast<double>(picture.image.height())})
                corners.push_back(lie.to_sketch(x, y));
    }
    const SiteView fitted = fit_site(shown, area, text_units() * 3.5, corners);
    return {fitted.units_per_m, fitted.origin};
}

void SiteCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_ground(painter);
    if (session_ == nullptr) return;
    SiteDrawing drawing;
    drawing.job = &session_->job();
    const bool quiet = tool_ && tool_->wants_quiet();
    if (!quiet) drawing.choice = session_->current_choice();
    drawing.labels = !quiet;
    const auto plan = session_->plan();
    drawing.plan = plan.get();
    drawing.selected_id = selected_;
    if (underlays_) drawing.underlays = underlays_();
    drawing.text_units = text_units();
    drawing.scale_bar = true;
    drawing.area = QRectF(rect()).adjusted(2, 2, -2, -2);
    paint_site(painter, drawing, view(), current_theme());
    if (tool_) tool_->paint(painter, view(), text_units(), current_theme());
    if (tool_)
        paint_prompt(painter, tool_->prompt());
    else if (then_)
        paint_prompt(painter, prompt_);
}

void SiteCanvas::paint_prompt(QPainter& painter, const QString& text) const {
    if (text.isEmpty()) return;
    const Lettering letters(text_units(), true);
    const QRectF box = letters.box(QPointF(width() / 2.0, text_units() * 1.2), Qt::AlignHCenter | Qt::AlignTop, text)
                           .adjusted(-8, -4, 8, 4);
    painter.fillRect(box, current_theme().panel);
    painter.setPen(QPen(current_theme().accent, 1.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box);
    letters.draw_in(painter, box, text, current_theme().text);
}

std::string SiteCanvas::id_at(QPointF at) const {
    if (session_ == nullptr) return {};
    const Point2 point = view().unmap(at);
    const double reach_m = reach_units() / units_per_m();
    if (drags_ == Drags::elements) return element_at(session_->job().site, point, reach_m * 0.7);
    const Choice* choice = session_->current_choice();
    if (choice == nullptr) return {};
    const int index = route_point_at(*choice, point, reach_m);
    return index < 0 ? std::string() : choice->route[static_cast<std::size_t>(index)].id;
}

std::vector<std::string> SiteCanvas::ids_in_order() const {
    std::vector<std::string> ids;
    if (session_ == nullptr) return ids;
    if (drags_ == Drags::bends) {
        if (const Choice* choice = session_->current_choice()) {
            for (const RoutePoint& point : choice->route)
                ids.push_back(point.id);
        }
        return ids;
    }
    const Site& site = session_->job().site;
    for (const Surface& surface : site.surfaces)
        ids.push_back(surface.id);
    for (const Obstacle& obstacle : site.obstacles)
        ids.push_back(obstacle.id);
    for (const CylinderSpot& spot : site.spots)
        ids.push_back(spot.id);
    for (const Room& room : site.rooms)
        ids.push_back(room.id);
    return ids;
}

std::optional<Point2> SiteCanvas::position_of(const std::string& id) const {
    if (session_ == nullptr || id.empty()) return std::nullopt;
    const Site& site = session_->job().site;
    if (drags_ == Drags::bends) {
        if (const Choice* choice = session_->current_choice()) {
            for (const RoutePoint& point : choice->route) {
                if (point.id == id) return Point2{point.position.x_m, point.position.y_m};
            }
        }
        return std::nullopt;
    }
    if (const Surface* surface = find_surface(site, id)) return Point2{surface->origin.x_m, surface->origin.y_m};
    if (const CylinderSpot* spot = find_spot(site, id)) return Point2{spot->position.x_m, spot->position.y_m};
    if (const Room* room = find_room(site, id); room != nullptr && !room->outline.empty()) return room->outline.front();
    for (const Obstacle& obstacle : site.obstacles) {
        if (obstacle.id != id) continue;
        if (obstacle.kind == ObstacleKind::prism && !obstacle.outline.empty()) return obstacle.outline.front();
        return Point2{obstacle.base.x_m, obstacle.base.y_m};
    }
    return std::nullopt;
}

void SiteCanvas::move_to(const std::string& id, Point2 to) {
    if (session_ == nullptr) return;
    const Site& site = session_->job().site;
    if (drags_ == Drags::bends) {
        const Choice* choice = session_->current_choice();
        if (choice == nullptr) return;
        for (const RoutePoint& point : choice->route) {
            if (point.id != id) continue;
            move_route_point(*session_, id, {to.x_m, to.y_m, point.position.z_m});
            return;
        }
        return;
    }
    if (const Surface* surface = find_surface(site, id)) {
        if (const Building* building = building_of_edge(site, surface->footprint_edge_id)) {
            move_building(*session_, building->id, to.x_m - surface->origin.x_m, to.y_m - surface->origin.y_m);
            return;
        }
        move_surface(*session_, id, to.x_m, to.y_m);
    } else if (find_spot(site, id) != nullptr) {
        move_spot(*session_, id, to.x_m, to.y_m);
    } else if (find_room(site, id) != nullptr) {
        move_room(*session_, id, to.x_m, to.y_m);
    } else {
        move_obstacle(*session_, id, to.x_m, to.y_m);
    }
}

void SiteCanvas::select(const std::string& id) {
    if (selected_ == id) return;
    selected_ = id;
    update();
    Q_EMIT selection_changed(qs(id));
}

void SiteCanvas::press(QPointF at, Qt::KeyboardModifiers modifiers) {
    if (tool_) {
        if (tool_->press(view().unmap(at), reach_units() / units_per_m(), modifiers)) return after_tool();
        if (!tool_->gives_way()) {
            set_tool(nullptr);
            retired_.clear();
            Q_EMIT tool_ended();
        }
    }
    if (then_) {
        const Point2 point = view().unmap(at);
        answer({snapped(point.x_m, false), snapped(point.y_m, false)});
        return;
    }
    const std::string id = id_at(at);
    select(id);
    const auto position = position_of(id);
    if (!position) return;
    moving_ = true;
    start_ = *position;
    const Point2 pointer = view().unmap(at);
    grab_ = {position->x_m - pointer.x_m, position->y_m - pointer.y_m};
}

void SiteCanvas::drag(QPointF at, Qt::KeyboardModifiers modifiers) {
    if (tool_ && !moving_) {
        tool_->drag(view().unmap(at), reach_units() / units_per_m(), modifiers);
        return after_tool();
    }
    if (!moving_) return;
    const Point2 pointer = view().unmap(at);
    const bool fine = (modifiers & Qt::AltModifier) != 0;
    // Snapping the shift keeps what was measured exactly from jumping onto the grid.
    const double dx = snapped(pointer.x_m + grab_.x_m - start_.x_m, fine);
    const double dy = snapped(pointer.y_m + grab_.y_m - start_.y_m, fine);
    move_to(selected_, {start_.x_m + dx, start_.y_m + dy});
    Q_EMIT status(tr("Moved %1 to the right, %2 up the sketch. Alt: to the millimetre. Escape: back.")
                      .arg(length_m(dx), length_m(dy)));
}

void SiteCanvas::release(QPointF) {
    if (tool_ && !moving_) {
        tool_->release();
        return after_tool();
    }
    if (!moving_) return;
    moving_ = false;
    if (session_ != nullptr) session_->end_merge();
    refit();
}

QString SiteCanvas::words_for(const std::string& id) const {
    const Site& site = session_->job().site;
    if (const Surface* surface = find_surface(site, id)) {
        return tr("%1: tilt %2\u00b0, faces %3")
            .arg(qs(surface->label))
            .arg(surface->tilt_deg, 0, 'f', 0)
            .arg(bearing(surface->azimuth_deg));
    }
    if (const CylinderSpot* spot = find_spot(site, id)) {
        return tr("%1: headroom %2").arg(qs(spot->label), length_m(spot->headroom_m));
    }
    if (const Room* room = find_room(site, id)) {
        return tr("%1: from %2 to %3 over ground%4")
            .arg(qs(room->label), length_m(room->from_z_m), length_m(room->to_z_m),
                 room->no_pipe ? tr(", no pipe goes through") : QString());
    }
    for (const Obstacle& obstacle : site.obstacles) {
        if (obstacle.id == id) return tr("%1: %2 high").arg(qs(obstacle.label), length_m(obstacle.height_m));
    }
    return {};
}

void SiteCanvas::hover(QPointF at) {
    if (session_ == nullptr) return;
    if (tool_) {
        tool_->hover(view().unmap(at), reach_units() / units_per_m(), Qt::NoModifier);
        if (!tool_->gives_way() || !tool_->words().isEmpty()) return after_tool();
        update();
    }
    if (then_) {
        const Point2 point = view().unmap(at);
        Q_EMIT status(tr("%1  (%2, %3)").arg(prompt_, length_m(point.x_m), length_m(point.y_m)));
        return;
    }
    const std::string id = id_at(at);
    setCursor(id.empty() ? Qt::ArrowCursor : Qt::SizeAllCursor);
    if (drags_ == Drags::bends) {
        Q_EMIT status(id.empty() ? tr("Drag a bend to move it; double-click the run to add one.")
                                 : tr("Bend of the run: drag, or arrow keys. Delete removes it."));
        return;
    }
    const Point2 point = view().unmap(at);
    const QString where = tr("%1 right, %2 up").arg(length_m(point.x_m), length_m(point.y_m));
    Q_EMIT status(id.empty() ? where : words_for(id) + QStringLiteral("   ") + where);
}

void SiteCanvas::insert_bend(QPointF at) {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return;
    const auto plan = session_->plan();
    const RouteLine line = route_line(session_->job(), *choice, plan ? &plan->collector : nullptr);
    double best = reach_units() * 1.5;
    std::optional<std::size_t> segment;
    double share = 0.5;
    for (std::size_t i = 0; i + 1 < line.points.size(); ++i) {
        const QPointF a = view().map(line.points[i].x_m, line.points[i].y_m);
        const QPointF b = view().map(line.points[i + 1].x_m, line.points[i + 1].y_m);
        const QPointF d = b - a;
        const double length2 = QPointF::dotProduct(d, d);
        if (length2 < 1.0) continue;
        const double t = std::clamp(QPointF::dotProduct(at - a, d) / length2, 0.0, 1.0);
        const QPointF off = at - (a + d * t);
        const double distance = std::hypot(off.x(), off.y());
        if (distance < best) {
            best = distance;
            segment = i;
            share = t;
        }
    }
    if (!segment) return;
    const Point3 a = line.points[*segment];
    const Point3 b = line.points[*segment + 1];
    const Point2 here = view().unmap(at);
    const std::size_t index = *segment + 1 >= line.first_bend ? *segment + 1 - line.first_bend : 0;
    const std::string id = add_route_point(*session_, index, {here.x_m, here.y_m, a.z_m + (b.z_m - a.z_m) * share});
    select(id);
}

void SiteCanvas::mouseDoubleClickEvent(QMouseEvent* event) {
    if (drags_ == Drags::bends && event->button() == Qt::LeftButton && id_at(event->position()).empty()) {
        insert_bend(event->position());
        return;
    }
    Canvas::mouseDoubleClickEvent(event);
}

void SiteCanvas::keyPressEvent(QKeyEvent* event) {
    if (tool_) {
        if (tool_->key(*event, view().unmap(QRectF(rect()).center()))) return after_tool();
        if (!tool_->gives_way()) return Canvas::keyPressEvent(event);
    }
    if (then_) {
        if (event->key() == Qt::Key_Escape) {
            then_ = nullptr;
            unsetCursor();
            Q_EMIT status({});
            update();
            return;
        }
        if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
            const Point2 middle = view().unmap(QRectF(rect()).center());
            answer({snapped(middle.x_m, false), snapped(middle.y_m, false)});
            return;
        }
    }
    if (event->key() == Qt::Key_Escape && moving_) {
        move_to(selected_, start_);
        release({});
        return;
    }
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? long_nudge_m : nudge_m;
    Point2 by;
    switch (event->key()) {
        case Qt::Key_Left: by.x_m = -step; break;
        case Qt::Key_Right: by.x_m = step; break;
        case Qt::Key_Up: by.y_m = step; break;
        case Qt::Key_Down: by.y_m = -step; break;
        case Qt::Key_Delete:
            if (session_ != nullptr && !selected_.empty()) {
                const std::string id = selected_;
                select({});
                if (drags_ == Drags::bends) {
                    remove_route_point(*session_, id);
                } else {
                    remove_element(*session_, id);
                }
            }
            return;
        default: Canvas::keyPressEvent(event); return;
    }
    if (const auto position = position_of(selected_)) {
        move_to(selected_, {position->x_m + by.x_m, position->y_m + by.y_m});
    }
}

void SiteCanvas::keyReleaseEvent(QKeyEvent* event) {
    // A key held down is one step to undo, the next press another.
    if (!event->isAutoRepeat() && session_ != nullptr && event->key() != Qt::Key_Shift) session_->end_merge();
    Canvas::keyReleaseEvent(event);
}

bool SiteCanvas::focusNextPrevChild(bool next) {
    if (tool_ && !tool_->gives_way()) return Canvas::focusNextPrevChild(next);
    const std::vector<std::string> ids = ids_in_order();
    const auto at = std::find(ids.begin(), ids.end(), selected_);
    if (at == ids.end()) {
        if (ids.empty() || selected_.empty() == false) return Canvas::focusNextPrevChild(next);
        select(next ? ids.front() : ids.back());
        return true;
    }
    if (next ? at + 1 == ids.end() : at == ids.begin()) {
        select({});
        return Canvas::focusNextPrevChild(next);
    }
    select(next ? *(at + 1) : *(at - 1));
    return true;
}

}  // namespace wg::ui
