#include "ui/drawing/rating_painters.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double temperature_share = 0.58;  // of the height; power has the rest
constexpr double widest_off_by = 0.60;      // share beyond which a bar is cut and its figure tells

/// Tell-apart by colour and by stroke, for grey print and for eyes that see fewer colours.
QPen course_pen(std::size_t number, const Theme& theme, double width) {
    const QColor inks[] = {theme.note, theme.accent, theme.caution};
    const Qt::PenStyle strokes[] = {Qt::DashLine, Qt::SolidLine, Qt::DashDotLine};
    return {inks[number % 3], width, strokes[number % 3]};
}

LegendItem stroke(const QString& text, const QPen& pen) {
    return {text, [pen](QPainter& painter, const QRectF& box) {
                painter.setPen(pen);
                painter.drawLine(QPointF(box.left(), box.center().y()), QPointF(box.right(), box.center().y()));
            }};
}

std::vector<LegendItem> heat_up_legend(const HeatUpPicture& picture, const Theme& theme, double line) {
    std::vector<LegendItem> items;
    for (std::size_t i = 0; i < picture.courses.size(); ++i)
        items.push_back(stroke(QObject::tr("air %1").arg(picture.courses[i].label),
                               course_pen(i, theme, (i == picture.chosen ? 3.0 : 1.8) * line)));
    if (picture.chosen < picture.courses.size()) {
        items.push_back(stroke(QObject::tr("heat to the water"), QPen(theme.text, 2.2 * line)));
        items.push_back(stroke(QObject::tr("electricity"), QPen(theme.text, 2.2 * line, Qt::DotLine)));
    }
    return items;
}

double most_hours(const HeatUpPicture& picture) {
    double most = 1.0;
    for (const auto& course : picture.courses)
        if (!course.points.empty()) most = std::max(most, course.points.back().hours);
    return std::ceil(most);
}

Axis rising(double to, double steps, int decimals = 0) {
    Axis axis;
    const double step = round_step(to, steps);
    for (double at = 0.0; at <= to + 1e-9; at += step)
        axis.marks.push_back({at, number(at, decimals), false});
    return axis;
}

PlotFrame whole_frame(const HeatUpPicture& picture, const QRectF& area, const Lettering& letters) {
    PlotFrame frame;
    const Theme any;
    const int rows = paint_legend(nullptr, area, heat_up_legend(picture, any, 1.0), any, letters);
    frame.plot = plot_area(area, letters, letters.width(QStringLiteral("0\u202f000")), rows);
    frame.x_to = most_hours(picture);
    return frame;
}

PlotFrame power_frame(const HeatUpPicture& picture, const QRectF& area, const Lettering& letters) {
    PlotFrame frame = whole_frame(picture, area, letters);
    frame.plot.setTop(frame.plot.top() + frame.plot.height() * temperature_share + letters.line());
    double most = 500.0;
    if (picture.chosen < picture.courses.size())
        for (const rating::CurvePoint& point : picture.courses[picture.chosen].points)
            most = std::max(most, point.heat_w);
    const double step = round_step(most, 4.0);
    frame.y_to = std::ceil(most / step) * step;
    return frame;
}

/// Powers are means since the point before: steps, not slopes.
void paint_power(const PictureInk& ink, const PlotFrame& frame, const std::vector<rating::CurvePoint>& points,
                 double rating::CurvePoint::*power, Qt::PenStyle style) {
    QPainterPath path;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const QPointF from = frame.map(points[i - 1].hours, points[i].*power);
        i == 1 ? path.moveTo(from) : path.lineTo(from);
        path.lineTo(frame.map(points[i].hours, points[i].*power));
    }
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(QPen(ink.theme.text, 2.2 * ink.line, style));
    ink.painter.drawPath(path);
}

void paint_water(const PictureInk& ink, const PlotFrame& frame, const HeatUpPicture& picture) {
    for (std::size_t i = 0; i < picture.courses.size(); ++i) {
        const auto& points = picture.courses[i].points;
        if (points.empty()) continue;
        QPainterPath path(frame.map(points.front().hours, points.front().water_c));
        for (const rating::CurvePoint& point : points)
            path.lineTo(frame.map(point.hours, point.water_c));
        ink.painter.setBrush(Qt::NoBrush);
        ink.painter.setPen(course_pen(i, ink.theme, (i == picture.chosen ? 3.0 : 1.8) * ink.line));
        ink.painter.drawPath(path);
    }
}

std::vector<LegendItem> off_by_legend(const Theme& theme, double line) {
    const auto box = [line](const QColor& fill, const QColor& edge) {
        return [=](QPainter& painter, const QRectF& swatch) {
            painter.setPen(QPen(edge, line));
            painter.setBrush(fill);
            painter.drawRect(swatch);
        };
    };
    QColor band = theme.ready;
    band.setAlphaF(0.22F);
    return {{QObject::tr("within tolerance"), box(band, theme.ready)},
            {QObject::tr("before"), box(Qt::transparent, theme.muted)},
            {QObject::tr("after"), box(theme.accent, theme.accent)},
            {QObject::tr("after, not met"), box(theme.stop, theme.stop)}};
}

}  // namespace

PlotFrame heat_up_frame(const HeatUpPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    PlotFrame frame = whole_frame(picture, area, letters);
    frame.plot.setHeight(frame.plot.height() * temperature_share);
    frame.y_to = std::ceil((picture.set_point_c + 8.0) / 10.0) * 10.0;
    return frame;
}

