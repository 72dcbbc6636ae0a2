// What stands against the fixings.
#include <algorithm>
#include <cmath>

#include "core/fixing/loads.h"
#include "core/job/words.h"
#include "core/quantity/text.h"

namespace wg::fixing {
namespace {

std::string metres(double v) {
    return fixed(v, 2) + " m";
}

struct Checker {
    const Input& input;
    std::vector<Finding>& out;

    void add(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
             std::string rule, std::string source) const {
        out.push_back({code, severity, stage, input.placement.id, input.placement.label, std::move(message),
                       std::move(remedy), std::move(rule), std::move(source)});
    }
    void method(Severity severity, Stage stage, const char* code, std::string message, std::string remedy,
                const std::string& rule) const {
        add(severity, stage, code, std::move(message), std::move(remedy),
            "Fixing method " + input.method.label + ": " + rule, "equipment data");
    }
};

std::string listed(const std::vector<int>& numbers) {
    std::string out = numbers.size() == 1 ? "Point " : "Points ";
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        if (i > 0) out += i + 1 == numbers.size() ? " and " : ", ";
        out += std::to_string(numbers[i]);
    }
    return out;
}

void check_method(const Checker& c) {
    const FixingMethod& m = c.input.method;
    const auto& fits = m.coverings;
    if (std::find(fits.begin(), fits.end(), c.input.surface.covering) == fits.end()) {
        std::string suited;
        for (const Covering covering : fits)
            suited += (suited.empty() ? "" : ", ") + std::string(text_of(covering));
        c.method(Severity::stop, Stage::layout, "fixing.covering",
                 "The covering of " + c.input.surface.label + " is " + text_of(c.input.surface.covering) +
                     "; the method does not suit it",
                 "Choose a fixing method for " + std::string(text_of(c.input.surface.covering)),
                 "for " + (suited.empty() ? std::string("no covering named") : suited));
    }
    if (m.screw_diameter_mm > 0.0 && (m.screw_diameter_mm < 6.0 || m.screw_diameter_mm > 12.0)) {
        c.add(Severity::caution, Stage::layout, "fixing.screw-range",
              "Screws of " + fixed(m.screw_diameter_mm, 1) + " mm are outside the 6 to 12 mm of the withdrawal formula",
              "Take the resistance from the screw's own approval", "Withdrawal of screws, 6 to 12 mm",
              "EN 1995-1-1:2004+A1, 8.7.2 (4)");
    }
}

void check_points(const Checker& c, const Layout& layout) {
    const FixingMethod& m = c.input.method;
    if (layout.points.size() < 2) {
        c.add(Severity::stop, Stage::layout, "fixing.too-few-points",
              "The collector's data name " +
                  counted(static_cast<long>(layout.points.size()), "fixing point", "fixing points") +
                  "; a plate needs two or more",
              "Correct the equipment data",
              "Equipment data of " + c.input.collector.maker + ' ' + c.input.collector.name + ": fixing points",
              "equipment data");
        return;
    }
    std::vector<int> off, outside, near_edge, same;
    double farthest = 0.0, nearest_edge = 1e9;
    for (const FixingPoint& p : layout.points) {
        if (layout.rafters_known && !p.on_rafter) {
            off.push_back(p.number);
            farthest = std::max(farthest, std::abs(p.rafter_offset_m));
        }
        if (!site::contains(c.input.surface.outline, p.position)) {
            outside.push_back(p.number);
        } else if (p.edge_a.distance_m < m.edge_distance_m - site::touch_m) {
            near_edge.push_back(p.number);
            nearest_edge = std::min(nearest_edge, p.edge_a.distance_m);
        }
        const auto shares_place = [&](const FixingPoint& o) {
            return o.number != p.number &&
                   std::hypot(o.position.x_m - p.position.x_m, o.position.y_m - p.position.y_m) < 0.02;
        };
        if (std::any_of(layout.points.begin(), layout.points.end(), shares_place)) same.push_back(p.number);
    }
    if (m.needs_rafters && !layout.rafters_known) {
        c.method(Severity::caution, Stage::visit, "fixing.rafters-unknown",
                 "The method screws into rafters and none are surveyed on " + c.input.surface.label +
                     "; points are drawn where the collector has them",
                 "Measure the first rafter and the spacing", "on rafters");
    }
    if (!off.empty()) {
        c.method(Severity::stop, Stage::layout, "fixing.off-rafter",
                 listed(off) + (off.size() == 1 ? " finds" : " find") + " no rafter within " + metres(snap_reach_m) +
                     " along the plate's rail (the nearest is " + metres(farthest) + " away)",
                 "Move the collector sideways, turn it, or bridge the rafters with a batten made for the load",
                 "on rafters");
    }
    if (!same.empty()) {
        c.add(Severity::caution, Stage::layout, "fixing.same-rafter",
              listed(same) + " come to lie on the same place of a rafter and share its hold",
              "Move the collector sideways so that each point has a rafter of its own", "One fixing a place",
              "common practice, no published source");
    }
    if (!outside.empty()) {
        c.add(Severity::stop, Stage::layout, "fixing.point-outside",
              listed(outside) + " lie outside " + c.input.surface.label, "Move the collector further onto the surface",
              "Points on the surface", "by definition");
    }
    if (!near_edge.empty()) {
        c.method(Severity::caution, Stage::layout, "fixing.edge-distance",
                 listed(near_edge) + (near_edge.size() == 1 ? " lies" : " lie") + " down to " + metres(nearest_edge) +
                     " from the edge of " + c.input.surface.label,
                 "Move the collector by " + metres(m.edge_distance_m - nearest_edge) + " away from the edge",
                 metres(m.edge_distance_m) + " from every edge");
    }
    if (layout.shares.single_point_rails > 0) {
        c.add(Severity::caution, Stage::layout, "fixing.single-point-rail",
              "A rail has a single point: what tips the plate about it is not balanced by this calculation",
              "Give each rail two points", "Statics of the plate on its points", "docs/handbook/fixings.md");
    }
    const auto& shares = layout.shares.of_point;
    if (std::any_of(shares.begin(), shares.end(), [](double s) { return s < -1e-9; })) {
        c.add(Severity::note, Stage::layout, "fixing.lifting-point",
              "The plate overhangs so far that an inner point is pulled while the plate is pressed", "",
              "Statics of the plate on its points", "docs/handbook/fixings.md");
    }
}

void check_strength(const Checker& c, const Layout& layout, const Combined& combined, const Resistance& r) {
    if (!(r.pull_n > 0.0) || !(r.shear_n > 0.0)) {
        c.method(Severity::stop, Stage::layout, "fixing.no-resistance",
                 "The method has no resistance to pull-out or shear, so the points cannot be checked",
                 "Complete the method's data", "resistances");
        return;
    }
    if (!r.by_maker) {
        c.method(
            Severity::caution, Stage::layout, "fixing.bracket-not-checked",
            "Only the screws in the timber are checked: the method's data name no resistance for the bracket or hook "
            "itself, which may hold less",
            "Enter the design resistances to pull-out and shear from the maker's papers", "resistances of the bracket");
    }
    const FixingPoint* worst = nullptr;
    double used = 0.0, pull = 0.0, shear = 0.0;
    std::string name;
    for (std::size_t i = 0; i < layout.points.size(); ++i) {
        for (const Combination& combination : combined.combinations) {
            const PointForce& f = combination.of_point[i];
            const double p = std::max(0.0, f.extra_n - f.normal_n), u = utilisation(r, p, f.along_n);
            if (u <= used) continue;
            used = u;
            worst = &layout.points[i];
            pull = p;
            shear = f.along_n;
            name = combination.name;
        }
    }
    if (worst != nullptr && used > 0.9) {
        const bool over = used > 1.0;
        c.add(
            over ? Severity::stop : Severity::caution, Stage::layout, over ? "fixing.overloaded" : "fixing.nearly-full",
            "Point " + std::to_string(worst->number) + " is used to " + fixed(100.0 * used, 0) + " %: pull " +
                fixed(pull, 0) + " of " + fixed(r.pull_n, 0) + " N, shear " + fixed(shear, 0) + " of " +
                fixed(r.shear_n, 0) + " N, under " + name,
            over ? "Choose a method with more hold a point, move the collector out of the edge zones, or take one with "
                   "more points"
                 : "Leave as it is only if wind, snow and rafters are confirmed",
            "Design action within design resistance", r.by_screws ? "EN 1990 6.4.2; EN 1995-1-1 8.7" : "EN 1990 6.4.2");
    }
    if (combined.lever_missing) {
        c.add(Severity::caution, Stage::layout, "fixing.no-lever",
              "The points lie almost in one line, which alone cannot keep the plate from tipping; feet " +
                  metres(frame_foot_depth_m) + " apart are assumed",
              "Take a frame with feet at least " + metres(frame_foot_depth_m) + " apart front to back", "Overturning",
              "statics; depth of feet assumed");
    }
}

void note_simplifications(const Checker& c, const Loads& loads) {
    const Surface& surface = c.input.surface;
    if (loads.zone.zone_uplift == "free") {
        c.add(Severity::note, Stage::layout, "fixing.free-plate",
              "The plate stands free: " + fixed(free_plate_coefficient, 1) +
                  " times the peak pressure on its face from either side, whatever its tilt, up to a quarter of its "
                  "width off its middle",
              "", "Free-standing plates", "EN 1991-1-4 7.4.3, signboards, taken for a tilted plate; from memory");
        if (surface.tilt_deg == 0.0) {
            const Ballast b = ballast_of(loads, c.input.rules);
            c.add(Severity::note, Stage::layout, "fixing.ballast",
                  "Without anchors the frame would need " + fixed(std::ceil(b.uplift_kg), 0) +
                      " kg of ballast against lifting and " + fixed(std::ceil(b.sliding_kg), 0) +
                      " kg against sliding (friction " + fixed(ballast_friction, 1) + " assumed)",
                  "", "Ballast instead of anchors",
                  "EN 1990 A1.2(A); friction from common practice, no published source");
        }
        return;
    }
    c.add(Severity::note, Stage::layout, "fixing.net-pressure",
          "No published coefficient covers a plate " + fixed(100.0 * c.input.collector.stand_off_m, 0) +
              " cm off its surface: " + fixed(c.input.rules.standing_off_net_factor, 2) +
              " times the surface's own pressure is taken as the net force",
          "", "Net pressure on a plate that stands off", c.input.rules.source);
    c.add(Severity::note, Stage::layout, "fixing.zones-simplified",
          surface.kind == SurfaceKind::wall
              ? "Wind zones are those of a building wide against the wind, measured from the ends of the surveyed wall"
              : "Wind zones are measured on the rectangle round the surveyed plane, and the roof's other side is taken "
                "as the same",
          "", "Wind zones", "EN 1991-1-4 7.2, simplified; docs/handbook/fixings.md");
    if (surface.kind == SurfaceKind::roof && surface.roof_form == RoofForm::hip) {
        c.add(Severity::caution, Stage::layout, "fixing.hip-roof",
              "Hip roofs have zones of their own in EN 1991-1-4 7.2.6, which are not worked out; a duo-pitch roof's "
              "worst zones are taken near every edge",
              "Keep the collector away from hips and ridge, or have the zone checked", "Wind zones of hip roofs",
              "EN 1991-1-4 7.2.6");
    }
}

}  // namespace

std::vector<Finding> check_fixing(const Input& input, const Loads& loads, const Layout& layout,
                                  const Combined& combined, const Resistance& resistance) {
    std::vector<Finding> out;
    const Checker c{input, out};
    check_method(c);
    check_points(c, layout);
    check_strength(c, layout, combined, resistance);
    note_simplifications(c, loads);
    return out;
}

}  // namespace wg::fixing
