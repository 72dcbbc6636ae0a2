#pragma once
// Declared values of a data sheet as a JSON text: docs/declared-format.md.

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/rating/declared.h"

namespace wg::rating {

struct DeclaredSheet {
    std::string source;                   ///< where the values are from, for people
    std::optional<double> set_point_c;    ///< of the test, when the sheet states it, 40..65
    std::optional<double> air_speed_m_s;  ///< over the plate, when the sheet states it, 0..5
    std::vector<Declared> values;         ///< 1..50
};

/// Refused with file, entry and field: what is missing, unknown, out of range, or stands twice under the same
/// conditions. All problems at once.
[[nodiscard]] Result<DeclaredSheet> sheet_from_json(std::string_view text, const std::string& file_name);
[[nodiscard]] std::string sheet_to_json(const DeclaredSheet& sheet);

/// What a quantity may be declared as, in its own unit: wide, so that only slips of the keyboard and wrong units are
/// refused; what physics forbids is for fit() to say.
[[nodiscard]] Range declarable(Quantity quantity) noexcept;
[[nodiscard]] const char* key_of(Quantity quantity) noexcept;  ///< "cop_dhw"
[[nodiscard]] const char* unit_of(Quantity quantity) noexcept;
[[nodiscard]] bool has_cycle(Quantity quantity) noexcept;  ///< measured with a draw-off cycle
[[nodiscard]] bool has_water(Quantity quantity) noexcept;  ///< measured at one water temperature
/// The same quantity under the same conditions.
[[nodiscard]] bool same_point(const Declared& a, const Declared& b) noexcept;
inline constexpr Quantity all_quantities[] = {Quantity::cop_dhw, Quantity::heat_up_h, Quantity::standby_w,
                                              Quantity::v40_l,   Quantity::heat_w,    Quantity::steady_cop};
inline constexpr std::size_t most_declared = 50;
/// Tables list airs with a wet bulb one kelvin below; taken when a value states none.
inline constexpr double usual_wet_bulb_k = 1.0;

}  // namespace wg::rating
