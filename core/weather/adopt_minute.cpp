#include "core/weather/adopt_minute.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "core/quantity/text.h"
#include "core/weather/closure.h"

namespace wg::weather::detail {
namespace {

constexpr double contradiction_min = 5.0;

// Whole hours between stamp and light mean that the stamps are wrong for everything in the row.
void move_rows(Year& year, int hours_later) {
    if (hours_later == 0) return;
    const int shift = ((-hours_later) % hours_in_year + hours_in_year) % hours_in_year;
    for (std::vector<double>* series :
         {&year.global_w_m2, &year.beam_normal_w_m2, &year.diffuse_w_m2, &year.air_c, &year.dew_point_c, &year.wind_m_s,
          &year.pressure_pa, &year.sky_long_wave_w_m2, &year.sky_cover}) {
        if (!series->empty()) std::rotate(series->begin(), series->begin() + shift, series->end());
    }
    year.remarks.push_back("All rows moved " + counted(std::abs(hours_later), "hour", "hours") +
                           (hours_later > 0 ? " later." : " earlier."));
}

}  // namespace

void adopt_minute_of_light(Year& year) {
    const std::optional<ClosureMinute> found = closure_minute(year);
    if (!found || !found->sharp() || std::fabs(found->minute - year.sun_minute) < contradiction_min) return;
    year.remarks.push_back("The format puts the sun at minute " + fixed(year.sun_minute, 0) +
                           " of the hour, but global, beam and diffuse of " + counted(found->hours, "hour", "hours") +
                           " only fit together with the sun at minute " + fixed(found->minute, 0) + " (" +
                           fixed(found->off_w_m2, 1) + " instead of " + fixed(found->off_stated_w_m2, 1) +
                           " W/m2 off): minute " + fixed(found->minute, 0) + " is used.");
    const double whole_hours = std::floor(found->minute / 60.0);
    year.sun_minute = found->minute - 60.0 * whole_hours;
    move_rows(year, static_cast<int>(whole_hours));
}

}  // namespace wg::weather::detail
