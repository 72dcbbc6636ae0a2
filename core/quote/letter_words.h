#pragma once
// A letter's words with fields such as {client} filled in. Pure.

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace wg::quote {

struct FilledWords {
    std::string text;
    std::vector<std::string> unknown;  ///< names in braces that stand for nothing; they stay in the text as written
};

/// A field is a name of small letters and '_' in braces. What is filled in is never looked at again, and braces round
/// anything else stay.
[[nodiscard]] FilledWords filled_words(std::string_view words, const std::map<std::string, std::string>& fields);

}  // namespace wg::quote
