#pragma once
// What the firm has to do next on a job, from its state, dates and record.

#include <QDate>
#include <QString>
#include <vector>

#include "core/job/job.h"
#include "core/plan/reference.h"
#include "core/store/store.h"

namespace wg::ui {

struct NextDue {
    QString text;          ///< "Service of the heat pump and the anode"
    QDate on;              ///< invalid: no date
    bool overdue = false;  ///< `on` lies before today
};

/// `quotes`: issued ones, any order. `today` decides what is overdue.
[[nodiscard]] NextDue next_due(const Job& job, const std::vector<store::IssuedQuote>& quotes,
                               const plan::Reference& reference, const QDate& today);

}  // namespace wg::ui
