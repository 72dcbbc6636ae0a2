#include "core/season/household.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace wg::season {
namespace {

/// SplitMix64 (Steele, Lea and Flood 2014): whole numbers only, the same everywhere.
class Random {
   public:
    explicit Random(std::uint64_t seed) : state_(seed) {}
    std::uint64_t next() noexcept {
        state_ += 0x9e3779b97f4a7c15ULL;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30U)) * 0xbf58476d1ce4e5b9ULL;
        z = (z ^ (z >> 27U)) * 0x94d049bb133111ebULL;
        return z ^ (z >> 31U);
    }
    double even() noexcept { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }  ///< 0 to below 1
    /// Sum of twelve even numbers less six: close to the normal distribution, within six deviations.
    double normal() noexcept {
        double sum = -6.0;
        for (int i = 0; i < 12; ++i)
            sum += even();
        return sum;
    }

   private:
    std::uint64_t state_;
};

struct Kind {
    DrawKind kind;
    double flow_l_min;
    double flow_deviation;
    double minutes;
    double per_day;  ///< in a household of `reference_l` a day
    double weekend;  ///< how much more often at weekends than on weekdays
};

// Categories of Jordan and Vajen (2001), IEA SHC Task 26, for 200 l a day (from memory): small 28 of 1 l, medium 12 of
// 6 l, shower 2 of 40 l, bath 1 in seven days of 140 l. Deviation of the flow 2 l/min there; a third of the flow where
// the flow is small, since a normal law cut at zero would shift the mean.
constexpr double reference_l = 200.0;
constexpr std::array<Kind, 4> kinds{{{DrawKind::small, 1.0, 0.33, 1.0, 28.0, 1.0},
                                     {DrawKind::dishes, 6.0, 2.0, 1.0, 12.0, 1.0},
                                     {DrawKind::shower, 8.0, 2.0, 5.0, 2.0, 1.0},
                                     {DrawKind::bath, 14.0, 2.0, 10.0, 0.143, 2.3}}};
constexpr double yearly_swing = 0.1;  // of the probability, as there
constexpr int slot_min = 5;
constexpr int slots = 24 * 60 / slot_min;
constexpr double least_flow_share = 0.25;

/// A hump of height 1, gone at `width_h` from its middle.
double hump(double hour, double middle_h, double width_h) noexcept {
    const double x = (hour - middle_h) / width_h;
    return std::abs(x) < 1.0 ? (1.0 - x * x) * (1.0 - x * x) : 0.0;
}

struct Rhythm {
    double morning = 1.0;
    double evening = 1.0;
};

Rhythm rhythm_of(DayRhythm rhythm) noexcept {
    switch (rhythm) {
        case DayRhythm::even: return {1.0, 1.0};
        case DayRhythm::morning: return {2.0, 0.5};
        case DayRhythm::evening: return {0.5, 2.0};
    }
    return {};
}

double weight(DrawKind kind, double hour, const Rhythm& rhythm, bool weekend) noexcept {
    const double later_h = weekend ? 1.5 : 0.0;  // people rise later
    const double morning = rhythm.morning * hump(hour, 7.0 + later_h, 2.0);
    const double evening = rhythm.evening * hump(hour, 19.5, 3.0);
    switch (kind) {
        case DrawKind::small: return hour >= 5.0 && hour < 23.0 ? (hour < 13.0 ? rhythm.morning : rhythm.evening) : 0.0;
        case DrawKind::dishes: return morning + 0.8 * hump(hour, 12.5, 2.0) + 1.2 * evening;
        case DrawKind::shower: return 1.5 * morning + evening;
        case DrawKind::bath: return 0.2 * morning + hump(hour, 20.0, 2.5) * rhythm.evening;
    }
    return 0.0;
}

using Shape = std::array<double, slots>;

/// Share of the day's draws of a kind that begins in each slot.
Shape shape_of(DrawKind kind, const Household& household, bool weekend) noexcept {
    Shape shape{};
    double sum = 0.0;
    const Rhythm rhythm = rhythm_of(household.rhythm);
    for (int i = 0; i < slots; ++i) {
        const double hour = (i + 0.5) * slot_min / 60.0;
        const bool away = household.away_on_weekdays && !weekend && hour >= 8.5 && hour < 16.5;
        shape[static_cast<std::size_t>(i)] = away ? 0.0 : weight(kind, hour, rhythm, weekend);
        sum += shape[static_cast<std::size_t>(i)];
    }
    for (double& share : shape)
        share /= sum;
    return shape;
}

