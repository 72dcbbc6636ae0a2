#include "ui/drawing/facing_painter.h"

#include <algorithm>
#include <cmath>

#include "ui/common/format.h"

namespace wg::ui {
namespace {

std::size_t columns(const FacingPicture& picture) {
    return picture.bearings_deg.size();
}

/// Place from the left of a bearing: the equator's side stands in the middle.
double column_of(const FacingPicture& picture, double bearing_deg) {
    const double step = 360.0 / static_cast<double>(columns(picture));
    const double first = (picture.equator_south ? 180.0 : 0.0) - 180.0;
    double off = std::fmod(bearing_deg - first + 0.5 * step + 720.0, 360.0);
    return off / step;
}

double row_height_deg(const FacingPicture& picture) {
    return picture.tilts_deg.size() > 1 ? picture.tilts_deg[1] - picture.tilts_deg[0] : 15.0;
}

bool dark(const QColor& colour) {
    return 0.299 * colour.redF() + 0.587 * colour.greenF() + 0.114 * colour.blueF() < 0.5;
}

}  // namespace

PlotFrame facing_frame(const FacingPicture& picture, const QRectF& area, double text_units) {
    const Lettering letters(text_units);
    PlotFrame frame;
    frame.plot = plot_area(area, letters, letters.width(QStringLiteral("90°")) + letters.line(), 0);
    frame.x_from = 0.0;
    frame.x_to = std::max(1.0, static_cast<double>(columns(picture)));
    if (!picture.tilts_deg.empty()) {
        frame.y_from = picture.tilts_deg.front() - 0.5 * row_height_deg(picture);
        frame.y_to = picture.tilts_deg.back() + 0.5 * row_height_deg(picture);
    }
    return frame;
}

void paint_facing(QPainter& painter, const FacingPicture& picture, const QRectF& area, const Theme& theme,
                  double text_units) {
    if (picture.values.empty()) return;
    const Lettering letters(text_units), small(0.92 * text_units);
    const PictureInk ink{painter, theme, letters, text_units / 13.0 * theme.line_scale};
    const PlotFrame frame = facing_frame(picture, area, text_units);
    const auto [low, high] = std::minmax_element(picture.values.begin(), picture.values.end());
    const double half = 0.5 * row_height_deg(picture);
    Axis x, y;
    x.title = QObject::tr("bearing that the plate looks to; figures: %1").arg(picture.title);
    y.title = QObject::tr("tilt");
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    for (std::size_t i = 0; i < picture.values.size(); ++i) {
        const double tilt = picture.tilts_deg[i / columns(picture)];
        const double left = std::floor(column_of(picture, picture.bearings_deg[i % columns(picture)]));
        const QRectF cell(frame.map(left, tilt + half), frame.map(left + 1.0, tilt - half));
        const QColor fill =
            theme.kind == ThemeKind::sunlight ? QColor(Qt::white) : value_colour(picture.values[i], *low, *high);
        painter.setPen(QPen(theme.panel, ink.line));
        painter.setBrush(fill);
        painter.drawRect(cell);
        const QColor words = dark(fill) ? QColor(0xffffff) : QColor(0x111111);
        const bool two = i < picture.second.size() && cell.height() > 2.4 * letters.line();
        const QPointF lift(0.0, two ? 0.5 * letters.line() : 0.0);
        letters.draw(painter, cell.center() - lift, Qt::AlignCenter, number(picture.values[i], picture.decimals),
                     words);
        if (two) small.draw(painter, cell.center() + lift, Qt::AlignCenter, picture.second[i], words);
    }
    for (std::size_t i = 0; i < columns(picture); ++i) {
        const double deg = picture.bearings_deg[i];
        const QPointF at = frame.map(std::floor(column_of(picture, deg)) + 0.5, frame.y_from);
        letters.draw(painter, at + QPointF(0.0, letters.line() * 0.3), Qt::AlignHCenter | Qt::AlignTop, bearing(deg),
                     theme.text);
    }
    for (const double tilt : picture.tilts_deg)
        y.marks.push_back({tilt, QStringLiteral("%1°").arg(std::lround(tilt)), false});
    paint_axes(ink, frame, x, y);
    if (picture.here_tilt_deg >= 0.0) {
        const QPointF at = frame.map(column_of(picture, picture.here_bearing_deg),
                                     std::clamp(picture.here_tilt_deg, frame.y_from, frame.y_to));
        painter.setBrush(Qt::NoBrush);
        const double r = 0.55 * letters.line();
        painter.setPen(QPen(QColor(Qt::white), 4.5 * ink.line));
        painter.drawEllipse(at, r, r);
        painter.setPen(QPen(QColor(0x111111), 2.0 * ink.line));
        painter.drawEllipse(at, r, r);
    }
    painter.restore();
}

int facing_at(const FacingPicture& picture, const PlotFrame& frame, QPointF at) {
    if (picture.values.empty() || !frame.plot.contains(at)) return -1;
    const QPointF value = frame.value_at(at);
    for (std::size_t i = 0; i < picture.values.size(); ++i) {
        const double left = std::floor(column_of(picture, picture.bearings_deg[i % columns(picture)]));
        const double tilt = picture.tilts_deg[i / columns(picture)];
        if (value.x() >= left && value.x() < left + 1.0 && std::fabs(value.y() - tilt) <= 0.5 * row_height_deg(picture))
            return static_cast<int>(i);
    }
    return -1;
}

}  // namespace wg::ui
