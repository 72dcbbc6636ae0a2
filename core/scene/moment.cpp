#include "core/scene/moment.h"

#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/site/occluders.h"
#include "core/sky/sun_path.h"
#include "core/sun/day.h"
#include "core/sun/position.h"
#include "core/sun/year.h"

namespace wg::scene {
namespace {

sun::Observer observer_of(const Location& location) {
    sun::Observer observer;
    observer.latitude_deg = location.latitude_deg;
    observer.longitude_deg = location.longitude_deg;
    observer.altitude_m = location.altitude_m;
    return observer;
}

double start_of_day_unix_s(const Location& location, int day) {
    return sun::year_start_unix_s(sun::weather_sun_year, location.utc_offset_h) + 86400.0 * day;
}

}  // namespace

SunOverSite sun_over(const Site& site, const Moment& moment) {
    const double when = start_of_day_unix_s(site.location, moment.day) + 3600.0 * moment.hour;
    const double whole = std::floor(when);
    const sun::Position at = sun::position(Instant{static_cast<std::int64_t>(whole)}, when - whole,
                                           observer_of(site.location), sun::delta_t_s(sun::weather_sun_year + 0.5));
    SunOverSite out;
    out.elevation_deg = 90.0 - at.apparent_zenith_deg;
    out.azimuth_deg = at.azimuth_deg;
    const double up = std::sin(radians(out.elevation_deg)), level = std::cos(radians(out.elevation_deg));
    const double east = level * std::sin(radians(out.azimuth_deg)), north = level * std::cos(radians(out.azimuth_deg));
    out.to_sun = site::to_sketch(east, north, up, site.sketch_up_azimuth_deg);
    out.month = sky::date_of_day(moment.day).month;
    out.up = up > 0.0;
    out.behind_horizon = out.up && site::Horizon(site.horizon).hides(east, north, up);
    return out;
}

std::optional<Daylight> daylight(const Site& site, int day) {
    const sun::SunDay facts =
        sun::sun_day(sky::date_of_day(day), observer_of(site.location), sun::delta_t_s(sun::weather_sun_year + 0.5));
    if (facts.kind == sun::DayKind::polar_night) return std::nullopt;
    if (facts.kind == sun::DayKind::polar_day || !facts.sunrise_unix_s || !facts.sunset_unix_s)
        return Daylight{0.0, 24.0, true};
    const double start = start_of_day_unix_s(site.location, day);
    return Daylight{(*facts.sunrise_unix_s - start) / 3600.0, (*facts.sunset_unix_s - start) / 3600.0, false};
}

}  // namespace wg::scene
