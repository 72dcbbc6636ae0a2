#include "core/quantity/base64.h"

#include <algorithm>
#include <cstdint>

namespace wg {
namespace {

constexpr std::string_view alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

}  // namespace

std::string to_base64(std::string_view bytes) {
    std::string out;
    out.reserve((bytes.size() + 2) / 3 * 4);
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        const std::size_t count = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k)
            group = (group << 8U) | (k < count ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k)
            out += k <= count ? alphabet[(group >> (18U - 6U * k)) & 63U] : '=';
    }
    return out;
}

std::optional<std::string> from_base64(std::string_view text) {
    if (text.size() % 4 != 0) return std::nullopt;
    std::string out;
    out.reserve(text.size() / 4 * 3);
    for (std::size_t i = 0; i < text.size(); i += 4) {
        const bool last = i + 4 == text.size();
        const std::size_t padding = last && text[i + 3] == '=' ? (text[i + 2] == '=' ? 2U : 1U) : 0U;
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 4; ++k) {
            const std::size_t value = k + padding < 4 ? alphabet.find(text[i + k]) : 0;
            if (value == std::string_view::npos) return std::nullopt;
            group = (group << 6U) | static_cast<std::uint32_t>(value);
        }
        if ((padding == 1 && (group & 0xFFU) != 0) || (padding == 2 && (group & 0xFFFFU) != 0)) return std::nullopt;
        for (std::size_t k = 0; k < 3 - padding; ++k)
            out += static_cast<char>((group >> (16U - 8U * k)) & 0xFFU);
    }
    return out;
}

}  // namespace wg
