#include "core/quote/letter_words.h"

#include <algorithm>

namespace wg::quote {

FilledWords filled_words(std::string_view words, const std::map<std::string, std::string>& fields) {
    constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz_";
    FilledWords out;
    std::size_t at = 0;
    while (at < words.size()) {
        const std::size_t open = words.find('{', at);
        out.text += words.substr(at, open == std::string_view::npos ? std::string_view::npos : open - at);
        if (open == std::string_view::npos) break;
        const std::size_t end = words.find_first_not_of(letters, open + 1);
        if (end == std::string_view::npos || end == open + 1 || words[end] != '}') {
            out.text += '{';
            at = open + 1;
            continue;
        }
        const std::string name(words.substr(open + 1, end - open - 1));
        const auto found = fields.find(name);
        if (found != fields.end()) {
            out.text += found->second;
        } else {
            out.text += words.substr(open, end - open + 1);
            if (std::find(out.unknown.begin(), out.unknown.end(), name) == out.unknown.end())
                out.unknown.push_back(name);
        }
        at = end + 1;
    }
    return out;
}

}  // namespace wg::quote
