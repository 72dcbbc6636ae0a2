#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/quantity/time.h"
#include "core/sun/clear_sky.h"
#include "core/sun/extraterrestrial.h"
#include "core/weather/diffuse_split.h"
#include "core/weather/synthesis.h"

namespace wg::weather::detail {
namespace {

constexpr double day_persistence = 0.3;  // Aguiar, Collares-Pereira and Conde, Solar Energy 40, 1988; Graham and others
// Hour to hour. Of the deviations from a day's own course, measured years keep 0.4 to 0.6 (docs/handbook/weather.md); a
// day's few hours show less than the series has.
constexpr double hour_persistence = 0.65;
constexpr double linke_of_shape = 3.0;    // usual turbidity: the course of a day
constexpr double linke_of_ceiling = 2.0;  // very clean air: no hour above it
// The model fades out below 4 degrees of sun, where the bright sky still gives light; assumed, no published source.
constexpr double least_of_ceiling = 0.4;
constexpr double least_clearness = 0.05;
constexpr double most_of_cloudless = 0.97;  // a month above this share of cloudless light in very clean air is refused

// Distribution of daily clearness in a month: Bendt, Collares-Pereira and Rabl, Solar Energy 27, 1981, an exponential
// between a least and a largest value (largest: Hollands and Huget, Solar Energy 30, 1983), with its one parameter
// solved for the month's mean.
struct BendtDays {
    double low, high, gamma;

    explicit BendtDays(double mean)
        : low(std::fmin(least_clearness, 0.5 * mean)),
          high(std::fmax(mean + 0.05, 0.6313 + 0.267 * mean - 11.9 * std::pow(mean - 0.75, 8))),
          gamma(0.0) {
        double from = -200.0;
        double to = 200.0;
        for (int i = 0; i < 80; ++i) {
            gamma = 0.5 * (from + to);
            (mean_of(gamma) < mean ? from : to) = gamma;
        }
    }
    [[nodiscard]] double mean_of(double g) const {
        const double width = high - low;
        const double x = g * width;
        if (std::fabs(x) < 1e-4) return low + width * (0.5 + x / 12.0);
        return high - 1.0 / g + width / std::expm1(x);
    }
    // Clearness below which the share `u` of days lies.
    [[nodiscard]] double at(double u) const {
        const double x = gamma * (high - low);
        if (std::fabs(x) < 1e-4) return low + u * (high - low);
        return low + std::log1p(u * std::expm1(x)) / gamma;
    }
};

struct HourLimits {
    std::vector<double> shape;             // cloudless global, W/m2, mean over the hour
    std::vector<double> ceiling;           // the same in very clean air
    std::vector<double> extraterrestrial;  // on the horizontal
};

HourLimits limits_of(const Climate& climate, const sun::YearSun& sun) {
    const double pressure_share = sun::standard_pressure_pa_at(climate.altitude_m) / standard_pressure_pa;
    HourLimits limits;
    for (std::size_t i = 0; i < sun.up.size(); ++i) {
        const double up = std::fmax(0.0, sun.up[i]);
        const double share = up > 0.0 ? sun.up_share[i] : 0.0;
        const double zenith_deg = degrees(std::acos(std::fmin(1.0, up)));
        const double air_mass = pressure_share * sun::relative_air_mass(zenith_deg);
        const double normal = sun.extraterrestrial_normal_w_m2[i];
        limits.shape.push_back(
            share * sun::ineichen_perez(zenith_deg, air_mass, linke_of_shape, climate.altitude_m, normal).global_w_m2);
        const double outside = up * normal;
        const double clean =
            sun::ineichen_perez(zenith_deg, air_mass, linke_of_ceiling, climate.altitude_m, normal).global_w_m2;
        limits.ceiling.push_back(share * std::fmax(clean, least_of_ceiling * outside));
        limits.extraterrestrial.push_back(share * outside);
    }
    return limits;
}

double sum_of(const std::vector<double>& series, std::size_t from, std::size_t to) {
    return std::accumulate(series.begin() + static_cast<std::ptrdiff_t>(from),
                           series.begin() + static_cast<std::ptrdiff_t>(to), 0.0);
}

// Days of the month take the distribution's evenly spaced values, each once, in the order in which a persistent normal
// series ranks them: every month then has its typical mix of dull and bright days, and their succession persists.
std::vector<double> clearness_of_days(const BendtDays& days, const std::vector<double>& normal) {
    std::vector<std::size_t> order(normal.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return normal[a] < normal[b]; });
    std::vector<double> clearness(normal.size());
    for (std::size_t rank = 0; rank < order.size(); ++rank) {
        clearness[order[rank]] = days.at((static_cast<double>(rank) + 0.5) / static_cast<double>(order.size()));
    }
    return clearness;
}

// Hours of one day: the cloudless course, made uneven by a persistent noise that is strongest under broken cloud.
void shape_day(std::vector<double>& global, const HourLimits& limits, std::size_t first, double clearness,
               Persistent& unrest) {
    const double off_broken = (clearness - 0.4) / 0.4;
    const double strength = std::fmax(0.03, 0.45 * (1.0 - off_broken * off_broken));
    double weights = 0.0;
    for (std::size_t i = first; i < first + 24; ++i) {
        const double factor = std::fmax(0.15, 1.0 + strength * unrest.next());
        global[i] = factor * limits.shape[i];
        weights += global[i];
    }
    if (weights <= 0.0) return;
    const double wanted = clearness * sum_of(limits.extraterrestrial, first, first + 24);
    for (std::size_t i = first; i < first + 24; ++i)
        global[i] *= wanted / weights;
}

// Brings the sum of the month's hours to `target` without lifting any above its ceiling: hours at the ceiling stay, the
// rest share what is left in proportion. Each round caps at least one more hour, so it ends.
void fit_month(std::vector<double>& global, const std::vector<double>& ceiling, std::size_t from, std::size_t to,
               double target) {
    std::vector<bool> capped(to - from, false);
    for (bool again = true; again;) {
        again = false;
        double held = 0.0;
        double free = 0.0;
        for (std::size_t i = from; i < to; ++i)
            (capped[i - from] ? held : free) += global[i];
        if (free <= 0.0) return;
        const double factor = (target - held) / free;
        for (std::size_t i = from; i < to; ++i) {
            if (capped[i - from]) continue;
            global[i] *= factor;
            if (global[i] > ceiling[i]) {
                global[i] = ceiling[i];
                capped[i - from] = true;
                again = true;
            }
        }
    }
}

}  // namespace

