#include "ui/visit/size_tool.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/geometry.h"
#include "ui/common/edits.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/drawing/dimension.h"
#include "ui/drawing/lettering.h"
#include "ui/visit/guarded_edit.h"

namespace wg::ui {
namespace {

constexpr double hand_units = 10.0;    ///< as Canvas::reach_units
constexpr double roomy_reaches = 3.0;  ///< least side of what shows handles
constexpr double arm_reaches = 2.5;    ///< turn handle beyond its side, in reaches of the hand
constexpr double size_grid_m = 0.05;
constexpr double turn_grid_deg = 5.0;

}  // namespace

SizeTool::SizeTool(JobSession& session, std::string obstacle_id)
    : session_(session), obstacle_id_(std::move(obstacle_id)) {}

const Obstacle* SizeTool::obstacle() const {
    for (const Obstacle& one : session_.job().site.obstacles)
        if (one.id == obstacle_id_) return &one;
    return nullptr;
}

std::vector<site::Handle> SizeTool::handles() const {
    const Obstacle* now = obstacle();
    return now != nullptr ? site::handles_of(*now, arm_reaches * reach_m_) : std::vector<site::Handle>();
}

bool SizeTool::roomy() const {
    const Obstacle* now = obstacle();
    if (now == nullptr) return false;
    double least_m = 2.0 * now->radius_m;
    if (now->kind == ObstacleKind::box) least_m = std::min(now->width_m, now->depth_m);
    if (now->kind == ObstacleKind::prism) {
        const site::Bounds b = site::bounds_of(now->outline);
        least_m = std::min(b.width_m(), b.height_m());
    }
    return least_m >= roomy_reaches * reach_m_;
}

std::optional<std::size_t> SizeTool::near(Point2 at, double reach_m) const {
    std::optional<std::size_t> best;
    if (!roomy()) return best;
    double least = reach_m;
    const auto all = handles();
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double off = std::hypot(all[i].at.x_m - at.x_m, all[i].at.y_m - at.y_m);
        if (off <= least) {
            best = i;
            least = off;
        }
    }
    return best;
}

void SizeTool::hover(Point2 at, double reach_m, Qt::KeyboardModifiers) {
    reach_m_ = reach_m;
    over_ = near(at, reach_m);
}

bool SizeTool::press(Point2 at, double reach_m, Qt::KeyboardModifiers) {
    problem_.clear();
    reach_m_ = reach_m;
    over_ = near(at, reach_m);
    taken_ = over_;
    if (!taken_) return false;
    const Point2 handle = handles()[*taken_].at;
    grab_ = {handle.x_m - at.x_m, handle.y_m - at.y_m};
    dragging_ = true;
    return true;
}

void SizeTool::drag(Point2 at, double, Qt::KeyboardModifiers modifiers) {
    const auto all = handles();
    const Obstacle* now = obstacle();
    if (!dragging_ || !taken_ || *taken_ >= all.size() || now == nullptr) return;
    Point2 to{at.x_m + grab_.x_m, at.y_m + grab_.y_m};
    const bool fine = (modifiers & Qt::AltModifier) != 0;
    if (!fine && all[*taken_].kind == site::Handle::Kind::turn) {
        const double dx = to.x_m - now->base.x_m;
        const double dy = to.y_m - now->base.y_m;
        const double step = turn_grid_deg * pi / 180.0;
        const double angle = std::round(std::atan2(dy, dx) / step) * step;
        to = {now->base.x_m + std::cos(angle), now->base.y_m + std::sin(angle)};
    } else if (!fine && all[*taken_].kind == site::Handle::Kind::radius) {
        const double radius = std::hypot(to.x_m - now->base.x_m, to.y_m - now->base.y_m);
        to = {now->base.x_m + std::round(radius / size_grid_m) * size_grid_m, now->base.y_m};
    } else if (!fine && now->kind == ObstacleKind::prism) {
        to = {std::round(to.x_m / size_grid_m) * size_grid_m, std::round(to.y_m / size_grid_m) * size_grid_m};
    }
    move_to(to);
}

void SizeTool::move_to(Point2 to) {
    const auto all = handles();
    const Obstacle* now = obstacle();
    if (!taken_ || *taken_ >= all.size() || now == nullptr) return;
    const auto changed = site::with_handle_at(*now, all[*taken_].kind, all[*taken_].corner, to);
    if (!changed) {
        problem_ = tr("The outline would cross itself there.");
        return;
    }
    problem_ = refusal(session_.job(), [&](Job& job) {
        for (Obstacle& one : job.site.obstacles)
            if (one.id == obstacle_id_) one = *changed;
    });
    if (problem_.isEmpty()) set_obstacle(session_, *changed, QStringLiteral("size ") + qs(obstacle_id_));
}

