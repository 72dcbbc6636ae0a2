#pragma once
// The firm's refrigerant register: moves of a job's record, sums by year, and the yearly balance against a count. Pure.

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/aftercare/calendar.h"
#include "core/job/job.h"
#include "core/job/refrigerant_entry.h"

namespace wg::aftercare {

/// What a job's record holds of refrigerant, as entries of the register under the readings' own ids: weighed in, taken
/// out, lost. Corrections come along and name what they correct; an entry that is corrected by something else than
/// refrigerant is corrected to nothing. A job of demonstration data has none.
[[nodiscard]] std::vector<RefrigerantEntry> entries_of(const Job& job, const std::string& refrigerant);

/// The register as it stands after corrections: each corrected entry has given its place to the newest that names it.
[[nodiscard]] std::vector<RefrigerantEntry> standing(const std::vector<RefrigerantEntry>& entries);

inline constexpr std::size_t refrigerant_moves = 6;
/// kg by move, in the order of RefrigerantMove.
using MoveSums = std::array<double, refrigerant_moves>;
[[nodiscard]] double of(const MoveSums& sums, RefrigerantMove move) noexcept;
/// Into the stock less out of it.
[[nodiscard]] double stock_change_kg(const MoveSums& sums) noexcept;

struct Count {
    CivilDate on;
    double kg = 0.0;           ///< all bottles of the day
    double expected_kg = 0.0;  ///< the year's opening and its moves up to that day
    double passed_kg = 0.0;    ///< the opening and all that came in up to then: what a share is of
    [[nodiscard]] double imbalance_kg() const noexcept { return kg - expected_kg; }
    /// Of what passed through; 0 when nothing did.
    [[nodiscard]] double imbalance_share() const noexcept { return passed_kg > 0.0 ? imbalance_kg() / passed_kg : 0.0; }
};

/// One refrigerant in one year.
struct YearReport {
    int year = 0;
    std::string refrigerant;
    double opening_kg = 0.0;                ///< on 1 January, from the last count before and the moves since
    std::optional<CivilDate> opening_from;  ///< day of that count; none: the register begins with nothing
    MoveSums moved{};                       ///< in the year; `counted` holds nothing
    double expected_kg = 0.0;               ///< on 31 December by the moves alone: opening + in - out
    std::optional<Count> count;             ///< the last of the year
    int entries = 0;
    std::vector<std::string>
        explanations;  ///< what may lie behind the imbalance, likeliest first; empty: none to speak of
};

/// Imbalance that scales and hoses make by themselves: the greater of 0.05 kg and 2 % of what passed through.
/// Common practice, no published source.
inline constexpr double usual_imbalance_kg = 0.05;
inline constexpr double usual_imbalance_share = 0.02;

/// Newest year first, refrigerants by name. Only years with an entry. Entries with a date that cannot be read are left
/// out. Moves of a day count before the count of that day.
[[nodiscard]] std::vector<YearReport> year_reports(const std::vector<RefrigerantEntry>& entries);

/// All entries, oldest first, and what stands in place of which: comma separated, RFC 4180, UTF-8, CRLF.
[[nodiscard]] std::string register_csv(const std::vector<RefrigerantEntry>& entries);
[[nodiscard]] std::string year_reports_csv(const std::vector<YearReport>& reports);

}  // namespace wg::aftercare
