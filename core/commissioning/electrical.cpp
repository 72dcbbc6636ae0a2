// Electrical tests against the job's limits or the program's: docs/handbook/commissioning.md.

#include <cmath>

#include "core/commissioning/checks.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

// Limits and tolerances; 'practice' means common practice, no published source.
constexpr double program_insulation_mohm = 1.0;  // IEC 60364-6 table 6A, 500 V d.c. test
constexpr double program_trip_ms = 300.0;        // IEC 60364-6 / IEC 61008-1, general type at rated residual current
constexpr double touch_v = 50.0;                 // IEC 60364-4-41, 411.5.3: R_A I_dn <= 50 V
constexpr double program_residual_ma = 30.0;     // device assumed
constexpr double stable_earth_ohm = 200.0;       // above it an electrode may dry out, practice
constexpr double most_conductor_ohm = 1.0;       // practice
constexpr double supply_share = 0.10;            // EN 50160: within 10 % of the nominal voltage
constexpr double clamp_meter = 0.03;             // practice
constexpr double standing_share = 0.15;          // of the rating: below it the compressor is not running, practice
constexpr double least_wall_kohm = 10.0;         // practice
constexpr const char* own_limit = "limit of the job";
constexpr const char* practice = "common practice, no published source";

bool not_below_zero(Assessment& a, const Reading& reading, const char* what, const char* unit) {
    if (std::isfinite(reading.value) && reading.value >= 0.0) return true;
    conclude(a, Verdict::cannot_tell,
             std::string("A ") + what + " of " + fixed(reading.value, 2) + ' ' + unit + " cannot be",
             "Correct the entry");
    return false;
}

void doubt(Assessment& a, const Reading& reading) {
    if (const std::string text = calibration_doubt(reading, false); !text.empty()) a.words += "; " + text;
}

/// Passed or failed by a limit, with the working that goes with it.
void by_limit(Assessment& a, const Reading& reading, bool good, std::string words, std::string next) {
    a.working.result = good ? "passed" : "failed";
    if (good) {
        conclude(a, Verdict::passed, std::move(words), "");
    } else {
        conclude(a, Verdict::failed, std::move(words), std::move(next));
    }
    doubt(a, reading);
}

bool terra_neutral(EarthingSystem earthing) {
    return earthing == EarthingSystem::tn_s || earthing == EarthingSystem::tn_c_s;
}

}  // namespace

std::optional<Assessment> wall_contact(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::wall_contact);
    if (reading == nullptr || !expected.condenser_immersed) return std::nullopt;
    Assessment a = about("Wall contact", *reading);
    if (!not_below_zero(a, *reading, "resistance", "kOhm")) return a;
    a.working = {"commissioning.wall-contact",
                 "Condenser open to the cylinder's wall, dry",
                 "R >= 10 kOhm",
                 {{"R", fixed(reading->value, 1) + " kOhm"}},
                 "",
                 practice,
                 false};
    by_limit(a, *reading, reading->value >= least_wall_kohm,
             fixed(reading->value, 1) + " kOhm between condenser and wall, at least " + fixed(least_wall_kohm, 0) +
                 " kOhm is asked for",
             "Do not fill: move the condenser clear of the wall, renew the insulating bushes, and read again");
    return a;
}

std::optional<Assessment> insulation(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::insulation_resistance);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Insulation resistance", *reading);
    if (!not_below_zero(a, *reading, "resistance", "MOhm")) return a;
    const double least = expected.limits.least_insulation_mohm.value_or(program_insulation_mohm);
    a.working = {"commissioning.insulation",
                 "Insulation resistance at 500 V d.c.",
                 "R >= " + fixed(least, 2) + " MOhm",
                 {{"R", fixed(reading->value, 2) + " MOhm"}},
                 "",
                 expected.limits.least_insulation_mohm ? own_limit : "IEC 60364-6, table 6A",
                 false};
    by_limit(a, *reading, reading->value >= least,
             fixed(reading->value, 2) + " MOhm, at least " + fixed(least, 2) + " MOhm is asked for",
             "Do not switch on: part the block and heater from the circuit, measure each, and mend the weak one");
    return a;
}

std::optional<Assessment> protective_conductor(const Standing& record) {
    const Reading* reading = newest(record, ReadingKind::protective_conductor);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Protective conductor", *reading);
    if (!not_below_zero(a, *reading, "resistance", "ohm")) return a;
    a.working = {"commissioning.protective-conductor",
                 "Continuity of the protective conductor",
                 "R <= 1 ohm",
                 {{"R", fixed(reading->value, 2) + " ohm"}},
                 "",
                 practice,
                 false};
    by_limit(a, *reading, reading->value <= most_conductor_ohm,
             fixed(reading->value, 2) + " ohm, at most " + fixed(most_conductor_ohm, 0) + " ohm",
             "Do not switch on: find the break or the loose terminal, and read again");
    return a;
}

std::optional<Assessment> earth(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::earth_resistance);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Earth", *reading);
    if (!not_below_zero(a, *reading, "resistance", "ohm")) return a;
    const bool told = expected.limits.residual_current_ma.has_value();
    const double device_ma = expected.limits.residual_current_ma.value_or(program_residual_ma);
    const double by_touch = touch_v / (1e-3 * device_ma);
    const double most_ohm = expected.limits.most_earth_ohm.value_or(by_touch);
    a.working = {
        "commissioning.earth",
        "Earth resistance with a residual-current device",
        "R_A I_dn <= 50 V",
        {{"R_A", fixed(reading->value, 2) + " ohm"}, {told ? "I_dn" : "I_dn (assumed)", fixed(device_ma, 0) + " mA"}},
        "",
        expected.limits.most_earth_ohm ? own_limit : "IEC 60364-4-41, 411.5.3",
        !told};
    const std::string words = fixed(reading->value, 2) + " ohm; at most " + fixed(most_ohm, 0) + " ohm with a " +
                              fixed(device_ma, 0) + " mA device";
    by_limit(a, *reading, reading->value <= most_ohm, words,
             "Do not switch on: find the break in the protective conductor or mend the electrode");
    if (a.verdict == Verdict::passed && reading->value > stable_earth_ohm && !expected.limits.most_earth_ohm) {
        conclude(a, Verdict::cannot_tell,
                 words + "; above " + fixed(stable_earth_ohm, 0) + " ohm an electrode may rise when the soil dries",
                 "Have the electrician judge the earth of the house");
        a.working.result = "cannot tell";
    }
    return a;
}

