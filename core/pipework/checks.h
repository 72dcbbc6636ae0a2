#pragma once
// What stands against a run. Used by run.cpp; separate so that rules can be read in one place.

#include <vector>

#include "core/pipework/run.h"

namespace wg::pipework {

[[nodiscard]] std::vector<Finding> check_run(const Input& input, const Run& run);

}  // namespace wg::pipework
