#include "ui/documents/print_square.h"

#include <qrencode.h>

#include <QPainterPath>
#include <memory>

namespace wg::ui::paper {

PrintSquare print_square(const QString& text) {
    PrintSquare square;
    if (text.isEmpty()) return square;
    const QByteArray bytes = text.toUtf8();
    const std::unique_ptr<QRcode, void (*)(QRcode*)> code(QRcode_encodeString8bit(bytes.constData(), 0, QR_ECLEVEL_M),
                                                          QRcode_free);
    if (code == nullptr) return square;
    square.side = code->width;
    const int count = code->width * code->width;
    square.dark.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        square.dark.push_back((code->data[i] & 1) != 0);
    return square;
}

void paint_square(QPainter& painter, const PrintSquare& square, const QRectF& at) {
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.fillRect(at, Qt::white);
    // One path, neighbours in a row as one piece: no hairlines between them.
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const double step = PrintSquare::module;
    const QPointF corner = at.topLeft() + QPointF(PrintSquare::quiet * step, PrintSquare::quiet * step);
    const auto dark = [&](int row, int column) {
        return column < square.side && square.dark[static_cast<std::size_t>(row * square.side + column)];
    };
    for (int row = 0; row < square.side; ++row) {
        for (int from = 0; from < square.side; ++from) {
            if (!dark(row, from)) continue;
            int to = from;
            while (dark(row, to))
                ++to;
            path.addRect(QRectF(corner.x() + from * step, corner.y() + row * step, (to - from) * step, step));
            from = to;
        }
    }
    painter.fillPath(path, Qt::black);
    painter.restore();
}

}  // namespace wg::ui::paper
