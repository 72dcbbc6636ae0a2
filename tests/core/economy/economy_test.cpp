#include "core/economy/economy.h"

#include <gtest/gtest.h>

#include <cmath>

namespace wg::economy {
namespace {

constexpr double six_digits = 1e-6;  // the reference values are given to six decimals

/// Only electricity prices and rates matter in most tests; the present heater is direct electric at 100 %.
Input plain_case(double investment, double yearly_saving, int years, double rise, double discount) {
    Input in;
    in.electricity_kwh = 0.0;
    in.useful_heat_kwh = yearly_saving;  // 1 unit of currency a kWh below
    in.demand.present_fuel = Fuel::electric_immersion;
    in.demand.present_efficiency = 1.0;
    in.tariffs.electricity_minor_kwh = 100.0;
    in.tariffs.yearly_service_minor = 0.0;
    in.tariffs.years = years;
    in.tariffs.yearly_rise = rise;
    in.tariffs.discount_rate = discount;
    in.investment = {static_cast<std::int64_t>(std::llround(investment * 100.0))};
    return in;
}

// (1 - (1 + d)^-n)/d: any table of annuity factors.
TEST(PresentWorth, without_rise_it_is_the_annuity_factor) {
    EXPECT_NEAR(present_worth_factor(10, 0.0, 0.04), 8.110896, six_digits);
    EXPECT_NEAR(present_worth_factor(20, 0.0, 0.05), 12.462210, six_digits);
    EXPECT_NEAR(present_worth_factor(15, 0.0, 0.03), 11.937935, six_digits);
    EXPECT_NEAR(1.0 / present_worth_factor(10, 0.0, 0.04), 0.123291, six_digits) << "capital recovery";
    EXPECT_NEAR(1.0 / present_worth_factor(20, 0.0, 0.05), 0.080243, six_digits) << "capital recovery";
}

// Duffie and Beckman, Solar Engineering of Thermal Processes, eq. 11.5.1 (from memory), evaluated by hand.
TEST(PresentWorth, rising_payments_follow_duffie_and_beckman) {
    EXPECT_NEAR(present_worth_factor(20, 0.03, 0.05), 15.964784, six_digits);
    EXPECT_NEAR(present_worth_factor(10, 0.05, 0.08), 8.183554, six_digits);
    EXPECT_NEAR(present_worth_factor(15, 0.02, 0.02), 14.705882, six_digits) << "n/(1 + i) when equal";
}

TEST(PresentWorth, equals_the_sum_of_its_payments) {
    for (const double rise : {-0.05, 0.0, 0.03, 0.12}) {
        for (const double discount : {-0.02, 0.0, 0.03, 0.2}) {
            double sum = 0.0;
            for (int year = 1; year <= 25; ++year)
                sum += std::pow(1.0 + rise, year - 1) / std::pow(1.0 + discount, year);
            EXPECT_NEAR(present_worth_factor(25, rise, discount), sum, 1e-10 * sum) << rise << ' ' << discount;
        }
    }
}

TEST(PresentWorth, has_no_jump_where_rise_meets_discount) {
    const double equal = present_worth_factor(20, 0.03, 0.03);
    // d f/d i is about n^2/2/(1+i)^2: a step of 1e-12 moves f by 2e-10; lost digits would show as 1e-4.
    EXPECT_NEAR(present_worth_factor(20, 0.03 + 1e-12, 0.03), equal, 1e-9);
    EXPECT_NEAR(present_worth_factor(20, 0.03 - 1e-12, 0.03), equal, 1e-9);
}

TEST(PresentWorth, no_years_are_worth_nothing) {
    EXPECT_EQ(present_worth_factor(0, 0.02, 0.03), 0.0);
    EXPECT_EQ(present_worth_factor(-3, 0.02, 0.03), 0.0);
}

// Closed form, evaluated independently: 4000 now, 420 a year for 20 years.
TEST(Evaluate, net_present_value_matches_the_closed_form) {
    EXPECT_EQ(evaluate(plain_case(4000, 420, 20, 0.0, 0.03)).net_present_value.minor, 224854);
    EXPECT_EQ(evaluate(plain_case(4000, 420, 20, 0.02, 0.04)).net_present_value.minor, 275849);
    EXPECT_EQ(evaluate(plain_case(1000, 300, 5, 0.0, 0.10)).net_present_value.minor, 13724);
}

TEST(Evaluate, simple_payback_is_investment_over_saving) {
    EXPECT_NEAR(evaluate(plain_case(4000, 420, 20, 0.0, 0.03)).simple_payback_y, 9.524, 0.001);
    EXPECT_EQ(evaluate(plain_case(9000, 420, 20, 0.0, 0.03)).simple_payback_y, 0.0)
        << "21.4 years are beyond the 20 looked at";
}

TEST(Evaluate, cumulative_curve_crosses_zero_at_the_discounted_payback) {
    const Outcome out = evaluate(plain_case(4000, 420, 20, 0.0, 0.03));
    ASSERT_EQ(out.cumulative.size(), 21U);
    EXPECT_EQ(out.cumulative.front().minor, -400000);
    EXPECT_EQ(out.cumulative.back(), out.net_present_value);
    // Discounted payback of 4000, 420, 3 % is 11.383 years (closed form).
    EXPECT_LT(out.cumulative[11].minor, 0);
    EXPECT_GT(out.cumulative[12].minor, 0);
    const double share = -static_cast<double>(out.cumulative[11].minor) /
                         static_cast<double>(out.cumulative[12].minor - out.cumulative[11].minor);
    EXPECT_NEAR(11.0 + share, 11.383, 0.01) << "linear inside the year; the closed form is an exponential";
}

TEST(Evaluate, heat_cost_spreads_the_investment_by_annuity) {
    // 4000 over 20 y at 3 %, 60 a year, 2200 kWh: 0.1495 a kWh (closed form).
    Input in = plain_case(4000, 2200, 20, 0.0, 0.03);
    in.tariffs.yearly_service_minor = 6000.0;
    const Outcome out = evaluate(in);
    bool found = false;
    for (const Working& w : out.workings) {
        if (w.key != "economy.heat-cost") continue;
        found = true;
        EXPECT_EQ(w.result.substr(0, 6), "0.1495") << w.result;
    }
    EXPECT_TRUE(found);
}

TEST(Evaluate, present_heater_pays_for_its_efficiency_and_its_own_fuel) {
    Input in;
    in.electricity_kwh = 1000.0;
    in.useful_heat_kwh = 3000.0;
    in.demand.present_efficiency = 0.75;  // 4000 kWh of fuel
    in.tariffs.electricity_minor_kwh = 30.0;
    in.tariffs.electricity_kg_co2_kwh = 0.3;
    in.tariffs.yearly_service_minor = 5000.0;
    struct Case {
        Fuel fuel;
        double minor_kwh, kg_co2_kwh;
    };
    const Tariffs& t = in.tariffs;
    for (const Case& c : {Case{Fuel::electric_immersion, t.electricity_minor_kwh, t.electricity_kg_co2_kwh},
                          Case{Fuel::natural_gas, t.gas_minor_kwh, t.gas_kg_co2_kwh},
                          Case{Fuel::lpg, t.lpg_minor_kwh, t.lpg_kg_co2_kwh},
                          Case{Fuel::heating_oil, t.oil_minor_kwh, t.oil_kg_co2_kwh},
                          Case{Fuel::wood, t.wood_minor_kwh, t.wood_kg_co2_kwh}}) {
        in.demand.present_fuel = c.fuel;
        const Outcome out = evaluate(in);
        EXPECT_EQ(out.running_cost.minor, 30000);
        EXPECT_EQ(out.present_cost.minor, std::llround(4000.0 * c.minor_kwh));
        EXPECT_EQ(out.yearly_saving.minor, out.present_cost.minor - 30000 - 5000)
            << "service counts against the saving";
        EXPECT_DOUBLE_EQ(out.co2_kg, 300.0);
        EXPECT_DOUBLE_EQ(out.present_co2_kg, 4000.0 * c.kg_co2_kwh);
    }
}

TEST(Evaluate, system_that_costs_more_to_run_never_pays_back) {
    Input in = plain_case(4000, 100, 20, 0.02, 0.03);
    in.electricity_kwh = 500.0;
    const Outcome out = evaluate(in);
    EXPECT_LT(out.yearly_saving.minor, 0);
    EXPECT_EQ(out.simple_payback_y, 0.0);
    EXPECT_LT(out.net_present_value, Money{} - in.investment);
}

TEST(Evaluate, every_working_names_source_and_is_marked_assumed) {
    const Outcome out = evaluate(plain_case(4000, 420, 20, 0.0, 0.03));
    EXPECT_GE(out.workings.size(), 4U);
    for (const Working& w : out.workings) {
        EXPECT_FALSE(w.source.empty()) << w.key;
        EXPECT_FALSE(w.result.empty()) << w.key;
        EXPECT_TRUE(w.assumed) << w.key;
    }
}

}  // namespace
}  // namespace wg::economy
