// Whether the stamps fit the sun: clear mornings and afternoons should mirror each other, in every season alike.

#include <cmath>
#include <cstdint>

#include "core/quantity/time.h"
#include "core/sun/clear_sky.h"
#include "core/sun/ephemeris.h"
#include "core/sun/extraterrestrial.h"
#include "core/weather/quality_parts.h"

namespace wg::weather::detail {
namespace {

constexpr double clear_day_share = 0.85;  // of Haurwitz' clear sky over the day
constexpr double least_clear_day_wh_m2 = 1500.0;
constexpr double largest_shift_min = 120.0;

struct ClearHour {
    double start_unix_s, global;
};

struct ClearHours {
    std::vector<ClearHour> all;
    std::array<std::vector<ClearHour>, 4> season;
};

// December begins the first season.
std::size_t season_of_day(std::size_t day) {
    return static_cast<std::size_t>(month_of_hour(static_cast<int>(24 * day)) % 12 / 3);
}

ClearHours clear_hours(const Year& year, const sun::YearSun& sun, double start_unix_s, QualityReport& report) {
    ClearHours hours;
    for (std::size_t day = 0; day < 365; ++day) {
        double measured = 0.0;
        double clear = 0.0;
        for (std::size_t i = day * 24; i < day * 24 + 24; ++i) {
            measured += year.global_w_m2[i];
            clear += sun::haurwitz_global_w_m2(sun.up[i]);
        }
        if (clear < least_clear_day_wh_m2 || measured < clear_day_share * clear) continue;
        const std::size_t season = season_of_day(day);
        ++report.clear_days;
        ++report.season_clear_days[season];
        for (std::size_t i = day * 24; i < day * 24 + 24; ++i) {
            if (year.global_w_m2[i] <= 0.0) continue;
            hours.all.push_back({start_unix_s + 3600.0 * static_cast<double>(i), year.global_w_m2[i]});
            hours.season[season].push_back(hours.all.back());
        }
    }
    return hours;
}

// The light's centre of gravity against the sun's noon, for stamps shifted to `minute`: weights global with the sun's
// easting. Zero when morning and afternoon carry the same light at the same height of the sun.
double lopsided(const std::vector<ClearHour>& hours, const sun::Ephemeris& ephemeris, const sun::Place& place,
                double minute) {
    double sum = 0.0;
    for (const ClearHour& h : hours)
        sum += h.global * ephemeris.direction(h.start_unix_s + 60.0 * minute, place).east;
    return sum;
}

double shift_min(const std::vector<ClearHour>& hours, const sun::Ephemeris& ephemeris, const sun::Place& place,
                 double sun_minute) {
    // Easting falls with time, so the sum falls with the shift: bisection.
    double low = sun_minute - largest_shift_min;
    double high = sun_minute + largest_shift_min;
    if (lopsided(hours, ephemeris, place, low) <= 0.0) return -largest_shift_min;
    if (lopsided(hours, ephemeris, place, high) >= 0.0) return largest_shift_min;
    while (high - low > 0.1) {
        const double middle = 0.5 * (low + high);
        (lopsided(hours, ephemeris, place, middle) > 0.0 ? low : high) = middle;
    }
    return 0.5 * (low + high) - sun_minute;
}

}  // namespace

void add_shifts(const Year& year, const sun::YearSun& sun, QualityReport& report) {
    const double start = sun::year_start_unix_s(sun::weather_sun_year, year.utc_offset_h);
    const ClearHours hours = clear_hours(year, sun, start, report);
    sun::Observer observer;
    observer.latitude_deg = year.latitude_deg;
    observer.longitude_deg = year.longitude_deg;
    observer.altitude_m = year.altitude_m;
    const sun::Place place(observer);
    const auto start_s = static_cast<std::int64_t>(start);
    const sun::Ephemeris ephemeris(Instant{start_s - 2 * 86400}, Instant{start_s + 367 * 86400},
                                   sun::delta_t_s(sun::weather_sun_year + 0.5));
    if (report.clear_days >= least_clear_days) {
        report.best_shift_min = shift_min(hours.all, ephemeris, place, year.sun_minute);
    }
    for (std::size_t s = 0; s < hours.season.size(); ++s) {
        if (report.season_clear_days[s] < least_clear_season_days) continue;
        report.season_shift_min[s] = shift_min(hours.season[s], ephemeris, place, year.sun_minute);
    }
}

}  // namespace wg::weather::detail
