#pragma once
// Tariffs, running cost, cash flow and emissions.

#include <string>
#include <vector>

#include "core/findings/finding.h"
#include "core/job/job.h"
#include "core/quantity/money.h"

namespace wg::economy {

/// Energy prices and emissions, with the price list. Prices a kWh in minor units (fractions allowed), tax included.
struct Tariffs {
    double electricity_minor_kwh = 30.0;
    double gas_minor_kwh = 11.0;
    double lpg_minor_kwh = 15.0;
    double oil_minor_kwh = 11.5;
    double wood_minor_kwh = 8.0;
    double electricity_kg_co2_kwh = 0.30;
    double gas_kg_co2_kwh = 0.20;
    double lpg_kg_co2_kwh = 0.23;
    double oil_kg_co2_kwh = 0.27;
    double wood_kg_co2_kwh = 0.03;
    double yearly_rise = 0.02;
    double discount_rate = 0.03;
    int years = 20;
    double yearly_service_minor = 6000.0;
    std::string source;  ///< or "assumed"
    friend bool operator==(const Tariffs&, const Tariffs&) = default;
};

struct Input {
    double electricity_kwh = 0.0;  ///< of the new system, a year
    double useful_heat_kwh = 0.0;
    double low_tariff_kwh = 0.0;       ///< of the electricity: bought in low windows
    double surplus_kwh = 0.0;          ///< of the electricity: from the house's own photovoltaics
    double electricity_low_kwh = 0.0;  ///< range of the electricity; both 0: none known
    double electricity_high_kwh = 0.0;
    Demand demand;
    Tariffs tariffs;
    Money investment;  ///< tax included
};

struct Outcome {
    Money running_cost;   ///< electricity a year, today's price
    Money present_cost;   ///< the present heater, same useful heat
    Money yearly_saving;  ///< with service counted
    double co2_kg = 0.0;
    double present_co2_kg = 0.0;
    double simple_payback_y = 0.0;  ///< 0: never within the years looked at
    Money net_present_value;
    std::vector<Money> cumulative;       ///< year 0..n, discounted
    std::vector<Money> cumulative_low;   ///< the same at the high end of the electricity's range; empty: no range
    std::vector<Money> cumulative_high;  ///< and at its low end
    std::vector<Working> workings;
};

/// What a kilowatt-hour of the new system costs in the mean: bought at the usual and the low price, and own
/// photovoltaic electricity at what feeding it in would have paid.
[[nodiscard]] double mean_price_minor_kwh(const Input& input);

[[nodiscard]] Outcome evaluate(const Input& input);

/// (1 - ((1+i)/(1+d))^n)/(d - i), n/(1+i) when equal: present worth of n yearly payments, first at the end of year 1.
[[nodiscard]] double present_worth_factor(int years, double rise, double discount);

}  // namespace wg::economy
