#pragma once
// One verdict a subject, over the standing readings that count. Internal to core/commissioning.

#include <optional>
#include <string>
#include <vector>

#include "core/commissioning/commissioning.h"

namespace wg::commissioning::checks {

/// Readings after corrections, in the order of the record.
using Standing = std::vector<Reading>;

/// Of what was fitted: occasions fitting and repair.
[[nodiscard]] Standing of_installation(const Standing& record);
/// Of the newest day with a reading of occasion service; remarks, photographs and the like do not make a day.
[[nodiscard]] Standing of_newest_service(const Standing& record);

/// Each returns nullopt when no reading of its kind was taken.
[[nodiscard]] std::optional<Assessment> pressure_hold(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> evacuation(const Standing& record, const Expected& expected);
/// By the curve when there are three readings after valve-off or more, with times and a temperature.
[[nodiscard]] std::optional<Assessment> evacuation_curve(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> charge(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> wall_contact(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> insulation(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> protective_conductor(const Standing& record);
[[nodiscard]] std::optional<Assessment> earth(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> loop_impedance(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> residual_current(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> supply_voltage(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> current(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> running_pump(const Standing& record, const Model* model);
[[nodiscard]] std::optional<Assessment> first_heating(const Standing& record, const Expected& expected,
                                                      const Model* model);
[[nodiscard]] std::optional<Assessment> cold_pressure(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> water_vented(const Standing& record);
[[nodiscard]] std::optional<Assessment> safety_valve(const Standing& record);
[[nodiscard]] std::optional<Assessment> tap_temperature(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> set_point(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> hygiene(const Standing& record, const Expected& expected);
/// Over the whole record as it stands written, corrected entries too; nullopt when its chain is whole.
[[nodiscard]] std::optional<Assessment> record_whole(const std::vector<Reading>& record);

/// The newest reading of a kind; nullptr when there is none.
[[nodiscard]] const Reading* newest(const Standing& record, ReadingKind kind) noexcept;

/// A pair as it was taken: the newest `first` and the newest `second` that stands after it in the record.
struct Pair {
    const Reading* first = nullptr;
    const Reading* second = nullptr;
};
[[nodiscard]] Pair newest_pair(const Standing& record, ReadingKind first, ReadingKind second) noexcept;

/// Minutes between two readings; nullopt when a stamp cannot be read or the second lies before the first.
[[nodiscard]] std::optional<double> minutes_between(const Reading& first, const Reading& second);

/// Clock and day `minutes` after a stamp, by the stamp's own offset: "14:05 on 2027-04-02"; empty: cannot be read.
[[nodiscard]] std::string clock_after(const std::string& stamp, double minutes);

/// An assessment of one reading.
[[nodiscard]] Assessment about(const char* subject, const Reading& reading);

/// What calibration leaves in doubt, in words for the end of a sentence; empty when nothing. Older than a year at the
/// reading is too old (common practice, no published source).
[[nodiscard]] std::string calibration_doubt(const Reading& reading, bool say_not_told);

/// Sets verdict, words and next in one line; `next` is empty when passed.
void conclude(Assessment& assessment, Verdict verdict, std::string words, std::string next);

}  // namespace wg::commissioning::checks
