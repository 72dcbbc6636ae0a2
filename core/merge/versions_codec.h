#pragma once
// Versions as JSON (docs/exchange-format.md). Reading is strict: the text is treated as hostile.

#include <string>
#include <string_view>

#include "core/merge/versions.h"

namespace wg::merge {

/// Compact, members and lists sorted: equal versions, equal text.
[[nodiscard]] std::string versions_to_json(const Versions& versions);

/// `file_name` only serves messages. Refused: what parse_json refuses (core/job/json_text.h), another format or a newer
/// schema, members that are not known, malformed ids, paths and values, places that point outside of their list, the
/// same edit twice in a field, and versions whose job is not valid.
[[nodiscard]] Result<Versions> versions_from_json(std::string_view text, const std::string& file_name);

}  // namespace wg::merge
