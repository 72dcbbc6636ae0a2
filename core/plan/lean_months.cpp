#include "core/plan/lean_months.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace wg::plan {
namespace {

constexpr std::array<double, 12> hours_of_month = {744, 672, 744, 720, 744, 720, 744, 744, 720, 744, 720, 744};

/// Times over that the pump could give what is drawn if it never stopped. Infinite where nothing is drawn.
double reserve_of(const season::MonthSums& month, double hours) noexcept {
    if (!(month.drawn_kwh > 0.0)) return std::numeric_limits<double>::infinity();
    if (!(month.running_h > 0.0)) return 0.0;
    return (month.condenser_kwh / month.running_h) / (month.drawn_kwh / hours);
}

}  // namespace

LeanMonths lean_months(const season::Year* year, double latitude_deg) {
    LeanMonths out;
    std::array<double, 12> reserve{};
    if (year != nullptr) {
        for (std::size_t m = 0; m < 12; ++m)
            reserve[m] = reserve_of(year->months[m], hours_of_month[m]);
        out.from_year = std::count_if(reserve.begin(), reserve.end(), [](double r) { return std::isfinite(r); }) >=
                        lean_month_count;
    }
    if (!out.from_year) {
        for (std::size_t m = 0; m < 12; ++m) {
            const bool october_to_march = m >= 9 || m <= 2;
            out.months[m] = october_to_march == (latitude_deg >= 0.0);
        }
        return out;
    }
    std::array<std::size_t, 12> order{};
    for (std::size_t m = 0; m < 12; ++m)
        order[m] = m;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return reserve[a] < reserve[b]; });
    for (int i = 0; i < lean_month_count; ++i)
        out.months[order[static_cast<std::size_t>(i)]] = true;
    return out;
}

}  // namespace wg::plan
