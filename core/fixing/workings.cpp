// How the figures of a fixing were reached, for 'show working'.
#include <cmath>

#include "core/fixing/loads.h"
#include "core/fixing/screws.h"
#include "core/job/words.h"
#include "core/quantity/text.h"

namespace wg::fixing {
namespace {

std::string newtons(double v) {
    return fixed(v, 0) + " N";
}

Working wind_working(const Input& input, const Loads& l) {
    const double basic = input.site.basic_wind_m_s.value_or(input.rules.basic_wind_m_s);
    return {"fixing.wind",
            "Peak velocity pressure",
            "q_p = (1 + 7 I_v) c_r^2 rho v_b^2 / 2",
            {{"v_b", fixed(basic, 1) + " m/s"},
             {"terrain", text_of(input.site.terrain)},
             {"z", fixed(l.wind.z_used_m, 2) + " m"},
             {"c_r", fixed(l.wind.cr, 4)},
             {"I_v", fixed(l.wind.intensity, 4)},
             {"q_b", fixed(l.wind.qb_pa, 1) + " Pa"},
             {"c_e", fixed(l.wind.ce, 3)}},
            fixed(l.wind.qp_pa, 0) + " Pa",
            "EN 1991-1-4:2005, 4.2 to 4.5, orography 1",
            !input.site.basic_wind_m_s.has_value()};
}

Working zone_working(const Input& input, const Loads& l) {
    const bool free = l.zone.zone_uplift == "free";
    return {"fixing.pressure",
            "Wind on the plate",
            free ? "F = c_f q_p A" : "F = k c_pe q_p A",
            {{"zone for uplift", l.zone.zone_uplift},
             {"zone for pressure", l.zone.zone_pressure},
             {free ? "c_f" : "c_pe uplift", fixed(l.zone.uplift, 3)},
             {free ? "c_f pressure" : "c_pe pressure", fixed(l.zone.pressure, 3)},
             {"loaded area A", fixed(l.area_m2, 2) + " m2"},
             {"pitch", fixed(input.surface.tilt_deg, 1) + " deg"},
             {"net factor k", free ? "in c_f" : fixed(input.rules.standing_off_net_factor, 2)}},
            newtons(l.winds.front().action.normal_n) + " and " + newtons(l.winds.back().action.normal_n) +
                " square to the surface, characteristic",
            l.zone.table,
            true};
}

}  // namespace

std::vector<Working> workings_of(const Input& input, const Loads& l, const Layout& layout, const Resistance& r) {
    std::vector<Working> out;
    out.push_back(wind_working(input, l));
    out.push_back(zone_working(input, l));
    out.push_back({"fixing.snow",
                   "Snow on the plate",
                   "s = mu_1 C_e C_t s_k, C_e = C_t = 1",
                   {{"s_k", fixed(l.snow_ground_n_m2 * 1e-3, 2) + " kN/m2"},
                    {"tilt", fixed(input.placed.tilt_deg, 1) + " deg"},
                    {"mu_1", fixed(snow_shape_mu1(input.placed.tilt_deg), 3)}},
                   fixed(l.snow_n_m2, 0) + " N/m2 of plan area",
                   "EN 1991-1-3 table 5.2, snow free to slide; drifts not counted",
                   !input.site.ground_snow_kn_m2.has_value()});
    out.push_back({"fixing.weight",
                   "Weight of the plate",
                   "G = m g",
                   {{"plate", fixed(input.collector.mass_kg, 1) + " kg"},
                    {"refrigerant", fixed(input.refrigerant_kg, 2) + " kg"}},
                   newtons(l.weight_n),
                   "equipment data",
                   false});
    std::vector<std::pair<std::string, std::string>> shares;
    for (std::size_t i = 0; i < layout.points.size(); ++i) {
        shares.emplace_back("point " + std::to_string(layout.points[i].number),
                            fixed(100.0 * layout.shares.of_point[i], 1) + " %");
    }
    out.push_back({"fixing.shares", "Share of an even load by point", "beam on its points, rail by rail",
                   std::move(shares), counted(layout.shares.rails, "rail", "rails"), "statics; three-moment equation",
                   false});
    if (r.by_screws) {
        out.push_back({"fixing.screws",
                       "Hold of one point in timber",
                       "F_ax = 0.52 d^-0.5 l^-0.1 rho^0.8 d l k_d; R = k_mod n^0.9 F / gamma_M",
                       {{"screws", std::to_string(input.method.screws_per_point) + " of " +
                                       fixed(input.method.screw_diameter_mm, 1) + " mm, grip " +
                                       fixed(input.method.screw_grip_mm, 0) + " mm"},
                        {"rho_k", fixed(input.rules.timber_density_kg_m3, 0) + " kg/m3"},
                        {"one screw, pull", newtons(r.one_screw_pull_k_n)},
                        {"one screw, shear", newtons(r.one_screw_shear_k_n)},
                        {"screw steel", fixed(screw_steel_n_mm2, 0) + " N/mm2 assumed"},
                        {"k_mod", fixed(input.rules.k_mod, 2)},
                        {"gamma_M", fixed(input.rules.gamma_timber, 2)}},
                       newtons(r.screws_pull_n) + " pull, " + newtons(r.screws_shear_n) + " shear, design",
                       "EN 1995-1-1:2004+A1, 8.7.2 and 8.2.3 (simplified)",
                       true});
    }
    if (r.by_maker) {
        out.push_back({"fixing.maker",
                       "Hold of one point by the method's data",
                       "as given",
                       {{"method", input.method.label}},
                       newtons(r.maker_pull_n) + " pull, " + newtons(r.maker_shear_n) + " shear, design",
                       "equipment data",
                       false});
    }
    const FixingPoint* worst = nullptr;
    for (const FixingPoint& p : layout.points) {
        if (worst == nullptr || p.utilisation > worst->utilisation) worst = &p;
    }
    if (worst != nullptr) {
        out.push_back({"fixing.worst",
                       "Worst fixing point",
                       "screws: ((F_p/R_p)^2 + (F_v/R_v)^2)^0.5; maker's data: F_p/R_p + F_v/R_v; the greater",
                       {{"point", std::to_string(worst->number)},
                        {"combination", worst->worst_combination},
                        {"pull, worst", newtons(worst->pull_n) + " of " + newtons(r.pull_n)},
                        {"shear, worst", newtons(worst->shear_n) + " of " + newtons(r.shear_n)}},
                       fixed(100.0 * worst->utilisation, 0) + " %",
                       "EN 1990 6.4.3.2 (6.10), A1.2(A) and (B) with the rule set's factors",
                       false});
    }
    return out;
}

}  // namespace wg::fixing
