#pragma once
// Money is a whole number of minor units (cents). A currency's code travels with the price list, not with
// every amount: one quote has one currency.

#include <compare>
#include <cstdint>
#include <string>

namespace wg {

/// An amount in minor units of the quote's currency.
struct Money {
    std::int64_t minor = 0;

    friend constexpr auto operator<=>(Money, Money) = default;
    constexpr Money& operator+=(Money other) noexcept {
        minor += other.minor;
        return *this;
    }
    constexpr Money& operator-=(Money other) noexcept {
        minor -= other.minor;
        return *this;
    }
    friend constexpr Money operator+(Money a, Money b) noexcept { return {a.minor + b.minor}; }
    friend constexpr Money operator-(Money a, Money b) noexcept { return {a.minor - b.minor}; }
};

enum class Rounding {
    half_up,    ///< 0.5 goes away from zero; usual in trade and in EN 16931 examples
    half_even,  ///< 0.5 goes to the even neighbour
};

/// amount * factor, rounded once to whole minor units. |amount * factor| must stay below 9e15.
[[nodiscard]] Money scaled(Money amount, double factor, Rounding rounding = Rounding::half_up);

/// amount * numerator / denominator in whole numbers, rounded once: no binary fraction comes between a price list and a
/// sum. |amount * numerator| below 1e37, denominator above 0; the result must fit 63 bits.
[[nodiscard]] Money scaled_exact(Money amount, std::int64_t numerator, std::int64_t denominator,
                                 Rounding rounding = Rounding::half_up);

/// A figure as typed with so many decimals, as a whole number of its last place: 12.345 with 3 decimals is 12345.
/// |value| * 10^decimals below 9e15.
[[nodiscard]] std::int64_t in_last_place(double value, int decimals);

/// Unit price times quantity, rounded once. The quantity counts in thousandths.
[[nodiscard]] Money line_net(Money unit_price, double quantity, Rounding rounding = Rounding::half_up);

/// "1,234.50 EUR"-like text with the currency's two decimals: point as decimal sign, comma between thousands.
[[nodiscard]] std::string text(Money amount, const std::string& currency);

}  // namespace wg
