#include "ui/drawing/sun_path_painter.h"

#include <QLocale>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/angle.h"
#include "core/site/occluders.h"
#include "ui/common/format.h"
#include "ui/drawing/sun_path_parts.h"

namespace wg::ui {

using namespace sun_path;

namespace {

constexpr int days = 365;
constexpr int steps = sky::sun_steps_per_day;
constexpr int steps_per_hour = steps / 24;
constexpr double bearing_margin_deg = 15.0;
constexpr double least_half_span_deg = 105.0;
constexpr double least_top_deg = 50.0;

/// One curve stands for the two days of a year with nearly the same sun.
struct Curve {
    int month;
    const char* words;
};
constexpr std::array<Curve, 7> curves{
    {{6, "Jun"}, {5, "May, Jul"}, {4, "Apr, Aug"}, {3, "Mar, Sep"}, {2, "Feb, Oct"}, {1, "Jan, Nov"}, {12, "Dec"}}};

/// Solstices and equinoxes.
constexpr bool is_turn(const Curve& curve) {
    return curve.month % 3 == 0;
}

double azimuth_at(const sky::SunTable& sun, int day, int step) {
    return static_cast<double>(sun.azimuth_deg[sky::SunTable::index(day, step % steps)]);
}
double elevation_at(const sky::SunTable& sun, int day, int step) {
    return static_cast<double>(sun.elevation_deg[sky::SunTable::index(day, step % steps)]);
}
bool complete(const SunPathPicture& picture) {
    const auto size = static_cast<std::size_t>(days) * steps;
    return picture.sun != nullptr && picture.sun->azimuth_deg.size() == size &&
           picture.sun->elevation_deg.size() == size;
}

/// A line through directions above the horizon, broken where it leaves the picture on one side and comes in on the
/// other.
class Trace {
   public:
    explicit Trace(const SunPathFrame& where) : where_(where) {}
    void add(double azimuth_deg, double elevation_deg) {
        const double x = where_.x_of(azimuth_deg);
        if (down_ && !(std::fabs(x - last_x_) > 180.0)) {
            const bool crosses = (elevation_deg > 0.0) != (last_elevation_ > 0.0);
            if (crosses) {
                // Ends on the horizon itself.
                const double share = last_elevation_ / (last_elevation_ - elevation_deg);
                const QPointF foot = where_.frame.map(last_x_ + share * (x - last_x_), 0.0);
                if (last_elevation_ > 0.0) {
                    path_.lineTo(foot);
                } else {
                    path_.moveTo(foot);
                }
            }
            if (elevation_deg > 0.0) path_.lineTo(where_.frame.map(x, elevation_deg));
        } else if (elevation_deg > 0.0) {
            path_.moveTo(where_.frame.map(x, elevation_deg));
        }
        down_ = true;
        last_x_ = x;
        last_elevation_ = elevation_deg;
    }
    [[nodiscard]] const QPainterPath& path() const { return path_; }

