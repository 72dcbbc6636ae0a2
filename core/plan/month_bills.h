#pragma once
// What the year's electricity is by month, for whoever pays the bills.

#include <vector>

#include "core/plan/plan.h"

namespace wg::plan {

struct MonthBill {
    int month = 1;          ///< 1..12
    double heat_kwh = 0.0;  ///< drawn
    Ranged electricity_kwh;
    Ranged cost_minor;
    double low_tariff_kwh = 0.0;  ///< of the electricity: bought in low windows
    double surplus_kwh = 0.0;     ///< of the electricity: from the house's own photovoltaics
};

/// Twelve, or none while the year is not worked out or uses no electricity. The range of the year is taken for each
/// month by proportion (a single month differs more), and its ends at the month's mean price, as the year's are. The
/// months add up to the year's figures. The usual price is what remains of the year's cost after `tariff`'s other two.
[[nodiscard]] std::vector<MonthBill> month_bills(const Plan& plan, const Tariff& tariff);

}  // namespace wg::plan
