#include <algorithm>
#include <array>
#include <cmath>
#include <future>

#include "core/heatpump/compressor.h"
#include "core/plan/parts_of_plan.h"
#include "core/quantity/text.h"

namespace wg::plan::steps {
namespace {

/// One of the two further runs that give the range. The sizes are assumed: they follow from how far the year moved
/// when each input of a first-principles model was moved by its own uncertainty (docs/handbook/ranges.md).
struct Variation {
    double light = 1.0;       ///< on the plate
    double plate = 1.0;       ///< plate to refrigerant
    double compressor = 1.0;  ///< overall efficiency
    double condenser = 1.0;
    double draw = 1.0;  ///< of the household
};
constexpr Variation poorer{0.93, 0.80, 0.95, 0.85, 1.15};
constexpr Variation better{1.07, 1.20, 1.05, 1.15, 0.85};

season::Input varied(season::Input input, const Variation& by) {
    for (season::PlateGroup& group : input.groups) {
        for (double& w : group.front_w_m2)
            w *= by.light;
        for (double& w : group.rear_w_m2)
            w *= by.light;
    }
    input.collector.plate_to_refrigerant_w_m2k *= by.plate;
    heatpump::scale_efficiency(input.block, by.compressor);
    input.block.condenser_w_k *= by.condenser;
    input.demand.scale = std::clamp(input.demand.scale * by.draw, 0.2, 3.0);
    return input;
}

/// The same year with a suction line that costs nothing.
season::Input without_lines(season::Input input) {
    input.line_ua_w_k = 0.0;
    input.suction_drop_k = 0.0;
    return input;
}

/// What equipment and household do (least and greatest of three runs) and what the weather of single years does
/// (tenth and ninetieth percentile over the median) are independent of each other: their distances from the middle are
/// added as squares.
void record_figures(const std::array<season::Year, 3>& runs, const std::optional<WeatherSpread>& spread,
                    Figures& figures) {
    const auto range = [&](auto of, const weather::Quantiles* weather) {
        const double mid = of(runs[0]);
        const double a = of(runs[1]);
        const double b = of(runs[2]);
        Ranged out{std::min({mid, a, b}), mid, std::max({mid, a, b})};
        if (weather != nullptr && weather->p50 > 0.0) {
            const double down = mid * (1.0 - weather->p10 / weather->p50);
            const double up = mid * (weather->p90 / weather->p50 - 1.0);
            out.low = mid - std::hypot(mid - out.low, down);
            out.high = mid + std::hypot(out.high - mid, up);
        }
        return out;
    };
    figures.heat_kwh =
        range([](const season::Year& y) { return y.total.drawn_kwh; }, spread ? &spread->heat_kwh : nullptr);
    figures.electricity_kwh = range([](const season::Year& y) { return y.total.electricity_kwh(); },
                                    spread ? &spread->electricity_kwh : nullptr);
    figures.seasonal_factor =
        range([](const season::Year& y) { return y.seasonal_factor; }, spread ? &spread->seasonal_factor : nullptr);
}

/// The same variations, with the light as it is: the weather's share comes from the further years.
Variation at_usual_light(Variation by) {
    by.light = 1.0;
    return by;
}

std::string draws_source(const Demand& demand) {
    return demand.draw_source == DrawSource::household ? "household of probabilities, docs/handbook/household.md"
                                                       : "EU 812/2013 annex VII table 3 (draw-off cycle)";
}

/// What the wish asks beyond warm water: told only when it asks for it.
void record_control(const season::Year& year, std::vector<Working>& workings) {
    const season::MonthSums& t = year.total;
    const auto kwh = [](double v) { return fixed(v, 0) + " kWh"; };
    if (!(t.hygiene_kwh + t.recirculation_kwh + t.surplus_kwh + t.low_tariff_kwh + t.pump_waits_h > 0.0)) return;
    workings.push_back({"yield.control",
                        "Hygiene runs, loop, clock and own photovoltaics",
                        "parts of the year's electricity, and heat lost by the loop",
                        {{"electricity of the hygiene runs", kwh(t.hygiene_kwh)},
                         {"heat lost by the recirculation loop", kwh(t.recirculation_kwh)},
                         {"electricity met by own photovoltaics", kwh(t.surplus_kwh)},
                         {"electricity bought in low windows", kwh(t.low_tariff_kwh)},
                         {"hours in which the pump waits by order", fixed(t.pump_waits_h, 0)}},
                        kwh(t.electricity_kwh()),
                        year.models,
                        true});
}

void record_workings(const Demand& demand, const Plan& plan, std::vector<Working>& workings) {
    const season::MonthSums& t = plan.season.total;
    const auto kwh = [](double v) { return fixed(v, 0) + " kWh"; };
    workings.push_back({"yield.heat",
                        "Useful heat drawn in a year",
                        "heat asked for - shortfall",
                        {{demand.draw_source == DrawSource::cycle ? "heat asked for by the draw-off cycle"
                                                                  : "heat asked for by the household",
                          kwh(t.wanted_kwh)},
                         {"shortfall below the wanted temperature", kwh(t.shortfall_kwh)},
                         {"weather", plan.weather_source},
                         {"range", plan.range_method}},
                        kwh(t.drawn_kwh),
                        draws_source(demand) + "; year of operation at 10-minute steps",
                        true});
    workings.push_back({"yield.electricity",
                        "Electricity in a year",
                        "compressor + immersion heater + defrost + standby",
                        {{"compressor", kwh(t.compressor_kwh)},
                         {"immersion heater", kwh(t.immersion_kwh)},
                         {"defrost", kwh(t.defrost_kwh)},
                         {"standby", kwh(t.standby_kwh)}},
                        kwh(t.electricity_kwh()),
                        plan.season.models,
                        true});
    workings.push_back({"yield.factor",
                        "Seasonal factor",
                        "(heat to the water by pump and heaters) / electricity",
                        {{"light absorbed while running", kwh(t.light_kwh)},
                         {"heat from the air", kwh(t.air_kwh)},
                         {"net long-wave", kwh(t.long_wave_kwh)},
                         {"condensation and frost", kwh(t.latent_kwh)},
                         {"heat given by the pump", kwh(t.condenser_kwh)},
                         {"standing loss of the cylinder", kwh(t.standing_loss_kwh)},
                         {"closure of the circuit's balance", fixed(100.0 * plan.season.closure_circuit, 4) + " %"},
                         {"closure of the water's balance", fixed(100.0 * plan.season.closure_water, 4) + " %"}},
                        fixed(plan.season.seasonal_factor, 2),
                        plan.season.models,
                        true});
}

}  // namespace

std::vector<Problem> yield(const Job& job, const Selection& with, const Options& options, const season::Input& input,
                           Plan& plan) {
    season::Options full;
    full.keep_hours = options.keep_hours;
    season::Options bare = full;
    bare.keep_hours = false;

    // Independent runs on two threads: each is deterministic by itself, so the order of finishing changes nothing.
    std::array<season::Year, 3> runs;
    season::Year bare_lines;
    std::vector<Problem> problems;
    const auto take = [&](Result<season::Year> result, season::Year& into) {
        if (result) {
            into = std::move(result).value();
        } else {
            problems.insert(problems.end(), result.problems().begin(), result.problems().end());
        }
    };
    if (options.ranges) {
        Result<std::optional<WeatherSpread>> spread = spread_over_years(job, with, plan);
        if (!spread) return spread.problems();
        plan.weather_spread = spread.value();
        const bool years = plan.weather_spread.has_value();
        const Variation worse = years ? at_usual_light(poorer) : poorer;
        const Variation kinder = years ? at_usual_light(better) : better;
        auto others = std::async(std::launch::async, [&] {
            return std::pair{season::run(varied(input, worse), bare), season::run(varied(input, kinder), bare)};
        });
        take(season::run(input, full), runs[0]);
        take(season::run(without_lines(input), bare), bare_lines);
        auto [poor, good] = others.get();
        take(std::move(poor), runs[1]);
        take(std::move(good), runs[2]);
        const std::string sizes =
            "plate to refrigerant -20/+20 %, compressor -5/+5 %, condenser -15/+15 %, draw-off +15/-15 % together "
            "(sizes assumed)";
        plan.range_method = years ? "eight in ten of " + std::to_string(plan.weather_spread->years) +
                                        " made years of the climate, and two runs of the year with " + sizes
                                  : "two further runs of the year: light -7/+7 %, " + sizes;
    } else {
        take(season::run(input, full), runs[0]);
        runs[1] = runs[0];
        runs[2] = runs[0];
        plan.range_method = "not worked out yet";
    }
    if (!problems.empty()) return problems;
    record_figures(runs, plan.weather_spread, plan.figures);
    plan.season = std::move(runs[0]);
    losses_over_year(with, bare_lines.seasonal_factor, plan);

    const Result<season::Standstill> still = season::standstill(input);
    if (!still) return still.problems();
    plan.standstill = still.value();
    // Conditions of docs/handbook/season.md: good and fair daylight, and a winter night.
    const std::array<season::WarmUpConditions, 3> days = {{{10.0, 800.0, 0.0, 20.0, 0.50, 2.0, 12.0},
                                                           {10.0, 400.0, 0.0, 15.0, 0.65, 2.0, 10.0},
                                                           {10.0, 0.0, 0.0, 2.0, 0.85, 2.0, 10.0}}};
    std::array<std::optional<season::WarmUp>*, 3> into = {&plan.warm_up_good, &plan.warm_up_fair, &plan.warm_up_poor};
    for (std::size_t i = 0; i < days.size(); ++i) {
        const Result<season::WarmUp> warm = season::warm_up(input, days[i], bare);
        if (!warm) return warm.problems();
        *into[i] = warm.value();
    }
    plan.has_yield = true;
    record_workings(job.demand, plan, plan.workings);
    record_control(plan.season, plan.workings);
    return {};
}

}  // namespace wg::plan::steps
