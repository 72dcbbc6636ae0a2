// From actions on the plate to design forces on each point.
#include <algorithm>
#include <cmath>

#include "core/fixing/loads.h"
#include "core/quantity/text.h"
#include "core/site/vec.h"

namespace wg::fixing {

using site::dot;
using site::operator+;
using site::operator-;
using site::operator*;

std::vector<Factors> combinations_of(const Loads& loads, const ActionRules& r) {
    const double psi_wind = r.gamma_variable * r.psi_0_wind, psi_snow = r.gamma_variable * r.psi_0_snow;
    const double heavy = r.gamma_permanent_unfavourable, light = r.gamma_permanent_favourable, q = r.gamma_variable;
    std::vector<Factors> out;
    out.reserve(4 * loads.winds.size() + 1);
    for (const WindCase& w : loads.winds) {
        out.push_back({light, q, 0.0, &w, false});
        out.push_back({heavy, q, 0.0, &w, false});
        if (w.suction) continue;
        out.push_back({heavy, q, psi_snow, &w, false});
        out.push_back({heavy, psi_wind, q, &w, true});
    }
    out.push_back({heavy, 0.0, q, nullptr, true});
    return out;
}

std::string name_of(const Factors& f) {
    std::string out = fixed(f.g, 2) + " G";
    const std::string wind = f.wind != nullptr ? " + " + fixed(f.w, 2) + " wind " + f.wind->name : "";
    const std::string snow = f.s > 0.0 ? " + " + fixed(f.s, 2) + " snow" : "";
    return out + (f.snow_first ? snow + wind : wind + snow);
}

Spread spread_of(const Input& input, const Loads& loads, const Layout& layout) {
    Spread out;
    std::vector<Point2> places;
    places.reserve(layout.points.size());
    for (const FixingPoint& p : layout.points)
        places.push_back(p.position);
    // Axes of the plate in the surface's plane: along the level edge, and across.
    Point2 axis = loads.on_frame && input.placed.outline.size() == 4 ? input.placed.outline[1] - input.placed.outline[0]
                                                                     : Point2{1.0, 0.0};
    const double axis_length = site::norm(axis);
    axis = axis_length > 1e-9 ? axis * (1.0 / axis_length) : Point2{1.0, 0.0};
    out.axes[0] = axis;
    out.axes[1] = {-axis.y_m, axis.x_m};
    const double least_spread = loads.on_frame ? 0.5 * frame_foot_depth_m : 0.02;
    for (int i = 0; i < 2; ++i)
        out.carried[i] = spread_m(places, out.axes[i]) >= least_spread;
    out.couple_x = couple_forces(places, {1.0, 0.0});
    out.couple_y = couple_forces(places, {0.0, 1.0});
    out.shear = layout.shares.of_point;
    double sum = 0.0;
    for (double& s : out.shear) {
        s = std::max(0.0, s);  // a point that would lift off takes no friction-free share either
        sum += s;
    }
    for (double& s : out.shear)
        s /= sum;
    return out;
}

bool point_forces(const Loads& loads, const Layout& layout, const Spread& spread, const Factors& f, Action& action,
                  std::vector<PointForce>& of_point) {
    const Action& g = loads.permanent;
    const Action& s = loads.snow;
    Action still;
    still.normal_n = f.g * g.normal_n + f.s * s.normal_n;
    action = still;
    action.along_n = g.along_n * f.g + s.along_n * f.s;
    action.couple_nm = g.couple_nm * f.g + s.couple_nm * f.s;
    if (f.wind != nullptr) {
        action.normal_n += f.w * f.wind->action.normal_n;
        action.along_n = action.along_n + f.wind->action.along_n * f.w;
        action.couple_nm = action.couple_nm + f.wind->action.couple_nm * f.w;
    }
    const std::size_t n = layout.points.size();
    Point2 held{0.0, 0.0};
    double extra_n = 0.0;
    bool missing = false;
    for (int i = 0; i < 2; ++i) {
        const double part = dot(action.couple_nm, spread.axes[i]);
        if (spread.carried[i]) {
            held = held + spread.axes[i] * part;
        } else if (std::abs(part) > 1e-9) {
            extra_n += std::abs(part) / (static_cast<double>(n) * frame_foot_depth_m);
            missing = true;
        }
    }
    const bool by_parts = f.wind != nullptr && !f.wind->of_point.empty();
    const double even_n = by_parts ? still.normal_n : action.normal_n;
    const double along_n = site::norm(action.along_n);
    of_point.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        double normal_n =
            even_n * layout.shares.of_point[i] + held.x_m * spread.couple_x[i] + held.y_m * spread.couple_y[i];
        if (by_parts) normal_n += f.w * f.wind->of_point[i];
        of_point[i] = {normal_n, along_n * spread.shear[i], extra_n};
    }
    return missing;
}

