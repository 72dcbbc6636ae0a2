#include "core/commissioning/commissioning.h"

#include <algorithm>
#include <utility>

#include "core/commissioning/checks.h"
#include "core/quantity/time.h"

namespace wg::commissioning {

const char* word(Verdict verdict) noexcept {
    switch (verdict) {
        case Verdict::passed: return "passed";
        case Verdict::failed: return "failed";
        case Verdict::cannot_tell: return "cannot tell";
    }
    return "cannot tell";
}

std::vector<Reading> standing(const std::vector<Reading>& record) {
    std::vector<Reading> out;
    for (const Reading& reading : record) {
        // A correction names an entry that was there before it; anything else it names is left alone, so that no
        // circle of corrections can make readings vanish.
        const auto named =
            reading.corrects_id.empty()
                ? out.end()
                : std::find_if(out.begin(), out.end(), [&](const Reading& r) { return r.id == reading.corrects_id; });
        if (named == out.end()) {
            out.push_back(reading);
        } else {
            *named = reading;  // keeps the place, so that pairs stay pairs
        }
    }
    return out;
}

std::vector<Assessment> assess(const std::vector<Reading>& record, const Expected& expected) {
    const std::vector<Reading> now = standing(record);
    std::vector<Assessment> out;
    const auto take = [&out](std::optional<Assessment> assessment) {
        if (assessment) out.push_back(std::move(*assessment));
    };
    take(checks::pressure_hold(now, expected));
    take(checks::evacuation(now));
    take(checks::charge(now, expected));
    take(checks::insulation(now));
    take(checks::earth(now));
    take(checks::residual_current(now));
    take(checks::current(now, expected));
    take(checks::running_temperatures(now));
    take(checks::water_temperature(now, expected));
    return out;
}

std::vector<std::string> outstanding(const std::vector<Reading>& record, const Expected& expected) {
    const std::vector<Reading> now = standing(record);
    const auto has = [&now](ReadingKind kind) { return checks::newest(now, kind) != nullptr; };
    std::vector<std::string> out;
    if (!has(ReadingKind::pressure_hold_start) || !has(ReadingKind::pressure_hold_end))
        out.emplace_back("Pressure hold");
    if (!has(ReadingKind::vacuum_level) || !has(ReadingKind::vacuum_after_rise)) out.emplace_back("Evacuation");
    if (expected.extra_charge_kg > 0.0 && !has(ReadingKind::charge_added)) out.emplace_back("Charge");
    if (!has(ReadingKind::insulation_resistance)) out.emplace_back("Insulation resistance");
    if (!has(ReadingKind::earth_resistance)) out.emplace_back("Earth");
    if (!has(ReadingKind::residual_current_trip)) out.emplace_back("Residual-current trip");
    if (!has(ReadingKind::supply_current)) out.emplace_back("Supply current");
    if (!has(ReadingKind::suction_temperature) || !has(ReadingKind::discharge_temperature)) {
        out.emplace_back("Running temperatures");
    }
    if (!has(ReadingKind::water_temperature)) out.emplace_back("First heating");
    return out;
}

namespace checks {

const Reading* newest(const Standing& record, ReadingKind kind) noexcept {
    for (auto it = record.rbegin(); it != record.rend(); ++it) {
        if (it->kind == kind) return &*it;
    }
    return nullptr;
}

Pair newest_pair(const Standing& record, ReadingKind first, ReadingKind second) noexcept {
    Pair pair;
    for (const Reading& reading : record) {
        if (reading.kind == first) pair = {&reading, nullptr};
        if (reading.kind == second) pair.second = &reading;
    }
    return pair;
}

std::optional<double> minutes_between(const Reading& first, const Reading& second) {
    const Result<Instant> a = instant_from_iso8601(first.taken_at);
    const Result<Instant> b = instant_from_iso8601(second.taken_at);
    if (!a || !b || b.value() < a.value()) return std::nullopt;
    return static_cast<double>(b.value().unix_s - a.value().unix_s) / 60.0;
}

void conclude(Assessment& assessment, Verdict verdict, std::string words, std::string next) {
    assessment.verdict = verdict;
    assessment.words = std::move(words);
    assessment.next = std::move(next);
}

}  // namespace checks
}  // namespace wg::commissioning
