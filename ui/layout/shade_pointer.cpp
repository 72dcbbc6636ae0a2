#include "ui/layout/shade_pointer.h"

#include <QObject>
#include <algorithm>

#include "ui/common/format.h"
#include "ui/drawing/lettering.h"

namespace wg::ui {
namespace {

/// Small shares keep a decimal: on an open roof the difference between 0.4 and 2 % tells where the horizon ends.
QString lost_words(double share) {
    return percent(share, share < 0.0995 ? 1 : 0);
}

QString beam_words(double kwh_m2) {
    return quantity(kwh_m2, QStringLiteral("kWh/m\u00b2"));
}

}  // namespace

QString shade_words_at(const site::ShadeMap& map, Point2 at, const QString& period) {
    const auto cell = site::cell_at(map, at);
    if (!cell) return {};
    return QObject::tr("%1: about %2 of direct sun lost, %3 left")
        .arg(period.isEmpty() ? QObject::tr("whole year") : period, lost_words(cell->lost_share),
             beam_words(cell->beam_kwh_m2));
}

void paint_shade_at(QPainter& painter, const site::ShadeMap& map, Point2 at, QPointF pointer, const QRectF& area,
                    double text_units, const Theme& theme) {
    const auto cell = site::cell_at(map, at);
    if (!cell) return;
    const Lettering letters(text_units);
    const QString lost = QObject::tr("about %1 lost").arg(lost_words(cell->lost_share));
    const QString reaches = QObject::tr("about %1 left").arg(beam_words(cell->beam_kwh_m2));
    const double wide = std::max(letters.width(lost), letters.width(reaches)) + 12.0;
    const double line = letters.line();
    QRectF box(pointer + QPointF(18.0, 16.0), QSizeF(wide, 2.0 * line + 8.0));
    // On the other side of the pointer where there is no room.
    if (box.right() > area.right()) box.moveRight(pointer.x() - 12.0);
    if (box.bottom() > area.bottom()) box.moveBottom(pointer.y() - 12.0);
    painter.save();
    painter.setPen(QPen(theme.text, 1.0));
    painter.setBrush(theme.panel);
    painter.drawRect(box);
    letters.draw(painter, box.topLeft() + QPointF(6.0, 4.0), Qt::AlignLeft | Qt::AlignTop, lost, theme.text);
    letters.draw(painter, box.topLeft() + QPointF(6.0, 4.0 + line), Qt::AlignLeft | Qt::AlignTop, reaches, theme.text);
    painter.restore();
}

}  // namespace wg::ui
