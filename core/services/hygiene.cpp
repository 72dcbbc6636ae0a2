// Scalding, hygiene, what stands between refrigerant and water, lime and anode, the loop.
#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/constants.h"
#include "core/quantity/text.h"
#include "core/services/parts.h"

namespace wg::services {
namespace {

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

// Classes of hardness, mmol/l: soft below, hard above (German detergents act of 2007, section 9).
constexpr double soft_mmol_l = 1.5;
constexpr double hard_mmol_l = 2.5;

void lime_and_anode(const Input& input, const SpotFindings& findings, Outcome& out) {
    if (!input.water.hardness_mmol_l) return;
    const double hardness = *input.water.hardness_mmol_l;
    const std::string has = "The water has " + fixed(hardness, 1) + " mmol/l of hardness";
    const double hottest_c = input.demand.hygiene.rule != HygieneRule::none
                                 ? std::max(input.demand.set_point_c, input.demand.hygiene.target_c)
                                 : input.demand.set_point_c;
    if (hardness > hard_mmol_l)
        findings.add(hottest_c > 60.0 ? Severity::caution : Severity::note, Stage::visit, "water.lime",
                     has + " and is heated to " + fixed(hottest_c, 0) + " deg C: lime settles on heater and condenser",
                     hottest_c > 60.0 ? "Keep to 60 deg C, or plan softening or lime protection and yearly descaling"
                                      : "Look at heater and condenser at service; offer softening or lime protection",
                     "Treatment of hard water that is heated", "DIN 1988-200, from memory");
    if (!input.cylinder.anode.empty() && hardness < soft_mmol_l)
        findings.add(Severity::note, Stage::aftercare, "water.anode-soft",
                     has + ": how fast the anode wears is hard to tell in soft water, and fast in softened water",
                     "Look at the anode after 12 months, then as it wears",
                     "Anode looked at every " + fixed(input.cylinder.anode_check_months, 0) + " months or sooner",
                     "common practice, no published source");
    out.workings.push_back({"services.hardness",
                            "Lime and anode",
                            "soft below 1.5, hard above 2.5 mmol/l",
                            {{"hardness", fixed(hardness, 1) + " mmol/l"},
                             {"hottest water", fixed(hottest_c, 0) + " deg C"},
                             {"anode", input.cylinder.anode.empty() ? "none" : input.cylinder.anode},
                             plumbers_word},
                            hardness > hard_mmol_l   ? "hard"
                            : hardness < soft_mmol_l ? "soft"
                                                     : "medium",
                            "German detergents act of 2007, section 9; DIN 1988-200, from memory",
                            false});
}

/// Hours of a week in which the loop runs, to the quarter hour.
double loop_hours_a_week(const std::vector<ClockWindow>& windows) {
    constexpr int quarters_a_day = 96;
    if (windows.empty()) return 168.0;
    std::array<bool, 7 * quarters_a_day> runs{};
    for (const ClockWindow& window : windows)
        for (int day = 0; day < 7; ++day) {
            if (!(day < 5 ? window.weekdays : window.weekends)) continue;
            const int from = static_cast<int>(std::lround(4.0 * window.from_h));
            int to = static_cast<int>(std::lround(4.0 * window.to_h));
            if (to < from) to += quarters_a_day;
            for (int quarter = from; quarter < to; ++quarter)
                runs[static_cast<std::size_t>((day * quarters_a_day + quarter) % (7 * quarters_a_day))] = true;
        }
    return 0.25 * static_cast<double>(std::count(runs.begin(), runs.end(), true));
}

void loop_loss(const Input& input, Outcome& out) {
    const Recirculation& loop = input.demand.recirculation;
    if (!loop.present) return;
    constexpr double told_at_k = 35.0, weeks_a_year = 8760.0 / 168.0;
    const double over_room_k = std::max(0.0, input.demand.set_point_c - input.spot.room_temperature_c);
    const double hours = loop_hours_a_week(loop.windows) * weeks_a_year;
    out.water.recirculation_kwh = loop.loss_w * over_room_k / told_at_k * hours * 1e-3;
    out.workings.push_back({"services.recirculation",
                            "Loss of the recirculation loop in a year",
                            "Q = P (T_store - T_room)/35 K h",
                            {{"P", fixed(loop.loss_w, 0) + " W at 35 K"},
                             {"store over room", fixed(over_room_k, 1) + " K"},
                             {"h", fixed(hours, 0) + " hours a year"},
                             {"holds for",
                              "the store at its set-point all year; the year of operation counts it hour "
                              "by hour"}},
                            fixed(out.water.recirculation_kwh, 0) + " kWh",
                            "docs/handbook/season.md",
                            false});
}

}  // namespace

void provide_hygiene(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    scald(input, findings, out);
    hygiene(input, findings);
    condenser(input, findings);
    lime_and_anode(input, findings, out);
    loop_loss(input, out);
}

}  // namespace wg::services
