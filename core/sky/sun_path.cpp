#include "core/sky/sun_path.h"

#include <cmath>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"
#include "core/sun/ephemeris.h"
#include "core/sun/year.h"

namespace wg::sky {
namespace {

constexpr int days = 365;

struct Vector {
    double east, north, up;
};

Vector towards(double azimuth_deg, double elevation_deg) noexcept {
    const double azimuth = radians(azimuth_deg);
    const double elevation = radians(elevation_deg);
    return {std::cos(elevation) * std::sin(azimuth), std::cos(elevation) * std::cos(azimuth), std::sin(elevation)};
}

}  // namespace

SunTable sun_table(const SunPlace& where) {
    sun::Observer observer;
    observer.latitude_deg = where.latitude_deg;
    observer.longitude_deg = where.longitude_deg;
    observer.altitude_m = where.altitude_m;
    const sun::Place place(observer);
    const double start = sun::year_start_unix_s(sun::weather_sun_year, where.utc_offset_h);
    const auto start_s = static_cast<std::int64_t>(start);
    const sun::Ephemeris ephemeris(Instant{start_s - 86400}, Instant{start_s + (days + 1) * 86400},
                                   sun::delta_t_s(sun::weather_sun_year + 0.5));
    SunTable table;
    const auto count = static_cast<std::size_t>(days * sun_steps_per_day);
    table.azimuth_deg.resize(count);
    table.elevation_deg.resize(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double when = start + static_cast<double>(i) * (86400.0 / sun_steps_per_day);
        const sun::Direction to = ephemeris.direction(when, place);
        table.azimuth_deg[i] = static_cast<float>(wrap_360(degrees(std::atan2(to.east, to.north))));
        table.elevation_deg[i] = static_cast<float>(degrees(std::asin(std::fmax(-1.0, std::fmin(1.0, to.up)))));
    }
    return table;
}

int day_index(int month, int day) noexcept {
    return first_hour_of_month(month) / 24 + day - 1;
}

CivilDate date_of_day(int day) noexcept {
    const int month = month_of_hour(day * 24);
    return {sun::weather_sun_year, month, day - first_hour_of_month(month) / 24 + 1};
}

std::optional<SunWhen> sun_when(const SunTable& table, double azimuth_deg, double elevation_deg, int from_day,
                                int to_day, double reach_deg) {
    const Vector wanted = towards(azimuth_deg, elevation_deg);
    double best = std::cos(radians(reach_deg));
    std::optional<SunWhen> found;
    for (int day = from_day; day <= to_day; ++day) {
        for (int step = 0; step < sun_steps_per_day; ++step) {
            const std::size_t i = SunTable::index(day, step);
            const auto elevation = static_cast<double>(table.elevation_deg[i]);
            // Directions differ at least as much as their elevations do.
            if (std::fabs(elevation - elevation_deg) > reach_deg) continue;
            const Vector sun = towards(static_cast<double>(table.azimuth_deg[i]), elevation);
            const double cosine = wanted.east * sun.east + wanted.north * sun.north + wanted.up * sun.up;
            if (cosine <= best) continue;
            best = cosine;
            found = SunWhen{day, step * (24.0 / sun_steps_per_day), 0.0};
        }
    }
    if (found) found->off_deg = degrees(std::acos(std::fmin(1.0, best)));
    return found;
}

SunDayFacts sun_day_facts(const SunTable& table, int day) {
    SunDayFacts facts;
    facts.up_all_day = facts.down_all_day = true;
    facts.highest_deg = -90.0;
    const auto up = [&](int step) { return static_cast<double>(table.elevation_deg[SunTable::index(day, step)]); };
    for (int step = 0; step < sun_steps_per_day; ++step) {
        const double now = up(step);
        facts.highest_deg = std::fmax(facts.highest_deg, now);
        (now > 0.0 ? facts.down_all_day : facts.up_all_day) = false;
        if (step == 0) continue;
        const double before = up(step - 1);
        if ((before > 0.0) == (now > 0.0)) continue;
        const double hour = (step - 1 + before / (before - now)) * (24.0 / sun_steps_per_day);
        if (now > 0.0) {
            if (!facts.rise_h) facts.rise_h = hour;
        } else {
            facts.set_h = hour;
        }
    }
    return facts;
}

double equator_bearing_deg(double latitude_deg) noexcept {
    return latitude_deg < 0.0 ? 0.0 : 180.0;
}

double behind_plate_below_deg(double tilt_deg, double plate_azimuth_deg, double bearing_deg) noexcept {
    // The face sees the sun when sin(tilt) cos(el) cos(difference) + cos(tilt) sin(el) is above zero.
    const double along = std::sin(radians(tilt_deg)) * std::cos(radians(bearing_deg - plate_azimuth_deg));
    const double across = std::fmax(0.0, std::cos(radians(tilt_deg)));
    if (along >= 0.0) return along == 0.0 ? 0.0 : -degrees(std::atan2(along, across));
    return degrees(std::atan2(-along, across));
}

}  // namespace wg::sky
