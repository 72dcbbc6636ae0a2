#include "core/commissioning/commissioning.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>
#include <utility>

#include "core/commissioning/checks.h"
#include "core/job/after_corrections.h"
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
    return after_corrections(record);
}

namespace {

std::vector<Assessment> judge_all(const checks::Standing& now, const checks::Standing& charged,
                                  const Expected& expected, const Model* model) {
    std::vector<Assessment> out;
    const auto take = [&out](std::optional<Assessment> assessment) {
        if (assessment) out.push_back(std::move(*assessment));
    };
    take(checks::wall_contact(now, expected));
    take(checks::pressure_hold(now, expected));
    take(checks::evacuation(now, expected));
    take(checks::charge(charged, expected));
    take(checks::cold_pressure(now, expected));
    take(checks::water_vented(now));
    take(checks::safety_valve(now));
    take(checks::protective_conductor(now));
    take(checks::insulation(now, expected));
    take(checks::earth(now, expected));
    take(checks::loop_impedance(now, expected));
    take(checks::residual_current(now, expected));
    take(checks::supply_voltage(now, expected));
    take(checks::set_point(now, expected));
    take(checks::hygiene(now, expected));
    take(checks::current(now, expected));
    take(checks::running_pump(now, model));
    take(checks::first_heating(now, expected, model));
    take(checks::tap_temperature(now, expected));
    return out;
}

}  // namespace

std::vector<Assessment> assess(const std::vector<Reading>& record, const Expected& expected, const Model* model) {
    const checks::Standing now = checks::of_installation(standing(record));
    std::vector<Assessment> out = judge_all(now, now, expected, model);
    if (auto broken = checks::record_whole(record)) out.push_back(std::move(*broken));
    return out;
}

std::vector<Assessment> assess_service(const std::vector<Reading>& record, const Expected& expected,
                                       const Model* model) {
    const checks::Standing all = standing(record);
    const checks::Standing now = checks::of_newest_service(all);
    const bool charged = std::any_of(now.begin(), now.end(), [](const Reading& r) {
        return r.kind == ReadingKind::charge_added || r.kind == ReadingKind::refrigerant_recovered ||
               r.kind == ReadingKind::refrigerant_lost;
    });
    std::vector<Assessment> out = judge_all(now, charged ? all : checks::Standing(), expected, model);
    for (Assessment& a : out)
        if (a.subject == "First heating") a.subject = "Heating";
    return out;
}

