#pragma once
// Flow, heat and sizes of one copper tube.

#include "core/equipment/equipment.h"

namespace wg::pipework {

/// Wall thickness of refrigeration tube by outside diameter, mm (EN 12735-1; from memory): 0.8 to 12.7 mm in inch sizes
/// below 15 mm, 1.0 for the rest.
[[nodiscard]] double tube_wall_mm(double outside_diameter_mm) noexcept;
/// Clear bore, mm; 0 when the tube is thinner than its two walls.
[[nodiscard]] double tube_bore_mm(double outside_diameter_mm) noexcept;

/// Darcy friction factor for any Reynolds number above 0 (Churchill, Chemical Engineering 84(24), 1977).
[[nodiscard]] double friction_churchill1977(double reynolds, double relative_roughness) noexcept;

/// Fall of pressure a metre of one phase by friction, Pa/m: Darcy with Churchill's factor. 0 without flow.
[[nodiscard]] double single_phase_pa_m(double mass_velocity_kg_m2s, double density_kg_m3, double viscosity_pa_s,
                                       double bore_m, double roughness_m) noexcept;

/// Both phases of a refrigerant at one saturation temperature.
struct Phases {
    double liquid_density_kg_m3 = 0.0;
    double vapour_density_kg_m3 = 0.0;
    double liquid_viscosity_pa_s = 0.0;
    double vapour_viscosity_pa_s = 0.0;
};
/// Fall of pressure a metre of liquid and vapour together, Pa/m: (A + 2 (B - A) x) (1 - x)^(1/3) + B x^3 with A and B
/// of the whole flow as liquid and as vapour (Mueller-Steinhagen, Heck, Chem. Eng. Process. 20, 1986). Quality 0..1.
[[nodiscard]] double two_phase_pa_m(double mass_velocity_kg_m2s, double quality, const Phases& phases, double bore_m,
                                    double roughness_m) noexcept;
/// Density of both moving at one speed.
[[nodiscard]] double homogeneous_density_kg_m3(double quality, const Phases& phases) noexcept;

/// Least mass velocity that lifts oil in a riser, kg/(m2 s): 0.7225 sqrt(rho g D (rho_oil - rho)), Jacobs, Scheideman,
/// Kazem, Macken, ASHRAE Transactions 82, 1976 (from memory).
[[nodiscard]] double riser_mass_velocity_kg_m2s(double vapour_density_kg_m3, double bore_m) noexcept;

/// Insulation of a cold tube, form of ISO 12241 (2008): radial conduction and one surface coefficient.
struct Lagging {
    double conductivity_w_mk = 0.036;  ///< closed-cell elastomeric foam at 0 deg C, EN 14304 declared value
    double surface_w_m2k = 9.0;        ///< still room air on a non-metallic surface, ISO 12241 annex (rounded)
};
/// Heat flow into one metre of tube for each kelvin between the air and the tube, W/(m K).
[[nodiscard]] double heat_per_metre_w_mk(double outside_diameter_mm, double wall_mm, const Lagging& lagging) noexcept;
/// Temperature of the lagging's face.
[[nodiscard]] double face_temperature_c(double outside_diameter_mm, double wall_mm, double tube_c, double air_c,
                                        const Lagging& lagging) noexcept;
/// Dew point by Magnus with the coefficients of Sonntag 1990 over water; relative humidity 0..1 exclusive of 0.
[[nodiscard]] double dew_point_c(double air_c, double relative_humidity) noexcept;
/// Thinnest usual wall (6, 9, 13, 19, 25, 32 mm, then 32) whose face stays above the dew point of the air.
[[nodiscard]] double lagging_against_dew_mm(double outside_diameter_mm, double tube_c, double air_c,
                                            double relative_humidity, const Lagging& lagging) noexcept;

}  // namespace wg::pipework
