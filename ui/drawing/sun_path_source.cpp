#include "ui/drawing/sun_path_source.h"

#include <QObject>
#include <cmath>

#include "core/site/skyline.h"
#include "ui/common/format.h"

namespace wg::ui {
namespace {

QString time_of_day(double hour) {
    const int minutes = static_cast<int>(std::lround(hour * 60.0));
    return QStringLiteral("%1:%2").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

QString sun_day_words(const QString& name, const sky::SunDayFacts& facts) {
    if (facts.down_all_day) return QObject::tr("%1: the sun stays below the horizon.").arg(name);
    if (facts.up_all_day) {
        return QObject::tr("%1: the sun stays up all day, at most %2° high.")
            .arg(name)
            .arg(std::lround(facts.highest_deg));
    }
    if (!facts.rise_h || !facts.set_h)
        return QObject::tr("%1: at most %2° high.").arg(name).arg(std::lround(facts.highest_deg));
    return QObject::tr("%1: sun from %2 to %3, at most %4° high.")
        .arg(name, time_of_day(*facts.rise_h), time_of_day(*facts.set_h))
        .arg(std::lround(facts.highest_deg));
}

}  // namespace

void SunPathSource::show_site(const Site& site) {
    const Location& at = site.location;
    const sky::SunPlace place{at.latitude_deg, at.longitude_deg, at.altitude_m, at.utc_offset_h};
    if (picture_.sun == nullptr || !(place == place_)) {
        picture_.sun = std::make_shared<const sky::SunTable>(sky::sun_table(place));
        place_ = place;
    }
    picture_.latitude_deg = at.latitude_deg;
    picture_.horizon = site.horizon;
}

void SunPathSource::show_plate(const Site& site, const site::PlacedCollector* placed, const std::string& surface_id) {
    show_site(site);
    picture_.skyline.clear();
    picture_.plate.reset();
    if (placed == nullptr) return;
    picture_.plate = {placed->tilt_deg, placed->azimuth_deg};
    for (const site::SkylinePoint& point : site::skyline(site, *placed, surface_id).things)
        picture_.skyline.push_back({point.azimuth_deg, point.elevation_deg, point.id, qs(point.label), point.is_tree});
}

void SunPathSource::put_into(PictureView& view) const {
    view.show_picture([this](QPainter& painter, const QRectF& area, const Theme& theme,
                             double text_units) { paint_sun_path(painter, picture_, area, theme, text_units); },
                      [this](const QRectF& area, QPointF pointer, double text_units) {
                          const SunPathFrame where = sun_path_frame(picture_, area, text_units);
                          if (!where.frame.plot.contains(pointer)) return QString();
                          const QPointF value = where.frame.value_at(pointer);
                          return words_at(picture_, where.bearing_of(value.x()), value.y());
                      });
}

QString sun_path_words(const SunPathPicture& picture) {
    if (picture.sun == nullptr) return {};
    return sun_day_words(QObject::tr("21 June"), sky::sun_day_facts(*picture.sun, sky::day_index(6, 21))) +
           QLatin1Char(' ') +
           sun_day_words(QObject::tr("21 December"), sky::sun_day_facts(*picture.sun, sky::day_index(12, 21))) +
           QObject::tr(" Times are local standard time, without summer time.");
}

}  // namespace wg::ui
