#pragma once
// Civil time without a clock: instants are seconds since 1970-01-01T00:00Z (proleptic Gregorian, no leap
// seconds). Nothing here asks the machine for the time; callers at the edge pass it in.

#include <cstdint>
#include <string>
#include <string_view>

#include "core/quantity/result.h"

namespace wg {

struct CivilDate {
    int year = 1970;
    int month = 1;  ///< 1..12
    int day = 1;    ///< 1..31
    friend bool operator==(const CivilDate&, const CivilDate&) = default;
};

/// An instant, UTC.
struct Instant {
    std::int64_t unix_s = 0;
    friend auto operator<=>(const Instant&, const Instant&) = default;
};

/// Days since 1970-01-01 (H. Hinnant, "chrono-compatible low-level date algorithms", public domain).
[[nodiscard]] std::int64_t days_from_civil(CivilDate date) noexcept;
[[nodiscard]] CivilDate civil_from_days(std::int64_t days) noexcept;
[[nodiscard]] bool is_leap_year(int year) noexcept;
[[nodiscard]] int days_in_month(int year, int month) noexcept;
[[nodiscard]] int day_of_year(CivilDate date) noexcept;  ///< 1..366

/// ISO 8601 date and time with an offset: 2027-06-21T12:30:00Z, ...+02:00, ...-07:00; seconds may be left out or
/// carry a fraction, which is cut off. A date and time without an offset is refused: it names no instant.
[[nodiscard]] Result<Instant> instant_from_iso8601(std::string_view text);

/// ISO 8601 date only: 2027-06-21.
[[nodiscard]] Result<CivilDate> date_from_iso8601(std::string_view text);

[[nodiscard]] std::string iso8601(Instant instant);  ///< 2027-06-21T12:30:00Z
[[nodiscard]] std::string iso8601(CivilDate date);   ///< 2027-06-21

/// Month (1..12) of hour 0..8759 of a year without 29 February.
[[nodiscard]] int month_of_hour(int hour_of_year) noexcept;
/// First hour of a month (1..12) in a year without 29 February; month 13 gives 8760.
[[nodiscard]] int first_hour_of_month(int month) noexcept;

}  // namespace wg
