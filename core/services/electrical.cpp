#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/parts.h"
#include "core/services/sizing.h"

namespace wg::services {
namespace {

constexpr double cos_phi =
    0.9;  // compressor and heater together, IEC 60364-5-52 annex G names 0.8 where nothing is known

/// Magnetic release begins at this many times the rating (IEC 60898-1): B 3, C 5, D 10.
double release_from(const std::string& curve) noexcept {
    if (curve == "B") return 3.0;
    if (curve == "D") return 10.0;
    return 5.0;
}

}  // namespace

void provide_electrical(const Input& input, Outcome& out) {
    const BlockModel& block = input.block;
    const SpotFindings findings{input, out.findings};
    Electrical& e = out.electrical;
    const bool three = block.supply_phases == 3;
    const double heater_a = input.cylinder.immersion_w / (block.supply_v * (three ? std::sqrt(3.0) : 1.0));
    e.running_a = block.max_current_a + heater_a;
    e.starting_a = block.start_current_a + heater_a;
    e.cable_m = input.spot.supply.distance_m + cable_allowance_m;
    e.breaker_curve = block.breaker_curve;
    e.residual_current_ma = block.residual_current_ma;
    e.breaker_a = breaker_at_least_a(std::max(block.breaker_a, e.running_a));
    const double to_neutral_v = three ? block.supply_v / std::sqrt(3.0) : block.supply_v;

    if (e.breaker_a <= 0.0) {
        findings.add(
            Severity::stop, Stage::visit, "supply.too-large",
            "Block and immersion heater take " + fixed(e.running_a, 1) + " A together, more than one circuit of 40 A",
            "Give the immersion heater a circuit of its own", "One protected circuit", "IEC 60364-4-43");
    }
    constexpr std::array<double, 4> sections_mm2{1.5, 2.5, 4.0, 6.0};
    for (const double section : sections_mm2) {
        e.cable_mm2 = section;
        e.drop_percent =
            100.0 * voltage_drop_v(block.supply_phases, e.cable_m, section, e.running_a, cos_phi) / to_neutral_v;
        if (ampacity_a(block.supply_phases, section) >= std::max(e.breaker_a, e.running_a) &&
            e.drop_percent <= drop_wanted_percent) {
            break;
        }
    }
    if (e.drop_percent > drop_limit_percent) {
        findings.add(Severity::stop, Stage::visit, "supply.voltage-drop",
                     "Over " + fixed(e.cable_m, 1) + " m the voltage falls by " + fixed(e.drop_percent, 1) +
                         " % even in " + fixed(e.cable_mm2, 1) + " mm2",
                     "Bring the supply nearer, or let an electrician size a larger cable",
                     "Voltage drop up to " + fixed(drop_limit_percent, 0) + " %", "IEC 60364-5-52 annex G");
    } else if (e.drop_percent > drop_wanted_percent) {
        findings.add(Severity::note, Stage::visit, "supply.voltage-drop-noticeable",
                     "Over " + fixed(e.cable_m, 1) + " m the voltage falls by " + fixed(e.drop_percent, 1) + " % in " +
                         fixed(e.cable_mm2, 1) + " mm2; what falls in the house's own lines comes on top",
                     "", "Voltage drop up to " + fixed(drop_limit_percent, 0) + " % in all", "IEC 60364-5-52 annex G");
    }
    if (ampacity_a(block.supply_phases, e.cable_mm2) < e.breaker_a) {
        findings.add(Severity::stop, Stage::visit, "supply.cable",
                     "No cable up to 6 mm2 carries the " + fixed(e.breaker_a, 0) + " A of the breaker",
                     "Let an electrician size the circuit", "Cable carries at least the breaker's rating",
                     "IEC 60364-4-43; table B.52.4 method B2, from memory");
    }
    if (e.breaker_a > 0.0 && e.starting_a > release_from(e.breaker_curve) * e.breaker_a) {
        findings.add(Severity::caution, Stage::visit, "supply.inrush",
                     "Starting takes " + fixed(e.starting_a, 0) + " A; a breaker " + e.breaker_curve +
                         fixed(e.breaker_a, 0) + " may trip from " +
                         fixed(release_from(e.breaker_curve) * e.breaker_a, 0) + " A",
                     "Take the next slower curve or the next larger rating that the cable carries",
                     "Breaker holds while starting", "IEC 60898-1, ranges of instantaneous tripping");
    }
    if (e.residual_current_ma > 30.0) {
        findings.add(Severity::caution, Stage::visit, "supply.residual-current",
                     "The block's data ask for a residual-current device of " + fixed(e.residual_current_ma, 0) + " mA",
                     "Check the national rule: 30 mA is usual where people touch water and metal",
                     "Additional protection by 30 mA", "IEC 60364-4-41, 415.1");
    }
    out.workings.push_back(
        {"services.cable",
         "Cable of the block's circuit",
         "u = b (rho1 L/S cos + lambda L sin) I",
         {{"current", fixed(e.running_a, 2) + " A (block " + fixed(block.max_current_a, 1) + ", heater " +
                          fixed(heater_a, 2) + ")"},
          {"length", fixed(e.cable_m, 1) + " m, with " + fixed(cable_allowance_m, 0) + " m to the terminals"},
          {"section", fixed(e.cable_mm2, 1) + " mm2 copper"},
          {"cos phi", fixed(cos_phi, 2) + " assumed"},
          {"voltage", fixed(to_neutral_v, 0) + " V"}},
         fixed(e.drop_percent, 2) + " %, breaker " + e.breaker_curve + fixed(e.breaker_a, 0),
         "IEC 60364-5-52 annex G; current by table B.52.4 method B2, from memory",
         true});
}

}  // namespace wg::services
