// Pressure hold and evacuation: docs/handbook/commissioning.md.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/commissioning/vacuum_curve.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::commissioning {
namespace {

constexpr double standard_bar = standard_pressure_pa * 1e-5;

// Instruments, assumed where the record does not tell: a class 1 gauge to 10 bar or a digital one, and a probe.
constexpr double gauge_bar = 0.1;
constexpr double thermometer_k = 1.0;
constexpr double assumed_indoors_c = 20.0;
constexpr double least_hold_min = 30.0;  // common practice, no published source
constexpr double under_test_bar = 0.5;   // a test is 'at' its pressure within this

constexpr double vacuum_limit_pa = 270.0;  // EN 378-4 before charging, from memory
constexpr double deep_vacuum_pa = 66.66;   // 500 micron, as makers of tools and blocks ask
constexpr double least_rise_min = 20.0;    // hold after valve-off, as makers ask
constexpr double coldest_c = 5.0;          // common practice: below it moisture hides as ice or dries too slowly
constexpr double wet_band = 0.25;          // level within this share of the vapour pressure: likely moisture

bool plausible_pressure(const Reading& r) {
    return std::isfinite(r.value) && r.value > -standard_bar && r.value < 200.0;
}
bool plausible_temperature(double t_c) {
    return std::isfinite(t_c) && t_c > -60.0 && t_c < 120.0;
}

std::string bar(double value) {
    return fixed(value, 2) + " bar";
}
std::string pascal(double value) {
    return fixed(value, value < 100.0 ? 1 : 0) + " Pa";
}

}  // namespace

double hold_pressure_bar(double start_bar_gauge, double start_c, double end_c) {
    return (start_bar_gauge + standard_bar) * kelvin(end_c) / kelvin(start_c) - standard_bar;
}

double hold_pressure_bar(double start_bar_gauge, double start_c, double end_c, double outdoors_share,
                         double indoors_c) {
    const double indoors = (1.0 - outdoors_share) / kelvin(indoors_c);
    const double before = outdoors_share / kelvin(start_c) + indoors;
    const double after = outdoors_share / kelvin(end_c) + indoors;
    return (start_bar_gauge + standard_bar) * before / after - standard_bar;
}