void SizeTool::release() {
    dragging_ = false;
    session_.end_merge();
}

bool SizeTool::key(const QKeyEvent& event, Point2) {
    const auto all = handles();
    const Obstacle* now = obstacle();
    if (all.empty() || now == nullptr) return false;
    const double step = (event.modifiers() & Qt::ShiftModifier) != 0 ? 0.10 : 0.01;
    Point2 by;
    switch (event.key()) {
        case Qt::Key_PageDown: taken_ = taken_ ? (*taken_ + 1) % all.size() : 0; return true;
        case Qt::Key_PageUp: taken_ = taken_ ? (*taken_ + all.size() - 1) % all.size() : all.size() - 1; return true;
        case Qt::Key_Escape:
            if (!taken_) return false;
            taken_.reset();
            return true;
        case Qt::Key_Left: by.x_m = -step; break;
        case Qt::Key_Right: by.x_m = step; break;
        case Qt::Key_Up: by.y_m = step; break;
        case Qt::Key_Down: by.y_m = -step; break;
        default: return false;
    }
    if (!taken_ || *taken_ >= all.size()) return false;
    const site::Handle& handle = all[*taken_];
    if (handle.kind == site::Handle::Kind::turn) {
        // Arrow keys turn by 1 deg, with Shift by 10 deg, counter-clockwise for right and up.
        Obstacle turned = *now;
        turned.turn_deg = std::remainder(turned.turn_deg + (by.x_m + by.y_m) * 100.0, 360.0);
        set_obstacle(session_, turned, QStringLiteral("size ") + qs(obstacle_id_));
        return true;
    }
    move_to({handle.at.x_m + by.x_m, handle.at.y_m + by.y_m});
    return true;
}

QString SizeTool::words() const {
    const Obstacle* now = obstacle();
    if (now == nullptr || (!over_ && !taken_)) return {};
    QString size;
    switch (now->kind) {
        case ObstacleKind::box:
            size = tr("%1 by %2, turned %3\u00b0")
                       .arg(length_m(now->width_m), length_m(now->depth_m))
                       .arg(now->turn_deg, 0, 'f', 1);
            break;
        case ObstacleKind::post:
        case ObstacleKind::tree: size = tr("%1 across").arg(length_m(2.0 * now->radius_m)); break;
        case ObstacleKind::prism: size = tr("%1 corners").arg(now->outline.size()); break;
    }
    return tr("\"%1\": %2.  Drag a handle; page keys choose one, arrows move it. Alt: to the millimetre.")
        .arg(qs(now->label), size);
}

void SizeTool::paint(QPainter& painter, const SiteView& view, double text_units, const Theme& theme) const {
    const Obstacle* now = obstacle();
    if (now == nullptr) return;
    const auto at = [&](const Point2& p) { return view.map(p.x_m, p.y_m); };
    const double line = 1.5 * theme.line_scale;
    reach_m_ = hand_units / view.units_per_m;
    const auto all = handles();
    if (!taken_ && !roomy()) return;
    const Lettering letters(text_units);
    const DimensionPen pen{&letters, theme.muted, theme.text, theme.panel, theme.line_scale};
    if (now->kind == ObstacleKind::box && taken_) {
        // Its two sides as figures, away from the box.
        const auto side = [&](const Point2& a, const Point2& b) {
            const QPointF p = at(a);
            const QPointF q = at(b);
            const double length = std::hypot(q.x() - p.x(), q.y() - p.y());
            if (length < 1.0) return;
            const QPointF out((p.y() - q.y()) / length * text_units * 1.6, (q.x() - p.x()) / length * text_units * 1.6);
            draw_dimension(painter, p + out, q + out, length_m(std::hypot(b.x_m - a.x_m, b.y_m - a.y_m)), pen);
        };
        side(all[0].at, all[1].at);
        side(all[3].at, all[0].at);
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool marked = taken_ == i || over_ == i;
        const double half = taken_ == i ? 7.0 : 5.5;
        const QPointF middle = at(all[i].at);
        painter.setPen(QPen(theme.accent, line));
        painter.setBrush(marked ? theme.accent : theme.panel);
        if (all[i].kind == site::Handle::Kind::turn) {
            painter.drawLine(at({now->base.x_m, now->base.y_m}), middle);
            painter.drawEllipse(middle, half, half);
        } else {
            painter.drawRect(QRectF(middle - QPointF(half, half), QSizeF(2.0 * half, 2.0 * half)));
        }
    }
}

}  // namespace wg::ui
