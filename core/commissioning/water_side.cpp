// Water side, scald and hygiene, and the record's own chain: docs/handbook/commissioning.md.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/job/record_chain.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

constexpr double valve_share = 0.8;         // static pressure to the safety valve's, EN 1489 practice; as core/services
constexpr double reducing_band_bar = 0.5;   // a reducing valve holds its setting within this, practice
constexpr double program_tap_c = 48.0;      // TMV schemes: 41 shower, 43 basin, 46 bath (48 at most), from memory
constexpr double thermometer_band_k = 1.0;  // practice
constexpr double setting_band_k = 1.0;      // a control sets whole degrees, practice
constexpr double hygiene_band_days = 0.5;   // practice
constexpr const char* practice_only = "common practice, no published source";

bool water_possible(Assessment& a, double t_c) {
    if (std::isfinite(t_c) && t_c > -5.0 && t_c < 105.0) return true;
    conclude(a, Verdict::cannot_tell, "Water of " + fixed(t_c, 1) + " deg C cannot be", "Correct the entry");
    return false;
}

std::optional<Assessment> done_or_not(const Standing& record, ReadingKind kind, const char* subject, const char* yes,
                                      const char* no, const char* next) {
    const Reading* reading = newest(record, kind);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about(subject, *reading);
    if (reading->value == 1.0) {
        conclude(a, Verdict::passed, yes, "");
    } else if (reading->value == 0.0) {
        conclude(a, Verdict::failed, no, next);
    } else {
        conclude(a, Verdict::cannot_tell, "The entry is neither yes nor no", "Correct the entry");
    }
    return a;
}

}  // namespace

std::optional<Assessment> cold_pressure(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::cold_pressure);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Cold water pressure", *reading);
    const std::string found = fixed(reading->value, 2) + " bar";
    if (!std::isfinite(reading->value) || reading->value < 0.0 || reading->value > 40.0) {
        conclude(a, Verdict::cannot_tell, "A pressure of " + found + " cannot be", "Correct the entry: bar gauge");
        return a;
    }
    const double most = valve_share * expected.safety_valve_bar;
    a.working = {
        "commissioning.cold-pressure",
        "Cold water pressure, no tap open",
        "p <= 0.8 p_valve",
        {{"p", found},
         {"safety valve", fixed(expected.safety_valve_bar, 1) + " bar"},
         {"reducing valve set to", expected.reducing_valve_bar > 0.0 ? fixed(expected.reducing_valve_bar, 1) + " bar"
                                                                     : std::string("none planned")}},
        "at most " + fixed(most, 2) + " bar",
        "0.8 of the valve's setting: common practice, no published source",
        false};
    if (!(expected.safety_valve_bar > 0.0)) {
        conclude(a, Verdict::cannot_tell, found + "; the safety valve's setting is not known",
                 "Enter the pressure that the cylinder may carry");
    } else if (reading->value > most) {
        conclude(a, Verdict::failed,
                 found + ", more than " + fixed(most, 2) + " bar, 0.8 of the safety valve's " +
                     fixed(expected.safety_valve_bar, 1) + " bar: it will drip at every heating",
                 "Fit a reducing valve, or set it lower, and read again with no tap open");
    } else if (expected.reducing_valve_bar > 0.0 && reading->value > expected.reducing_valve_bar + reducing_band_bar) {
        conclude(a, Verdict::failed,
                 found + "; the reducing valve is planned at " + fixed(expected.reducing_valve_bar, 1) + " bar",
                 "Set the reducing valve, open and close a tap, and read again after ten minutes");
    } else {
        conclude(a, Verdict::passed, found + ", at most " + fixed(most, 2) + " bar", "");
    }
    return a;
}

std::optional<Assessment> water_vented(const Standing& record) {
    return done_or_not(record, ReadingKind::water_vented, "Water vented",
                       "Water without air at the farthest tap, nothing drips", "Not free of air, or it drips",
                       "Do not switch on: fill until the farthest tap runs without air, and mend what drips");
}

std::optional<Assessment> safety_valve(const Standing& record) {
    return done_or_not(record, ReadingKind::safety_valve_lift, "Safety valve",
                       "Lifts by hand, runs to the tundish and closes", "Does not lift, run off or close",
                       "Do not heat: change the valve or free its discharge, and lift it again");
}

