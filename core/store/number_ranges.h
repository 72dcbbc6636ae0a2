#pragma once
// Numbers of the firm's papers: one series a kind and year, without a gap and never the same twice in one store.

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

#include "core/store/store.h"

namespace wg::store {

enum class NumberKind { quote, order, change_order, purchase };
inline constexpr std::array<NumberKind, 4> number_kinds = {NumberKind::quote, NumberKind::order,
                                                           NumberKind::change_order, NumberKind::purchase};
[[nodiscard]] const char* key_of(NumberKind kind) noexcept;  ///< "quote", "order", "change-order", "purchase"

/// "Q{year}-{number:4}": text with {number} or {number:1..9} once, and {year} and {seat} at most once. Without {year}
/// the series goes on over the years. Refused: anything else in braces, control characters, more than 40 bytes.
[[nodiscard]] std::optional<Problem> refuse_pattern(std::string_view pattern);
/// A seat's suffix: up to 8 letters of the Latin alphabet and digits; may be empty.
[[nodiscard]] std::optional<Problem> refuse_suffix(std::string_view suffix);
/// A suffix stands where the pattern has {seat}, with a hyphen before it, or at the end.
[[nodiscard]] std::string number_text(std::string_view pattern, int year, const std::string& suffix,
                                      std::int64_t number);

class NumberRanges {
   public:
    /// The store must outlive it.
    explicit NumberRanges(Store& store) : store_(store), database_(store.database()) {}

    /// The firm's, or "Q{year}-{number:4}" with another letter for each kind.
    [[nodiscard]] Result<std::string> pattern(NumberKind kind) const;
    /// Numbers that were given stay as they are; the series goes on.
    [[nodiscard]] Result<bool> set_pattern(NumberKind kind, const std::string& pattern);

    /// What this store puts on its numbers, so that one that travels never gives a number of another's. Goes with
    /// backups of it. Another suffix begins a series of its own.
    [[nodiscard]] Result<std::string> suffix() const;
    [[nodiscard]] Result<bool> set_suffix(const std::string& suffix);

    /// What `give` would give now. Another seat may be quicker.
    [[nodiscard]] Result<std::string> next(NumberKind kind, int year) const;

    /// Within the caller's write transaction: undone with it, so that no number is lost. `given_to`: id of the paper.
    /// Numbers that papers from other stores have here are passed over, and kept as given to nobody.
    [[nodiscard]] Result<std::string> give(NumberKind kind, int year, const std::string& given_to, Instant now);
    /// In a transaction of its own, for papers that are not kept here: `use` writes the paper with the number; when it
    /// fails, the number is not given.
    [[nodiscard]] Result<std::string> give_for(NumberKind kind, int year, const std::string& given_to, Instant now,
                                               const std::function<std::optional<Problem>(const std::string&)>& use);

   private:
    struct Next {
        std::string series;
        std::int64_t number = 1;
        std::string text;
        std::string pattern;
        std::string suffix;
    };
    [[nodiscard]] Result<Next> first_after_those_given(NumberKind kind, int year) const;
    [[nodiscard]] Result<bool> is_taken(NumberKind kind, const std::string& text) const;

    Store& store_;
    const Database& database_;
};

}  // namespace wg::store
