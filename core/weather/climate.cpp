#include "core/weather/climate.h"

#include "core/weather/synthesis.h"

namespace wg::weather {

Result<Year> synthesise(const Climate& climate) {
    Year year;
    year.source = climate.invented ? "invented climate of " + climate.label : "monthly means of " + climate.label;
    year.format = "synthesis";
    year.invented = climate.invented;
    year.latitude_deg = climate.latitude_deg;
    year.longitude_deg = climate.longitude_deg;
    year.altitude_m = climate.altitude_m;
    year.utc_offset_h = climate.utc_offset_h;
    year.sun_minute = 30.0;

    const sun::YearSun sun = sun::year_sun({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h,
                                            year.sun_minute, sun::weather_sun_year});
    Random random(climate.seed);
    const Result<std::vector<double>> clearness = detail::make_light(climate, sun, random, year);
    if (!clearness) return clearness.problems();
    detail::make_air(climate, clearness.value(), random, year);
    detail::make_wind_and_pressure(climate, random, year);
    year.remarks.push_back("Hourly values made from monthly means, seed " + std::to_string(climate.seed) +
                           "; no measured weather.");
    return year;
}

}  // namespace wg::weather
