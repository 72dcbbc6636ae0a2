// What the parts of a fixing hold, ballast and profiles, for 'show working'.
#include <algorithm>
#include <cmath>

#include "core/fixing/screws.h"
#include "core/fixing/show.h"
#include "core/quantity/constants.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

void part_holds(const Input& input, const Worked& w, std::vector<Working>& out) {
    const Resistance& r = w.resistance;
    const FixingMethod& m = input.method;
    const ActionRules& rules = input.rules;
    const std::string design = fixed(rules.k_mod, 2) + " x " + std::to_string(m.screws_per_point) + "^0.9 x ";
    if (const PartHold* part = r.part(HeldBy::screws)) {
        out.push_back(shown(
            {"fixing.screws",
             "Hold of one point in timber",
             "F_ax = 0.52 d^-0.5 l^-0.1 rho^0.8 d l k_d; F_v = 1.15 (2 M_y f_h d_ef)^0.5 or 0.4 f_h l d_ef; R = "
             "k_mod n^0.9 F / gamma_M",
             {{"screws", std::to_string(m.screws_per_point) + " of " + fixed(m.screw_diameter_mm, 1) + " mm, grip " +
                             fixed(m.screw_grip_mm, 0) + " mm"},
              {"rho_k", fixed(rules.timber_density_kg_m3, 0) + " kg/m3"},
              {"one screw, pull", newtons(r.one_screw_pull_k_n)},
              {"one screw, shear", newtons(r.one_screw_shear_k_n)},
              {"d_ef, f_h, M_y", fixed(1.1 * root_share * m.screw_diameter_mm, 2) + " mm, " +
                                     fixed(screw_embedment_n_mm2(m.screw_diameter_mm, rules.timber_density_kg_m3), 2) +
                                     " N/mm2, " + fixed(screw_yield_nmm(m.screw_diameter_mm), 0) + " N mm"},
              {"screw steel", fixed(screw_steel_n_mm2, 0) + " N/mm2 assumed"},
              {"k_mod", fixed(rules.k_mod, 2)},
              {"gamma_M", fixed(rules.gamma_timber, 2)}},
             newtons(part->pull_n) + " pull, " + newtons(part->shear_n) + " shear, design",
             "EN 1995-1-1:2004+A1, 8.7.2 and 8.2.3 (simplified); from memory",
             true},
            newtons(part->pull_n) + " = " + design + newtons(r.one_screw_pull_k_n) + " / " +
                fixed(rules.gamma_timber, 2) + "; " + newtons(part->shear_n) + " = " + design +
                newtons(r.one_screw_shear_k_n) + " / " + fixed(rules.gamma_timber, 2),
            "screws of 6 to 12 mm square to the grain"));
    }
    if (const PartHold* part = r.part(HeldBy::head)) {
        out.push_back(shown(
            {"fixing.heads",
             "Screw heads drawn through",
             "F = f_head d_h^2 (rho / 350)^0.8; R = k_mod n^0.9 F / gamma_M",
             {{"d_h", fixed(m.head_diameter_mm, 1) + " mm"},
              {"f_head", fixed(m.head_strength_n_mm2, 1) + " N/mm2"},
              {"one head", newtons(r.one_head_k_n)}},
             newtons(part->pull_n) + " pull, design",
             "EN 1995-1-1:2004+A1, 8.7.2 (8.40b); from memory",
             false},
            newtons(part->pull_n) + " = " + design + newtons(r.one_head_k_n) + " / " + fixed(rules.gamma_timber, 2),
            "heads on timber; a steel bracket needs none"));
    }
    if (const PartHold* part = r.part(HeldBy::bracket)) {
        out.push_back({"fixing.maker",
                       "Hold of one point by the method's data",
                       "as given",
                       {{"method", m.label}},
                       newtons(part->pull_n) + " pull, " + newtons(part->shear_n) + " shear, design",
                       "equipment data",
                       false});
    }
    const auto bolt = [&](HeldBy which, const char* key, const char* title, double size, double strength) {
        const PartHold* part = r.part(which);
        if (part == nullptr) return;
        out.push_back(shown({key,
                             title,
                             "F_t,Rd = 0.9 f_ub A_s / gamma_M2; F_v,Rd = 0.5 f_ub A_s / gamma_M2",
                             {{"bolt", "M" + fixed(size, 0)},
                              {"A_s", fixed(stress_area_mm2(size), 1) + " mm2"},
                              {"f_ub", fixed(strength, 0) + " N/mm2"},
                              {"gamma_M2", fixed(rules.gamma_bolt, 2)}},
                             newtons(part->pull_n) + " tension, " + newtons(part->shear_n) + " shear, design",
                             "EN 1993-1-8 table 3.4; ISO 898-1",
                             false},
                            newtons(part->pull_n) + " = 0.9 x " + fixed(strength, 0) + " x " +
                                fixed(stress_area_mm2(size), 1) + " / " + fixed(rules.gamma_bolt, 2),
                            "thread in the shear plane; bending of a bolt that stands off is in the method's data"));
    };
    bolt(HeldBy::bolt, "fixing.bolt", "Bolt of the fixing", m.bolt_mm, m.bolt_n_mm2);
    bolt(HeldBy::profile_bolt, "fixing.profile-bolt", "Bolt at the profile", input.collector.profile_bolt_mm,
         input.collector.profile_bolt_n_mm2);
}

