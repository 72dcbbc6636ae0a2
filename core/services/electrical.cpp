#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/cable.h"
#include "core/services/parts.h"

namespace wg::services {
namespace {

const char* method_words(CableMethod method) noexcept {
    switch (method) {
        case CableMethod::a1: return "A1, wires in conduit in an insulated wall";
        case CableMethod::a2: return "A2, cable in conduit in an insulated wall";
        case CableMethod::b1: return "B1, wires in conduit on a wall";
        case CableMethod::b2: return "B2, cable in conduit on a wall";
        case CableMethod::c: return "C, cable fixed on a wall";
        case CableMethod::e: return "E, cable in free air";
    }
    return "";
}

/// Block and heater differ in phase: each falls for itself, which the formula adds exactly.
struct Load {
    double block_a = 0.0;
    double block_cos_phi = 0.9;
    double heater_a = 0.0;
    [[nodiscard]] double drop_v(int phases, double length_m, double section_mm2) const {
        return voltage_drop_v(phases, length_m, section_mm2, block_a, block_cos_phi) +
               voltage_drop_v(phases, length_m, section_mm2, heater_a, 1.0);
    }
};

struct Circuit {
    const Input& input;
    const SpotFindings& findings;
    Electrical& e;
    Load running;
    Load starting;
    double volts = 230.0;

    /// Whether this section serves; fills in what the results tell of it.
    bool serves(double section_mm2) {
        const CableRoute& way = input.spot.cable;
        const int phases = input.block.supply_phases;
        e.cable_mm2 = section_mm2;
        e.carries_a = ampacity_a(way.method, phases, section_mm2) * e.ambient_factor * e.grouping_factor;
        e.drop_percent = 100.0 * running.drop_v(phases, e.way_m, section_mm2) / volts;
        e.start_drop_percent = 100.0 * starting.drop_v(phases, e.way_m, section_mm2) / volts;
        return e.carries_a >= std::max(e.breaker_a, e.running_a) && e.drop_percent <= drop_wanted_percent &&
               e.start_drop_percent <= start_drop_limit_percent;
    }

    void say_drop() const {
        const std::string over = "Over " + fixed(e.way_m, 1) + " m the voltage falls by " + fixed(e.drop_percent, 1) +
                                 " % in " + fixed(e.cable_mm2, 1) + " mm2";
        if (e.drop_percent > drop_limit_percent) {
            findings.add(Severity::stop, Stage::visit, "supply.voltage-drop", over + ", the largest section here",
                         "Bring the supply nearer, or let an electrician size a larger cable",
                         "Voltage drop up to " + fixed(drop_limit_percent, 0) + " %", "IEC 60364-5-52 annex G");
        } else if (e.drop_percent > drop_wanted_percent) {
            findings.add(Severity::note, Stage::visit, "supply.voltage-drop-noticeable",
                         over + "; what falls in the house's own lines comes on top", "",
                         "Voltage drop up to " + fixed(drop_limit_percent, 0) + " % in all", "IEC 60364-5-52 annex G");
        }
        if (e.start_drop_percent > start_drop_limit_percent) {
            findings.add(Severity::caution, Stage::visit, "supply.start-drop",
                         "While the block starts the voltage falls by " + fixed(e.start_drop_percent, 1) + " % over " +
                             fixed(e.way_m, 1) + " m; lamps flicker and the start may fail",
                         "Bring the supply nearer, or ask the maker for a soft starter",
                         "Voltage drop while starting up to " + fixed(start_drop_limit_percent, 0) + " %",
                         "common practice, no published source");
        }
    }

    void say_cable() const {
        if (e.carries_a < std::max(e.breaker_a, e.running_a)) {
            findings.add(Severity::stop, Stage::visit, "supply.cable",
                         "No cable up to " + fixed(e.cable_mm2, 0) + " mm2 carries the " + fixed(e.breaker_a, 0) +
                             " A of the breaker as laid: " + method_words(input.spot.cable.method) + ", " +
                             fixed(input.spot.cable.ambient_c, 0) + " deg C, " +
                             counted(input.spot.cable.circuits_together, "circuit", "circuits") + " together",
                         "Lay it apart from other circuits and from warm places, or let an electrician size the "
                         "circuit",
                         "Running current <= breaker's rating <= what the cable carries",
                         "IEC 60364-4-43, 433.1; IEC 60364-5-52 annex B");
        } else if (e.cable_mm2 > usual_terminal_mm2) {
            findings.add(Severity::note, Stage::visit, "supply.large-section",
                         "The circuit takes " + fixed(e.cable_mm2, 0) + " mm2; terminals of blocks often take " +
                             fixed(usual_terminal_mm2, 0) + " mm2 at most",
                         "Plan a junction box beside the block", "Cable that fits the terminals",
                         "common practice, no published source");
        }
    }

    void say_breaker() const {
        if (e.breaker_a <= 0.0) {
            findings.add(Severity::stop, Stage::visit, "supply.too-large",
                         "Block and immersion heater take " + fixed(e.running_a, 1) +
                             " A together, more than one circuit of 40 A",
                         "Give the immersion heater a circuit of its own", "One protected circuit", "IEC 60364-4-43");
            return;
        }
        const double holds_a =
            release_range(e.breaker_curve.empty() ? 'C' : e.breaker_curve.front()).holds * e.breaker_a;
        if (e.starting_a <= holds_a) return;
        findings.add(Severity::caution, Stage::visit, "supply.inrush",
                     "Starting takes " + fixed(e.starting_a, 0) + " A; a breaker " + e.breaker_curve +
                         fixed(e.breaker_a, 0) + " may trip from " + fixed(holds_a, 0) + " A",
                     "Take the next slower curve or the next larger rating that the cable carries",
                     "Breaker holds while starting", "IEC 60898-1, ranges of instantaneous tripping");
    }

