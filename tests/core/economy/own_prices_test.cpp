#include <gtest/gtest.h>

#include "core/economy/economy.h"

namespace wg::economy {
namespace {

Input year() {
    Input in;
    in.electricity_kwh = 1000.0;
    in.useful_heat_kwh = 2500.0;
    in.tariffs.electricity_minor_kwh = 30.0;
    in.investment = {500000};
    return in;
}

TEST(OwnPrices, low_windows_and_photovoltaics_each_have_their_price) {
    Input in = year();
    EXPECT_EQ(mean_price_minor_kwh(in), 30.0);
    EXPECT_EQ(evaluate(in).running_cost.minor, 30000);
    in.low_tariff_kwh = 300.0;
    in.surplus_kwh = 200.0;
    in.demand.tariff.low_minor_kwh = 20.0;
    in.demand.tariff.feed_in_minor_kwh = 7.0;
    const Outcome out = evaluate(in);
    EXPECT_EQ(out.running_cost.minor, 500 * 30 + 300 * 20 + 200 * 7);
    EXPECT_NEAR(mean_price_minor_kwh(in), 22.4, 1e-9);
    EXPECT_NEAR(out.co2_kg, 800.0 * in.tariffs.electricity_kg_co2_kwh, 1e-9);
    EXPECT_NE(out.workings.front().formula.find("E_s c_f"), std::string::npos);
}

TEST(CostBand, holds_the_middle_and_is_empty_without_a_range) {
    Input in = year();
    EXPECT_TRUE(evaluate(in).cumulative_low.empty());
    in.electricity_low_kwh = 850.0;
    in.electricity_high_kwh = 1200.0;
    const Outcome out = evaluate(in);
    ASSERT_EQ(out.cumulative_low.size(), out.cumulative.size());
    ASSERT_EQ(out.cumulative_high.size(), out.cumulative.size());
    EXPECT_EQ(out.cumulative_low[0].minor, out.cumulative[0].minor) << "the price is paid either way";
    for (std::size_t y = 1; y < out.cumulative.size(); ++y) {
        EXPECT_LT(out.cumulative_low[y].minor, out.cumulative[y].minor);
        EXPECT_GT(out.cumulative_high[y].minor, out.cumulative[y].minor);
    }
    // One year: 200 kWh more at 30 hundredths, discounted by a year.
    const double first = present_worth_factor(1, in.tariffs.yearly_rise, in.tariffs.discount_rate);
    EXPECT_NEAR(static_cast<double>(out.cumulative[1].minor - out.cumulative_low[1].minor), 200.0 * 30.0 * first, 1.0);
}

}  // namespace
}  // namespace wg::economy
