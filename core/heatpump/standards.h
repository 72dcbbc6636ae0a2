#pragma once
// Test-standard forms of plate and compressor data, for makers' sheets that state those instead of the quantities this
// program computes with.

#include "core/equipment/compressor_data.h"

#include "core/equipment/iso9806.h"

namespace wg::heatpump {

using wg::Iso9806;

/// Ten-coefficient polynomial of EN 12900; the catalogue's blocks state such data (core/heatpump/compressor.h).
using wg::en12900;

struct Iso9806Conditions {
    double beam_w_m2 = 0.0;
    double diffuse_w_m2 = 0.0;
    double incidence_modifier = 1.0;      ///< K_b
    double fluid_over_air_k = 0.0;        ///< mean fluid less air
    double wind_m_s = 3.0;                ///< over the collector
    double long_wave_balance_w_m2 = 0.0;  ///< E_L - sigma Ta^4
    double fluid_rise_k_s = 0.0;          ///< d(mean fluid)/dt
};
/// The standard's equation to the letter, output per gross area, W/m2. Wind enters as its difference to 3 m/s.
/// Confirmed against two open implementations of the 2017 edition: ReSiE (solarthermal collector) and IDEAS
/// (Fluid.PVTCollectors.BaseClasses.ISO9806HeatLoss).
[[nodiscard]] inline double iso9806_output_w_m2(const Iso9806& c, const Iso9806Conditions& at) noexcept {
    const double light = at.beam_w_m2 + at.diffuse_w_m2;
    const double wind = at.wind_m_s - 3.0;
    const double dt = at.fluid_over_air_k;
    return c.zero_loss * (at.incidence_modifier * at.beam_w_m2 + c.diffuse * at.diffuse_w_m2) - c.a1 * dt -
           c.a2 * dt * dt - c.a3 * wind * dt + c.a4 * at.long_wave_balance_w_m2 - c.a5 * at.fluid_rise_k_s -
           c.a6 * wind * light - c.a7 * wind * at.long_wave_balance_w_m2 - c.a8 * dt * dt * dt * dt;
}

}  // namespace wg::heatpump
