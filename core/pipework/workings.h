#pragma once
// How the figures of a run were reached. Used by run.cpp.

#include <vector>

#include "core/pipework/run.h"

namespace wg::pipework {

[[nodiscard]] std::vector<Working> workings_of(const Input& input, const Run& run);

}  // namespace wg::pipework
