#include "core/weather/closure.h"

#include <cmath>
#include <cstdint>
#include <vector>

#include "core/sun/ephemeris.h"
#include "core/sun/extraterrestrial.h"
#include "core/sun/year.h"

namespace wg::weather {
namespace {

constexpr double least_beam_w_m2 = 200.0;
constexpr double least_sun_up = 0.08715574;  // sin 5 deg

struct Hour {
    double start_unix_s, beam, difference;
};

double rms_off(const std::vector<Hour>& hours, const sun::Ephemeris& ephemeris, const sun::Place& place,
               double minute) {
    double sum = 0.0;
    for (const Hour& h : hours) {
        const double up = std::fmax(0.0, ephemeris.direction(h.start_unix_s + 60.0 * minute, place).up);
        const double off = h.difference - h.beam * up;
        sum += off * off;
    }
    return std::sqrt(sum / static_cast<double>(hours.size()));
}

}  // namespace

std::optional<ClosureMinute> closure_minute(const Year& year) {
    sun::Observer observer;
    observer.latitude_deg = year.latitude_deg;
    observer.longitude_deg = year.longitude_deg;
    observer.altitude_m = year.altitude_m;
    observer.pressure_pa = sun::standard_pressure_pa_at(year.altitude_m);
    const sun::Place place(observer);
    const double start = sun::year_start_unix_s(sun::weather_sun_year, year.utc_offset_h);
    const auto start_s = static_cast<std::int64_t>(start);
    const sun::Ephemeris ephemeris(Instant{start_s - 2 * 86400}, Instant{start_s + 367 * 86400},
                                   sun::delta_t_s(sun::weather_sun_year + 0.5));
    std::vector<Hour> hours;
    for (std::size_t i = 0; i < year.global_w_m2.size(); ++i) {
        if (year.beam_normal_w_m2[i] < least_beam_w_m2) continue;
        const double from = start + 3600.0 * static_cast<double>(i);
        if (ephemeris.direction(from + 60.0 * year.sun_minute, place).up < least_sun_up) continue;
        hours.push_back({from, year.beam_normal_w_m2[i], year.global_w_m2[i] - year.diffuse_w_m2[i]});
    }
    if (hours.size() < 50) return std::nullopt;

    ClosureMinute best;
    best.hours = static_cast<int>(hours.size());
    best.minute = year.sun_minute;
    best.off_stated_w_m2 = rms_off(hours, ephemeris, place, year.sun_minute);
    best.off_w_m2 = best.off_stated_w_m2;
    // The error has one valley: coarse steps, then finer around the best.
    double from = year.sun_minute - 90.0;
    double to = year.sun_minute + 90.0;
    for (const double step : {10.0, 2.0, 0.5}) {
        for (double minute = from; minute <= to; minute += step) {
            const double off = rms_off(hours, ephemeris, place, minute);
            if (off < best.off_w_m2) {
                best.off_w_m2 = off;
                best.minute = minute;
            }
        }
        from = best.minute - step;
        to = best.minute + step;
    }
    return best;
}

}  // namespace wg::weather
