#include "ui/visit/photo_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"
#include "ui/common/job_session.h"
#include "ui/common/photo_edits.h"
#include "ui/common/photo_shelf.h"
#include "ui/common/theme.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

constexpr double margin = 8.0;
constexpr double reach_px = 12.0;

QPointF in_box(const QRectF& box, const Point2& share) {
    return {box.left() + share.x_m * box.width(), box.top() + share.y_m * box.height()};
}

Point2 clamped(Point2 share) {
    return {std::clamp(share.x_m, 0.0, 1.0), std::clamp(share.y_m, 0.0, 1.0)};
}

double distance_to_line(QPointF p, QPointF a, QPointF b) {
    const QPointF d = b - a;
    const double length2 = QPointF::dotProduct(d, d);
    const double t = length2 > 0.0 ? std::clamp(QPointF::dotProduct(p - a, d) / length2, 0.0, 1.0) : 0.0;
    const QPointF off = p - (a + d * t);
    return std::hypot(off.x(), off.y());
}

void arrow(QPainter& painter, QPointF tail, QPointF tip, double width) {
    painter.drawLine(tail, tip);
    const double angle = std::atan2(tip.y() - tail.y(), tip.x() - tail.x());
    for (const double side : {2.6, -2.6})
        painter.drawLine(tip, tip + QPointF(std::cos(angle + side), std::sin(angle + side)) * width * 6.0);
}

}  // namespace

void paint_marks(QPainter& painter, const std::vector<PhotoMark>& marks, const QRectF& box, double text_units,
                 const std::string& selected_id) {
    const Theme paper = paper_theme();
    const Lettering letters(text_units, true);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (const PhotoMark& mark : marks) {
        const bool selected = mark.id == selected_id;
        const double width = text_units * (selected ? 0.34 : 0.22);
        if (mark.kind == MarkKind::arrow) {
            // Light under dark: seen on sky and on slate alike.
            painter.setPen(QPen(Qt::white, width * 2.2, Qt::SolidLine, Qt::RoundCap));
            arrow(painter, in_box(box, mark.tail), in_box(box, mark.at), width);
            painter.setPen(QPen(paper.stop, width, Qt::SolidLine, Qt::RoundCap));
            arrow(painter, in_box(box, mark.tail), in_box(box, mark.at), width);
            continue;
        }
        const QString words = qs(mark.text);
        const QRectF plate =
            letters.box(in_box(box, mark.at), Qt::AlignLeft | Qt::AlignTop, words).adjusted(-4, -2, 4, 2);
        painter.fillRect(plate, QColor(255, 255, 255, 230));
        painter.setPen(QPen(selected ? paper.stop : paper.text, selected ? 2.0 : 1.0));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(plate);
        letters.draw_in(painter, plate, words, paper.text);
    }
    painter.restore();
}

PhotoView::PhotoView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMinimumSize(240, 200);
    setAccessibleName(tr("Photograph with its marks"));
    setAccessibleDescription(tr("Page keys choose a mark, arrow keys move it, Delete removes it"));
}

void PhotoView::set_shelf(PhotoShelf* shelf) {
    shelf_ = shelf;
    if (shelf_ != nullptr) connect(shelf_, &PhotoShelf::loaded, this, [this] { update(); });
}

void PhotoView::show_photograph(JobSession* session, const std::string& photograph_id) {
    if (id_ != photograph_id) selected_.clear();
    session_ = session;
    id_ = photograph_id;
    update();
}

void PhotoView::set_hand(Hand hand) {
    hand_ = hand;
    pressed_ = false;
    setCursor(hand == Hand::choose ? Qt::ArrowCursor : Qt::CrossCursor);
    if (hand == Hand::arrow) Q_EMIT status(tr("Drag from the arrow's tail to its tip."));
    if (hand == Hand::text) Q_EMIT status(tr("Click where the words shall stand."));
    if (hand == Hand::choose) Q_EMIT status({});
}

const Photograph* PhotoView::photograph() const {
    return session_ != nullptr ? find_photograph(session_->job(), id_) : nullptr;
}

QRectF PhotoView::picture_box() const {
    const QRectF area = QRectF(rect()).adjusted(margin, margin, -margin, -margin);
    const Photograph* photo = photograph();
    const QSizeF size = photo != nullptr && shelf_ != nullptr ? QSizeF(shelf_->size_of(photo->sha256)) : QSizeF();
    if (size.isEmpty()) return area;
    const QSizeF fitted = size.scaled(area.size(), Qt::KeepAspectRatio);
    return {area.center() - QPointF(fitted.width() / 2.0, fitted.height() / 2.0), fitted};
}

Point2 PhotoView::share_at(QPointF at) const {
    const QRectF box = picture_box();
    return clamped({(at.x() - box.left()) / box.width(), (at.y() - box.top()) / box.height()});
}

void PhotoView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), current_theme().ground);
    if (hasFocus()) {
        painter.setPen(QPen(current_theme().accent, 2.0));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
    const Photograph* photo = photograph();
    if (photo == nullptr || shelf_ == nullptr) return;
    const double text_units = static_cast<double>(QFontInfo(font()).pixelSize()) * 1.15;
    const QImage image = shelf_->picture(photo->sha256);
    const QRectF box = picture_box();
    if (image.isNull()) {
        const QString problem = shelf_->problem(photo->sha256);
        painter.setPen(problem.isEmpty() ? current_theme().muted : current_theme().stop);
        painter.drawText(rect().adjusted(24, 24, -24, -24), Qt::AlignCenter | Qt::TextWordWrap,
                         problem.isEmpty() ? tr("The picture is being read \u2026") : problem);
        return;
    }
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(box, image);
    std::vector<PhotoMark> marks = photo->marks;
    if (pressed_ && hand_ == Hand::arrow) {
        PhotoMark under_way;
        under_way.tail = from_;
        under_way.at = to_;
        marks.push_back(under_way);
    }
    paint_marks(painter, marks, box, text_units, selected_.empty() ? std::string("none") : selected_);
}

