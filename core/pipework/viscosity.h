#pragma once
// Viscosity of refrigerants as the lines need it: polynomials through CoolProp's values
// (tests/reference/fluids_values.py).

#include "core/equipment/equipment.h"

namespace wg::pipework {

// Beyond these the value at the end stands.
inline constexpr double viscosity_min_c = -40.0;
inline constexpr double liquid_viscosity_max_c = 75.0;
inline constexpr double vapour_viscosity_max_c = 35.0;  ///< saturation
inline constexpr double vapour_viscosity_max_superheat_k = 20.0;

/// Saturated liquid, Pa s; within 0.3 % of CoolProp's reference equations. R513A (no such equation): its two parts by
/// mole fraction, logarithms added (Arrhenius 1887).
[[nodiscard]] double liquid_viscosity_pa_s(Refrigerant refrigerant, double temperature_c) noexcept;

/// Vapour `superheat_k` above saturation, Pa s; within 0.3 %. R513A by Herning and Zipperer (Gas- und Wasserfach 79,
/// 1936).
[[nodiscard]] double vapour_viscosity_pa_s(Refrigerant refrigerant, double saturation_c, double superheat_k) noexcept;

}  // namespace wg::pipework
