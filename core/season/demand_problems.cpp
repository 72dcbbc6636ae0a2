// The ranges of what a household asks, held where the year begins: an Input need not come from a job file.
#include <string>

#include "core/season/schedule.h"

namespace wg::season {
namespace {

class Check {
   public:
    explicit Check(std::vector<Problem>& problems) : problems_(problems) {}
    void range(const std::string& where, double value, double low, double high,
               const char* remedy = "Correct the demand") {
        if (value >= low && value <= high) return;
        problems_.push_back({where,
                             "the value " + std::to_string(value) + " lies outside " + std::to_string(low) + " to " +
                                 std::to_string(high),
                             remedy});
    }
    void windows(const std::string& where, const std::vector<ClockWindow>& windows) {
        for (std::size_t i = 0; i < windows.size(); ++i) {
            const std::string place = where + "[" + std::to_string(i) + "].";
            range(place + "from_h", windows[i].from_h, 0.0, 24.0);
            range(place + "to_h", windows[i].to_h, 0.0, 24.0);
        }
    }

   private:
    std::vector<Problem>& problems_;
};

void check_household(const Demand& d, Check& check) {
    const Household& h = d.household;
    if (d.draw_source != DrawSource::household) return;
    check.range("demand.household.persons", h.persons, 1, 20);
    check.range("demand.household.litres_40_per_person", h.litres_40_per_person, 5.0, 200.0);
    check.range("demand.household.weekend_factor", h.weekend_factor, 0.2, 3.0);
    check.range("demand.household.seed_number", h.seed_number, 0, 999999);
    // Its litres are of 40 deg C.
    check.range("warmest cold inflow of a household, deg C", d.cold_mean_c + d.cold_swing_k, 0.0, 38.0);
}

void check_control(const Demand& d, Check& check) {
    const Control& c = d.control;
    check.windows("demand.control.run_windows", c.run_windows);
    check.windows("demand.control.set_back_windows", c.set_back_windows);
    check.windows("demand.tariff.low_windows", d.tariff.low_windows);
    check.windows("demand.recirculation.windows", d.recirculation.windows);
    check.range("demand.control.always_below_c", c.always_below_c, 10.0, 60.0);
    check.range("demand.control.set_back_k", c.set_back_k, 0.0, 20.0);
    check.range("demand.control.surplus.threshold_w", c.surplus.threshold_w, 1.0, 1e5);
    check.range("demand.control.surplus.raise_k", c.surplus.raise_k, 0.0, 20.0);
    check.range("demand.recirculation.loss_w", d.recirculation.loss_w, 0.0, 2000.0);
    check.range("demand.hygiene.target_c", d.hygiene.target_c, 50.0, 75.0);
    check.range("demand.hygiene.hold_min", d.hygiene.hold_min, 1.0, 240.0);
    check.range("demand.hygiene.weekday", d.hygiene.weekday, 0, 6);
    check.range("demand.hygiene.at_h", d.hygiene.at_h, 0.0, 23.99);
}

void check_holidays(const Demand& d, Check& check) {
    for (std::size_t i = 0; i < d.holidays.size(); ++i) {
        const HolidayPeriod& p = d.holidays[i];
        const std::string place = "demand.holidays[" + std::to_string(i) + "].";
        check.range(place + "from_month", p.from_month, 1, 12);
        check.range(place + "to_month", p.to_month, 1, 12);
        check.range(place + "from_day", p.from_day, 1, 31);
        check.range(place + "to_day", p.to_day, 1, 31);
    }
}

}  // namespace

void add_demand_problems(const Input& input, std::vector<Problem>& problems) {
    Check check(problems);
    check_household(input.demand, check);
    check_control(input.demand, check);
    check_holidays(input.demand, check);
    check.range("weekday of 1 January", input.first_weekday, 0, 6, "Choose 0 (Monday) to 6 (Sunday)");
    const std::vector<double>& surplus = input.surplus_w;
    if (surplus.empty()) return;
    const char* series = "hourly series surplus_w";
    const char* remedy = "Prepare the weather year again";
    if (surplus.size() != 8760) {
        problems.push_back({series, "has " + std::to_string(surplus.size()) + " values, not 8760", remedy});
        return;
    }
    for (const double w : surplus)
        if (!(w >= 0.0 && w <= 1e6)) return check.range(series, w, 0.0, 1e6, remedy);
}

}  // namespace wg::season
