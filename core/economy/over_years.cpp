#include "core/economy/over_years.h"

#include <cmath>

namespace wg::economy {

OverYears running_over_years(double low_minor, double mid_minor, double high_minor, const Tariffs& tariffs) {
    // Without discounting, the present worth of yearly payments is their sum.
    const double factor = present_worth_factor(tariffs.years, tariffs.yearly_rise, 0.0);
    const auto sum = [factor](double minor) { return Money{std::llround(minor * factor)}; };
    return {tariffs.years, sum(low_minor), sum(mid_minor), sum(high_minor)};
}

}  // namespace wg::economy
