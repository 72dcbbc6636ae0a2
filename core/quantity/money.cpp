#include "core/quantity/money.h"

#include <cassert>
#include <cmath>

namespace wg {

Money scaled(Money amount, double factor, Rounding rounding) {
    // Products such as 1.005 * 100 arrive as 100.49999999999999: values within 1e-9 relative of a tie are ties.
    const double exact = static_cast<double>(amount.minor) * factor;
    assert(std::isfinite(exact) && std::fabs(exact) < 9e15);
    const double whole = std::floor(std::fabs(exact));
    const double rest = std::fabs(exact) - whole;
    const double tie_width = 1e-9 * std::fmax(1.0, whole * 1e-3);
    double rounded = whole;
    if (std::fabs(rest - 0.5) <= tie_width) {
        const bool up = rounding == Rounding::half_up || std::fmod(whole, 2.0) != 0.0;
        if (up) rounded += 1.0;
    } else if (rest > 0.5) {
        rounded += 1.0;
    }
    return {static_cast<std::int64_t>(exact < 0.0 ? -rounded : rounded)};
}

Money scaled_exact(Money amount, std::int64_t numerator, std::int64_t denominator, Rounding rounding) {
    __extension__ using Wide = __int128;
    assert(denominator > 0);
    const Wide product = static_cast<Wide>(amount.minor) * numerator;
    const bool negative = product < 0;
    const Wide magnitude = negative ? -product : product;
    Wide whole = magnitude / denominator;
    const Wide twice_rest = 2 * (magnitude % denominator);
    const bool tie_goes_up = rounding == Rounding::half_up || whole % 2 != 0;
    if (twice_rest > denominator || (twice_rest == denominator && tie_goes_up)) ++whole;
    return {static_cast<std::int64_t>(negative ? -whole : whole)};
}

std::int64_t in_last_place(double value, int decimals) {
    double places = 1.0;
    for (int i = 0; i < decimals; ++i)
        places *= 10.0;
    assert(std::isfinite(value) && std::fabs(value) * places < 9e15);
    return std::llround(value * places);
}

Money line_net(Money unit_price, double quantity, Rounding rounding) {
    return scaled_exact(unit_price, in_last_place(quantity, 3), 1000, rounding);
}

std::string text(Money amount, const std::string& currency) {
    const bool negative = amount.minor < 0;
    const auto magnitude =
        negative ? 0ULL - static_cast<unsigned long long>(amount.minor) : static_cast<unsigned long long>(amount.minor);
    std::string whole = std::to_string(magnitude / 100U);
    for (auto at = static_cast<std::ptrdiff_t>(whole.size()) - 3; at > 0; at -= 3) {
        whole.insert(static_cast<std::size_t>(at), ",");
    }
    const auto cents = magnitude % 100U;
    std::string out = negative ? "-" : "";
    out += whole + '.' + (cents < 10U ? "0" : "") + std::to_string(cents);
    if (!currency.empty()) out += ' ' + currency;
    return out;
}

}  // namespace wg
