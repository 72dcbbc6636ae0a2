#include "core/plan/month_bills.h"

#include <gtest/gtest.h>

namespace wg::plan {
namespace month_bills_test {

Plan with_year() {
    Plan p;
    p.has_yield = true;
    for (std::size_t i = 0; i < 12; ++i) {
        season::MonthSums& month = p.season.months[i];
        month.compressor_kwh = 30.0 + static_cast<double>(i);
        month.standby_kwh = 3.0;
        month.drawn_kwh = 140.0;
        p.season.total.compressor_kwh += month.compressor_kwh;
        p.season.total.standby_kwh += month.standby_kwh;
    }
    const double year_kwh = p.season.total.electricity_kwh();
    p.figures.electricity_kwh = {0.9 * year_kwh, year_kwh, 1.2 * year_kwh};
    p.figures.running_cost_minor = {0.9 * year_kwh * 30.0, year_kwh * 30.0, 1.2 * year_kwh * 30.0};
    return p;
}

void expect_adds_up(const Plan& p, const std::vector<MonthBill>& bills) {
    ASSERT_EQ(bills.size(), 12U);
    Ranged kwh, minor;
    for (const MonthBill& bill : bills) {
        kwh.low += bill.electricity_kwh.low;
        kwh.mid += bill.electricity_kwh.mid;
        kwh.high += bill.electricity_kwh.high;
        minor.low += bill.cost_minor.low;
        minor.mid += bill.cost_minor.mid;
        minor.high += bill.cost_minor.high;
    }
    EXPECT_NEAR(kwh.low, p.figures.electricity_kwh.low, 1e-9 * kwh.low);
    EXPECT_NEAR(kwh.mid, p.figures.electricity_kwh.mid, 1e-9 * kwh.mid);
    EXPECT_NEAR(kwh.high, p.figures.electricity_kwh.high, 1e-9 * kwh.high);
    EXPECT_NEAR(minor.low, p.figures.running_cost_minor.low, 1e-9 * minor.low);
    EXPECT_NEAR(minor.mid, p.figures.running_cost_minor.mid, 1e-9 * minor.mid);
    EXPECT_NEAR(minor.high, p.figures.running_cost_minor.high, 1e-9 * minor.high);
}

TEST(MonthBills, months_add_up_to_the_year_and_follow_one_price) {
    const Plan p = with_year();
    const std::vector<MonthBill> bills = month_bills(p, {});
    expect_adds_up(p, bills);
    // One price of 30 minor units a kWh.
    EXPECT_NEAR(bills[4].cost_minor.mid, bills[4].electricity_kwh.mid * 30.0, 1e-9);
    EXPECT_NEAR(bills[4].electricity_kwh.mid, 37.0, 1e-9);
    EXPECT_NEAR(bills[4].electricity_kwh.high, 37.0 * 1.2, 1e-9);
}

TEST(MonthBills, low_tariff_and_own_photovoltaics_count_in_their_month_at_their_own_price) {
    Plan p = with_year();
    Tariff tariff;
    tariff.low_minor_kwh = 20.0;
    tariff.feed_in_minor_kwh = 8.0;
    p.season.months[0].low_tariff_kwh = 25.0;
    p.season.months[6].surplus_kwh = 10.0;
    p.season.total.low_tariff_kwh = 25.0;
    p.season.total.surplus_kwh = 10.0;
    const double year_kwh = p.season.total.electricity_kwh();
    const double year_minor = (year_kwh - 35.0) * 30.0 + 25.0 * 20.0 + 10.0 * 8.0;
    p.figures.running_cost_minor = {0.9 * year_minor, year_minor, 1.2 * year_minor};
    const std::vector<MonthBill> bills = month_bills(p, tariff);
    expect_adds_up(p, bills);
    EXPECT_NEAR(bills[0].cost_minor.mid, 8.0 * 30.0 + 25.0 * 20.0, 1e-6);  // 33 kWh, 25 of them low
    EXPECT_NEAR(bills[6].cost_minor.mid, 29.0 * 30.0 + 10.0 * 8.0, 1e-6);  // 39 kWh, 10 of them own
    EXPECT_NEAR(bills[3].cost_minor.mid, 36.0 * 30.0, 1e-6);
}

TEST(MonthBills, there_are_none_without_a_year) {
    Plan p = with_year();
    p.has_yield = false;
    EXPECT_TRUE(month_bills(p, {}).empty());
    EXPECT_TRUE(month_bills(Plan(), {}).empty());
}

}  // namespace month_bills_test
}  // namespace wg::plan
