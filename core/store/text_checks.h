#pragma once
// What the books of price lists and rule sets ask of a text before they keep it.

#include <cstddef>
#include <optional>
#include <string>

#include "core/quantity/result.h"
#include "core/store/versioned_texts.h"

namespace wg::store {

inline constexpr std::size_t longest_text_id = 100;

struct TextKind {
    const char* kind;     ///< "price list"
    const char* one;      ///< "the list"
    const char* example;  ///< of an id
    std::size_t most_bytes;
    /// The id that stands in the text, which the reader of its format takes.
    Result<std::string> (*id_in)(const std::string& content, const std::string& name);
};

[[nodiscard]] TextVersion text_version(const std::string& id, const std::string& content, const std::string& note);
[[nodiscard]] std::optional<Problem> refuse_note(const std::string& note, const std::string& name);
/// `name`: of the text, for messages.
[[nodiscard]] std::optional<Problem> refuse_text(const TextKind& kind, const TextVersion& text,
                                                 const std::string& name);

}  // namespace wg::store
