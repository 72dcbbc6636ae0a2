#pragma once
// What the database keeps so that it need not be reckoned each time, against what it follows from.

#include <string>
#include <vector>

#include "core/store/database.h"

namespace wg::store {

/// In words, a line for what disagrees; at most a few of each kind are named. Days of states, next steps and the heat
/// of quotes.
[[nodiscard]] Result<std::vector<std::string>> disagreeing_records(const Database& database);

}  // namespace wg::store
