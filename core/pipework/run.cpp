#include "core/pipework/run.h"

#include <algorithm>
#include <cmath>

#include "core/pipework/checks.h"
#include "core/pipework/tube.h"
#include "core/pipework/workings.h"

namespace wg::pipework {
namespace {

/// All that follows from the route alone.
void measure(const Input& input, Run& run) {
    run.legs = legs_of(input.collector_connection, input.route, input.block_connection);
    for (const RoutePoint& p : input.route)
        if (p.kind != RoutePointKind::free) ++run.passages;
    double right_angles = 0.0;
    for (const Leg& leg : run.legs) {
        run.length_m += leg.length_m;
        if (leg.turn_deg <= bend_from_deg) continue;
        ++run.bends;
        right_angles += leg.turn_deg / 90.0;
    }
    const double bends_m = bend_bores * 1e-3 * right_angles;
    run.equivalent_m = run.length_m + bends_m * tube_bore_mm(input.block.suction_od_mm);
    run.small_equivalent_m = run.length_m + bends_m * tube_bore_mm(input.block.liquid_od_mm);
    run.lift_m = input.collector_connection.z_m - input.block_connection.z_m;
    run.expansion = input.block.expansion;
}

void fill(const Input& input, Run& run) {
    const double beyond_m = std::max(0.0, run.length_m - input.block.precharged_max_m);
    run.extra_charge_kg = beyond_m * input.block.extra_charge_g_m * 1e-3;
    run.total_charge_kg = input.block.charge_kg + run.extra_charge_kg;
    if (input.refrigerant != nullptr) {
        run.total_charge_t_co2e = run.total_charge_kg * input.refrigerant->gwp100() * 1e-3;
    }
}

void flow(const Input& input, Run& run) {
    if (input.refrigerant == nullptr) return;
    const Path path{run.small_equivalent_m, run.equivalent_m, run.lift_m};
    run.rating = lines_at(input.block, *input.refrigerant, path, input.rating);
    over_points(input, input.points.empty() ? std::vector<OperatingPoint>{input.rating} : input.points, run);
    if (!run.rating.known) return;
    run.suction_velocity_m_s = run.rating.suction.velocity_m_s;
    run.suction_loss_pa = run.rating.suction.friction_pa;
    run.suction_drop_k = run.rating.suction.drop_k;
    run.liquid_head_pa = run.rating.small.head_pa;
}

void carry_oil(const Input& input, Run& run) {
    run.oil = oil_return(run.legs, input.block.oil_trap_every_m);
    if (input.refrigerant == nullptr || !(input.coldest.evaporator_w > 0.0)) return;
    run.oil.at = input.coldest;
    run.oil.at.evaporator_w *= input.block.least_flow_share;
    const PointLines least = lines_at(input.block, *input.refrigerant, {}, run.oil.at);
    if (!least.known) return;
    run.oil.known = true;
    run.oil.velocity_m_s = least.suction.velocity_m_s;
    const double bore_m = tube_bore_mm(input.block.suction_od_mm) * 1e-3;
    run.oil.riser_m_s = riser_mass_velocity_kg_m2s(least.suction_density_kg_m3, bore_m) / least.suction_density_kg_m3;
}

void lag_and_buy(const Input& input, Run& run) {
    run.lagging = lag(run.legs, input.block, run.points, input.air, input.rating.evaporating_c);
    run.insulation_mm = run.lagging.suction.wall_mm;
    run.small_insulation_mm = run.lagging.small.wall_mm;
    run.line_ua_w_k = run.lagging.suction.ua_w_k;
    std::vector<std::size_t> trap_legs;
    for (const OilTrap& trap : run.oil.traps)
        trap_legs.push_back(trap.leg);
    run.small_to_buy = to_buy(run.legs, {}, run.small_insulation_mm > 0.0);
    run.suction_to_buy = to_buy(run.legs, trap_legs, run.insulation_mm > 0.0);
    run.coil_liquid_m = run.small_to_buy.buy_m;
    run.coil_suction_m = run.suction_to_buy.buy_m;
}

}  // namespace

void over_points(const Input& input, const std::vector<OperatingPoint>& points, Run& run) {
    run.points.clear();
    if (input.refrigerant != nullptr) {
        const Path path{run.small_equivalent_m, run.equivalent_m, run.lift_m};
        for (const OperatingPoint& point : points)
            run.points.push_back(lines_at(input.block, *input.refrigerant, path, point));
    }
    run.mean = mean_of(run.points);
}

Outcome run_of(const Input& input) {
    Outcome out;
    measure(input, out.run);
    fill(input, out.run);
    flow(input, out.run);
    carry_oil(input, out.run);
    lag_and_buy(input, out.run);
    out.findings = check_run(input, out.run);
    out.workings = workings_of(input, out.run);
    return out;
}

}  // namespace wg::pipework
