#include "core/pipework/tube.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/quantity/constants.h"

namespace wg::pipework {

double tube_wall_mm(double outside_diameter_mm) noexcept {
    constexpr std::array<double, 3> thin_inch_sizes_mm{6.35, 9.52, 12.70};
    constexpr double same_size_mm = 0.06;  // 3/8 inch is written 9.52 and 9.53
    for (const double size : thin_inch_sizes_mm) {
        if (std::abs(outside_diameter_mm - size) <= same_size_mm) return 0.8;
    }
    return 1.0;
}

double tube_bore_mm(double outside_diameter_mm) noexcept {
    return std::max(0.0, outside_diameter_mm - 2.0 * tube_wall_mm(outside_diameter_mm));
}

double friction_churchill1977(double reynolds, double relative_roughness) noexcept {
    const double a =
        std::pow(2.457 * std::log(1.0 / (std::pow(7.0 / reynolds, 0.9) + 0.27 * relative_roughness)), 16.0);
    const double b = std::pow(37530.0 / reynolds, 16.0);
    return 8.0 * std::pow(std::pow(8.0 / reynolds, 12.0) + 1.0 / std::pow(a + b, 1.5), 1.0 / 12.0);
}

double single_phase_pa_m(double mass_velocity_kg_m2s, double density_kg_m3, double viscosity_pa_s, double bore_m,
                         double roughness_m) noexcept {
    if (!(mass_velocity_kg_m2s > 0.0)) return 0.0;
    const double reynolds = mass_velocity_kg_m2s * bore_m / viscosity_pa_s;
    return friction_churchill1977(reynolds, roughness_m / bore_m) * 0.5 * mass_velocity_kg_m2s * mass_velocity_kg_m2s /
           (density_kg_m3 * bore_m);
}

double two_phase_pa_m(double mass_velocity_kg_m2s, double quality, const Phases& phases, double bore_m,
                      double roughness_m) noexcept {
    const double x = std::clamp(quality, 0.0, 1.0);
    const double a = single_phase_pa_m(mass_velocity_kg_m2s, phases.liquid_density_kg_m3, phases.liquid_viscosity_pa_s,
                                       bore_m, roughness_m);
    const double b = single_phase_pa_m(mass_velocity_kg_m2s, phases.vapour_density_kg_m3, phases.vapour_viscosity_pa_s,
                                       bore_m, roughness_m);
    return (a + 2.0 * (b - a) * x) * std::cbrt(1.0 - x) + b * x * x * x;
}

double homogeneous_density_kg_m3(double quality, const Phases& phases) noexcept {
    const double x = std::clamp(quality, 0.0, 1.0);
    return 1.0 / (x / phases.vapour_density_kg_m3 + (1.0 - x) / phases.liquid_density_kg_m3);
}

double riser_mass_velocity_kg_m2s(double vapour_density_kg_m3, double bore_m) noexcept {
    constexpr double oil_density_kg_m3 = 930.0;
    return 0.7225 * std::sqrt(std::max(0.0, vapour_density_kg_m3 * gravity_m_s2 * bore_m *
                                                (oil_density_kg_m3 - vapour_density_kg_m3)));
}

double heat_per_metre_w_mk(double outside_diameter_mm, double wall_mm, const Lagging& lagging) noexcept {
    const double inner_m = outside_diameter_mm * 1e-3, outer_m = inner_m + 2e-3 * wall_mm;
    const double conduction = std::log(outer_m / inner_m) / (2.0 * pi * lagging.conductivity_w_mk);
    return 1.0 / (conduction + 1.0 / (lagging.surface_w_m2k * pi * outer_m));
}

double face_temperature_c(double outside_diameter_mm, double wall_mm, double tube_c, double air_c,
                          const Lagging& lagging) noexcept {
    const double outer_m = (outside_diameter_mm + 2.0 * wall_mm) * 1e-3;
    const double heat_w_m = heat_per_metre_w_mk(outside_diameter_mm, wall_mm, lagging) * (air_c - tube_c);
    return air_c - heat_w_m / (lagging.surface_w_m2k * pi * outer_m);
}

double dew_point_c(double air_c, double relative_humidity) noexcept {
    const double g = std::log(relative_humidity) + 17.62 * air_c / (243.12 + air_c);
    return 243.12 * g / (17.62 - g);
}

double lagging_against_dew_mm(double outside_diameter_mm, double tube_c, double air_c, double relative_humidity,
                              const Lagging& lagging) noexcept {
    constexpr std::array<double, 6> walls_mm{6.0, 9.0, 13.0, 19.0, 25.0, 32.0};
    const double dew_c = dew_point_c(air_c, relative_humidity);
    for (const double wall : walls_mm) {
        if (face_temperature_c(outside_diameter_mm, wall, tube_c, air_c, lagging) >= dew_c) return wall;
    }
    return walls_mm.back();
}

}  // namespace wg::pipework
