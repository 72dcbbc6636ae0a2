#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/time.h"
#include "core/sun/extraterrestrial.h"
#include "core/weather/humidity.h"
#include "core/weather/synthesis.h"

namespace wg::weather::detail {
namespace {

// How days differ, fitted by eye to measured years from the tropics to 60 degrees north: docs/handbook/weather.md.
constexpr double air_persistence = 0.6;        // day to day
constexpr double swing_spread = 0.32;          // of the daily swing about what its light makes of it, share
constexpr double vapour_persistence = 0.5;     // day to day
constexpr double vapour_spread = 0.11;         // of a day's vapour about what its light makes of it, share
constexpr double vapour_of_brightness = 0.22;  // less vapour on a bright day, share for each 1 of relative clearness
constexpr double wind_persistence = 0.92;      // hour to hour
constexpr double wind_weibull_shape = 1.9;     // 2 would be Rayleigh; inland stations lie a little lower
constexpr double pressure_persistence = 0.75;
constexpr double pressure_spread_pa = 800.0;

// Daily course of temperature as a share of its swing, lowest near sunrise, highest in mid-afternoon: Erbs, Klein and
// Beckman, ASHRAE Journal 25(6), 1983 (coefficients from memory). `hour` 1..24 ends the hour.
double daily_course(double hour) {
    const double t = 2.0 * pi * (hour - 1.0) / 24.0;
    return 0.4632 * std::cos(t - 3.805) + 0.0984 * std::cos(2.0 * t - 0.360) + 0.0168 * std::cos(3.0 * t - 0.822) +
           0.0138 * std::cos(4.0 * t - 3.513);
}

// Correction whose mean over each month is `wanted`: straight lines between the months' middles, solved by repetition
// (the map from knots to means has its eigenvalues between 0.5 and 1, so each round at least halves the error), then a
// constant within the month for the last digits.
void add_with_monthly_mean(std::vector<double>& series, const std::array<double, 12>& wanted) {
    std::array<int, 13> first{};
    for (std::size_t m = 0; m <= 12; ++m)
        first[m] = first_hour_of_month(static_cast<int>(m) + 1);
    const auto hours = [&](std::size_t m) { return first[m + 1] - first[m]; };
    const auto middle = [&](std::size_t m) { return 0.5 * (first[m] + first[m + 1]); };
    const auto lacks = [&] {
        std::array<double, 12> lack{};
        for (std::size_t m = 0; m < 12; ++m) {
            double sum = 0.0;
            for (int h = first[m]; h < first[m + 1]; ++h)
                sum += series[static_cast<std::size_t>(h)];
            lack[m] = wanted[m] - sum / hours(m);
        }
        return lack;
    };
    for (int round = 0; round < 30; ++round) {
        const std::array<double, 12> lack = lacks();
        for (std::size_t m = 0; m < 12; ++m) {
            const std::size_t before = (m + 11) % 12;
            const std::size_t after = (m + 1) % 12;
            const double to_before = 0.5 * (hours(m) + hours(before));
            const double to_after = 0.5 * (hours(m) + hours(after));
            for (int h = first[m]; h < first[m + 1]; ++h) {
                const double off = h + 0.5 - middle(m);
                const double w = off < 0.0 ? -off / to_before : off / to_after;
                series[static_cast<std::size_t>(h)] += (1.0 - w) * lack[m] + w * lack[off < 0.0 ? before : after];
            }
        }
    }
    const std::array<double, 12> lack = lacks();
    for (std::size_t m = 0; m < 12; ++m) {
        for (int h = first[m]; h < first[m + 1]; ++h)
            series[static_cast<std::size_t>(h)] += lack[m];
    }
}

// Standard deviation of daily means within a month: small where the year has no seasons, larger in the middle of
// continents and in winter, and small again in a hot summer, where no air mass is much hotter.
std::array<double, 12> air_spread_k(const Climate& climate) {
    const auto [coldest, warmest] = std::minmax_element(climate.air_mean_c.begin(), climate.air_mean_c.end());
    const double range_k = *warmest - *coldest;
    const double middle_c = 0.5 * (*warmest + *coldest);
    std::array<double, 12> spread{};
    for (std::size_t m = 0; m < 12; ++m) {
        const double winter = (middle_c - climate.air_mean_c[m]) / std::fmax(1.0, 0.5 * range_k);  // -1..1
        const double hot = std::fmin(1.0, std::fmax(0.4, 1.0 - 0.035 * (climate.air_mean_c[m] - 20.0)));
        spread[m] = std::fmin(5.5, 0.7 + 0.14 * range_k) * (1.0 + 0.12 * winter) * hot;
    }
    return spread;
}

// What a day is like besides its light.
struct Days {
    std::vector<double> air_c;    // daily mean
    std::vector<double> swing_k;  // highest less lowest
    std::vector<double> vapour;   // relative to that of saturation at the daily mean; only its course matters
};

Days make_days(const Climate& climate, const std::vector<double>& clearness, Random& random) {
    constexpr std::size_t count = hours_in_year / 24;
    double mean_light = 0.0;
    for (const double light : climate.global_kwh_m2_day)
        mean_light += light / 12.0;
    const std::array<double, 12> spread_k = air_spread_k(climate);
    Days days{std::vector<double>(count), std::vector<double>(count), std::vector<double>(count)};
    std::array<double, 12> swing_sum{};
    std::array<double, 12> day_count{};
    Persistent air(air_persistence, random);
    Persistent vapour(vapour_persistence, random);
    for (std::size_t day = 0; day < count; ++day) {
        const auto m = static_cast<std::size_t>(month_of_hour(static_cast<int>(day) * 24) - 1);
        // Bright days are warm in the light half of the year and cold in the dark half.
        const double season =
            std::fmin(0.9, std::fmax(-0.3, 2.0 * (climate.global_kwh_m2_day[m] / std::fmax(0.1, mean_light) - 1.0)));
        const double bright = std::fmin(1.5, std::fmax(-1.5, clearness[day] - 1.0));
        days.air_c[day] = climate.air_mean_c[m] + spread_k[m] * (air.next() + season * bright);
        days.swing_k[day] = (0.5 + 0.5 * clearness[day]) * std::fmax(0.2, 1.0 + swing_spread * random.normal());
        days.vapour[day] = std::exp(vapour_spread * vapour.next() - vapour_of_brightness * bright);
        swing_sum[m] += days.swing_k[day];
        day_count[m] += 1.0;
    }
    for (std::size_t day = 0; day < count; ++day) {
        const auto m = static_cast<std::size_t>(month_of_hour(static_cast<int>(day) * 24) - 1);
        days.swing_k[day] *= climate.air_daily_swing_k[m] * day_count[m] / swing_sum[m];
    }
    return days;
}

// Scales the vapour of each month so that the month's mean relative humidity is the climate's.
void make_dew_point(const Climate& climate, const Days& days, Year& year) {
    std::vector<double> saturation(hours_in_year);
    std::vector<double> vapour(hours_in_year);
    std::vector<double> humidity(hours_in_year);  // before the month's factor
    for (int h = 0; h < hours_in_year; ++h) {
        const auto i = static_cast<std::size_t>(h);
        saturation[i] = saturation_pressure_pa(year.air_c[i]);
        vapour[i] = between_days(days.vapour, h) * saturation_pressure_pa(between_days(days.air_c, h));
        humidity[i] = vapour[i] / saturation[i];
    }
    year.dew_point_c.resize(hours_in_year);
    for (int month = 1; month <= 12; ++month) {
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = static_cast<std::size_t>(first_hour_of_month(month + 1));
        const double wanted = climate.relative_humidity[static_cast<std::size_t>(month) - 1];
        double low = 0.0;
        double high = 20.0;
        double factor = 1.0;
        for (int round = 0; round < 60; ++round) {
            factor = 0.5 * (low + high);
            double sum = 0.0;
            for (std::size_t i = from; i < to; ++i)
                sum += std::min(1.0, factor * humidity[i]);
            (sum < wanted * static_cast<double>(to - from) ? low : high) = factor;
        }
        for (std::size_t i = from; i < to; ++i) {
            const double pressure = std::fmin(saturation[i], factor * vapour[i]);
            year.dew_point_c[i] = std::fmin(year.air_c[i], dew_point_of_vapour_c(pressure));
        }
    }
}

}  // namespace

double between_days(const std::vector<double>& daily, int hour) {
    const double position = (hour + 0.5) / 24.0 - 0.5;
    const double before = std::floor(position);
    const double w = position - before;
    const std::size_t n = daily.size();
    const auto a = static_cast<std::size_t>(before + static_cast<double>(n)) % n;
    return (1.0 - w) * daily[a] + w * daily[(a + 1) % n];
}

void make_air(const Climate& climate, const std::vector<double>& clearness, Random& random, Year& year) {
    const Days days = make_days(climate, clearness, random);
    std::array<double, 24> course{};
    for (std::size_t h = 0; h < course.size(); ++h)
        course[h] = daily_course(static_cast<double>(h) + 1.0);
    year.air_c.resize(hours_in_year);
    for (int h = 0; h < hours_in_year; ++h) {
        year.air_c[static_cast<std::size_t>(h)] =
            between_days(days.air_c, h) + between_days(days.swing_k, h) * course[static_cast<std::size_t>(h % 24)];
    }
    add_with_monthly_mean(year.air_c, climate.air_mean_c);
    make_dew_point(climate, days, year);
}

void make_wind_and_pressure(const Climate& climate, Random& random, Year& year) {
    year.wind_m_s.resize(hours_in_year);
    Persistent wind(wind_persistence, random);
    for (int h = 0; h < hours_in_year; ++h) {
        const double calmer_than = normal_probability(wind.next());
        const double afternoon = 1.0 + 0.25 * std::cos(radians(15.0 * (h % 24 + 0.5 - 14.0)));
        year.wind_m_s[static_cast<std::size_t>(h)] =
            afternoon * std::pow(-std::log1p(-std::fmin(calmer_than, 1.0 - 1e-12)), 1.0 / wind_weibull_shape);
    }
    for (int month = 1; month <= 12; ++month) {
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = static_cast<std::size_t>(first_hour_of_month(month + 1));
        double sum = 0.0;
        for (std::size_t i = from; i < to; ++i)
            sum += year.wind_m_s[i];
        const double factor =
            climate.wind_m_s[static_cast<std::size_t>(month) - 1] * static_cast<double>(to - from) / sum;
        for (std::size_t i = from; i < to; ++i)
            year.wind_m_s[i] *= factor;
    }

    const double standard = sun::standard_pressure_pa_at(climate.altitude_m);
    std::vector<double> day_pressure(365);
    Persistent pressure(pressure_persistence, random);
    for (double& p : day_pressure)
        p = standard + pressure_spread_pa * pressure.next();
    year.pressure_pa.resize(hours_in_year);
    for (int h = 0; h < hours_in_year; ++h)
        year.pressure_pa[static_cast<std::size_t>(h)] = between_days(day_pressure, h);
}

}  // namespace wg::weather::detail
