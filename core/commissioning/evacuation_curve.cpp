// Several readings after valve-off, judged as a curve; one reading alone is judged in tightness.cpp.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/commissioning/vacuum_curve.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

constexpr double deep_pa = 66.66;  // 500 micron
constexpr int curve_steps = 60;
constexpr std::size_t least_after_valve_off = 3;  // with the level before: the four that a curve needs

std::string pa_text(double value) {
    return fixed(value, value < 100.0 ? 1 : 0) + " Pa";
}

Working curve_working(const VacuumResult& r, const VacuumTest& test, double minutes) {
    Working w;
    w.key = "commissioning.evacuation";
    w.title = "Evacuation: the rise after valve-off as a curve";
    w.formula = "p = a + b t + s (1 - exp(-t/tau)), least squares";
    w.inputs = {{"readings", std::to_string(test.rise.size()) + " in " + fixed(minutes, 0) + " minutes"},
                {"a", pa_text(r.start_pa)},
                {"b", fixed(r.slope_pa_min, 2) + " Pa a minute"},
                {"s", pa_text(r.swell_pa)},
                {"tau", r.settle_min > 0.0 ? fixed(r.settle_min, 1) + " minutes" : "no swell"},
                {"root mean square of what is left", pa_text(r.residual_pa)},
                {"coldest part", fixed(test.coldest_c, 1) + " deg C, vapour pressure " + pa_text(r.vapour_pa)},
                {"limit", pa_text(test.limit_pa)},
                {"volume of plates and lines", fixed(test.volume_l, 1) + " l"}};
    w.result = pa_text(r.end_pa) + " at the last reading";
    w.source =
        "limit: EN 378-4 (270 Pa, from memory) or the job's own; vapour pressure: WMO Guide No. 8, annex 4.B; least "
        "squares";
    w.assumed = true;
    return w;
}

Curve rise_curve(const VacuumResult& r, const VacuumTest& test, double minutes) {
    Curve c{"since valve-off", "min", "absolute", "Pa", {}, {}, "fitted", {}, {}, test.limit_pa, "limit"};
    for (const VacuumReading& reading : test.rise)
        c.read.push_back({reading.minutes, reading.pa});
    if (!(minutes > 0.0) || r.verdict == VacuumVerdict::not_true) return c;
    for (int i = 0; i <= curve_steps; ++i) {
        const double t = minutes * i / curve_steps;
        c.fitted.push_back({t, r.at(t)});
    }
    return c;
}

void conclude_curve(Assessment& a, const VacuumResult& r, const VacuumTest& test, double minutes) {
    const std::string rose = pa_text(test.rise.front().pa) + " rose to " + pa_text(test.rise.back().pa) + " in " +
                             fixed(minutes, 0) + " minutes, coldest part " + fixed(test.coldest_c, 1) + " deg C";
    switch (r.verdict) {
        case VacuumVerdict::dry_and_tight:
            conclude(a, Verdict::passed,
                     rose + ": dry and tight, " +
                         (test.rise.back().pa <= deep_pa ? "within 500 micron" : "within " + pa_text(test.limit_pa)) +
                         "; vapour pressure of water there " + pa_text(r.vapour_pa),
                     "");
            break;
        case VacuumVerdict::moisture:
            conclude(a, Verdict::failed,
                     rose + ": it levels off at " + pa_text(r.levels_at_pa) +
                         ", near the vapour pressure of water there, " + pa_text(r.vapour_pa) + ": the circuit is wet",
                     "Break the vacuum with dry nitrogen and evacuate again, three times if need be");
            break;
        case VacuumVerdict::outgassing:
            conclude(
                a, Verdict::failed,
                rose + ": it levels off at " + pa_text(r.levels_at_pa) + ", too low for water: gas out of oil or hoses",
                "Go on evacuating, with short hoses, and read the rise again");
            break;
        case VacuumVerdict::leak:
            conclude(a, Verdict::failed,
                     rose + ": it goes on rising by " + fixed(r.slope_pa_min, 1) +
                         " Pa a minute, so air comes in (about " + fixed(r.leak_g_year, 0) + " g of R134a a year)",
                     "Check hoses and joints of the pump first, then hold under pressure again");
            break;
        case VacuumVerdict::wait_longer:
            conclude(a, Verdict::cannot_tell, rose + ": too short to tell",
                     "Leave it for at least " + fixed(test.least_minutes, 0) + " minutes and read on");
            break;
        case VacuumVerdict::too_cold:
            conclude(a, Verdict::cannot_tell, rose + ": moisture stays as ice or dries too slowly to show",
                     "Warm the coldest part, or break the vacuum with dry nitrogen and evacuate again on a warmer day");
            break;
        case VacuumVerdict::not_true:
            conclude(a, Verdict::cannot_tell, "A level among the readings cannot be",
                     "Correct the entry: levels are in Pa absolute; 1 micron is 0.1333 Pa");
            break;
    }
}

}  // namespace

std::optional<Assessment> evacuation_curve(const Standing& record, const Expected& expected) {
    const Reading* level = nullptr;
    std::vector<const Reading*> after;
    for (const Reading& reading : record) {
        if (reading.kind == ReadingKind::vacuum_level) {
            level = &reading;
            after.clear();
        } else if (reading.kind == ReadingKind::vacuum_after_rise && level != nullptr) {
            after.push_back(&reading);
        }
    }
    if (after.size() < least_after_valve_off) return std::nullopt;
    VacuumTest test;
    test.limit_pa = expected.limits.most_vacuum_pa.value_or(test.limit_pa);
    test.volume_l = expected.tested_volume_l;
    test.rise.push_back({0.0, level->value});
    std::optional<double> coldest = level->second_value;
    Assessment a;
    a.subject = "Evacuation";
    a.reading_ids.push_back(level->id);
    for (const Reading* reading : after) {
        const std::optional<double> minutes = minutes_between(*level, *reading);
        if (!minutes) return std::nullopt;  // stamps that cannot be read: judged by the last reading alone
        test.rise.push_back({*minutes, reading->value});
        a.reading_ids.push_back(reading->id);
        if (reading->second_value)
            coldest = coldest ? std::min(*coldest, *reading->second_value) : *reading->second_value;
    }
    if (!coldest) return std::nullopt;
    test.coldest_c = *coldest;
    std::stable_sort(test.rise.begin(), test.rise.end(),
                     [](const VacuumReading& x, const VacuumReading& y) { return x.minutes < y.minutes; });
    const double minutes = test.rise.back().minutes;
    const VacuumResult result = judge(test);
    // A level too high before valve-off, and one that falls after it, are told better by the single reading's rules.
    if (level->value > test.limit_pa || test.rise.back().pa < 0.9 * level->value) return std::nullopt;
    a.working = curve_working(result, test, minutes);
    conclude_curve(a, result, test, minutes);
    if (const std::string doubt = calibration_doubt(*after.back(), false); !doubt.empty()) a.words += "; " + doubt;
    a.curve = rise_curve(result, test, minutes);
    return a;
}

}  // namespace wg::commissioning::checks
