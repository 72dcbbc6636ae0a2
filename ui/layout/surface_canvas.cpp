#include "ui/layout/surface_canvas.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <cmath>

#include "core/site/geometry.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/lettering.h"
#include "ui/layout/shade_pointer.h"
#include "ui/layout/shade_service.h"

namespace wg::ui {
namespace {

constexpr double nudge_m = 0.01;
constexpr double long_nudge_m = 0.10;
constexpr double hand_moves_units = 3.0;  ///< a click that trembles is not a drag

}  // namespace

SurfaceCanvas::SurfaceCanvas(ShadeService* shade, QWidget* parent) : Canvas(parent), shade_(shade) {
    setAccessibleName(tr("Surface seen face-on"));
    setAccessibleDescription(
        tr("Tab goes to the next collector; arrow keys move it by 1 cm, with Shift by 10 cm; R turns it; H changes the "
           "side of the connections; Page up and Page down take it to another surface"));
    connect(shade_, &ShadeService::ready, this, [this] { update(); });
    connect(shade_, &ShadeService::period_changed, this, [this] { update(); });
}

void SurfaceCanvas::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    selected_.clear();
    surface_id_.clear();
    moving_ = false;
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, [this] { refit(); });
        connect(session_, &JobSession::plan_changed, this, [this] { update(); });
        connect(session_, &JobSession::choice_changed, this, [this] { refit(); });
    }
}

void SurfaceCanvas::set_surface(const std::string& surface_id) {
    if (surface_id_ == surface_id) return;
    surface_id_ = surface_id;
    moving_ = false;
    fit();
}

void SurfaceCanvas::set_selected(const std::string& placement_id) {
    selected_ = placement_id;
    update();
}

void SurfaceCanvas::set_shade_shown(bool on) {
    shade_shown_ = on;
    refit();
}

const Surface* SurfaceCanvas::surface() const {
    return session_ != nullptr ? find_surface(session_->job().site, surface_id_) : nullptr;
}

const CollectorModel* SurfaceCanvas::model() const {
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    return choice != nullptr ? find_collector(session_->reference().catalogue, choice->collector_model) : nullptr;
}

std::vector<const Placement*> SurfaceCanvas::placements() const {
    std::vector<const Placement*> here;
    const Choice* choice = session_ != nullptr ? session_->current_choice() : nullptr;
    if (choice == nullptr) return here;
    for (const Placement& one : choice->placements) {
        if (one.surface_id == surface_id_) here.push_back(&one);
    }
    return here;
}

const Placement* SurfaceCanvas::placement(const std::string& id) const {
    for (const Placement* one : placements()) {
        if (one->id == id) return one;
    }
    return nullptr;
}

SurfaceDrawing SurfaceCanvas::drawing() const {
    SurfaceDrawing what;
    if (session_ == nullptr) return what;
    what.job = &session_->job();
    what.surface = surface();
    what.choice = session_->current_choice();
    what.collector = model();
    what.selected_id = selected_;
    what.scale_bar = true;
    what.collector_dimensions_all_round = true;
    what.text_units = text_units();
    what.shade_period = shade_->period_words();
    return what;
}

Canvas::Fit SurfaceCanvas::fit_into(const QRectF& area) const {
    SurfaceDrawing what = drawing();
    if (what.surface == nullptr) return {};
    // Room for the legend also while the map is still being worked out: the drawing must not jump when it comes.
    const site::ShadeMap legend_only{};
    if (shade_shown_) what.shade_map = &legend_only;
    const double air = text_units() * 0.8;
    const PlaneView fitted = fit_surface(*what.surface, area, margins_for(what) + QMarginsF(air, air, air, air));
    return {fitted.units_per_m, fitted.origin};
}

void SurfaceCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_ground(painter);
    const Theme& theme = current_theme();
    const Lettering letters(text_units());
    SurfaceDrawing what = drawing();
    if (what.surface == nullptr) {
        letters.draw(painter, QRectF(rect()).center(), Qt::AlignCenter,
                     tr("No surface yet. Add a roof, wall or terrace on the Visit stage."), theme.muted);
        return;
    }
    const auto plan = session_->plan();
    what.plan = plan.get();
    if (shade_shown_) what.shade_map = shade_->map_of(surface_id_);
    paint_surface(painter, what, view(), theme);
    paint_proposals(painter);
    if (placements().empty()) {
        const QRectF box =
            letters.box(QPointF(width() / 2.0, height() - text_units() * 1.0), Qt::AlignHCenter | Qt::AlignBottom,
                        tr("No collector here. 'Add collector' puts one on this surface."));
        letters.draw_in(painter, box, tr("No collector here. 'Add collector' puts one on this surface."), theme.muted,
                        theme.panel);
    }
    if (shade_shown_ && what.shade_map == nullptr) {
        letters.draw(painter, QPointF(width() - 12.0, 10.0), Qt::AlignRight | Qt::AlignTop,
                     tr("working out the shade map \u2026"), theme.muted);
    }
    if (what.shade_map != nullptr && pointer_ && !moving_) {
        paint_shade_at(painter, *what.shade_map, view().unmap(*pointer_), *pointer_, QRectF(rect()), text_units(),
                       theme);
    }
    if (moving_ && !reason_.isEmpty()) {
        const Lettering bold(text_units(), true);
        const Placement* moved = placement(selected_);
        const QPointF at = moved != nullptr ? view().map({moved->x_m, moved->y_m}) : QRectF(rect()).center();
        const QRectF box = bold.box(at + QPointF(0.0, text_units() * 2.6), Qt::AlignHCenter | Qt::AlignTop, reason_)
                               .adjusted(-6, -2, 6, 2);
        painter.fillRect(box, theme.accent);
        bold.draw_in(painter, box, reason_, theme.panel);
    }
}

void SurfaceCanvas::set_proposals(std::vector<ProposedPlace> proposals) {
    proposals_ = std::move(proposals);
    update();
}

void SurfaceCanvas::paint_proposals(QPainter& painter) const {
    const Theme& theme = current_theme();
    painter.save();
    for (const ProposedPlace& one : proposals_) {
        if (one.surface_id != surface_id_) continue;
        QPolygonF outline;
        for (const Point2 p : one.outline)
            outline << view().map(p);
        QPen pen(theme.accent, one.marked ? 3.0 : 2.0, Qt::DashLine);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawPolygon(outline);
        const Lettering bold(text_units(), true);
        const QString number = QString::number(one.number);
        const QRectF box =
            bold.box(outline.boundingRect().topLeft() + QPointF(6.0, 4.0), Qt::AlignLeft | Qt::AlignTop, number)
                .adjusted(-5, -2, 5, 2);
        painter.fillRect(box, one.marked ? theme.accent : theme.panel);
        bold.draw_in(painter, box, number, one.marked ? theme.panel : theme.accent);
    }
    painter.restore();
}

QString SurfaceCanvas::place_words(Point2 at) const {
    const Surface* on = surface();
    if (on == nullptr) return {};
    if (!site::contains(on->outline, at)) return tr("%1: outside the outline").arg(qs(on->label));
    const auto left = reach_m(on->outline, at, -1.0, 0.0);
    const auto low = reach_m(on->outline, at, 0.0, -1.0);
    return tr("%1: %2 from the left edge, %3 from the lower edge")
        .arg(qs(on->label), length_m(left.value_or(0.0)), length_m(low.value_or(0.0)));
}

void SurfaceCanvas::select(const std::string& id) {
    if (selected_ == id) return;
    selected_ = id;
    update();
    Q_EMIT selection_changed(qs(id));
}

void SurfaceCanvas::press(QPointF at, Qt::KeyboardModifiers) {
    moving_ = false;
    const CollectorModel* plate = model();
    const Surface* on = surface();
    if (plate == nullptr || on == nullptr) return;
    const Point2 pointer = view().unmap(at);
    // The topmost is the one drawn last.
    const auto here = placements();
    for (auto one = here.rbegin(); one != here.rend(); ++one) {
        const auto placed = site::place(*on, session_->job().site.sketch_up_azimuth_deg, **one, *plate);
        if (!site::contains(placed.outline, pointer)) continue;
        select((*one)->id);
        moving_ = true;
        start_ = {(*one)->x_m, (*one)->y_m};
        grab_ = {start_.x_m - pointer.x_m, start_.y_m - pointer.y_m};
        reason_.clear();
        return;
    }
    select({});
}

SnapInput SurfaceCanvas::snap_input(const Placement& moved) const {
    SnapInput input;
    input.surface = surface();
    input.placement = &moved;
    input.model = model();
    input.sketch_up_azimuth_deg = session_->job().site.sketch_up_azimuth_deg;
    input.reach_m = std::min(reach_units() / units_per_m(), 0.10);
    for (const Placement* other : placements()) {
        if (other->id != moved.id) input.others.push_back(other);
    }
    return input;
}

