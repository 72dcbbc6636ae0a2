#include "core/tables/windows_1252.h"

#include <array>

namespace wg::tables {
namespace {

// 0x80 to 0x9F; 0: undefined. All others are their own code point.
constexpr std::array<char16_t, 32> upper_controls = {0x20ac, 0,      0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021,
                                                     0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0,      0x017d, 0,
                                                     0,      0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014,
                                                     0x02dc, 0x2122, 0x0161, 0x203a, 0x0153, 0,      0x017e, 0x0178};

void append_utf8(std::string& out, unsigned code) {
    const auto byte = [](unsigned value) { return static_cast<char>(value); };
    if (code < 0x80U) {
        out += byte(code);
    } else if (code < 0x800U) {
        out += byte(0xc0U | (code >> 6U));
        out += byte(0x80U | (code & 0x3fU));
    } else {
        out += byte(0xe0U | (code >> 12U));
        out += byte(0x80U | ((code >> 6U) & 0x3fU));
        out += byte(0x80U | (code & 0x3fU));
    }
}

}  // namespace

std::optional<std::string> utf8_of_windows_1252(std::string_view bytes) {
    std::string out;
    out.reserve(bytes.size() + bytes.size() / 8);
    for (const char c : bytes) {
        unsigned code = static_cast<unsigned char>(c);
        if (code >= 0x80U && code <= 0x9fU) {
            code = upper_controls[code - 0x80U];
            if (code == 0) return std::nullopt;
        }
        append_utf8(out, code);
    }
    return out;
}

}  // namespace wg::tables