/// cos(2 pi t) within 0.002 by Bhaskara's fraction: no library of functions, whose last digits differ.
double wave(double t) noexcept {
    t = std::abs(t - std::floor(t + 0.5));
    const bool far = t > 0.25;
    const double u = far ? 0.5 - t : t;
    const double value = (1.0 - 16.0 * u * u) / (1.0 + 4.0 * u * u);
    return far ? -value : value;
}

HouseholdDay draws_of(int day, const Household& household, const std::array<Shape, 4>& shapes, double per_reference,
                      bool weekend) {
    HouseholdDay out;
    const std::uint64_t seed = static_cast<std::uint64_t>(household.seed_number);
    for (std::size_t k = 0; k < kinds.size(); ++k) {
        const Kind& kind = kinds[k];
        // Each day and kind its own row of numbers: what changes one leaves the others alone.
        Random random(seed * 1000003U + static_cast<std::uint64_t>(day) * 8U + k);
        const double mean = kind.per_day * per_reference * (weekend ? kind.weekend : 1.0);
        for (int slot = 0; slot < slots; ++slot) {
            const double expected = mean * shapes[k][static_cast<std::size_t>(slot)];
            int count = static_cast<int>(expected);
            if (random.even() < expected - count) ++count;
            for (int i = 0; i < count; ++i) {
                HouseholdDraw draw;
                draw.kind = kind.kind;
                draw.minute_of_day = slot * slot_min + static_cast<int>(random.even() * slot_min);
                draw.flow_l_min = std::max(least_flow_share * kind.flow_l_min,
                                           kind.flow_l_min + kind.flow_deviation * random.normal());
                draw.litres_40 = draw.flow_l_min * kind.minutes;
                out.push_back(draw);
            }
        }
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const HouseholdDraw& a, const HouseholdDraw& b) { return a.minute_of_day < b.minute_of_day; });
    return out;
}

}  // namespace

std::vector<HouseholdDay> household_year(const Household& household, const Calendar& calendar, int coldest_day) {
    std::array<std::array<Shape, 4>, 2> shapes{};
    for (std::size_t k = 0; k < kinds.size(); ++k) {
        shapes[0][k] = shape_of(kinds[k].kind, household, false);
        shapes[1][k] = shape_of(kinds[k].kind, household, true);
    }
    const double asked_l = household.persons * household.litres_40_per_person;
    std::vector<HouseholdDay> year(days_in_year);
    std::array<double, 2> litres{};  // weekdays, weekends
    std::array<int, 2> days{};
    for (int day = 0; day < days_in_year; ++day) {
        if (calendar.holiday(day)) continue;
        const std::size_t weekend = calendar.weekend(day) ? 1U : 0U;
        const double swing = 1.0 + yearly_swing * wave((day - coldest_day) / static_cast<double>(days_in_year));
        const double factor = asked_l / reference_l * swing * (weekend != 0U ? household.weekend_factor : 1.0);
        HouseholdDay& draws = year[static_cast<std::size_t>(day)];
        draws = draws_of(day, household, shapes[weekend], factor, weekend != 0U);
        ++days[weekend];
        for (const HouseholdDraw& draw : draws)
            litres[weekend] += draw.litres_40;
    }
    // Of a year in which one class of days drew nothing the other takes all.
    const std::array<double, 2> parts{litres[0] > 0.0 ? 1.0 : 0.0, litres[1] > 0.0 ? household.weekend_factor : 0.0};
    const double weighted = days[0] * parts[0] + days[1] * parts[1];
    const double all_l = asked_l * (days[0] + days[1]);
    for (int day = 0; day < days_in_year; ++day) {
        const std::size_t weekend = calendar.weekend(day) ? 1U : 0U;
        if (!(litres[weekend] > 0.0)) continue;
        const double scale = all_l * parts[weekend] * days[weekend] / (weighted * litres[weekend]);
        for (HouseholdDraw& draw : year[static_cast<std::size_t>(day)])
            draw.litres_40 *= scale;  // it lasts so much longer or shorter
    }
    return year;
}

}  // namespace wg::season
