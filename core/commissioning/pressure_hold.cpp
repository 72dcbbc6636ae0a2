// The pressure hold as entered: gas, pressures, temperatures and times, judged by hold.h.

#include <algorithm>
#include <array>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/commissioning/hold.h"
#include "core/quantity/constants.h"
#include "core/quantity/text.h"

namespace wg::commissioning::checks {
namespace {

// Instruments, assumed where the job does not tell: a class 1 gauge to 10 bar or a digital one, and a probe.
constexpr double assumed_gauge_bar = 0.1;
constexpr double assumed_thermometer_k = 1.0;
constexpr double assumed_leak_g_year = 50.0;
constexpr double assumed_indoors_c = 20.0;
constexpr double assumed_drift_k = 5.0;   // of an indoor temperature that was not read
constexpr double least_hold_min = 30.0;   // common practice, no published source
constexpr double under_test_bar = 0.5;    // a test is 'at' its pressure within this
constexpr double nearly_outdoors = 0.99;  // of the volume: no indoor temperature is needed

std::string bar(double value) {
    return fixed(value, 2) + " bar";
}
bool hold_pressure_possible(const Reading& r) {
    return std::isfinite(r.value) && r.value > -standard_pressure_pa * 1e-5 && r.value < 200.0;
}
bool gas_temperature_possible(const std::optional<double>& t_c) {
    return t_c && std::isfinite(*t_c) && *t_c > -40.0 && *t_c < 90.0;
}

// ------------------------------------------------------------------------------------------------------- the gas

enum class HoldGas { nitrogen, not_told, with_oxygen, other };

/// Words in lower case; bytes beyond ASCII belong to words.
std::vector<std::string> words_of(const std::string& text) {
    std::vector<std::string> out(1);
    for (const char c : text) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
        if (letter) {
            out.back() += c;
        } else if (c >= 'A' && c <= 'Z') {
            out.back() += static_cast<char>(c - 'A' + 'a');
        } else if (!out.back().empty()) {
            out.emplace_back();
        }
    }
    if (out.back().empty()) out.pop_back();
    return out;
}

template <std::size_t n>
bool any_of_words(const std::vector<std::string>& words, const std::array<const char*, n>& names) {
    return std::any_of(words.begin(), words.end(), [&](const std::string& w) {
        return std::any_of(names.begin(), names.end(), [&](const char* name) { return w == name; });
    });
}

/// The gas in the languages that papers come in; "oxygen-free nitrogen" is a trade name of nitrogen.
HoldGas gas_of(const std::string& subject) {
    static constexpr std::array nitrogen{"nitrogen", "n2",        "ofn",        "stickstoff", "azote",      "azoto",
                                         "azot",     "nitrógeno", "nitrogénio", "nitrogênio", "stikstof",   "kväve",
                                         "kvælstof", "nitrogen",  "typpi",      "dusík",      "nitrogenul", "азот"};
    static constexpr std::array oxygen{"oxygen",     "o2",       "air",       "luft",      "druckluft", "pressluft",
                                       "sauerstoff", "aire",     "aria",      "oxygène",   "oxygene",   "oxígeno",
                                       "ossigeno",   "lucht",    "perslucht", "powietrze", "tlen",      "zuurstof",
                                       "oxigênio",   "oxigénio", "ar"};
    static constexpr std::array fuel{"hydrogen",  "h2",      "wasserstoff", "acetylene", "acetylen",
                                     "acétylène", "propane", "propan",      "helium",    "co2",
                                     "argon",     "r134a",   "refrigerant"};
    std::vector<std::string> words = words_of(subject);
    if (words.empty()) return HoldGas::not_told;
    for (std::size_t i = 0; i + 1 < words.size(); ++i)
        if (words[i] == "oxygen" && words[i + 1] == "free") words[i] = "without";
    if (any_of_words(words, oxygen)) return HoldGas::with_oxygen;
    if (any_of_words(words, nitrogen) && !any_of_words(words, fuel)) return HoldGas::nitrogen;
    return HoldGas::other;
}

// ---------------------------------------------------------------------------------------------------- what counts

struct Hold {
    const Reading* start = nullptr;
    std::vector<const Reading*> ends;  ///< after the newest start
    const Reading* end = nullptr;      ///< the newest of them

