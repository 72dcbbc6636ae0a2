#pragma once
// How what was ordered stands, in words.

#include <QString>
#include <vector>

#include "core/parts/stock_orders.h"

namespace wg::ui {

/// Of a list's lines from one supplier.
[[nodiscard]] QString list_state(const std::vector<parts::OrderedLine>& lines);
[[nodiscard]] QString line_state(const parts::OrderedLine& line);

}  // namespace wg::ui
