#include <algorithm>

#include "core/plan/plan.h"
#include "core/quantity/text.h"

namespace wg::plan {
namespace {

constexpr std::size_t label_width = 28;

void line(std::string& out, std::string label, const std::string& value) {
    if (label.size() < label_width) label.append(label_width - label.size(), ' ');
    out += "  " + label + value + '\n';
}

std::string range(const Ranged& value, int decimals, const std::string& unit) {
    return "about " + fixed(value.mid, decimals) + ' ' + unit + (unit.empty() ? "" : " ") + '(' +
           fixed(value.low, decimals) + " to " + fixed(value.high, decimals) + ')';
}

std::string hours(const std::optional<season::WarmUp>& warm) {
    if (!warm) return "not worked out";
    if (!warm->reached) return "not reached: " + warm->why_not;
    return fixed(warm->hours, 1) + " h, COP " + fixed(warm->mean_cop, 1);
}

void list_findings(std::string& out, const Plan& plan) {
    for (const Severity severity : {Severity::stop, Severity::caution, Severity::note}) {
        for (const Finding& f : plan.findings) {
            if (f.severity != severity) continue;
            out += std::string("  [") + word(severity) + "] " + (f.place.empty() ? "" : f.place + ": ") + f.message;
            if (!f.remedy.empty()) out += ". " + f.remedy;
            out += '\n';
        }
    }
    if (plan.findings.empty()) out += "  none\n";
}

}  // namespace

std::string summary(const Plan& plan) {
    std::string out =
        "Job " + plan.job_number + "  " + plan.title + "  (revision " + std::to_string(plan.job_revision) + ")\n";
    if (plan.invented) out += "INVENTED DATA: for demonstration, not a real house, price or product\n";
    if (plan.stopped()) out += "STOP: this plan must not be issued as it is; see the findings\n";
    out += "\nChoice " + plan.choice_label + '\n';
    line(out, "collector",
         counted(static_cast<long>(plan.placements.size()), "piece", "pieces") + ", " + plan.collector.maker + ' ' +
             plan.collector.name + ", " + fixed(plan.collector.face_area_m2, 2) + " m2 a face");
    line(out, "block", plan.block.maker + ' ' + plan.block.name + ", " + name_of(plan.block.refrigerant));
    line(out, "cylinder",
         plan.cylinder.maker + ' ' + plan.cylinder.name + ", " + fixed(plan.cylinder.volume_l, 0) + " l");
    line(out, "weather", plan.weather_source);
    for (const PlacementPlan& p : plan.placements) {
        line(out, p.label,
             p.surface_label + ", tilt " + fixed(p.placed.tilt_deg, 0) + " deg, azimuth " +
                 fixed(p.placed.azimuth_deg, 0) + " deg, " + fixed(p.plane_kwh_m2, 0) + " kWh/m2 a year on the plate");
    }
    if (plan.has_yield) {
        out += "\nA year in use\n";
        line(out, "useful heat", range(plan.figures.heat_kwh, 0, "kWh"));
        line(out, "electricity", range(plan.figures.electricity_kwh, 0, "kWh"));
        line(out, "seasonal factor", range(plan.figures.seasonal_factor, 2, ""));
        line(out, "running cost",
             text(plan.economy.running_cost, plan.currency) + ", present heater " +
                 text(plan.economy.present_cost, plan.currency));
        line(out, "warm-up, good daylight", hours(plan.warm_up_good));
        line(out, "warm-up, average daylight", hours(plan.warm_up_fair));
        line(out, "warm-up, winter night", hours(plan.warm_up_poor));
        line(out, "standstill in full sun",
             fixed(plan.standstill.plate_c, 0) + " deg C, " + fixed(plan.standstill.pressure_bar_abs, 1) +
                 " bar absolute");
        const double miss = std::max(plan.season.closure_circuit, plan.season.closure_water);
        line(out, "heat balance closes to", miss < 1e-5 ? "better than 0.001 %" : fixed(100.0 * miss, 3) + " %");
    }
    out += "\nEngineering\n";
    line(out, "run",
         fixed(plan.run.length_m, 2) + " m one way, " + counted(plan.run.bends, "bend", "bends") + ", lift " +
             fixed(plan.run.lift_m, 2) + " m");
    line(out, "charge",
         fixed(plan.run.total_charge_kg, 2) + " kg, " + fixed(plan.run.extra_charge_kg * 1000.0, 0) +
             " g of it to weigh in, " + fixed(plan.run.total_charge_t_co2e, 2) + " t CO2e");
    line(out, "worst fixing point",
         "no. " + std::to_string(plan.figures.worst_point) + ", " + fixed(100.0 * plan.figures.worst_utilisation, 0) +
             " % used");
    line(out, "supply",
         fixed(plan.services.electrical.running_a, 1) + " A running, " + fixed(plan.services.electrical.breaker_a, 0) +
             " A " + plan.services.electrical.breaker_curve + ", " + fixed(plan.services.electrical.cable_mm2, 1) +
             " mm2");
    line(out, "expansion vessel", fixed(plan.services.water.vessel_l, 0) + " l");
    if (plan.quote) {
        line(out, "price",
             text(plan.quote->gross, plan.currency) + " with tax (" + text(plan.quote->net, plan.currency) + " net)");
    }
    out += "\nFindings\n";
    list_findings(out, plan);
    out +=
        "\nPlanning aid. Work at height, refrigerant under pressure, electricity and hot water can hurt: local codes "
        "and\n"
        "licensed practice decide.\n";
    return out;
}

}  // namespace wg::plan
