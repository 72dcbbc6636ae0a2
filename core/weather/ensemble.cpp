#include "core/weather/ensemble.h"

#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/sun/year.h"
#include "core/weather/random.h"
#include "core/weather/synthesis.h"

namespace wg::weather {
namespace {

// Years are cut at 2.5 standard deviations on both sides, so that the mean stays; what that takes from the deviation is
// given back: the variance of a standard normal so cut is 1 - 2Q - 2 c phi + 2 c^2 Q = 0.97756.
constexpr double cut = 2.5;
constexpr double deviation_of_cut = 0.98872;
constexpr double reach = cut / deviation_of_cut;
constexpr double darkest_share = 0.2;  // of the mean

// Correlation of the light of any two months of a year. Assumed: with it a year's sum varies by 4 to 5 % in Central
// Europe and by about 1.5 % in deserts, as is commonly said of long records.
constexpr double months_together = 0.1;
constexpr double air_month_persistence = 0.3;  // assumed
constexpr double air_with_light = 0.5;         // correlation of a bright with a warm month at midsummer, assumed

sun::YearSun sun_of(const Climate& climate) {
    return sun::year_sun({climate.latitude_deg, climate.longitude_deg, climate.altitude_m, climate.utc_offset_h, 30.0,
                          sun::weather_sun_year});
}

double mean_of(const std::array<double, 12>& months) {
    double sum = 0.0;
    for (const double m : months)
        sum += m / 12.0;
    return sum;
}

std::array<double, 12> outside_kwh_m2_day(const sun::YearSun& sun) {
    std::array<double, 12> out{};
    for (int h = 0; h < hours_in_year; ++h) {
        const auto i = static_cast<std::size_t>(h);
        const int month = month_of_hour(h);
        const double days = (first_hour_of_month(month + 1) - first_hour_of_month(month)) / 24.0;
        out[static_cast<std::size_t>(month) - 1] +=
            1e-3 * sun.up_share[i] * std::fmax(0.0, sun.up[i]) * sun.extraterrestrial_normal_w_m2[i] / days;
    }
    return out;
}

// A month's mean of n days that scatter by s and persist by phi scatters by about s sqrt((1 + phi) / ((1 - phi) n)).
double variation_of_days(double mean_clearness, int month) {
    const detail::DaySpread day = detail::day_spread(std::clamp(mean_clearness, 0.02, 0.8));
    const double days = (first_hour_of_month(month + 1) - first_hour_of_month(month)) / 24.0;
    return day.deviation * std::sqrt((1.0 + day.persistence) / ((1.0 - day.persistence) * days)) / mean_clearness;
}

YearToYear year_to_year_with(const Climate& climate, const sun::YearSun& sun) {
    const std::array<double, 12> outside = outside_kwh_m2_day(sun);
    const std::array<double, 12> most = detail::most_global_kwh_m2_day(climate, sun);
    const auto [coldest, warmest] = std::minmax_element(climate.air_mean_c.begin(), climate.air_mean_c.end());
    const double range_k = *warmest - *coldest;
    const double middle_c = 0.5 * (*warmest + *coldest);
    YearToYear out;
    for (int month = 1; month <= 12; ++month) {
        const auto m = static_cast<std::size_t>(month) - 1;
        const double light = climate.global_kwh_m2_day[m];
        if (light > 0.0 && outside[m] > 0.0) {
            const double wanted = climate.global_variation ? (*climate.global_variation)[m]
                                                           : variation_of_days(light / outside[m], month);
            const double room = std::fmin(1.0 - darkest_share, most[m] / light - 1.0);
            out.global_variation[m] = std::clamp(wanted, 0.0, std::fmax(0.0, room / reach));
        }
        const double winter = (middle_c - climate.air_mean_c[m]) / std::fmax(1.0, 0.5 * range_k);  // -1..1
        out.air_spread_k[m] =
            climate.air_spread_k ? (*climate.air_spread_k)[m] : std::fmin(4.0, 0.4 + range_k * (0.065 + 0.03 * winter));
    }
    return out;
}

Result<Climate> checked(const Climate& climate, int number) {
    if (number < 1 || number > most_ensemble_years) {
        return Problem{climate.id + ": year " + std::to_string(number),
                       "is outside 1 to " + std::to_string(most_ensemble_years), "Ask for fewer years"};
    }
    std::vector<Problem> problems = detail::problems_of(climate);
    if (!problems.empty()) return problems;
    return climate;
}

Climate varied(const Climate& climate, int number, const YearToYear& spread) {
    // Two different texts of bits for any two (seed, number): the multiplier is odd, hence one to one.
    constexpr std::uint64_t odd = 0xD1342543DE82EF95U;
    const std::uint64_t stream = odd * static_cast<unsigned>(number);
    Random random(climate.seed ^ stream);
    Climate out = climate;
    out.seed = random.next();
    out.label += ", year " + std::to_string(number);
    const double mean_light = std::fmax(0.1, mean_of(climate.global_kwh_m2_day));
    const double year = random.normal();
    Persistent weather(air_month_persistence, random);
    for (std::size_t m = 0; m < 12; ++m) {
        const double own = random.normal();
        const double light =
            std::clamp(std::sqrt(months_together) * year + std::sqrt(1.0 - months_together) * own, -cut, cut) /
            deviation_of_cut;
        out.global_kwh_m2_day[m] *= 1.0 + spread.global_variation[m] * light;
        const double season = std::clamp(1.5 * (climate.global_kwh_m2_day[m] / mean_light - 1.0), -0.5, 1.0);
        const double together = air_with_light * season;
        const double air = together * light + std::sqrt(1.0 - together * together) * weather.next();
        out.air_mean_c[m] = std::clamp(out.air_mean_c[m] + spread.air_spread_k[m] * std::clamp(air, -reach, reach),
                                       climate_range::air_mean_c.low, climate_range::air_mean_c.high);
    }
    return out;
}

Result<Year> made(const Climate& climate, const sun::YearSun& sun, int number) {
    Result<Year> year = detail::synthesise_with(climate, sun);
    if (year) {
        year.value().remarks.push_back("Year " + std::to_string(number) +
                                       " of an ensemble: its months differ from the climate's means as years do.");
    }
    return year;
}

}  // namespace

YearToYear year_to_year(const Climate& climate) {
    return year_to_year_with(climate, sun_of(climate));
}

Climate within_cloudless(Climate climate) {
    const std::array<double, 12> most = detail::most_global_kwh_m2_day(climate, sun_of(climate));
    int lowered = 0;
    for (std::size_t m = 0; m < 12; ++m) {
        if (!(climate.global_kwh_m2_day[m] > most[m])) continue;
        climate.global_kwh_m2_day[m] = (1.0 - 1e-9) * most[m];  // rounding must not lift it over the limit again
        ++lowered;
    }
    if (lowered > 0)
        climate.source += "; light of " + counted(lowered, "month", "months") + " lowered to a cloudless one";
    return climate;
}

Result<Climate> climate_in_year(const Climate& climate, int number) {
    Result<Climate> good = checked(climate, number);
    if (!good) return good;
    return varied(climate, number, year_to_year(climate));
}

Result<std::vector<Climate>> climates_in_years(const Climate& climate, int count) {
    Result<Climate> good = checked(climate, count);
    if (!good) return good.problems();
    const YearToYear spread = year_to_year(climate);
    std::vector<Climate> years;
    years.reserve(static_cast<std::size_t>(count));
    for (int number = 1; number <= count; ++number)
        years.push_back(varied(climate, number, spread));
    return years;
}

Result<Year> ensemble_year(const Climate& climate, int number) {
    Result<Climate> good = checked(climate, number);
    if (!good) return good.problems();
    const sun::YearSun sun = sun_of(climate);
    return made(varied(climate, number, year_to_year_with(climate, sun)), sun, number);
}

Result<std::vector<Year>> ensemble(const Climate& climate, int count) {
    Result<Climate> good = checked(climate, count);
    if (!good) return good.problems();
    const sun::YearSun sun = sun_of(climate);
    const YearToYear spread = year_to_year_with(climate, sun);
    std::vector<Year> years;
    years.reserve(static_cast<std::size_t>(count));
    for (int number = 1; number <= count; ++number) {
        Result<Year> year = made(varied(climate, number, spread), sun, number);
        if (!year) return year.problems();
        years.push_back(std::move(year).value());
    }
    return years;
}

Result<Quantiles> quantiles(std::vector<double> values) {
    if (values.empty()) return Problem{"quantiles", "there are no values", "Give at least one"};
    if (!std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); }))
        return Problem{"quantiles", "a value is not a number", "Leave out years that could not be worked out"};
    std::sort(values.begin(), values.end());
    const auto at = [&](double p) {
        const double position = p * static_cast<double>(values.size() - 1);
        const auto below = static_cast<std::size_t>(position);
        const std::size_t above = std::min(below + 1, values.size() - 1);
        return values[below] + (position - std::floor(position)) * (values[above] - values[below]);
    };
    return Quantiles{at(0.1), at(0.5), at(0.9), values.size()};
}

}  // namespace wg::weather
