#include "ui/visit/face_canvas.h"

#include <QKeyEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/site/geometry.h"
#include "core/site/resize.h"
#include "core/site/standing.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/lettering.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {
namespace {

constexpr double face_grid_m = 0.05;
constexpr double face_nudge_m = 0.01;
constexpr double face_long_nudge_m = 0.10;

double held(double value_m, bool fine) {
    const double grid = fine ? 0.001 : face_grid_m;
    return std::round(value_m / grid) * grid;
}

}  // namespace

FaceCanvas::FaceCanvas(QWidget* parent) : Canvas(parent) {
    setAccessibleName(tr("Surface of the survey face-on"));
    setAccessibleDescription(
        tr("Tab goes to the next zone or obstacle; arrow keys move it by 1 cm, with Shift by 10 cm; page keys choose a "
           "corner, which the arrow keys then move; Delete removes it"));
}

void FaceCanvas::set_session(JobSession* session) {
    if (session_ != nullptr) disconnect(session_, nullptr, this, nullptr);
    session_ = session;
    surface_id_.clear();
    selected_.clear();
    then_ = nullptr;
    moving_ = false;
    taken_.reset();
    if (session_ != nullptr) {
        connect(session_, &JobSession::job_changed, this, [this] {
            if (!moving_ && !taken_) refit();
            update();
        });
    }
    update();
}

void FaceCanvas::set_surface(const std::string& surface_id) {
    if (surface_id_ == surface_id) return;
    surface_id_ = surface_id;
    selected_.clear();
    taken_.reset();
    moving_ = false;
    fit();
}

void FaceCanvas::set_selected(const std::string& id) {
    if (selected_ == id) return;
    selected_ = id;
    taken_.reset();
    update();
}

void FaceCanvas::ask_point(const QString& prompt, std::function<void(Point2)> then) {
    then_ = std::move(then);
    prompt_ = prompt;
    setCursor(Qt::CrossCursor);
    setFocus();
    Q_EMIT status(prompt_ + tr("  Enter: in the middle. Escape: leave it."));
    update();
}

void FaceCanvas::answer(Point2 at) {
    const auto then = std::move(then_);
    then_ = nullptr;
    unsetCursor();
    Q_EMIT status({});
    update();
    if (then) then(at);
}

const Surface* FaceCanvas::surface() const {
    return session_ != nullptr ? find_surface(session_->job().site, surface_id_) : nullptr;
}

std::vector<FaceCanvas::Item> FaceCanvas::items() const {
    std::vector<Item> all;
    const Surface* on = surface();
    if (on == nullptr) return all;
    const Site& site = session_->job().site;
    for (const Obstacle& obstacle : site.obstacles) {
        std::vector<Point2> section = site::section_on(*on, site.sketch_up_azimuth_deg, obstacle);
        if (!section.empty()) all.push_back({obstacle.id, obstacle.label, std::move(section), nullptr, &obstacle});
    }
    for (const KeepOut& zone : on->keep_outs)
        if (zone.outline.size() >= 3) all.push_back({zone.id, zone.label, zone.outline, &zone, nullptr});
    // The smallest on top: a chimney within its apron can be had.
    std::stable_sort(all.begin(), all.end(), [](const Item& a, const Item& b) {
        return std::abs(site::signed_area_m2(a.outline)) > std::abs(site::signed_area_m2(b.outline));
    });
    return all;
}

std::optional<FaceCanvas::Item> FaceCanvas::item(const std::string& id) const {
    for (Item& one : items())
        if (one.id == id) return std::move(one);
    return std::nullopt;
}

std::vector<Point2> FaceCanvas::handles() const {
    const auto now = item(selected_);
    const Surface* on = surface();
    if (!now || on == nullptr) return {};
    if (now->zone != nullptr) return now->outline;
    if (!site::sized_face_on(*on, session_->job().site.sketch_up_azimuth_deg, *now->obstacle)) return {};
    const site::Bounds b = site::bounds_of(now->outline);
    return {{b.min_x_m, b.min_y_m}, {b.max_x_m, b.min_y_m}, {b.max_x_m, b.max_y_m}, {b.min_x_m, b.max_y_m}};
}

std::optional<std::size_t> FaceCanvas::handle_near(Point2 at) const {
    std::optional<std::size_t> best;
    double least = reach_units() / units_per_m();
    const auto all = handles();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double off = std::hypot(all[i].x_m - at.x_m, all[i].y_m - at.y_m);
        if (off <= least) {
            best = i;
            least = off;
        }
    }
    return best;
}

SurfaceDrawing FaceCanvas::drawing() const {
    SurfaceDrawing what;
    what.job = session_ != nullptr ? &session_->job() : nullptr;
    what.surface = surface();
    what.selected_id = selected_;
    what.text_units = text_units();
    what.scale_bar = true;
    return what;
}

Canvas::Fit FaceCanvas::fit_into(const QRectF& area) const {
    const SurfaceDrawing what = drawing();
    if (what.surface == nullptr) return {};
    const PlaneView fitted = fit_surface(*what.surface, area, margins_for(what));
    return {fitted.units_per_m, fitted.origin};
}

