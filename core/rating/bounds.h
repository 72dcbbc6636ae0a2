#pragma once
// What no machine, and what no machine with this compressor and this cylinder, can do in the dark chamber.

#include <string>
#include <vector>

#include "core/rating/declared.h"

namespace wg::rating {

/// Carnot: heat to water at `water_c` from air at `air_c`, T_w/(T_w - T_a). Needs water_c > air_c.
[[nodiscard]] double carnot_cop(double water_c, double air_c) noexcept;

/// Best possible for warming cold water to `hot_c` with the air as only source, each degree at its own Carnot factor:
/// (hot - cold) / (hot - s - T_a ln(T_hot/T_s)), s = max(cold, air): what the air warms by itself costs nothing. Needs
/// hot_c > cold_c and hot_c > air_c.
[[nodiscard]] double ideal_cop(double cold_c, double hot_c, double air_c) noexcept;

/// Heating-up time, h, that a perfect plate (refrigerant at air temperature), a perfect condenser (refrigerant at water
/// temperature, least lift kept), full volumetric efficiency, no heat lost at shell or cylinder, and a motor as
/// wasteful as the calibration allows (its waste warms the water) would need: swept volume alone bounds the heat.
/// A compressor by its maker's coefficients takes in what those say; 0 where they do not cover every state on the way.
[[nodiscard]] double shortest_heat_up_h(const Item& item, const Chamber& chamber);

/// Least mean power, W, that keeps the cylinder hot against `loss_w_k`: loss at the lower edge of the thermostat's band
/// over Carnot. Zero where the room is warmer.
[[nodiscard]] double least_standby_w(const Item& item, const Chamber& chamber, double loss_w_k) noexcept;

/// Declared values that contradict physics or each other, in plain words, each beyond its own tolerance. Item and
/// chamber must be valid for rate(). `loss_is_open`: the standing loss may be as low as the calibration allows.
[[nodiscard]] std::vector<std::string> contradictions(const Item& item, const Chamber& chamber,
                                                      const std::vector<Declared>& declared, bool loss_is_open);

}  // namespace wg::rating
