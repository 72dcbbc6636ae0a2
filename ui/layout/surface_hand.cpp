// The hand on the surface: what is pressed, dragged, banded and typed on SurfaceCanvas.
#include <QKeyEvent>
#include <QPolygonF>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/site/geometry.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/layout/shade_pointer.h"
#include "ui/layout/shade_service.h"
#include "ui/layout/surface_canvas.h"

namespace wg::ui {
namespace {

constexpr double nudge_m = 0.01;
constexpr double long_nudge_m = 0.10;
constexpr double hand_moves_units = 3.0;  ///< a click that trembles is not a drag

}  // namespace

bool SurfaceCanvas::is_selected(const std::string& id) const {
    return std::find(selection_.begin(), selection_.end(), id) != selection_.end();
}

void SurfaceCanvas::select(std::vector<std::string> ids) {
    if (selection_ == ids) return;
    set_selection(ids);
    Q_EMIT selection_changed();
}

void SurfaceCanvas::select_all() {
    std::vector<std::string> ids;
    for (const Placement* one : placements())
        ids.push_back(one->id);
    select(std::move(ids));
    if (selection_.size() > 1) {
        Q_EMIT status(tr("%1 collectors selected: drag or arrow keys move them together").arg(selection_.size()));
    }
}

std::string SurfaceCanvas::at_pointer(Point2 pointer) const {
    const CollectorModel* plate = model();
    const Surface* on = surface();
    if (plate == nullptr || on == nullptr) return {};
    // The topmost is the one drawn last.
    const auto here = placements();
    for (auto one = here.rbegin(); one != here.rend(); ++one) {
        const auto placed = site::place(*on, session_->job().site.sketch_up_azimuth_deg, **one, *plate);
        if (site::contains(placed.outline, pointer)) return (*one)->id;
    }
    return {};
}

void SurfaceCanvas::begin_move(Point2 pointer) {
    const Placement* under = placement(selected());
    if (under == nullptr) return;
    moving_ = true;
    moved_ = false;
    reason_.clear();
    grab_ = {under->x_m - pointer.x_m, under->y_m - pointer.y_m};
    start_.clear();
    for (const std::string& id : selection_) {
        if (const Placement* one = placement(id)) start_.push_back({id, {one->x_m, one->y_m}});
    }
}

void SurfaceCanvas::press(QPointF at, Qt::KeyboardModifiers modifiers) {
    moving_ = banding_ = keeps_selection_ = false;
    if (model() == nullptr || surface() == nullptr) return;
    const Point2 pointer = view().unmap(at);
    pressed_point_.reset();
    if (const PointHit hit = point_at(at); hit.point != nullptr && hit.on_number) pressed_point_ = *hit.point;
    const std::string id = at_pointer(pointer);
    const bool adds = (modifiers & (Qt::ControlModifier | Qt::ShiftModifier)) != 0;
    if (id.empty()) {
        if (pressed_point_) return;
        banding_ = true;
        band_from_ = band_to_ = at;
        band_adds_to_ = adds ? selection_ : std::vector<std::string>();
        if (!adds) select({});
        return;
    }
    std::vector<std::string> ids = selection_;
    ids.erase(std::remove(ids.begin(), ids.end(), id), ids.end());
    if (adds && is_selected(id)) {
        select(std::move(ids));
        return;
    }
    keeps_selection_ = !adds && is_selected(id) && selection_.size() > 1;
    if (!adds && !keeps_selection_) ids.clear();
    ids.push_back(id);
    select(std::move(ids));
    begin_move(pointer);
}

SnapInput SurfaceCanvas::snap_input(const Placement& moved) const {
    SnapInput input;
    input.surface = surface();
    input.placement = &moved;
    input.model = model();
    input.sketch_up_azimuth_deg = session_->job().site.sketch_up_azimuth_deg;
    input.reach_m = std::min(reach_units() / units_per_m(), 0.10);
    for (const Placement* other : placements()) {
        // What moves along is nothing to rest against.
        if (other->id != moved.id && !is_selected(other->id)) input.others.push_back(other);
    }
    return input;
}

void SurfaceCanvas::drag(QPointF at, Qt::KeyboardModifiers modifiers) {
    if (banding_) {
        band_to_ = at;
        update();
        return;
    }
    const Placement* under = moving_ ? placement(selected()) : nullptr;
    if (under == nullptr || start_.empty()) return;
    const Point2 pointer = view().unmap(at);
    const Point2 from = start_.back().middle;
    Snapped to{pointer.x_m + grab_.x_m, pointer.y_m + grab_.y_m, {}, {}};
    if (!moved_ && std::hypot(to.x_m - from.x_m, to.y_m - from.y_m) * units_per_m() < hand_moves_units) return;
    moved_ = true;
    if (snapping_ && (modifiers & Qt::AltModifier) == 0) to = snap(snap_input(*under), to.x_m, to.y_m);
    reason_ = to.reason_x;
    if (!to.reason_y.isEmpty()) reason_ += (reason_.isEmpty() ? QString() : QStringLiteral(" \u00b7 ")) + to.reason_y;
    std::vector<PlacedAt> moved = start_;
    for (PlacedAt& one : moved)
        one.middle = {one.middle.x_m + to.x_m - from.x_m, one.middle.y_m + to.y_m - from.y_m};
    place_collectors(*session_, moved);
    say((reason_.isEmpty() ? tr("Moved freely") : tr("Held at %1").arg(reason_)) +
        tr(". Alt: without snapping. Escape: back to where it was."));
    update();
}

void SurfaceCanvas::say(const QString& where) {
    const QString against = live_.words();
    Q_EMIT status(against.isEmpty() ? where : against + QStringLiteral(" \u00b7 ") + where);
}

void SurfaceCanvas::end_band(QPointF at) {
    banding_ = false;
    update();
    const QRectF band = QRectF(band_from_, at).normalized();
    if (std::hypot(band.width(), band.height()) < hand_moves_units) return;
    std::vector<std::string> ids = band_adds_to_;
    for (const Placement* one : placements()) {
        const auto placed = site::place(*surface(), session_->job().site.sketch_up_azimuth_deg, *one, *model());
        QPolygonF outline;
        for (const Point2 p : placed.outline)
            outline << view().map(p);
        const bool touched = outline.intersects(QPolygonF(band));
        if (touched && std::find(ids.begin(), ids.end(), one->id) == ids.end()) ids.push_back(one->id);
    }
    select(std::move(ids));
}

void SurfaceCanvas::release(QPointF at) {
    // A number was clicked, not dragged: the plate below it can be moved from there all the same.
    const std::optional<PointNumber> point = std::exchange(pressed_point_, std::nullopt);
    const bool clicked = point && !(moving_ && moved_);
    if (banding_) {
        end_band(at);
        return;
    }
    if (!moving_) {
        if (clicked) ask_about(*point);
        return;
    }
    moving_ = false;
    reason_.clear();
    if (keeps_selection_ && !moved_) select({selected()});
    if (session_ != nullptr) session_->end_merge();
    refit();
    if (clicked) ask_about(*point);
}

void SurfaceCanvas::hover(QPointF at) {
    const Surface* on = surface();
    if (on == nullptr) return;
    const Point2 pointer = view().unmap(at);
    QString words = place_words(pointer);
    pointer_ = at;
    if (shade_shown_) {
        const site::ShadeMap* map = shade_->map_of(surface_id_);
        const QString shade = map != nullptr ? shade_words_at(*map, pointer, shade_->period_words()) : QString();
        if (!shade.isEmpty()) words += QStringLiteral(" \u00b7 ") + shade;
        update();
    }
    const Placement* over = placement(at_pointer(pointer));
    if (over != nullptr) words += tr("   %1: drag to move, R turns, H changes hand").arg(qs(over->label));
    for (const KeepOut& zone : on->keep_outs) {
        if (zone.outline.size() >= 3 && site::contains(zone.outline, pointer)) {
            words += tr("   %1, %2 kept clear round it").arg(qs(zone.label), length_mm(zone.clearance_m));
        }
    }
    setCursor(over != nullptr ? Qt::SizeAllCursor : Qt::ArrowCursor);
    if (const PointHit hit = point_at(at); hit.point != nullptr) {
        words = point_words(*hit.point);
        if (hit.on_number) setCursor(Qt::PointingHandCursor);
    }
    Q_EMIT status(words);
}

void SurfaceCanvas::leaveEvent(QEvent* event) {
    Canvas::leaveEvent(event);
    pointer_.reset();
    if (shade_shown_) update();
}

void SurfaceCanvas::nudge(double dx_m, double dy_m) {
    std::vector<PlacedAt> to;
    for (const std::string& id : selection_) {
        if (const Placement* one = placement(id)) to.push_back({id, {one->x_m + dx_m, one->y_m + dy_m}});
    }
    place_collectors(*session_, to);
    if (const Placement* now = placement(selected())) say(place_words({now->x_m, now->y_m}));
}

void SurfaceCanvas::turn(int direction) {
    const QString refusal = turn_collectors(*session_, selection_, direction);
    const Placement* now = placement(selected());
    if (!refusal.isEmpty()) {
        Q_EMIT status(refusal);
    } else if (now != nullptr) {
        say(tr("%1 turned by %2\u00b0").arg(qs(now->label)).arg(now->turn_deg, 0, 'f', 0));
    }
}

void SurfaceCanvas::keyPressEvent(QKeyEvent* event) {
    const bool shift = (event->modifiers() & Qt::ShiftModifier) != 0;
    if (event->key() == Qt::Key_Escape && moving_) {
        pressed_point_.reset();
        if (moved_) place_collectors(*session_, start_);
        keeps_selection_ = false;
        release({});
        Q_EMIT status(tr("Back where it was."));
        return;
    }
    if (event->key() == Qt::Key_Escape && banding_) {
        banding_ = false;
        update();
        return;
    }
    if (event->matches(QKeySequence::SelectAll)) {
        select_all();
        return;
    }
    const Placement* chosen = placement(selected());
    const double step = shift ? long_nudge_m : nudge_m;
    if (chosen != nullptr) {
        switch (event->key()) {
            case Qt::Key_Left: nudge(-step, 0.0); return;
            case Qt::Key_Right: nudge(step, 0.0); return;
            case Qt::Key_Up: nudge(0.0, step); return;
            case Qt::Key_Down: nudge(0.0, -step); return;
            case Qt::Key_R: turn(shift ? -1 : 1); return;
            case Qt::Key_H:
                set_hands(*session_, selection_, chosen->hand == Hand::left ? Hand::right : Hand::left);
                return;
            case Qt::Key_W: Q_EMIT point_working_asked(qs(chosen->id), 0); return;
            case Qt::Key_PageUp: Q_EMIT move_to_surface(-1); return;
            case Qt::Key_PageDown: Q_EMIT move_to_surface(1); return;
            case Qt::Key_Delete: {
                const std::vector<std::string> ids = selection_;
                select({});
                remove_collectors(*session_, ids);
                return;
            }
            default: break;
        }
    }
    Canvas::keyPressEvent(event);
}

void SurfaceCanvas::keyReleaseEvent(QKeyEvent* event) {
    // A key held down is one step to undo, the next press another.
    if (!event->isAutoRepeat() && session_ != nullptr && event->key() != Qt::Key_Shift) session_->end_merge();
    Canvas::keyReleaseEvent(event);
}

bool SurfaceCanvas::focusNextPrevChild(bool next) {
    const auto here = placements();
    const std::string id = selected();
    const auto at = std::find_if(here.begin(), here.end(), [&id](const Placement* p) { return p->id == id; });
    if (here.empty()) return Canvas::focusNextPrevChild(next);
    if (at == here.end()) {
        select({next ? here.front()->id : here.back()->id});
        return true;
    }
    if (next ? at + 1 == here.end() : at == here.begin()) {
        // Past the last collector the focus goes on; the selection stays for the panel's fields.
        return Canvas::focusNextPrevChild(next);
    }
    select({next ? (*(at + 1))->id : (*(at - 1))->id});
    return true;
}

}  // namespace wg::ui
