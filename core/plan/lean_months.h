#pragma once
// The months that decide over a set: those in which the pump has least to spare over what is drawn.

#include "core/season/season.h"
#include "core/site/shade_period.h"

namespace wg::plan {

inline constexpr int lean_month_count = 6;

struct LeanMonths {
    site::Months months{};
    bool from_year = false;  ///< found from a year of operation; else the cold half of the calendar
};

/// The six months with the least heat an hour of running, held against the heat drawn an hour of the clock: what the
/// pump could give against what is wanted of it. Without a year of operation (null, or nothing drawn in it) October to
/// March, south of the equator April to September.
[[nodiscard]] LeanMonths lean_months(const season::Year* year, double latitude_deg);

}  // namespace wg::plan
