#include <algorithm>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/services/parts.h"
#include "core/services/sizing.h"

namespace wg::services {
namespace {

std::string litres(double v) {
    return fixed(v, 1) + " l";
}

/// Energy of a day's draw-off, kWh: EU 812/2013 annex VII table 3.
double day_kwh(TappingCycle cycle) noexcept {
    switch (cycle) {
        case TappingCycle::s: return 2.100;
        case TappingCycle::m: return 5.845;
        case TappingCycle::l: return 11.655;
        case TappingCycle::xl: return 19.070;
        case TappingCycle::xxl: return 24.530;
    }
    return 5.845;
}

void expansion(const Input& input, const SpotFindings& findings, Outcome& out) {
    Water& w = out.water;
    const double hot_c = std::max(input.demand.set_point_c, hottest_store_c);
    w.expansion_l = expansion_l(input.cylinder.volume_l, input.demand.cold_mean_c, hot_c);
    w.safety_valve_bar = safety_valve_bar(input.cylinder.max_pressure_bar);
    w.vessel_precharge_bar = supply_pressure_bar;
    const double end_bar = valve_margin * w.safety_valve_bar;
    const double least_l = vessel_l(w.expansion_l, supply_pressure_bar, end_bar);
    if (least_l <= 0.0) {
        findings.add(Severity::stop, Stage::visit, "water.pressure",
                     "The cylinder takes " + fixed(input.cylinder.max_pressure_bar, 1) + " bar; with the supply at " +
                         fixed(supply_pressure_bar, 1) + " bar nothing is left for the water to expand into",
                     "Set the pressure reducer lower and have the vessel sized for it, or choose another cylinder",
                     "Expansion below the safety valve's setting", "EN 806-2; supply pressure assumed");
    }
    w.vessel_l = least_l > 0.0 ? vessel_size_l(least_l) : 0.0;
    out.workings.push_back({"services.expansion",
                            "Expansion vessel on the cold inlet",
                            "V = V_e (p_1 + 1)/(p_1 - p_0)",
                            {{"cylinder", fixed(input.cylinder.volume_l, 0) + " l"},
                             {"warmed from", fixed(input.demand.cold_mean_c, 1) + " to " + fixed(hot_c, 0) + " deg C"},
                             {"V_e", fixed(w.expansion_l, 2) + " l"},
                             {"p_0 supply and pre-charge", fixed(supply_pressure_bar, 1) + " bar assumed"},
                             {"p_1", fixed(end_bar, 1) + " bar, " + fixed(100.0 * valve_margin, 0) + " % of a " +
                                         fixed(w.safety_valve_bar, 0) + " bar valve"}},
                            litres(least_l) + ", next size " + fixed(w.vessel_l, 0) + " l",
                            "Kell 1975 densities; sizing form common practice, EN 806-2 context",
                            true});
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

void scald(const Input& input, const SpotFindings& findings, Outcome& out) {
    constexpr double safe_c = 48.0;
    const Demand& d = input.demand;
    const double programme_c = d.hygiene.rule != HygieneRule::none ? d.hygiene.target_c : 0.0;
    const double hottest_c = std::max({d.set_point_c, hottest_store_c, programme_c});
    out.water.mixing_valve = hottest_c > safe_c;
    findings.add(
        Severity::note, Stage::fitting, "water.scald",
        "The cylinder may hold water of " + fixed(hottest_c, 0) +
            " deg C; 55 deg C burns in about 30 s. A thermostatic mixing valve is in the list",
        "Set the mixing valve to 48 deg C or less at baths (44 deg C is usual), 41 deg C at showers and basins",
        "Water at the outlet up to 48 deg C", "Approved Document G3 (England); mixing valve schemes, from memory");
}

/// A programme that heats the store to 60 deg C answers a low set-point; whether it gets there the year shows.
bool has_programme(const Demand& d) {
    return d.hygiene.rule != HygieneRule::none && d.hygiene.target_c >= 60.0;
}

/// Litres at the store's temperature that a day draws.
double day_litres(const Demand& d) {
    const double span_k = std::max(1.0, d.set_point_c - d.cold_mean_c);
    if (d.draw_source == DrawSource::household)
        return d.household.persons * d.household.litres_40_per_person * d.scale * (40.0 - d.cold_mean_c) / span_k;
    return day_kwh(d.cycle) * d.scale * joule_per_kwh / (water_specific_heat_j_kgk * span_k);
}

void hygiene(const Input& input, const SpotFindings& findings) {
    const Demand& d = input.demand;
    if (has_programme(d)) {
        if (d.set_point_c < 60.0)
            findings.add(Severity::note, Stage::visit, "water.hygiene-programme",
                         "The store is kept at " + fixed(d.set_point_c, 0) + " deg C; a " +
                             (d.hygiene.rule == HygieneRule::daily ? "daily" : "weekly") + " programme heats it to " +
                             fixed(d.hygiene.target_c, 0) + " deg C",
                         "See the findings of the year for how much of the store it reaches",
                         "Stored hot water at 60 deg C", "HSE, HSG274 part 2, 2014");
    } else if (d.set_point_c < 55.0) {
        findings.add(Severity::caution, Stage::visit, "water.legionella",
                     "The store is kept at " + fixed(d.set_point_c, 0) +
                         " deg C; legionella grow between 20 and 45 deg C and die slowly below 55",
                     "Raise the set-point to 60 deg C, or have the immersion heater lift the whole store to 60 deg C "
                     "at times that local rules ask for",
                     "Stored hot water at 60 deg C", "HSE, HSG274 part 2, 2014");
    } else if (d.set_point_c < 60.0) {
        findings.add(Severity::note, Stage::visit, "water.below-60",
                     "The store is kept at " + fixed(d.set_point_c, 0) +
                         " deg C, below the 60 deg C that guides ask of stored water",
                     "Let the immersion heater lift the store to 60 deg C at times that local rules ask for",
                     "Stored hot water at 60 deg C", "HSE, HSG274 part 2, 2014");
    }
    const double day_l = day_litres(d);
    constexpr double standing_days = 2.0;
    if (input.cylinder.volume_l > standing_days * day_l) {
        findings.add(
            Severity::note, Stage::layout, "water.standing",
            "A day draws about " + fixed(day_l, 0) + " l at store temperature; the cylinder of " +
                fixed(input.cylinder.volume_l, 0) + " l holds " + fixed(input.cylinder.volume_l / day_l, 1) + " days",
            "A smaller cylinder keeps the water fresher and loses less",
            "Stored water renewed within " + fixed(standing_days, 0) + " days", "common practice, no published source");
    }
}

void condenser(const Input& input, const SpotFindings& findings) {
    if (input.block.condenser != CondenserKind::immersed || input.block.condenser_double_wall) return;
    findings.add(Severity::caution, Stage::layout, "water.single-wall-condenser",
                 "The condenser lies in drinking water with a single wall between it and refrigerant with oil",
                 "Choose a block with a double-walled or wrapped condenser, or have the maker confirm that it is "
                 "allowed where it is fitted",
                 "Drinking water kept from other fluids by a wall that shows its leaks",
                 "EN 1717 principle, fluid categories");
}

}  // namespace

void provide_water(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    expansion(input, findings, out);
    services_to_make(input, findings, out);
    scald(input, findings, out);
    hygiene(input, findings);
    condenser(input, findings);
}

}  // namespace wg::services
