#include "ui/common/free_place.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QTabBar>
#include <algorithm>

namespace wg::ui {
namespace {

constexpr int place_step_px = 8;

bool is_control(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
           qobject_cast<const QLineEdit*>(&widget) != nullptr || qobject_cast<const QComboBox*>(&widget) != nullptr ||
           qobject_cast<const QAbstractSpinBox*>(&widget) != nullptr ||
           qobject_cast<const QTabBar*>(&widget) != nullptr || qobject_cast<const QHeaderView*>(&widget) != nullptr;
}

}  // namespace

std::vector<QRect> controls_of(const QWidget& page, const QWidget* without) {
    std::vector<QRect> out;
    for (const QWidget* one : page.findChildren<QWidget*>()) {
        if (!is_control(*one) || !one->isVisibleTo(&page)) continue;
        if (without != nullptr && (one == without || without->isAncestorOf(one))) continue;
        // What a scroll area cuts off cannot be clicked.
        QRect seen(one->mapTo(&page, QPoint()), one->size());
        for (const QWidget* above = one->parentWidget(); above != nullptr && above != &page;
             above = above->parentWidget())
            seen &= QRect(above->mapTo(&page, QPoint()), above->size());
        if (!seen.isEmpty()) out.push_back(seen);
    }
    return out;
}

QRect free_place(QSize size, const QRect& room, const std::vector<QRect>& controls) {
    size = size.boundedTo(room.size());
    const int spare = room.width() - size.width();
    const auto covered = [&controls](const QRect& place) {
        return std::count_if(controls.begin(), controls.end(), [&](const QRect& one) { return one.intersects(place); });
    };
    QRect best(QPoint(room.left(), room.bottom() + 1 - size.height()), size);
    auto least = covered(best);
    for (int y = best.top(); y >= room.top() && least > 0; y -= place_step_px) {
        for (const int x : {0, spare / 2, spare}) {
            const QRect place(QPoint(room.left() + x, y), size);
            const auto now = covered(place);
            if (now >= least) continue;
            least = now;
            best = place;
        }
    }
    return best;
}

}  // namespace wg::ui