void FaceCanvas::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    paint_ground(painter);
    const Lettering bold(text_units(), true);
    if (surface() == nullptr) {
        const Lettering plain(text_units());
        plain.draw_in(painter, QRectF(rect()), tr("Click a surface in the plan to see it face-on."),
                      current_theme().muted);
        return;
    }
    paint_surface(painter, drawing(), view(), current_theme());
    const Theme& theme = current_theme();
    const auto all = handles();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double half = taken_ == i ? 7.0 : 5.5;
        painter.setPen(QPen(theme.accent, 1.5 * theme.line_scale));
        painter.setBrush(taken_ == i || over_ == i ? theme.accent : theme.panel);
        painter.drawRect(QRectF(view().map(all[i]) - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)));
    }
    const QString text = then_ ? prompt_ : problem_;
    if (text.isEmpty()) return;
    const QRectF box = bold.box(QPointF(width() / 2.0, text_units() * 1.2), Qt::AlignHCenter | Qt::AlignTop, text)
                           .adjusted(-8, -4, 8, 4);
    painter.setPen(QPen(theme.accent, 1.5));
    painter.setBrush(theme.panel);
    painter.drawRect(box);
    bold.draw_in(painter, box, text, theme.text);
}

QString FaceCanvas::words_for(const Item& what) const {
    const site::Bounds b = site::bounds_of(what.outline);
    const site::Bounds all = site::bounds_of(surface()->outline);
    return tr("\"%1\": %2 by %3, %4 from the left, %5 from below")
        .arg(qs(what.label), length_m(b.width_m()), length_m(b.height_m()), length_m(b.min_x_m - all.min_x_m),
             length_m(b.min_y_m - all.min_y_m));
}

void FaceCanvas::say_state() {
    if (const auto now = item(selected_)) Q_EMIT status(words_for(*now));
}

void FaceCanvas::select(const std::string& id) {
    if (selected_ == id) return;
    selected_ = id;
    taken_.reset();
    update();
    Q_EMIT selection_changed(qs(id));
}

void FaceCanvas::move_by(const Item& from, double right_m, double up_m) {
    const Surface* on = surface();
    if (on == nullptr) return;
    if (from.zone != nullptr) {
        KeepOut moved = *from.zone;
        for (Point2& corner : moved.outline)
            corner = {held(corner.x_m + right_m, true), held(corner.y_m + up_m, true)};
        set_keep_out(*session_, moved, QStringLiteral("move ") + qs(from.id));
    } else if (from.obstacle != nullptr) {
        const Obstacle moved =
            site::moved_on(*on, session_->job().site.sketch_up_azimuth_deg, *from.obstacle, right_m, up_m);
        // Off the surface it would be out of sight, and out of hand.
        if (site::section_on(*on, session_->job().site.sketch_up_azimuth_deg, moved).empty()) return;
        set_obstacle(*session_, moved, QStringLiteral("move ") + qs(from.id));
    }
}

void FaceCanvas::resize_to(const Item& from, std::size_t handle, Point2 to) {
    problem_.clear();
    const Surface* on = surface();
    if (on == nullptr) return;
    if (from.zone != nullptr) {
        const auto outline = site::with_corner_at(from.zone->outline, handle, to);
        if (!outline) {
            problem_ = tr("The outline would cross itself there.");
            return;
        }
        KeepOut changed = *from.zone;
        changed.outline = *outline;
        set_keep_out(*session_, changed, QStringLiteral("size ") + qs(from.id));
    } else if (from.obstacle != nullptr) {
        const site::Bounds b = site::bounds_of(from.outline);
        const Point2 corners[4] = {
            {b.min_x_m, b.min_y_m}, {b.max_x_m, b.min_y_m}, {b.max_x_m, b.max_y_m}, {b.min_x_m, b.max_y_m}};
        const auto changed = site::with_section(*on, session_->job().site.sketch_up_azimuth_deg, *from.obstacle,
                                                corners[(handle + 2) % 4], to);
        if (!changed) return;
        problem_ = refusal(session_->job(), [&](Job& job) {
            for (Obstacle& one : job.site.obstacles)
                if (one.id == from.id) one = *changed;
        });
        if (problem_.isEmpty()) set_obstacle(*session_, *changed, QStringLiteral("size ") + qs(from.id));
    }
}

void FaceCanvas::press(QPointF at, Qt::KeyboardModifiers) {
    if (surface() == nullptr) return;
    const Point2 pointer = view().unmap(at);
    problem_.clear();
    if (then_) return answer({held(pointer.x_m, false), held(pointer.y_m, false)});
    taken_ = handle_near(pointer);
    moving_ = false;
    if (!taken_) {
        std::string hit;
        for (const Item& one : items())
            if (site::contains(one.outline, pointer)) hit = one.id;
        select(hit);
        moving_ = !hit.empty();
    }
    const auto now = item(selected_);
    if (!now) return;
    pressed_ = pointer;
    zone_before_ = now->zone != nullptr ? std::optional<KeepOut>(*now->zone) : std::nullopt;
    obstacle_before_ = now->obstacle != nullptr ? std::optional<Obstacle>(*now->obstacle) : std::nullopt;
    outline_before_ = now->outline;
    handles_before_ = handles();
    update();
}

