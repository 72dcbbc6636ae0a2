#pragma once
// What the chain of the record says, and which plan its entries were made for.

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

#include "core/job/record_chain.h"
#include "ui/common/mark.h"

namespace wg::ui {

struct ChainWords {
    Mark mark = Mark::ready;
    QStringList lines;
};

/// "Chained: 14 entries, whole, ends in 3fa9 07b2 ..."; a stop and a line for each break when it is not whole.
[[nodiscard]] ChainWords chain_words(const std::vector<Reading>& record);

/// "Revision 12, mark 3FA9-07B2", of the plan an entry was made for; empty: not told.
[[nodiscard]] QString plan_words(const Reading& reading);

/// Empty when every entry was made for the plan of that mark; else which plans the others were made for.
[[nodiscard]] QString other_plan_words(const std::vector<Reading>& record, const std::string& mark_now,
                                       std::int64_t revision_now);

}  // namespace wg::ui
