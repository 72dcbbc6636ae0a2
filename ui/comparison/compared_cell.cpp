#include "ui/comparison/compared_cell.h"

#include <QApplication>
#include <QPainter>
#include <algorithm>

#include "ui/common/mark.h"
#include "ui/common/theme.h"

namespace wg::ui {
namespace {

constexpr int side_px = 10;
constexpr int top_px = 4;
constexpr int gap_px = 6;
constexpr double small_print_pt = 9.0;

QFont weighed(QFont font, bool heavy) {
    font.setWeight(heavy ? QFont::DemiBold : QFont::Normal);
    return font;
}

QFont small_font_of(QFont font) {
    font.setPointSizeF(small_print_pt);
    font.setWeight(QFont::Normal);
    return font;
}

/// Where the parts of a cell go; a figure too long for its line takes several.
struct Parts {
    QFont figure_font, small_font;
    QString figure, range, change;
    QRect best, figure_at, below;
    int height = 0;
};

Parts parts_of(const QStyleOptionViewItem& option, const QModelIndex& index) {
    Parts p;
    p.figure = index.data(Qt::DisplayRole).toString();
    p.range = index.data(ComparedCellDelegate::small_print).toString();
    p.change = index.data(ComparedCellDelegate::signed_change).toString();
    const QFont base = option.widget != nullptr ? option.widget->font() : option.font;
    p.figure_font = weighed(base, index.data(ComparedCellDelegate::is_different).toBool());
    p.small_font = small_font_of(base);
    const QFontMetrics metrics(p.figure_font), small(p.small_font);
    const QRect inner = option.rect.adjusted(side_px, top_px, -side_px, -top_px);
    int left = inner.left();
    if (index.data(ComparedCellDelegate::is_best).toBool()) {
        const int mark = small.height() - 2;
        p.best = QRect(left, inner.top(), mark + 4 + small.horizontalAdvance(ComparedCellDelegate::tr("best")),
                       metrics.height());
        left = p.best.right() + gap_px;
    }
    const QRect room(left, inner.top(), std::max(20, inner.right() + 1 - left), 1000);
    const QRect taken = metrics.boundingRect(room, Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap, p.figure);
    p.figure_at = QRect(room.left(), room.top(), room.width(), std::max(taken.height(), metrics.height()));
    p.height = p.figure_at.height();
    if (!p.range.isEmpty() || !p.change.isEmpty()) {
        const int change =
            p.change.isEmpty() ? 0 : QFontMetrics(weighed(p.small_font, true)).horizontalAdvance(p.change) + gap_px;
        const QRect under(inner.left() + change, p.figure_at.bottom() + 1, std::max(20, inner.width() - change), 1000);
        const QRect small_taken = small.boundingRect(under, Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap, p.range);
        p.below = QRect(inner.left(), under.top(), inner.width(), std::max(small_taken.height(), small.height()));
        p.height += p.below.height();
    }
    return p;
}

}  // namespace

QSize ComparedCellDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    return {120, parts_of(option, index).height + 2 * top_px};
}

void ComparedCellDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const {
    QStyleOptionViewItem ground = option;
    initStyleOption(&ground, index);
    ground.text.clear();
    const QStyle* style = option.widget != nullptr ? option.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &ground, painter, option.widget);

    const Theme& theme = current_theme();
    const Parts p = parts_of(option, index);
    painter->save();
    painter->setClipRect(option.rect);
    painter->translate(0, std::max(0, (option.rect.height() - p.height) / 2 - top_px));  // level with the row's name
    painter->setRenderHint(QPainter::Antialiasing);
    if (!p.best.isNull()) {
        const int mark = QFontMetrics(p.small_font).height() - 2;
        paint_mark(*painter, QRectF(p.best.left(), p.best.center().y() - mark / 2.0, mark, mark), Mark::ready, theme);
        painter->setFont(p.small_font);
        painter->setPen(theme.text);
        painter->drawText(p.best.adjusted(mark + 4, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, tr("best"));
    }
    painter->setFont(p.figure_font);
    painter->setPen(index.data(is_known).toBool() ? theme.text : theme.muted);
    painter->drawText(p.figure_at, Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap, p.figure);
    if (!p.below.isNull()) {
        const QFont heavy = weighed(p.small_font, true);
        painter->setFont(heavy);
        painter->setPen(theme.text);
        painter->drawText(p.below, Qt::AlignLeft | Qt::AlignTop, p.change);
        const int change = p.change.isEmpty() ? 0 : QFontMetrics(heavy).horizontalAdvance(p.change) + gap_px;
        painter->setFont(p.small_font);
        painter->setPen(theme.muted);
        painter->drawText(p.below.adjusted(change, 0, 0, 0), Qt::AlignRight | Qt::AlignTop | Qt::TextWordWrap, p.range);
    }
    painter->restore();
}

}  // namespace wg::ui
