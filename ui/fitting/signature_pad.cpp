#include "ui/fitting/signature_pad.h"

#include <QBuffer>
#include <QImage>
#include <QMouseEvent>
#include <QPainter>

#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int png_margin_px = 12;
constexpr double png_scale = 2.0;  ///< sharp on paper

}  // namespace

SignaturePad::SignaturePad(QWidget* parent) : QWidget(parent) {
    setCursor(Qt::CrossCursor);
    setAttribute(Qt::WA_AcceptTouchEvents, false);  // touch arrives as mouse events, which is enough for one finger
    setAccessibleName(tr("Sign here"));
}

void SignaturePad::clear() {
    strokes_.clear();
    down_ = false;
    update();
    Q_EMIT changed();
}

void SignaturePad::draw_strokes(QPainter& painter, const QColor& ink) const {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(ink, 2.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    for (const QPolygonF& stroke : strokes_) {
        if (stroke.size() == 1) {
            painter.drawPoint(stroke.front());
        } else {
            painter.drawPolyline(stroke);
        }
    }
}

QByteArray SignaturePad::png() const {
    if (strokes_.empty()) return {};
    QRectF box;
    for (const QPolygonF& stroke : strokes_)
        box = box.united(stroke.boundingRect().adjusted(-1, -1, 1, 1));
    box.adjust(-png_margin_px, -png_margin_px, png_margin_px, png_margin_px);
    QImage image((box.size() * png_scale).toSize(), QImage::Format_Grayscale8);
    image.fill(Qt::white);
    {
        QPainter painter(&image);
        painter.scale(png_scale, png_scale);
        painter.translate(-box.topLeft());
        draw_strokes(painter, Qt::black);
    }
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

void SignaturePad::paintEvent(QPaintEvent*) {
    const Theme& theme = current_theme();
    QPainter painter(this);
    painter.fillRect(rect(), theme.panel);
    painter.setPen(QPen(theme.muted, theme.line_scale));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -1.0, -1.0));
    const double line_y = height() * 0.75;
    painter.drawLine(QPointF(16.0, line_y), QPointF(width() - 16.0, line_y));
    if (strokes_.empty()) {
        painter.drawText(QRectF(16.0, line_y + 4.0, width() - 32.0, height() - line_y - 4.0),
                         Qt::AlignLeft | Qt::AlignTop, tr("Sign above the line"));
    }
    draw_strokes(painter, theme.text);
}

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    down_ = true;
    strokes_.push_back(QPolygonF{event->position()});
    update();
    Q_EMIT changed();
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    if (!down_ || strokes_.empty()) return;
    strokes_.back() << event->position();
    update();
}

void SignaturePad::mouseReleaseEvent(QMouseEvent*) {
    down_ = false;
}

}  // namespace wg::ui
