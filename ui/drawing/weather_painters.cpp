#include "ui/drawing/weather_painters.h"

#include <QLocale>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double bar_width = 0.64;

QColor beam_ink(const Theme& theme) {
    return theme.kind == ThemeKind::sunlight ? QColor(0xd8d8d8) : quantity_colour(0.18);
}
QColor diffuse_ink(const Theme& theme) {
    return theme.kind == ThemeKind::sunlight ? QColor(0x707070) : QColor(0x4f83a8);
}

std::vector<LegendItem> months_legend(const Theme& theme) {
    const auto fill = [&theme](const QColor& ink) {
        return [ink, line = theme.muted](QPainter& painter, const QRectF& box) {
            painter.setPen(QPen(line, 0.8));
            painter.setBrush(ink);
            painter.drawRect(box);
        };
    };
    return {{QObject::tr("Direct from the sun"), fill(beam_ink(theme))},
            {QObject::tr("From the sky"), fill(diffuse_ink(theme))}};
}

double total(const WeatherMonths& months, std::size_t month) {
    return months.beam_kwh_m2[month] + months.diffuse_kwh_m2[month];
}

std::vector<LegendItem> clear_legend(const Theme& theme, double line) {
    const auto stroke = [line](const QColor& ink, Qt::PenStyle style) {
        return [=](QPainter& painter, const QRectF& box) {
            painter.setPen(QPen(ink, 2.4 * line, style));
            painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
        };
    };
    return {{QObject::tr("Clear mornings"), stroke(theme.note, Qt::SolidLine)},
            {QObject::tr("Clear afternoons"), stroke(theme.accent, Qt::DashLine)}};
}

}  // namespace

PlotFrame weather_months_frame(const WeatherMonths& months, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    double most = 1.0;
    for (std::size_t month = 0; month < 12; ++month)
        most = std::max(most, total(months, month));
    const double step = round_step(most, 6.0);
    PlotFrame frame;
    frame.plot = plot_area(area, letters, letters.width(QStringLiteral("000")) + letters.line(), 1);
    frame.plot.setBottom(frame.plot.bottom() - letters.line() * 0.2);
    frame.x_from = 0.0;
    frame.x_to = 12.0;
    frame.y_to = std::ceil(most * 1.06 / step) * step;  // room for the figures on top
    return frame;
}

void paint_weather_months(QPainter& painter, const WeatherMonths& months, const QRectF& area, const Theme& theme,
                          double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = weather_months_frame(months, area, text_units);
    Axis x;
    Axis y;
    y.title = QObject::tr("kWh/m² a month on the level");
    const double step = round_step(frame.y_to, 6.0);
    for (double at = 0.0; at <= frame.y_to + 1e-9; at += step)
        y.marks.push_back({at, number(at), false});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, y);
    for (std::size_t month = 0; month < 12; ++month) {
        const double left = static_cast<double>(month) + 0.5 - bar_width / 2.0;
        const double right = left + bar_width;
        const double diffuse = months.diffuse_kwh_m2[month];
        painter.setPen(QPen(theme.muted, 0.8 * ink.line));
        painter.setBrush(diffuse_ink(theme));
        painter.drawRect(QRectF(frame.map(left, diffuse), frame.map(right, 0.0)));
        painter.setBrush(beam_ink(theme));
        painter.drawRect(QRectF(frame.map(left, total(months, month)), frame.map(right, diffuse)));
        const double middle = static_cast<double>(month) + 0.5;
        letters.draw(painter, frame.map(middle, total(months, month)) - QPointF(0.0, 2.0 * ink.line),
                     Qt::AlignHCenter | Qt::AlignBottom, number(total(months, month)), theme.text);
        const QPointF foot = frame.map(middle, 0.0);
        letters.draw(painter, foot + QPointF(0.0, letters.line() * 0.3), Qt::AlignHCenter | Qt::AlignTop,
                     QLocale::c().monthName(static_cast<int>(month) + 1, QLocale::ShortFormat), theme.text);
        letters.draw(painter, foot + QPointF(0.0, letters.line() * 1.5), Qt::AlignHCenter | Qt::AlignTop,
                     temperature(months.air_c[month], 1), theme.muted);
    }
    paint_axes(ink, frame, x, y);
    paint_legend(&painter, area, months_legend(theme), theme, letters);
    painter.restore();
}

void paint_clear_days(QPainter& painter, const sky::ClearDayProfile& profile, const QRectF& area, const Theme& theme,
                      double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    double most = 1.2;
    int last_bin = 7;
    for (const sky::ClearDayProfile::Half* half : {&profile.morning, &profile.afternoon}) {
        for (int bin = 0; bin < sky::ClearDayProfile::bins; ++bin) {
            if (half->hours[static_cast<std::size_t>(bin)] == 0) continue;
            most = std::max(most, half->share[static_cast<std::size_t>(bin)]);
            last_bin = std::max(last_bin, bin);
        }
    }
    PlotFrame frame;
    frame.plot = plot_area(area, letters, letters.width(QStringLiteral("000\u202f%")) + letters.line(), 1);
    frame.x_to = (last_bin + 1) * sky::ClearDayProfile::bin_deg;
    frame.y_to = std::min(3.0, std::ceil(most * 5.0) / 5.0);
    Axis x;
    x.title = QObject::tr("height of the sun");
    for (double at = 0.0; at <= frame.x_to + 1e-9; at += 10.0)
        x.marks.push_back({at, QStringLiteral("%1°").arg(std::lround(at)), false});
    Axis y;
    y.title = QObject::tr("light, share of a clear sky");
    const double step = frame.y_to > 1.6 ? 0.5 : 0.2;
    for (double at = 0.0; at <= frame.y_to + 1e-9; at += step)
        y.marks.push_back({at, percent(at), std::fabs(at - 1.0) < 1e-9});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, y);
    painter.save();
    painter.setClipRect(frame.plot, Qt::IntersectClip);
    const auto curve = [&](const sky::ClearDayProfile::Half& half, const QColor& colour, Qt::PenStyle style,
                           bool square) {
        QPainterPath path;
        std::vector<QPointF> points;
        for (std::size_t bin = 0; bin < sky::ClearDayProfile::bins; ++bin) {
            if (half.hours[bin] == 0) continue;
            points.push_back(
                frame.map((static_cast<double>(bin) + 0.5) * sky::ClearDayProfile::bin_deg, half.share[bin]));
            points.size() == 1 ? path.moveTo(points.back()) : path.lineTo(points.back());
        }
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour, 2.4 * ink.line, style));
        painter.drawPath(path);
        painter.setPen(QPen(colour, 1.6 * ink.line));
        painter.setBrush(theme.panel);
        const double r = 3.5 * ink.line;
        for (const QPointF p : points) {
            const QRectF box(p.x() - r, p.y() - r, 2.0 * r, 2.0 * r);
            square ? painter.drawRect(box) : painter.drawEllipse(box);
        }
    };
    curve(profile.morning, theme.note, Qt::SolidLine, false);
    curve(profile.afternoon, theme.accent, Qt::DashLine, true);
    painter.restore();
    paint_axes(ink, frame, x, y);
    paint_legend(&painter, area, clear_legend(theme, ink.line), theme, letters);
    painter.restore();
}

}  // namespace wg::ui
