// Residual current, fault loop, bonding, lightning protection and surges.
#include <algorithm>
#include <cmath>

#include "core/quantity/text.h"
#include "core/services/cable.h"
#include "core/services/parts.h"

namespace wg::services {
namespace {

constexpr double touch_limit_v = 50.0;            ///< IEC 60364-4-41, 411.5.3
constexpr double cold_reading_share = 2.0 / 3.0;  ///< IEC 60364-6, annex D: conductors warm up in a fault
constexpr double bonding_usual_mm2 = 6.0;         ///< IEC 60364-5-54, 544.1.1
constexpr double bonding_lightning_mm2 = 16.0;    ///< IEC 62305-3, table 8

void residual_current(const Input& input, const SpotFindings& findings, const Electrical& e) {
    const bool converter = input.block.least_flow_share < 1.0;
    if (e.residual_current_ma > 30.0) {
        findings.add(Severity::caution, Stage::visit, "supply.residual-current",
                     "The block's data ask for a residual-current device of " + fixed(e.residual_current_ma, 0) + " mA",
                     "Check the national rule: 30 mA is usual where people touch water and metal",
                     "Additional protection by 30 mA", "IEC 60364-4-41, 415.1");
    }
    if (converter) {
        findings.add(Severity::note, Stage::visit, "supply.residual-type",
                     "The compressor runs on a converter: a residual-current device of type " +
                         e.residual_current_type + " sees its fault currents",
                     "Follow the maker where he names another type", "Type of residual-current device",
                     "IEC 60364-5-53; IEC 62423");
    }
}

/// What switches a fault off in time: the residual-current device in TT, the breaker in TN.
void disconnection(const Input& input, const SpotFindings& findings, Outcome& out) {
    Electrical& e = out.electrical;
    const EarthingSystem system = input.electrics.earthing;
    if (system == EarthingSystem::tt) {
        if (e.residual_current_ma > 0.0) {
            e.electrode_max_ohm = touch_limit_v / (e.residual_current_ma * 1e-3);
            out.workings.push_back(
                {"services.earth-electrode",
                 "Earth electrode in a TT supply",
                 "R_A I_dn <= 50 V",
                 {{"I_dn", fixed(e.residual_current_ma, 0) + " mA, type " + e.residual_current_type},
                  {"holds for", "alternating current, normal rooms; R_A is measured on the day"},
                  electricians_word},
                 "R_A up to " + fixed(e.electrode_max_ohm, 0) + " ohm; above 200 ohm it may rise when the soil dries",
                 "IEC 60364-4-41, 411.5.3",
                 false});
        } else {
            findings.add(Severity::stop, Stage::visit, "supply.tt-without-device",
                         "The house has a TT supply and the block's data name no residual-current device",
                         "Plan a residual-current device of 30 mA", "Faults in TT are cut by residual current",
                         "IEC 60364-4-41, 411.5");
        }
    }
    if (system == EarthingSystem::it)
        findings.add(Severity::caution, Stage::visit, "supply.it",
                     "The house has an IT supply: how a fault is found and cut is not worked out here",
                     "Have an electrician plan insulation monitoring and the second fault", "Protection in IT",
                     "IEC 60364-4-41, 411.6");
    const bool tn = system == EarthingSystem::tn_s || system == EarthingSystem::tn_c_s;
    if (!tn || !(e.breaker_a > 0.0)) return;
    const char curve = e.breaker_curve.empty() ? 'C' : e.breaker_curve.front();
    const double trips_a = release_range(curve).trips * e.breaker_a;
    e.loop_max_ohm = to_neutral_v(input) / trips_a;
    e.loop_reading_max_ohm = cold_reading_share * e.loop_max_ohm;
    const double cable_ohm = loop_resistance_ohm(e.way_m, e.cable_mm2);
    out.workings.push_back(
        {"services.fault-loop",
         "Fault loop in a TN supply",
         "Z_s <= U_0/I_a; reading <= 2/3 U_0/I_a",
         {{"U_0", fixed(to_neutral_v(input), 0) + " V"},
          {"I_a", fixed(trips_a, 0) + " A, the upper end of curve " + e.breaker_curve},
          {"of it in the cable", fixed(cable_ohm, 2) + " ohm over " + fixed(e.way_m, 1) + " m, warm"},
          {"holds for",
           "the breaker alone; the residual-current device switches off besides. Z_s is measured on the "
           "day"},
          electricians_word},
         "Z_s up to " + fixed(e.loop_max_ohm, 2) + " ohm, reading up to " + fixed(e.loop_reading_max_ohm, 2) + " ohm",
         "IEC 60364-4-41, 411.4.4; IEC 60364-6, annex D",
         false});
    if (cable_ohm > e.loop_max_ohm)
        findings.add(Severity::caution, Stage::visit, "supply.fault-loop",
                     "The cable alone takes " + fixed(cable_ohm, 2) + " ohm of the fault loop; a breaker " +
                         e.breaker_curve + fixed(e.breaker_a, 0) + " switches off at once up to " +
                         fixed(e.loop_max_ohm, 2) + " ohm",
                     "Let the residual-current device serve, or take a larger section or a quicker curve",
                     "Faults cut at once", "IEC 60364-4-41, 411.4.4");
}

void bonding(const Input& input, const SpotFindings& findings, Outcome& out) {
    Electrical& e = out.electrical;
    e.bonding_mm2 = input.electrics.lightning_protection ? bonding_lightning_mm2 : bonding_usual_mm2;
    findings.add(Severity::note, Stage::fitting, "supply.bonding",
                 "Collector frame and both refrigerant lines are bonded to the main earth bar with " +
                     fixed(e.bonding_mm2, 0) + " mm2 copper, the lines where they enter the house",
                 "", "Equipotential bonding of metal that comes into the house",
                 input.electrics.lightning_protection ? "IEC 60364-4-41, 411.3.1.2; IEC 62305-3, table 8"
                                                      : "IEC 60364-4-41, 411.3.1.2; IEC 60364-5-54, 544.1");
    if (input.electrics.earthing == EarthingSystem::tn_c_s)
        findings.add(Severity::note, Stage::visit, "supply.bonding-outdoors",
                     "With TN-C-S a frame bonded outdoors takes the neutral's voltage if the supply's combined "
                     "conductor breaks",
                     "Ask the network operator whether metal outdoors may be bonded to its earth",
                     "Earth of a TN-C-S supply outdoors", "common practice, no published source");
    out.workings.push_back({"services.bonding",
                            "Bonding of collector frame and lines",
                            "at least 6 mm2 copper; 16 mm2 where it is part of lightning protection",
                            {{"lightning protection", input.electrics.lightning_protection ? "yes" : "no"},
                             {"holds for", "copper, conductors kept from damage"},
                             electricians_word},
                            fixed(e.bonding_mm2, 0) + " mm2 copper",
                            "IEC 60364-5-54, 544.1.1; IEC 62305-3, table 8",
                            false});
}

void lightning(const Input& input, const SpotFindings& findings, Outcome& out) {
    if (!input.electrics.lightning_protection) return;
    Electrical& e = out.electrical;
    // Class and down conductors are not surveyed: a house's usual ones, and the severest there are.
    constexpr double usual_k_i = 0.04, usual_k_c = 0.66, severest_k_i = 0.08, severest_k_c = 1.0, solid_k_m = 0.5;
    const double length_m = std::max(0.0, input.collector_top_m);
    e.separation_m = separation_distance_m(usual_k_i, usual_k_c, solid_k_m, length_m);
    e.separation_severest_m = separation_distance_m(severest_k_i, severest_k_c, solid_k_m, length_m);
    out.workings.push_back(
        {"services.separation",
         "Separation from the lightning protection",
         "s = k_i k_c/k_m l",
         {{"usual", "k_i 0.04 (class III, IV), k_c 0.66 (two down conductors), assumed"},
          {"severest", "k_i 0.08 (class I), k_c 1 (one down conductor)"},
          {"k_m", "0.5, brick, concrete or timber between; 1 in air alone"},
          {"l",
           fixed(length_m, 1) + " m, from the plate's top down to the earth bar at ground level, assumed straight"},
          {"entered", input.electrics.lightning_distance_m ? fixed(*input.electrics.lightning_distance_m, 2) + " m"
                                                           : std::string("not told")},
          {"holds for", "straight way down; a meshed roof or more conductors ask for less"},
          electricians_word},
         fixed(e.separation_m, 2) + " m usual, " + fixed(e.separation_severest_m, 2) + " m severest",
         "IEC 62305-3, 6.3 and tables 10 to 12",
         true});
    const std::string source = "IEC 62305-3, 6.3", rule = "Separation distance to lightning protection";
    if (!input.electrics.lightning_distance_m) {
        findings.add(
            Severity::caution, Stage::visit, "lightning.distance-not-told",
            "The house has lightning protection; the distance from collector and lines to its nearest "
            "conductor is not told",
            "Measure it and fill it in on Visit; " + fixed(e.separation_severest_m, 2) + " m is enough in every class",
            rule, source);
        return;
    }
    const double there_m = *input.electrics.lightning_distance_m;
    if (there_m >= e.separation_severest_m) return;
    const bool near = there_m < e.separation_m;
    findings.add(Severity::caution, Stage::visit, near ? "lightning.too-near" : "lightning.distance-by-class",
                 "Collector or lines come within " + fixed(there_m, 2) + " m of the lightning protection; " +
                     fixed(e.separation_m, 2) + " m are asked for in the usual class, " +
                     fixed(e.separation_severest_m, 2) + " m in the severest",
                 near ? "Move the collector, or have a lightning protection specialist join it in or move the conductor"
                      : "Have a lightning protection specialist confirm the class and the distance",
                 rule, source);
}

void surges(const Input& input, const SpotFindings& findings) {
    if (input.electrics.surge_protection) return;
    const bool lightning_too = input.electrics.lightning_protection;
    findings.add(lightning_too ? Severity::caution : Severity::note, Stage::visit, "supply.surge",
                 std::string("No surge protection is in the distribution board") +
                     (lightning_too ? ", and the house has lightning protection" : ""),
                 lightning_too ? "Have devices of type 1 and 2 fitted with the circuit"
                               : "Offer a device of type 2; the national rule tells whether a dwelling must have it",
                 "Protection against overvoltages",
                 lightning_too ? "IEC 62305-3, 6.2; IEC 60364-4-44, 443" : "IEC 60364-4-44, 443");
}

}  // namespace

void provide_earthing(const Input& input, Outcome& out) {
    const SpotFindings findings{input, out.findings};
    residual_current(input, findings, out.electrical);
    disconnection(input, findings, out);
    bonding(input, findings, out);
    lightning(input, findings, out);
    surges(input, findings);
}

}  // namespace wg::services
