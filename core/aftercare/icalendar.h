#pragma once
// Services and warranty ends as a calendar file, RFC 5545: all-day events with a reminder, for any calendar program.

#include <string>
#include <vector>

#include "core/aftercare/service.h"
#include "core/quantity/time.h"

namespace wg::aftercare {

struct CalendarEntry {
    std::string uid;  ///< the same entry keeps it, so that a calendar replaces what it has
    CivilDate on;
    std::string summary;
    std::string description;
    std::string location;
    int remind_days = 14;  ///< before, at 9 in the morning; 0: no reminder
};

/// The text of the file: CRLF, lines folded at 75 octets between characters, texts escaped, no METHOD. `now` stamps the
/// entries. Text that is not UTF-8 loses what cannot be read.
[[nodiscard]] std::string icalendar(const std::vector<CalendarEntry>& entries, Instant now);

/// Stable for a job's service: "service id"-"job id"@warmgable.
[[nodiscard]] std::string uid_of(const std::string& job_id, const std::string& service_id);

/// Services of one job that have a date, and the end of the warranty when it is still to come.
[[nodiscard]] std::vector<CalendarEntry> calendar_of(const Job& job, const std::vector<ServiceDate>& dates,
                                                     CivilDate today);

}  // namespace wg::aftercare
