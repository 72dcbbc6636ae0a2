#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/parts.h"
#include "core/services/pipes.h"
#include "core/services/sizing.h"

namespace wg::services {
namespace {

std::string litres(double v) {
    return fixed(v, 1) + " l";
}
std::string bar(double v) {
    return fixed(v, 1) + " bar";
}

/// Gauge pressure where the supply enters, behind its reducing valve when there is one or one is planned.
double entry_pressure_bar(const Input& input, bool reduced) {
    const WaterSupply& w = input.water;
    if (!reduced) return w.static_pressure_bar.value_or(w.reduced_to_bar);
    return std::min(w.reduced_to_bar, w.static_pressure_bar.value_or(w.reduced_to_bar));
}

void pressures(const Input& input, const SpotFindings& findings, Outcome& out) {
    Water& w = out.water;
    const WaterSupply& supply = input.water;
    const double cold_c = input.demand.cold_mean_c;
    const double rise_bar = head_bar(input.spot.position.z_m - supply.entry_height_m, cold_c);
    w.safety_valve_bar = safety_valve_bar(input.cylinder.max_pressure_bar);
    const double limit_bar = reducing_share * w.safety_valve_bar;
    const bool told = supply.static_pressure_bar.has_value();
    const bool too_high =
        told && (*supply.static_pressure_bar - rise_bar > limit_bar || *supply.static_pressure_bar > tap_most_bar);
    w.reducing_valve = !supply.reducing_valve && (!told || too_high);
    const bool reduced = supply.reducing_valve || w.reducing_valve;
    const double entry_bar = entry_pressure_bar(input, reduced);
    w.pressure_at_cylinder_bar = std::max(0.0, entry_bar - rise_bar);
    const std::string share = bar(limit_bar) + ", 0.8 of the safety valve's " + bar(w.safety_valve_bar);
    const std::string limit = bar(limit_bar) + " at the cylinder (0.8 of the safety valve)";
    const std::string tap_limit = bar(tap_most_bar) + " at the taps";
    if (w.reducing_valve && too_high) {
        const double there_bar = *supply.static_pressure_bar - rise_bar;
        findings.add(Severity::note, Stage::visit, "water.reducing-valve",
                     (there_bar > limit_bar
                          ? "The supply would leave " + bar(there_bar) + " at the cylinder, more than " + share
                          : "The supply stands at " + bar(*supply.static_pressure_bar) + ", more than " + tap_limit) +
                         "; a reducing valve is in the list",
                     "Set it to " + bar(supply.reduced_to_bar), "Static pressure up to " + limit + " and " + tap_limit,
                     "EN 806-2; DIN 1988-200, from memory");
    }
    if (w.reducing_valve && !told)
        findings.add(Severity::note, Stage::visit, "water.reducing-valve-unsure",
                     "The static pressure is not told; a reducing valve set to " + bar(supply.reduced_to_bar) +
                         " is in the list until it is",
                     "Measure the pressure at a tap with nobody drawing and fill it in on Visit",
                     "Static pressure up to " + limit + " and " + tap_limit, "EN 806-2; DIN 1988-200, from memory");
    if (reduced && entry_bar - rise_bar > limit_bar && w.safety_valve_bar > 0.0)
        findings.add(Severity::caution, Stage::visit, "water.reducing-setting",
                     "The reducing valve lets " + bar(w.pressure_at_cylinder_bar) +
                         " stand at the cylinder; the safety valve of " + bar(w.safety_valve_bar) + " asks for " +
                         bar(limit_bar) + " at most",
                     "Set it to " + bar(std::max(0.0, limit_bar + rise_bar)) + " or less",
                     "Static pressure up to 0.8 of the safety valve's setting", "EN 806-2; DIN 1988-200, from memory");
    out.workings.push_back(
        {"services.pressure",
         "Pressure of the cold water",
         "p = p_entry - rho g (z - z_entry)",
         {{"where it enters", told ? bar(*supply.static_pressure_bar) : std::string("not told")},
          {"reducing valve", supply.reducing_valve ? "there, " + bar(supply.reduced_to_bar)
                             : w.reducing_valve    ? "planned, " + bar(supply.reduced_to_bar)
                                                   : std::string("none needed")},
          {"cylinder over the entry", fixed(input.spot.position.z_m - supply.entry_height_m, 1) + " m"},
          {"safety valve", bar(w.safety_valve_bar) + ", cylinder made for " + bar(input.cylinder.max_pressure_bar)},
          {"holds for", "nobody drawing"},
          plumbers_word},
         bar(w.pressure_at_cylinder_bar) + " at the cylinder, up to " + bar(limit_bar) + " wanted",
         "EN 806-2; 0.8 of the safety valve by DIN 1988-200, from memory",
         !told && !supply.reducing_valve});
}

void expansion(const Input& input, const SpotFindings& findings, Outcome& out) {
    Water& w = out.water;
    const double hot_c = std::max(input.demand.set_point_c, hottest_store_c);
    w.expansion_l = expansion_l(input.cylinder.volume_l, input.demand.cold_mean_c, hot_c);
    w.vessel_precharge_bar = w.pressure_at_cylinder_bar;
    const double end_bar = valve_margin * w.safety_valve_bar;
    const double least_l = vessel_l(w.expansion_l, w.vessel_precharge_bar, end_bar);
    if (least_l <= 0.0) {
        findings.add(Severity::stop, Stage::visit, "water.pressure",
                     "The cylinder takes " + bar(input.cylinder.max_pressure_bar) + "; with " +
                         bar(w.pressure_at_cylinder_bar) + " of cold water nothing is left for it to expand into",
                     "Set the reducing valve lower and have the vessel sized for it, or choose another cylinder",
                     "Expansion below the safety valve's setting", "EN 806-2");
    }
    w.vessel_l = least_l > 0.0 ? vessel_size_l(least_l) : 0.0;
    out.workings.push_back(
        {"services.expansion",
         "Expansion vessel on the cold inlet",
         "V = V_e (p_1 + 1)/(p_1 - p_0)",
         {{"cylinder", fixed(input.cylinder.volume_l, 0) + " l"},
          {"warmed from", fixed(input.demand.cold_mean_c, 1) + " to " + fixed(hot_c, 0) + " deg C"},
          {"V_e", fixed(w.expansion_l, 2) + " l"},
          {"p_0 cold water and pre-charge", bar(w.vessel_precharge_bar) + ", see the pressure of the cold water"},
          {"p_1", bar(end_bar) + ", " + fixed(100.0 * valve_margin, 0) + " % of a " + fixed(w.safety_valve_bar, 0) +
                      " bar valve"},
          {"holds for", "a vessel for drinking water beside the cylinder, pre-charge set before filling"},
          plumbers_word},
         litres(least_l) + ", next size " + fixed(w.vessel_l, 0) + " l, pre-charge " + bar(w.vessel_precharge_bar),
         "Kell 1975 densities; sizing form common practice, EN 806-2 context",
         !input.water.static_pressure_bar && !input.water.reducing_valve});
}

void discharge(const Input& input, const SpotFindings& findings, Outcome& out) {
    constexpr double beside_m = 1.0;
    constexpr int bends = 3;
    const Service& drain = input.spot.drain;
    const double way_m = drain.present ? beside_m : std::max(beside_m, drain.distance_m);
    const double outlet = valve_outlet_dn(input.cylinder.volume_l);
    const Discharge tubes = discharge_pipe(outlet, way_m, bends);
    out.water.valve_outlet_mm = tubes.to_tundish_mm;
    out.water.discharge_mm = tubes.from_tundish_mm;
    if (!(tubes.from_tundish_mm > 0.0))
        findings.add(Severity::caution, Stage::visit, "water.discharge",
                     "The safety valve's discharge is " + fixed(way_m, 1) + " m long, more than the tables hold",
                     "Bring a drain nearer to the cylinder, or choose another spot",
                     "Discharge that carries the whole flow away", "Approved Document G3 (England), table 3.1");
    out.workings.push_back(
        {"services.discharge",
         "Discharge of the safety valve",
         "length + bends r <= 9, 18, 27 m for one, two, three sizes above the valve's",
         {{"cylinder", fixed(input.cylinder.volume_l, 0) + " l: valve DN " + fixed(outlet, 0)},
          {"way to the drain", fixed(way_m, 1) + " m" + (drain.present ? ", drain at the spot" : "")},
          {"bends", std::to_string(bends) + " assumed"},
          {"tundish", "within 0.5 m of the valve, upright, seen by people; 0.3 m straight down behind it"},
          {"holds for", "copper, falling all the way, ending where hot water harms nobody"},
          plumbers_word},
         fixed(tubes.to_tundish_mm, 0) + " mm to the tundish, " +
             (tubes.from_tundish_mm > 0.0 ? fixed(tubes.from_tundish_mm, 0) + " mm from there"
                                          : std::string("beyond the table from there")),
         "Approved Document G3 (England), table 3.1; valve by DIN 1988-200, from memory",
         true});
}

/// What the survey leaves open of the water supply.
void not_told(const Input& input, const SpotFindings& findings) {
    const WaterSupply& w = input.water;
    std::string missing;
    if (!w.static_pressure_bar) add_missing(missing, "static pressure");
    if (!w.hardness_mmol_l) add_missing(missing, "hardness");
    if (w.fixtures.empty()) add_missing(missing, "draw-off points");
    if (w.dead_legs.empty()) add_missing(missing, "hot pipes to the taps");
    if (missing.empty()) return;
    findings.add(w.static_pressure_bar ? Severity::note : Severity::caution, Stage::visit, "water.not-told",
                 "The survey does not tell of the water supply: " + missing + "; what depends on it is not worked out",
                 "Fill in on Visit", "Supply known before the cylinder is offered", "EN 806-2, 3.1 (basis of design)");
}

void services_to_make(const Input& input, const SpotFindings& findings, Outcome& out) {
    struct Need {
        const Service& service;
        const char* code;
        const char* name;
    };
    const CylinderSpot& s = input.spot;
    const Need needs[] = {{s.supply, "service.supply", "electrical supply"},
                          {s.earth, "service.earth", "protective earth"},
                          {s.cold, "service.cold", "cold water"},
                          {s.hot, "service.hot", "hot water"},
                          {s.drain, "service.drain", "drain"},
                          {s.recirculation, "service.recirculation", "recirculation"}};
    for (const Need& need : needs) {
        const bool unwanted =
            &need.service == &s.recirculation && (!input.cylinder.recirculation_port || need.service.distance_m <= 0.0);
        if (need.service.present || unwanted) continue;
        const std::string way = fixed(need.service.distance_m, 1) + " m";
        out.water.to_be_made.push_back(std::string(need.name) + ", " + way);
        findings.add(Severity::note, Stage::visit, need.code,
                     std::string("There is no ") + need.name + " at the spot yet; it is " + way + " away",
                     std::string("Bring ") + need.name + " over " + way, "Services at the cylinder", "survey");
    }
    if (s.recirculation.present && !input.cylinder.recirculation_port) {
        findings.add(Severity::caution, Stage::layout, "service.recirculation-port",
                     "The house has recirculation and the cylinder no port for it",
                     "Choose a cylinder with a recirculation port, or join it to the cold inlet as its maker allows",
                     "Equipment data of " + input.cylinder.maker + ' ' + input.cylinder.name + ": connections",
                     "equipment data");
    }
}

}  // namespace

void provide_water(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    not_told(input, findings);
    pressures(input, findings, out);
    expansion(input, findings, out);
    discharge(input, findings, out);
    services_to_make(input, findings, out);
}

}  // namespace wg::services
