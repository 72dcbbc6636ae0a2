#pragma once
// Reference data compiled into the program, and files of the user.

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/plan/reference.h"
#include "core/quantity/result.h"

namespace wg::app {

/// Text of a compiled-in resource, "demo/job.json"; nullopt when there is none.
[[nodiscard]] std::optional<std::string> resource_text(const std::string& path);

/// Reads a user's file whole; refused when it is missing, unreadable, a folder, or larger than 64 MiB.
[[nodiscard]] Result<std::string> file_text(const std::string& path);

[[nodiscard]] Result<plan::Reference> built_in_reference();

/// Files of the rule sets that "index.json" names.
[[nodiscard]] std::vector<std::string> built_in_rules();

}  // namespace wg::app
