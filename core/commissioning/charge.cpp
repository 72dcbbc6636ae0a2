// What the circuit holds against the plan: docs/handbook/commissioning.md.

#include <algorithm>
#include <cmath>

#include "core/commissioning/checks.h"
#include "core/commissioning/weighed.h"
#include "core/quantity/text.h"

namespace wg::commissioning {

Weighed weighed(const std::vector<Reading>& standing) {
    Weighed out;
    for (const Reading& reading : standing) {
        double* into = nullptr;
        if (reading.kind == ReadingKind::charge_added) into = &out.added_kg;
        if (reading.kind == ReadingKind::refrigerant_recovered) into = &out.recovered_kg;
        if (reading.kind == ReadingKind::refrigerant_lost) into = &out.lost_kg;
        if (into == nullptr) continue;
        out.reading_ids.push_back(reading.id);
        if (std::isfinite(reading.value) && reading.value >= 0.0) {
            *into += reading.value;
        } else if (out.unreadable == nullptr) {
            out.unreadable = &reading;
        }
    }
    return out;
}

namespace checks {
namespace {

constexpr double charge_scale_kg = 0.02;  // resolution of a charging scale with hose, practice
constexpr double charge_share = 0.05;     // of what was planned beyond the factory charge, practice

}  // namespace

std::optional<Assessment> charge(const Standing& record, const Expected& expected) {
    const Weighed w = weighed(record);
    Assessment a;
    a.subject = "Charge";
    a.reading_ids = w.reading_ids;
    if (w.unreadable != nullptr) {
        conclude(a, Verdict::cannot_tell, "A charge of " + fixed(w.unreadable->value, 3) + " kg cannot be weighed",
                 "Correct the entry; refrigerant taken out is entered as recovered");
        return a;
    }
    if (a.reading_ids.empty()) return std::nullopt;
    const double planned_kg = expected.factory_charge_kg + expected.extra_charge_kg;
    const double held_kg = w.in_system_kg(expected.factory_charge_kg);
    const double tolerance_kg = std::max(charge_scale_kg, charge_share * expected.extra_charge_kg);
    a.working.key = "commissioning.charge";
    a.working.title = "Refrigerant in the circuit";
    a.working.formula = "factory charge + weighed in - recovered - lost, against the plan";
    a.working.inputs = {{"factory charge", fixed(expected.factory_charge_kg, 3) + " kg"},
                        {"planned beyond it", fixed(expected.extra_charge_kg, 3) + " kg"},
                        {"weighed in", fixed(w.added_kg, 3) + " kg"},
                        {"recovered", fixed(w.recovered_kg, 3) + " kg"},
                        {"lost, as far as known", fixed(w.lost_kg, 3) + " kg"}};
    const double difference_kg = held_kg - planned_kg;
    a.working.result = "difference " + fixed(difference_kg, 3) + " kg, allowed " + fixed(tolerance_kg, 3) + " kg";
    a.working.source = "equipment data; tolerance: common practice, no published source";
    std::string words = fixed(w.added_kg, 3) + " kg weighed in";
    if (w.recovered_kg > 0.0) words += ", " + fixed(w.recovered_kg, 3) + " kg recovered";
    if (w.lost_kg > 0.0) words += ", " + fixed(w.lost_kg, 3) + " kg lost";
    words += "; " + fixed(held_kg, 3) + " kg in the circuit, " + fixed(planned_kg, 3) + " kg planned (" +
             fixed(expected.extra_charge_kg, 3) + " kg beyond the factory's)";
    constexpr double rounding_kg = 1e-9;
    if (held_kg < -tolerance_kg - rounding_kg) {
        conclude(a, Verdict::cannot_tell, words + ": more was taken out than can have been in it",
                 "Correct the entries");
    } else if (std::fabs(difference_kg) <= tolerance_kg + rounding_kg) {
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

}  // namespace checks
}  // namespace wg::commissioning
