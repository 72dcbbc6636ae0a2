#pragma once
// What a data sheet declares, and what it leaves open.

#include <string>
#include <vector>

#include "core/rating/rating.h"

namespace wg::rating {

enum class Quantity {
    cop_dhw,     ///< of a draw-off cycle
    heat_up_h,   ///< from cold water to the thermostat's stop
    standby_w,   ///< mean power standing hot
    v40_l,       ///< mixed water at 40 deg C
    heat_w,      ///< heating power at a steady point
    steady_cop,  ///< COP at a steady point
};

/// One value of the sheet with the conditions it was measured under.
struct Declared {
    Quantity quantity = Quantity::cop_dhw;
    double value = 0.0;
    double tolerance = 0.05;  ///< share of the value that counts as met, 0.001..0.5
    Air air = air_7;
    TappingCycle cycle = TappingCycle::l;  ///< cop_dhw only
    double water_c = 45.0;                 ///< heat_w and steady_cop only, 5..70
};
/// "COP of draw-off cycle L at 7 deg C".
[[nodiscard]] std::string name_of(const Declared& declared);

/// Figures of an item that sheets leave open.
enum class Parameter {
    overall_peak,          ///< best overall efficiency of the compressor
    plate_to_refrigerant,  ///< W/(m2 K)
    condenser,             ///< W/K
    standing_loss,         ///< kWh/24 h
    volumetric_at_unity,   ///< volumetric efficiency at pressure ratio 1
    standby_power,         ///< W of the controls
};

/// Limits within which a parameter is believed: common practice, no published source.
struct Range {
    double low = 0.0;
    double high = 0.0;
};
[[nodiscard]] Range range_of(Parameter parameter) noexcept;
[[nodiscard]] const char* name_of(Parameter parameter) noexcept;  ///< plain words
[[nodiscard]] const char* unit_of(Parameter parameter) noexcept;  ///< "" where it has none
[[nodiscard]] double value_of(const Item& item, Parameter parameter) noexcept;
void set_value(Item& item, Parameter parameter, double value) noexcept;

/// Parameters that these values can tell something about, most telling first, never more than there are values.
/// `compressor_known`: the block states its maker's ten coefficients, which are not calibrated.
[[nodiscard]] std::vector<Parameter> open_parameters(const std::vector<Declared>& declared,
                                                     bool compressor_known = false);

}  // namespace wg::rating
