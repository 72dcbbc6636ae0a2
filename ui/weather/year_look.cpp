#include "ui/weather/year_look.h"

#include <limits>

#include "core/sky/sun_path.h"

namespace wg::ui {

std::shared_ptr<const YearLook> look_at(const std::shared_ptr<const plan::PreparedWeather>& weather) {
    auto look = std::make_shared<YearLook>();
    const weather::Year& year = weather->year;
    look->weather = weather;
    look->report = weather::assess(year);
    look->clear_days = sky::clear_day_profile(weather->sky);
    const sky::SunTable sun =
        sky::sun_table({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h});
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    for (int day = 0; day < 365; ++day) {
        const sky::SunDayFacts facts = sky::sun_day_facts(sun, day);
        look->sunrise_h.push_back(facts.rise_h.value_or(none));
        look->sunset_h.push_back(facts.set_h.value_or(none));
    }
    return look;
}

}  // namespace wg::ui