void paint_heat_up(QPainter& painter, const HeatUpPicture& picture, const QRectF& area, const Theme& theme,
                   double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame warm = heat_up_frame(picture, area, text_units);
    const PlotFrame power = power_frame(picture, area, letters);
    Axis hours = rising(warm.x_to, 12.0);
    Axis unnamed = hours;
    for (AxisMark& mark : unnamed.marks)
        mark.text.clear();
    hours.title = QObject::tr("hours");
    Axis degrees = rising(warm.y_to, 6.0);
    degrees.title = QObject::tr("water, °C");
    Axis watts = rising(power.y_to, 4.0);
    watts.title = QObject::tr("power, W");
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, warm, unnamed, degrees);
    paint_grid(ink, power, hours, watts);
    painter.setPen(QPen(theme.muted, 1.2 * ink.line, Qt::DashLine));
    painter.drawLine(warm.map(warm.x_from, picture.set_point_c), warm.map(warm.x_to, picture.set_point_c));
    letters.draw(painter, warm.map(warm.x_from, picture.set_point_c) + QPointF(letters.line() * 0.3, 0.0),
                 Qt::AlignLeft | Qt::AlignBottom, QObject::tr("set-point"), theme.muted);
    paint_water(ink, warm, picture);
    if (picture.chosen < picture.courses.size()) {
        const auto& points = picture.courses[picture.chosen].points;
        paint_power(ink, power, points, &rating::CurvePoint::heat_w, Qt::SolidLine);
        paint_power(ink, power, points, &rating::CurvePoint::electric_w, Qt::DotLine);
    }
    paint_axes(ink, warm, unnamed, degrees);
    paint_axes(ink, power, hours, watts);
    paint_legend(&painter, area, heat_up_legend(picture, theme, ink.line), theme, letters);
    painter.restore();
}

double off_by_height(std::size_t rows, double text_units) {
    const Lettering letters(text_units);
    return letters.line() * (1.7 * static_cast<double>(rows) + 6.0);
}

void paint_off_by(QPainter& painter, const std::vector<OffByRow>& rows, const QRectF& area, const Theme& theme,
                  double text_units) {
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    double widest = 0.0;
    double most = 0.04;
    for (const OffByRow& row : rows) {
        widest = std::max(widest, letters.width(row.label));
        for (const double share : {row.before, row.after, 1.3 * row.tolerance})
            if (std::isfinite(share)) most = std::max(most, std::fabs(share));
    }
    most = std::min(most * 1.05, widest_off_by);
    const auto legend = off_by_legend(theme, ink.line);
    PlotFrame frame;
    frame.plot = plot_area(area, letters, widest, paint_legend(nullptr, area, legend, theme, letters));
    // Figures of the calibrated values stand right of the plot.
    frame.plot.setRight(frame.plot.right() - letters.width(QStringLiteral("+00.0\u202f%")));
    frame.x_from = -most;
    frame.x_to = most;
    frame.y_to = std::max<double>(1.0, static_cast<double>(rows.size()));
    Axis x;
    x.title = QObject::tr("computed less declared, share of the declared value");
    const double step = round_step(2.0 * most, 7.0);
    for (double at = std::ceil(-most / step) * step; at <= most + 1e-9; at += step)
        x.marks.push_back({at, percent(at, step < 0.01 ? 1 : 0), std::fabs(at) < 1e-9});
    Axis y;
    for (std::size_t i = 0; i < rows.size(); ++i)
        y.marks.push_back({frame.y_to - static_cast<double>(i) - 0.5, rows[i].label, false});
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, frame, x, {});
    QColor band = theme.ready;
    band.setAlphaF(0.22F);
    const auto bar = [&](double from, double to, double middle, double height) {
        from = std::clamp(from, -most, most);
        to = std::clamp(to, -most, most);
        return QRectF(frame.map(std::min(from, to), middle + height / 2.0),
                      frame.map(std::max(from, to), middle - height / 2.0));
    };
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const OffByRow& row = rows[i];
        const double middle = y.marks[i].at;
        painter.setPen(QPen(theme.ready, ink.line));
        painter.setBrush(band);
        painter.drawRect(bar(-row.tolerance, row.tolerance, middle, 0.86));
        if (std::isfinite(row.before)) {
            painter.setPen(QPen(theme.muted, 1.6 * ink.line));
            painter.setBrush(Qt::NoBrush);
            painter.drawRect(bar(0.0, row.before, middle, 0.62));
        }
        const bool met = std::fabs(row.after) <= row.tolerance;
        if (std::isfinite(row.after)) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(met ? theme.accent : theme.stop);
            // A value met exactly still shows a line.
            QRectF filled = bar(0.0, row.after, middle, 0.32);
            if (filled.width() < 3.0 * ink.line) filled.setWidth(3.0 * ink.line);
            painter.drawRect(filled);
        }
        const QString figure = std::isfinite(row.after)
                                   ? (row.after >= 0.0005 ? QStringLiteral("+") : QString()) + percent(row.after, 1)
                                   : QObject::tr("none");
        letters.draw(painter, {area.right(), frame.map(0.0, middle).y()}, Qt::AlignRight | Qt::AlignVCenter, figure,
                     met ? theme.text : theme.stop);
    }
    paint_axes(ink, frame, x, y);
    paint_legend(&painter, area, legend, theme, letters);
    painter.restore();
}

}  // namespace wg::ui
