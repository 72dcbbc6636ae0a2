#include "ui/drawing/orientation_map_painter.h"

#include <QImage>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/angle.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

constexpr double contour_cell_deg = 2.5;
constexpr double wanted_contours = 12.0;

QString unit() {
    return QObject::tr("kWh/m²");
}

struct Scale {
    double low, high;
};
/// Ends of the colours on round values, so that the bar's marks stand at its ends.
Scale scale_of(const sky::OrientationMap& map) {
    const double step = round_step(map.best_kwh_m2 - map.least_kwh_m2, 5.0);
    return {std::floor(map.least_kwh_m2 / step) * step, std::ceil(map.best_kwh_m2 / step) * step};
}

void paint_field(QPainter& painter, const OrientationPicture& picture, const OrientationFrame& where) {
    constexpr int columns = 289;
    constexpr int rows = 73;
    const Scale scale = scale_of(*picture.map);
    QImage image(columns, rows, QImage::Format_RGB32);
    for (int row = 0; row < rows; ++row) {
        const double tilt = 90.0 - 90.0 * (row + 0.5) / rows;
        for (int column = 0; column < columns; ++column) {
            const double x = -180.0 + 360.0 * (column + 0.5) / columns;
            const double value = picture.map->at(tilt, where.bearing_of(x));
            image.setPixelColor(column, row, value_colour(value, scale.low, scale.high));
        }
    }
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(where.frame.plot, image);
    painter.restore();
}

struct Segment {
    QPointF a, b;
};

/// Marching squares on a fine grid of the map.
std::vector<Segment> contour(const OrientationPicture& picture, const OrientationFrame& where, double level) {
    std::vector<Segment> segments;
    for (double x = -180.0; x < 180.0 - 1e-6; x += contour_cell_deg) {
        for (double tilt = 0.0; tilt < 90.0 - 1e-6; tilt += contour_cell_deg) {
            const std::array<QPointF, 4> corner{QPointF(x, tilt), QPointF(x + contour_cell_deg, tilt),
                                                QPointF(x + contour_cell_deg, tilt + contour_cell_deg),
                                                QPointF(x, tilt + contour_cell_deg)};
            std::array<double, 4> value{};
            for (std::size_t i = 0; i < 4; ++i)
                value[i] = picture.map->at(corner[i].y(), where.bearing_of(corner[i].x())) - level;
            std::vector<QPointF> cuts;
            for (std::size_t i = 0; i < 4; ++i) {
                const std::size_t next = (i + 1) % 4;
                if ((value[i] < 0.0) == (value[next] < 0.0)) continue;
                cuts.push_back(corner[i] + (corner[next] - corner[i]) * (value[i] / (value[i] - value[next])));
            }
            for (std::size_t i = 0; i + 1 < cuts.size(); i += 2) {
                segments.push_back(
                    {where.frame.map(cuts[i].x(), cuts[i].y()), where.frame.map(cuts[i + 1].x(), cuts[i + 1].y())});
            }
        }
    }
    return segments;
}

/// Black or white, whichever reads better on a colour.
QColor on(const QColor& ground) {
    return qGray(ground.rgb()) > 135 ? QColor(0x1c242b) : QColor(Qt::white);
}

void paint_contours(const PictureInk& ink, const OrientationPicture& picture, const OrientationFrame& where,
                    LabelPlacer& placer) {
    const Scale scale = scale_of(*picture.map);
    for (const double level : contour_levels(*picture.map)) {
        const QColor ground = value_colour(level, scale.low, scale.high);
        const QColor colour = on(ground);
        const std::vector<Segment> segments = contour(picture, where, level);
        ink.painter.setPen(QPen(colour, 0.9 * ink.line));
        for (const Segment& s : segments)
            ink.painter.drawLine(s.a, s.b);
        // The label goes where the line is free, nearest to a quarter of the width from the middle.
        const QString text = number(level);
        const double wanted_x = where.frame.map(55.0, 0.0).x();
        const Segment* best = nullptr;
        for (const Segment& s : segments) {
            const QRectF box = ink.letters.box(s.a, Qt::AlignCenter, text);
            if (!where.frame.plot.contains(box) || !placer.is_free(box)) continue;
            if (best == nullptr || std::fabs(s.a.x() - wanted_x) < std::fabs(best->a.x() - wanted_x)) best = &s;
        }
        if (best == nullptr) continue;
        const QRectF box = ink.letters.box(best->a, Qt::AlignCenter, text).adjusted(-2.0, 0.0, 2.0, 0.0);
        placer.keep_free(box.adjusted(-4.0, -2.0, 4.0, 2.0));
        ink.letters.draw_in(ink.painter, box, text, colour, ground);
    }
}

