#include "ui/drawing/tornado_painter.h"

#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double bar_height = 0.62;  // of a row

std::size_t shown(const TornadoPicture& picture) {
    return std::min(picture.rows.size(), most_tornado_rows);
}

QColor low_ink(const Theme& theme) {
    return theme.kind == ThemeKind::sunlight ? QColor(0xd0d0d0) : quantity_colour(0.30);
}
QColor high_ink(const Theme& theme) {
    return theme.kind == ThemeKind::sunlight ? QColor(0x606060) : quantity_colour(0.72);
}

std::vector<LegendItem> legend(const Theme& theme) {
    const auto fill = [&theme](const QColor& ink) {
        return [ink, line = theme.muted](QPainter& painter, const QRectF& box) {
            painter.setPen(QPen(line, 0.8));
            painter.setBrush(ink);
            painter.drawRect(box);
        };
    };
    return {{QObject::tr("Input at its low"), fill(low_ink(theme))},
            {QObject::tr("Input at its high"), fill(high_ink(theme))}};
}

}  // namespace

PlotFrame tornado_frame(const TornadoPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    double widest = 0.0;
    double low = picture.nominal, high = picture.nominal;
    for (std::size_t i = 0; i < shown(picture); ++i) {
        const TornadoPicture::Row& row = picture.rows[i];
        widest = std::max(widest, letters.width(row.label));
        low = std::min({low, row.at_low, row.at_high});
        high = std::max({high, row.at_low, row.at_high});
    }
    PlotFrame frame;
    frame.plot = plot_area(area, letters, std::min(widest, area.width() * 0.4), 1);
    frame.plot.setLeft(frame.plot.left() - letters.line());  // no title on this side
    frame.plot.setRight(frame.plot.right() - letters.width(QStringLiteral("about 100\u202f%")));  // for the shares
    const double room = std::max(0.12 * (high - low), 1e-9 + 1e-3 * std::fabs(picture.nominal));
    frame.x_from = low - room;
    frame.x_to = high + room;
    frame.y_from = static_cast<double>(std::max<std::size_t>(1, shown(picture)));
    frame.y_to = 0.0;  // first row on top
    return frame;
}

void paint_tornado(QPainter& painter, const TornadoPicture& picture, const QRectF& area, const Theme& theme,
                   double text_units) {
    if (picture.rows.empty()) return;
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = tornado_frame(picture, area, text_units);
    Axis x;
    x.title = picture.title;
    const double step = round_step(frame.x_to - frame.x_from, 6.0);
    for (double at = std::ceil(frame.x_from / step) * step; at <= frame.x_to; at += step)
        x.marks.push_back({at, number(at, step < 1.0 ? std::max(1, picture.decimals) : 0), false});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, {});
    const double gap = 0.5 * (1.0 - bar_height);
    for (std::size_t i = 0; i < shown(picture); ++i) {
        const TornadoPicture::Row& row = picture.rows[i];
        const auto top = static_cast<double>(i) + gap;
        painter.setPen(QPen(theme.muted, 0.8 * ink.line));
        for (const auto& [at, colour] :
             {std::pair{row.at_low, low_ink(theme)}, std::pair{row.at_high, high_ink(theme)}}) {
            painter.setBrush(colour);
            painter.drawRect(QRectF(frame.map(picture.nominal, top), frame.map(at, top + bar_height)).normalized());
        }
        const double middle = static_cast<double>(i) + 0.5;
        letters.draw(painter, frame.map(frame.x_from, middle) - QPointF(letters.line() * 0.5, 0.0),
                     Qt::AlignRight | Qt::AlignVCenter, row.label, theme.text);
        letters.draw(painter, frame.map(frame.x_to, middle) + QPointF(letters.line() * 0.5, 0.0),
                     Qt::AlignLeft | Qt::AlignVCenter, row.share, theme.muted);
    }
    painter.setPen(QPen(theme.text, 1.6 * ink.line));
    painter.drawLine(frame.map(picture.nominal, frame.y_from), frame.map(picture.nominal, frame.y_to));
    letters.draw(painter, frame.map(frame.x_to, 0.0) + QPointF(letters.line() * 0.5, -letters.line() * 0.2),
                 Qt::AlignLeft | Qt::AlignBottom, QObject::tr("share"), theme.muted);
    paint_axes(ink, frame, x, {});
    paint_legend(&painter, area, legend(theme), theme, letters);
    painter.restore();
}

QString tornado_words(const TornadoPicture& picture, const PlotFrame& frame, QPointF at) {
    if (at.y() < frame.plot.top() || at.y() > frame.plot.bottom()) return {};
    const double row = frame.value_at(at).y();
    if (row < 0.0 || row >= static_cast<double>(shown(picture))) return {};
    const TornadoPicture::Row& found = picture.rows[static_cast<std::size_t>(row)];
    return QObject::tr("%1: at %2 about %3, at %4 about %5")
        .arg(found.label, found.low_text, number(found.at_low, picture.decimals), found.high_text,
             number(found.at_high, picture.decimals));
}

}  // namespace wg::ui
