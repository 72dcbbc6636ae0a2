#include "ui/drawing/picture_view.h"

#include <QFontInfo>
#include <QImage>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPageSize>
#include <QPdfWriter>
#include <QSaveFile>

#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

constexpr double margin = 8.0;
constexpr double screen_dots_inch = 96.0;
constexpr double print_dots_inch = 300.0;
constexpr double points_inch = 72.0;

}  // namespace

PictureView::PictureView(QWidget* parent) : QWidget(parent) {
    setMouseTracking(true);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void PictureView::show_picture(Paint paint, Words words) {
    paint_ = std::move(paint);
    words_ = std::move(words);
    reason_.clear();
    update();
}

void PictureView::show_reason(const QString& reason) {
    show_picture({}, {});
    reason_ = reason;
}

double PictureView::text_units() const {
    return static_cast<double>(QFontInfo(base_font(10.0)).pixelSize());
}

void PictureView::set_keys(Step step, Click click) {
    step_ = std::move(step);
    click_ = std::move(click);
    setFocusPolicy(step_ ? Qt::StrongFocus : Qt::NoFocus);
}

void PictureView::paint_page(QPainter& painter, const QSizeF& page, const QString& caption) const {
    const Theme theme = paper_theme();
    const Lettering letters(text_units());
    QRectF area = QRectF(QPointF(0.0, 0.0), page).adjusted(margin, margin, -margin, -margin);
    painter.fillRect(QRectF(QPointF(0.0, 0.0), page), theme.panel);
    if (!caption.isEmpty()) {
        QFont font = base_font(10.0);
        font.setPixelSize(static_cast<int>(text_units()));
        painter.setFont(font);
        painter.setPen(theme.muted);
        // Long names of clients and choices take a second line.
        const QRectF most(area.left(), area.top(), area.width(), area.height() / 4.0);
        const QRectF used = painter.boundingRect(most, static_cast<int>(Qt::TextWordWrap), caption);
        const QRectF place(area.left(), area.bottom() - used.height(), area.width(), used.height());
        painter.drawText(place, static_cast<int>(Qt::TextWordWrap), caption);
        area.setBottom(place.top() - letters.line() * 0.4);
    }
    saving_ = true;
    paint_(painter, area, theme, text_units());
    saving_ = false;
}

bool PictureView::save(const QString& path, const QString& caption) const {
    if (!paint_) return false;
    const QSizeF page = QSizeF(size()).expandedTo(QSizeF(800.0, 500.0));
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly)) return false;
    if (path.endsWith(QStringLiteral(".pdf"), Qt::CaseInsensitive)) {
        QPdfWriter writer(&file);
        writer.setCreator(QStringLiteral("Warmgable"));
        writer.setResolution(static_cast<int>(print_dots_inch));
        writer.setPageMargins(QMarginsF(0.0, 0.0, 0.0, 0.0));
        writer.setPageSize(QPageSize(page * (points_inch / screen_dots_inch), QPageSize::Point));
        QPainter painter(&writer);
        painter.scale(print_dots_inch / screen_dots_inch, print_dots_inch / screen_dots_inch);
        paint_page(painter, page, caption);
        return painter.end() && file.commit();
    }
    constexpr double scale = print_dots_inch / screen_dots_inch;
    QImage image((page * scale).toSize(), QImage::Format_RGB32);
    image.setDotsPerMeterX(static_cast<int>(print_dots_inch / 0.0254));
    image.setDotsPerMeterY(static_cast<int>(print_dots_inch / 0.0254));
    QPainter painter(&image);
    // Lettering is in pixels: the image's own dots an inch must not scale it again.
    painter.scale(scale, scale);
    paint_page(painter, page, caption);
    painter.end();
    return image.save(&file, "PNG") && file.commit();
}

void PictureView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), current_theme().panel);
    if (paint_) {
        paint_(painter, QRectF(rect()).adjusted(margin, margin, -margin, -margin), current_theme(), text_units());
    }
    if (!paint_ && !reason_.isEmpty()) {
        painter.setPen(current_theme().muted);
        painter.setFont(base_font());
        painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap, reason_);
    }
    if (hasFocus() && step_) {
        painter.setPen(QPen(current_theme().accent, 2.0));
        painter.drawRect(rect().adjusted(1, 1, -1, -1));
    }
}

void PictureView::keyPressEvent(QKeyEvent* event) {
    const auto step = [this](int right, int up) {
        const QString text = step_(right, up);
        setAccessibleDescription(text);
        update();
        Q_EMIT pointed_at(text);
    };
    if (!step_) return QWidget::keyPressEvent(event);
    switch (event->key()) {
        case Qt::Key_Left: return step(-1, 0);
        case Qt::Key_Right: return step(1, 0);
        case Qt::Key_Up: return step(0, 1);
        case Qt::Key_Down: return step(0, -1);
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (click_) return click_(QRectF(rect()), nullptr, text_units());
            break;
        default: break;
    }
    QWidget::keyPressEvent(event);
}

void PictureView::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    update();
}

void PictureView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

void PictureView::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) {
        const QRectF area = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
        const QPointF at = event->position();
        if (click_) click_(area, &at, text_units());
        Q_EMIT pressed_at(area, at, text_units());
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