void ballast_working(const Input& input, const Worked& w, std::vector<Working>& out) {
    const BallastCheck& b = w.ballast;
    if (!b.holds) return;
    const double light = input.rules.gamma_permanent_favourable, q = input.rules.gamma_variable;
    const double holds_n = light * b.mass_kg * gravity_m_s2;
    const auto up_n = [q](const WindCase* c) { return c != nullptr ? -q * c->action.normal_n : 0.0; };
    const auto needs = [](double share, double kg) {
        return fixed(100.0 * share, 0) + " %, needs " + fixed(std::max(0.0, kg), 1) + " kg a point";
    };
    const double slide_up = up_n(b.slides_under);
    const double slide_n = b.slides_under != nullptr ? q * site::norm(b.slides_under->action.along_n) : 0.0;
    std::vector<std::pair<std::string, std::string>> in{
        {"ballast", fixed(input.method.ballast_kg, 0) + " kg a point"},
        {"W", fixed(b.mass_kg, 1) + " kg, " + newtons(b.mass_kg * gravity_m_s2)},
        {"mu", fixed(input.method.friction, 2)},
        {"feet apart", metres_of(b.depth_m) + " front to back, " + metres_of(b.width_m) + " side to side"}};
    if (b.slides_under != nullptr) {
        in.emplace_back("slides most, wind " + std::string(b.slides_under->name),
                        "U " + newtons(slide_up) + ", H " + newtons(slide_n) + ", design");
    }
    in.emplace_back("sliding", needs(b.slides, b.slides_kg));
    if (b.tips_under != nullptr) {
        const Point2 couple = b.tips_under->action.couple_nm;
        in.emplace_back("tips most, wind " + std::string(b.tips_under->name),
                        "U " + newtons(up_n(b.tips_under)) + ", couple " + fixed(q * std::abs(couple.x_m), 0) +
                            " N m along x, " + fixed(q * std::abs(couple.y_m), 0) + " N m along y, design");
    }
    in.emplace_back("tipping over", needs(b.tips, b.tips_kg));
    in.emplace_back("lifting", needs(b.lifts, b.lifts_kg));
    in.emplace_back("load on the surface", fixed(b.load_kn_m2, 2) + " kN/m2 on " + fixed(b.area_m2, 2) + " m2");
    out.push_back(shown({"fixing.ballast", "Ballast",
                         "sliding H / (mu (0.9 W - U)); tipping (U b/2 + couple) / (0.9 W b/2); lifting U / (0.9 W)",
                         std::move(in), fixed(100.0 * b.worst().share, 0) + " % (" + text_of(b.worst().by) + ")",
                         "EN 1990 table A1.2(A); friction by the method's data", false},
                        "holding " + newtons(holds_n) + " = " + fixed(light, 2) + " x " +
                            newtons(b.mass_kg * gravity_m_s2) + "; sliding " + newtons(slide_n) + " / (" +
                            fixed(input.method.friction, 2) + " x (" + newtons(holds_n) + " - " + newtons(slide_up) +
                            "))",
                        "level surfaces up to 5 deg, ballast alike on all feet, covering dry and free of ice"));
}

