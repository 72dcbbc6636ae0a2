#pragma once
// Draws of a household by probabilities, different every day: docs/handbook/household.md.

#include <array>
#include <vector>

#include "core/job/job.h"
#include "core/season/calendar.h"

namespace wg::season {

enum class DrawKind { small, dishes, shower, bath };

struct HouseholdDraw {
    int minute_of_day = 0;
    DrawKind kind = DrawKind::small;
    double litres_40 = 0.0;  ///< mixed water of 40 deg C
    double flow_l_min = 1.0;
};

using HouseholdDay = std::vector<HouseholdDraw>;  ///< in order of time

/// The year. Litres of weekdays and of weekend days are scaled so that the mean of the days at home is persons x litres
/// and their ratio is `weekend_factor`, both to rounding. Plain arithmetic only, so that every machine makes the same
/// year. `coldest_day`: middle of the cold season; most is drawn then.
[[nodiscard]] std::vector<HouseholdDay> household_year(const Household& household, const Calendar& calendar,
                                                       int coldest_day);

}  // namespace wg::season
