#include "core/economy/economy.h"

#include <cassert>
#include <cmath>

#include "core/quantity/text.h"

namespace wg::economy {
namespace {

struct Source {
    double minor_kwh = 0.0;
    double kg_co2_kwh = 0.0;
    const char* name = "";
};

Source source_of(Fuel fuel, const Tariffs& t) {
    switch (fuel) {
        case Fuel::electric_immersion: return {t.electricity_minor_kwh, t.electricity_kg_co2_kwh, "electricity"};
        case Fuel::natural_gas: return {t.gas_minor_kwh, t.gas_kg_co2_kwh, "natural gas"};
        case Fuel::lpg: return {t.lpg_minor_kwh, t.lpg_kg_co2_kwh, "liquefied gas"};
        case Fuel::heating_oil: return {t.oil_minor_kwh, t.oil_kg_co2_kwh, "heating oil"};
        case Fuel::wood: return {t.wood_minor_kwh, t.wood_kg_co2_kwh, "wood"};
    }
    return {};
}

/// Cost of a year's electricity. Without low windows and photovoltaics E c to the bit.
double running_minor(const Input& in) {
    const Tariff& tariff = in.demand.tariff;
    const double usual_kwh = in.electricity_kwh - in.low_tariff_kwh - in.surplus_kwh;
    return usual_kwh * in.tariffs.electricity_minor_kwh + in.low_tariff_kwh * tariff.low_minor_kwh +
           in.surplus_kwh * tariff.feed_in_minor_kwh;
}

Money rounded(double minor) {
    return scaled(Money{1}, minor);
}

std::string amount(Money money) {
    return text(money, "");
}

std::string percent(double share) {
    return fixed(100.0 * share, 1) + " %";
}

void show_running(const Input& in, const Source& fuel, double present_kwh, Outcome& out) {
    const Tariffs& t = in.tariffs;
    Working w;
    w.key = "economy.running-cost";
    w.title = "Running cost, a year at today's price";
    w.formula = "C = E c";
    w.inputs = {{"E, electricity", fixed(in.electricity_kwh, 0) + " kWh"},
                {"c, price", fixed(t.electricity_minor_kwh, 2) + " hundredths/kWh"}};
    if (in.low_tariff_kwh > 0.0 || in.surplus_kwh > 0.0) {
        const Tariff& own = in.demand.tariff;
        w.formula = "C = (E - E_l - E_s) c + E_l c_l + E_s c_f";
        w.inputs.push_back({"E_l, bought in low windows", fixed(in.low_tariff_kwh, 0) + " kWh"});
        w.inputs.push_back({"c_l, low price", fixed(own.low_minor_kwh, 2) + " hundredths/kWh"});
        w.inputs.push_back({"E_s, from own photovoltaics", fixed(in.surplus_kwh, 0) + " kWh"});
        w.inputs.push_back({"c_f, pay for feeding in, forgone", fixed(own.feed_in_minor_kwh, 2) + " hundredths/kWh"});
    }
    w.result = amount(out.running_cost);
    w.source = "Tariffs: " + t.source;
    w.assumed = true;  // tariffs of the coming years are never measured
    out.workings.push_back(w);

    w = {};
    w.key = "economy.present-cost";
    w.title = "Present heater, the same useful heat";
    w.formula = "C = Q c / eta";
    w.inputs = {{"Q, useful heat", fixed(in.useful_heat_kwh, 0) + " kWh"},
                {"eta, efficiency of the present heater", percent(in.demand.present_efficiency)},
                {"fuel", fuel.name},
                {"fuel used", fixed(present_kwh, 0) + " kWh"},
                {"c, price", fixed(fuel.minor_kwh, 2) + " hundredths/kWh"}};
    w.result = amount(out.present_cost);
    w.source = "Tariffs: " + t.source;
    w.assumed = true;
    out.workings.push_back(w);
}

void show_worth(const Input& in, double factor, Outcome& out) {
    const Tariffs& t = in.tariffs;
    Working w;
    w.key = "economy.net-present-value";
    w.title = "Net present value over " + std::to_string(t.years) + " years";
    w.formula = "NPV = S (1 - ((1 + i)/(1 + d))^n)/(d - i) - I";
    w.inputs = {{"S, saving in the first year, service taken off", amount(out.yearly_saving)},
                {"i, yearly rise of energy and service prices", percent(t.yearly_rise)},
                {"d, discount rate", percent(t.discount_rate)},
                {"n, years", std::to_string(t.years)},
                {"present worth factor", fixed(factor, 4)},
                {"I, investment with tax", amount(in.investment)}};
    w.result = amount(out.net_present_value);
    w.source = "Duffie and Beckman, Solar Engineering of Thermal Processes, eq. 11.5.1 (from memory)";
    w.assumed = true;
    out.workings.push_back(w);

    const double capital_factor = present_worth_factor(t.years, 0.0, t.discount_rate);
    if (in.useful_heat_kwh <= 0.0 || capital_factor <= 0.0) return;
    const double yearly_minor = static_cast<double>(in.investment.minor) / capital_factor + t.yearly_service_minor +
                                static_cast<double>(out.running_cost.minor);
    w = {};
    w.key = "economy.heat-cost";
    w.title = "Cost of a kilowatt-hour of useful heat, investment spread over the years";
    w.formula = "c = (I d/(1 - (1 + d)^-n) + service + electricity)/Q";
    w.inputs = {{"I", amount(in.investment)},
                {"capital recovery a year", percent(1.0 / capital_factor)},
                {"service", amount(rounded(t.yearly_service_minor))},
                {"electricity", amount(out.running_cost)},
                {"Q", fixed(in.useful_heat_kwh, 0) + " kWh"}};
    w.result = fixed(yearly_minor / in.useful_heat_kwh / 100.0, 4) + " per kWh";
    w.source = "annuity, e.g. VDI 2067 part 1 (from memory)";
    w.assumed = true;
    out.workings.push_back(w);
}

}  // namespace

double present_worth_factor(int years, double rise, double discount) {
    assert(rise > -1.0 && discount > -1.0);
    if (years <= 0) return 0.0;
    // With q = (1+i)/(1+d): (1 - q^n)/(d - i), written so that nothing cancels when i comes close to d.
    const double log_q = std::log1p((rise - discount) / (1.0 + discount));
    if (log_q == 0.0) return static_cast<double>(years) / (1.0 + rise);
    return -std::expm1(static_cast<double>(years) * log_q) / (discount - rise);
}

double mean_price_minor_kwh(const Input& in) {
    const bool one_price = in.low_tariff_kwh == 0.0 && in.surplus_kwh == 0.0;
    if (one_price || !(in.electricity_kwh > 0.0)) return in.tariffs.electricity_minor_kwh;
    return running_minor(in) / in.electricity_kwh;
}

namespace {

/// Investment and discounted savings after each year, as far as the years looked at.
std::vector<Money> course(const Input& in, double saving_minor) {
    const Tariffs& t = in.tariffs;
    const auto investment = static_cast<double>(in.investment.minor);
    std::vector<Money> out;
    out.reserve(static_cast<std::size_t>(t.years) + 1U);
    out.push_back(Money{} - in.investment);
    for (int year = 1; year <= t.years; ++year)
        out.push_back(rounded(saving_minor * present_worth_factor(year, t.yearly_rise, t.discount_rate) - investment));
    return out;
}

/// The same with electricity at the ends of its range, at the year's mean price.
void add_band(const Input& in, double saving_minor, Outcome& out) {
    if (!(in.electricity_high_kwh > in.electricity_low_kwh)) return;
    const double price = mean_price_minor_kwh(in);
    out.cumulative_low = course(in, saving_minor - (in.electricity_high_kwh - in.electricity_kwh) * price);
    out.cumulative_high = course(in, saving_minor + (in.electricity_kwh - in.electricity_low_kwh) * price);
}

}  // namespace

Outcome evaluate(const Input& in) {
    assert(in.demand.present_efficiency > 0.0);
    const Tariffs& t = in.tariffs;
    const Source fuel = source_of(in.demand.present_fuel, t);
    const double present_kwh = in.useful_heat_kwh / in.demand.present_efficiency;

    Outcome out;
    out.running_cost = rounded(running_minor(in));
    out.present_cost = rounded(present_kwh * fuel.minor_kwh);
    // Own photovoltaic electricity causes none here; what it would have replaced elsewhere is not counted.
    out.co2_kg = (in.electricity_kwh - in.surplus_kwh) * t.electricity_kg_co2_kwh;
    out.present_co2_kg = present_kwh * fuel.kg_co2_kwh;
    const Money service = rounded(t.yearly_service_minor);
    out.yearly_saving = out.present_cost - out.running_cost - service;

    const auto saving = static_cast<double>(out.yearly_saving.minor);
    const auto investment = static_cast<double>(in.investment.minor);
    if (saving > 0.0 && investment / saving <= static_cast<double>(t.years)) {
        out.simple_payback_y = investment / saving;
    }
    out.cumulative = course(in, saving);
    add_band(in, saving, out);
    out.net_present_value = out.cumulative.back();
    show_running(in, fuel, present_kwh, out);
    show_worth(in, present_worth_factor(t.years, t.yearly_rise, t.discount_rate), out);
    return out;
}

}  // namespace wg::economy
