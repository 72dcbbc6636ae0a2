// The ideal-gas hold and evacuation: docs/handbook/commissioning.md.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/commissioning/vacuum_curve.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::commissioning {
namespace {

constexpr double standard_bar = standard_pressure_pa * 1e-5;

constexpr double vacuum_limit_pa = 270.0;  // EN 378-4 before charging, from memory; the job's own goes before it
constexpr double deep_vacuum_pa = 66.66;   // 500 micron, as makers of tools and blocks ask
constexpr double least_rise_min = 20.0;    // hold after valve-off, as makers ask
constexpr double coldest_c = 5.0;          // common practice: below it moisture hides as ice or dries too slowly
constexpr double wet_band = 0.25;          // level within this share of the vapour pressure: likely moisture

bool plausible_temperature(double t_c) {
    return std::isfinite(t_c) && t_c > -60.0 && t_c < 120.0;
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

double limit_of(const Expected& expected) {
    return expected.limits.most_vacuum_pa.value_or(vacuum_limit_pa);
}

Working vacuum_working(double level_pa, double after_pa, double cold_c, double limit_pa) {
    Working w;
    w.key = "commissioning.evacuation";
    w.title = "Evacuation: level and rise after valve-off";
    w.formula = "p after rise against the limit; wet when it stops near the vapour pressure of the coldest part";
    w.inputs = {{"level", pascal(level_pa)},
                {"after rise", pascal(after_pa)},
                {"coldest part", fixed(cold_c, 1) + " deg C"},
                {"vapour pressure there", pascal(water_vapour_pa(cold_c))},
                {"limit", pascal(limit_pa)},
                {"500 micron", pascal(deep_vacuum_pa)}};
    w.result = "rise " + pascal(after_pa - level_pa);
    w.source = (limit_pa == vacuum_limit_pa ? std::string("EN 378-4 (270 Pa, from memory)")
                                            : std::string("the job's own limit")) +
               "; vapour pressure: WMO Guide No. 8, annex 4.B";
    return w;
}

void judge_rise(Assessment& a, const Reading& level, const Reading& after, double cold_c, double limit_pa) {
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
    } else if (after.value > limit_pa) {
        const bool wet = std::fabs(after.value - vapour_pa) <= wet_band * vapour_pa;
        conclude(a, Verdict::failed,
                 words + (wet ? ": it stops near the vapour pressure of water there, " + pascal(vapour_pa) +
                                    ", so the circuit is wet"
                              : ": more than " + pascal(limit_pa) + ", so air comes in or gas comes out of the oil"),
                 wet ? "Break the vacuum with dry nitrogen and evacuate again, three times if need be"
                     : "Check hoses and joints of the pump first, then hold under pressure again");
    } else if (const auto minutes = minutes_between(level, after); !minutes || *minutes < least_rise_min) {
        conclude(a, Verdict::cannot_tell,
                 words + (minutes ? ", after " + fixed(*minutes, 0) + " minutes only"
                                  : "; the times do not tell how long it stood"),
                 "Leave it for at least " + fixed(least_rise_min, 0) + " minutes and read again");
    } else {
        const bool deep = after.value <= deep_vacuum_pa;
        conclude(
            a, Verdict::passed,
            words + " in " + fixed(*minutes, 0) + " minutes: " +
                (deep ? std::string("within 500 micron") +
                            (limit_pa < deep_vacuum_pa ? " and the " + pascal(limit_pa) + " asked for" : std::string())
                      : "within " + pascal(limit_pa) + ", not within the 500 micron that some makers ask"),
            "");
    }
}

}  // namespace

std::optional<Assessment> evacuation(const Standing& record, const Expected& expected) {
    if (auto by_curve = evacuation_curve(record, expected)) return by_curve;
    const double limit_pa = limit_of(expected);
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
    } else if (pair.first->value > limit_pa) {
        conclude(a, Verdict::failed,
                 pascal(pair.first->value) + " at the end of evacuation is above " + pascal(limit_pa),
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
        a.working = vacuum_working(pair.first->value, pair.second->value, *cold, limit_pa);
        judge_rise(a, *pair.first, *pair.second, *cold, limit_pa);
        if (const std::string doubt = calibration_doubt(*pair.second, false); !doubt.empty()) a.words += "; " + doubt;
    }
    return a;
}

}  // namespace checks
}  // namespace wg::commissioning
