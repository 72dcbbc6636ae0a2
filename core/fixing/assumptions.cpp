// What a fixing's figures take for granted, and what the data leave untold.
#include <algorithm>
#include <cmath>

#include "core/fixing/checks.h"
#include "core/quantity/constants.h"

namespace wg::fixing {
namespace {

void note_free_plate(const FixingChecker& c, const Worked& w) {
    const Loads& l = w.loads;
    const Surface& surface = c.input.surface;
    c.add(Severity::note, Stage::layout, "fixing.free-plate",
          l.canopy ? "The plate stands free and lies flat enough for a canopy: " + fixed(-l.net_uplift, 2) +
                         " times the peak pressure lifts it and " + fixed(l.net_pressure, 2) +
                         " times presses it, a quarter of its depth off either edge"
                   : "The plate stands free: " + fixed(free_plate_coefficient, 1) +
                         " times the peak pressure on its face from either side, up to a quarter of its width off its "
                         "middle",
          "", "Free-standing plates",
          l.canopy ? "EN 1991-1-4 7.3, table 7.6, open or blocked beneath, the worse; from memory"
                   : "EN 1991-1-4 7.4.3, signboards, taken for a tilted plate; from memory");
    if (surface.tilt_deg > ballast_tilt_deg) return;
    const double top_m = c.input.placed.highest_m - surface.origin.z_m;
    const SnowDrift drift = snow_drift(top_m, l.snow_ground_n_m2, c.input.rules.snow_density_kn_m3);
    if (surface.kind == SurfaceKind::roof && drift.shape > 0.8) {
        c.add(Severity::note, Stage::layout, "fixing.snow-drift",
              "Snow drifts up behind the plate: " + fixed(drift.load_n_m2 * 1e-3, 2) + " kN/m2 on " + surface.label +
                  " beside it, falling to " + fixed(0.8 * l.snow_ground_n_m2 * 1e-3, 2) + " kN/m2 over " +
                  in_metres(drift.length_m),
              "", "Drifting at obstructions", "EN 1991-1-3:2003, 6.2");
    }
    if (by_ballast(c.input.method)) return;
    Input ballasted = c.input;
    ballasted.method.kind = FixingKind::ballast;
    ballasted.method.ballast_kg = 0.0;
    ballasted.method.friction = ballast_friction;
    const BallastCheck b = check_ballast(ballasted, l, w.layout);
    const double n = static_cast<double>(w.layout.points.size());
    const auto kg = [n](double a_point) { return fixed(std::ceil(std::max(0.0, n * a_point)), 0) + " kg"; };
    c.add(Severity::note, Stage::layout, "fixing.ballast",
          "Without anchors the frame would need " + kg(b.lifts_kg) + " of ballast against lifting, " + kg(b.slides_kg) +
              " against sliding (friction " + fixed(ballast_friction, 1) + " assumed) and " + kg(b.tips_kg) +
              " against tipping over feet " + in_metres(b.depth_m) + " apart",
          "", "Ballast instead of anchors", "EN 1990 A1.2(A); friction from common practice, no published source");
}

void note_net_pressure(const FixingChecker& c) {
    const ActionRules& r = c.input.rules;
    const std::string off = fixed(100.0 * c.input.collector.stand_off_m, 0) + " cm off its surface: ";
    std::string how;
    switch (r.net_pressure) {
        case NetPressureRule::surface_share:
            how = "No published coefficient covers a plate " + off + fixed(r.standing_off_net_factor, 2) +
                  " times the surface's own pressure is taken as the net force";
            break;
        case NetPressureRule::two_faces:
            how = "Wind acts on both faces of a plate " + off + "the surface's pressure outside and " +
                  fixed(r.hidden_face_share, 2) + " of it with the other sign beneath";
            break;
        case NetPressureRule::coefficients:
            how = "Net coefficients are taken for a plate " + off + fixed(r.net_uplift_middle, 2) + " in the middle, " +
                  fixed(r.net_uplift_edge, 2) + " in edge zones, " + fixed(r.net_pressure_all, 2) + " pressing";
            break;
    }
    c.add(Severity::note, Stage::layout, "fixing.net-pressure", std::move(how), "",
          "Net pressure on a plate that stands off", r.net_pressure_source.empty() ? r.source : r.net_pressure_source);
}

void note_zones(const FixingChecker& c, const Loads& l) {
    const Surface& surface = c.input.surface;
    const ZoneKind kind = zone_kind(surface);
    const bool linked = l.body.across_m > 0.0;
    std::string how;
    if (kind == ZoneKind::wall) {
        how = linked ? "Wind zones are measured from the ends of the surveyed wall"
                     : "Wind zones are those of a building wide against the wind and as deep as high, measured from "
                       "the ends of the surveyed wall";
    } else if (kind == ZoneKind::hip) {
        how =
            "Wind zones follow the plane's eaves, hips and ridge; every verge counts as a hip, and the length of the "
            "building is " +
            std::string(linked ? "that of the building drawn" : "taken from the plane");
    } else {
        how = "Wind zones are measured on the rectangle round the surveyed plane";
        if (kind == ZoneKind::duo_pitch && !linked) how += ", and the roof's other side is taken as the same";
    }
    c.add(Severity::note, Stage::layout, "fixing.zones-simplified",
          how + "; no pressure from inside acts on a plate outside", "", "Wind zones",
          "EN 1991-1-4 7.2, simplified; docs/handbook/fixings.md");
}

/// Checks that the data do not allow, field by field.
void note_untold(const FixingChecker& c) {
    const CollectorModel& m = c.input.collector;
    const FixingMethod& f = c.input.method;
    std::vector<std::string> untold;
    if (!(m.profile_moment_nm > 0.0)) untold.emplace_back("bending of the profiles (profile_moment_nm)");
    if (!(m.profile_stiffness_nm2 > 0.0)) untold.emplace_back("their deflection (profile_stiffness_nm2)");
    if (!(m.profile_bolt_mm > 0.0)) untold.emplace_back("the bolt at the profile (profile_bolt_mm)");
    if (!(f.bolt_mm > 0.0) && (f.kind == FixingKind::screw_through || f.kind == FixingKind::anchor))
        untold.emplace_back("the bolt of the fixing (bolt_mm)");
    for (const double bolt : {m.profile_bolt_mm, f.bolt_mm}) {
        if (bolt > 0.0 && !(stress_area_mm2(bolt) > 0.0))
            untold.push_back("a bolt of " + fixed(bolt, 1) + " mm, which no coarse thread has");
    }
    if (f.head_diameter_mm > 0.0 && !(f.head_strength_n_mm2 > 0.0))
        untold.emplace_back("pull-through of the screw heads (head_strength_n_mm2)");
    if (by_ballast(f) && !(f.frame_depth_m > 0.0))
        untold.emplace_back("tipping over the frame's own feet (frame_depth_m; the collector's points stand for them)");
    if (untold.empty()) return;
    std::string list;
    for (std::size_t i = 0; i < untold.size(); ++i)
        list += (i == 0 ? "" : i + 1 == untold.size() ? " and " : ", ") + untold[i];
    c.add(Severity::note, Stage::layout, "fixing.not-worked-out",
          "Not worked out, because the data do not tell: " + list, "Enter the figures from the maker's papers",
          "Equipment data of " + m.maker + ' ' + m.name + " and of " + f.label, "equipment data");
}

}  // namespace

void note_assumptions(const FixingChecker& c, const Worked& w) {
    const Loads& l = w.loads;
    if (*l.orography.outside != '\0') {
        c.add(Severity::note, Stage::visit, "fixing.hill-outside",
              std::string("The hill does not count: ") + l.orography.outside, "", "Wind over hills",
              "EN 1991-1-4:2005, annex A.3");
    }
    if (!c.input.site.ground_snow_kn_m2 && c.input.rules.snow_rule != SnowRule::fixed &&
        c.input.site.location.altitude_m > annex_c_highest_m) {
        c.add(Severity::caution, Stage::visit, "fixing.snow-altitude",
              "The site lies at " + fixed(c.input.site.location.altitude_m, 0) +
                  " m; the snow formula of the region ends at " + fixed(annex_c_highest_m, 0) + " m",
              "Ask for the ground snow load of the place and enter it", "Snow on the ground by altitude",
              "EN 1991-1-3:2003, annex C");
    }
    if (l.slide.force_n > 0.0) {
        c.add(Severity::note, Stage::layout, "fixing.snow-slides",
              "Snow of the " + in_metres(l.slide.above_plan_m) +
                  " of roof above slides against the plate: " + fixed(l.slide.force_n, 0) + " N down the slope",
              "", "Snow against obstacles on a roof", "EN 1991-1-3:2003, 6.4");
    }
    if (l.free) {
        note_free_plate(c, w);
    } else {
        note_net_pressure(c);
        note_zones(c, l);
    }
    note_untold(c);
}

}  // namespace wg::fixing
