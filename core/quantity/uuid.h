#pragma once
// Universally unique identifiers (RFC 9562) as the text that job files and the store hold.

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

namespace wg {

/// True for 8-4-4-4-12 lower-case hex digits. Version and variant bits are not looked at.
[[nodiscard]] bool is_uuid(std::string_view text) noexcept;

/// A version 4 UUID from 128 bits, taken by two calls of `random_64` (64 independent random bits each), of which
/// 122 remain. Where the bits come from is the caller's business: core asks no machine for randomness.
[[nodiscard]] std::string uuid_v4(const std::function<std::uint64_t()>& random_64);

}  // namespace wg
