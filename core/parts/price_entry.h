#pragma once
// What a price list is given by hand: figures as typed, and the list as its own file would read it back.

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/parts/prices.h"

namespace wg::parts {

/// An amount in whole units as hundredths; nothing when it is below 0, above 10,000,000, or has more than two decimals.
[[nodiscard]] std::optional<Money> money_of_units(double units) noexcept;
/// The other way, for fields that show whole units.
[[nodiscard]] double units_of(Money amount) noexcept;
/// Hundredths of so many whole units, to the millionth of a hundredth: prices of a kWh have fractions.
[[nodiscard]] double minor_of_units(double units) noexcept;

/// A share of so many percent, to the millionth of a percent; and the other way.
[[nodiscard]] double share_of_percent(double percent) noexcept;
[[nodiscard]] double percent_of_share(double share) noexcept;

/// "50: 6.90; 100: 6.50": from so many on, the price of one. Empty: none.
[[nodiscard]] std::string quantity_prices_text(const std::vector<QuantityPrice>& prices);
/// The same text, with decimal point or comma. Refused: what is no such text, quantities that do not rise or are above
/// 1,000,000, amounts that `money_of_units` refuses.
[[nodiscard]] Result<std::vector<QuantityPrice>> quantity_prices_from(std::string_view text);

/// What follows from a supplier's price, when it or its group's discount was changed; without one the cost stays. A
/// group that is not in the list takes nothing off; the reader refuses it.
void reckon_cost(PriceItem& item, const std::vector<DiscountGroup>& groups);
void reckon_costs(PriceList& list);

/// Bought beyond need where an item tells no waste of its own.
inline constexpr double insulation_waste = 0.05;
/// That share of an item: its own, or the usual one of insulation, by its id.
[[nodiscard]] double waste_share_of(const PriceItem& item) noexcept;

/// What the list's own reader says of everything but the items; only those items are looked at that name a discount
/// group or have the id of a task. Quick with the longest list. Empty: it may be saved.
[[nodiscard]] std::vector<Problem> problems_beside_items(const PriceList& list);

}  // namespace wg::parts
