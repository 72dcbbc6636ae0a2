#include "ui/common/flow_layout.h"

#include <QWidget>
#include <algorithm>
#include <vector>

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
    struct Spot {
        QLayoutItem* item;
        QRect at;
    };
    std::vector<Spot> line;
    int x = inside.left();
    int y = inside.top();
    int height = 0;
    // Tools of different heights stand with their middles level.
    const auto finish_line = [&] {
        for (Spot& spot : line) {
            spot.at.moveTop(y + (height - spot.at.height()) / 2);
            if (right_to_left) spot.at.moveRight(inside.right() + inside.left() - spot.at.left());
            if (place) spot.item->setGeometry(spot.at);
        }
        line.clear();
    };
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;
        const QSize size = item->sizeHint();
        if (!line.empty() && x + size.width() > inside.right() + 1) {
            finish_line();
            x = inside.left();
            y += height + spacing();
            height = 0;
        }
        line.push_back({item, QRect(QPoint(x, y), size)});
        x += size.width() + spacing();
        height = std::max(height, size.height());
    }
    finish_line();
    return y + height - area.top() + contentsMargins().bottom();
}

}  // namespace wg::ui