    [[nodiscard]] std::vector<const Reading*> all() const {
        std::vector<const Reading*> out;
        if (start != nullptr) out.push_back(start);
        out.insert(out.end(), ends.begin(), ends.end());
        return out;
    }
};

Hold newest_hold(const Standing& record) {
    Hold h;
    for (const Reading& reading : record) {
        if (reading.kind == ReadingKind::pressure_hold_start) h = {&reading, {}, nullptr};
        if (reading.kind == ReadingKind::pressure_hold_end) h.ends.push_back(&reading);
    }
    for (const Reading* reading : h.ends) {
        // In the order of the record where times do not tell.
        if (h.end == nullptr || minutes_between(*h.end, *reading) || !minutes_between(*reading, *h.end))
            h.end = reading;
    }
    return h;
}

/// Indoors stands for nothing where next to all gas is outdoors.
std::optional<double> indoors_of(const Reading& reading, const Expected& expected) {
    if (reading.indoors_c) return reading.indoors_c;
    return expected.volume_outdoors >= nearly_outdoors ? reading.second_value : std::nullopt;
}

HoldTest hold_test(const Reading& start, const Reading& end, const Expected& expected) {
    HoldTest t;
    const auto taken = [&](const Reading& r) {
        return HoldReading{r.value, r.second_value, indoors_of(r, expected), r.plate == PlateState::in_sun};
    };
    t.start = taken(start);
    t.end = taken(end);
    t.hours = minutes_between(start, end).value_or(0.0) / 60.0;
    t.volume_l = expected.tested_volume_l;
    t.outdoors_share = std::clamp(expected.volume_outdoors, 0.0, 1.0);
    t.air_pressure_bar = expected.air_pressure_bar;
    t.instruments.gauge_bar = expected.limits.gauge_error_bar.value_or(assumed_gauge_bar);
    t.instruments.thermometer_k = expected.limits.thermometer_error_k.value_or(assumed_thermometer_k);
    t.leak_limit_g_year = expected.limits.most_leak_g_year.value_or(assumed_leak_g_year);
    return t;
}

Working hold_working(const HoldTest& t, const HoldResult& r, const Expected& expected) {
    const auto named = [](const char* name, bool told) { return std::string(name) + (told ? "" : " (assumed)"); };
    Working w;
    w.key = "commissioning.pressure-hold";
    w.title = "Pressure to be read at the end of the hold";
    w.formula = "p sum(V/(Z T)) stays; g a year by laminar flow";
    w.inputs = {{"start, end", bar(t.start.gauge_bar) + ", " + bar(t.end.gauge_bar) + " gauge"},
                {"gas outdoors", fixed(*t.start.plate_c, 1) + ", " + fixed(*t.end.plate_c, 1) + " deg C"},
                {"gas indoors", fixed(*t.start.indoors_c, 1) + ", " + fixed(*t.end.indoors_c, 1) + " deg C"},
                {"share of the volume outdoors", fixed(t.outdoors_share, 2) + " of " + fixed(t.volume_l, 1) + " l"},
                {"air", bar(t.air_pressure_bar)},
                {"held for", fixed(t.hours, 1) + " hours"},
                {named("gauge", expected.limits.gauge_error_bar.has_value()),
                 "+/- " + fixed(t.instruments.gauge_bar, 3) + " bar"},
                {named("thermometer", expected.limits.thermometer_error_k.has_value()),
                 "+/- " + fixed(t.instruments.thermometer_k, 1) + " K"},
                {named("leak to be ruled out", expected.limits.most_leak_g_year.has_value()),
                 fixed(t.leak_limit_g_year, 0) + " g of R134a a year"},
                {"by the ideal gas law", bar(r.ideal_gas_bar)}};
    w.result = bar(r.expected_bar) + " +/- " + fixed(r.spread_bar, 2) + " bar";
    w.source = "nitrogen by virial coefficients (Span and others 2000), connected volumes; EN 378-2 (from memory)";
    w.assumed = true;
    return w;
}

/// More than two readings make a picture.
std::optional<Curve> hold_curve(const Hold& hold, const Expected& expected) {
    if (hold.ends.size() < 2) return std::nullopt;
    Curve c{"since the start", "h", "gauge", "bar", {{0.0, hold.start->value}}, {}, "if tight", {}, {}, {}, ""};
    for (const Reading* end : hold.ends) {
        const auto minutes = minutes_between(*hold.start, *end);
        if (!minutes) return std::nullopt;
        const double h = *minutes / 60.0;
        c.read.push_back({h, end->value});
        const HoldResult r = judge(hold_test(*hold.start, *end, expected));
        if (r.verdict == HoldVerdict::no_temperature) continue;
        if (c.fitted.empty()) {
            const double gauge_bar = expected.limits.gauge_error_bar.value_or(assumed_gauge_bar);
            c.fitted.push_back({0.0, hold.start->value});
            c.low.push_back({0.0, hold.start->value - gauge_bar});
            c.high.push_back({0.0, hold.start->value + gauge_bar});
        }
        c.fitted.push_back({h, r.expected_bar});
        c.low.push_back({h, r.expected_bar - r.spread_bar});
        c.high.push_back({h, r.expected_bar + r.spread_bar});
    }
    for (std::vector<Curve::Point>* line : {&c.read, &c.fitted, &c.low, &c.high})
        std::stable_sort(line->begin(), line->end(),
                         [](const Curve::Point& a, const Curve::Point& b) { return a.x < b.x; });
    return c;
}

// --------------------------------------------------------------------------------------------------- the verdict

/// Without the indoor temperature only a loss beyond all that temperature may do is told.
void judge_without_indoors(Assessment& a, const Reading& start, const Reading& end, const HoldTest& t) {
    const double partly = hold_pressure_bar(start.value, *start.second_value, *end.second_value, t.outdoors_share,
                                            start.indoors_c.value_or(end.indoors_c.value_or(assumed_indoors_c)));
    const double wholly = hold_pressure_bar(start.value, *start.second_value, *end.second_value);
    const double per_k = (start.value + t.air_pressure_bar) / kelvin(*start.second_value);
    const double spread = std::sqrt(2.0) * std::hypot(t.instruments.gauge_bar, per_k * t.instruments.thermometer_k) +
                          per_k * (1.0 - t.outdoors_share) * assumed_drift_k;
    const double lowest = std::min(partly, wholly) - spread;
    const std::string words = bar(start.value) + " became " + bar(end.value);
    if (end.value < lowest) {
        conclude(a, Verdict::failed,
                 words + "; temperature alone explains no less than " + bar(lowest) +
                     ", though the gas indoors was not read",
                 "Find the leak with foam at every joint, mend it without pressure, and hold again");
    } else {
        conclude(a, Verdict::cannot_tell,
                 words + "; without the temperature of the gas indoors a small leak and a warmer room look alike",
                 "Enter the gas temperature indoors at start and end, or hold again with a second probe");
    }
}

void judge_by_model(Assessment& a, const Reading& start, const HoldTest& t, const HoldResult& r,
                    const Expected& expected) {
    const std::string words = bar(t.start.gauge_bar) + " became " + bar(t.end.gauge_bar) + " in " + fixed(t.hours, 1) +
                              " hours; " + bar(r.expected_bar) + " +/- " + fixed(r.spread_bar, 2) +
                              " is expected at the temperatures read";
    const std::string limit = fixed(t.leak_limit_g_year, 0) + " g of R134a a year";
    if (r.verdict == HoldVerdict::leak) {
        conclude(a, Verdict::failed,
                 words + ": " + bar(r.missing_bar) + " are missing, a leak of about " + fixed(r.leak_g_year, 0) +
                     " g of R134a a year",
                 "Find the leak with foam at every joint, mend it without pressure, and hold again");
    } else if (r.verdict == HoldVerdict::gained) {
        conclude(a, Verdict::cannot_tell,
                 words + ": " + bar(-r.missing_bar) +
                     " more than can be, so a probe did not follow the gas, or the "
                     "bottle's valve leaks",
                 "Close and take off the bottle; hold again out of the sun, probes on the tubes under insulation");
    } else if (t.start.gauge_bar < expected.test_pressure_bar - under_test_bar) {
        conclude(a, Verdict::cannot_tell, words + "; but the test is asked for at " + bar(expected.test_pressure_bar),
                 "Raise to the test pressure with dry nitrogen and hold again");
    } else if (t.hours * 60.0 < least_hold_min) {
        conclude(a, Verdict::cannot_tell, words + "; the gas needs time to settle",
                 "Hold for at least " + fixed(least_hold_min, 0) + " minutes, until " +
                     clock_after(start.taken_at, least_hold_min) + ", and read again");
    } else if (r.verdict == HoldVerdict::wait_longer) {
        const std::string until = clock_after(start.taken_at, r.hours_needed * 60.0);
        conclude(a, Verdict::cannot_tell, words + ": no loss is seen, but " + limit + " are not ruled out yet",
                 "Wait longer: " + fixed(r.hours_needed, 1) + " hours in all" +
                     (until.empty() ? std::string() : ", until " + until) +
                     ", and read again; a finer gauge shortens it; foam on every joint meanwhile");
    } else {
        conclude(a, Verdict::passed, words + ": tight, " + limit + " are ruled out", "");
    }
}

/// What does not change the verdict and has to be known with it.
std::string besides(const Hold& hold, const Expected& expected) {
    std::string out;
    const auto say = [&out](const std::string& text) {
        if (!text.empty()) out += "; " + text;
    };
    if (gas_of(hold.start->subject) == HoldGas::not_told) say("the gas is not told, dry nitrogen is taken");
    if (expected.standstill_bar > 0.0 && hold.start->value < expected.standstill_bar)
        say("held below the highest standstill pressure of " + bar(expected.standstill_bar) + ", which proves less");
    if (hold.start->plate == PlateState::not_told || hold.end->plate == PlateState::not_told)
        say("whether sun was on the plate is not told");
    const std::string first = calibration_doubt(*hold.start, true);
    say(first);
    if (const std::string second = calibration_doubt(*hold.end, true); second != first) say(second);
    return out;
}

/// True when the entries alone settle it.
bool settled_by_entries(Assessment& a, const Hold& hold, const Expected& expected) {
    for (const Reading* reading : hold.all()) {
        const HoldGas gas = gas_of(reading->subject);
        if (gas == HoldGas::with_oxygen) {
            conclude(a, Verdict::failed,
                     "Held with " + reading->subject +
                         ": danger, oxygen or compressed air may explode with the oil under pressure",
                     "Stop; keep flames and sparks away and let it out slowly; blow through with dry nitrogen and hold "
                     "again");
            return true;
        }
        if (gas == HoldGas::other) {
            conclude(a, Verdict::failed, "Held with " + reading->subject + ", not with dry nitrogen: it proves nothing",
                     "Let it out and hold again with dry nitrogen");
            return true;
        }
        if (!hold_pressure_possible(*reading)) {
            conclude(a, Verdict::cannot_tell, "A pressure of " + bar(reading->value) + " gauge cannot be",
                     "Correct the entry: pressures are in bar gauge");
            return true;
        }
        if (reading->value > expected.max_pressure_bar) {
            conclude(a, Verdict::failed,
                     bar(reading->value) + " is above the " + bar(expected.max_pressure_bar) +
                         " that plate and lines may carry",
                     "Release the pressure; ask the makers whether plate and lines may still be used");
            return true;
        }
    }
    if (hold.start == nullptr) {
        conclude(a, Verdict::cannot_tell, "There is an end reading without a start", "Enter the start, or hold again");
        return true;
    }
    if (hold.end == nullptr) {
        conclude(a, Verdict::cannot_tell, "Holding since the reading of " + bar(hold.start->value), "Read the end");
        return true;
    }
    if (!gas_temperature_possible(hold.start->second_value) || !gas_temperature_possible(hold.end->second_value)) {
        conclude(a, Verdict::cannot_tell,
                 bar(hold.start->value) + " became " + bar(hold.end->value) +
                     "; without both gas temperatures a small leak and a colder gas look alike",
                 "Enter the gas temperature at start and end, or hold again with a probe on the tube");
        return true;
    }
    if (hold.start->plate == PlateState::in_sun || hold.end->plate == PlateState::in_sun) {
        conclude(a, Verdict::cannot_tell,
                 bar(hold.start->value) + " became " + bar(hold.end->value) +
                     " with the sun on the plate: no probe tells the temperature of the gas",
                 "Cover the plate, or hold from evening to morning, and read both with the plate in shade");
        return true;
    }
    return false;
}

}  // namespace