void FaceCanvas::drag(QPointF at, Qt::KeyboardModifiers modifiers) {
    if (!moving_ && !taken_) return;
    const Point2 pointer = view().unmap(at);
    const bool fine = (modifiers & Qt::AltModifier) != 0;
    Item from{selected_,
              {},
              outline_before_,
              zone_before_ ? &*zone_before_ : nullptr,
              obstacle_before_ ? &*obstacle_before_ : nullptr};
    const double right_m = pointer.x_m - pressed_.x_m;
    const double up_m = pointer.y_m - pressed_.y_m;
    if (taken_ && *taken_ < handles_before_.size()) {
        const Point2 corner = handles_before_[*taken_];
        resize_to(from, *taken_, {held(corner.x_m + right_m, fine), held(corner.y_m + up_m, fine)});
    } else if (moving_) {
        // The lower left corner falls on the grid, counted from the surface's own corner.
        const site::Bounds b = site::bounds_of(outline_before_);
        move_by(from, held(b.min_x_m + right_m, fine) - b.min_x_m, held(b.min_y_m + up_m, fine) - b.min_y_m);
    }
    say_state();
    update();
}

void FaceCanvas::release(QPointF) {
    if (moving_ || taken_) {
        if (session_ != nullptr) session_->end_merge();
    }
    moving_ = false;
    taken_.reset();
    update();
}

void FaceCanvas::hover(QPointF at) {
    if (surface() == nullptr) return;
    const Point2 pointer = view().unmap(at);
    over_ = handle_near(pointer);
    update();
    if (then_) return;
    QString words;
    for (const Item& one : items())
        if (site::contains(one.outline, pointer)) words = words_for(one);
    setCursor(over_ ? Qt::CrossCursor : words.isEmpty() ? Qt::ArrowCursor : Qt::SizeAllCursor);
    const site::Bounds all = site::bounds_of(surface()->outline);
    if (words.isEmpty())
        words = tr("%1 from the left, %2 from below")
                    .arg(length_m(pointer.x_m - all.min_x_m), length_m(pointer.y_m - all.min_y_m));
    Q_EMIT status(words);
}

void FaceCanvas::keyPressEvent(QKeyEvent* event) {
    if (then_ && event->key() == Qt::Key_Escape) {
        then_ = nullptr;
        unsetCursor();
        Q_EMIT status({});
        return update();
    }
    if (then_ && (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && surface() != nullptr) {
        const site::Bounds b = site::bounds_of(surface()->outline);
        return answer({held(0.5 * (b.min_x_m + b.max_x_m), false), held(0.5 * (b.min_y_m + b.max_y_m), false)});
    }
    const auto now = item(selected_);
    const auto corners = handles();
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? face_long_nudge_m : face_nudge_m;
    Point2 by;
    switch (event->key()) {
        case Qt::Key_Left: by.x_m = -step; break;
        case Qt::Key_Right: by.x_m = step; break;
        case Qt::Key_Up: by.y_m = step; break;
        case Qt::Key_Down: by.y_m = -step; break;
        case Qt::Key_PageDown:
            if (!corners.empty()) taken_ = taken_ ? (*taken_ + 1) % corners.size() : 0;
            return update();
        case Qt::Key_PageUp:
            if (!corners.empty()) taken_ = taken_ ? (*taken_ + corners.size() - 1) % corners.size() : 0;
            return update();
        case Qt::Key_Escape:
            taken_.reset();
            problem_.clear();
            return update();
        case Qt::Key_Delete:
            if (now) {
                const std::string id = selected_;
                select({});
                remove_element(*session_, id);
            }
            return;
        default: Canvas::keyPressEvent(event); return;
    }
    if (!now) return;
    if (taken_ && *taken_ < corners.size()) {
        const std::size_t handle = *taken_;
        resize_to(*now, handle, {corners[handle].x_m + by.x_m, corners[handle].y_m + by.y_m});
        taken_ = handle;
    } else {
        move_by(*now, by.x_m, by.y_m);
    }
    say_state();
    update();
}

void FaceCanvas::keyReleaseEvent(QKeyEvent* event) {
    if (!event->isAutoRepeat() && session_ != nullptr && event->key() != Qt::Key_Shift) session_->end_merge();
    Canvas::keyReleaseEvent(event);
}

bool FaceCanvas::focusNextPrevChild(bool next) {
    const auto all = items();
    const auto at = std::find_if(all.begin(), all.end(), [this](const Item& one) { return one.id == selected_; });
    if (all.empty()) return Canvas::focusNextPrevChild(next);
    if (at == all.end()) {
        select(next ? all.front().id : all.back().id);
        return true;
    }
    if (next ? at + 1 == all.end() : at == all.begin()) {
        select({});
        return Canvas::focusNextPrevChild(next);
    }
    select(next ? (at + 1)->id : (at - 1)->id);
    return true;
}

}  // namespace wg::ui