std::vector<std::string> outstanding(const std::vector<Reading>& record, const Expected& expected) {
    const checks::Standing now = checks::of_installation(standing(record));
    std::vector<std::string> out;
    const auto want = [&](const char* subject, std::initializer_list<ReadingKind> kinds) {
        for (const ReadingKind kind : kinds) {
            if (checks::newest(now, kind) != nullptr) continue;
            out.emplace_back(subject);
            return;
        }
    };
    using K = ReadingKind;
    if (expected.condenser_immersed) want("Wall contact", {K::wall_contact});
    want("Pressure hold", {K::pressure_hold_start, K::pressure_hold_end});
    want("Evacuation", {K::vacuum_level, K::vacuum_after_rise});
    if (expected.extra_charge_kg > 0.0) want("Charge", {K::charge_added});
    want("Cold water pressure", {K::cold_pressure});
    want("Water vented", {K::water_vented});
    want("Safety valve", {K::safety_valve_lift});
    want("Protective conductor", {K::protective_conductor});
    want("Insulation resistance", {K::insulation_resistance});
    const bool tn = expected.earthing == EarthingSystem::tn_s || expected.earthing == EarthingSystem::tn_c_s;
    if (tn) {
        want("Loop impedance", {K::loop_impedance});
    } else {
        want("Earth", {K::earth_resistance});
    }
    want("Residual-current trip", {K::residual_current_trip});
    want("Supply voltage", {K::supply_voltage});
    want("Set-point", {K::set_point});
    if (expected.hygiene_target_c > 0.0) want("Hygiene run", {K::hygiene_setting});
    want("Supply current", {K::supply_current});
    want("Running pump",
         {K::suction_temperature, K::discharge_temperature, K::outdoor_temperature, K::water_temperature});
    want("First heating", {K::heating_start, K::heating_end});
    want("Tap temperature", {K::tap_temperature});
    // Hold points in the order in which they were first entered; the newest entry of each counts.
    std::vector<std::string> seen;
    for (const Reading& reading : now) {
        if (reading.kind != K::hold_point || reading.subject.empty()) continue;
        if (std::find(seen.begin(), seen.end(), reading.subject) != seen.end()) continue;
        seen.push_back(reading.subject);
        const auto last = std::find_if(now.rbegin(), now.rend(), [&](const Reading& r) {
            return r.kind == K::hold_point && r.subject == reading.subject;
        });
        if (!(last->value == 1.0)) out.push_back("Hold point: " + reading.subject);
    }
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

namespace {

bool is_figure(ReadingKind kind) {
    switch (kind) {
        case ReadingKind::remark:
        case ReadingKind::serial_number:
        case ReadingKind::signature:
        case ReadingKind::photograph:
        case ReadingKind::hold_point:
        case ReadingKind::service_done: return false;
        default: return true;
    }
}

/// Seconds of a stamp's own offset; the stamp was read already.
std::int64_t offset_s(const std::string& stamp) {
    if (stamp.size() < 6 || stamp.back() == 'Z' || stamp.back() == 'z') return 0;
    const std::string tail = stamp.substr(stamp.size() - 6);
    if (tail[3] != ':' || (tail[0] != '+' && tail[0] != '-')) return 0;
    const auto digits = [&](std::size_t at) { return 10 * (tail[at] - '0') + (tail[at + 1] - '0'); };
    return (tail[0] == '-' ? -60 : 60) * (60 * digits(1) + digits(4));
}

}  // namespace

Standing of_installation(const Standing& record) {
    Standing out;
    for (const Reading& reading : record)
        if (reading.occasion != Occasion::service) out.push_back(reading);
    return out;
}

Standing of_newest_service(const Standing& record) {
    const auto day = [](const Reading& r) {
        return instant_from_iso8601(r.taken_at) ? r.taken_at.substr(0, 10) : std::string();
    };
    const auto counts = [](const Reading& r) { return r.occasion == Occasion::service && is_figure(r.kind); };
    std::string newest_day;
    for (const Reading& reading : record)
        if (counts(reading)) newest_day = std::max(newest_day, day(reading));
    Standing out;
    for (const Reading& reading : record)
        if (counts(reading) && day(reading) == newest_day) out.push_back(reading);
    return out;
}

std::string clock_after(const std::string& stamp, double minutes) {
    const Result<Instant> from = instant_from_iso8601(stamp);
    if (!from || !(minutes >= 0.0) || minutes > 60.0 * 24.0 * 366.0) return {};
    const std::int64_t whole = static_cast<std::int64_t>(std::ceil(minutes)) * 60;
    const std::string text = iso8601(Instant{from.value().unix_s + whole + offset_s(stamp)});
    return text.substr(11, 5) + " on " + text.substr(0, 10);
}

Assessment about(const char* subject, const Reading& reading) {
    Assessment a;
    a.subject = subject;
    a.reading_ids = {reading.id};
    return a;
}

std::string calibration_doubt(const Reading& reading, bool say_not_told) {
    constexpr std::int64_t a_year = 366;
    const std::string what = reading.instrument.empty() ? "the instrument" : reading.instrument;
    if (reading.calibrated_on.empty()) return say_not_told ? "calibration of " + what + " is not told" : "";
    const Result<CivilDate> on = date_from_iso8601(reading.calibrated_on);
    const Result<CivilDate> at = date_from_iso8601(reading.taken_at.substr(0, 10));
    if (!on) return "the date of calibration of " + what + " cannot be read";
    if (!at) return {};
    const std::int64_t days = days_from_civil(at.value()) - days_from_civil(on.value());
    if (days < 0) return what + " was calibrated after the reading, on " + reading.calibrated_on;
    if (days <= a_year) return {};
    return what + " was last calibrated on " + reading.calibrated_on + ", more than a year before";
}

void conclude(Assessment& assessment, Verdict verdict, std::string words, std::string next) {
    assessment.verdict = verdict;
    assessment.words = std::move(words);
    assessment.next = std::move(next);
}

}  // namespace checks
}  // namespace wg::commissioning
