#include "core/economy/over_years.h"

#include <gtest/gtest.h>

namespace wg::economy {
namespace over_years_test {

TEST(OverYears, is_the_sum_of_the_years_with_prices_rising) {
    Tariffs tariffs;
    tariffs.years = 20;
    tariffs.yearly_rise = 0.02;
    tariffs.discount_rate = 0.5;  // of no account
    double sum = 0.0;
    double price = 15'000.0;
    for (int year = 1; year <= 20; ++year) {
        sum += price;
        price *= 1.02;
    }
    const OverYears over = running_over_years(15'000.0, 16'000.0, 19'000.0, tariffs);
    EXPECT_EQ(over.years, 20);
    EXPECT_NEAR(static_cast<double>(over.low.minor), sum, 0.51);
    EXPECT_LT(over.low, over.mid);
    EXPECT_LT(over.mid, over.high);
    tariffs.yearly_rise = 0.0;
    EXPECT_EQ(running_over_years(1.0, 100.0, 200.0, tariffs).mid.minor, 2000);
}

}  // namespace over_years_test
}  // namespace wg::economy
