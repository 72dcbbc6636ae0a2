#include "core/sun/day.h"

#include <cmath>
#include <cstdint>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sun/ephemeris.h"
#include "core/sun/geocentric.h"

namespace wg::sun {
namespace {

constexpr double half_day_s = 43200.0;
constexpr double seconds_per_degree = 240.0;

double elevation_above_rise(const Ephemeris& ephemeris, const Place& no_air, double unix_s) {
    const double up = ephemeris.direction(unix_s, no_air).up;
    return degrees(std::asin(std::fmin(1.0, std::fmax(-1.0, up)))) - upper_limb_elevation_deg;
}

// Bisection from a moment below to a moment above the horizon (in either order of time) to 0.05 s.
double crossing(const Ephemeris& ephemeris, const Place& no_air, double below_s, double above_s) {
    while (std::fabs(above_s - below_s) > 0.05) {
        const double middle = 0.5 * (below_s + above_s);
        (elevation_above_rise(ephemeris, no_air, middle) > 0.0 ? above_s : below_s) = middle;
    }
    return 0.5 * (below_s + above_s);
}

}  // namespace

SunDay sun_day(CivilDate date, const Observer& observer, double delta_t_s) {
    Observer without_air = observer;
    without_air.pressure_pa = 0.0;
    const Place place(without_air);

    const auto midnight_s = static_cast<double>(days_from_civil(date)) * 86400.0;
    const double mean_noon = midnight_s + half_day_s - seconds_per_degree * observer.longitude_deg;
    const auto mean_noon_s = static_cast<std::int64_t>(mean_noon);
    const Ephemeris ephemeris(Instant{mean_noon_s - 86400}, Instant{mean_noon_s + 86400}, delta_t_s);

    SunDay day;
    day.noon_unix_s = mean_noon;
    for (int i = 0; i < 3; ++i) {  // the hour angle is even to 1e-4; two corrections suffice
        const double hour_angle_deg =
            wrap_180(ephemeris.greenwich_hour_angle_deg(day.noon_unix_s) + observer.longitude_deg);
        day.noon_unix_s -= seconds_per_degree * hour_angle_deg;
    }
    const double at_noon = elevation_above_rise(ephemeris, place, day.noon_unix_s);
    day.noon_elevation_deg = at_noon + upper_limb_elevation_deg;
    if (at_noon <= 0.0) {
        day.kind = DayKind::polar_night;
        return day;
    }
    const double before = day.noon_unix_s - half_day_s;
    const double after = day.noon_unix_s + half_day_s;
    if (elevation_above_rise(ephemeris, place, before) <= 0.0) {
        day.sunrise_unix_s = crossing(ephemeris, place, before, day.noon_unix_s);
    }
    if (elevation_above_rise(ephemeris, place, after) <= 0.0) {
        day.sunset_unix_s = crossing(ephemeris, place, after, day.noon_unix_s);
    }
    if (!day.sunrise_unix_s && !day.sunset_unix_s) day.kind = DayKind::polar_day;
    day.day_length_h = (day.sunset_unix_s.value_or(after) - day.sunrise_unix_s.value_or(before)) / 3600.0;
    return day;
}

}  // namespace wg::sun
