#pragma once
// Test-standard forms of plate and compressor data, for makers' sheets that state those instead of the quantities this
// program computes with.

#include "core/equipment/compressor_data.h"

namespace wg::heatpump {

/// Ten-coefficient polynomial of EN 12900; the catalogue's blocks state such data (core/heatpump/compressor.h).
using wg::en12900;

/// Coefficients of a wind- and infrared-sensitive collector by ISO 9806:2017 (clause 25), without a latent term: the
/// test has none, condensation must be added apart.
struct Iso9806 {
    double zero_loss = 0.9;  ///< eta_0,b
    double diffuse = 1.0;    ///< K_d
    double a1 = 0.0, a2 = 0.0, a3 = 0.0, a4 = 0.0, a5 = 0.0, a6 = 0.0, a7 = 0.0, a8 = 0.0;
};
struct Iso9806Conditions {
    double beam_w_m2 = 0.0;
    double diffuse_w_m2 = 0.0;
    double incidence_modifier = 1.0;      ///< K_b
    double fluid_over_air_k = 0.0;        ///< mean fluid less air
    double wind_m_s = 3.0;                ///< over the collector
    double long_wave_balance_w_m2 = 0.0;  ///< E_L - sigma Ta^4
    double fluid_rise_k_s = 0.0;          ///< d(mean fluid)/dt
};
/// Output per gross area, W/m2. Wind enters as its difference to 3 m/s.
[[nodiscard]] inline double iso9806_output_w_m2(const Iso9806& c, const Iso9806Conditions& at) noexcept {
    const double light = at.beam_w_m2 + at.diffuse_w_m2;
    const double wind = at.wind_m_s - 3.0;
    const double dt = at.fluid_over_air_k;
    return c.zero_loss * (at.incidence_modifier * at.beam_w_m2 + c.diffuse * at.diffuse_w_m2) - c.a1 * dt -
           c.a2 * dt * dt - c.a3 * wind * dt + c.a4 * at.long_wave_balance_w_m2 - c.a5 * at.fluid_rise_k_s -
           c.a6 * wind * light - c.a7 * wind * at.long_wave_balance_w_m2 - c.a8 * dt * dt * dt * dt;
}

}  // namespace wg::heatpump
