// Pipe sizes by loading units, pressure at the highest tap, hot water's way to the taps, cold inflow by month.
#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/parts.h"
#include "core/services/pipes.h"

namespace wg::services {
namespace {

constexpr double leg_wall_mm = 1.0;   ///< copper, EN 1057
constexpr double leg_flow_l_s = 0.1;  ///< washbasin, EN 806-3 table 2

struct Units {
    double all = 0.0;
    double largest = 0.0;
    void add(double units, int count) {
        all += units * count;
        largest = std::max(largest, units);
    }
};

std::string pipe_words(double outside_mm) {
    return outside_mm > 0.0 ? fixed(outside_mm, outside_mm == std::floor(outside_mm) ? 0 : 1) + " mm copper"
                            : std::string("beyond the table");
}

void sizes(const Input& input, const SpotFindings& findings, Outcome& out) {
    Water& w = out.water;
    Units hot, cold;
    for (const FixtureCount& fixture : input.water.fixtures) {
        const double units = loading_units(fixture.kind);
        cold.add(units, fixture.count);
        if (takes_hot(fixture.kind)) hot.add(units, fixture.count);
    }
    w.hot_units = hot.all;
    w.cold_units = cold.all;
    if (!(cold.all > 0.0)) return;
    const double length_m = input.water.farthest_pipe_m;
    const CopperPipe hot_pipe = copper_for(hot.all, hot.largest, length_m);
    const CopperPipe cold_pipe = copper_for(cold.all, cold.largest, length_m);
    w.hot_pipe_mm = hot_pipe.outside_mm;
    w.cold_pipe_mm = cold_pipe.outside_mm;
    if (!(cold_pipe.outside_mm > 0.0) || (hot.all > 0.0 && !(hot_pipe.outside_mm > 0.0)))
        findings.add(Severity::caution, Stage::visit, "water.pipe-beyond-table",
                     fixed(cold.all, 0) + " loading units are more than the simplified method sizes",
                     "Have the pipes sized in full", "Simplified sizing up to 2100 loading units",
                     "EN 806-3, simplified method");
    w.design_flow_l_s = design_flow_l_s(hot.all, hot.largest);
    w.hot_speed_m_s = water_speed_m_s(w.design_flow_l_s, hot_pipe.bore_mm);
    w.hot_loss_bar = friction_loss_bar(w.design_flow_l_s, hot_pipe.bore_mm, (1.0 + fittings_share) * length_m,
                                       input.demand.set_point_c);
    out.workings.push_back(
        {"services.pipes",
         "Drinking-water pipes",
         "loading units added; least pipe of the table that carries them",
         {{"hot", fixed(hot.all, 0) + " units, largest " + fixed(hot.largest, 0) + ": " + pipe_words(w.hot_pipe_mm)},
          {"cold, every draw-off once",
           fixed(cold.all, 0) + " units, largest " + fixed(cold.largest, 0) + ": " + pipe_words(w.cold_pipe_mm)},
          {"length", fixed(length_m, 1) + " m, counts for 12 and 15 mm"},
          {"holds for", "houses of usual size, copper EN 1057; single branches are sized each with its own units"},
          plumbers_word},
         "hot " + pipe_words(w.hot_pipe_mm) + ", cold " + pipe_words(w.cold_pipe_mm),
         "EN 806-3 table 2 and table for copper, the latter from memory",
         false});
}

void taps(const Input& input, const SpotFindings& findings, Outcome& out) {
    Water& w = out.water;
    const bool known = input.water.static_pressure_bar || input.water.reducing_valve;
    if (!known) return;
    const double cold_c = input.demand.cold_mean_c;
    const double up_m = input.water.highest_tap_m - input.spot.position.z_m;
    w.tap_static_bar = w.pressure_at_cylinder_bar - head_bar(up_m, cold_c);
    if (*w.tap_static_bar < 0.0)
        findings.add(Severity::stop, Stage::visit, "water.no-pressure-at-tap",
                     "The cold water does not reach the highest tap, " + fixed(up_m, 1) +
                         " m over the cylinder, with " + fixed(w.pressure_at_cylinder_bar, 1) + " bar at the cylinder",
                     "Set the reducing valve higher, or plan a booster", "Water at every tap", "EN 806-3");
    const bool flows = w.design_flow_l_s > 0.0 && w.hot_pipe_mm > 0.0;
    if (flows) {
        w.tap_flowing_bar = *w.tap_static_bar - w.hot_loss_bar;
        if (*w.tap_static_bar >= 0.0 && *w.tap_flowing_bar < tap_least_bar)
            findings.add(Severity::caution, Stage::visit, "water.low-pressure-at-tap",
                         "At the highest tap " + fixed(std::max(0.0, *w.tap_flowing_bar), 1) +
                             " bar are left while hot water flows, " + fixed(tap_least_bar, 1) + " bar are wanted",
                         "Set the reducing valve higher, take a larger hot pipe, or plan a booster",
                         "Flowing pressure of " + fixed(tap_least_bar, 1) + " bar at the tap", "EN 806-3");
    }
    Working work{"services.tap-pressure",
                 "Pressure at the highest tap",
                 "p = p_cylinder - rho g h - f L/D rho v^2/2",
                 {{"at the cylinder", fixed(w.pressure_at_cylinder_bar, 2) + " bar"},
                  {"h", fixed(up_m, 1) + " m"},
                  {"nobody drawing", fixed(*w.tap_static_bar, 2) + " bar"}},
                 "",
                 "EN 806-3 (flow by figure B.1, public transcription); Churchill 1977",
                 false};
    if (flows) {
        work.inputs.emplace_back("flow", fixed(w.design_flow_l_s, 2) + " l/s, the hot pipe's likely most");
        work.inputs.emplace_back("L", fixed(input.water.farthest_pipe_m, 1) + " m and " +
                                          fixed(100.0 * fittings_share, 0) + " % for bends and fittings (practice)");
        work.inputs.emplace_back("speed", fixed(w.hot_speed_m_s, 2) + " m/s in " + pipe_words(w.hot_pipe_mm));
        work.inputs.emplace_back("loss", fixed(w.hot_loss_bar, 2) + " bar");
    }
    work.inputs.emplace_back("holds for",
                             "without meter, filter, mixing valve and the tap itself; the whole flow over "
                             "the whole way, which is on the safe side");
    work.inputs.push_back(plumbers_word);
    work.result = flows ? fixed(*w.tap_flowing_bar, 2) + " bar flowing, " + fixed(tap_least_bar, 1) + " bar wanted"
                        : fixed(*w.tap_static_bar, 2) + " bar, nobody drawing";
    out.workings.push_back(std::move(work));
}

void legs(const Input& input, const SpotFindings& findings, Outcome& out) {
    if (input.water.dead_legs.empty()) return;
    Working work{"services.dead-legs",
                 "Hot water's way to the taps",
                 "V = pi/4 d^2 L; until hot V (1 + C_tube/C_water); t over 0.1 l/s",
                 {},
                 "",
                 "DVGW W 551 (3 l) and EN 806-2 (30 s), from memory; washbasin flow of EN 806-3 table 2",
                 false};
    double most_l = 0.0;
    for (const DeadLeg& leg : input.water.dead_legs) {
        LegToTap tap{leg.label, tube_litres(leg.length_m, leg.bore_mm),
                     litres_until_hot(leg.length_m, leg.bore_mm, leg_wall_mm), 0.0, leg.off_the_loop};
        tap.seconds_to_hot = tap.litres_to_hot / leg_flow_l_s;
        most_l = std::max(most_l, tap.litres);
        const std::string name = leg.label.empty() ? std::string("a tap") : leg.label;
        work.inputs.emplace_back(name, fixed(leg.length_m, 1) + " m of " + fixed(leg.bore_mm, 0) + " mm bore: " +
                                           fixed(tap.litres, 2) + " l stand, hot after " + fixed(tap.litres_to_hot, 2) +
                                           " l or " + fixed(tap.seconds_to_hot, 0) + " s");
        const std::string stands = "The hot pipe to " + name + " holds " + fixed(tap.litres, 1) + " l";
        if (tap.litres > dead_leg_most_l)
            findings.add(Severity::caution, Stage::visit, "water.dead-leg",
                         stands + ", more than " + fixed(dead_leg_most_l, 0) + " l",
                         leg.off_the_loop ? "Bring the recirculation loop nearer, or take a smaller bore"
                                          : "Take a recirculation loop or trace heating, a smaller bore, or a spot "
                                            "nearer to the tap",
                         "Up to " + fixed(dead_leg_most_l, 0) + " l between cylinder or loop and tap",
                         "DVGW W 551, from memory");
        else if (tap.seconds_to_hot > hot_within_s)
            findings.add(Severity::note, Stage::visit, "water.hot-late",
                         "At " + name + " hot water comes after " + fixed(tap.seconds_to_hot, 0) + " s and " +
                             fixed(tap.litres_to_hot, 1) + " l at a washbasin's flow",
                         "A smaller bore or a shorter way brings it sooner",
                         "Hot within " + fixed(hot_within_s, 0) + " s", "EN 806-2, from memory");
        if (leg.off_the_loop && !input.demand.recirculation.present && !input.spot.recirculation.present)
            findings.add(Severity::caution, Stage::visit, "water.leg-without-loop",
                         "The hot pipe to " + name + " is said to leave a recirculation loop; the house has none",
                         "Tell of the loop under Demand, or of the whole way from the cylinder",
                         "A leg starts where water is kept hot", "survey");
        out.water.legs.push_back(std::move(tap));
    }
    work.inputs.emplace_back("holds for", "copper with 1 mm of wall, cold before; nothing lost outwards");
    work.result =
        "at most " + fixed(most_l, 1) + " l stand in one leg, up to " + fixed(dead_leg_most_l, 0) + " l wanted";
    out.workings.push_back(std::move(work));
}

void cold_by_month(const Input& input, Outcome& out) {
    constexpr const char* names[] = {"January", "February", "March",     "April",   "May",      "June",
                                     "July",    "August",   "September", "October", "November", "December"};
    const auto& months = input.cold_by_month_c;
    if (std::all_of(months.begin(), months.end(), [](double c) { return c == 0.0; })) return;
    Working work{"services.cold-inflow",
                 "Cold water by month",
                 "T = T_mean + swing cos(2 pi (day - warmest)/365)",
                 {{"mean", fixed(input.demand.cold_mean_c, 1) + " deg C"},
                  {"swing", fixed(input.demand.cold_swing_k, 1) + " K"}},
                 "",
                 "docs/handbook/season.md",
                 false};
    for (std::size_t m = 0; m < months.size(); ++m)
        work.inputs.emplace_back(names[m], fixed(months[m], 1) + " deg C");
    const auto [coldest, warmest] = std::minmax_element(months.begin(), months.end());
    work.result = fixed(*coldest, 1) + " to " + fixed(*warmest, 1) + " deg C";
    out.workings.push_back(std::move(work));
}

}  // namespace

void provide_hot_pipes(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    sizes(input, findings, out);
    taps(input, findings, out);
    legs(input, findings, out);
    cold_by_month(input, out);
}

}  // namespace wg::services
