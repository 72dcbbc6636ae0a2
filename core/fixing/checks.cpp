// What stands against the fixings.
#include <algorithm>
#include <cmath>

#include "core/fixing/checks.h"
#include "core/fixing/loads.h"
#include "core/job/words.h"
#include "core/quantity/text.h"

namespace wg::fixing {
namespace {

std::string metres(double v) {
    return in_metres(v);
}

std::string listed(const std::vector<int>& numbers) {
    std::string out = numbers.size() == 1 ? "Point " : "Points ";
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        if (i > 0) out += i + 1 == numbers.size() ? " and " : ", ";
        out += std::to_string(numbers[i]);
    }
    return out;
}

void check_method(const FixingChecker& c) {
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
    if (by_ballast(m) && c.input.surface.tilt_deg > ballast_tilt_deg) {
        c.method(Severity::stop, Stage::layout, "fixing.ballast-slope",
                 c.input.surface.label + " slopes by " + fixed(c.input.surface.tilt_deg, 1) +
                     " deg; ballast is worked out for surfaces of up to " + fixed(ballast_tilt_deg, 0) + " deg",
                 "Choose a method that anchors the collector", "on level surfaces");
    }
    if (m.screw_diameter_mm > 0.0 && (m.screw_diameter_mm < 6.0 || m.screw_diameter_mm > 12.0)) {
        c.add(Severity::caution, Stage::layout, "fixing.screw-range",
              "Screws of " + fixed(m.screw_diameter_mm, 1) + " mm are outside the 6 to 12 mm of the withdrawal formula",
              "Take the resistance from the screw's own approval", "Withdrawal of screws, 6 to 12 mm",
              "EN 1995-1-1:2004+A1, 8.7.2 (4)");
    }
}

void check_points(const FixingChecker& c, const Layout& layout) {
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
    if (m.spacing_min_m > 0.0) {
        std::vector<int> close;
        double least = 1e9;
        for (const FixingPoint& p : layout.points) {
            double own = 1e9;
            for (const FixingPoint& o : layout.points) {
                if (o.number != p.number)
                    own = std::min(own, std::hypot(o.position.x_m - p.position.x_m, o.position.y_m - p.position.y_m));
            }
            if (own < m.spacing_min_m - site::touch_m) close.push_back(p.number);
            least = std::min(least, own);
        }
        if (!close.empty()) {
            c.method(Severity::caution, Stage::layout, "fixing.spacing",
                     listed(close) + " lie " + metres(least) + " from the next; their holds weaken each other",
                     "Move the collector so that the points come to lie further apart, or take another method",
                     "points at least " + metres(m.spacing_min_m) + " apart");
        }
    }
    if (m.joint_distance_m > 0.0) {
        c.method(Severity::note, Stage::fitting, "fixing.joints",
                 "Keep every hole " + metres(m.joint_distance_m) + " off joints, seams and slab edges", "",
                 metres(m.joint_distance_m) + " from joints");
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

void check_profiles(const FixingChecker& c, const Worked& w) {
    if (w.bending > 0.9) {
        const bool over = w.bending > 1.0;
        c.add(over ? Severity::stop : Severity::caution, Stage::layout,
              over ? "fixing.profile-overloaded" : "fixing.profile-nearly-full",
              "The profiles bend to " + in_percent(w.bending) + " of their resistance of " +
                  fixed(c.input.collector.profile_moment_nm, 0) + " N m",
              over ? "Take a collector with more points a profile, or a place with less wind and snow"
                   : "Leave as it is only if wind and snow are confirmed",
              "Design moment within the profile's resistance", "EN 1990 6.4.2; beam on its points");
    }
    if (w.sag.use > 1.0) {
        c.add(Severity::caution, Stage::layout, "fixing.sag",
              "The profiles bend out by " + fixed(1000.0 * w.sag.sag_m, 1) + " mm " +
                  (w.sag.cantilever ? "at an end that overhangs by " + metres(0.5 * w.sag.span_m)
                                    : "in a span of " + metres(w.sag.span_m)) +
                  ": " + in_percent(w.sag.use) + " of what is allowed",
              "Take a collector with more points a profile, or a place with less wind and snow",
              "Deflection within the span over " + fixed(c.input.rules.deflection_span_share, 0), c.input.rules.source);
    }
}

void check_ballast_hold(const FixingChecker& c, const Worked& w) {
    const FixingMethod& m = c.input.method;
    if (!(m.ballast_kg > 0.0)) {
        c.method(Severity::stop, Stage::layout, "fixing.no-resistance",
                 "The method holds by ballast and its data name none a point (ballast_kg), so nothing can be checked",
                 "Complete the method's data", "ballast");
        return;
    }
    const BallastCheck& b = w.ballast;
    if (!c.input.surface.spare_load_kn_m2) {
        c.add(Severity::caution, Stage::visit, "fixing.spare-load-unknown",
              "Frame, plate and ballast put " + fixed(b.load_kn_m2, 2) + " kN/m2 on " + c.input.surface.label +
                  ", and what it may carry besides is not told",
              "Ask the structural engineer and enter the spare load of " + c.input.surface.label,
              "Load on the surface within what it may carry", "EN 1991-1-1; survey");
    } else if (ballast_overloads(c.input, b)) {
        c.add(Severity::stop, Stage::layout, "fixing.spare-load",
              "Frame, plate and ballast put " + fixed(b.load_kn_m2, 2) + " kN/m2 on " + c.input.surface.label +
                  ", which may carry " + fixed(*c.input.surface.spare_load_kn_m2, 2) + " kN/m2 besides",
              "Take an anchored frame, a deeper frame, or a place with less wind",
              "Load on the surface within what it may carry", "EN 1991-1-1; survey");
    }
}

void check_strength(const FixingChecker& c, const Worked& w) {
    const Resistance& r = w.resistance;
    const bool ballast = by_ballast(c.input.method);
    if (ballast) check_ballast_hold(c, w);
    if (!ballast && !r.known()) {
        c.method(Severity::stop, Stage::layout, "fixing.no-resistance",
                 "The method has no resistance to pull-out or shear (pull_out_n, shear_n or screw_diameter_mm), so the "
                 "points cannot be checked",
                 "Complete the method's data", "resistances");
        return;
    }
    if (r.known() && !r.by_maker) {
        c.method(
            Severity::caution, Stage::layout, "fixing.bracket-not-checked",
            "Only the screws in the timber are checked: the method's data name no resistance for the bracket or hook "
            "itself (pull_out_n, shear_n), which may hold less",
            "Enter the design resistances to pull-out and shear from the maker's papers", "resistances of the bracket");
    }
    if (!w.layout.points.empty() && !w.combined.combinations.empty() && w.worst_use > 0.9) {
        const bool over = w.worst_use > 1.0;
        const FixingPoint& p = w.layout.points[w.worst_point];
        const Combination& under = w.combined.combinations[w.worst_combination];
        const PointForce& f = under.of_point[w.worst_point];
        std::string what;
        if (p.held_by >= HeldBy::ballast_slides) {
            what = "The frame is used to " + in_percent(w.worst_use) + " (" + text_of(p.held_by) + ") with " +
                   fixed(c.input.method.ballast_kg, 0) + " kg a point";
        } else {
            const PartHold* part = r.part(p.held_by);
            what = "Point " + std::to_string(p.number) + " is used to " + in_percent(w.worst_use) + " (" +
                   text_of(p.held_by) + "): pull " + fixed(f.pull_n(), 0) + " of " +
                   fixed(part != nullptr ? part->pull_n : r.pull_n, 0) + " N";
            if (part == nullptr || part->together != Together::pull_only)
                what += ", shear " + fixed(f.along_n, 0) + " of " +
                        fixed(part != nullptr ? part->shear_n : r.shear_n, 0) + " N";
            what += ", under " + under.name;
        }
        c.add(over ? Severity::stop : Severity::caution, Stage::layout,
              over ? "fixing.overloaded" : "fixing.nearly-full", std::move(what),
              over ? what_would_hold(c.input, w) : "Leave as it is only if wind, snow and rafters are confirmed",
              "Design action within design resistance",
              ballast       ? "EN 1990 6.4.2, table A1.2(A)"
              : r.by_screws ? "EN 1990 6.4.2; EN 1995-1-1 8.7"
                            : "EN 1990 6.4.2");
    }
    if (w.combined.lever_missing && !(ballast && c.input.method.frame_depth_m > 0.0)) {
        c.add(Severity::caution, Stage::layout, "fixing.no-lever",
              "The points lie almost in one line, which alone cannot keep the plate from tipping; feet " +
                  metres(frame_foot_depth_m) + " apart are assumed",
              "Take a frame with feet at least " + metres(frame_foot_depth_m) + " apart front to back", "Overturning",
              "statics; depth of feet assumed");
    }
}

}  // namespace

std::vector<Finding> check_fixing(const Input& input, const Worked& worked) {
    std::vector<Finding> out;
    const FixingChecker c{input, out};
    check_method(c);
    check_points(c, worked.layout);
    check_strength(c, worked);
    check_profiles(c, worked);
    note_assumptions(c, worked);
    return out;
}

}  // namespace wg::fixing
