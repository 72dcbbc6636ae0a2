#pragma once
// What makes a year of weather look real: how days and hours scatter, persist and go together.

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "core/quantity/time.h"
#include "core/sun/year.h"
#include "core/weather/humidity.h"
#include "core/weather/year.h"

namespace wg::weather {

struct YearStatistics {
    std::vector<double> day_clearness;   ///< of days with over 0.5 kWh/m2 outside the atmosphere
    std::vector<double> hour_clearness;  ///< with the sun over 10 deg
    double day_persistence = 0.0;        ///< correlation of one day's clearness with the next, month's mean taken off
    double hour_deviation = 0.0;         ///< standard, of hour_clearness
    double hour_persistence = 0.0;       ///< one hour to the next within a day, about the day's own mean, with the sun
                                         ///< over 10 deg; clearness over up^0.25, the course of a cloudless day
    std::array<double, 3> utilisable{};  ///< share of the light above 200, 400, 600 W/m2
    double swing_k = 0.0;                ///< mean daily highest less lowest air temperature
    double swing_deviation_k = 0.0;      ///< standard, of days within their month
    double swing_with_light = 0.0;       ///< correlation with the day's clearness within its month
    double air_deviation_k = 0.0;        ///< standard, of daily means about their 31 days
    double air_persistence = 0.0;        ///< of the same, one day to the next
    double air_with_light_bright = 0.0;  ///< correlation with clearness in the lighter half of the year
    double air_with_light_dark = 0.0;    ///< in the darker half
    double humidity_deviation = 0.0;     ///< of daily relative humidity within its month
    double humidity_with_light = 0.0;    ///< correlation with clearness
};

namespace statistics {

inline double mean(const std::vector<double>& a) {
    double sum = 0.0;
    for (const double v : a)
        sum += v / static_cast<double>(a.size());
    return sum;
}
inline double deviation(const std::vector<double>& a) {
    const double m = mean(a);
    double squares = 0.0;
    for (const double v : a)
        squares += (v - m) * (v - m) / static_cast<double>(a.size());
    return std::sqrt(squares);
}
inline double correlation(const std::vector<double>& a, const std::vector<double>& b) {
    const double ma = mean(a);
    const double mb = mean(b);
    double ab = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i)
        ab += (a[i] - ma) * (b[i] - mb) / static_cast<double>(a.size());
    return ab / (deviation(a) * deviation(b));
}

/// Largest difference of the two distributions (Kolmogorov and Smirnov).
inline double largest_difference(std::vector<double> a, std::vector<double> b) {
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    double largest = 0.0;
    std::size_t j = 0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        while (j < b.size() && b[j] <= a[i])
            ++j;
        const double in_b = static_cast<double>(j) / static_cast<double>(b.size());
        const auto n = static_cast<double>(a.size());
        largest = std::max(
            {largest, std::fabs(static_cast<double>(i) / n - in_b), std::fabs(static_cast<double>(i + 1) / n - in_b)});
    }
    return largest;
}

struct Day {
    std::size_t month = 0;
    bool lit = false;
    double clearness = 0.0, light = 0.0, air = 0.0, air_about = 0.0, swing = 0.0, humidity = 0.0;
};

/// Takes the month's mean off a quantity of the days.
inline void take_off_month(std::vector<Day>& days, double Day::*quantity) {
    std::array<double, 12> sum{};
    std::array<double, 12> count{};
    for (const Day& day : days) {
        if (!day.lit) continue;
        sum[day.month] += day.*quantity;
        count[day.month] += 1.0;
    }
    for (Day& day : days) {
        if (day.lit) day.*quantity -= sum[day.month] / count[day.month];
    }
}

template <class Fits>
std::vector<double> those(const std::vector<Day>& days, double Day::*quantity, Fits fits) {
    std::vector<double> out;
    for (const Day& day : days) {
        if (day.lit && fits(day)) out.push_back(day.*quantity);
    }
    return out;
}

