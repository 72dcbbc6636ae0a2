#pragma once
// How spending and emissions add up over the years: new set against present heater.

#include <vector>

#include "core/economy/economy.h"

namespace wg::economy {

/// What is known about the ends of the range beside the middle.
struct CourseEnds {
    std::vector<Money> cumulative_low;   ///< saved less spent at the unfavourable end; empty: no range
    std::vector<Money> cumulative_high;  ///< at the favourable end
    double electricity_low = 1.0;        ///< electricity at the favourable end / in the middle
    double electricity_high = 1.0;
};

/// Each series from year 0 (the day of buying) to the last year looked at. Money is discounted to today.
struct Course {
    std::vector<Money> set;                ///< price, electricity and service of the new set
    std::vector<Money> set_low, set_high;  ///< least and most; empty: no range
    std::vector<Money> present;            ///< fuel of the present heater for the same useful heat
    std::vector<double> co2_set_kg, co2_set_low_kg, co2_set_high_kg, co2_present_kg;
    double even_y = 0.0;  ///< when the set has cost as much as the present heater; 0: not in these years
};

/// From an outcome of `evaluate`; series of the ends whose length differs from the middle's count as no range.
[[nodiscard]] Course course(const Outcome& middle, const Tariffs& tariffs, const CourseEnds& ends = {});

/// Year at which a cumulative series first reaches zero from below, between two years by proportion; 0: never.
[[nodiscard]] double even_year(const std::vector<Money>& cumulative);

}  // namespace wg::economy
