#include "ui/drawing/picture_view.h"

#include <QFontInfo>
#include <QImage>
#include <QMouseEvent>
#include <QSaveFile>

namespace wg::ui {
namespace {

constexpr double margin = 8.0;

}  // namespace

PictureView::PictureView(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void PictureView::show_picture(Paint paint, Words words) {
    paint_ = std::move(paint);
    words_ = std::move(words);
    update();
}

double PictureView::text_units() const {
    return static_cast<double>(QFontInfo(base_font(10.0)).pixelSize());
}

bool PictureView::save(const QString& path) const {
    if (!paint_) return false;
    constexpr double scale = 2.0;
    const QSizeF drawn = QSizeF(size()).expandedTo(QSizeF(800.0, 500.0));
    QImage image((drawn * scale).toSize(), QImage::Format_RGB32);
    image.fill(current_theme().panel);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paint_(painter, QRectF(QPointF(0.0, 0.0), drawn).adjusted(margin, margin, -margin, -margin), current_theme(),
           text_units());
    painter.end();
    QSaveFile file(path);
    return file.open(QIODevice::WriteOnly) && image.save(&file, "PNG") && file.commit();
}

void PictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), current_theme().panel);
    if (paint_) {
        paint_(painter, QRectF(rect()).adjusted(margin, margin, -margin, -margin), current_theme(), text_units());
    }
}

void PictureView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        Q_EMIT pressed_at(QRectF(rect()).adjusted(margin, margin, -margin, -margin), event->position(), text_units());
    }
    QWidget::mousePressEvent(event);
}

void PictureView::mouseMoveEvent(QMouseEvent* event) {
    const QString text =
        words_ ? words_(QRectF(rect()).adjusted(margin, margin, -margin, -margin), event->position(), text_units())
               : QString();
    Q_EMIT pointed_at(text);
    QWidget::mouseMoveEvent(event);
}

void PictureView::leaveEvent(QEvent* event) {
    Q_EMIT pointed_at(QString());
    QWidget::leaveEvent(event);
}

}  // namespace wg::ui