    void work(Outcome& out) const {
        const CableRoute& way = input.spot.cable;
        const int phases = input.block.supply_phases;
        out.workings.push_back(
            {"services.cable",
             "Cable of the block's circuit: voltage drop",
             "u = b (rho1 L/S cos + lambda L sin) I, block and heater added",
             {{"block", fixed(running.block_a, 2) + " A at cos phi " + fixed(running.block_cos_phi, 2)},
              {"heater", fixed(running.heater_a, 2) + " A at cos phi 1"},
              {"length", fixed(e.way_m, 1) + " m, with " + fixed(cable_allowance_m, 0) + " m to the terminals"},
              {"section", fixed(e.cable_mm2, 1) + " mm2 copper"},
              {"voltage", fixed(volts, 0) + (input.electrics.voltage_v ? " V, as surveyed" : " V, the block's")},
              {"while starting", fixed(starting.block_a, 1) +
                                     " A at the running cos phi (safe side): " + fixed(e.start_drop_percent, 2) +
                                     " %, wanted up to " + fixed(start_drop_limit_percent, 0) + " %"},
              {"holds for", "copper at working temperature, one cable with its own protective conductor"},
              electricians_word},
             fixed(e.drop_percent, 2) + " %, wanted up to " + fixed(drop_wanted_percent, 0) + " %",
             "IEC 60364-5-52 annex G",
             false});
        out.workings.push_back(
            {"services.protection",
             "Cable and breaker: what is carried",
             "I_b <= I_n <= I_z, I_z = I_table f_ambient f_grouping",
             {{"I_b", fixed(e.running_a, 2) + " A"},
              {"I_n", e.breaker_curve + fixed(e.breaker_a, 0) + ", the block asks for " +
                          fixed(input.block.breaker_a, 0) + " A"},
              {"laid", method_words(way.method) +
                           std::string(way == CableRoute{} ? "; way, warmth and company as the form has them" : "")},
              {"I_table", fixed(ampacity_a(way.method, phases, e.cable_mm2), 1) + " A for " + fixed(e.cable_mm2, 1) +
                              " mm2, " + (phases == 3 ? "three" : "two") + " loaded conductors"},
              {"f_ambient", fixed(e.ambient_factor, 3) + " at " + fixed(way.ambient_c, 0) + " deg C"},
              {"f_grouping", fixed(e.grouping_factor, 2) + " for " +
                                 counted(way.circuits_together, "circuit", "circuits") + " together"},
              {"start", fixed(e.starting_a, 1) + " A against " +
                            fixed(release_range(e.breaker_curve.empty() ? 'C' : e.breaker_curve.front()).holds, 0) +
                            " times the rating"},
              {"residual current",
               fixed(e.residual_current_ma, 0) + " mA of the block's data, type " + e.residual_current_type +
                   (e.residual_current_type == "A" ? ", fixed speed" : ", compressor on a converter")},
              {"holds for", "PVC-insulated copper, 1.5 to 16 mm2"},
              electricians_word},
             "I_z " + fixed(e.carries_a, 1) + " A in " + fixed(e.cable_mm2, 1) + " mm2",
             "IEC 60364-4-43, 433.1; IEC 60364-5-52 tables B.52.2, B.52.4, B.52.10, B.52.14, B.52.17; IEC 60898-1; IEC "
             "62423",
             way == CableRoute{}});
    }
};

}  // namespace

double to_neutral_v(const Input& input) {
    const double block_v =
        input.block.supply_phases == 3 ? input.block.supply_v / std::sqrt(3.0) : input.block.supply_v;
    return input.electrics.voltage_v.value_or(block_v);
}

void provide_electrical(const Input& input, Outcome& out) {
    const BlockModel& block = input.block;
    const SpotFindings findings{input, out.findings};
    Electrical& e = out.electrical;
    const double heater_a =
        input.cylinder.immersion_w / (block.supply_v * (block.supply_phases == 3 ? std::sqrt(3.0) : 1.0));
    e.running_a = block.max_current_a + heater_a;
    e.starting_a = block.start_current_a + heater_a;
    e.cable_m = input.spot.supply.distance_m + cable_allowance_m;
    e.way_m = std::max(input.spot.supply.distance_m, input.spot.distribution_m) + cable_allowance_m;
    e.breaker_curve = block.breaker_curve;
    e.residual_current_ma = block.residual_current_ma;
    const bool converter = block.least_flow_share < 1.0;
    e.residual_current_type = !converter ? "A" : block.supply_phases == 3 ? "B" : "F";
    e.breaker_a = breaker_at_least_a(std::max(block.breaker_a, e.running_a));
    e.ambient_factor = ambient_factor(input.spot.cable.ambient_c);
    e.grouping_factor = grouping_factor(input.spot.cable.circuits_together);
    Circuit circuit{input,
                    findings,
                    e,
                    {block.max_current_a, block.power_factor, heater_a},
                    {block.start_current_a, block.power_factor, heater_a},
                    to_neutral_v(input)};
    for (const double section : cable_sections_mm2)
        if (circuit.serves(section)) break;
    circuit.say_breaker();
    circuit.say_drop();
    circuit.say_cable();
    circuit.work(out);
}

}  // namespace wg::services
