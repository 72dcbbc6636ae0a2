#pragma once
// From the schema a job file was written in to today's, one step at a time.

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <vector>

#include "core/quantity/result.h"

namespace wg {

/// Turns a job's tree of schema n into one of schema n + 1. It may rely on nothing but the tree being an object: the
/// fields are checked after the last step. Returns words for people when the tree cannot be brought over.
using JobUpgrader = std::optional<std::string> (*)(nlohmann::json& tree);

/// Element i leads from schema i + 1 to i + 2. Empty as long as there is only schema 1.
[[nodiscard]] const std::vector<JobUpgrader>& job_upgraders();

/// Checks `format` and `schema`, then applies the upgraders up to schema `newest`; upgraders.size() == newest - 1.
/// Refused: not an object, another format, no schema or one below 1, a schema over `newest`.
[[nodiscard]] std::optional<Problem> upgrade_job_tree(nlohmann::json& tree, const std::string& file_name,
                                                      const std::vector<JobUpgrader>& upgraders, int newest);

}  // namespace wg
