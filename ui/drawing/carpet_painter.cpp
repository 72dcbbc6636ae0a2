#include "ui/drawing/carpet_painter.h"

#include <QImage>
#include <QLocale>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "core/quantity/time.h"
#include "core/weather/year.h"

namespace wg::ui {
namespace {

constexpr int days = 365;

bool complete(const CarpetPicture& picture) {
    return picture.values != nullptr && picture.values->size() == weather::hours_in_year;
}
bool flagged(const CarpetPicture& picture) {
    return picture.flags.size() == weather::hours_in_year &&
           std::any_of(picture.flags.begin(), picture.flags.end(), [](std::uint8_t f) { return f != 0; });
}

Axis months() {
    Axis axis;
    axis.title = QObject::tr("day of the year");
    for (int month = 1; month <= 12; ++month) {
        const double day = first_hour_of_month(month) / 24.0;
        axis.marks.push_back({day, QString(), false});
        const double next = first_hour_of_month(month + 1) / 24.0;
        axis.marks.push_back({0.5 * (day + next), QLocale::c().monthName(month, QLocale::ShortFormat), false});
    }
    return axis;
}

Axis hours() {
    Axis axis;
    axis.title = QObject::tr("hour, local standard time");
    for (int hour = 0; hour <= 24; hour += 3)
        axis.marks.push_back({static_cast<double>(hour), QString::number(hour), false});
    return axis;
}

void paint_lozenge(QPainter& painter, QPointF at, double line) {
    const double half = 4.0 * line;
    painter.setPen(QPen(QColor(Qt::white), line));
    painter.setBrush(QColor(Qt::black));
    painter.drawPolygon(QPolygonF(
        {at + QPointF(0.0, -half), at + QPointF(half, 0.0), at + QPointF(0.0, half), at + QPointF(-half, 0.0)}));
}

std::vector<LegendItem> legend_of(const CarpetPicture& picture, const Theme& theme, double line) {
    std::vector<LegendItem> items;
    if (!picture.line_a.empty() && !picture.line_words.isEmpty()) {
        items.push_back({picture.line_words, [theme, line](QPainter& painter, const QRectF& box) {
                             painter.fillRect(box, value_colour(0.25, 0.0, 1.0));
                             painter.setPen(QPen(QColor(Qt::white), 1.6 * line, Qt::DashLine));
                             painter.drawLine(QPointF(box.left(), box.center().y()),
                                              QPointF(box.right(), box.center().y()));
                         }});
    }
    if (flagged(picture)) {
        const bool lozenge = picture.flag_lozenges;
        items.push_back({picture.flag_words, [theme, line, lozenge](QPainter& painter, const QRectF& box) {
                             if (lozenge) {
                                 paint_lozenge(painter, box.center(), line);
                             } else {
                                 painter.fillRect(box, theme.stop);
                             }
                         }});
    }
    return items;
}

void paint_days(QPainter& painter, const CarpetPicture& picture, const CarpetFrame& where) {
    QImage image(days, 24, QImage::Format_RGB32);
    for (int day = 0; day < days; ++day) {
        for (int hour = 0; hour < 24; ++hour) {
            const double value = (*picture.values)[static_cast<std::size_t>(day * 24 + hour)];
            image.setPixelColor(day, 23 - hour,
                                picture.dark_is_much ? load_colour(value, picture.low, picture.high)
                                                     : value_colour(value, picture.low, picture.high));
        }
    }
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform, false);
    painter.drawImage(where.frame.plot, image);
    painter.restore();
}

void paint_line(const PictureInk& ink, const CarpetFrame& where, const std::vector<double>& hour_of_day) {
    QPainterPath path;
    bool down = false;
    double last = 0.0;
    for (std::size_t day = 0; day < hour_of_day.size() && day < days; ++day) {
        const double hour = hour_of_day[day];
        if (!std::isfinite(hour)) {
            down = false;
            continue;
        }
        const QPointF at = where.frame.map(static_cast<double>(day) + 0.5, hour);
        // Far from the time zone's middle a sunset can pass midnight.
        if (down && std::fabs(hour - last) < 12.0) {
            path.lineTo(at);
        } else {
            path.moveTo(at);
        }
        down = true;
        last = hour;
    }
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(QPen(QColor(0x1c242b), 2.6 * ink.line));
    ink.painter.drawPath(path);
    ink.painter.setPen(QPen(QColor(Qt::white), 1.4 * ink.line, Qt::DashLine));
    ink.painter.drawPath(path);
}

/// A flagged hour is marked at least as large as can be seen.
void paint_flags(const PictureInk& ink, const CarpetPicture& picture, const CarpetFrame& where) {
    if (!flagged(picture)) return;
    const double least = 3.0 * ink.line;
    for (int hour = 0; hour < weather::hours_in_year; ++hour) {
        if (picture.flags[static_cast<std::size_t>(hour)] == 0) continue;
        const double day = hour / 24;
        const QRectF cell(where.frame.map(day, hour % 24 + 1.0), where.frame.map(day + 1.0, hour % 24));
        if (picture.flag_lozenges) {
            paint_lozenge(ink.painter, cell.center(), ink.line);
            continue;
        }
        const double wider = std::max(0.0, least - cell.width()) / 2.0;
        ink.painter.fillRect(cell.adjusted(-wider, 0.0, wider, 0.0), ink.theme.stop);
    }
}

void paint_cursor(const PictureInk& ink, const CarpetPicture& picture, const CarpetFrame& where) {
    if (picture.cursor < 0 || picture.cursor >= weather::hours_in_year) return;
    const double day = picture.cursor / 24;
    const double hour = picture.cursor % 24;
    const QRectF cell(where.frame.map(day, hour + 1.0), where.frame.map(day + 1.0, hour));
    const QRectF ring = cell.adjusted(-3.0 * ink.line, -ink.line, 3.0 * ink.line, ink.line);
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(QPen(QColor(Qt::white), 4.0 * ink.line));
    ink.painter.drawRect(ring);
    ink.painter.setPen(QPen(QColor(Qt::black), 1.6 * ink.line));
    ink.painter.drawRect(ring);
}

}  // namespace

