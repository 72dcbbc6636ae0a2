#pragma once
// The firm's work of a year in figures, for the desk.

#include <array>
#include <cstdint>
#include <map>
#include <string>

#include "core/store/store.h"

namespace wg::store {

using MonthCounts = std::array<int, 12>;

/// Jobs that are neither removed nor, unless asked for, demonstrations. Days are those of UTC.
struct DeskFigures {
    std::map<JobState, int> by_state;  ///< whatever the year
    int quotes_open = 0;               ///< newest quotes of their jobs that nobody answered yet, whatever the year
    MonthCounts quotes_issued{};       ///< each revision counts
    MonthCounts quotes_accepted{};     ///< one a job: the last that was accepted
    std::map<std::string, std::int64_t> accepted_minor;  ///< with tax, by currency (ISO 4217)
    MonthCounts services_due{};                          ///< of jobs that are not closed
    /// Useful heat a year as the plan of the newest quote foretells it, in the month that the quote was issued or
    /// accepted.
    std::array<double, 12> heat_offered_kwh{};
    std::array<double, 12> heat_accepted_kwh{};
    int left_out = 0;               ///< demonstration jobs that do not count; 0 where they do
    int without_heat = 0;           ///< newest quotes of the year whose plan has no yearly figure
    int accepted_without_heat = 0;  ///< accepted ones of the year, the same
};

/// Refused: a year outside of 1900..9999.
[[nodiscard]] Result<DeskFigures> desk_figures(Store& store, int year, bool with_invented);

}  // namespace wg::store
