// How the figures of a fixing were reached, for 'show working': from wind and snow to the plate. The way on to the
// worst point is in worst_workings.cpp.
#include <cmath>

#include "core/fixing/loads.h"
#include "core/fixing/show.h"
#include "core/job/words.h"
#include "core/quantity/constants.h"

namespace wg::fixing {
namespace {

Working hill_working(const Input& input, const Loads& l) {
    const Hill& h = input.site.hill;
    const Orography& o = l.orography;
    return shown({"fixing.hill",
                  "Wind over the hill",
                  "Phi = H / L_u; c_o = 1 + 2 s Phi, from Phi 0.3 on 1 + 0.6 s",
                  {{"H", metres_of(h.height_m)},
                   {"L_u", metres_of(h.upwind_length_m)},
                   {"L_d", h.kind == HillKind::hill ? metres_of(h.downwind_length_m) : "of a cliff, no account"},
                   {"x from the crest", metres_of(h.crest_distance_m)},
                   {"z", metres_of(l.wind.z_used_m)},
                   {"Phi", fixed(o.slope, 3)},
                   {"L_e", metres_of(o.effective_length_m)},
                   {"s", fixed(o.location, 3)}},
                  "c_o = " + fixed(o.factor, 3),
                  "EN 1991-1-4:2005, annex A.3, (A.1) to (A.13)",
                  false},
                 "c_o = 1 + " + (o.slope < 0.3 ? "2 x " + fixed(o.location, 3) + " x " + fixed(o.slope, 3)
                                               : "0.6 x " + fixed(o.location, 3)),
                 *o.outside == '\0'
                     ? "from 1.5 L_u before the crest to 2 L_d (hill) or 3.5 L_e (cliff) behind it, up to "
                       "2 L_e over the ground"
                     : std::string("outside: ") + o.outside);
}

Working wind_working(const Input& input, const Loads& l) {
    const double basic = l.basic_wind_m_s, used = basic * l.altitude_factor;
    std::vector<std::pair<std::string, std::string>> in{{"v_b", fixed(basic, 1) + " m/s"}};
    if (l.altitude_factor != 1.0) {
        in.emplace_back("altitude", fixed(input.site.location.altitude_m, 0) + " m, " +
                                        fixed(input.rules.wind_altitude_per_m, 4) + " a metre: factor " +
                                        fixed(l.altitude_factor, 3) + ", v_b " + fixed(used, 2) + " m/s");
    }
    in.insert(in.end(), {{"terrain", text_of(input.site.terrain)},
                         {"z", metres_of(l.wind.z_used_m)},
                         {"rho", fixed(input.rules.air_density_kg_m3, 2) + " kg/m3"},
                         {"c_r", fixed(l.wind.cr, 4)},
                         {"c_o", fixed(l.wind.co, 3)},
                         {"I_v", fixed(l.wind.intensity, 4)},
                         {"q_b", fixed(l.wind.qb_pa, 1) + " Pa"},
                         {"c_e", fixed(l.wind.ce, 3)}});
    return shown(
        {"fixing.wind", "Peak velocity pressure", "q_p = (1 + 7 I_v) (c_r c_o v_b)^2 rho / 2", std::move(in),
         fixed(l.wind.qp_pa, 0) + " Pa", "EN 1991-1-4:2005, 4.2 to 4.5", !input.site.basic_wind_m_s.has_value()},
        "q_p = (1 + 7 x " + fixed(l.wind.intensity, 4) + ") x (" + fixed(l.wind.cr, 4) + " x " + fixed(l.wind.co, 3) +
            " x " + fixed(used, 2) + ")^2 x " + fixed(input.rules.air_density_kg_m3, 2) + " / 2",
        "heights up to 200 m; direction and season factors 1");
}

Working zone_working(const Input& input, const Loads& l) {
    const double q = l.wind.qp_pa, up = q * l.net_uplift * l.area_m2, down = q * l.net_pressure * l.area_m2;
    const std::string result = newtons(up) + " lifting and " + newtons(down) + " pressing, characteristic";
    const std::string sums = newtons(up) + " = " + fixed(q, 1) + " x " + fixed(l.net_uplift, 3) + " x " +
                             fixed(l.area_m2, 3) + "; " + newtons(down) + " = " + fixed(q, 1) + " x " +
                             fixed(l.net_pressure, 3) + " x " + fixed(l.area_m2, 3);
    if (l.free) {
        return shown({"fixing.pressure",
                      "Wind on the plate",
                      "F = c_f q_p A",
                      {{"stands", l.canopy ? "free, as a canopy" : "free, as a signboard"},
                       {"tilt", fixed(input.placed.tilt_deg, 1) + " deg"},
                       {"c_f lifting", fixed(l.net_uplift, 3)},
                       {"c_f pressing", fixed(l.net_pressure, 3)},
                       {"loaded area A", fixed(l.area_m2, 3) + " m2"},
                       {"force off the middle",
                        l.canopy ? "a quarter of the depth, either way" : "a quarter of the width, either way"}},
                      result,
                      l.canopy ? "EN 1991-1-4 7.3, table 7.6; from memory" : "EN 1991-1-4 7.4.3; from memory",
                      true},
                     sums,
                     l.canopy
                         ? "tilts up to 30 deg; open or blocked beneath, the worse taken"
                         : "a clear height below of a quarter of the plate's or more; nearer the ground 7.4.1 asks "
                           "for more at the windward end and less beyond");
    }
    const auto row = [](const tables::Coefficient& c, bool suction) {
        return fixed(suction ? c.suction_1 : c.pressure_1, 3) + " for 1 m2, " +
               fixed(suction ? c.suction_10 : c.pressure_10, 3) + " for 10 m2";
    };
    return shown({"fixing.pressure",
                  "Wind on the plate",
                  "c_pe = c_1 - (c_1 - c_10) log10 A; " + net_formula(input.rules) + "; F = c_net q_p A",
                  {{"zone that lifts", l.zone.zone_uplift},
                   {"its values", row(l.zone.uplift_from, true)},
                   {"c_pe lifting", fixed(l.zone.uplift, 3)},
                   {"zone that presses", l.zone.zone_pressure},
                   {"values of it", row(l.zone.pressure_from, false)},
                   {"c_pe pressing", fixed(l.zone.pressure, 3)},
                   {"loaded area A", fixed(l.area_m2, 3) + " m2"},
                   {"pitch", fixed(input.surface.tilt_deg, 1) + " deg"},
                   {"building h", metres_of(l.body.height_m)},
                   {"parapet h_p", metres_of(l.body.parapet_m)},
                   {"c_net lifting", fixed(l.net_uplift, 3)},
                   {"c_net pressing", fixed(l.net_pressure, 3)}},
                  result,
                  zone_table(zone_kind(input.surface)) + "; net by: " +
                      (input.rules.net_pressure_source.empty() ? input.rules.source : input.rules.net_pressure_source),
                  true},
                 sums, "areas between 1 and 10 m2 run with the logarithm, outside they stay; no pressure from inside");
}

void snow_workings(const Input& input, const Loads& l, std::vector<Working>& out) {
    const ActionRules& r = input.rules;
    const double exposure = r.snow_exposure * r.snow_thermal;
    const bool by_region = !input.site.ground_snow_kn_m2 && r.snow_rule != SnowRule::fixed;
    out.push_back(shown(
        {"fixing.snow",
         "Snow on the plate",
         "s = mu_1 C_e C_t s_k",
         {{"s_k",
           fixed(l.snow_ground_n_m2 * 1e-3, 3) + " kN/m2" +
               (by_region ? ", zone " + fixed(r.snow_zone, 1) + " at " + fixed(input.site.location.altitude_m, 0) + " m"
                          : std::string())},
          {"tilt", fixed(input.placed.tilt_deg, 1) + " deg"},
          {"held on the roof", input.surface.snow_held ? "yes: mu_1 at least 0.8" : "no"},
          {"mu_1", fixed(l.snow_shape, 3)},
          {"C_e", fixed(r.snow_exposure, 2)},
          {"C_t", fixed(r.snow_thermal, 2)},
          {"plan area", fixed(l.snow_plan_m2, 3) + " m2"}},
         fixed(l.snow_n_m2, 0) + " N/m2 of plan area, " + newtons(l.snow_n_m2 * l.snow_plan_m2),
         by_region ? "EN 1991-1-3:2003, annex C table C.1 (from memory) and table 5.2" : "EN 1991-1-3:2003, table 5.2",
         !input.site.ground_snow_kn_m2.has_value()},
        "s = " + fixed(l.snow_shape, 3) + " x " + fixed(exposure, 3) + " x " + fixed(l.snow_ground_n_m2, 0) + " N/m2",
        by_region ? "places below 1500 m" : "roofs without higher roofs beside them"));
    if (l.slide.force_n > 0.0) {
        const SnowSlide& s = l.slide;
        const double load = s.roof_shape * exposure * l.snow_ground_n_m2;
        out.push_back(shown({"fixing.snow-slide",
                             "Snow that slides against the plate",
                             "F_s = s b sin(pitch), for each metre of width",
                             {{"mu_1 of the roof", fixed(s.roof_shape, 3)},
                              {"s", fixed(load, 1) + " N/m2"},
                              {"b, in plan to the ridge or the next collector", metres_of(s.above_plan_m)},
                              {"width", metres_of(s.width_m)},
                              {"pitch", fixed(input.surface.tilt_deg, 1) + " deg"}},
                             newtons(s.force_n) + " down the slope, characteristic",
                             "EN 1991-1-3:2003, 6.4",
                             false},
                            "F = " + fixed(load, 1) + " x " + fixed(s.above_plan_m, 3) + " x sin " +
                                fixed(input.surface.tilt_deg, 1) + " deg x " + fixed(s.width_m, 2),
                            "no friction between snow and roof; no snow guard above"));
    }
    const double top_m = input.placed.highest_m - input.surface.origin.z_m;
    if (l.free && input.surface.tilt_deg <= ballast_tilt_deg && input.surface.kind == SurfaceKind::roof) {
        const SnowDrift d = snow_drift(top_m, l.snow_ground_n_m2, r.snow_density_kn_m3);
        out.push_back(shown({"fixing.snow-drift",
                             "Drift behind the plate",
                             "mu_2 = gamma h / s_k, 0.8 to 2; l_s = 2 h, 5 to 15 m",
                             {{"gamma", fixed(r.snow_density_kn_m3, 1) + " kN/m3"},
                              {"h", metres_of(top_m)},
                              {"s_k", fixed(l.snow_ground_n_m2 * 1e-3, 3) + " kN/m2"},
                              {"mu_2", fixed(d.shape, 3)},
                              {"l_s", metres_of(d.length_m)}},
                             fixed(d.load_n_m2, 0) + " N/m2 on the surface beside the plate, characteristic",
                             "EN 1991-1-3:2003, 6.2",
                             false},
                            "s = " + fixed(d.shape, 3) + " x " + fixed(l.snow_ground_n_m2, 0) + " N/m2",
                            "level roofs; a load on the roof, not on the fixings"));
    }
}

}  // namespace

std::vector<Working> workings_of(const Input& input, const Worked& w) {
    const Loads& l = w.loads;
    std::vector<Working> out;
    if (input.site.hill.kind != HillKind::none) out.push_back(hill_working(input, l));
    out.push_back(wind_working(input, l));
    out.push_back(zone_working(input, l));
    snow_workings(input, l, out);
    std::vector<std::pair<std::string, std::string>> masses{{"plate", fixed(input.collector.mass_kg, 1) + " kg"},
                                                            {"refrigerant", fixed(input.refrigerant_kg, 2) + " kg"}};
    if (by_ballast(input.method)) masses.emplace_back("frame", fixed(input.method.frame_mass_kg, 1) + " kg");
    out.push_back(shown({"fixing.weight", "Weight of the plate", "G = m g", std::move(masses), newtons(l.weight_n),
                         "equipment data", false},
                        fixed(l.weight_n / gravity_m_s2, 2) + " kg x " + fixed(gravity_m_s2, 5) + " m/s2",
                        "without pipes and snow"));
    worst_workings(input, w, out);
    if (!input.placement.label.empty()) {  // several collectors stand in one list
        for (Working& working : out)
            working.title += ": " + input.placement.label;
    }
    return out;
}

}  // namespace wg::fixing
