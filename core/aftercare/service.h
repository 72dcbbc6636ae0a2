#pragma once
// What falls due after the hand-over: services by rule, counted from the start or from the last time, and the
// warranty's end. Pure: `today` comes in.

#include <optional>
#include <string>
#include <vector>

#include "core/aftercare/calendar.h"
#include "core/job/job.h"
#include "core/plan/plan.h"

namespace wg::aftercare {

/// `due`: within four weeks, so that a visit has to be arranged now. `soon`: within three months.
enum class ServiceState { not_started, later, soon, due, overdue };
inline constexpr int due_days = 28;
inline constexpr int soon_days = 91;
[[nodiscard]] const char* text_of(ServiceState state) noexcept;
[[nodiscard]] ServiceState state_of(CivilDate due_on, CivilDate today) noexcept;

struct ServiceDate {
    plan::ServiceDue service;
    std::optional<CivilDate> counted_from;  ///< start or last time; none: not started yet
    std::optional<CivilDate> last_done_on;
    std::optional<CivilDate> due_on;
    ServiceState state = ServiceState::not_started;
    int days_left = 0;  ///< to `due_on`; less than zero: overdue by so many
};

/// Day on which the system was started: that of the first reading that only a charged or running system gives (charge,
/// current, pressures and temperatures of circuit or water); corrections count in place of what they correct.
[[nodiscard]] std::optional<CivilDate> started_on(const std::vector<Reading>& record);

/// Days on which this service was done, oldest first: entries of ReadingKind::service_done and, in older records,
/// remarks that begin with "Service done [id]".
[[nodiscard]] std::vector<CivilDate> days_done(const std::string& service_id, const std::vector<Reading>& record);

/// Soonest first; those without a date last.
[[nodiscard]] std::vector<ServiceDate> service_dates(const std::vector<plan::ServiceDue>& services,
                                                     const std::vector<Reading>& record, CivilDate today);

/// The entry that says a service was done; the caller appends it.
[[nodiscard]] Reading service_done(const std::string& service_id, const std::string& taken_at, const std::string& by,
                                   const std::string& note);

/// One visit: all that was entered for a service on one day.
struct Visit {
    CivilDate on;
    std::vector<std::string> by;        ///< as named, each once
    std::vector<std::string> services;  ///< ids of what was done
    std::vector<Reading> readings;      ///< with figures or notes, in the order of the record
};
/// Oldest first, after corrections.
[[nodiscard]] std::vector<Visit> visits(const std::vector<Reading>& record);

struct Warranty {
    CivilDate from;
    CivilDate ends_on;            ///< last day
    bool from_hand_over = false;  ///< else counted from the start of the system
    int days_left = 0;            ///< less than zero: it ended so many days ago
};
/// Day of the client's signature in the record (kind signature, its role holding "client" or "hand"), the first of
/// them.
[[nodiscard]] std::optional<CivilDate> handed_over_on(const std::vector<Reading>& record);
/// By the terms of the job; none without terms, or while there is no day to count from.
[[nodiscard]] std::optional<Warranty> warranty(const Job& job, CivilDate today);

}  // namespace wg::aftercare
