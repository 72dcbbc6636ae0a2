#pragma once
// JSON text from outside to a tree, with limits that hold before anything is built. For the readers in .cpp files.

#include <cstddef>
#include <string>
#include <string_view>

#include <nlohmann/json_fwd.hpp>

#include "core/quantity/result.h"

namespace wg {

struct JsonLimits {
    std::size_t max_bytes = std::size_t{64} * 1024 * 1024;
    std::size_t max_depth = 64;        ///< lists and objects within one another
    std::size_t max_values = 2000000;  ///< values in the whole text: bounds the memory a hostile text can take
};

/// Reads one JSON value (RFC 8259, no comments). Refused: malformed text (with line and column), keys that occur twice
/// in one object, numbers too large for a double, text that is not UTF-8, and whatever is beyond the limits.
/// Nesting is not answered by recursion. `file_name` only serves messages.
[[nodiscard]] Result<nlohmann::json> parse_json(std::string_view text, const std::string& file_name,
                                                const JsonLimits& limits = {});

}  // namespace wg
