// Charge, electrical tests and first heating: docs/handbook/commissioning.md.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

// Tolerances and limits; 'practice' means common practice, no published source.
constexpr double charge_scale_kg = 0.02;       // resolution of a charging scale with hose, practice
constexpr double charge_share = 0.05;          // practice
constexpr double least_insulation_mohm = 1.0;  // IEC 60364-6 table 6A, 500 V d.c. test
constexpr double most_trip_ms = 300.0;         // IEC 60364-6 / IEC 61008-1, general type at rated residual current
constexpr double touch_v = 50.0;               // IEC 60364-4-41, 411.5.3: R_A I_dn <= 50 V
constexpr double residual_a = 0.03;            // device assumed
constexpr double stable_earth_ohm = 200.0;     // above it an electrode may dry out, practice
constexpr double clamp_meter = 0.03;           // clamp meter, practice
constexpr double idle_share = 0.15;            // below it the compressor is not running, practice
constexpr double oil_limit_c = 120.0;          // discharge above it harms oil, practice
constexpr double least_work_k = 10.0;          // discharge over suction when compressing, practice
constexpr double reached_k = 3.0;              // sensor and layering, practice
constexpr double overshoot_k = 5.0;            // practice

Assessment about(const char* subject, const Reading& reading) {
    Assessment a;
    a.subject = subject;
    a.reading_ids = {reading.id};
    return a;
}

// True when the reading can be used; else the assessment says why not.
bool usable(Assessment& a, const Reading& reading, bool above_zero, const char* unit) {
    if (std::isfinite(reading.value) && (!above_zero || reading.value > 0.0)) return true;
    conclude(a, Verdict::cannot_tell, "A reading of " + fixed(reading.value, 2) + ' ' + unit + " cannot be",
             "Correct the entry");
    return false;
}

}  // namespace

std::optional<Assessment> charge(const Standing& record, const Expected& expected) {
    // Refrigerant may be weighed in several goes: all of them count.
    double added_kg = 0.0;
    Assessment a;
    a.subject = "Charge";
    for (const Reading& reading : record) {
        if (reading.kind != ReadingKind::charge_added) continue;
        a.reading_ids.push_back(reading.id);
        added_kg += reading.value;
        if (!std::isfinite(reading.value) || reading.value < 0.0) {
            conclude(a, Verdict::cannot_tell, "A charge of " + fixed(reading.value, 3) + " kg cannot be weighed in",
                     "Correct the entry; refrigerant taken out belongs in a remark");
            return a;
        }
    }
    if (a.reading_ids.empty()) return std::nullopt;
    const double planned_kg = expected.extra_charge_kg;
    const double tolerance_kg = std::max(charge_scale_kg, charge_share * planned_kg);
    a.working.key = "commissioning.charge";
    a.working.title = "Refrigerant weighed in";
    a.working.formula = "sum of weighings against the plan";
    a.working.inputs = {{"planned beyond the factory charge", fixed(planned_kg, 3) + " kg"},
                        {"weighed in", fixed(added_kg, 3) + " kg"}};
    a.working.result =
        "difference " + fixed(added_kg - planned_kg, 3) + " kg, allowed " + fixed(tolerance_kg, 3) + " kg";
    a.working.source = "equipment data; tolerance: common practice, no published source";
    const std::string words = fixed(added_kg, 3) + " kg weighed in, " + fixed(planned_kg, 3) + " kg planned";
    const double difference_kg = added_kg - planned_kg;
    if (std::fabs(difference_kg) <= tolerance_kg) {
        conclude(a, Verdict::passed, words, "");
    } else if (difference_kg < 0.0) {
        conclude(a, Verdict::failed, words + ": too little",
                 "Weigh in the missing " + fixed(-difference_kg, 3) + " kg");
    } else {
        conclude(a, Verdict::failed, words + ": too much",
                 "Recover " + fixed(difference_kg, 3) + " kg, or check whether the run was built longer than planned");
    }
    return a;
}

std::optional<Assessment> insulation(const Standing& record) {
    const Reading* reading = newest(record, ReadingKind::insulation_resistance);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Insulation resistance", *reading);
    if (!std::isfinite(reading->value) || reading->value < 0.0) {
        conclude(a, Verdict::cannot_tell, "A resistance of " + fixed(reading->value, 2) + " MOhm cannot be",
                 "Correct the entry");
        return a;
    }
    const std::string words =
        fixed(reading->value, 2) + " MOhm, at least " + fixed(least_insulation_mohm, 0) + " MOhm is asked for";
    a.working = {"commissioning.insulation",
                 "Insulation resistance at 500 V d.c.",
                 "R >= 1 MOhm",
                 {{"R", fixed(reading->value, 2) + " MOhm"}},
                 word(reading->value >= least_insulation_mohm ? Verdict::passed : Verdict::failed),
                 "IEC 60364-6, table 6A",
                 false};
    if (reading->value >= least_insulation_mohm) {
        conclude(a, Verdict::passed, words, "");
    } else {
        conclude(a, Verdict::failed, words,
                 "Do not switch on: part the block and heater from the circuit, measure each, and mend the weak one");
    }
    return a;
}

