#include "core/plan/month_bills.h"

namespace wg::plan {

std::vector<MonthBill> month_bills(const Plan& plan, const Tariff& tariff) {
    const season::MonthSums& year = plan.season.total;
    const double year_kwh = year.electricity_kwh();
    const Ranged& range = plan.figures.electricity_kwh;
    if (!plan.has_yield || !(year_kwh > 0.0) || !(range.mid > 0.0)) return {};
    const double other_minor = year.low_tariff_kwh * tariff.low_minor_kwh + year.surplus_kwh * tariff.feed_in_minor_kwh;
    const double usual_kwh = year_kwh - year.low_tariff_kwh - year.surplus_kwh;
    // The middle of the range may be another run's than the year that was kept; its cost goes with it.
    const double cost_minor = plan.figures.running_cost_minor.mid * year_kwh / range.mid;
    const double usual_minor = usual_kwh > 1e-9 * year_kwh ? (cost_minor - other_minor) / usual_kwh : 0.0;
    const double low = range.low / range.mid;
    const double high = range.high / range.mid;
    const double middle = range.mid / year_kwh;
    std::vector<MonthBill> bills;
    for (std::size_t i = 0; i < plan.season.months.size(); ++i) {
        const season::MonthSums& sums = plan.season.months[i];
        const double kwh = sums.electricity_kwh();
        const double minor = (kwh - sums.low_tariff_kwh - sums.surplus_kwh) * usual_minor +
                             sums.low_tariff_kwh * tariff.low_minor_kwh + sums.surplus_kwh * tariff.feed_in_minor_kwh;
        MonthBill bill;
        bill.month = static_cast<int>(i) + 1;
        bill.heat_kwh = sums.drawn_kwh;
        bill.electricity_kwh = {kwh * middle * low, kwh * middle, kwh * middle * high};
        bill.cost_minor = {minor * middle * low, minor * middle, minor * middle * high};
        bill.low_tariff_kwh = sums.low_tariff_kwh;
        bill.surplus_kwh = sums.surplus_kwh;
        bills.push_back(bill);
    }
    return bills;
}

}  // namespace wg::plan
