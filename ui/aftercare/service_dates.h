#pragma once
// When each service falls due: counted from the system's start, or from the last time it was noted as done.

#include <QDate>
#include <QString>
#include <vector>

#include "core/job/job.h"
#include "core/plan/plan.h"

namespace wg::ui {

struct ServiceDate {
    plan::ServiceDue service;
    QDate counted_from;     ///< invalid: not started yet
    bool was_done = false;  ///< counted from a service, not from the start
    QDate due;              ///< invalid: not started yet
    bool overdue = false;   ///< due before today
};

/// Day on which the system was started: that of the first reading that only a charged or running system gives (charge,
/// current, temperatures of circuit or water); corrections count in place of what they correct. Invalid: none.
[[nodiscard]] QDate started_on(const std::vector<Reading>& record);

/// A remark that says the service was done; what service_dates() looks for.
[[nodiscard]] Reading service_done(const plan::ServiceDue& service, const QString& taken_at, const QString& by,
                                   const QString& note);

/// Soonest first; those without a date last.
[[nodiscard]] std::vector<ServiceDate> service_dates(const std::vector<plan::ServiceDue>& services,
                                                     const std::vector<Reading>& record, const QDate& today);

}  // namespace wg::ui
