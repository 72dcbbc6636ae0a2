#include "core/fixing/loads.h"

#include <algorithm>
#include <cmath>

#include "core/fixing/screws.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

using site::cross;
using site::dot;
using site::operator+;
using site::operator-;
using site::operator*;

/// A force in space acting at the plate's middle. What its part along the surface turns over is left to the points.
Action action_of(Point3 force_n, const site::Frame& frame, double middle_off_m) {
    Action a;
    a.normal_n = -dot(force_n, frame.normal);
    a.along_n = {dot(force_n, frame.right), dot(force_n, frame.up)};
    a.couple_nm = a.along_n * middle_off_m;
    return a;
}

}  // namespace

Loads loads_of(const Input& input) {
    Loads l;
    const ActionRules& rules = input.rules;
    const site::Frame frame = site::frame_of(input.surface, input.site.sketch_up_azimuth_deg);
    const site::PlacedCollector& placed = input.placed;
    l.on_frame = input.placement.frame_tilt_deg.has_value();
    const bool free =
        l.on_frame || input.surface.kind == SurfaceKind::ground || input.surface.kind == SurfaceKind::terrace;
    l.area_m2 = input.collector.length_m * input.collector.width_m;
    for (const Point3 c : placed.corners)
        l.middle_off_m += 0.25 * dot(c - frame.origin, frame.normal);

    const double building_m = building_height_m(input.surface, input.site.sketch_up_azimuth_deg);
    const double height_m =
        free ? std::max(placed.highest_m, input.surface.kind == SurfaceKind::ground ? 0.0 : building_m) : building_m;
    l.wind = peak_pressure(input.site.basic_wind_m_s.value_or(rules.basic_wind_m_s), input.site.terrain, height_m,
                           rules.air_density_kg_m3);

    const Point3 down{0.0, 0.0, -1.0};
    l.weight_n = (input.collector.mass_kg + input.refrigerant_kg) * gravity_m_s2;
    l.permanent = action_of(down * l.weight_n, frame, l.middle_off_m);
    l.snow_ground_n_m2 = 1000.0 * input.site.ground_snow_kn_m2.value_or(rules.ground_snow_kn_m2);
    l.snow_n_m2 = snow_shape_mu1(placed.tilt_deg) * l.snow_ground_n_m2;
    const double plan_area_m2 = l.area_m2 * std::max(0.0, std::cos(radians(placed.tilt_deg)));
    l.snow = action_of(down * (l.snow_n_m2 * plan_area_m2), frame, l.middle_off_m);

    if (!free) {
        l.zone = zone_pressure(input.surface, building_m, placed.outline, l.area_m2);
        const double q = l.wind.qp_pa * rules.standing_off_net_factor * l.area_m2;
        l.winds.push_back({"suction", true, {q * l.zone.uplift, {}, {}}});
        l.winds.push_back({"pressure", false, {q * l.zone.pressure, {}, {}}});
        return l;
    }
    l.zone = {"free", "free", -free_plate_coefficient, free_plate_coefficient, "EN 1991-1-4 7.4.3, signboards"};
    const Point3 along = placed.corners[1] - placed.corners[0], across = placed.corners[3] - placed.corners[0];
    const Point3 square = cross(along, across);
    const Point3 normal = square * (1.0 / site::norm(square));
    // Width across the wind: of the level direction in the plate; a plate lying level takes its long side.
    Point3 level{-normal.y_m, normal.x_m, 0.0};
    const double level_length = site::norm(level);
    level = level_length > 1e-9 ? level * (1.0 / level_length) : along * (1.0 / site::norm(along));
    const double width_m = std::abs(dot(along, level)) + std::abs(dot(across, level));
    const Point2 level_in_plane{dot(level, frame.right), dot(level, frame.up)};
    const double force_n = l.wind.qp_pa * free_plate_coefficient * l.area_m2;
    for (const double face : {1.0, -1.0}) {  // wind from behind, then from the front
        for (const double side : {1.0, -1.0}) {
            WindCase w;
            w.suction = face > 0.0;
            w.name = std::string(w.suction ? "from behind" : "on the face") +
                     (side > 0.0 ? ", off to the right" : ", off to the left");
            w.action = action_of(normal * (face * force_n), frame, l.middle_off_m);
            const double offset_m = side * free_plate_offset * width_m;
            w.action.couple_nm = w.action.couple_nm + level_in_plane * (w.action.normal_n * offset_m);
            l.winds.push_back(w);
        }
    }
    return l;
}

