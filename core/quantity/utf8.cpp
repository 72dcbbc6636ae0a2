#include "core/quantity/utf8.h"

namespace wg {
namespace {

// Length of the well-formed character at the front; 0 when there is none.
std::size_t character_length(std::string_view text) noexcept {
    const auto byte = [&text](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    const auto continues = [&byte](std::size_t i) { return (byte(i) & 0xc0U) == 0x80U; };
    const unsigned first = byte(0);
    if (text.empty()) return 0;
    if (first < 0x80U) return 1;
    if (first >= 0xc2U && first <= 0xdfU) return continues(1) ? 2 : 0;
    if (first >= 0xe0U && first <= 0xefU) {
        const unsigned lowest = first == 0xe0U ? 0xa0U : 0x80U;
        const unsigned highest = first == 0xedU ? 0x9fU : 0xbfU;
        return byte(1) >= lowest && byte(1) <= highest && continues(2) ? 3 : 0;
    }
    if (first >= 0xf0U && first <= 0xf4U) {
        const unsigned lowest = first == 0xf0U ? 0x90U : 0x80U;
        const unsigned highest = first == 0xf4U ? 0x8fU : 0xbfU;
        return byte(1) >= lowest && byte(1) <= highest && continues(2) && continues(3) ? 4 : 0;
    }
    return 0;
}

}  // namespace

std::size_t valid_utf8_prefix(std::string_view text) noexcept {
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t length = character_length(text.substr(at));
        if (length == 0) break;
        at += length;
    }
    return at;
}

std::string for_message(std::string_view text, std::size_t max_bytes) {
    std::string out;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t length = character_length(text.substr(at));
        const std::size_t step = length == 0 ? 1 : length;
        if (at + step > max_bytes) return out + "...";
        const auto first = static_cast<unsigned char>(text[at]);
        const bool shown = length > 1 || (length == 1 && first >= 0x20U && first != 0x7fU);
        out += shown ? std::string(text.substr(at, step)) : "?";
        at += step;
    }
    return out;
}

}  // namespace wg
