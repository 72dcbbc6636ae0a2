#pragma once
// Checks on text from outside.

#include <cstddef>
#include <string>
#include <string_view>

namespace wg {

/// Length in bytes of the longest prefix that is well-formed UTF-8 (Unicode 15, table 3-7: no overlong forms, no
/// surrogates, nothing over U+10FFFF).
[[nodiscard]] std::size_t valid_utf8_prefix(std::string_view text) noexcept;

[[nodiscard]] inline bool is_utf8(std::string_view text) noexcept {
    return valid_utf8_prefix(text) == text.size();
}

/// The text on one line for a message: bytes that are not UTF-8 and control characters become '?', and what is
/// longer than `max_bytes` is cut between characters and ends with "...".
[[nodiscard]] std::string for_message(std::string_view text, std::size_t max_bytes = 60);

}  // namespace wg