/// A mark with a light rim, to be seen on any colour.
void ringed(const PictureInk& ink, const QPainterPath& shape, const QColor& fill) {
    ink.painter.setPen(QPen(QColor(Qt::white), 4.0 * ink.line));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawPath(shape);
    ink.painter.setPen(QPen(QColor(0x1c242b), 1.4 * ink.line));
    ink.painter.setBrush(fill);
    ink.painter.drawPath(shape);
}

QPainterPath square(QPointF at, double half) {
    QPainterPath path;
    path.addRect(QRectF(at.x() - half, at.y() - half, 2.0 * half, 2.0 * half));
    return path;
}
QPainterPath round(QPointF at, double half) {
    QPainterPath path;
    path.addEllipse(at, half, half);
    return path;
}

void label_mark(const PictureInk& ink, LabelPlacer& placer, QPointF at, const QString& text, double half) {
    const QSizeF size = ink.letters.size(text) + QSizeF(8.0 * ink.line, 2.0 * ink.line);
    const LabelPlacer::Label label = placer.place(at, size, half + 4.0 * ink.line);
    ink.letters.draw_in(ink.painter, label.box, text, ink.theme.text, ink.theme.panel);
}

void paint_marks(const PictureInk& ink, const OrientationPicture& picture, const OrientationFrame& where,
                 LabelPlacer& placer) {
    const double half = ink.letters.line() * 0.38;
    const QPointF best = where.frame.map(where.x_of(picture.map->best_azimuth_deg), picture.map->best_tilt_deg);
    std::vector<QPointF> at;
    for (const OrientationPicture::Mark& mark : picture.collectors)
        at.push_back(where.frame.map(where.x_of(mark.azimuth_deg), std::clamp(mark.tilt_deg, 0.0, 90.0)));
    const auto taken = [&](QPointF p) {
        placer.keep_free(QRectF(p.x() - 1.6 * half, p.y() - 1.6 * half, 3.2 * half, 3.2 * half));
    };
    taken(best);
    for (const QPointF p : at)
        taken(p);
    ringed(ink, round(best, half * 1.15), QColor(0xffffff));
    for (const QPointF p : at)
        ringed(ink, square(p, half * 0.85), QColor(0x9a4f1c));  // the map is the same in every theme, so is its mark
    label_mark(ink, placer, best, QObject::tr("best %1").arg(quantity(picture.map->best_kwh_m2, unit())), half);
    // Plates that look the same way share one mark and one label.
    for (std::size_t i = 0; i < at.size(); ++i) {
        if (std::find(at.begin(), at.begin() + static_cast<std::ptrdiff_t>(i), at[i]) !=
            at.begin() + static_cast<std::ptrdiff_t>(i)) {
            continue;
        }
        QStringList labels;
        for (std::size_t k = i; k < at.size(); ++k) {
            if (at[k] == at[i]) labels += picture.collectors[k].label;
        }
        label_mark(ink, placer, at[i], labels.join(QStringLiteral(", ")), half);
    }
}

Axis bearings(const OrientationFrame& where) {
    Axis axis;
    axis.title = QObject::tr("bearing that the plate looks to");
    for (int x = -180; x <= 180; x += 45) {
        const double bearing = where.bearing_of(x);
        axis.marks.push_back(
            {static_cast<double>(x),
             QStringLiteral("%1° %2").arg(std::lround(bearing)).arg(QString::fromLatin1(compass_point(bearing))),
             false});
    }
    return axis;
}

