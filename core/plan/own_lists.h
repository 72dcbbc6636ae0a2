#pragma once
// The firm's own price lists beside those that come with the program.

#include <string>
#include <vector>

#include "core/plan/reference.h"

namespace wg::plan {

struct OwnList {
    std::string id;       ///< under which the firm keeps it
    std::string content;  ///< docs/price-format.md
};

struct WithLists {
    Reference reference;
    /// Lists that could not be taken: unreadable, of another id than the firm keeps them under, or with an id that a
    /// list of the program has. The others stand.
    std::vector<Problem> problems;
};

[[nodiscard]] WithLists with_own_lists(const Reference& reference, const std::vector<OwnList>& lists);

}  // namespace wg::plan
