#include "ui/documents/page_view.h"

#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>

#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr double screen_dpi = 96.0;
constexpr double gap_px = 16.0;
constexpr double least_zoom = 0.25;
constexpr double most_zoom = 4.0;

}  // namespace

PageView::PageView(QWidget* parent) : QAbstractScrollArea(parent) {
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);
    verticalScrollBar()->setSingleStep(40);
    setAccessibleName(tr("Pages as they will be printed"));
}

double PageView::scale() const {
    return zoom_ * screen_dpi / paper::units_per_inch;
}

QSizeF PageView::page_size() const {
    const paper::Sheet sheet = pages_.empty() ? paper::Sheet() : pages_.front().sheet;
    return {sheet.width * scale(), sheet.height * scale()};
}

double PageView::page_step() const {
    return page_size().height() + gap_px;
}

void PageView::set_pages(std::vector<paper::Page> pages) {
    const int at = verticalScrollBar()->value();
    pages_ = std::move(pages);
    pictures_.assign(pages_.size(), QPixmap());
    if (fitted_) fit_width();
    update_bars();
    verticalScrollBar()->setValue(at);
    viewport()->update();
    Q_EMIT view_changed();
}

int PageView::current_page() const {
    if (pages_.empty()) return 0;
    const double middle = verticalScrollBar()->value() + viewport()->height() / 2.0;
    return std::clamp(static_cast<int>(middle / page_step()) + 1, 1, page_count());
}

void PageView::go_to_page(int page) {
    verticalScrollBar()->setValue(static_cast<int>((std::clamp(page, 1, std::max(1, page_count())) - 1) * page_step()));
}

void PageView::set_zoom(double zoom) {
    zoom = std::clamp(zoom, least_zoom, most_zoom);
    fitted_ = false;
    if (std::fabs(zoom - zoom_) < 1e-6) return;
    // The same part of the page stays in view.
    const double share = verticalScrollBar()->value() / std::max(1.0, page_step());
    zoom_ = zoom;
    pictures_.assign(pages_.size(), QPixmap());
    update_bars();
    verticalScrollBar()->setValue(static_cast<int>(share * page_step()));
    viewport()->update();
    Q_EMIT view_changed();
}

void PageView::fit_width() {
    const double room = viewport()->width() - 2.0 * gap_px;
    const double width = pages_.empty() ? paper::Sheet().width : pages_.front().sheet.width;
    set_zoom(std::min(1.6, room / (width * screen_dpi / paper::units_per_inch)));
    fitted_ = true;
}

void PageView::update_bars() {
    const double height = gap_px + static_cast<double>(pages_.size()) * page_step();
    verticalScrollBar()->setRange(0, std::max(0, static_cast<int>(height) - viewport()->height()));
    verticalScrollBar()->setPageStep(viewport()->height());
    const double width = page_size().width() + 2.0 * gap_px;
    horizontalScrollBar()->setRange(0, std::max(0, static_cast<int>(width) - viewport()->width()));
    horizontalScrollBar()->setPageStep(viewport()->width());
}

const QPixmap& PageView::picture_of(std::size_t page) {
    QPixmap& picture = pictures_[page];
    if (picture.isNull()) {
        const double ratio = devicePixelRatioF();
        picture = QPixmap((page_size() * ratio).toSize());
        picture.setDevicePixelRatio(ratio);
        picture.fill(Qt::white);
        QPainter painter(&picture);
        painter.scale(scale(), scale());
        paper::paint_page(painter, pages_[page]);
    }
    return picture;
}

void PageView::paintEvent(QPaintEvent*) {
    QPainter painter(viewport());
    const Theme& theme = current_theme();
    painter.fillRect(viewport()->rect(), theme.ground);
    const QSizeF size = page_size();
    const double x = std::max(gap_px, (viewport()->width() - size.width()) / 2.0) - horizontalScrollBar()->value();
    for (std::size_t i = 0; i < pages_.size(); ++i) {
        const double y = gap_px + static_cast<double>(i) * page_step() - verticalScrollBar()->value();
        if (y > viewport()->height() || y + size.height() < 0.0) continue;
        const QRectF frame(QPointF(std::round(x), std::round(y)), size);
        painter.drawPixmap(frame.topLeft(), picture_of(i));
        painter.setPen(QPen(theme.muted, 1.0));
        painter.drawRect(frame);
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.accent, 2.0));
        painter.drawRect(viewport()->rect().adjusted(1, 1, -1, -1));
    }
}

void PageView::resizeEvent(QResizeEvent* event) {
    QAbstractScrollArea::resizeEvent(event);
    if (fitted_) fit_width();
    update_bars();
}

void PageView::wheelEvent(QWheelEvent* event) {
    if (event->modifiers() & Qt::ControlModifier) {
        set_zoom(zoom_ * std::pow(1.0015, event->angleDelta().y()));
        event->accept();
        return;
    }
    QAbstractScrollArea::wheelEvent(event);
}

void PageView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_PageDown:
        case Qt::Key_Space: go_to_page(current_page() + 1); break;
        case Qt::Key_PageUp: go_to_page(current_page() - 1); break;
        case Qt::Key_Home: go_to_page(1); break;
        case Qt::Key_End: go_to_page(page_count()); break;
        case Qt::Key_Plus: set_zoom(zoom_ * 1.25); break;
        case Qt::Key_Minus: set_zoom(zoom_ / 1.25); break;
        case Qt::Key_0: fit_width(); break;
        default: QAbstractScrollArea::keyPressEvent(event); return;
    }
    event->accept();
}

void PageView::scrollContentsBy(int, int) {
    viewport()->update();
    Q_EMIT view_changed();
}

}  // namespace wg::ui
