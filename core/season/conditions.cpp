// Warm-up under constant conditions, and standstill.

#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/season/schedule.h"
#include "core/season/simulation.h"
#include "core/season/warm_up.h"

namespace wg::season {

namespace {

constexpr double longest_warm_up_s = 72.0 * 3600.0;

std::vector<Problem> problems_of(const WarmUpConditions& c) {
    std::vector<Problem> problems;
    const auto check = [&](const char* where, double value, double low, double high) {
        if (value >= low && value <= high) return;
        problems.push_back({std::string("warm-up conditions.") + where,
                            "the value " + std::to_string(value) + " lies outside " + std::to_string(low) + " to " +
                                std::to_string(high),
                            "Correct the conditions"});
    };
    check("start_c", c.start_c, 0.0, 60.0);
    check("light_w_m2", c.light_w_m2, 0.0, 1500.0);
    check("rear_light_w_m2", c.rear_light_w_m2, 0.0, 1500.0);
    check("air_c", c.air_c, -40.0, 50.0);
    check("relative_humidity", c.relative_humidity, 0.01, 1.0);
    check("wind_m_s", c.wind_m_s, 0.0, 40.0);
    check("sky_below_air_k", c.sky_below_air_k, -5.0, 60.0);
    return problems;
}

/// Dew point of a relative humidity: the Magnus form over water, inverted.
double dew_point_c(double air_c, double relative_humidity) {
    const double x = std::log(relative_humidity) + 17.62 * air_c / (243.12 + air_c);
    return 243.12 * x / (17.62 - x);
}

std::vector<Problem> all_problems_of(const Input& equipment, const WarmUpConditions& conditions,
                                     const Options& options) {
    auto problems = problems_of(equipment, options, false);
    for (auto& problem : problems_of(conditions))
        problems.push_back(std::move(problem));
    if (problems.empty() && conditions.start_c >= equipment.demand.set_point_c)
        problems.push_back({"warm-up conditions.start_c", "the water is at the set-point already",
                            "Choose a start below the set-point"});
    return problems;
}

}  // namespace

Result<WarmUp> warm_up(const Input& equipment, const WarmUpConditions& conditions, const Options& options) {
    auto problems = all_problems_of(equipment, conditions, options);
    if (!problems.empty()) return problems;
    const auto pump = heatpump::HeatPump::make(equipment.block, *equipment.refrigerant);
    if (!pump) return pump.problems();
    return warm_up(equipment, pump.value(), conditions, options);
}

Result<WarmUp> warm_up(const Input& equipment, const heatpump::HeatPump& pump, const WarmUpConditions& conditions,
                       const Options& options) {
    auto problems = all_problems_of(equipment, conditions, options);
    if (!problems.empty()) return problems;

    Input input = equipment;
    input.cylinder.immersion_w = 0.0;  // the pump's own time
    Simulation simulation(input, pump, options, conditions.start_c);
    const heatpump::Surroundings surroundings{
        conditions.light_w_m2, conditions.rear_light_w_m2,
        conditions.air_c,      dew_point_c(conditions.air_c, conditions.relative_humidity),
        conditions.wind_m_s,   kelvin(conditions.air_c - conditions.sky_below_air_k),
        standard_pressure_pa,  input.collector.iso9806 ? input.collector.iso9806->hemispherical() : 1.0};
    for (std::size_t g = 0; g < input.groups.size(); ++g)
        simulation.set_weather(surroundings, g);
    WarmUp out;
    Ledger sum;
    double elapsed_s = 0.0;
    simulation.demand_heat();
    while (elapsed_s < longest_warm_up_s) {
        const Ledger step = simulation.step(options.step_s, nullptr, 0, conditions.start_c);
        sum.add(step);
        if (simulation.off_reason() != heatpump::Off::none) {
            out.why_not = heatpump::reason_text(simulation.off_reason());
            out.why_not += " with water at " + std::to_string(std::lround(simulation.store().mean_c())) + " deg C";
            break;
        }
        if (!simulation.calling()) {
            out.reached = true;
            elapsed_s += step.running_s;
            break;
        }
        elapsed_s += options.step_s;
    }
    if (!out.reached && out.why_not.empty()) out.why_not = "not reached within 72 hours";
    out.hours = elapsed_s / 3600.0;
    out.heat_kwh = sum.condenser / joule_per_kwh;
    out.electricity_kwh = (sum.compressor + sum.defrost) / joule_per_kwh;
    out.mean_cop = out.electricity_kwh > 0.0 ? out.heat_kwh / out.electricity_kwh : 0.0;
    return out;
}

Result<Standstill> standstill(const Input& input) {
    if (auto problems = problems_of(input, Options{}, true); !problems.empty()) return problems;
    Standstill out;
    out.plate_c = -1e9;
    for (std::size_t g = 0; g < input.groups.size(); ++g) {
        const PlateGroup& group = input.groups[g];
        heatpump::PlateBalance balance(
            heatpump::plate_of(input.collector, group.count, group.tilt_deg, group.sky_view, group.rear_free),
            heatpump::Surroundings{});
        for (std::size_t hour = 0; hour < input.air_c.size(); ++hour) {
            balance.set_weather(input.surroundings(group, hour));
            // Only an hour in which the hottest plate so far would still gain heat can be hotter.
            if ((g > 0 || hour > 0) && balance.heat(out.plate_c).total_w() <= 0.0) continue;
            out.plate_c = balance.temperature_at(0.0, std::max(out.plate_c, input.air_c[hour]));
            out.hour = static_cast<int>(hour);
            out.group = g;
            out.light_w_m2 = group.front_w_m2[hour];
            out.air_c = input.air_c[hour];
            out.wind_m_s = group.wind_plate_m_s[hour];
        }
    }
    const auto& refrigerant = *input.refrigerant;
    out.above_critical = out.plate_c >= refrigerant.critical_c();
    out.pressure_bar_abs = refrigerant.pressure_up_to_critical_pa(std::max(out.plate_c, refrigerant.min_c())) / 1e5;
    return out;
}

}  // namespace wg::season
