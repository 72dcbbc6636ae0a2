#pragma once
// Entries of a record as a technician makes them, and the verdict on one subject.

#include <gtest/gtest.h>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "core/commissioning/commissioning.h"
#include "core/commissioning/model.h"

namespace wg::commissioning {
namespace verdicts_test {

using K = ReadingKind;

inline Reading entry(K kind, double value, const std::string& at, std::optional<double> second = std::nullopt) {
    static int number = 0;
    Reading r;
    r.id = "v" + std::to_string(++number);
    r.kind = kind;
    r.value = value;
    r.second_value = second;
    r.taken_at = at;
    return r;
}

inline Reading held(K kind, double bar, const std::string& at, double plate_c, double indoors_c) {
    Reading r = entry(kind, bar, at, plate_c);
    r.indoors_c = indoors_c;
    r.subject = "dry nitrogen";
    r.plate = PlateState::in_shade;
    r.calibrated_on = "2027-01-15";
    r.instrument = "gauge";
    return r;
}

inline Expected of_plan() {
    Expected e;
    e.test_pressure_bar = 25.0;
    e.max_pressure_bar = 38.0;
    e.volume_outdoors = 0.7;
    e.tested_volume_l = 2.0;
    e.safety_valve_bar = 6.0;
    e.supply_v = 230.0;
    return e;
}

inline std::optional<Assessment> subject_of(const std::vector<Assessment>& all, const std::string& subject) {
    const auto it = std::find_if(all.begin(), all.end(), [&](const Assessment& a) { return a.subject == subject; });
    return it == all.end() ? std::nullopt : std::optional(*it);
}

inline Assessment judged(const std::vector<Reading>& record, const std::string& subject, const Expected& e = of_plan(),
                         const Model* model = nullptr) {
    const auto found = subject_of(assess(record, e, model), subject);
    EXPECT_TRUE(found) << subject;
    return found.value_or(Assessment{});
}

inline bool says(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

}  // namespace verdicts_test
}  // namespace wg::commissioning
