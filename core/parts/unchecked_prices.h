#pragma once
// Prices that a firm's list still has from an invented one.

#include <string>
#include <vector>

#include "core/parts/prices.h"

namespace wg::parts {

/// Names of what costs the same in both: items and labour rates by id, the list's hour, travel, energy. Not what is 0.
[[nodiscard]] std::vector<std::string> same_prices(const PriceList& list, const PriceList& invented);

}  // namespace wg::parts
