#pragma once
// Reckoning with days: months on, days between, the day an entry was made.

#include <optional>
#include <string>

#include "core/job/record.h"
#include "core/quantity/time.h"

namespace wg::aftercare {

/// So many months later (or earlier), on the same day of the month; on the month's last day where it has fewer.
[[nodiscard]] CivilDate months_after(CivilDate date, int months) noexcept;
[[nodiscard]] CivilDate days_after(CivilDate date, int days) noexcept;
/// Days from `from` to `to`; less than zero when `to` comes first.
[[nodiscard]] int days_between(CivilDate from, CivilDate to) noexcept;
[[nodiscard]] bool before(CivilDate a, CivilDate b) noexcept;
/// The Monday of the date's week (ISO 8601).
[[nodiscard]] CivilDate monday_of(CivilDate date) noexcept;
/// Number of the date's week by ISO 8601, 1..53: week 1 holds the year's first Thursday.
[[nodiscard]] int iso_week(CivilDate date) noexcept;

/// The day on the clock where the entry was made, as its offset tells; nullopt when its time cannot be read.
[[nodiscard]] std::optional<CivilDate> day_of(const Reading& reading);

}  // namespace wg::aftercare
