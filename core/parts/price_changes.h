#pragma once
// What changed between two versions of a price list, in words.

#include <string>
#include <vector>

#include "core/parts/prices.h"

namespace wg::parts {

struct PriceChange {
    std::string where;   ///< an item's or task's text with its id, or the field of the list
    std::string before;  ///< empty: was not there
    std::string after;   ///< empty: is no longer there
};

/// Rows that are new or gone tell all that stands in them. Items and tasks by id in the order of `after`, those that
/// are gone at the end; then the list's own fields, rates, groups, factors, travel, taxes and energy.
[[nodiscard]] std::vector<PriceChange> price_changes(const PriceList& before, const PriceList& after);

}  // namespace wg::parts
