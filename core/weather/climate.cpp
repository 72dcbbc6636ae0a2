#include "core/weather/climate.h"

#include "core/quantity/text.h"
#include "core/weather/synthesis.h"

namespace wg::weather {
namespace detail {

// Climates do not only come from files: whatever made one, figures outside the ranges end here.
std::vector<Problem> problems_of(const Climate& climate) {
    std::vector<Problem> problems;
    const auto check = [&](double value, const std::string& field, ClimateRange range) {
        if (value >= range.low && value <= range.high) return;
        problems.push_back(
            {climate.id + ": " + field,
             "is " + fixed(value, 3) + ", outside " + fixed(range.low, 2) + " to " + fixed(range.high, 2),
             "Correct the figure"});
    };
    const auto check_months = [&](const std::array<double, 12>& values, const std::string& field, ClimateRange range) {
        for (std::size_t m = 0; m < 12; ++m)
            check(values[m], field + "[" + std::to_string(m) + "]", range);
    };
    check(climate.latitude_deg, "latitude_deg", climate_range::latitude_deg);
    check(climate.longitude_deg, "longitude_deg", climate_range::longitude_deg);
    check(climate.altitude_m, "altitude_m", climate_range::altitude_m);
    check(climate.utc_offset_h, "utc_offset_h", climate_range::utc_offset_h);
    check_months(climate.global_kwh_m2_day, "global_kwh_m2_day", climate_range::global_kwh_m2_day);
    check_months(climate.air_mean_c, "air_mean_c", climate_range::air_mean_c);
    check_months(climate.air_daily_swing_k, "air_daily_swing_k", climate_range::air_daily_swing_k);
    check_months(climate.relative_humidity, "relative_humidity", climate_range::relative_humidity);
    check_months(climate.wind_m_s, "wind_m_s", climate_range::wind_m_s);
    if (climate.global_variation)
        check_months(*climate.global_variation, "global_variation", climate_range::global_variation);
    if (climate.air_spread_k) check_months(*climate.air_spread_k, "air_spread_k", climate_range::air_spread_k);
    return problems;
}

Result<Year> synthesise_with(const Climate& climate, const sun::YearSun& sun) {
    Year year;
    year.source = climate.invented ? "invented climate of " + climate.label : "monthly means of " + climate.label;
    year.format = "synthesis";
    year.invented = climate.invented;
    year.latitude_deg = climate.latitude_deg;
    year.longitude_deg = climate.longitude_deg;
    year.altitude_m = climate.altitude_m;
    year.utc_offset_h = climate.utc_offset_h;
    year.sun_minute = 30.0;
    Random random(climate.seed);
    const Result<std::vector<double>> clearness = make_light(climate, sun, random, year);
    if (!clearness) return clearness.problems();
    make_air(climate, clearness.value(), random, year);
    make_wind_and_pressure(climate, random, year);
    year.remarks.push_back("Hourly values made from monthly means, seed " + std::to_string(climate.seed) +
                           "; no measured weather.");
    return year;
}

}  // namespace detail

Result<Year> synthesise(const Climate& climate) {
    std::vector<Problem> problems = detail::problems_of(climate);
    if (!problems.empty()) return problems;
    return detail::synthesise_with(
        climate, sun::year_sun({climate.latitude_deg, climate.longitude_deg, climate.altitude_m, climate.utc_offset_h,
                                30.0, sun::weather_sun_year}));
}

}  // namespace wg::weather
