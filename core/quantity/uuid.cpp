#include "core/quantity/uuid.h"

namespace wg {

bool is_uuid(std::string_view text) noexcept {
    if (text.size() != 36) return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
        const bool hex = (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
        if (dash ? c != '-' : !hex) return false;
    }
    return true;
}

std::string uuid_v4(const std::function<std::uint64_t()>& random_64) {
    // RFC 9562 section 5.4: version 4 in bits 48..51, variant 10 in bits 64..65.
    const std::uint64_t high = (random_64() & 0xffffffffffff0fffULL) | 0x0000000000004000ULL;
    const std::uint64_t low = (random_64() & 0x3fffffffffffffffULL) | 0x8000000000000000ULL;
    constexpr std::string_view digits = "0123456789abcdef";
    std::string out;
    out.reserve(36);
    for (unsigned i = 0; i < 32; ++i) {
        if (i == 8 || i == 12 || i == 16 || i == 20) out += '-';
        const std::uint64_t half = i < 16 ? high : low;
        out += digits[(half >> (60U - 4U * (i % 16U))) & 0xfU];
    }
    return out;
}

}  // namespace wg
