#include "core/quantity/text.h"

#include <array>
#include <charconv>
#include <cmath>

namespace wg {

std::string fixed(double value, int decimals) {
    if (!std::isfinite(value)) return "unknown";
    std::array<char, 400> buffer{};
    const auto end =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::fixed, decimals);
    std::string out(buffer.data(), end.ptr);
    if (out.size() > 1 && out.front() == '-' && out.find_first_not_of("-0.") == std::string::npos) out.erase(0, 1);
    return out;
}

std::string plain(double value, int decimals) {
    std::string out = fixed(value, decimals);
    if (out.find('.') == std::string::npos) return out;
    out.erase(out.find_last_not_of('0') + 1);
    if (out.back() == '.') out.pop_back();
    return out;
}

std::string counted(long count, const std::string& one, const std::string& many) {
    return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

}  // namespace wg