std::array<double, 12> most_global_kwh_m2_day(const Climate& climate, const sun::YearSun& sun) {
    const HourLimits limits = limits_of(climate, sun);
    std::array<double, 12> most{};
    for (int month = 1; month <= 12; ++month) {
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = static_cast<std::size_t>(first_hour_of_month(month + 1));
        most[static_cast<std::size_t>(month) - 1] =
            most_of_cloudless * sum_of(limits.ceiling, from, to) * 24e-3 / static_cast<double>(to - from);
    }
    return most;
}

DaySpread day_spread(double mean_clearness) {
    constexpr int samples = 200;
    const BendtDays days(mean_clearness);
    double squares = 0.0;
    for (int i = 0; i < samples; ++i) {
        const double off = days.at((i + 0.5) / samples) - mean_clearness;
        squares += off * off / samples;
    }
    return {std::sqrt(squares), day_persistence};
}

Result<std::vector<double>> make_light(const Climate& climate, const sun::YearSun& sun, Random& random, Year& year) {
    const HourLimits limits = limits_of(climate, sun);
    year.global_w_m2.assign(hours_in_year, 0.0);
    std::vector<double> relative_clearness;
    std::vector<Problem> problems;
    Persistent days(day_persistence, random);
    Persistent unrest(hour_persistence, random);
    for (int month = 1; month <= 12; ++month) {
        const auto from = static_cast<std::size_t>(first_hour_of_month(month));
        const auto to = static_cast<std::size_t>(first_hour_of_month(month + 1));
        const std::size_t count = (to - from) / 24;
        std::vector<double> normal(count);
        for (double& z : normal)
            z = days.next();

        const double target =
            1e3 * climate.global_kwh_m2_day[static_cast<std::size_t>(month) - 1] * static_cast<double>(count);
        const double most = sum_of(limits.ceiling, from, to);
        if (target > most_of_cloudless * most) {
            problems.push_back({climate.id + ": global_kwh_m2_day[" + std::to_string(month - 1) + "]",
                                "the month's light is " + fixed(target * 1e-3, 1) +
                                    " kWh/m2, a cloudless month there gives " + fixed(most * 1e-3, 1),
                                "Correct the figure or the latitude"});
            continue;
        }
        const double outside = sum_of(limits.extraterrestrial, from, to);
        const double mean = outside > 0.0 ? target / outside : 0.0;
        if (mean <= 0.0) {
            relative_clearness.insert(relative_clearness.end(), count, 1.0);
            continue;
        }
        const std::vector<double> clearness = clearness_of_days(BendtDays(mean), normal);
        for (std::size_t day = 0; day < count; ++day) {
            shape_day(year.global_w_m2, limits, from + 24 * day, clearness[day], unrest);
            relative_clearness.push_back(clearness[day] / mean);
        }
        fit_month(year.global_w_m2, limits.ceiling, from, to, target);
    }
    if (!problems.empty()) return problems;

    for (std::size_t i = 0; i < year.global_w_m2.size(); ++i) {
        const Split split =
            split_erbs(year.global_w_m2[i], sun.up[i], sun.extraterrestrial_normal_w_m2[i], sun.up_share[i]);
        year.beam_normal_w_m2.push_back(split.beam_normal_w_m2);
        year.diffuse_w_m2.push_back(split.diffuse_w_m2);
    }
    return relative_clearness;
}

}  // namespace wg::weather::detail
