#pragma once
// Numbers as text without a locale: the same characters on every machine.

#include <string>

namespace wg {

/// Fixed decimals (0..12) with a point; "-0.00" becomes "0.00". NaN and infinity become "unknown": never digits that
/// could be taken for a figure.
[[nodiscard]] std::string fixed(double value, int decimals);

/// At most so many decimals (0..12), without trailing zeros: "5", "0.35".
[[nodiscard]] std::string plain(double value, int decimals = 2);

/// "3 collectors", "1 collector": count with its noun.
[[nodiscard]] std::string counted(long count, const std::string& one, const std::string& many);

}  // namespace wg
