#pragma once
// Base64 with padding (RFC 4648, section 4).

#include <optional>
#include <string>
#include <string_view>

namespace wg {

[[nodiscard]] std::string to_base64(std::string_view bytes);
/// Nothing: other characters (line ends too), a length that is no multiple of 4, padding elsewhere than at the end, or
/// bits beside the last byte, so that one content has one text.
[[nodiscard]] std::optional<std::string> from_base64(std::string_view text);

}  // namespace wg
