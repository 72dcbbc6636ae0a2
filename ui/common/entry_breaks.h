#pragma once
// What the chain of the record says against single entries: the word that stands in their row, and what it means.

#include <QString>
#include <map>
#include <string>
#include <vector>

#include "core/job/job.h"

namespace wg::ui {

struct EntryBreak {
    int number = 0;   ///< of the entry, as rows and papers count: from 1
    QString word;     ///< "altered", "put in", "chain broken"
    QString meaning;  ///< what is wrong and what to do about it, in sentences
};

/// By the id of the entry; empty while the chain is whole.
using EntryBreaks = std::map<std::string, EntryBreak>;
[[nodiscard]] EntryBreaks entry_breaks(const std::vector<Reading>& record);

}  // namespace wg::ui
