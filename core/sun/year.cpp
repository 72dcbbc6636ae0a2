#include "core/sun/year.h"

#include <cmath>
#include <cstddef>
#include <cstdint>

#include "core/quantity/time.h"
#include "core/sun/ephemeris.h"
#include "core/sun/extraterrestrial.h"

namespace wg::sun {
namespace {

constexpr std::size_t hours = 8760;
constexpr double refraction_air_c = 12.0;
// The sun moves at most 7.5 deg in half an hour, and refraction lifts it by 0.6 deg at the horizon: sin 9 deg. Higher
// or lower at the middle of the hour, it does not cross the horizon within it.
constexpr double crossing_possible = 0.1564;

// Moment between `dark` and `light` at which the centre of the disc crosses the horizon as seen. Regula falsi with
// halving of the stale end (Illinois): elevation is nearly straight over an hour, so a few steps reach 0.1 s.
double crossing(const Ephemeris& ephemeris, const Place& place, double dark, double dark_up, double light,
                double light_up) {
    int side = 0;
    double at = dark;
    for (int i = 0; i < 30; ++i) {
        const double next = (dark * light_up - light * dark_up) / (light_up - dark_up);
        const bool settled = i > 0 && next - at < 0.1 && at - next < 0.1;
        at = next;
        if (settled) break;
        const double up = ephemeris.direction(at, place).up;
        if (up > 0.0) {
            light = at;
            light_up = up;
            if (side == 1) dark_up *= 0.5;
            side = 1;
        } else {
            dark = at;
            dark_up = up;
            if (side == -1) light_up *= 0.5;
            side = -1;
        }
    }
    return at;
}

struct SunUp {
    double middle_s;
    double share;
};

// The part of an hour with the sun up, from its elevation at start, middle and end. The sun's path is a smooth hump or
// hollow, so one crossing on each side of the middle is all there can be.
SunUp sun_up_part(const Ephemeris& ephemeris, const Place& place, double start_s, double start_up, double mid_up,
                  double end_up) {
    const double mid_s = start_s + 1800.0;
    const double end_s = start_s + 3600.0;
    if (start_up > 0.0 && mid_up > 0.0 && end_up > 0.0) return {mid_s, 1.0};
    if (start_up <= 0.0 && mid_up <= 0.0 && end_up <= 0.0) return {mid_s, 0.0};
    double from = start_s;
    double to = end_s;
    if ((start_up > 0.0) != (mid_up > 0.0)) {
        const bool rises = mid_up > 0.0;
        const double t = rises ? crossing(ephemeris, place, start_s, start_up, mid_s, mid_up)
                               : crossing(ephemeris, place, mid_s, mid_up, start_s, start_up);
        (rises ? from : to) = t;
    }
    if ((mid_up > 0.0) != (end_up > 0.0)) {
        const bool rises = end_up > 0.0;
        const double t = rises ? crossing(ephemeris, place, mid_s, mid_up, end_s, end_up)
                               : crossing(ephemeris, place, end_s, end_up, mid_s, mid_up);
        (rises ? from : to) = t;
    }
    if (from > to) {
        // A dip below the horizon inside the hour, near the border of the midnight sun: two parts; the longer one
        // stands for both.
        const double share = 1.0 - (from - to) / 3600.0;
        return to - start_s >= end_s - from ? SunUp{0.5 * (start_s + to), share} : SunUp{0.5 * (from + end_s), share};
    }
    return {0.5 * (from + to), (to - from) / 3600.0};
}

}  // namespace

double year_start_unix_s(int year, double utc_offset_h) noexcept {
    return static_cast<double>(days_from_civil({year, 1, 1})) * 86400.0 - utc_offset_h * 3600.0;
}

YearSun year_sun(const YearSunInput& input) {
    Observer observer;
    observer.latitude_deg = input.latitude_deg;
    observer.longitude_deg = input.longitude_deg;
    observer.altitude_m = input.altitude_m;
    observer.pressure_pa = standard_pressure_pa_at(input.altitude_m);
    observer.temperature_c = refraction_air_c;
    const Place place(observer);

    const double start = year_start_unix_s(input.year, input.utc_offset_h);
    const auto start_s = static_cast<std::int64_t>(start);
    const Ephemeris ephemeris(Instant{start_s - 86400}, Instant{start_s + 367 * 86400},
                              delta_t_s(static_cast<double>(input.year) + 0.5));
    YearSun sun;
    for (std::vector<double>* series :
         {&sun.east, &sun.north, &sun.up, &sun.up_share, &sun.extraterrestrial_normal_w_m2}) {
        series->resize(hours);
    }
    const std::size_t before_leap = is_leap_year(input.year) ? static_cast<std::size_t>(first_hour_of_month(3)) : hours;
    // Two runs of even hours, before 29 February and after it; one where the year has none.
    const auto positions_at = [&](double minute, YearSun& of) {
        const auto run = [&](std::size_t first, std::size_t count, double start_of_run_s) {
            if (count == 0) return;
            ephemeris.directions(start_of_run_s + 60.0 * minute, 3600.0, place, {&of.east[first], count},
                                 {&of.north[first], count}, {&of.up[first], count});
        };
        run(0, before_leap, start);
        run(before_leap, hours - before_leap, start + 3600.0 * static_cast<double>(before_leap + 24));
    };
    const bool hour_mean = input.minute == 30.0;
    positions_at(30.0, sun);

    double known_edge_s = -1.0;  // the end of an hour is the start of the next
    double known_edge_up = 0.0;
    for (std::size_t i = 0; i < hours; ++i) {
        const double from = start + 3600.0 * static_cast<double>(i + (i >= before_leap ? 24 : 0));
        sun.extraterrestrial_normal_w_m2[i] = extraterrestrial_normal_w_m2(ephemeris.distance_au(from + 1800.0));
        const double mid_up = sun.up[i];
        if (!(std::fabs(mid_up) < crossing_possible)) {
            sun.up_share[i] = mid_up > 0.0 ? 1.0 : 0.0;
            continue;
        }
        const double first_up = known_edge_s == from ? known_edge_up : ephemeris.direction(from, place).up;
        known_edge_s = from + 3600.0;
        known_edge_up = ephemeris.direction(known_edge_s, place).up;
        const SunUp part = sun_up_part(ephemeris, place, from, first_up, mid_up, known_edge_up);
        sun.up_share[i] = part.share;
        if (!hour_mean || part.middle_s == from + 1800.0) continue;
        const Direction d = ephemeris.direction(part.middle_s, place);
        sun.east[i] = d.east;
        sun.north[i] = d.north;
        sun.up[i] = d.up;
    }
    if (!hour_mean) positions_at(input.minute, sun);
    return sun;
}

}  // namespace wg::sun
