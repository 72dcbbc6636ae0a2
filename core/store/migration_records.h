#pragma once
// The parts of the step that keeps a job's progress and what was fitted (migration_records.cpp).

#include <vector>

#include "core/store/dialect.h"

namespace wg::store {

/// Days of states, what is to be done next, and the list's orders with what they are narrowed by.
[[nodiscard]] std::vector<const char*> progress_statements(Dialect dialect);
/// Parts with their serial numbers, and the heat of issued quotes.
[[nodiscard]] std::vector<const char*> fitted_and_heat_statements(Dialect dialect);

}  // namespace wg::store
