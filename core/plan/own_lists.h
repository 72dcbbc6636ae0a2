#pragma once
// The firm's own price lists beside those that come with the program.

#include <string>
#include <vector>

#include "core/plan/reference.h"

namespace wg::plan {

struct OwnList {
    std::string id;       ///< under which the firm keeps it
    std::string content;  ///< docs/price-format.md
    bool withdrawn = false;
};

struct WithLists {
    Reference reference;
    /// Lists that could not be taken: unreadable, of another id than the firm keeps them under, or with an id that a
    /// list of the program has. The others stand.
    std::vector<Problem> problems;
};

/// The list for a new job: of the firm's own that hold on the day, the one that has held for the shortest time; else
/// one that does not hold, else one of the program's. Empty when there is none at all.
[[nodiscard]] std::string list_for_new_jobs(const Reference& reference, const std::string& on);

[[nodiscard]] WithLists with_own_lists(const Reference& reference, const std::vector<OwnList>& lists);

}  // namespace wg::plan
