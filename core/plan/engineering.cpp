#include <algorithm>

#include "core/fixing/layout_rules.h"
#include "core/heatpump/cycle.h"
#include "core/plan/parts_of_plan.h"

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

/// Heat taken up at 0 deg C evaporating, for the refrigerant flow in the lines, W.
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

constexpr double rating_evaporating_c = 0.0;
constexpr double rating_condensing_c = 50.0;

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

pipework::Input run_input(const Selection& with) {
    pipework::Input input;
    input.block_connection = block_connection(*with.spot, *with.cylinder);
    input.block = *with.block;
    input.collector = *with.collector;
    input.refrigerant = with.refrigerant;
    input.rating_evaporating_c = rating_evaporating_c;
    input.rating_heat_w = rating_heat_w(*with.block, *with.refrigerant, rating_evaporating_c, rating_condensing_c);
    return input;
}

void engineering(const Job& job, const Selection& with, Plan& plan) {
    append(plan.findings, fixing::check_layout(job.site, *with.choice, *with.collector));
    if (!plan.placements.empty()) {
        pipework::Input input = run_input(with);
        input.collector_connection = collector_connection(plan.placements);
        input.route = with.choice->route;
        const pipework::Outcome outcome = pipework::run_of(input);
        plan.run = outcome.run;
        append(plan.findings, outcome.findings);
        append(plan.workings, outcome.workings);
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
    plan.services = services::provide(services);
}

}  // namespace wg::plan::steps
