#pragma once
// Paths and values of fields in words of the trade.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/merge/versions.h"

namespace wg::merge {

/// `surface "South roof", tilt`; labels are those that stand, of elements that are gone too.
[[nodiscard]] std::string where_words(const Versions& versions, std::string_view path);

/// `35 deg`, `yes`, `x 1.2 m, y 0.4 m`, `4 points`, the label of what is named; none: `left out`, of an element
/// `removed`.
[[nodiscard]] std::string value_words(const Versions& versions, std::string_view path,
                                      const std::optional<std::string>& json);

/// The labels of a list's elements in this order: `Terrace; South roof`.
[[nodiscard]] std::string order_words(const Versions& versions, std::string_view list,
                                      const std::vector<std::string>& ids);

}  // namespace wg::merge
