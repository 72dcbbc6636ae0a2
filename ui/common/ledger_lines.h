#pragma once
// What the ledger says, as text: seven figures of a plan with range and difference. No widgets here.

#include <QString>
#include <vector>

#include "core/plan/plan.h"

namespace wg::ui {

struct LedgerLine {
    QString title;   ///< "Annual heat"
    QString value;   ///< "about 1 240 kWh"; an em dash when there is none yet
    QString range;   ///< "1 080 to 1 390 kWh"; may hold other small print, e.g. "net 6 235.29 EUR"
    QString change;  ///< signed, against the earlier plan; empty when it did not change or there is no earlier one
    bool carried = false;  ///< from before the last edit: to be shown muted
    QString working_key;   ///< of the plan's working behind it; empty when the plan has none
};

/// `plan` and `earlier` may be null. `carried`: the yearly figures of `plan` are those from before the last edit.
[[nodiscard]] std::vector<LedgerLine> ledger_lines(const plan::Plan* plan, const plan::Plan* earlier, bool carried);

}  // namespace wg::ui
