#pragma once
// What running the system costs over the years that the tariffs look at.

#include "core/economy/economy.h"

namespace wg::economy {

struct OverYears {
    int years = 0;
    Money low;
    Money mid;
    Money high;
};

/// Minor units of the first year, at today's price; prices rise each year as the tariffs have it, nothing is
/// discounted, service is not counted: cost times ((1 + i)^n - 1)/i. Figures must be finite.
[[nodiscard]] OverYears running_over_years(double low_minor, double mid_minor, double high_minor,
                                           const Tariffs& tariffs);

}  // namespace wg::economy
