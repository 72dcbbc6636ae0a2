// Warming up through the year, under each month's mean day and night.
#include <algorithm>
#include <cmath>

#include "core/plan/prepared_choice.h"
#include "core/plan/sizing_advice.h"
#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/season/schedule.h"

namespace wg::plan {
namespace {

/// Hours of the sun's own clock, 12 when it stands highest, from where it stands (spherical triangle).
double sun_time_h(const sky::PreparedYear& year, std::size_t hour) {
    const double latitude = radians(year.latitude_deg);
    const double west = -year.sun_east[hour];
    const double towards_equator = year.sun_up[hour] * std::cos(latitude) - year.sun_north[hour] * std::sin(latitude);
    return 12.0 + degrees(std::atan2(west, towards_equator)) / 15.0;
}

/// Relative humidity of a dew point: the Magnus form over water.
double humidity_of(double air_c, double dew_point_c) {
    const auto exponent = [](double t_c) { return 17.62 * t_c / (243.12 + t_c); };
    return std::clamp(std::exp(exponent(dew_point_c) - exponent(air_c)), 0.01, 1.0);
}

struct Sums {
    double hours = 0.0, front = 0.0, rear = 0.0, air = 0.0, dew = 0.0, wind = 0.0, sky_below = 0.0;
};

void add_hour(const season::Input& input, std::size_t h, Sums& sums) {
    sums.hours += 1.0;
    for (const season::PlateGroup& group : input.groups) {
        const double share = static_cast<double>(group.count) / input.plates();
        sums.front += share * group.front_w_m2[h];
        sums.rear += share * group.rear_w_m2[h];
        sums.wind += share * group.wind_plate_m_s[h];
    }
    sums.air += input.air_c[h];
    sums.dew += input.dew_point_c[h];
    sums.sky_below += kelvin(input.air_c[h]) - input.sky_k[h];
}

season::WarmUpConditions mean_of(const Sums& s, double start_c) {
    season::WarmUpConditions c;
    c.start_c = start_c;
    c.light_w_m2 = s.front / s.hours;
    c.rear_light_w_m2 = s.rear / s.hours;
    c.air_c = s.air / s.hours;
    c.relative_humidity = humidity_of(c.air_c, s.dew / s.hours);
    c.wind_m_s = s.wind / s.hours;
    c.sky_below_air_k = s.sky_below / s.hours;
    return c;
}

}  // namespace

Result<MonthsWarmUp> warm_up_by_month(const Job& job, const Reference& reference, const std::string& choice_id) {
    const Result<detail::PreparedChoice> prepared = detail::prepared_choice(job, reference, choice_id);
    if (!prepared) return prepared.problems();
    const season::Input& input = prepared.value().input;
    const sky::PreparedYear& year = prepared.value().with.weather->sky;
    std::array<Sums, 12> days{}, nights{};
    std::array<double, 12> cold{}, cold_days{};
    const auto inflow = season::cold_inflow_c(input.air_c, input.demand);
    for (std::size_t h = 0; h < year.sun_up.size(); ++h) {
        const auto month = static_cast<std::size_t>(month_of_hour(static_cast<int>(h)) - 1);
        const double clock = sun_time_h(year, h);
        if (clock >= 9.0 && clock < 17.0) add_hour(input, h, days[month]);
        if (clock >= 21.0 || clock < 5.0) add_hour(input, h, nights[month]);
        cold[month] += inflow[h / 24];
        cold_days[month] += 1.0;
    }
    MonthsWarmUp out;
    for (std::size_t m = 0; m < 12; ++m) {
        const double start_c = cold[m] / cold_days[m];
        for (auto [sums, into] : {std::pair{&days[m], &out.day[m]}, std::pair{&nights[m], &out.night[m]}}) {
            into->conditions = mean_of(*sums, start_c);
            const Result<season::WarmUp> warm = season::warm_up(input, into->conditions);
            if (!warm) return warm.problems();
            into->warm_up = warm.value();
        }
    }
    out.method =
        "from the month's cold inflow to the set-point without draw-off, immersion heater off, the month's mean "
        "weather "
        "held constant: by day the mean of 09:00 to 17:00, by night of 21:00 to 05:00 sun time; weather " +
        prepared.value().with.weather->year.source;
    return out;
}

}  // namespace wg::plan
