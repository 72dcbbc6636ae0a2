#pragma once
// Dry nitrogen at test pressure, as a real gas.

namespace wg::commissioning {

/// Compressibility Z = p/(rho R T) of nitrogen from its second and third virial coefficient, which are fitted to the
/// equation of state of Span, Lemmon, Jacobsen, Wagner, Yokozeki, J. Phys. Chem. Ref. Data 29, 2000, by CoolProp.
/// 250..340 K, 0..45 bar absolute, within 7e-5. At 26 bar it is 0.990 at 0 deg C and 0.999 at 40 deg C: a hold that
/// warms by 40 K reads 1 % higher than an ideal gas would.
[[nodiscard]] double nitrogen_compressibility(double pressure_pa, double temperature_c) noexcept;

/// Viscosity, Pa s: Sutherland's form with 17.57 uPa s at 20 deg C and 111 K (White, Viscous Fluid Flow, table 1-2,
/// from memory); 0..40 deg C within 0.3 % of CoolProp.
[[nodiscard]] double nitrogen_viscosity_pa_s(double temperature_c) noexcept;

}  // namespace wg::commissioning
