#include "core/pipework/run.h"

#include <algorithm>
#include <cmath>

#include "core/pipework/checks.h"
#include "core/pipework/tube.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::pipework {
namespace {

constexpr double shortest_leg_m = 1e-3;

Point3 minus(Point3 a, Point3 b) noexcept {
    return {a.x_m - b.x_m, a.y_m - b.y_m, a.z_m - b.z_m};
}
double dot(Point3 a, Point3 b) noexcept {
    return a.x_m * b.x_m + a.y_m * b.y_m + a.z_m * b.z_m;
}

double turn_deg(const Leg& a, const Leg& b) noexcept {
    const double cosine = dot(minus(a.to, a.from), minus(b.to, b.from)) / (a.length_m * b.length_m);
    return degrees(std::acos(std::clamp(cosine, -1.0, 1.0)));
}

/// Legs, passages, bends and lengths: all that follows from the route alone.
void measure(const Input& input, Run& run) {
    Point3 at = input.collector_connection;
    const auto go = [&](Point3 to, RoutePointKind kind) {
        const Point3 d = minus(to, at);
        const double length = std::sqrt(dot(d, d));
        if (length < shortest_leg_m) {
            if (!run.legs.empty() && kind != RoutePointKind::free) run.legs.back().ends_at = kind;
            return;
        }
        run.legs.push_back({at, to, length, kind});
        at = to;
    };
    for (const RoutePoint& p : input.route) {
        if (p.kind != RoutePointKind::free) ++run.passages;
        go(p.position, p.kind);
    }
    go(input.block_connection, RoutePointKind::free);

    const double bend_m = bend_bores * tube_bore_mm(input.block.suction_od_mm) * 1e-3;
    for (std::size_t i = 0; i < run.legs.size(); ++i) {
        run.length_m += run.legs[i].length_m;
        if (i == 0) continue;
        const double turn = turn_deg(run.legs[i - 1], run.legs[i]);
        if (turn <= bend_from_deg) continue;
        ++run.bends;
        run.equivalent_m += bend_m * turn / 90.0;
    }
    run.equivalent_m += run.length_m;
    run.lift_m = input.collector_connection.z_m - input.block_connection.z_m;
    run.coil_liquid_m = run.coil_suction_m = run.length_m * (1.0 + cutting_allowance);
}

void fill(const Input& input, Run& run) {
    const double beyond_m = std::max(0.0, run.length_m - input.block.precharged_max_m);
    run.extra_charge_kg = beyond_m * input.block.extra_charge_g_m * 1e-3;
    run.total_charge_kg = input.block.charge_kg + run.extra_charge_kg;
    if (input.refrigerant != nullptr) {
        run.total_charge_t_co2e = run.total_charge_kg * input.refrigerant->gwp100() * 1e-3;
    }
}

void insulate(const Input& input, Run& run) {
    const Lagging lagging;
    run.insulation_mm = lagging_against_dew_mm(input.block.suction_od_mm, input.rating_evaporating_c, lagging_air_c,
                                               lagging_humidity, lagging);
    run.line_ua_w_k = run.length_m * heat_per_metre_w_mk(input.block.suction_od_mm, run.insulation_mm, lagging);
}

/// Flow of the suction line and static head of the liquid line.
Flow flow_of(const Input& input) {
    Flow f;
    f.bore_m = tube_bore_mm(input.block.suction_od_mm) * 1e-3;
    if (input.refrigerant == nullptr || f.bore_m <= 0.0) return f;
    const refrigerant::Properties& r = *input.refrigerant;
    const double te = input.rating_evaporating_c;
    constexpr double step_k = 0.5;
    if (!r.in_saturation_range(te - step_k) || !r.in_saturation_range(te + step_k) ||
        !r.in_saturation_range(assumed_liquid_c) || !r.in_vapour_range(te, input.block.superheat_k)) {
        return f;
    }
    const refrigerant::Vapour suction = r.vapour(te, input.block.superheat_k);
    const double taken_up_j_kg = suction.enthalpy_j_kg - r.liquid_enthalpy_j_kg(assumed_liquid_c);
    f.known = taken_up_j_kg > 0.0 && input.rating_heat_w > 0.0;
    if (!f.known) return f;
    f.mass_kg_s = input.rating_heat_w / taken_up_j_kg;
    f.vapour_density_kg_m3 = suction.density_kg_m3;
    f.mass_velocity_kg_m2s = f.mass_kg_s / (0.25 * pi * f.bore_m * f.bore_m);
    f.velocity_m_s = f.mass_velocity_kg_m2s / f.vapour_density_kg_m3;
    f.reynolds = f.mass_velocity_kg_m2s * f.bore_m / vapour_viscosity_pa_s(input.block.refrigerant);
    f.friction = friction_churchill1977(f.reynolds, copper_roughness_m / f.bore_m);
    f.loss_pa_m = f.friction / f.bore_m * 0.5 * f.vapour_density_kg_m3 * f.velocity_m_s * f.velocity_m_s;
    f.slope_pa_k = (r.saturation_pressure_pa(te + step_k) - r.saturation_pressure_pa(te - step_k)) / (2.0 * step_k);
    f.liquid_density_kg_m3 = r.saturation(assumed_liquid_c).liquid_density_kg_m3;
    f.liquid_slope_pa_k =
        (r.saturation_pressure_pa(assumed_liquid_c + step_k) - r.saturation_pressure_pa(assumed_liquid_c - step_k)) /
        (2.0 * step_k);
    f.riser_kg_m2s = riser_mass_velocity_kg_m2s(f.vapour_density_kg_m3, f.bore_m);
    return f;
}

std::string metres(double v) {
    return fixed(v, 2) + " m";
}

std::vector<Working> workings_of(const Input& input, const Run& run, const Flow& f) {
    std::vector<Working> out;
    out.push_back({"run.length",
                   "Length of the run, one way",
                   "sum of legs",
                   {{"legs", std::to_string(run.legs.size())},
                    {"bends over 10 deg", std::to_string(run.bends)},
                    {"passages", std::to_string(run.passages)}},
                   metres(run.length_m),
                   "survey and layout",
                   false});
    out.push_back({"run.charge",
                   "Refrigerant in the system",
                   "charge + max(0, length - pre-charged) x extra per metre",
                   {{"factory charge", fixed(input.block.charge_kg, 3) + " kg"},
                    {"pre-charged up to", metres(input.block.precharged_max_m)},
                    {"length", metres(run.length_m)},
                    {"extra", fixed(input.block.extra_charge_g_m, 1) + " g/m"}},
                   fixed(run.total_charge_kg, 3) + " kg",
                   "equipment data of " + input.block.maker + ' ' + input.block.name,
                   false});
    out.push_back({"run.insulation",
                   "Insulation of the suction line",
                   "face temperature at or above the dew point",
                   {{"line", fixed(input.rating_evaporating_c, 1) + " deg C"},
                    {"air", fixed(lagging_air_c, 0) + " deg C, " + fixed(100.0 * lagging_humidity, 0) + " %"},
                    {"dew point", fixed(dew_point_c(lagging_air_c, lagging_humidity), 1) + " deg C"},
                    {"conductivity", fixed(Lagging{}.conductivity_w_mk, 3) + " W/(m K)"}},
                   fixed(run.insulation_mm, 0) + " mm",
                   "ISO 12241:2008, form; room air assumed",
                   true});
    if (!f.known) return out;
    out.push_back({"run.suction-loss",
                   "Pressure loss of the suction line",
                   "f (L_e/D) rho w2/2; K = loss / (dp/dT)",
                   {{"equivalent length", metres(run.equivalent_m)},
                    {"bore", fixed(f.bore_m * 1e3, 2) + " mm"},
                    {"flow", fixed(f.mass_kg_s * 1e3, 2) + " g/s"},
                    {"speed", fixed(f.velocity_m_s, 2) + " m/s"},
                    {"Reynolds", fixed(f.reynolds, 0)},
                    {"friction f", fixed(f.friction, 4)},
                    {"dp/dT", fixed(f.slope_pa_k * 1e-3, 2) + " kPa/K"}},
                   fixed(run.suction_loss_pa * 1e-3, 2) + " kPa = " + fixed(run.suction_drop_k, 2) + " K",
                   "Churchill 1977; liquid at " + fixed(assumed_liquid_c, 0) + " deg C assumed",
                   true});
    out.push_back({"run.liquid-head",
                   "Static head of the liquid line",
                   "rho g h",
                   {{"lift", metres(run.lift_m)}, {"liquid", fixed(f.liquid_density_kg_m3, 0) + " kg/m3"}},
                   fixed(run.liquid_head_pa * 1e-3, 1) + " kPa",
                   "hydrostatics; liquid at " + fixed(assumed_liquid_c, 0) + " deg C assumed",
                   true});
    return out;
}

}  // namespace

Outcome run_of(const Input& input) {
    Outcome out;
    Run& run = out.run;
    measure(input, run);
    fill(input, run);
    insulate(input, run);
    const Flow flow = flow_of(input);
    if (flow.known) {
        run.suction_velocity_m_s = flow.velocity_m_s;
        run.suction_loss_pa = flow.loss_pa_m * run.equivalent_m;
        run.suction_drop_k = run.suction_loss_pa / flow.slope_pa_k;
        run.liquid_head_pa = flow.liquid_density_kg_m3 * gravity_m_s2 * run.lift_m;
    }
    out.findings = check_run(input, run, flow);
    out.workings = workings_of(input, run, flow);
    return out;
}

}  // namespace wg::pipework
