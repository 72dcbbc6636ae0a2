#include "ui/drawing/canvas.h"

#include <QFontInfo>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr double least_units_per_m = 2.0;
constexpr double most_units_per_m = 4000.0;

}  // namespace

Canvas::Canvas(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(240, 200);
}

void Canvas::fit() {
    fitted_ = true;
    const Fit to = fit_into(QRectF(rect()));
    units_per_m_ = std::clamp(to.units_per_m, least_units_per_m, most_units_per_m);
    origin_ = to.origin;
    update();
}

void Canvas::refit() {
    if (fitted_ && !dragging_) fit();
    update();
}

void Canvas::zoom_by(double factor, QPointF about) {
    const double wanted = std::clamp(units_per_m_ * factor, least_units_per_m, most_units_per_m);
    origin_ = about + (origin_ - about) * (wanted / units_per_m_);
    units_per_m_ = wanted;
    fitted_ = false;
    update();
}

double Canvas::text_units() const {
    return static_cast<double>(QFontInfo(font()).pixelSize());
}

void Canvas::paint_ground(QPainter& painter) const {
    painter.fillRect(rect(), current_theme().panel);
    if (hasFocus()) {
        painter.setPen(QPen(current_theme().accent, 2.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void Canvas::wheelEvent(QWheelEvent* event) {
    zoom_by(std::pow(1.0015, static_cast<double>(event->angleDelta().y())), event->position());
    event->accept();
}

void Canvas::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && space_held_)) {
        panning_ = true;
        pan_from_ = event->position();
        setCursor(Qt::ClosedHandCursor);
        return;
    }
    if (event->button() != Qt::LeftButton) return;
    dragging_ = true;
    press(event->position(), event->modifiers());
}

void Canvas::mouseMoveEvent(QMouseEvent* event) {
    if (panning_) {
        origin_ += event->position() - pan_from_;
        pan_from_ = event->position();
        fitted_ = false;
        update();
        return;
    }
    if (dragging_) {
        drag(event->position(), event->modifiers());
    } else {
        hover(event->position());
    }
}

void Canvas::mouseReleaseEvent(QMouseEvent* event) {
    if (panning_) {
        panning_ = false;
        unsetCursor();
        return;
    }
    if (event->button() == Qt::LeftButton && dragging_) {
        dragging_ = false;
        release(event->position());
    }
}

void Canvas::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Space:
            if (!event->isAutoRepeat()) {
                space_held_ = true;
                setCursor(Qt::OpenHandCursor);
            }
            return;
        case Qt::Key_Plus:
        case Qt::Key_Equal: zoom_by(1.25, QRectF(rect()).center()); return;
        case Qt::Key_Minus: zoom_by(0.8, QRectF(rect()).center()); return;
        case Qt::Key_0:
        case Qt::Key_F: fit(); return;
        default: QWidget::keyPressEvent(event);
    }
}

void Canvas::keyReleaseEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
        space_held_ = false;
        unsetCursor();
        return;
    }
    QWidget::keyReleaseEvent(event);
}

void Canvas::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (fitted_) fit();
}

void Canvas::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void Canvas::focusOutEvent(QFocusEvent* event) {
    space_held_ = false;
    unsetCursor();
    QWidget::focusOutEvent(event);
    update();
}

}  // namespace wg::ui