void SurfaceCanvas::drag(QPointF at, Qt::KeyboardModifiers modifiers) {
    if (!moving_) return;
    const Placement* moved = placement(selected_);
    if (moved == nullptr) return;
    const Point2 pointer = view().unmap(at);
    Snapped to{pointer.x_m + grab_.x_m, pointer.y_m + grab_.y_m, {}, {}};
    const bool still = std::hypot(to.x_m - start_.x_m, to.y_m - start_.y_m) * units_per_m() < hand_moves_units;
    if (still && moved->x_m == start_.x_m && moved->y_m == start_.y_m) return;
    if (snapping_ && (modifiers & Qt::AltModifier) == 0) to = snap(snap_input(*moved), to.x_m, to.y_m);
    reason_ = to.reason_x;
    if (!to.reason_y.isEmpty()) reason_ += (reason_.isEmpty() ? QString() : QStringLiteral(" \u00b7 ")) + to.reason_y;
    move_placement(*session_, selected_, to.x_m, to.y_m);
    Q_EMIT status((reason_.isEmpty() ? tr("Moved freely") : tr("Held at %1").arg(reason_)) +
                  tr(". Alt: without snapping. Escape: back to where it was."));
    update();
}

void SurfaceCanvas::release(QPointF) {
    if (!moving_) return;
    moving_ = false;
    reason_.clear();
    if (session_ != nullptr) session_->end_merge();
    refit();
}

void SurfaceCanvas::hover(QPointF at) {
    const Surface* on = surface();
    const CollectorModel* plate = model();
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
    bool over = false;
    if (plate != nullptr) {
        for (const Placement* one : placements()) {
            const auto placed = site::place(*on, session_->job().site.sketch_up_azimuth_deg, *one, *plate);
            if (!site::contains(placed.outline, pointer)) continue;
            over = true;
            words += tr(" \u00b7 %1: drag to move, R turns, H changes hand").arg(qs(one->label));
        }
    }
    for (const KeepOut& zone : on->keep_outs) {
        if (zone.outline.size() >= 3 && site::contains(zone.outline, pointer)) {
            words += tr(" \u00b7 %1, %2 kept clear round it").arg(qs(zone.label), length_mm(zone.clearance_m));
        }
    }
    setCursor(over ? Qt::SizeAllCursor : Qt::ArrowCursor);
    Q_EMIT status(words);
}

void SurfaceCanvas::leaveEvent(QEvent* event) {
    Canvas::leaveEvent(event);
    pointer_.reset();
    if (shade_shown_) update();
}

void SurfaceCanvas::nudge(double dx_m, double dy_m) {
    const Placement* moved = placement(selected_);
    if (moved == nullptr) return;
    move_placement(*session_, selected_, moved->x_m + dx_m, moved->y_m + dy_m);
    if (const Placement* now = placement(selected_)) Q_EMIT status(place_words({now->x_m, now->y_m}));
}

void SurfaceCanvas::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && moving_) {
        move_placement(*session_, selected_, start_.x_m, start_.y_m);
        release({});
        return;
    }
    const Placement* chosen = placement(selected_);
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? long_nudge_m : nudge_m;
    if (chosen != nullptr) {
        switch (event->key()) {
            case Qt::Key_Left: nudge(-step, 0.0); return;
            case Qt::Key_Right: nudge(step, 0.0); return;
            case Qt::Key_Up: nudge(0.0, step); return;
            case Qt::Key_Down: nudge(0.0, -step); return;
            case Qt::Key_R: {
                const double by = (event->modifiers() & Qt::ShiftModifier) != 0 ? -90.0 : 90.0;
                turn_placement(*session_, selected_, std::remainder(chosen->turn_deg + by, 360.0));
                session_->end_merge();
                return;
            }
            case Qt::Key_H:
                set_hand(*session_, selected_, chosen->hand == Hand::left ? Hand::right : Hand::left);
                return;
            case Qt::Key_PageUp: Q_EMIT move_to_surface(-1); return;
            case Qt::Key_PageDown: Q_EMIT move_to_surface(1); return;
            case Qt::Key_Delete: {
                const std::string id = selected_;
                select({});
                remove_collector(*session_, id);
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
    const auto at = std::find_if(here.begin(), here.end(), [this](const Placement* p) { return p->id == selected_; });
    if (here.empty()) return Canvas::focusNextPrevChild(next);
    if (at == here.end()) {
        select(next ? here.front()->id : here.back()->id);
        return true;
    }
    if (next ? at + 1 == here.end() : at == here.begin()) {
        // Past the last collector the focus goes on; the selection stays for the panel's fields.
        return Canvas::focusNextPrevChild(next);
    }
    select(next ? (*(at + 1))->id : (*(at - 1))->id);
    return true;
}

}  // namespace wg::ui
