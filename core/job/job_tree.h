#pragma once
// A job as a JSON tree, for .cpp files that look at its fields one by one: text and back is spared.

#include <nlohmann/json_fwd.hpp>
#include <string>

#include "core/job/job.h"
#include "core/quantity/result.h"

namespace wg {

/// What job_to_json writes. Texts of a job that is not valid may be no UTF-8: dump with a handler for it.
[[nodiscard]] nlohmann::json job_tree(const Job& job);

/// As job_from_json, which parses first: a tree from outside has to come from parse_json (core/job/json_text.h), which
/// bounds its depth and size. Brings the tree itself over to today's schema.
[[nodiscard]] Result<Job> job_from_tree(nlohmann::json& tree, const std::string& file_name);

}  // namespace wg