void profile_workings(const Input& input, const Worked& w, std::vector<Working>& out) {
    const Shares& shares = w.layout.shares;
    if (w.bending > 0.0) {
        std::size_t rail = 0;
        double greatest = -1.0, load = 0.0;
        for (const Factors& f : combinations_of(w.loads, input.rules)) {
            for (std::size_t k = 0; k < shares.of_rail.size(); ++k) {
                const double q = std::abs(rail_load_n_m(w.loads, w.layout, f, k));
                if (q * shares.rail_moment_m2[k] <= greatest) continue;
                greatest = q * shares.rail_moment_m2[k];
                load = q;
                rail = k;
            }
        }
        const RailLine line = rail_line(w.layout.plate, shares, rail);
        const RailBend bend = bend_of(line.supports_m, line.from_m, line.to_m);
        out.push_back(
            shown({"fixing.bending",
                   "Bending of the profiles",
                   "M = q m, m the greatest moment under 1 N/m on the profile's points",
                   {{"profile", std::to_string(rail + 1)},
                    {"q", fixed(load, 1) + " N/m, design"},
                    {"m", fixed(bend.moment_nm, 4) + " N m, " + (bend.over_support ? "over a point" : "in a span") +
                              " " + fixed(bend.moment_at_m, 2) + " m from its start"},
                    {"M_Rd", fixed(input.collector.profile_moment_nm, 0) + " N m"}},
                   fixed(greatest, 1) + " N m, " + fixed(100.0 * w.bending, 0) + " %",
                   "statics; three-moment equation; equipment data",
                   false},
                  fixed(load, 1) + " x " + fixed(bend.moment_nm, 4),
                  "the greatest pressure on any part taken all along the profile"));
    }
    if (w.sag.use > 0.0) {
        out.push_back(shown({"fixing.sag",
                             "Deflection of the profiles",
                             "by double integration of M / (E I); an end that overhangs counts twice its length",
                             {{"profile", std::to_string(w.sag.rail + 1)},
                              {"q", fixed(w.sag.load_n_m, 1) + " N/m, characteristic"},
                              {"E I", fixed(input.collector.profile_stiffness_nm2, 0) + " N m2"},
                              {w.sag.cantilever ? "twice the overhang" : "span", metres_of(w.sag.span_m)},
                              {"allowed", "span / " + fixed(input.rules.deflection_span_share, 0)}},
                             fixed(1000.0 * w.sag.sag_m, 2) + " mm, " + fixed(100.0 * w.sag.use, 0) + " %",
                             "statics; limit by the rule set",
                             false},
                            fixed(1000.0 * w.sag.sag_m, 2) + " mm of " +
                                fixed(1000.0 * w.sag.span_m / input.rules.deflection_span_share, 2) + " mm",
                            "elastic profiles of one stiffness"));
    }
}

}  // namespace

void hold_workings(const Input& input, const Worked& w, std::vector<Working>& out) {
    part_holds(input, w, out);
    ballast_working(input, w, out);
    profile_workings(input, w, out);
}

std::string rules_of(const Resistance& r, bool ballast) {
    std::string out;
    for (std::size_t i = 0; i < r.count; ++i) {
        const PartHold& part = r.parts[i];
        const char* rule = "F_p/R_p";
        if (part.together == Together::squares) rule = "((F_p/R_p)^2 + (F_v/R_v)^2)^0.5";
        if (part.together == Together::sum) rule = "F_p/R_p + F_v/R_v";
        if (part.together == Together::bolt) rule = "F_v/R_v + F_p/(1.4 R_p), at least F_p/R_p";
        out += (out.empty() ? "" : "; ") + std::string(text_of(part.part)) + ": " + rule;
    }
    if (ballast) out += std::string(out.empty() ? "" : "; ") + "ballast: the frame as one body";
    return out.empty() ? "no resistance known" : out + "; the greatest counts";
}

}  // namespace wg::fixing