std::optional<Assessment> pressure_hold(const Standing& record, const Expected& expected) {
    const Hold hold = newest_hold(record);
    if (hold.start == nullptr && hold.ends.empty()) return std::nullopt;
    Assessment a;
    a.subject = "Pressure hold";
    for (const Reading* reading : hold.all())
        a.reading_ids.push_back(reading->id);
    if (hold.start != nullptr && !hold.ends.empty()) a.curve = hold_curve(hold, expected);
    if (settled_by_entries(a, hold, expected)) return a;

    const HoldTest test = hold_test(*hold.start, *hold.end, expected);
    if (!(test.hours > 0.0)) {
        conclude(
            a, Verdict::cannot_tell,
            bar(hold.start->value) + " became " + bar(hold.end->value) + "; the times do not tell how long it was held",
            "Correct the times, or hold for at least " + fixed(least_hold_min, 0) + " minutes and read again");
    } else if (!gas_temperature_possible(test.start.indoors_c) || !gas_temperature_possible(test.end.indoors_c)) {
        judge_without_indoors(a, *hold.start, *hold.end, test);
    } else {
        const HoldResult result = judge(test);
        if (result.verdict == HoldVerdict::no_temperature) {
            conclude(a, Verdict::cannot_tell, "A start at " + bar(hold.start->value) + " proves nothing",
                     "Raise to the test pressure with dry nitrogen and hold again");
        } else {
            a.working = hold_working(test, result, expected);
            judge_by_model(a, *hold.start, test, result, expected);
        }
    }
    a.words += besides(hold, expected);
    return a;
}

}  // namespace wg::commissioning::checks
