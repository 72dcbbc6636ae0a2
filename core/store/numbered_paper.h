#pragma once
// A paper that bears the next number of its kind: printed with it, then number and paper are kept together or neither.

#include <functional>
#include <optional>
#include <string>

#include "core/store/number_ranges.h"

namespace wg::store {

/// Makes the paper that bears this number; its problems are handed on.
using PrintNumbered = std::function<Result<std::string>(const std::string& number)>;
/// A number between being shown and being given can be taken by another seat; printed again so often at most.
inline constexpr int most_prints = 20;

/// A paper with its number.
struct NumberedPaper {
    NumberKind kind = NumberKind::quote;
    std::string id;    ///< of the paper
    std::string what;  ///< of messages: "paper of an order"
};

/// `print` makes the bytes, `keep` writes them within the transaction in which the number is given. The number; what
/// either refuses is handed on and uses up none.
[[nodiscard]] Result<std::string> keep_numbered(
    Store& store, const NumberedPaper& paper, Instant now, const PrintNumbered& print,
    const std::function<std::optional<Problem>(const std::string& number, const std::string& bytes)>& keep);

}  // namespace wg::store
