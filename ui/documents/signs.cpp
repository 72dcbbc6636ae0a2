#include "ui/documents/signs.h"

#include <QPainterPath>

#include "ui/common/theme.h"

namespace wg::ui::paper {
namespace {

// Pictures are drawn in a square of 100 by 100, y downwards.
void paint_height(QPainter& p) {
    p.drawPolyline(QPolygonF({{22, 50}, {46, 50}, {46, 66}, {62, 66}, {62, 82}}));
    p.drawLine(QPointF(66, 22), QPointF(66, 52));
    p.drawPolyline(QPolygonF({{57, 42}, {66, 53}, {75, 42}}));
}

void paint_pressure(QPainter& p) {
    p.drawArc(QRectF(28, 32, 44, 44), -30 * 16, 240 * 16);
    p.drawLine(QPointF(50, 54), QPointF(66, 42));
    p.drawLine(QPointF(50, 22), QPointF(50, 32));
}

void paint_flame(QPainter& p) {
    QPainterPath flame(QPointF(50, 20));
    flame.cubicTo(76, 42, 70, 60, 66, 68);
    flame.cubicTo(60, 80, 40, 80, 34, 68);
    flame.cubicTo(28, 56, 38, 52, 40, 42);
    flame.cubicTo(46, 46, 48, 50, 48, 54);
    flame.cubicTo(54, 44, 54, 34, 50, 20);
    p.drawPath(flame);
}

void paint_electricity(QPainter& p) {
    p.drawPolyline(QPolygonF({{56, 20}, {38, 52}, {58, 50}, {44, 80}}));
    p.drawPolyline(QPolygonF({{41, 68}, {43, 82}, {55, 74}}));
}

void paint_heat(QPainter& p) {
    for (const double x : {36.0, 50.0, 64.0}) {
        QPainterPath wave(QPointF(x, 26));
        wave.cubicTo(x + 9, 34, x - 9, 44, x, 54);
        p.drawPath(wave);
    }
    p.drawLine(QPointF(28, 64), QPointF(72, 64));
    p.drawLine(QPointF(36, 74), QPointF(64, 74));
}

void paint_hygiene(QPainter& p) {
    QPainterPath drop(QPointF(50, 20));
    drop.cubicTo(62, 40, 70, 50, 70, 60);
    drop.cubicTo(70, 84, 30, 84, 30, 60);
    drop.cubicTo(30, 50, 38, 40, 50, 20);
    p.drawPath(drop);
    p.setBrush(p.pen().color());
    for (const QPointF at : {QPointF(44, 58), QPointF(57, 55), QPointF(51, 69)})
        p.drawEllipse(at, 3.0, 3.0);
}

}  // namespace

void paint_sign(QPainter& painter, Sign sign, const QRectF& frame) {
    const QColor ink = paper_theme().text;
    const double side = std::min(frame.width(), frame.height());
    painter.save();
    painter.translate(frame.center().x() - side / 2.0, frame.center().y() - side / 2.0);
    painter.scale(side / 100.0, side / 100.0);
    painter.setPen(QPen(ink, sign == Sign::stop ? 7.0 : 4.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolygon(QPolygonF({{50, 3}, {97, 50}, {50, 97}, {3, 50}}));
    painter.setPen(QPen(ink, 5.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    switch (sign) {
        case Sign::stop: painter.fillRect(QRectF(24, 41, 52, 18), ink); break;
        case Sign::caution:
            painter.drawLine(QPointF(33, 42), QPointF(67, 42));
            painter.drawLine(QPointF(33, 58), QPointF(67, 58));
            break;
        case Sign::height: paint_height(painter); break;
        case Sign::pressure: paint_pressure(painter); break;
        case Sign::flame: paint_flame(painter); break;
        case Sign::electricity: paint_electricity(painter); break;
        case Sign::heat: paint_heat(painter); break;
        case Sign::hygiene: paint_hygiene(painter); break;
    }
    painter.restore();
}

}  // namespace wg::ui::paper