std::optional<Assessment> earth(const Standing& record) {
    const Reading* reading = newest(record, ReadingKind::earth_resistance);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Earth", *reading);
    if (!std::isfinite(reading->value) || reading->value < 0.0) {
        conclude(a, Verdict::cannot_tell, "A resistance of " + fixed(reading->value, 2) + " ohm cannot be",
                 "Correct the entry");
        return a;
    }
    const double most_ohm = touch_v / residual_a;
    a.working = {"commissioning.earth",
                 "Earth resistance with a residual-current device",
                 "R_A I_dn <= 50 V",
                 {{"R_A", fixed(reading->value, 2) + " ohm"}, {"I_dn (assumed)", "30 mA"}},
                 "at most " + fixed(most_ohm, 0) + " ohm",
                 "IEC 60364-4-41, 411.5.3",
                 true};
    const std::string words =
        fixed(reading->value, 2) + " ohm; at most " + fixed(most_ohm, 0) + " ohm with a 30 mA device";
    if (reading->value > most_ohm) {
        conclude(a, Verdict::failed, words,
                 "Do not switch on: find the break in the protective conductor or mend the electrode");
    } else if (reading->value > stable_earth_ohm) {
        conclude(a, Verdict::cannot_tell,
                 words + "; above " + fixed(stable_earth_ohm, 0) + " ohm an electrode may rise when the soil dries",
                 "Have the electrician judge the earth of the house");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    return a;
}

std::optional<Assessment> residual_current(const Standing& record) {
    const Reading* reading = newest(record, ReadingKind::residual_current_trip);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Residual-current trip", *reading);
    if (!usable(a, *reading, true, "ms")) return a;
    a.working = {"commissioning.residual-current",
                 "Trip time at rated residual current",
                 "t <= 300 ms",
                 {{"t", fixed(reading->value, 0) + " ms"}},
                 "at most 300 ms",
                 "IEC 60364-6 with IEC 61008-1, general type",
                 false};
    const std::string words =
        "Trips in " + fixed(reading->value, 0) + " ms, at most " + fixed(most_trip_ms, 0) + " ms is allowed";
    if (reading->value <= most_trip_ms) {
        conclude(a, Verdict::passed, words, "");
    } else {
        conclude(a, Verdict::failed, words, "Do not switch on: change the device and test again");
    }
    return a;
}

std::optional<Assessment> current(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::supply_current);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Supply current", *reading);
    if (!std::isfinite(reading->value) || reading->value < 0.0) {
        conclude(a, Verdict::cannot_tell, "A current of " + fixed(reading->value, 2) + " A cannot be",
                 "Correct the entry");
        return a;
    }
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
    } else if (reading->value < idle_share * expected.rated_current_a) {
        conclude(a, Verdict::cannot_tell, words + ": the compressor seems not to be running",
                 "Read again while it heats");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    return a;
}

std::optional<Assessment> running_temperatures(const Standing& record) {
    const Reading* suction = newest(record, ReadingKind::suction_temperature);
    const Reading* discharge = newest(record, ReadingKind::discharge_temperature);
    if (suction == nullptr && discharge == nullptr) return std::nullopt;
    Assessment a;
    a.subject = "Running temperatures";
    for (const Reading* reading : {suction, discharge}) {
        if (reading != nullptr) a.reading_ids.push_back(reading->id);
    }
    for (const Reading* reading : {suction, discharge}) {
        if (reading != nullptr && !(reading->value > -60.0 && reading->value < 250.0)) {
            conclude(a, Verdict::cannot_tell, "A temperature of " + fixed(reading->value, 1) + " deg C cannot be",
                     "Correct the entry");
            return a;
        }
    }
    if (discharge != nullptr && discharge->value > oil_limit_c) {
        conclude(a, Verdict::failed,
                 "Discharge of " + fixed(discharge->value, 1) + " deg C is above " + fixed(oil_limit_c, 0) +
                     " deg C, which harms the oil",
                 "Switch off; check the charge and that the run is free");
    } else if (suction == nullptr || discharge == nullptr) {
        conclude(a, Verdict::cannot_tell,
                 std::string("Only the ") + (suction != nullptr ? "suction" : "discharge") + " temperature is read",
                 "Read the other after ten minutes of running");
    } else if (discharge->value - suction->value < least_work_k) {
        conclude(a, Verdict::failed,
                 "Discharge of " + fixed(discharge->value, 1) + " deg C is hardly over suction of " +
                     fixed(suction->value, 1) + " deg C",
                 "Check that the probes are not swapped; else the compressor does not compress");
    } else {
        conclude(a, Verdict::passed,
                 "Suction " + fixed(suction->value, 1) + " deg C, discharge " + fixed(discharge->value, 1) + " deg C",
                 "");
    }
    return a;
}

std::optional<Assessment> water_temperature(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::water_temperature);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("First heating", *reading);
    if (!(reading->value > -5.0 && reading->value < 105.0)) {
        conclude(a, Verdict::cannot_tell, "Water of " + fixed(reading->value, 1) + " deg C cannot be",
                 "Correct the entry");
        return a;
    }
    a.working = {"commissioning.water",
                 "Water temperature against set-point",
                 "T_set - 3 K <= T <= T_set + 5 K",
                 {{"T", fixed(reading->value, 1) + " deg C"}, {"T_set", fixed(expected.set_point_c, 1) + " deg C"}},
                 fixed(reading->value - expected.set_point_c, 1) + " K",
                 "common practice, no published source",
                 false};
    const std::string words = fixed(reading->value, 1) + " deg C, set to " + fixed(expected.set_point_c, 1) + " deg C";
    if (reading->value > expected.set_point_c + overshoot_k) {
        conclude(a, Verdict::failed, words + ": the control does not switch off in time",
                 "Check the sensor in its pocket and the set-point; warn of scalding until it is mended");
    } else if (reading->value < expected.set_point_c - reached_k) {
        conclude(a, Verdict::cannot_tell, words + ": not heated through yet",
                 "Read again when the pump has switched off");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    return a;
}

}  // namespace wg::commissioning::checks