Combined combine(const Input& input, const Loads& loads, const Layout& layout) {
    Combined out;
    const std::size_t n = layout.points.size();
    if (n == 0) return out;
    std::vector<Point2> places;
    for (const FixingPoint& p : layout.points)
        places.push_back(p.position);
    // Axes of the plate in the surface's plane: along the level edge, and across.
    Point2 axis = loads.on_frame && input.placed.outline.size() == 4 ? input.placed.outline[1] - input.placed.outline[0]
                                                                     : Point2{1.0, 0.0};
    const double axis_length = site::norm(axis);
    axis = axis_length > 1e-9 ? axis * (1.0 / axis_length) : Point2{1.0, 0.0};
    const Point2 axes[2] = {axis, {-axis.y_m, axis.x_m}};
    const double least_spread = loads.on_frame ? 0.5 * frame_foot_depth_m : 0.02;
    double shear_sum = 0.0;
    std::vector<double> shear_share = layout.shares.of_point;
    for (double& s : shear_share) {
        s = std::max(0.0, s);  // a point that would lift off takes no friction-free share either
        shear_sum += s;
    }

    const auto add = [&](std::string name, const std::vector<std::pair<double, const Action*>>& parts) {
        Action sum;
        for (const auto& [factor, action] : parts) {
            sum.normal_n += factor * action->normal_n;
            sum.along_n = sum.along_n + action->along_n * factor;
            sum.couple_nm = sum.couple_nm + action->couple_nm * factor;
        }
        Point2 held{0.0, 0.0};
        double extra_n = 0.0;
        for (const Point2 a : axes) {
            const double part = dot(sum.couple_nm, a);
            if (spread_m(places, a) >= least_spread) {
                held = held + a * part;
            } else if (std::abs(part) > 1e-9) {
                extra_n += std::abs(part) / (static_cast<double>(n) * frame_foot_depth_m);
                out.lever_missing = true;
            }
        }
        const std::vector<double> couple = couple_forces(places, held);
        Combination c;
        c.name = std::move(name);
        c.action = sum;
        const double along_n = site::norm(sum.along_n);
        for (std::size_t i = 0; i < n; ++i) {
            c.of_point.push_back(
                {sum.normal_n * layout.shares.of_point[i] + couple[i], along_n * shear_share[i] / shear_sum, extra_n});
        }
        out.combinations.push_back(std::move(c));
    };

    const ActionRules& r = input.rules;
    const double psi_wind = r.gamma_variable * r.psi_0_wind, psi_snow = r.gamma_variable * r.psi_0_snow;
    const auto times = [](double factor) { return fixed(factor, 2) + ' '; };
    const Action *g = &loads.permanent, *s = &loads.snow;
    for (const WindCase& w : loads.winds) {
        const std::string wind = "wind " + w.name;
        add(times(r.gamma_permanent_favourable) + "G + " + times(r.gamma_variable) + wind,
            {{r.gamma_permanent_favourable, g}, {r.gamma_variable, &w.action}});
        add(times(r.gamma_permanent_unfavourable) + "G + " + times(r.gamma_variable) + wind,
            {{r.gamma_permanent_unfavourable, g}, {r.gamma_variable, &w.action}});
        if (w.suction) continue;
        add(times(r.gamma_permanent_unfavourable) + "G + " + times(r.gamma_variable) + wind + " + " + times(psi_snow) +
                "snow",
            {{r.gamma_permanent_unfavourable, g}, {r.gamma_variable, &w.action}, {psi_snow, s}});
        add(times(r.gamma_permanent_unfavourable) + "G + " + times(r.gamma_variable) + "snow + " + times(psi_wind) +
                wind,
            {{r.gamma_permanent_unfavourable, g}, {r.gamma_variable, s}, {psi_wind, &w.action}});
    }
    add(times(r.gamma_permanent_unfavourable) + "G + " + times(r.gamma_variable) + "snow",
        {{r.gamma_permanent_unfavourable, g}, {r.gamma_variable, s}});
    return out;
}

Resistance resistance_of(const FixingMethod& method, const ActionRules& rules) {
    Resistance r;
    r.by_screws = method.screw_diameter_mm > 0.0;
    r.by_maker = method.pull_out_n > 0.0 && method.shear_n > 0.0;
    if (r.by_screws) {
        r.one_screw_pull_k_n =
            screw_withdrawal_n(method.screw_diameter_mm, method.screw_grip_mm, rules.timber_density_kg_m3);
        r.one_screw_shear_k_n =
            screw_shear_n(method.screw_diameter_mm, method.screw_grip_mm, rules.timber_density_kg_m3);
        const double design = rules.k_mod / rules.gamma_timber * screws_together(method.screws_per_point);
        r.pull_n = r.screws_pull_n = design * r.one_screw_pull_k_n;
        r.shear_n = r.screws_shear_n = design * r.one_screw_shear_k_n;
    }
    if (r.by_maker) {
        r.maker_pull_n = method.pull_out_n;
        r.maker_shear_n = method.shear_n;
        r.pull_n = r.by_screws ? std::min(r.pull_n, r.maker_pull_n) : r.maker_pull_n;
        r.shear_n = r.by_screws ? std::min(r.shear_n, r.maker_shear_n) : r.maker_shear_n;
    }
    return r;
}

double utilisation(const Resistance& r, double pull_n, double shear_n) {
    if (!(r.pull_n > 0.0) || !(r.shear_n > 0.0)) return 0.0;
    double used = 0.0;
    if (r.by_screws) used = std::hypot(pull_n / r.screws_pull_n, shear_n / r.screws_shear_n);
    if (r.by_maker) used = std::max(used, pull_n / r.maker_pull_n + shear_n / r.maker_shear_n);
    return used;
}

Ballast ballast_of(const Loads& loads, const ActionRules& rules) {
    Ballast b;
    for (const WindCase& w : loads.winds) {
        // Upward and level parts of the design wind; the frame's own mass is not known and is left out.
        const double up_n = -rules.gamma_variable * w.action.normal_n;
        const double level_n = rules.gamma_variable * site::norm(w.action.along_n);
        const double own_n = rules.gamma_permanent_favourable * loads.weight_n;
        const double g = rules.gamma_permanent_favourable * gravity_m_s2;
        b.uplift_kg = std::max(b.uplift_kg, (up_n - own_n) / g);
        b.sliding_kg = std::max(b.sliding_kg, (level_n / ballast_friction + up_n - own_n) / g);
    }
    return b;
}

}  // namespace wg::fixing