Combined combine(const Input& input, const Loads& loads, const Layout& layout) {
    Combined out;
    if (layout.points.empty()) return out;
    const Spread spread = spread_of(input, loads, layout);
    for (const Factors& f : combinations_of(loads, input.rules)) {
        Combination c;
        c.factors = f;
        c.name = name_of(f);
        if (point_forces(loads, layout, spread, f, c.action, c.of_point)) out.lever_missing = true;
        out.combinations.push_back(std::move(c));
    }
    return out;
}

double rail_load_n_m(const Loads& loads, const Layout& layout, const Factors& f, std::size_t rail) {
    const Shares& shares = layout.shares;
    const double run_m = shares.along_x ? layout.plate.length_m : layout.plate.width_m;
    const double depth_m = shares.along_x ? layout.plate.width_m : layout.plate.length_m;
    const double share = shares.of_rail[rail];
    double load = share / run_m * (f.g * loads.permanent.normal_n + f.s * loads.snow.normal_n);
    if (f.wind == nullptr) return load;
    if (f.wind->of_part.empty()) return load + share / run_m * f.w * f.wind->action.normal_n;
    // By parts: the greatest pressure on any part of the rail, taken all along it.
    double greatest = 0.0;
    for (std::size_t i = 0; i < shares.parts.size(); ++i) {
        const double area = shares.parts[i].area_m2();
        if (shares.parts[i].rail != rail || !(area > 0.0)) continue;
        const double pressure = f.wind->of_part[i] / area;
        if (std::abs(pressure) > std::abs(greatest)) greatest = pressure;
    }
    return load + share * depth_m * f.w * greatest;
}

double bending_use(const Input& input, const Loads& loads, const Layout& layout,
                   const std::vector<Factors>& combinations) {
    if (!(input.collector.profile_moment_nm > 0.0)) return 0.0;
    double use = 0.0;
    for (const Factors& f : combinations) {
        for (std::size_t k = 0; k < layout.shares.of_rail.size(); ++k)
            use = std::max(use, std::abs(rail_load_n_m(loads, layout, f, k)) * layout.shares.rail_moment_m2[k]);
    }
    return use / input.collector.profile_moment_nm;
}

Sag sag_of(const Input& input, const Loads& loads, const Layout& layout) {
    Sag out;
    const double stiffness = input.collector.profile_stiffness_nm2;
    if (!(stiffness > 0.0) || !(input.rules.deflection_span_share > 0.0)) return out;
    ActionRules characteristic = input.rules;
    characteristic.gamma_permanent_favourable = characteristic.gamma_permanent_unfavourable = 1.0;
    characteristic.gamma_variable = 1.0;
    const std::vector<Factors> combinations = combinations_of(loads, characteristic);
    for (std::size_t k = 0; k < layout.shares.of_rail.size(); ++k) {
        double load = 0.0;
        for (const Factors& f : combinations)
            load = std::max(load, std::abs(rail_load_n_m(loads, layout, f, k)));
        const RailLine line = rail_line(layout.plate, layout.shares, k);
        const RailBend bend = bend_of(line.supports_m, line.from_m, line.to_m);
        const double use = load / stiffness * bend.sag_of_span * input.rules.deflection_span_share;
        if (use <= out.use) continue;
        out = {use, load / stiffness * bend.sag_m, bend.span_m, bend.cantilever, load, k};
    }
    return out;
}

}  // namespace wg::fixing