inline std::vector<Day> days_of(const Year& year, const sun::YearSun& sun, YearStatistics& out) {
    std::vector<Day> days(365);
    std::vector<double> hour, next;
    for (std::size_t d = 0; d < days.size(); ++d) {
        Day& day = days[d];
        day.month = static_cast<std::size_t>(month_of_hour(static_cast<int>(d) * 24)) - 1;
        double outside = 0.0;
        double lowest = 1e9;
        double highest = -1e9;
        std::vector<double> course;
        for (std::size_t i = 24 * d; i < 24 * d + 24; ++i) {
            const double above = sun.up_share[i] * std::fmax(0.0, sun.up[i]) * sun.extraterrestrial_normal_w_m2[i];
            outside += above;
            day.light += year.global_w_m2[i];
            day.air += year.air_c[i] / 24.0;
            day.humidity += relative_humidity(year.air_c[i], year.dew_point_c[i]) / 24.0;
            lowest = std::fmin(lowest, year.air_c[i]);
            highest = std::fmax(highest, year.air_c[i]);
            if (sun.up[i] < 0.17365 || sun.up_share[i] < 1.0) continue;  // sine of 10 deg
            out.hour_clearness.push_back(year.global_w_m2[i] / above);
            course.push_back(year.global_w_m2[i] / above / std::pow(sun.up[i], 0.25));
        }
        const double of_day = mean(course);
        for (std::size_t i = 0; i + 1 < course.size(); ++i) {
            hour.push_back(course[i] - of_day);
            next.push_back(course[i + 1] - of_day);
        }
        day.swing = highest - lowest;
        day.lit = outside > 500.0;
        if (day.lit) day.clearness = day.light / outside;
        if (day.lit) out.day_clearness.push_back(day.clearness);
    }
    out.hour_persistence = correlation(hour, next);
    for (std::size_t d = 0; d < days.size(); ++d) {
        double about = 0.0;
        for (std::size_t j = 0; j < 31; ++j)
            about += days[(d + 365 + j - 15) % 365].air / 31.0;
        days[d].air_about = days[d].air - about;
    }
    return days;
}

}  // namespace statistics

inline YearStatistics statistics_of(const Year& year) {
    using namespace statistics;
    const sun::YearSun sun = sun::year_sun({year.latitude_deg, year.longitude_deg, year.altitude_m, year.utc_offset_h,
                                            year.sun_minute, sun::weather_sun_year});
    YearStatistics out;
    std::vector<Day> days = days_of(year, sun, out);
    double light = 0.0;
    for (const double g : year.global_w_m2) {
        light += g;
        for (std::size_t i = 0; i < 3; ++i)
            out.utilisable[i] += std::fmax(0.0, g - 200.0 * static_cast<double>(i + 1));
    }
    for (double& share : out.utilisable)
        share /= light;
    for (const Day& day : days)
        out.swing_k += day.swing / 365.0;
    out.hour_deviation = deviation(out.hour_clearness);

    for (double Day::*quantity : {&Day::clearness, &Day::swing, &Day::humidity})
        take_off_month(days, quantity);
    const auto every = [](const Day&) { return true; };
    std::vector<double> today, tomorrow, air_today, air_tomorrow;
    for (std::size_t d = 0; d + 1 < days.size(); ++d) {
        air_today.push_back(days[d].air_about);
        air_tomorrow.push_back(days[d + 1].air_about);
        if (!days[d].lit || !days[d + 1].lit || days[d].month != days[d + 1].month) continue;
        today.push_back(days[d].clearness);
        tomorrow.push_back(days[d + 1].clearness);
    }
    out.day_persistence = correlation(today, tomorrow);
    out.air_persistence = correlation(air_today, air_tomorrow);
    const std::vector<double> clearness = those(days, &Day::clearness, every);
    const std::vector<double> swing = those(days, &Day::swing, every);
    const std::vector<double> humidity = those(days, &Day::humidity, every);
    out.swing_deviation_k = deviation(swing);
    out.swing_with_light = correlation(swing, clearness);
    out.humidity_deviation = deviation(humidity);
    out.humidity_with_light = correlation(humidity, clearness);
    out.air_deviation_k = deviation(those(days, &Day::air_about, every));

    std::array<double, 12> month_light{};
    std::array<double, 12> month_days{};
    for (const Day& day : days) {
        month_light[day.month] += day.light;
        month_days[day.month] += 1.0;
    }
    const auto bright = [&](const Day& day) { return month_light[day.month] / month_days[day.month] > light / 365.0; };
    const auto dark = [&](const Day& day) { return !bright(day); };
    out.air_with_light_bright = correlation(those(days, &Day::air_about, bright), those(days, &Day::clearness, bright));
    out.air_with_light_dark = correlation(those(days, &Day::air_about, dark), those(days, &Day::clearness, dark));
    return out;
}

}  // namespace wg::weather
