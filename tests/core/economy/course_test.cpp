#include "core/economy/course.h"

#include <gtest/gtest.h>

#include <cmath>

namespace wg::economy {
namespace {

Outcome outcome() {
    Input in;
    in.electricity_kwh = 1000.0;
    in.useful_heat_kwh = 3000.0;
    in.demand.present_fuel = Fuel::electric_immersion;
    in.demand.present_efficiency = 1.0;
    in.tariffs.electricity_minor_kwh = 30.0;
    in.tariffs.yearly_service_minor = 5000.0;
    in.investment = Money{400000};
    return evaluate(in);
}

TEST(Course, set_starts_with_its_price_and_the_present_heater_with_nothing) {
    const Course c = course(outcome(), Tariffs{});
    ASSERT_EQ(c.set.size(), 21U);
    EXPECT_EQ(c.set.front(), Money{400000});
    EXPECT_EQ(c.present.front(), Money{0});
    EXPECT_TRUE(c.set_low.empty());
    EXPECT_TRUE(c.set_high.empty());
}

TEST(Course, first_year_by_hand) {
    // 1000 kWh at 0.30 and 50 of service, 3000 kWh for the present heater; paid at the end of year 1, d = 3 %.
    const Course c = course(outcome(), Tariffs{});
    EXPECT_NEAR(static_cast<double>(c.present[1].minor), 90000.0 / 1.03, 1.0);
    EXPECT_NEAR(static_cast<double>(c.set[1].minor), 400000.0 + 35000.0 / 1.03, 2.0);
}

TEST(Course, curves_meet_where_the_saving_is_even) {
    const Outcome out = outcome();
    const Course c = course(out, Tariffs{});
    ASSERT_GT(c.even_y, 0.0);
    const auto year = static_cast<std::size_t>(c.even_y);
    EXPECT_GT(c.set[year], c.present[year]);
    EXPECT_LE(c.set[year + 1], c.present[year + 1]);
    EXPECT_DOUBLE_EQ(even_year({{-300}, {-100}, {100}}), 1.5);
    EXPECT_DOUBLE_EQ(even_year({{-300}, {-100}, {-50}}), 0.0);
    EXPECT_DOUBLE_EQ(even_year({}), 0.0);
}

TEST(Course, ends_turn_round_since_much_saved_is_little_spent) {
    const Outcome out = outcome();
    CourseEnds ends;
    for (const Money amount : out.cumulative) {
        ends.cumulative_low.push_back(amount - Money{1000});
        ends.cumulative_high.push_back(amount + Money{2000});
    }
    ends.electricity_low = 0.8;
    ends.electricity_high = 1.2;
    const Course c = course(out, Tariffs{}, ends);
    ASSERT_EQ(c.set_low.size(), c.set.size());
    for (std::size_t year = 0; year < c.set.size(); ++year) {
        EXPECT_EQ(c.set[year] - c.set_low[year], Money{2000});
        EXPECT_EQ(c.set_high[year] - c.set[year], Money{1000});
    }
    EXPECT_NEAR(c.co2_set_low_kg[10], 8.0 * out.co2_kg, 1e-9);
    EXPECT_NEAR(c.co2_set_high_kg[10], 12.0 * out.co2_kg, 1e-9);
    EXPECT_NEAR(c.co2_present_kg[10], 10.0 * out.present_co2_kg, 1e-9);
    ends.cumulative_low.pop_back();
    EXPECT_TRUE(course(out, Tariffs{}, ends).set_high.empty()) << "a series of another length is no range";
}

}  // namespace
}  // namespace wg::economy
