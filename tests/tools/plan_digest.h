#pragma once
// A plan as text that a person can read through line by line, for the golden plans.

#include <cstdio>
#include <string>
#include <vector>

#include "core/job/words.h"
#include "core/plan/plan.h"
#include "core/quantity/text.h"

namespace wg::test {

inline std::string digest_of(const Working& w) {
    std::string line = "  " + w.key + " | " + w.title + " | " + w.formula + " |";
    for (const auto& [name, value] : w.inputs)
        line += ' ' + name + " = " + value + ';';
    return line + " -> " + w.result + " [" + w.source + (w.assumed ? "; assumed]" : "]") + '\n';
}

inline std::string digest_of(const Finding& f) {
    return "  " + std::string(word(f.severity)) + " (" + word(f.stage) + ") " + f.code + " [" + f.place +
           "]: " + f.message + (f.remedy.empty() ? "" : " => " + f.remedy) + " {" + f.rule + "; " + f.source + "}\n";
}

inline std::string digest_of(const plan::PlacementPlan& p) {
    const fixing::Outcome& f = p.fixing;
    std::string out = p.label + " on " + p.surface_label + ": tilt " + fixed(p.placed.tilt_deg, 1) + " deg, bearing " +
                      fixed(p.placed.azimuth_deg, 1) + " deg, light " + fixed(p.plane_kwh_m2, 0) + " kWh/m2 of " +
                      fixed(p.plane_unshaded_kwh_m2, 0) + "\n  q_p " + fixed(f.wind.qp_pa, 0) + " Pa, zone " + f.zone +
                      ", uplift " + fixed(f.cpe_uplift, 2) + ", pressure " + fixed(f.cpe_pressure, 2) + ", snow " +
                      fixed(f.snow_n_m2, 0) + " N/m2, worst point " + std::to_string(f.worst_point) + " at " +
                      fixed(100.0 * f.worst_utilisation, 1) + " %\n";
    for (const fixing::FixingPoint& point : f.points) {
        out += "  point " + std::to_string(point.number) + " at " + fixed(point.position.x_m, 3) + ", " +
               fixed(point.position.y_m, 3) + (point.on_rafter ? " (rafter)" : "") + ": pull " +
               fixed(point.pull_n, 0) + " of " + fixed(point.resistance_pull_n, 0) + " N, push " +
               fixed(point.push_n, 0) + " N, shear " + fixed(point.shear_n, 0) + " of " +
               fixed(point.resistance_shear_n, 0) + " N, use " + fixed(100.0 * point.utilisation, 1) + " %, " +
               point.worst_combination + '\n';
    }
    return out;
}

inline std::string digest_of(const plan::Plan& plan) {
    std::string out = plan.title + "\nchoice: " + plan.choice_label + "\nset: " + plan.collector.name + ", " +
                      plan.block.name + ", " + plan.cylinder.name + ", " + plan.fixing_method.label +
                      "\nrules: " + plan.rule_set_label + "\nweather: " + plan.weather_source + "\n\nFIGURES\n";
    const plan::Figures& f = plan.figures;
    out += "  heat drawn " + fixed(f.heat_kwh.mid, 0) + " kWh, electricity " + fixed(f.electricity_kwh.mid, 0) +
           " kWh, seasonal factor " + fixed(f.seasonal_factor.mid, 2) + "\n  run " + fixed(f.run_m, 2) + " m, charge " +
           fixed(f.charge_kg, 3) + " kg, worst point " + std::to_string(f.worst_point) + " at " +
           fixed(100.0 * f.worst_utilisation, 1) + " %\n  standstill " + fixed(plan.standstill.plate_c, 1) +
           " deg C, " + fixed(plan.standstill.pressure_bar_abs, 1) + " bar absolute\n\nFINDINGS\n";
    for (const Finding& finding : plan.findings)
        out += digest_of(finding);
    out += "\nCOLLECTORS\n";
    for (const plan::PlacementPlan& p : plan.placements)
        out += digest_of(p);
    const pipework::Run& run = plan.run;
    out += "\nRUN\n";
    for (const pipework::Leg& leg : run.legs) {
        out += "  " + fixed(leg.from.x_m, 2) + ", " + fixed(leg.from.y_m, 2) + ", " + fixed(leg.from.z_m, 2) + " to " +
               fixed(leg.to.x_m, 2) + ", " + fixed(leg.to.y_m, 2) + ", " + fixed(leg.to.z_m, 2) + ": " +
               fixed(leg.length_m, 2) + " m, ends at " + text_of(leg.ends_at) + '\n';
    }
    out += "\nSERVICE DUE\n";
    for (const plan::ServiceDue& due : plan.service)
        out += "  every " + std::to_string(due.every_months) + " months: " + due.text + " (" + due.why + ")\n";
    out += "\nPARTS\n";
    for (const parts::Line& line : plan.parts.lines)
        out += "  " + fixed(line.to_buy, 2) + ' ' + line.unit + ' ' + line.text + ": " + line.why + '\n';
    out += "\nWORKINGS\n";
    for (const Working& w : plan.workings)
        out += digest_of(w);
    return out;
}

}  // namespace wg::test