void set_scale(CarpetPicture& picture, double least, double most) {
    const double step = round_step(most - least, 5.0);
    picture.low = std::floor(least / step) * step;
    picture.high = std::max(picture.low + step, std::ceil(most / step) * step);
}

CarpetFrame carpet_frame(const CarpetPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    const double line = letters.line();
    const int rows = std::max(1, paint_legend(nullptr, area, legend_of(picture, paper_theme(), 1.0), paper_theme(),
                                              letters));  // the bar's unit stands in that row, too
    CarpetFrame where;
    where.frame = {plot_area(area, letters, letters.width(QStringLiteral("24")) + line, rows), 0.0, 365.0, 0.0, 24.0};
    where.frame.plot.setRight(where.frame.plot.right() - letters.width(QStringLiteral("0\u202f000")) - line * 3.0);
    where.bar =
        QRectF(where.frame.plot.right() + line * 1.4, where.frame.plot.top(), line * 1.1, where.frame.plot.height());
    return where;
}

void paint_carpet(QPainter& painter, const CarpetPicture& picture, const QRectF& area, const Theme& theme,
                  double text_units) {
    const CarpetFrame where = carpet_frame(picture, area, text_units);
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (complete(picture)) {
        paint_days(painter, picture, where);
        painter.save();
        painter.setClipRect(where.frame.plot, Qt::IntersectClip);
        paint_flags(ink, picture, where);
        paint_line(ink, where, picture.line_a);
        paint_line(ink, where, picture.line_b);
        painter.restore();
        paint_cursor(ink, picture, where);
        paint_colour_bar(ink, where.bar, picture.low, picture.high, picture.unit, picture.dark_is_much);
    }
    paint_axes(ink, where.frame, months(), hours());
    paint_legend(&painter, area, legend_of(picture, theme, ink.line), theme, letters);
    painter.restore();
}

int hour_at(const CarpetFrame& where, QPointF at) {
    if (!where.frame.plot.contains(at)) return -1;
    const QPointF value = where.frame.value_at(at);
    const int day = std::clamp(static_cast<int>(std::floor(value.x())), 0, days - 1);
    const int hour = std::clamp(static_cast<int>(std::floor(value.y())), 0, 23);
    return day * 24 + hour;
}

}  // namespace wg::ui
