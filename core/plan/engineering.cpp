#include <algorithm>
#include <array>

#include "core/fixing/layout_rules.h"
#include "core/heatpump/cycle.h"
#include "core/plan/parts_of_plan.h"
#include "core/quantity/text.h"
#include "core/season/schedule.h"

namespace wg::plan::steps {
namespace {

template <class T>
void append(std::vector<T>& to, const std::vector<T>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

/// Middle of the collectors' connections: where the run starts. Several plates are joined by short tubes of their own.
Point3 collector_connection(const std::vector<PlacementPlan>& placements) {
    Point3 middle;
    for (const PlacementPlan& placement : placements) {
        middle.x_m += placement.placed.connection_in_space.x_m;
        middle.y_m += placement.placed.connection_in_space.y_m;
        middle.z_m += placement.placed.connection_in_space.z_m;
    }
    const double share = 1.0 / static_cast<double>(placements.size());
    return {middle.x_m * share, middle.y_m * share, middle.z_m * share};
}

/// Heat taken up, for the refrigerant flow in the lines, W.
double rating_heat_w(const BlockModel& block, const refrigerant::Properties& refrigerant, double evaporating_c,
                     double condensing_c) {
    if (block.compressor) return heatpump::cycle_at(block, refrigerant, evaporating_c, condensing_c).evaporator_w;
    const double ratio =
        refrigerant.saturation_pressure_pa(condensing_c) / refrigerant.saturation_pressure_pa(evaporating_c);
    const double filling = std::max(0.1, block.volumetric_at_unity - block.volumetric_slope * (ratio - 1.0));
    const refrigerant::Vapour suction = refrigerant.vapour(evaporating_c, block.superheat_k);
    const double swept_m3_s = block.displacement_cm3 * 1e-6 * block.speed_rpm / 60.0;
    const double flow_kg_s = swept_m3_s * filling * suction.density_kg_m3;
    return flow_kg_s * (suction.enthalpy_j_kg - refrigerant.liquid_enthalpy_j_kg(condensing_c - block.subcooling_k));
}

std::array<double, 12> cold_by_month_c(const Job& job, const Selection& with) {
    constexpr std::array<int, 12> days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const std::array<double, 365> by_day = season::cold_inflow_c(with.weather->year.air_c, job.demand);
    std::array<double, 12> out{};
    std::size_t day = 0;
    for (std::size_t month = 0; month < out.size(); ++month) {
        for (int i = 0; i < days[month]; ++i)
            out[month] += by_day[day++] / days[month];
    }
    return out;
}

constexpr double rating_condensing_c = 50.0;
constexpr double under_air_k = 8.0;  // a bare plate evaporates about so far below the air by night and in winter

/// The named points that stand for the year until it has run: cold, mean and warm.
struct NamedPoint {
    double evaporating_c, weight;
};
constexpr std::array<NamedPoint, 3> named_points{{{-10.0, 0.2}, {0.0, 0.5}, {12.0, 0.3}}};

pipework::OperatingPoint operating_point(const BlockModel& block, const refrigerant::Properties& refrigerant,
                                         double evaporating_c, double weight) {
    pipework::OperatingPoint out{evaporating_c, rating_condensing_c, 0.0, evaporating_c + under_air_k, weight};
    if (refrigerant.in_saturation_range(evaporating_c) && refrigerant.in_vapour_range(evaporating_c, block.superheat_k))
        out.evaporator_w = rating_heat_w(block, refrigerant, evaporating_c, rating_condensing_c);
    return out;
}

void fix_collectors(const Job& job, const Selection& with, Plan& plan) {
    int next_number = 1;
    for (std::size_t i = 0; i < plan.placements.size(); ++i) {
        PlacementPlan& placed = plan.placements[i];
        fixing::Input input;
        input.site = job.site;
        input.surface = *find_surface(job.site, placed.surface_id);
        input.placement = with.choice->placements[i];
        input.collector = *with.collector;
        input.placed = placed.placed;
        input.method = *with.method;
        input.rules = with.rules->actions;
        input.refrigerant_kg = plan.run.total_charge_kg / static_cast<double>(plan.placements.size());
        input.first_number = next_number;
        for (const PlacementPlan& other : plan.placements) {
            if (&other != &placed && other.surface_id == placed.surface_id)
                input.others.push_back(other.placed.outline);
        }
        input.alternatives = *with.methods;
        placed.fixing = fixing::fix(input);
        next_number += static_cast<int>(placed.fixing.points.size());
        if (i == 0 || placed.fixing.worst_utilisation > plan.figures.worst_utilisation) {  // of equals the first
            plan.figures.worst_utilisation = placed.fixing.worst_utilisation;
            plan.figures.worst_point = placed.fixing.worst_point;
        }
    }
}

}  // namespace

pipework::SuggestInput suggest_input(const Job& job, const Selection& with,
                                     const std::vector<PlacementPlan>& placements) {
    pipework::SuggestInput input;
    input.site = &job.site;
    input.from = collector_connection(placements);
    input.from_surface = placements.front().surface_id;
    input.to = block_connection(*with.spot, *with.cylinder);
    input.ceiling_m = with.spot->position.z_m + with.spot->headroom_m;
    for (const PlacementPlan& placement : placements)
        input.collectors.push_back({placement.surface_id, placement.placed.outline});
    return input;
}

pipework::Input run_input(const Selection& with) {
    pipework::Input input;
    input.block_connection = block_connection(*with.spot, *with.cylinder);
    input.block = *with.block;
    input.collector = *with.collector;
    input.refrigerant = with.refrigerant;
    const auto point = [&](double evaporating_c, double weight) {
        return operating_point(*with.block, *with.refrigerant, evaporating_c, weight);
    };
    input.rating = point(0.0, 1.0);
    for (const NamedPoint& named : named_points)
        input.points.push_back(point(std::max(named.evaporating_c, with.block->evaporating_min_c), named.weight));
    input.coldest = point(with.block->evaporating_min_c, 1.0);
    input.air.room_c = with.spot->room_temperature_c;
    return input;
}

void losses_over_year(const Selection& with, double factor_without, Plan& plan) {
    std::vector<pipework::OperatingPoint> points;
    for (const season::OperatingBand& band : plan.season.operation)
        points.push_back({band.evaporating_c, band.condensing_c, band.evaporator_w, band.air_c, band.hours});
    if (points.empty()) return;
    pipework::over_points(run_input(with), points, plan.run);
    Working working =
        pipework::losses_working(plan.run, "bands of 5 K of the evaporating temperature, by their hours in the year");
    if (factor_without > 0.0) {
        plan.run_loss_percent = 100.0 * (1.0 - plan.season.seasonal_factor / factor_without);
        working.formula += "; the result by two years: 1 - factor / factor without the suction line";
        working.inputs.push_back({"first order", fixed(100.0 * plan.run.mean.factor_share, 2) + " %"});
        working.inputs.push_back({"seasonal factor without the suction line", fixed(factor_without, 3)});
        working.result = "suction line " + fixed(plan.run.mean.suction_drop_k, 2) + " K, " +
                         fixed(*plan.run_loss_percent, 1) + " % of the seasonal factor";
    }
    const auto old = std::find_if(plan.workings.begin(), plan.workings.end(),
                                  [&working](const Working& w) { return w.key == working.key; });
    if (old != plan.workings.end())
        *old = std::move(working);
    else
        plan.workings.push_back(std::move(working));
}

namespace {

/// No run is drawn: the plan reckons with a suggested one and says so.
void suggest_route(const Job& job, const Selection& with, pipework::Input& input, Plan& plan) {
    const pipework::Suggestion suggested = pipework::suggest_run(suggest_input(job, with, plan.placements));
    plan.run_suggested = suggested.found;
    input.route = suggested.route;
    Finding f;
    f.code = "run.no-route";
    f.severity = Severity::caution;
    f.stage = Stage::layout;
    f.place = "pipe run";
    f.message =
        suggested.found
            ? "No run is drawn from the collector to the block; " + fixed(suggested.length_m, 2) + " m with " +
                  counted(suggested.bends, "bend", "bends") + " and " +
                  counted(suggested.passages, "passage", "passages") + " are reckoned along a suggested way"
            : "No run is drawn from the collector to the block, and the straight line between them is reckoned: " +
                  suggested.why;
    f.remedy = "Draw the run in Layout, or press Suggest a run and mend it there";
    f.rule = "Lengths, charge and parts follow from the run as drawn";
    f.source = "common practice, no published source";
    plan.findings.push_back(std::move(f));
    if (suggested.found) {
        plan.workings.push_back({"run.suggested",
                                 "Way of the run where none is drawn",
                                 "shortest way by length with bends and passages counted as metres",
                                 {{"how", suggested.why},
                                  {"a bend counts as", fixed(pipework::bend_costs_m, 1) + " m"},
                                  {"a roof passage", fixed(pipework::roof_passage_costs_m, 1) + " m"},
                                  {"a wall passage", fixed(pipework::wall_passage_costs_m, 1) + " m"},
                                  {"a floor", fixed(pipework::floor_passage_costs_m, 1) + " m"}},
                                 fixed(suggested.length_m, 2) + " m",
                                 "common practice, no published source",
                                 true});
    }
}

}  // namespace

void engineering(const Job& job, const Selection& with, Plan& plan) {
    append(plan.findings, fixing::check_layout(job.site, *with.choice, *with.collector));
    if (!plan.placements.empty()) {
        pipework::Input input = run_input(with);
        input.collector_connection = collector_connection(plan.placements);
        input.route = with.choice->route;
        if (input.route.empty()) suggest_route(job, with, input, plan);
        const pipework::Outcome outcome = pipework::run_of(input);
        plan.run = outcome.run;
        append(plan.findings, outcome.findings);
        append(plan.workings, outcome.workings);
        if (plan.run.mean.points > 0)
            plan.workings.push_back(pipework::losses_working(
                plan.run, "cold, mean and warm, weights 2, 5, 3, assumed until a year has been worked out"));
        plan.figures.run_m = plan.run.length_m;
        plan.figures.charge_kg = plan.run.total_charge_kg;
    }
    fix_collectors(job, with, plan);

    services::Input services;
    services.spot = *with.spot;
    services.block = *with.block;
    services.cylinder = *with.cylinder;
    services.demand = job.demand;
    services.total_charge_kg = plan.run.total_charge_kg;
    services.refrigerant = with.refrigerant;
    services.electrics = job.site.electrics;
    services.water = job.site.water;
    services.cold_by_month_c = cold_by_month_c(job, with);
    for (const PlacementPlan& placement : plan.placements)
        services.collector_top_m = std::max(services.collector_top_m, placement.placed.highest_m);
    plan.services = services::provide(services);
}

}  // namespace wg::plan::steps