Axis tilts() {
    Axis axis;
    axis.title = QObject::tr("tilt from level");
    for (int tilt = 0; tilt <= 90; tilt += 15)
        axis.marks.push_back({static_cast<double>(tilt), QStringLiteral("%1°").arg(tilt), false});
    return axis;
}

bool complete(const OrientationPicture& picture) {
    return picture.map != nullptr &&
           picture.map->kwh_m2.size() ==
               static_cast<std::size_t>(sky::OrientationMap::tilts) * sky::OrientationMap::azimuths;
}

}  // namespace

double OrientationFrame::bearing_of(double x) const {
    return wrap_360(centre_deg + x);
}

double OrientationFrame::x_of(double bearing_deg) const {
    return wrap_180(bearing_deg - centre_deg);
}

OrientationFrame orientation_frame(const OrientationPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    const double line = letters.line();
    OrientationFrame where;
    where.centre_deg = picture.latitude_deg < 0.0 ? 0.0 : 180.0;
    where.frame = {plot_area(area, letters, letters.width(QStringLiteral("90°")) + line, 1), -180.0, 180.0, 0.0, 90.0};
    const double bar_room = letters.width(QStringLiteral("0\u202f000")) + line * 3.0;
    where.frame.plot.setRight(where.frame.plot.right() - bar_room);
    where.bar =
        QRectF(where.frame.plot.right() + line * 1.4, where.frame.plot.top(), line * 1.1, where.frame.plot.height());
    return where;
}

std::vector<double> contour_levels(const sky::OrientationMap& map) {
    const double span = map.best_kwh_m2 - map.least_kwh_m2;
    std::vector<double> levels;
    if (!(span > 1.0)) return levels;
    const double step = round_step(span, wanted_contours);
    for (double at = std::ceil(map.least_kwh_m2 / step) * step; at < map.best_kwh_m2; at += step)
        levels.push_back(at);
    return levels;
}

void paint_orientation_map(QPainter& painter, const OrientationPicture& picture, const QRectF& area, const Theme& theme,
                           double text_units) {
    const OrientationFrame where = orientation_frame(picture, area, text_units);
    const Lettering letters(text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (complete(picture)) {
        paint_field(painter, picture, where);
        painter.save();
        painter.setClipRect(where.frame.plot, Qt::IntersectClip);
        // Marks claim their places first: contour labels keep clear of them.
        LabelPlacer placer(where.frame.plot);
        const double reach = letters.line() * 1.2;
        for (const OrientationPicture::Mark& mark : picture.collectors) {
            const QPointF at = where.frame.map(where.x_of(mark.azimuth_deg), std::clamp(mark.tilt_deg, 0.0, 90.0));
            placer.keep_free(QRectF(at.x() - reach, at.y() - reach, 2.0 * reach, 2.0 * reach));
        }
        const QPointF best = where.frame.map(where.x_of(picture.map->best_azimuth_deg), picture.map->best_tilt_deg);
        placer.keep_free(QRectF(best.x() - reach, best.y() - reach, 2.0 * reach, 2.0 * reach));
        paint_contours(ink, picture, where, placer);
        paint_marks(ink, picture, where, placer);
        painter.restore();
        const Scale scale = scale_of(*picture.map);
        paint_colour_bar(ink, where.bar, scale.low, scale.high, unit());
    }
    paint_axes(ink, where.frame, bearings(where), tilts());
    painter.restore();
}

QString words_at(const OrientationPicture& picture, double tilt_deg, double bearing_deg) {
    if (!complete(picture)) return {};
    const double value = picture.map->at(tilt_deg, bearing_deg);
    const double less = 1.0 - value / std::max(1e-9, picture.map->best_kwh_m2);
    const QString where = QObject::tr("Tilt %1°, bearing %2: about %3 a year")
                              .arg(std::lround(tilt_deg))
                              .arg(bearing(bearing_deg), quantity(value, unit()));
    return less < 0.005 ? QObject::tr("%1, as good as the best").arg(where)
                        : QObject::tr("%1, %2 less than the best").arg(where, percent(less));
}

}  // namespace wg::ui
