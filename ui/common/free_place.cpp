#include "ui/common/free_place.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QTabBar>
#include <algorithm>
#include <array>
#include <cstdint>

namespace wg::ui {
namespace {

constexpr int place_step_px = 8;

bool is_control(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) != nullptr ||
           qobject_cast<const QLineEdit*>(&widget) != nullptr || qobject_cast<const QComboBox*>(&widget) != nullptr ||
           qobject_cast<const QAbstractSpinBox*>(&widget) != nullptr ||
           qobject_cast<const QTabBar*>(&widget) != nullptr || qobject_cast<const QHeaderView*>(&widget) != nullptr;
}

/// The part of a widget that nothing above it cuts off: what a scroll area hides can be neither clicked nor read.
QRect seen_of(const QWidget& one, QRect of, const QWidget& page) {
    of = QRect(one.mapTo(&page, of.topLeft()), of.size());
    for (const QWidget* above = one.parentWidget(); above != nullptr && above != &page; above = above->parentWidget())
        of &= QRect(above->mapTo(&page, QPoint()), above->size());
    return of;
}

/// Down to the last row; nothing where there are none.
QRect rows_of_list(const QAbstractItemView& list) {
    const QAbstractItemModel* model = list.model();
    if (model == nullptr || model->rowCount(list.rootIndex()) == 0) return {};
    const QRect view = list.viewport()->rect();
    const QModelIndex last = model->index(model->rowCount(list.rootIndex()) - 1, 0, list.rootIndex());
    const QRect of_last = list.visualRect(last);
    // A tree's last row may stand above others of its own; then all of it counts.
    if (!of_last.isValid() || model->hasChildren(last)) return view;
    return view & QRect(view.topLeft(), QPoint(view.right(), of_last.bottom()));
}

QRect text_of_widget(const QWidget& one) {
    if (qobject_cast<const QHeaderView*>(&one) != nullptr) return {};  // a list to Qt; among the controls here
    if (const auto* label = qobject_cast<const QLabel*>(&one)) return label->text().isEmpty() ? QRect() : one.rect();
    if (const auto* list = qobject_cast<const QAbstractItemView*>(&one)) return rows_of_list(*list);
    return {};
}

template <class Of>
std::vector<QRect> parts_of(const QWidget& page, const QWidget* without, const Of& of) {
    std::vector<QRect> out;
    for (const QWidget* one : page.findChildren<QWidget*>()) {
        if (!one->isVisibleTo(&page)) continue;
        if (without != nullptr && (one == without || without->isAncestorOf(one))) continue;
        const QRect part = of(*one);
        if (part.isEmpty()) continue;
        if (const QRect seen = seen_of(*one, part, page); !seen.isEmpty()) out.push_back(seen);
    }
    return out;
}

}  // namespace

std::vector<QRect> controls_of(const QWidget& page, const QWidget* without) {
    return parts_of(page, without, [](const QWidget& one) { return is_control(one) ? one.rect() : QRect(); });
}

std::vector<QRect> scroll_bars_of(const QWidget& page, const QWidget* without) {
    return parts_of(page, without, [](const QWidget& one) {
        return qobject_cast<const QScrollBar*>(&one) != nullptr ? one.rect() : QRect();
    });
}

std::vector<QRect> texts_of(const QWidget& page, const QWidget* without) {
    return parts_of(page, without, [](const QWidget& one) { return text_of_widget(one); });
}

QRect free_place(QSize size, const QRect& room, const std::vector<QRect>& controls, const std::vector<QRect>& bars,
                 const std::vector<QRect>& texts) {
    size = size.boundedTo(room.size());
    const int spare = room.width() - size.width();
    const auto covered = [&](const QRect& place) {
        const auto count = [&place](const std::vector<QRect>& of) -> std::int64_t {
            return std::count_if(of.begin(), of.end(), [&](const QRect& one) { return one.intersects(place); });
        };
        std::int64_t area = 0;  // of texts, since a list is long
        for (const QRect& one : texts) {
            const QRect both = one & place;
            area += std::int64_t{both.width()} * both.height();
        }
        return std::array<std::int64_t, 3>{count(controls), count(bars), area};
    };
    QRect best(QPoint(room.left(), room.bottom() + 1 - size.height()), size);
    auto least = covered(best);
    constexpr std::array<std::int64_t, 3> nothing{};
    for (int y = best.top(); y >= room.top() && least > nothing; y -= place_step_px) {
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
