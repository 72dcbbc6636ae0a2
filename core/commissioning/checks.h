#pragma once
// One verdict a subject, over the standing readings. Internal to core/commissioning.

#include <optional>
#include <vector>

#include "core/commissioning/commissioning.h"

namespace wg::commissioning::checks {

/// Readings after corrections, in the order of the record.
using Standing = std::vector<Reading>;

/// Each returns nullopt when no reading of its kind was taken.
[[nodiscard]] std::optional<Assessment> pressure_hold(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> evacuation(const Standing& record);
/// By the curve when there are three readings after valve-off or more, with times and a temperature.
[[nodiscard]] std::optional<Assessment> evacuation_curve(const Standing& record);
[[nodiscard]] std::optional<Assessment> charge(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> insulation(const Standing& record);
[[nodiscard]] std::optional<Assessment> earth(const Standing& record);
[[nodiscard]] std::optional<Assessment> residual_current(const Standing& record);
[[nodiscard]] std::optional<Assessment> current(const Standing& record, const Expected& expected);
[[nodiscard]] std::optional<Assessment> running_temperatures(const Standing& record);
[[nodiscard]] std::optional<Assessment> water_temperature(const Standing& record, const Expected& expected);

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

/// Sets verdict, words and next in one line; `next` is empty when passed.
void conclude(Assessment& assessment, Verdict verdict, std::string words, std::string next);

}  // namespace wg::commissioning::checks