namespace checks {
namespace {

/// What the gas should read at the end, and how far a sound system may stray from it.
struct HoldBand {
    double expected_bar = 0.0;
    double other_bar = 0.0;  ///< when all the gas followed the thermometer
    double spread_bar = 0.0;
};

HoldBand hold_band(const Reading& start, const Reading& end, const Expected& expected) {
    HoldBand band;
    const double from_c = *start.second_value;
    const double to_c = *end.second_value;
    const double share = std::clamp(expected.volume_outdoors, 0.0, 1.0);
    band.expected_bar = hold_pressure_bar(start.value, from_c, to_c, share, assumed_indoors_c);
    band.other_bar = hold_pressure_bar(start.value, from_c, to_c);
    const double per_k = (start.value + standard_bar) / kelvin(from_c) * share;
    band.spread_bar = std::sqrt(2.0) * std::hypot(gauge_bar, per_k * thermometer_k);
    return band;
}

Working hold_working(const Reading& start, const Reading& end, const Expected& expected, const HoldBand& band) {
    Working w;
    w.key = "commissioning.pressure-hold";
    w.title = "Pressure to be read at the end of the hold";
    w.formula = "p2 = (p1 + 1.01325) (s/T1 + (1 - s)/Ti)/(s/T2 + (1 - s)/Ti) - 1.01325";
    w.inputs = {{"p1, start", bar(start.value)},
                {"T1, T2, gas outdoors", fixed(*start.second_value, 1) + ", " + fixed(*end.second_value, 1) + " deg C"},
                {"s, share of the volume outdoors", fixed(expected.volume_outdoors, 2)},
                {"Ti, indoors, unchanged (assumed)", fixed(assumed_indoors_c, 0) + " deg C"},
                {"gauge (assumed)", "+/- " + bar(gauge_bar)},
                {"thermometer (assumed)", "+/- " + fixed(thermometer_k, 0) + " K"}};
    w.result = bar(band.expected_bar) + " +/- " + bar(band.spread_bar);
    w.source = "ideal gas law, two connected volumes";
    w.assumed = true;
    return w;
}

void judge_hold(Assessment& a, const Reading& start, const Reading& end, const Expected& expected,
                const HoldBand& band) {
    const double difference = end.value - band.expected_bar;
    const std::string words = bar(start.value) + " became " + bar(end.value) + "; " + bar(band.expected_bar) + " +/- " +
                              fixed(band.spread_bar, 2) + " is expected after the change of temperature";
    const double lowest = std::min(band.expected_bar, band.other_bar) - band.spread_bar;
    if (end.value < lowest) {
        conclude(a, Verdict::failed, words + ": " + bar(-difference) + " are missing",
                 "Find the leak with foam at every joint, mend it without pressure, and hold again");
        return;
    }
    if (std::fabs(difference) > band.spread_bar) {
        conclude(a, Verdict::cannot_tell,
                 words + ": temperature alone may explain the difference, if the thermometer did not follow the gas",
                 "Hold again in steady temperature, out of the sun, with the probe on the tube under insulation");
        return;
    }
    if (start.value < expected.test_pressure_bar - under_test_bar) {
        conclude(a, Verdict::cannot_tell, words + "; but the test is asked for at " + bar(expected.test_pressure_bar),
                 "Raise to the test pressure with dry nitrogen and hold again");
        return;
    }
    const std::optional<double> minutes = minutes_between(start, end);
    if (!minutes || *minutes < least_hold_min) {
        conclude(a, Verdict::cannot_tell,
                 words + (minutes ? ", after " + fixed(*minutes, 0) + " minutes only"
                                  : "; the times do not tell how long it was held"),
                 "Hold for at least " + fixed(least_hold_min, 0) + " minutes and read again");
        return;
    }
    conclude(a, Verdict::passed, words + ", held for " + fixed(*minutes, 0) + " minutes", "");
}

}  // namespace

std::optional<Assessment> pressure_hold(const Standing& record, const Expected& expected) {
    const Pair pair = newest_pair(record, ReadingKind::pressure_hold_start, ReadingKind::pressure_hold_end);
    if (pair.first == nullptr && pair.second == nullptr) return std::nullopt;
    Assessment a;
    a.subject = "Pressure hold";
    for (const Reading* reading : {pair.first, pair.second}) {
        if (reading != nullptr) a.reading_ids.push_back(reading->id);
    }
    for (const Reading* reading : {pair.first, pair.second}) {
        if (reading == nullptr) continue;
        if (!plausible_pressure(*reading)) {
            conclude(a, Verdict::cannot_tell, "A pressure of " + bar(reading->value) + " gauge cannot be",
                     "Correct the entry: pressures are in bar gauge");
            return a;
        }
        if (reading->value > expected.max_pressure_bar) {
            conclude(a, Verdict::failed,
                     bar(reading->value) + " is above the " + bar(expected.max_pressure_bar) +
                         " that plate and lines may carry",
                     "Release the pressure; ask the makers whether plate and lines may still be used");
            return a;
        }
    }
    if (pair.first == nullptr) {
        conclude(a, Verdict::cannot_tell, "There is an end reading without a start", "Enter the start, or hold again");
        return a;
    }
    if (pair.second == nullptr) {
        conclude(a, Verdict::cannot_tell, "Holding since the reading of " + bar(pair.first->value), "Read the end");
        return a;
    }
    if (!pair.first->second_value || !pair.second->second_value || !plausible_temperature(*pair.first->second_value) ||
        !plausible_temperature(*pair.second->second_value)) {
        conclude(a, Verdict::cannot_tell,
                 bar(pair.first->value) + " became " + bar(pair.second->value) +
                     "; without both gas temperatures a small leak and a colder gas look alike",
                 "Enter the gas temperature at start and end, or hold again with a probe on the tube");
        return a;
    }
    const HoldBand band = hold_band(*pair.first, *pair.second, expected);
    a.working = hold_working(*pair.first, *pair.second, expected, band);
    judge_hold(a, *pair.first, *pair.second, expected, band);
    return a;
}

namespace {

Working vacuum_working(double level_pa, double after_pa, double cold_c) {
    Working w;
    w.key = "commissioning.evacuation";
    w.title = "Evacuation: level and rise after valve-off";
    w.formula = "p after rise against 270 Pa; wet when it stops near the vapour pressure of the coldest part";
    w.inputs = {{"level", pascal(level_pa)},
                {"after rise", pascal(after_pa)},
                {"coldest part", fixed(cold_c, 1) + " deg C"},
                {"vapour pressure there", pascal(water_vapour_pa(cold_c))},
                {"500 micron", pascal(deep_vacuum_pa)}};
    w.result = "rise " + pascal(after_pa - level_pa);
    w.source = "EN 378-4 (270 Pa, from memory); vapour pressure: WMO Guide No. 8, annex 4.B";
    return w;
}

void judge_rise(Assessment& a, const Reading& level, const Reading& after, double cold_c) {
    const double vapour_pa = water_vapour_pa(cold_c);
    const std::string words =
        pascal(level.value) + " rose to " + pascal(after.value) + ", coldest part " + fixed(cold_c, 1) + " deg C";
    if (after.value < 0.9 * level.value) {
        conclude(a, Verdict::cannot_tell,
                 pascal(level.value) + " fell to " + pascal(after.value) + " after the valve was closed",
                 "Check the gauge and on which side of the valve it sits, and read again");
    } else if (cold_c < coldest_c) {
        conclude(a, Verdict::cannot_tell,
                 words + ": below " + fixed(coldest_c, 0) + " deg C moisture stays as ice or dries too slowly to show",
                 "Warm the coldest part, or break the vacuum with dry nitrogen and evacuate again on a warmer day");
    } else if (after.value > vacuum_limit_pa) {
        const bool wet = std::fabs(after.value - vapour_pa) <= wet_band * vapour_pa;
        conclude(
            a, Verdict::failed,
            words + (wet ? ": it stops near the vapour pressure of water there, " + pascal(vapour_pa) +
                               ", so the circuit is wet"
                         : ": more than " + pascal(vacuum_limit_pa) + ", so air comes in or gas comes out of the oil"),
            wet ? "Break the vacuum with dry nitrogen and evacuate again, three times if need be"
                : "Check hoses and joints of the pump first, then hold under pressure again");
    } else if (const auto minutes = minutes_between(level, after); !minutes || *minutes < least_rise_min) {
        conclude(a, Verdict::cannot_tell,
                 words + (minutes ? ", after " + fixed(*minutes, 0) + " minutes only"
                                  : "; the times do not tell how long it stood"),
                 "Leave it for at least " + fixed(least_rise_min, 0) + " minutes and read again");
    } else {
        const bool deep = after.value <= deep_vacuum_pa;
        conclude(a, Verdict::passed,
                 words + " in " + fixed(*minutes, 0) + " minutes: " +
                     (deep ? "within 500 micron"
                           : "within " + pascal(vacuum_limit_pa) + ", not within the 500 micron that some makers ask"),
                 "");
    }
}

}  // namespace

std::optional<Assessment> evacuation(const Standing& record) {
    if (auto by_curve = evacuation_curve(record)) return by_curve;
    const Pair pair = newest_pair(record, ReadingKind::vacuum_level, ReadingKind::vacuum_after_rise);
    if (pair.first == nullptr && pair.second == nullptr) return std::nullopt;
    Assessment a;
    a.subject = "Evacuation";
    for (const Reading* reading : {pair.first, pair.second}) {
        if (reading == nullptr) continue;
        a.reading_ids.push_back(reading->id);
    }
    for (const Reading* reading : {pair.first, pair.second}) {
        if (reading != nullptr && !(reading->value > 0.0 && reading->value < 2.0 * standard_pressure_pa)) {
            conclude(a, Verdict::cannot_tell, "A level of " + pascal(reading->value) + " absolute cannot be",
                     "Correct the entry: levels are in Pa absolute; 1 micron is 0.1333 Pa");
            return a;
        }
    }
    if (pair.first == nullptr) {
        conclude(a, Verdict::cannot_tell, "There is a reading after valve-off without the level before it",
                 "Enter the level at the end of evacuation");
    } else if (pair.first->value > vacuum_limit_pa) {
        conclude(a, Verdict::failed,
                 pascal(pair.first->value) + " at the end of evacuation is above " + pascal(vacuum_limit_pa),
                 "Go on evacuating; if the level stays, look for a leak or moisture (was the gauge read in micron?)");
    } else if (pair.second == nullptr) {
        conclude(a, Verdict::cannot_tell,
                 pascal(pair.first->value) + " reached; the rise after valve-off is not read yet",
                 "Close the valve, wait " + fixed(least_rise_min, 0) + " minutes and read");
    } else {
        // The colder of the two readings decides.
        std::optional<double> cold = pair.first->second_value;
        if (pair.second->second_value)
            cold = cold ? std::min(*cold, *pair.second->second_value) : *pair.second->second_value;
        if (!cold || !plausible_temperature(*cold)) {
            conclude(a, Verdict::cannot_tell,
                     pascal(pair.first->value) + " rose to " + pascal(pair.second->value) +
                         "; without the temperature of the coldest part moisture cannot be told from tightness",
                     "Enter the temperature of the coldest part, usually the plate");
            return a;
        }
        a.working = vacuum_working(pair.first->value, pair.second->value, *cold);
        judge_rise(a, *pair.first, *pair.second, *cold);
    }
    return a;
}

}  // namespace checks
}  // namespace wg::commissioning
