#include "ui/visit/underlay_tool.h"

#include <cmath>

#include "core/sketch/typed.h"
#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/photo_edits.h"

namespace wg::ui {
namespace {

sketch::Underlay lie_of(const UnderlayPicture& picture) {
    return {picture.metres_per_pixel, picture.turn_deg, picture.origin};
}

UnderlayPicture lying(UnderlayPicture picture, const sketch::Underlay& lie) {
    picture.metres_per_pixel = lie.metres_per_pixel;
    picture.turn_deg = lie.turn_deg;
    picture.origin = lie.origin;
    return picture;
}

}  // namespace

UnderlayTool::UnderlayTool(JobSession& session, std::string underlay_id, Task task)
    : session_(session), id_(std::move(underlay_id)), task_(task) {}

const UnderlayPicture* UnderlayTool::picture() const {
    for (const UnderlayPicture& one : session_.job().site.underlays)
        if (one.id == id_) return &one;
    return nullptr;
}

bool UnderlayTool::finished() const {
    return ended_ || picture() == nullptr;
}

void UnderlayTool::hover(Point2 at, double, Qt::KeyboardModifiers) {
    pointer_ = at;
}

bool UnderlayTool::press(Point2 at, double, Qt::KeyboardModifiers) {
    problem_.clear();
    pointer_ = at;
    if (task_ == Task::move) {
        dragging_ = true;
        grabbed_ = at;
    } else if (line_.size() < 2) {
        line_.push_back(at);
    }
    return true;
}

void UnderlayTool::drag(Point2 at, double, Qt::KeyboardModifiers) {
    pointer_ = at;
    if (!dragging_) return;
    move_by(at.x_m - grabbed_.x_m, at.y_m - grabbed_.y_m);
    grabbed_ = at;
}

void UnderlayTool::release() {
    if (dragging_) session_.end_merge();
    dragging_ = false;
}

void UnderlayTool::move_by(double dx_m, double dy_m) {
    const UnderlayPicture* now = picture();
    if (now == nullptr) return;
    UnderlayPicture moved = *now;
    moved.origin = {moved.origin.x_m + dx_m, moved.origin.y_m + dy_m};
    set_underlay(session_, moved, QStringLiteral("underlay ") + qs(id_));
}

void UnderlayTool::take_typed() {
    const UnderlayPicture* now = picture();
    if (now == nullptr || line_.size() < 2) return;
    const sketch::Underlay lie = lie_of(*now);
    const auto pixel = [&](const Point2& p) {
        const Point2 in_picture = lie.to_picture(p);
        return sketch::Pixel{in_picture.x_m, in_picture.y_m};
    };
    if (task_ == Task::scale) {
        const auto length = sketch::length_m(typed_.toStdString());
        const auto fitted = length ? sketch::scaled(lie, pixel(line_[0]), pixel(line_[1]), length.value())
                                   : Result<sketch::Underlay>(length.problems());
        if (!fitted) {
            problem_ = qs(fitted.problems().front().text());
            return;
        }
        UnderlayPicture changed = lying(*now, fitted.value());
        changed.scaled = true;
        set_underlay(session_, changed);
    } else {
        const auto bearing_deg = sketch::angle_deg(typed_.toStdString());
        const auto fitted = bearing_deg ? sketch::turned_to(lie, pixel(line_[0]), pixel(line_[1]), bearing_deg.value(),
                                                            session_.job().site.sketch_up_azimuth_deg)
                                        : Result<sketch::Underlay>(bearing_deg.problems());
        if (!fitted) {
            problem_ = qs(fitted.problems().front().text());
            return;
        }
        UnderlayPicture changed = lying(*now, fitted.value());
        changed.turned = true;
        set_underlay(session_, changed);
    }
    ended_ = true;
}

bool UnderlayTool::key(const QKeyEvent& event, Point2 middle) {
    const double step = (event.modifiers() & Qt::ShiftModifier) != 0 ? 1.0 : 0.1;
    if (task_ == Task::move) {
        switch (event.key()) {
            case Qt::Key_Left: move_by(-step, 0.0); return true;
            case Qt::Key_Right: move_by(step, 0.0); return true;
            case Qt::Key_Up: move_by(0.0, step); return true;
            case Qt::Key_Down: move_by(0.0, -step); return true;
            default: break;
        }
    }
    switch (event.key()) {
        case Qt::Key_Escape: ended_ = true; return true;
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (task_ == Task::move)
                ended_ = true;
            else if (line_.size() < 2)
                line_.push_back(line_.empty() ? middle : pointer_);
            else
                take_typed();
            return true;
        case Qt::Key_Backspace:
            problem_.clear();
            if (!typed_.isEmpty())
                typed_.chop(1);
            else if (!line_.empty())
                line_.pop_back();
            return true;
        default: break;
    }
    const QString text = event.text();
    if (line_.size() < 2 || text.size() != 1 || !text.front().isPrint()) return false;
    problem_.clear();
    typed_ += text;
    return true;
}

QString UnderlayTool::prompt() const {
    if (!problem_.isEmpty()) return problem_;
    if (task_ == Task::move) return tr("Drag the picture. Enter: it lies right.");
    if (line_.empty())
        return task_ == Task::scale ? tr("Click one end of a length you know.")
                                    : tr("Click the beginning of a line whose bearing you know.");
    if (line_.size() == 1) return tr("Click its other end.");
    return task_ == Task::scale ? tr("How long is it? %1   Enter: take it.").arg(typed_)
                                : tr("Which true bearing has it? %1   Enter: take it.").arg(typed_);
}

QString UnderlayTool::words() const {
    return tr("Backspace: back. Escape: leave it as it is.");
}

void UnderlayTool::paint(QPainter& painter, const SiteView& view, double, const Theme& theme) const {
    if (line_.empty()) return;
    const QPointF from = view.map(line_[0].x_m, line_[0].y_m);
    const Point2 end = line_.size() > 1 ? line_[1] : pointer_;
    const QPointF to = view.map(end.x_m, end.y_m);
    painter.setPen(QPen(theme.accent, 2.0 * theme.line_scale));
    painter.drawLine(from, to);
    painter.setBrush(theme.panel);
    painter.drawEllipse(from, 4.0, 4.0);
    painter.drawEllipse(to, 4.0, 4.0);
    if (task_ != Task::turn) return;
    // The bearing runs from the first end to the second: an arrow head says so.
    const double angle = std::atan2(to.y() - from.y(), to.x() - from.x());
    for (const double side : {2.6, -2.6})
        painter.drawLine(to, to + QPointF(std::cos(angle + side), std::sin(angle + side)) * 12.0);
}

}  // namespace wg::ui
