#include <algorithm>

#include "core/quantity/time.h"
#include "core/weather/climate.h"
#include "core/weather/humidity.h"

namespace wg::weather {

Climate climate_of(const Year& year, const std::string& id, std::uint64_t seed) {
    Climate climate;
    climate.id = id;
    climate.label = year.source;
    climate.invented = year.invented;
    climate.source = "monthly means of " + year.source;
    climate.latitude_deg = year.latitude_deg;
    climate.longitude_deg = year.longitude_deg;
    climate.altitude_m = year.altitude_m;
    climate.utc_offset_h = year.utc_offset_h;
    climate.seed = seed;
    const auto kept = [](double value, ClimateRange range) { return std::clamp(value, range.low, range.high); };
    for (int month = 1; month <= 12; ++month) {
        const auto m = static_cast<std::size_t>(month) - 1;
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = static_cast<std::size_t>(first_hour_of_month(month + 1));
        const auto hours = static_cast<double>(to - from);
        double global_wh = 0.0;
        double air = 0.0;
        double swing = 0.0;
        double humidity = 0.0;
        double wind = 0.0;
        for (std::size_t i = from; i < to; ++i) {
            global_wh += year.global_w_m2[i];
            air += year.air_c[i];
            humidity += relative_humidity(year.air_c[i], year.dew_point_c[i]);
            wind += year.wind_m_s[i];
        }
        for (std::size_t i = from; i < to; i += 24) {
            const auto day = year.air_c.begin() + static_cast<std::ptrdiff_t>(i);
            const auto [coldest, warmest] = std::minmax_element(day, day + 24);
            swing += *warmest - *coldest;
        }
        const double days = hours / 24.0;
        climate.global_kwh_m2_day[m] = kept(1e-3 * global_wh / days, climate_range::global_kwh_m2_day);
        climate.air_mean_c[m] = kept(air / hours, climate_range::air_mean_c);
        climate.air_daily_swing_k[m] = kept(swing / days, climate_range::air_daily_swing_k);
        climate.relative_humidity[m] = kept(humidity / hours, climate_range::relative_humidity);
        climate.wind_m_s[m] = kept(wind / hours, climate_range::wind_m_s);
    }
    climate.altitude_m = kept(climate.altitude_m, climate_range::altitude_m);
    return climate;
}

}  // namespace wg::weather
