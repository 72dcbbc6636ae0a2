// The way from the plate's actions to the use of the worst point.
#include <algorithm>
#include <cmath>

#include "core/fixing/show.h"
#include "core/site/vec.h"

namespace wg::fixing {
namespace {

/// "1858 N into the surface; along it 1958 N down; couple -195.8 N m along y": what is nothing is left out.
std::string action_text(const Action& a) {
    constexpr double nothing = 0.05;
    std::string out = newtons(std::abs(a.normal_n)) + (a.normal_n < 0.0 ? " off" : " into") + " the surface", along,
                couple;
    const auto add = [](std::string& to, const std::string& part) { to += (to.empty() ? "" : " and ") + part; };
    if (std::abs(a.along_n.x_m) > nothing)
        add(along, newtons(std::abs(a.along_n.x_m)) + (a.along_n.x_m < 0.0 ? " left" : " right"));
    if (std::abs(a.along_n.y_m) > nothing)
        add(along, newtons(std::abs(a.along_n.y_m)) + (a.along_n.y_m < 0.0 ? " down" : " up"));
    if (std::abs(a.couple_nm.x_m) > nothing) add(couple, fixed(a.couple_nm.x_m, 1) + " N m along x");
    if (std::abs(a.couple_nm.y_m) > nothing) add(couple, fixed(a.couple_nm.y_m, 1) + " N m along y");
    if (!along.empty()) out += "; along it " + along;
    if (!couple.empty()) out += "; couple " + couple;
    return out;
}

Working shares_working(const Layout& layout) {
    std::vector<std::pair<std::string, std::string>> shares;
    for (std::size_t i = 0; i < layout.points.size(); ++i) {
        shares.emplace_back("point " + std::to_string(layout.points[i].number),
                            fixed(100.0 * layout.shares.of_point[i], 2) + " %, at " +
                                fixed(layout.plate.points[i].x_m, 3) + " m, " + fixed(layout.plate.points[i].y_m, 3) +
                                " m on the plate");
    }
    shares.emplace_back("plate", fixed(layout.plate.length_m, 3) + " x " + fixed(layout.plate.width_m, 3) + " m");
    std::string rails;
    for (const double r : layout.shares.of_rail)
        rails += (rails.empty() ? "" : ", ") + fixed(100.0 * r, 2) + " %";
    return shown(
        {"fixing.shares", "Share of an even load by point", "beam on its points, rail by rail", std::move(shares),
         counted(layout.shares.rails, "rail", "rails"), "statics; three-moment equation", false},
        "rails take " + rails, "stiff plate on profiles of one stiffness");
}

void part_working(const Loads& l, const Layout& layout, std::size_t point, const Factors& f, const ActionRules& rules,
                  std::vector<Working>& out) {
    if (point >= l.parts.size() || f.wind == nullptr) return;
    const PartWind& p = l.parts[point];
    const PlatePart& part = layout.shares.parts[point];
    const bool up = f.wind->suction;
    const tables::Coefficient& c = up ? p.zone.uplift_from : p.zone.pressure_from;
    const double one = up ? c.suction_1 : c.pressure_1, ten = up ? c.suction_10 : c.pressure_10;
    const double cpe = up ? p.zone.uplift : p.zone.pressure, net = up ? p.net_uplift : p.net_pressure;
    const double force = l.wind.qp_pa * net * p.area_m2;
    std::vector<std::pair<std::string, std::string>> in{
        {"part", fixed(part.low.x_m, 3) + " to " + fixed(part.high.x_m, 3) + " m by " + fixed(part.low.y_m, 3) +
                     " to " + fixed(part.high.y_m, 3) + " m of the plate"},
        {"its area A", fixed(p.area_m2, 4) + " m2"},
        {"zone", up ? p.zone.zone_uplift : p.zone.zone_pressure},
        {"values", fixed(one, 3) + " for 1 m2, " + fixed(ten, 3) + " for 10 m2"},
        {"c_pe", fixed(cpe, 3)},
        {"c_net", fixed(net, 3)},
        {"q_p", fixed(l.wind.qp_pa, 1) + " Pa"}};
    for (std::size_t i = 0; i < l.parts.size() && i < layout.points.size(); ++i) {
        if (i == point) continue;
        const PartWind& o = l.parts[i];
        const double c_net = up ? o.net_uplift : o.net_pressure;
        in.emplace_back("part of point " + std::to_string(layout.points[i].number),
                        std::string("zone ") + (up ? o.zone.zone_uplift : o.zone.zone_pressure) + ", " +
                            fixed(o.area_m2, 4) + " m2, c_net " + fixed(c_net, 3) + ": " +
                            newtons(l.wind.qp_pa * c_net * o.area_m2));
    }
    out.push_back(
        shown({"fixing.part", "Wind on the worst point's own part of the plate",
               "c_pe = c_1 - (c_1 - c_10) log10 A; " + net_formula(rules) + "; F = c_net q_p A", std::move(in),
               newtons(force) + ", characteristic", "EN 1991-1-4 7.2.1 (1): loaded area of the fixing", true},
              newtons(force) + " = " + fixed(l.wind.qp_pa, 1) + " x " + fixed(net, 3) + " x " + fixed(p.area_m2, 4),
              "half-way lines to the next points; the worse of the parts and the whole plate counts"));
}

void force_workings(const Input& input, const Worked& w, std::vector<Working>& out) {
    const Combination& c = w.combined.combinations[w.worst_combination];
    const Factors& f = c.factors;
    const Loads& l = w.loads;
    std::vector<std::pair<std::string, std::string>> in{{"G", action_text(l.permanent)}};
    if (f.wind != nullptr) in.emplace_back(std::string("wind, ") + f.wind->name, action_text(f.wind->action));
    if (f.s > 0.0) in.emplace_back("snow", action_text(l.snow));
    std::string sum = fixed(f.g, 2) + " x " + newtons(l.permanent.normal_n);
    if (f.wind != nullptr) sum += " + " + fixed(f.w, 2) + " x " + newtons(f.wind->action.normal_n);
    if (f.s > 0.0) sum += " + " + fixed(f.s, 2) + " x " + newtons(l.snow.normal_n);
    out.push_back(shown({"fixing.combination", "Combination that governs the worst point", c.name, std::move(in),
                         action_text(c.action) + ", design", "EN 1990 6.4.3.2 (6.10), A1.2(A) and (B)", false},
                        sum + " into the surface",
                        "the plate's middle " + fixed(1000.0 * l.middle_off_m, 0) +
                            " mm off the surface: force along it times that height is the couple"));

    const PointForce& p = c.of_point[w.worst_point];
    const Spread spread = spread_of(input, l, w.layout);
    const std::size_t i = w.worst_point;
    double even = f.g * l.permanent.normal_n + f.s * l.snow.normal_n;
    double wind = 0.0;
    const bool by_parts = f.wind != nullptr && !f.wind->of_point.empty();
    if (f.wind != nullptr)
        wind = f.w * (by_parts ? f.wind->of_point[i] : f.wind->action.normal_n * w.layout.shares.of_point[i]);
    even *= w.layout.shares.of_point[i];
    const double couple = p.normal_n - even - wind;
    const double along = site::norm(c.action.along_n);
    out.push_back(shown(
        {"fixing.point",
         "Force on the worst point",
         "share of the load square to the surface and of the wind, and its part of the couple",
         {{"point", std::to_string(w.layout.points[i].number)},
          {"share", fixed(100.0 * w.layout.shares.of_point[i], 2) + " %"},
          {"weight and snow", newtons(even)},
          {by_parts ? "wind, by parts" : "wind, even", newtons(wind)},
          {"couple", newtons(couple) + ": " + fixed(spread.couple_x[i], 4) + " N and " + fixed(spread.couple_y[i], 4) +
                         " N for each N m along x and y"},
          {"share of the force along the surface", fixed(100.0 * spread.shear[i], 2) + " %"},
          {"added where feet have no depth", newtons(p.extra_n)}},
         newtons(p.pull_n()) + " pull, " + newtons(p.push_n()) + " push, " + newtons(p.along_n) + " shear, design",
         "statics; docs/handbook/fixings.md",
         false},
        newtons(p.normal_n) + " = " + newtons(even) + " + " + newtons(wind) + " + " + newtons(couple) +
            " into the surface; shear " + fixed(100.0 * spread.shear[i], 2) + " % of " + newtons(along),
        "couple by the points' distance from their middle, as springs of one stiffness"));
}

}  // namespace

std::string net_formula(const ActionRules& rules) {
    switch (rules.net_pressure) {
        case NetPressureRule::surface_share: break;
        case NetPressureRule::two_faces: return "c_net = (1 + " + fixed(rules.hidden_face_share, 2) + ") c_pe";
        case NetPressureRule::coefficients:
            return "c_net lifting " + fixed(rules.net_uplift_middle, 2) + ", in edge zones " +
                   fixed(rules.net_uplift_edge, 2) + "; pressing " + fixed(rules.net_pressure_all, 2);
    }
    return "c_net = " + fixed(rules.standing_off_net_factor, 2) + " c_pe";
}

void worst_workings(const Input& input, const Worked& w, std::vector<Working>& out) {
    out.push_back(shares_working(w.layout));
    if (w.layout.points.empty() || w.combined.combinations.empty()) return;
    const FixingPoint& worst = w.layout.points[w.worst_point];
    const Combination& under = w.combined.combinations[w.worst_combination];
    part_working(w.loads, w.layout, w.worst_point, under.factors, input.rules, out);
    force_workings(input, w, out);
    hold_workings(input, w, out);
    const PointForce& f = under.of_point[w.worst_point];
    std::vector<std::pair<std::string, std::string>> in{{"point", std::to_string(worst.number)},
                                                        {"combination", under.name}};
    for (std::size_t i = 0; i < w.resistance.count; ++i) {
        const PartHold& part = w.resistance.parts[i];
        std::string how = newtons(f.pull_n()) + " / " + newtons(part.pull_n);
        if (part.together != Together::pull_only) how += " and " + newtons(f.along_n) + " / " + newtons(part.shear_n);
        in.emplace_back(text_of(part.part),
                        how + ": " + fixed(100.0 * use_of(part, f.pull_n(), f.along_n).share, 1) + " %");
    }
    if (w.ballast.holds)
        in.emplace_back(text_of(w.ballast.worst().by), fixed(100.0 * w.ballast.worst().share, 1) + " %");
    in.emplace_back("governs", text_of(worst.held_by));
    out.push_back(
        {"fixing.worst", "Worst fixing point", rules_of(w.resistance, w.ballast.holds), std::move(in),
         fixed(100.0 * worst.utilisation, 0) + " %",
         "EN 1990 6.4.3.2 (6.10), A1.2(A) and (B) with the rule set's factors; EN 1995-1-1 8.3.3; EN 1993-1-8 "
         "table 3.4",
         false});
}

}  // namespace wg::fixing
