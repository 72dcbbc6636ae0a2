#include "ui/drawing/warm_up_painter.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double bar_width = 0.36;

QColor day_ink(const Theme& theme) {
    return theme.kind == ThemeKind::sunlight ? QColor(0xd8d8d8) : quantity_colour(0.18);
}
QColor night_ink(const Theme& theme) {
    return theme.kind == ThemeKind::sunlight ? QColor(0x606060) : QColor(0x4f83a8);
}

}  // namespace

PlotFrame warm_up_frame(const WarmUpPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    double most = 1.0;
    for (const auto* hours : {&picture.day_h, &picture.night_h})
        for (const std::optional<double>& h : *hours)
            most = std::max(most, h.value_or(0.0));
    const double step = round_step(most, 6.0);
    PlotFrame frame;
    frame.plot = plot_area(area, letters, letters.width(QStringLiteral("00")) + letters.line(), 1);
    frame.x_to = 12.0;
    frame.y_to = std::ceil(most * 1.08 / step) * step;
    return frame;
}

void paint_warm_up(QPainter& painter, const WarmUpPicture& picture, const QRectF& area, const Theme& theme,
                   double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = warm_up_frame(picture, area, text_units);
    Axis x, y;
    y.title = QObject::tr("hours from cold to set-point");
    const double step = round_step(frame.y_to, 6.0);
    for (double at = 0.0; at <= frame.y_to + 1e-9; at += step)
        y.marks.push_back({at, number(at, decimals_for(step)), false});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, y);
    for (std::size_t month = 0; month < 12; ++month) {
        double left = static_cast<double>(month) + 0.5 - bar_width;
        for (const auto& [hours, colour] :
             {std::pair{picture.day_h[month], day_ink(theme)}, std::pair{picture.night_h[month], night_ink(theme)}}) {
            const QPointF top = frame.map(left + 0.5 * bar_width, hours.value_or(0.0));
            if (hours) {
                painter.setPen(QPen(theme.muted, 0.8 * ink.line));
                painter.setBrush(colour);
                painter.drawRect(QRectF(frame.map(left, *hours), frame.map(left + bar_width, 0.0)));
            }
            letters.draw(painter, top - QPointF(0.0, 2.0 * ink.line), Qt::AlignHCenter | Qt::AlignBottom,
                         hours ? number(*hours, 1) : QStringLiteral("\u2014"), theme.text);
            left += bar_width;
        }
        letters.draw(painter, frame.map(static_cast<double>(month) + 0.5, 0.0) + QPointF(0.0, letters.line() * 0.3),
                     Qt::AlignHCenter | Qt::AlignTop,
                     QLocale::c().monthName(static_cast<int>(month) + 1, QLocale::ShortFormat), theme.text);
    }
    paint_axes(ink, frame, x, y);
    const auto fill = [&theme](const QColor& colour) {
        return [colour, line = theme.muted](QPainter& p, const QRectF& box) {
            p.setPen(QPen(line, 0.8));
            p.setBrush(colour);
            p.drawRect(box);
        };
    };
    paint_legend(&painter, area,
                 {{QObject::tr("Mean day, 09:00 to 17:00 sun time"), fill(day_ink(theme))},
                  {QObject::tr("Mean night, 21:00 to 05:00 sun time"), fill(night_ink(theme))}},
                 theme, letters);
    painter.restore();
}

}  // namespace wg::ui