std::optional<Assessment> loop_impedance(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::loop_impedance);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Loop impedance", *reading);
    if (!not_below_zero(a, *reading, "loop impedance", "ohm")) return a;
    const std::string found = fixed(reading->value, 2) + " ohm";
    const bool own = expected.limits.most_loop_ohm.has_value();
    const double most_ohm = expected.limits.most_loop_ohm.value_or(expected.most_loop_ohm);
    if (!own && !terra_neutral(expected.earthing)) {
        conclude(a, Verdict::cannot_tell,
                 found + (expected.earthing == EarthingSystem::unknown
                              ? "; the earthing system is not told"
                              : "; outside TN the residual-current device and the earth decide"),
                 "Enter the earthing system at the visit, or the limit asked for with the job's limits");
        return a;
    }
    if (!(most_ohm > 0.0)) {
        conclude(a, Verdict::cannot_tell, found + "; no limit is known for the breaker planned",
                 "Enter the limit asked for with the job's limits");
        return a;
    }
    a.working = {"commissioning.loop",
                 "Fault loop trips the breaker at once",
                 "Z_s <= limit on the cold circuit",
                 {{"Z_s", found}, {"limit", fixed(most_ohm, 2) + " ohm"}},
                 "",
                 own ? own_limit : "IEC 60364-4-41, 411.4.4, with the plan's breaker (docs/handbook/services.md)",
                 false};
    by_limit(a, *reading, reading->value <= most_ohm, found + ", at most " + fixed(most_ohm, 2) + " ohm",
             "Do not switch on: a thicker cable, a smaller breaker, or find the bad joint");
    return a;
}

std::optional<Assessment> residual_current(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::residual_current_trip);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Residual-current trip", *reading);
    if (!std::isfinite(reading->value) || !(reading->value > 0.0)) {
        conclude(a, Verdict::cannot_tell, "A trip time of " + fixed(reading->value, 0) + " ms cannot be",
                 "Correct the entry; a device that does not trip is failed: enter the longest time of the tester");
        return a;
    }
    const double most_ms = expected.limits.most_trip_ms.value_or(program_trip_ms);
    a.working = {"commissioning.residual-current",
                 "Trip time at rated residual current",
                 "t <= " + fixed(most_ms, 0) + " ms",
                 {{"t", fixed(reading->value, 0) + " ms"}},
                 "",
                 expected.limits.most_trip_ms ? own_limit : "IEC 60364-6 with IEC 61008-1, general type",
                 false};
    by_limit(a, *reading, reading->value <= most_ms,
             "Trips in " + fixed(reading->value, 0) + " ms, at most " + fixed(most_ms, 0) + " ms is allowed",
             "Do not switch on: change the device and test again");
    return a;
}

std::optional<Assessment> supply_voltage(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::supply_voltage);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Supply voltage", *reading);
    if (!not_below_zero(a, *reading, "voltage", "V")) return a;
    if (!(expected.supply_v > 0.0)) {
        conclude(a, Verdict::cannot_tell, fixed(reading->value, 0) + " V; the block's voltage is not known",
                 "Enter the supply of the house at the visit");
        return a;
    }
    const double low = (1.0 - supply_share) * expected.supply_v, high = (1.0 + supply_share) * expected.supply_v;
    a.working = {"commissioning.voltage",
                 "Supply voltage at the block",
                 "U_n - 10 % <= U <= U_n + 10 %",
                 {{"U", fixed(reading->value, 0) + " V"}, {"U_n", fixed(expected.supply_v, 0) + " V"}},
                 "",
                 "EN 50160 (from memory)",
                 false};
    by_limit(a, *reading, reading->value >= low && reading->value <= high,
             fixed(reading->value, 0) + " V; " + fixed(low, 0) + " to " + fixed(high, 0) + " V is right",
             "Do not switch on: have the supply checked by the network's owner");
    return a;
}

std::optional<Assessment> current(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::supply_current);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Supply current", *reading);
    if (!not_below_zero(a, *reading, "current", "A")) return a;
    a.working = {"commissioning.current",
                 "Supply current of the block",
                 "I <= I_max",
                 {{"I", fixed(reading->value, 2) + " A"}, {"clamp meter (assumed)", "+/- 3 %"}},
                 "at most " + fixed(expected.rated_current_a, 2) + " A",
                 "equipment data",
                 true};
    const std::string words =
        fixed(reading->value, 1) + " A; the block may take " + fixed(expected.rated_current_a, 1) + " A";
    if (reading->value > expected.rated_current_a * (1.0 + clamp_meter)) {
        conclude(a, Verdict::failed, words,
                 "Switch off; check supply voltage, that the immersion heater is not in the reading, and the charge");
    } else if (reading->value < standing_share * expected.rated_current_a) {
        conclude(a, Verdict::cannot_tell, words + ": the compressor seems not to be running",
                 "Read again while it heats");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    doubt(a, *reading);
    return a;
}

}  // namespace wg::commissioning::checks
