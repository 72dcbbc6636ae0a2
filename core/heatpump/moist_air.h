#pragma once
// Moist air at a surface. Saturation pressure: D. Sonntag, Z. Meteorol. 70 (1990) 340, Magnus form (WMO-No. 8, annex
// 4.B), over water 17.62, 243.12 deg C and over ice 22.46, 272.62 deg C, valid -65..60 deg C over ice, -45..60 over
// water to 0.4 %; used beyond 60 deg C only to tell that nothing condenses.

#include <cmath>

namespace wg::heatpump {

[[nodiscard]] inline double vapour_pressure_over_water_pa(double temperature_c) noexcept {
    return 611.2 * std::exp(17.62 * temperature_c / (243.12 + temperature_c));
}
[[nodiscard]] inline double vapour_pressure_over_ice_pa(double temperature_c) noexcept {
    return 611.2 * std::exp(22.46 * temperature_c / (272.62 + temperature_c));
}

/// Share of what settles on a surface that settles as frost: 0 above 0 deg C, 1 below -1, smooth between, so that no
/// balance meets a jump at the freezing point.
[[nodiscard]] inline double frost_share(double surface_c) noexcept {
    if (surface_c >= 0.0) return 0.0;
    if (surface_c <= -1.0) return 1.0;
    const double x = -surface_c;
    return x * x * (3.0 - 2.0 * x);
}

/// Saturation at a wet or frosted surface: over water above 0 deg C, over ice below -1, with slopes per K.
struct SurfaceVapour {
    double pressure_pa = 0.0, pressure_slope = 0.0;
    double frost_share = 0.0, frost_share_slope = 0.0;
};
[[nodiscard]] inline SurfaceVapour vapour_at_surface(double surface_c) noexcept {
    const double share = frost_share(surface_c);
    SurfaceVapour out;
    double water_pa = 0.0;
    double ice_pa = 0.0;
    if (share < 1.0) {
        water_pa = vapour_pressure_over_water_pa(surface_c);
        const double reach = 243.12 + surface_c;
        out.pressure_pa += (1.0 - share) * water_pa;
        out.pressure_slope += (1.0 - share) * water_pa * 17.62 * 243.12 / (reach * reach);
    }
    if (share > 0.0) {
        ice_pa = vapour_pressure_over_ice_pa(surface_c);
        const double reach = 272.62 + surface_c;
        out.pressure_pa += share * ice_pa;
        out.pressure_slope += share * ice_pa * 22.46 * 272.62 / (reach * reach);
    }
    out.frost_share = share;
    if (share > 0.0 && share < 1.0) {
        out.frost_share_slope = 6.0 * surface_c * (1.0 + surface_c);
        out.pressure_slope += (ice_pa - water_pa) * out.frost_share_slope;
    }
    return out;
}

/// kg of vapour per kg of dry air. The vapour pressure is held at half the air pressure: beyond, on a hot plate, the
/// quotient would pass through a pole and turn negative.
[[nodiscard]] inline double humidity_ratio(double vapour_pa, double pressure_pa) noexcept {
    const double held = vapour_pa < 0.5 * pressure_pa ? vapour_pa : 0.5 * pressure_pa;
    return 0.62198 * held / (pressure_pa - held);
}

}  // namespace wg::heatpump