const PhotoMark* PhotoView::mark_near(QPointF at) const {
    const Photograph* photo = photograph();
    if (photo == nullptr) return nullptr;
    const QRectF box = picture_box();
    const Lettering letters(static_cast<double>(QFontInfo(font()).pixelSize()) * 1.15, true);
    for (auto mark = photo->marks.rbegin(); mark != photo->marks.rend(); ++mark) {
        const bool hit = mark->kind == MarkKind::arrow
                             ? distance_to_line(at, in_box(box, mark->tail), in_box(box, mark->at)) <= reach_px
                             : letters.box(in_box(box, mark->at), Qt::AlignLeft | Qt::AlignTop, qs(mark->text))
                                   .adjusted(-6, -4, 6, 4)
                                   .contains(at);
        if (hit) return &*mark;
    }
    return nullptr;
}

const PhotoMark* PhotoView::chosen() const {
    const Photograph* photo = photograph();
    if (photo == nullptr) return nullptr;
    for (const PhotoMark& mark : photo->marks)
        if (mark.id == selected_) return &mark;
    return nullptr;
}

void PhotoView::put(Point2 tail, Point2 tip) {
    if (session_ == nullptr || photograph() == nullptr) return;
    PhotoMark mark;
    mark.at = tip;
    mark.tail = tail;
    if (hand_ == Hand::text) {
        if (words_.trimmed().isEmpty()) {
            Q_EMIT words_wanted();
            return;
        }
        mark.kind = MarkKind::text;
        mark.text = words_.trimmed().toStdString();
        mark.tail = {};
    }
    selected_ = add_mark(*session_, id_, mark);
    update();
}

void PhotoView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || photograph() == nullptr) return;
    from_ = to_ = share_at(event->position());
    pressed_ = true;
    if (hand_ == Hand::choose) {
        const PhotoMark* mark = mark_near(event->position());
        selected_ = mark != nullptr ? mark->id : std::string();
    }
    update();
}

void PhotoView::mouseMoveEvent(QMouseEvent* event) {
    if (!pressed_) return;
    const Point2 now = share_at(event->position());
    if (hand_ == Hand::choose) move_chosen(now.x_m - to_.x_m, now.y_m - to_.y_m);
    to_ = now;
    update();
}

void PhotoView::mouseReleaseEvent(QMouseEvent* event) {
    if (!pressed_ || event->button() != Qt::LeftButton) return;
    pressed_ = false;
    if (hand_ == Hand::arrow && std::hypot(to_.x_m - from_.x_m, to_.y_m - from_.y_m) > 0.01) put(from_, to_);
    if (hand_ == Hand::text) put({}, to_);
    if (hand_ == Hand::choose && session_ != nullptr) session_->end_merge();
    update();
}

void PhotoView::move_chosen(double dx, double dy) {
    const PhotoMark* mark = chosen();
    if (mark == nullptr) return;
    PhotoMark moved = *mark;
    moved.at = clamped({moved.at.x_m + dx, moved.at.y_m + dy});
    if (moved.kind == MarkKind::arrow) moved.tail = clamped({moved.tail.x_m + dx, moved.tail.y_m + dy});
    set_mark(*session_, id_, moved, QStringLiteral("mark ") + qs(moved.id));
    update();
}

void PhotoView::keyPressEvent(QKeyEvent* event) {
    const Photograph* photo = photograph();
    if (photo == nullptr) return QWidget::keyPressEvent(event);
    const double step = (event->modifiers() & Qt::ShiftModifier) != 0 ? 0.05 : 0.01;
    const auto at = std::find_if(photo->marks.begin(), photo->marks.end(),
                                 [this](const PhotoMark& mark) { return mark.id == selected_; });
    switch (event->key()) {
        case Qt::Key_Left: return move_chosen(-step, 0.0);
        case Qt::Key_Right: return move_chosen(step, 0.0);
        case Qt::Key_Up: return move_chosen(0.0, -step);
        case Qt::Key_Down: return move_chosen(0.0, step);
        case Qt::Key_PageDown:
            if (!photo->marks.empty())
                selected_ =
                    at == photo->marks.end() || at + 1 == photo->marks.end() ? photo->marks.front().id : (at + 1)->id;
            return update();
        case Qt::Key_PageUp:
            if (!photo->marks.empty())
                selected_ =
                    at == photo->marks.end() || at == photo->marks.begin() ? photo->marks.back().id : (at - 1)->id;
            return update();
        case Qt::Key_Return:
        case Qt::Key_Enter:
            // Without a pointer: in the middle, to be moved with the arrow keys.
            if (hand_ != Hand::choose) put({0.4, 0.4}, {0.5, 0.5});
            return;
        case Qt::Key_Delete:
            if (at != photo->marks.end()) {
                const std::string id = at->id;
                selected_.clear();
                remove_mark(*session_, id_, id);
                update();
            }
            return;
        default: QWidget::keyPressEvent(event);
    }
}

void PhotoView::keyReleaseEvent(QKeyEvent* event) {
    if (!event->isAutoRepeat() && session_ != nullptr && event->key() != Qt::Key_Shift) session_->end_merge();
    QWidget::keyReleaseEvent(event);
}

}  // namespace wg::ui
