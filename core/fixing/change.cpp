// What to change when a fixing does not hold, each way worked out in full.
#include <algorithm>
#include <cmath>

#include "core/fixing/checks.h"
#include "core/fixing/layout_place.h"
#include "core/fixing/layout_rules.h"
#include "core/fixing/loads.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::fixing {
namespace {

constexpr double step_m = 0.1, reach_m = 3.0;
constexpr int most_points_a_rail = 10;

std::string other_methods(const Input& input) {
    std::string out;
    for (const FixingMethod& method : input.alternatives) {
        if (method.id == input.method.id || std::find(method.coverings.begin(), method.coverings.end(),
                                                      input.surface.covering) == method.coverings.end())
            continue;
        if (method.needs_rafters && !input.surface.rafters.present) continue;  // nothing to screw into is known
        Input other = input;
        other.method = method;
        other.alternatives.clear();
        const Hold hold = hold_of(other);
        if (hold.stopped) continue;
        out += (out.empty() ? "\"" : ", \"") + method.label + "\" (used to " + in_percent(hold.worst_utilisation) + ")";
    }
    return out;
}

/// Straight moves by whole steps: the shortest that holds, or else the one that is used least.
struct FoundMove {
    std::string text;  ///< empty: no move helps
    double use = 0.0;
};
FoundMove a_move(const Input& input, double now) {
    Input moved = input;
    moved.alternatives.clear();
    Neighbourhood round = neighbourhood_of(input.site, {}, input.collector, input.placement);
    round.surface = &input.surface;
    for (const auto& other : input.others)
        round.others.push_back({nullptr, other});
    Move best;
    double best_use = now;
    std::string zone;
    const auto name_zone = [&](const Input& there) {
        return there.placement.frame_tilt_deg || there.surface.kind == SurfaceKind::terrace ||
                       there.surface.kind == SurfaceKind::ground
                   ? std::string("free")
                   : zone_pressure(there.surface, body_of(there.site, there.surface), there.placed.outline,
                                   there.collector.length_m * there.collector.width_m)
                         .zone_uplift;
    };
    const int steps = static_cast<int>(std::lround(reach_m / step_m));
    for (int step = 1; step <= steps && best_use > 1.0; ++step) {
        for (const Move m : {Move{step * step_m, 0.0}, Move{-step * step_m, 0.0}, Move{0.0, step * step_m},
                             Move{0.0, -step * step_m}}) {
            moved.placement = input.placement;
            moved.placement.x_m += m.right_m;
            moved.placement.y_m += m.up_m;
            moved.placed =
                site::place(moved.surface, moved.site.sketch_up_azimuth_deg, moved.placement, moved.collector);
            if (!keeps_hard_rules(round, moved.placed.outline) ||
                !keeps_free_strip(round, moved.placed.outline, input.collector.clearance_m))
                continue;
            const Hold hold = hold_of(moved);
            if (hold.stopped && hold.worst_utilisation <= 1.0) continue;  // stopped by something else
            if (hold.worst_utilisation >= best_use) continue;
            best = m;
            best_use = hold.worst_utilisation;
            zone = name_zone(moved);
        }
    }
    if (best_use > now - 0.02) return {};
    const std::string was = name_zone(input);
    return {"move it " + text_of(best) + (zone == was || zone == "free" ? "" : ", from zone " + was + " to " + zone) +
                " (" + in_percent(best_use) + ")",
            best_use};
}

/// Points evenly spread along each rail, off the rafters' grid.
std::string more_points(const Input& input, const Worked& worked) {
    const Shares& shares = worked.layout.shares;
    const std::size_t rails = shares.of_rail.size();
    if (rails == 0) return "";
    std::vector<double> across(rails, 0.0);
    std::vector<int> count(rails, 0);
    for (std::size_t i = 0; i < shares.parts.size(); ++i) {
        const Point2 p = worked.layout.plate.nominal[i];
        across[shares.parts[i].rail] += shares.along_x ? p.y_m : p.x_m;
        ++count[shares.parts[i].rail];
    }
    for (std::size_t k = 0; k < rails; ++k)
        across[k] /= count[k];
    Input more = input;
    more.alternatives.clear();
    more.method.needs_rafters = false;
    more.placement.hand = Hand::right;
    const double run_m = shares.along_x ? input.collector.length_m : input.collector.width_m;
    for (int n = *std::max_element(count.begin(), count.end()) + 1; n <= most_points_a_rail; ++n) {
        more.collector.fixing_points.clear();
        for (const double a : across) {
            for (int i = 0; i < n; ++i) {
                const double along = run_m * (i + 0.5) / n;
                more.collector.fixing_points.push_back(shares.along_x ? Point2{along, a} : Point2{a, along});
            }
        }
        more.placed = site::place(more.surface, more.site.sketch_up_azimuth_deg, more.placement, more.collector);
        const Hold hold = hold_of(more);
        if (hold.stopped) continue;
        const int points = n * static_cast<int>(rails);
        return std::to_string(points) + " points instead of " + std::to_string(shares.parts.size()) +
               ", evenly spread (" + in_percent(hold.worst_utilisation) + ")";
    }
    return "";
}

}  // namespace

std::string what_would_hold(const Input& input, const Worked& worked) {
    std::vector<std::string> ways;
    const BallastCheck& b = worked.ballast;
    if (b.holds && b.worst().share >= worked.worst_use - 1e-9) {
        const double kg = std::ceil(b.needed_kg());
        const double more_kg = (kg - input.method.ballast_kg) * static_cast<double>(worked.layout.points.size());
        const double load = b.load_kn_m2 + more_kg * gravity_m_s2 * 1e-3 / b.area_m2;
        // Not where the surface does not carry it.
        if (load <= input.surface.spare_load_kn_m2.value_or(load)) {
            ways.push_back("lay " + fixed(kg, 0) + " kg a point instead of " + fixed(input.method.ballast_kg, 0) +
                           " kg, " + fixed(load, 2) + " kN/m2 in all on " + input.surface.label);
        }
    }
    const std::string methods = other_methods(input);
    if (!methods.empty()) ways.push_back("choose " + methods);
    const FoundMove move = a_move(input, worked.worst_use);
    if (!move.text.empty() && move.use <= 1.0) ways.push_back(move.text);
    if (!by_ballast(input.method)) {
        const std::string points = more_points(input, worked);
        if (!points.empty()) ways.push_back("take a collector with " + points);
    }
    if (ways.empty()) {
        return "No other method at hand, no place within " + fixed(reach_m, 0) + " m and no number of points up to " +
               std::to_string(most_points_a_rail) + " a profile holds; choose another surface" +
               (move.text.empty() ? "" : ". Least used: " + move.text);
    }
    std::string out;
    for (const std::string& way : ways)
        out += (out.empty() ? "" : "; or ") + way;
    out[0] = static_cast<char>(out[0] - 'a' + 'A');
    return out;
}

}  // namespace wg::fixing
