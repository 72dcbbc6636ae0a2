#include "ui/common/flow_layout.h"

#include <QWidget>
#include <algorithm>

namespace wg::ui {

FlowLayout::~FlowLayout() {
    qDeleteAll(items_);
}

QLayoutItem* FlowLayout::takeAt(int index) {
    return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr;
}

int FlowLayout::heightForWidth(int width) const {
    return arrange(QRect(0, 0, width, 0), false);
}

QSize FlowLayout::sizeHint() const {
    // All in one line.
    const QMargins around = contentsMargins();
    int width = 0;
    int height = 0;
    for (const QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        width += item->sizeHint().width() + (width > 0 ? spacing() : 0);
        height = std::max(height, item->sizeHint().height());
    }
    return {width + around.left() + around.right(), height + around.top() + around.bottom()};
}

QSize FlowLayout::minimumSize() const {
    const QMargins around = contentsMargins();
    QSize least;
    for (const QLayoutItem* item : items_) {
        if (!item->isEmpty()) least = least.expandedTo(item->sizeHint());
    }
    return least.grownBy(around);
}

void FlowLayout::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    arrange(area, true);
}

int FlowLayout::arrange(const QRect& area, bool place) const {
    const QRect inside = area.marginsRemoved(contentsMargins());
    const bool right_to_left = parentWidget() != nullptr && parentWidget()->layoutDirection() == Qt::RightToLeft;
    int x = inside.left();
    int y = inside.top();
    int line = 0;
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        const QSize size = item->sizeHint();
        if (line > 0 && x + size.width() > inside.right() + 1) {
            x = inside.left();
            y += line + spacing();
            line = 0;
        }
        if (place) {
            const int left = right_to_left ? inside.right() + inside.left() - x - size.width() + 1 : x;
            item->setGeometry(QRect(QPoint(left, y), size));
        }
        x += size.width() + spacing();
        line = std::max(line, size.height());
    }
    return y + line - area.top() + contentsMargins().bottom();
}

}  // namespace wg::ui
