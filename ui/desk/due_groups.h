#pragma once
// Services that fall due, put together the way they are driven to: by week, in it by area, one line a house.

#include <optional>
#include <string>
#include <vector>

#include "core/aftercare/service.h"
#include "core/store/store.h"

namespace wg::ui {

/// What one house has due in one week.
struct DueVisit {
    store::ServiceDueRow house;  ///< the first service's row: job, client, address
    CivilDate on;                ///< the earliest day
    aftercare::ServiceState state = aftercare::ServiceState::later;
    std::vector<store::ServiceDueRow> services;
};

struct DueWeek {
    std::optional<CivilDate> monday;  ///< none: all that is overdue
    std::vector<DueVisit> visits;     ///< by area, then by day
};

/// Where a house is, for putting neighbours together: the postcode's first part, else the town.
[[nodiscard]] std::string area_of(const store::ServiceDueRow& row);

/// `area` narrows to houses whose postcode or town begins with it, capitals aside; empty: all. Rows whose date cannot
/// be read are left out. Overdue ones first, then week by week.
[[nodiscard]] std::vector<DueWeek> due_weeks(const std::vector<store::ServiceDueRow>& rows, CivilDate today,
                                             const std::string& area = {});

/// Services due from today to the end of the week (ISO 8601, to Sunday); what is overdue is not counted.
[[nodiscard]] int due_this_week(const std::vector<store::ServiceDueRow>& rows, CivilDate today);
[[nodiscard]] int overdue(const std::vector<store::ServiceDueRow>& rows, CivilDate today);

}  // namespace wg::ui
