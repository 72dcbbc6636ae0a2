#include "core/pipework/lines.h"

#include <algorithm>
#include <cmath>

#include "core/pipework/tube.h"
#include "core/pipework/viscosity.h"
#include "core/quantity/constants.h"

namespace wg::pipework {
namespace {

constexpr double slope_step_k = 0.5;
constexpr int march_steps = 16;  // 64 differ by less than 2 %

double slope_pa_k(const refrigerant::Properties& r, double t) noexcept {
    const double low = std::max(r.min_c(), t - slope_step_k);
    const double high = std::min(r.max_c(), t + slope_step_k);
    return (r.saturation_pressure_pa(high) - r.saturation_pressure_pa(low)) / (high - low);
}

double mass_velocity(double flow_kg_s, double bore_m) noexcept {
    return flow_kg_s / (0.25 * pi * bore_m * bore_m);
}

/// From the collector, where the pressure is that of the evaporating temperature, back to the expansion device: the
/// enthalpy stays, so pressure and temperature rise and vapour turns to liquid on the way back.
void march_two_phase(const BlockModel& block, const refrigerant::Properties& r, const Path& path, double bore_m,
                     double enthalpy_j_kg, PointLines& out) noexcept {
    LineFlow& line = out.small;
    double t = out.at.evaporating_c;
    const double part_m = path.small_equivalent_m / march_steps;
    const double part_lift_m = path.lift_m / march_steps;
    for (int i = 0; i < march_steps; ++i) {
        const refrigerant::Saturation s = r.saturation(t);
        const Phases phases{s.liquid_density_kg_m3, s.vapour_density_kg_m3, liquid_viscosity_pa_s(block.refrigerant, t),
                            vapour_viscosity_pa_s(block.refrigerant, t, 0.0)};
        const double x = std::clamp(
            (enthalpy_j_kg - s.liquid_enthalpy_j_kg) / (s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg), 0.0, 1.0);
        if (i == 0) {
            line.reynolds = line.mass_velocity_kg_m2s * bore_m / phases.liquid_viscosity_pa_s;
            line.velocity_m_s = line.mass_velocity_kg_m2s / homogeneous_density_kg_m3(x, phases);
        }
        const double friction_pa =
            two_phase_pa_m(line.mass_velocity_kg_m2s, x, phases, bore_m, copper_roughness_m) * part_m;
        const double head_pa = homogeneous_density_kg_m3(x, phases) * gravity_m_s2 * part_lift_m;
        line.friction_pa += friction_pa;
        line.head_pa += head_pa;
        if (x > 0.0) t = std::clamp(t + (friction_pa + head_pa) / slope_pa_k(r, t), r.min_c(), out.liquid_c);
    }
    out.small_inlet_c = t;
    const refrigerant::Saturation s = r.saturation(t);
    out.quality = std::clamp(
        (enthalpy_j_kg - s.liquid_enthalpy_j_kg) / (s.vapour_enthalpy_j_kg - s.liquid_enthalpy_j_kg), 0.0, 1.0);
    line.drop_k = std::max(0.0, t - out.at.evaporating_c);
    const double between_pa =
        r.saturation_pressure_pa(out.at.condensing_c) - r.saturation_pressure_pa(out.at.evaporating_c);
    out.device_share = 1.0 - (line.friction_pa + line.head_pa) / between_pa;
}

void liquid_line(const BlockModel& block, const refrigerant::Properties& r, const Path& path, double bore_m,
                 PointLines& out) noexcept {
    LineFlow& line = out.small;
    const double density = r.saturation(out.liquid_c).liquid_density_kg_m3;
    const double viscosity = liquid_viscosity_pa_s(block.refrigerant, out.liquid_c);
    line.reynolds = line.mass_velocity_kg_m2s * bore_m / viscosity;
    line.velocity_m_s = line.mass_velocity_kg_m2s / density;
    line.friction_pa = single_phase_pa_m(line.mass_velocity_kg_m2s, density, viscosity, bore_m, copper_roughness_m) *
                       path.small_equivalent_m;
    line.head_pa = density * gravity_m_s2 * path.lift_m;
    line.drop_k = std::max(0.0, line.friction_pa + std::max(0.0, line.head_pa)) / slope_pa_k(r, out.liquid_c);
    out.over_boiling_pa = r.saturation_pressure_pa(out.at.condensing_c) - r.saturation_pressure_pa(out.liquid_c);
    out.left_over_boiling_pa = out.over_boiling_pa - line.friction_pa - line.head_pa;
}

void suction_line(const BlockModel& block, const refrigerant::Properties& r, const Path& path, double bore_m,
                  PointLines& out) noexcept {
    LineFlow& line = out.suction;
    const double viscosity = vapour_viscosity_pa_s(block.refrigerant, out.at.evaporating_c, block.superheat_k);
    line.reynolds = line.mass_velocity_kg_m2s * bore_m / viscosity;
    line.velocity_m_s = line.mass_velocity_kg_m2s / out.suction_density_kg_m3;
    line.friction_pa =
        single_phase_pa_m(line.mass_velocity_kg_m2s, out.suction_density_kg_m3, viscosity, bore_m, copper_roughness_m) *
        path.suction_equivalent_m;
    line.head_pa = -out.suction_density_kg_m3 * gravity_m_s2 * path.lift_m;
    line.drop_k = (line.friction_pa + std::max(0.0, line.head_pa)) / slope_pa_k(r, out.at.evaporating_c);
    out.factor_share = felt_share * line.drop_k / (out.at.condensing_c - out.at.evaporating_c);
}

}  // namespace

PointLines lines_at(const BlockModel& block, const refrigerant::Properties& r, const Path& path,
                    const OperatingPoint& at) noexcept {
    PointLines out;
    out.at = at;
    const double small_m = tube_bore_mm(block.liquid_od_mm) * 1e-3;
    const double suction_m = tube_bore_mm(block.suction_od_mm) * 1e-3;
    out.liquid_c = at.condensing_c - block.subcooling_k;
    if (!(small_m > 0.0) || !(suction_m > 0.0) || !(at.evaporator_w > 0.0) ||
        !r.in_saturation_range(at.evaporating_c) || !r.in_saturation_range(at.condensing_c) ||
        !r.in_saturation_range(out.liquid_c) || !r.in_vapour_range(at.evaporating_c, block.superheat_k) ||
        !(out.liquid_c > at.evaporating_c)) {
        return out;
    }
    const refrigerant::Vapour gas = r.vapour(at.evaporating_c, block.superheat_k);
    const double liquid_j_kg = r.liquid_enthalpy_j_kg(out.liquid_c);
    if (!(gas.enthalpy_j_kg > liquid_j_kg)) return out;
    out.known = true;
    out.flow_kg_s = at.evaporator_w / (gas.enthalpy_j_kg - liquid_j_kg);
    out.suction_density_kg_m3 = gas.density_kg_m3;
    out.small.mass_velocity_kg_m2s = mass_velocity(out.flow_kg_s, small_m);
    out.suction.mass_velocity_kg_m2s = mass_velocity(out.flow_kg_s, suction_m);
    if (block.expansion == ExpansionPlace::block)
        march_two_phase(block, r, path, small_m, liquid_j_kg, out);
    else
        liquid_line(block, r, path, small_m, out);
    suction_line(block, r, path, suction_m, out);
    return out;
}

LinesMean mean_of(const std::vector<PointLines>& points) noexcept {
    LinesMean out;
    double weight = 0.0;
    for (const PointLines& p : points) {
        if (!p.known) continue;
        const double w = p.at.weight;
        out.small_friction_pa += w * p.small.friction_pa;
        out.small_head_pa += w * p.small.head_pa;
        out.small_drop_k += w * p.small.drop_k;
        out.suction_friction_pa += w * p.suction.friction_pa;
        out.suction_head_pa += w * p.suction.head_pa;
        out.suction_drop_k += w * p.suction.drop_k;
        out.factor_share += w * p.factor_share;
        out.worst_suction_drop_k = std::max(out.worst_suction_drop_k, p.suction.drop_k);
        out.least_device_share = std::min(out.least_device_share, p.device_share);
        out.least_left_over_boiling_pa =
            out.points == 0 ? p.left_over_boiling_pa : std::min(out.least_left_over_boiling_pa, p.left_over_boiling_pa);
        weight += w;
        ++out.points;
    }
    if (!(weight > 0.0)) return {};
    for (double* sum : {&out.small_friction_pa, &out.small_head_pa, &out.small_drop_k, &out.suction_friction_pa,
                        &out.suction_head_pa, &out.suction_drop_k, &out.factor_share})
        *sum /= weight;
    return out;
}

}  // namespace wg::pipework
