#pragma once
// Many climates in one comma-separated text: the built-in table of places and national tables of the user.

#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/result.h"
#include "core/weather/climate.h"

namespace wg::weather {

/// What stands for columns that a table lacks; a climate's source then says so.
namespace assumed_climate {
inline constexpr double air_daily_swing_k = 8.0;
inline constexpr double relative_humidity = 0.75;
inline constexpr double wind_m_s = 2.5;
}  // namespace assumed_climate

/// Reads a table as in docs/climate-format.md: a line of column names, then a line for each place; at most 4 MB and
/// 5,000 places. Problems name line and column; nothing is taken from a text that has any. Each climate's seed follows
/// from its id, so that a place has the same years whatever else its table holds.
[[nodiscard]] Result<std::vector<Climate>> climates_from_csv(std::string_view text, const std::string& file_name);

/// Seed of a climate that names none: FNV-1a (Fowler, Noll and Vo) of its id, 64 bits.
[[nodiscard]] std::uint64_t seed_of_id(std::string_view id) noexcept;

}  // namespace wg::weather
