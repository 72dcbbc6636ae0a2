#include "core/equipment/pasted_numbers.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>

#include "core/quantity/utf8.h"

namespace wg {
namespace {

constexpr std::size_t most_numbers = 1000;

bool is_digit_at(const std::string& text, std::size_t i) {
    return i < text.size() && text[i] >= '0' && text[i] <= '9';
}

void replace_all(std::string& text, std::string_view from, std::string_view to) {
    for (std::size_t at = text.find(from); at != std::string::npos; at = text.find(from, at + to.size()))
        text.replace(at, from.size(), to);
}

bool commas_are_decimal(const std::string& text) {
    if (text.find('.') != std::string::npos) return false;
    bool one_in_this_word = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] == ' ' || text[i] == ';') one_in_this_word = false;
        if (text[i] != ',') continue;
        if (one_in_this_word || i == 0 || !is_digit_at(text, i - 1) || !is_digit_at(text, i + 1)) return false;
        one_in_this_word = true;
    }
    return true;
}

}  // namespace

Result<std::vector<double>> numbers_in(std::string_view pasted) {
    std::string text(pasted);
    replace_all(text, "\xE2\x88\x92", "-");  // minus sign
    replace_all(text, "\xC2\xA0", " ");      // no-break spaces
    replace_all(text, "\xE2\x80\xAF", " ");
    for (char& c : text) {
        if (c == '\t' || c == '\n' || c == '\r' || c == '\v' || c == '\f') c = ' ';
    }
    const char comma = commas_are_decimal(text) ? '.' : ' ';
    for (char& c : text) {
        if (c == ',') c = comma;
        if (c == ';') c = ' ';
    }
    std::vector<double> out;
    std::size_t at = 0;
    while ((at = text.find_first_not_of(' ', at)) != std::string::npos) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        const std::size_t sign = word.size() > 1 && word[0] == '+' && word[1] != '-' ? 1 : 0;
        double value = 0.0;
        const auto [stop, error] = std::from_chars(word.data() + sign, word.data() + word.size(), value);
        if (error != std::errc() || stop != word.data() + word.size() || !std::isfinite(value))
            return Problem{"numbers", "'" + for_message(word) + "' is no number",
                           "Paste numbers only, such as 1.25 or -3.1e-4"};
        if (out.size() == most_numbers)
            return Problem{"numbers", "are more than 1000", "Paste the line of the data sheet alone"};
        out.push_back(value);
        at = end;
    }
    return out;
}

}  // namespace wg
