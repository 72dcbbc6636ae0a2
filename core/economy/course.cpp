#include "core/economy/course.h"

namespace wg::economy {
namespace {

/// Saved less spent is what the present heater would have cost less what the set has cost.
std::vector<Money> spent_of(const std::vector<Money>& present, const std::vector<Money>& cumulative) {
    std::vector<Money> spent;
    if (cumulative.size() != present.size()) return spent;
    spent.reserve(present.size());
    for (std::size_t year = 0; year < present.size(); ++year)
        spent.push_back(present[year] - cumulative[year]);
    return spent;
}

std::vector<double> adding_up(double a_year, std::size_t count) {
    std::vector<double> sums;
    sums.reserve(count);
    for (std::size_t year = 0; year < count; ++year)
        sums.push_back(a_year * static_cast<double>(year));
    return sums;
}

}  // namespace

double even_year(const std::vector<Money>& cumulative) {
    for (std::size_t year = 1; year < cumulative.size(); ++year) {
        const auto before = static_cast<double>(cumulative[year - 1].minor);
        const auto now = static_cast<double>(cumulative[year].minor);
        if (before < 0.0 && now >= 0.0) return static_cast<double>(year) - now / (now - before);
    }
    return 0.0;
}

Course course(const Outcome& middle, const Tariffs& tariffs, const CourseEnds& ends) {
    Course out;
    const std::size_t count = middle.cumulative.size();
    for (std::size_t year = 0; year < count; ++year) {
        out.present.push_back(
            scaled(middle.present_cost,
                   present_worth_factor(static_cast<int>(year), tariffs.yearly_rise, tariffs.discount_rate)));
    }
    out.set = spent_of(out.present, middle.cumulative);
    out.set_low = spent_of(out.present, ends.cumulative_high);
    out.set_high = spent_of(out.present, ends.cumulative_low);
    out.co2_set_kg = adding_up(middle.co2_kg, count);
    out.co2_set_low_kg = adding_up(middle.co2_kg * ends.electricity_low, count);
    out.co2_set_high_kg = adding_up(middle.co2_kg * ends.electricity_high, count);
    out.co2_present_kg = adding_up(middle.present_co2_kg, count);
    out.even_y = even_year(middle.cumulative);
    return out;
}

}  // namespace wg::economy