std::optional<Assessment> tap_temperature(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::tap_temperature);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Tap temperature", *reading);
    if (!water_possible(a, reading->value)) return a;
    const bool own = expected.limits.most_tap_c.has_value();
    const double most = expected.limits.most_tap_c.value_or(program_tap_c);
    const std::string words =
        fixed(reading->value, 1) + " deg C at the tap, at most " + fixed(most, 0) + " deg C against scalding";
    a.working = {"commissioning.tap",
                 "Hot water at the tap against scalding",
                 "T <= T_most",
                 {{"T", fixed(reading->value, 1) + " deg C"}, {"thermometer (assumed)", "+/- 1 K"}},
                 "at most " + fixed(most, 0) + " deg C",
                 own ? "limit of the job" : "thermostatic mixing valve schemes (41 to 46, bath 48 deg C), from memory",
                 !own};
    if (reading->value > most + thermometer_band_k) {
        conclude(a, Verdict::failed, words, "Set the mixing valve lower, or fit one, and read again; warn of scalding");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    return a;
}

std::optional<Assessment> set_point(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::set_point);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Set-point", *reading);
    if (!water_possible(a, reading->value)) return a;
    a.working = {"commissioning.set-point",
                 "Set-point as set against the plan",
                 "|T - T_plan| <= 1 K",
                 {{"set", fixed(reading->value, 1) + " deg C"}, {"plan", fixed(expected.set_point_c, 1) + " deg C"}},
                 fixed(reading->value - expected.set_point_c, 1) + " K",
                 practice_only,
                 false};
    const std::string words =
        "Set to " + fixed(reading->value, 1) + " deg C, planned " + fixed(expected.set_point_c, 1) + " deg C";
    if (std::fabs(reading->value - expected.set_point_c) > setting_band_k) {
        conclude(a, Verdict::failed, words, "Set it as planned, or change the plan: yield and hygiene rest on it");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    return a;
}

std::optional<Assessment> hygiene(const Standing& record, const Expected& expected) {
    const Reading* reading = newest(record, ReadingKind::hygiene_setting);
    if (reading == nullptr) return std::nullopt;
    Assessment a = about("Hygiene run", *reading);
    if (!water_possible(a, reading->value)) return a;
    const std::string set =
        "Set to " + fixed(reading->value, 1) + " deg C" +
        (reading->second_value ? " every " + fixed(*reading->second_value, 0) + " days" : std::string());
    if (!(expected.hygiene_target_c > 0.0)) {
        conclude(a, Verdict::cannot_tell, set + "; none is planned", "Plan the hygiene run, or switch it off");
        return a;
    }
    a.working = {"commissioning.hygiene",
                 "Hygiene run as set against the plan",
                 "T >= T_plan - 1 K, no rarer than planned",
                 {{"planned", fixed(expected.hygiene_target_c, 1) + " deg C every " +
                                  fixed(expected.hygiene_every_days, 0) + " days"}},
                 set,
                 practice_only,
                 false};
    const std::string words = set + ", planned " + fixed(expected.hygiene_target_c, 1) + " deg C every " +
                              fixed(expected.hygiene_every_days, 0) + " days";
    if (reading->value < expected.hygiene_target_c - setting_band_k ||
        (reading->second_value && *reading->second_value > expected.hygiene_every_days + hygiene_band_days)) {
        conclude(a, Verdict::failed, words, "Set it as planned, or change the plan");
    } else if (!reading->second_value) {
        conclude(a, Verdict::cannot_tell, words + "; how often is not told", "Enter the days from run to run");
    } else {
        conclude(a, Verdict::passed, words, "");
    }
    return a;
}

std::optional<Assessment> record_whole(const std::vector<Reading>& record) {
    const ChainReport report = check_chain(record);
    if (report.whole()) return std::nullopt;
    Assessment a;
    a.subject = "Record";
    std::string words;
    for (const ChainBreak& broken : report.breaks) {
        a.reading_ids.push_back(broken.reading_id);
        words += (words.empty() ? "Entry " : "; entry ") + std::to_string(broken.index + 1) + " of " +
                 record[broken.index].taken_at + " " + broken.what;
    }
    conclude(a, Verdict::failed, words,
             "Compare with the signed print or a copy of the job; enter anew what cannot be proved");
    return a;
}

}  // namespace wg::commissioning::checks
