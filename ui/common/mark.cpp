#include "ui/common/mark.h"

#include <QCoreApplication>
#include <QPainterPath>
#include <cmath>

namespace wg::ui {
namespace {

QPolygonF octagon(const QRectF& area) {
    const double cut = area.width() * 0.2929;  // 1 - 1/sqrt(2): all eight sides equal
    return {area.topLeft() + QPointF(cut, 0),     area.topRight() - QPointF(cut, 0),
            area.topRight() + QPointF(0, cut),    area.bottomRight() - QPointF(0, cut),
            area.bottomRight() - QPointF(cut, 0), area.bottomLeft() + QPointF(cut, 0),
            area.bottomLeft() - QPointF(0, cut),  area.topLeft() + QPointF(0, cut)};
}

}  // namespace

Mark mark_of(Severity severity) noexcept {
    switch (severity) {
        case Severity::stop: return Mark::stop;
        case Severity::caution: return Mark::caution;
        case Severity::note: return Mark::note;
    }
    return Mark::note;
}

QColor colour_of(Mark mark, const Theme& theme) {
    switch (mark) {
        case Mark::stop: return theme.stop;
        case Mark::caution: return theme.caution;
        case Mark::note: return theme.note;
        case Mark::ready: return theme.ready;
        case Mark::begun:
        case Mark::empty: return theme.muted;
    }
    return theme.muted;
}

QString word_of(Mark mark) {
    switch (mark) {
        case Mark::stop: return QCoreApplication::translate("Mark", "stop");
        case Mark::caution: return QCoreApplication::translate("Mark", "caution");
        case Mark::note: return QCoreApplication::translate("Mark", "note");
        case Mark::ready: return QCoreApplication::translate("Mark", "ready");
        case Mark::begun: return QCoreApplication::translate("Mark", "begun");
        case Mark::empty: return QCoreApplication::translate("Mark", "empty");
    }
    return {};
}

void paint_mark(QPainter& painter, const QRectF& area, Mark mark, const Theme& theme) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor colour = colour_of(mark, theme);
    const double side = std::min(area.width(), area.height());
    const QRectF box(area.center() - QPointF(side / 2.0, side / 2.0) + QPointF(1, 1), QSizeF(side - 2.0, side - 2.0));
    const double pen_width = std::max(1.4, side / 11.0) * std::sqrt(theme.line_scale);
    const QPen line(colour, pen_width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    const QPen cut_out(theme.panel, pen_width * 1.25, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
    const QPointF middle = box.center();
    const double r = box.width() / 2.0;
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    switch (mark) {
        case Mark::stop:
            painter.drawPolygon(octagon(box));
            painter.setPen(cut_out);
            painter.drawLine(middle - QPointF(r * 0.5, 0), middle + QPointF(r * 0.5, 0));
            break;
        case Mark::caution: {
            painter.setPen(line);
            painter.setBrush(Qt::NoBrush);
            const double in = pen_width / 2.0;
            painter.drawPolygon(QPolygonF{QPointF(middle.x(), box.top() + in),
                                          box.bottomRight() - QPointF(in, in * 1.5),
                                          box.bottomLeft() + QPointF(in, -in * 1.5)});
            painter.setPen(Qt::NoPen);
            painter.setBrush(colour);
            painter.drawEllipse(middle + QPointF(0, r * 0.28), pen_width * 0.85, pen_width * 0.85);
            break;
        }
        case Mark::note: {
            painter.setPen(line);
            painter.setBrush(Qt::NoBrush);
            const double in = r * 0.18;
            painter.drawRoundedRect(box.adjusted(in, in, -in, -in), 1.5, 1.5);
            painter.drawLine(middle + QPointF(-r * 0.38, -r * 0.2), middle + QPointF(r * 0.38, -r * 0.2));
            painter.drawLine(middle + QPointF(-r * 0.38, r * 0.25), middle + QPointF(r * 0.1, r * 0.25));
            break;
        }
        case Mark::ready:
            painter.drawEllipse(box);
            painter.setPen(cut_out);
            painter.setBrush(Qt::NoBrush);
            painter.drawPolyline(QPolygonF{middle + QPointF(-r * 0.45, r * 0.02), middle + QPointF(-r * 0.1, r * 0.38),
                                           middle + QPointF(r * 0.48, -r * 0.35)});
            break;
        case Mark::begun:
            painter.drawPie(box.adjusted(1, 1, -1, -1), 90 * 16, 180 * 16);
            painter.setPen(line);
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(box.adjusted(1, 1, -1, -1));
            break;
        case Mark::empty:
            painter.setPen(line);
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(box.adjusted(1, 1, -1, -1));
            break;
    }
    painter.restore();
}

QIcon mark_icon(Mark mark, const Theme& theme, int size_px) {
    QIcon icon;
    // The scales that screens have: one that is scaled down afterwards has ragged edges.
    for (const double scale : {1.0, 1.25, 1.5, 1.75, 2.0, 3.0}) {
        const auto side = static_cast<int>(std::lround(size_px * scale));
        QPixmap pixmap(side, side);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        paint_mark(painter, pixmap.rect(), mark, theme);
        painter.end();
        pixmap.setDevicePixelRatio(scale);
        // In a chosen row as well: the colour of the choice must not mix with that of the mark.
        for (const QIcon::Mode mode : {QIcon::Normal, QIcon::Selected})
            icon.addPixmap(pixmap, mode);
    }
    return icon;
}

}  // namespace wg::ui