   private:
    const SunPathFrame& where_;
    QPainterPath path_;
    bool down_ = false;
    double last_x_ = 0.0;
    double last_elevation_ = 0.0;
};

QPainterPath day_path(const sky::SunTable& sun, const SunPathFrame& where, int day) {
    Trace trace(where);
    for (int step = 0; step <= steps; ++step)
        trace.add(azimuth_at(sun, day, step), elevation_at(sun, day, step));
    return trace.path();
}

QPainterPath hour_path(const sky::SunTable& sun, const SunPathFrame& where, int hour, int from_day, int count) {
    Trace trace(where);
    for (int i = 0; i <= count; i += 2) {
        const int day = (from_day + i) % days;
        trace.add(azimuth_at(sun, day, hour * steps_per_hour), elevation_at(sun, day, hour * steps_per_hour));
    }
    return trace.path();
}

// ------------------------------------------------------------------------------------------------------- the axes

Axis bearings(const SunPathFrame& where, const Lettering& letters) {
    Axis axis;
    axis.title = QObject::tr("bearing from true north");
    const double degree = where.frame.plot.width() / (where.frame.x_to - where.frame.x_from);
    const double widest = letters.width(QStringLiteral("000° NW")) * 1.25;
    const double step = degree * 30.0 > widest ? 30.0 : (degree * 45.0 > widest ? 45.0 : 90.0);
    for (double x = std::ceil(where.frame.x_from / step) * step; x <= where.frame.x_to + 1e-6; x += step) {
        const double bearing = where.bearing_of(x);
        const bool point = std::fmod(bearing + 1e-6, 45.0) < 1e-3;
        QString text = QStringLiteral("%1°").arg(std::lround(bearing));
        if (point) text += QLatin1Char(' ') + QString::fromLatin1(compass_point(bearing));
        axis.marks.push_back({x, text, std::fmod(bearing + 1e-6, 90.0) < 1e-3});
    }
    return axis;
}

Axis heights(const PlotFrame& frame, const Lettering& letters) {
    Axis axis;
    // A low picture has fewer marks, and no title that would reach beyond it.
    const QString title = QObject::tr("height over the horizon");
    if (letters.width(title) < frame.plot.height() + 2.0 * letters.line()) axis.title = title;
    const double top = frame.y_to;
    const double step = frame.plot.height() * 10.0 / top < 1.1 * letters.line() ? 20.0 : 10.0;
    for (double at = 0.0; at <= top + 1e-6; at += step)
        axis.marks.push_back({at, QStringLiteral("%1°").arg(std::lround(at)), false});
    return axis;
}

// ------------------------------------------------------------------------------------------------------ the labels

void label_hours(const PictureInk& ink, const SunPathPicture& picture, const SunPathFrame& where, LabelPlacer& placer) {
    const QColor colour = inks_of(ink.theme).hours;
    for (int hour = 0; hour < 24; ++hour) {
        if (picture.few_lines && hour % 3 != 0) continue;
        int best = -1;
        for (int day = 0; day < days; ++day) {
            const double up = elevation_at(*picture.sun, day, hour * steps_per_hour);
            if (up > 1.0 && (best < 0 || up > elevation_at(*picture.sun, best, hour * steps_per_hour))) best = day;
        }
        if (best < 0) continue;
        const QPointF at = where.frame.map(where.x_of(azimuth_at(*picture.sun, best, hour * steps_per_hour)),
                                           elevation_at(*picture.sun, best, hour * steps_per_hour));
        const QString text = QString::number(hour);
        const QRectF box = ink.letters.box(at - QPointF(0.0, ink.line * 3.0), Qt::AlignHCenter | Qt::AlignBottom, text);
        if (placer.crowding(box) > 0.2 * box.width() * box.height()) continue;
        placer.keep_free(box);
        ink.letters.draw_in(ink.painter, box, text, colour);
    }
}

void label_days(const PictureInk& ink, const SunPathPicture& picture, const SunPathFrame& where, LabelPlacer& placer) {
    // Between two hour lines, near noon first.
    static constexpr std::array<double, 10> hours = {12.5, 13.5, 11.5, 10.5, 14.5, 9.5, 15.5, 8.5, 16.5, 7.5};
    for (const Curve& curve : curves) {
        if (picture.few_lines && !is_turn(curve)) continue;
        const int day = sky::day_index(curve.month, 21);
        const QString text = QString::fromLatin1(curve.words);
        for (const double hour : hours) {
            const int step = static_cast<int>(hour * steps_per_hour);
            const double up = elevation_at(*picture.sun, day, step);
            if (up < 2.0) continue;
            const QPointF at = where.frame.map(where.x_of(azimuth_at(*picture.sun, day, step)), up);
            const QRectF box = ink.letters.box(at, Qt::AlignCenter, text).adjusted(-2.0, 0.0, 2.0, 0.0);
            if (!placer.is_free(box) || !where.frame.plot.contains(box)) continue;
            placer.keep_free(box);
            ink.letters.draw_in(ink.painter, box, text, ink.theme.text, ink.theme.panel);
            break;
        }
    }
}

}  // namespace

double SunPathFrame::bearing_of(double x) const {
    return wrap_360(centre_deg + x);
}

double SunPathFrame::x_of(double bearing_deg) const {
    return wrap_180(bearing_deg - centre_deg);
}

SunPathFrame sun_path_frame(const SunPathPicture& picture, const QRectF& area, double text_units) {
    SunPathFrame where;
    where.centre_deg = sky::equator_bearing_deg(picture.latitude_deg);
    double half_span = least_half_span_deg;
    double top = least_top_deg;
    if (complete(picture)) {
        for (std::size_t i = 0; i < picture.sun->azimuth_deg.size(); ++i) {
            const auto up = static_cast<double>(picture.sun->elevation_deg[i]);
            if (!(up > 0.0)) continue;
            const double off = std::fabs(where.x_of(static_cast<double>(picture.sun->azimuth_deg[i])));
            half_span = std::max(half_span, off + bearing_margin_deg);
            top = std::max(top, up + 6.0);
        }
    }
    half_span = std::min(180.0, std::ceil(half_span / 15.0) * 15.0);
    where.frame.x_from = -half_span;
    where.frame.x_to = half_span;
    where.frame.y_from = 0.0;
    where.frame.y_to = std::min(90.0, std::ceil(top / 10.0) * 10.0);
    const Lettering letters(text_units);
    const int rows = picture.few_lines
                         ? 0
                         : paint_legend(nullptr, area, legend_of(picture, paper_theme(), 1.0), paper_theme(), letters);
    where.frame.plot = plot_area(area, letters, letters.width(QStringLiteral("90°")) + letters.line(), rows);
    return where;
}

const SkylineStep* skyline_at(const SunPathPicture& picture, double bearing_deg) {
    const SkylineStep* nearest = nullptr;
    double off = 1e300;
    for (const SkylineStep& step : picture.skyline) {
        const double here = std::fabs(wrap_180(step.azimuth_deg - bearing_deg));
        if (here >= off) continue;
        off = here;
        nearest = &step;
    }
    return nearest != nullptr && nearest->elevation_deg > 0.0 ? nearest : nullptr;
}

void paint_sun_path(QPainter& painter, const SunPathPicture& picture, const QRectF& area, const Theme& theme,
                    double text_units) {
    const SunPathFrame where = sun_path_frame(picture, area, text_units);
    const Lettering letters(text_units);
    const double line = text_units / 13.0 * theme.line_scale;
    const PictureInk ink{painter, theme, letters, line};
    const Inks inks = inks_of(theme);
    const Axis x = bearings(where, letters);
    const Axis y = heights(where.frame, letters);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    paint_grid(ink, where.frame, x, y);
    painter.save();
    painter.setClipRect(where.frame.plot, Qt::IntersectClip);
    LabelPlacer placer(where.frame.plot);
    if (picture.plate && picture.plate->tilt_deg > 0.5) {
        fill_behind(painter,
                    silhouette(where,
                               [&](double bearing) {
                                   return sky::behind_plate_below_deg(picture.plate->tilt_deg,
                                                                      picture.plate->azimuth_deg, bearing);
                               }),
                    theme, line);
    }
    if (!picture.horizon.empty()) {
        const site::Horizon horizon(picture.horizon);
        fill_horizon(painter, silhouette(where, [&](double bearing) { return horizon.elevation_deg(bearing); }), theme,
                     line);
    }
    const std::vector<Block> blocks = blocks_of(picture, where);
    for (const Block& block : blocks)
        fill_obstacle(painter, block.path, theme, line, block.steps.front()->tree);
    if (complete(picture)) {
        painter.setBrush(Qt::NoBrush);
        const int winter = sky::day_index(12, 21);
        for (int hour = 0; hour < 24; ++hour) {
            if (picture.few_lines && hour % 3 != 0) continue;
            painter.setPen(QPen(inks.hours, 1.3 * line));
            painter.drawPath(hour_path(*picture.sun, where, hour, winter, 182));
            painter.setPen(QPen(inks.hours, 1.1 * line, Qt::DashLine));
            painter.drawPath(hour_path(*picture.sun, where, hour, sky::day_index(6, 21), 184));
        }
        for (const Curve& curve : curves) {
            if (picture.few_lines && !is_turn(curve)) continue;
            painter.setPen(QPen(inks.sun, (is_turn(curve) ? 2.4 : 1.4) * line));
            painter.drawPath(day_path(*picture.sun, where, sky::day_index(curve.month, 21)));
        }
        label_hours(ink, picture, where, placer);
        label_days(ink, picture, where, placer);
    }
    for (const Block& block : blocks) {
        const QString& words = block.steps.front()->label;
        if (words.isEmpty()) continue;
        const LabelPlacer::Label label = placer.place(block.top, letters.size(words), line * 4.0, {0.0, -1.0});
        letters.draw_in(painter, label.box, words, theme.text, thin(theme.panel, 0.85));
    }
    paint_marks(ink, picture, where, placer);
    painter.restore();
    paint_axes(ink, where.frame, x, y);
    if (!picture.few_lines) paint_legend(&painter, area, legend_of(picture, theme, line), theme, letters);
    painter.restore();
}

QString words_at(const SunPathPicture& picture, double bearing_deg, double elevation_deg) {
    QString text =
        QObject::tr("Bearing %1, height %2").arg(bearing(bearing_deg), quantity(elevation_deg, QStringLiteral("°")));
    text.replace(QStringLiteral("\u202f°"), QStringLiteral("°"));
    if (complete(picture)) {
        constexpr double reach_deg = 1.5;
        const int june = sky::day_index(6, 21);
        QStringList when;
        for (const auto& [from, to] : {std::pair{0, june}, std::pair{june + 1, days - 1}}) {
            const auto found = sky::sun_when(*picture.sun, bearing_deg, elevation_deg, from, to, reach_deg);
            if (!found) continue;
            const CivilDate date = sky::date_of_day(found->day);
            const int minutes = static_cast<int>(std::lround(found->hour * 60.0));
            when += QStringLiteral("%1 %2 %3:%4")
                        .arg(date.day)
                        .arg(QLocale::c().monthName(date.month, QLocale::ShortFormat))
                        .arg(minutes / 60)
                        .arg(minutes % 60, 2, 10, QLatin1Char('0'));
        }
        text += when.isEmpty() ? QObject::tr(": the sun never stands here")
                               : QObject::tr(": sun about %1 standard time").arg(when.join(QObject::tr(" and ")));
    }
    const SkylineStep* front = skyline_at(picture, bearing_deg);
    if (front != nullptr && elevation_deg < front->elevation_deg) text += QObject::tr("; behind %1").arg(front->label);
    if (!picture.horizon.empty() && elevation_deg < site::Horizon(picture.horizon).elevation_deg(bearing_deg)) {
        text += QObject::tr("; below the surveyed horizon");
    }
    if (picture.plate && picture.plate->tilt_deg > 0.5 &&
        elevation_deg < sky::behind_plate_below_deg(picture.plate->tilt_deg, picture.plate->azimuth_deg, bearing_deg)) {
        text += QObject::tr("; behind the collector's face");
    }
    return text;
}

}  // namespace wg::ui
