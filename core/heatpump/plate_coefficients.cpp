// The plate's dry balance by the coefficients of a test (ISO 9806:2017) in place of first principles.
//
// The test relates heat to the mean fluid temperature; the resistance between plate and fluid is inside it. The balance
// is of the plate's own temperature: at that of the plate, Tp, the fluid of the test stood at Tp - q R, so that
//     x + R q(x) = Tp - Ta,   q(x) = light + long wave - loss(x).
// q is concave in x and 1 + R q'(x) stays above zero (core/equipment/iso9806.h sees to it): one root, and Newton's
// steps from anywhere end there. What refrigerant boiling at Te then takes up follows from the plate's conductance to
// it as ever; where that is the test's own, a dry plate gives exactly what the coefficients say at Te.

#include <algorithm>
#include <cmath>

#include "core/heatpump/plate.h"
#include "core/quantity/constants.h"

namespace wg::heatpump {

namespace {

constexpr int most_steps = 40;
constexpr double settled_k = 1e-12;

double fourth(double x) noexcept {
    return x * x * x * x;
}

}  // namespace

void PlateBalance::set_tested_weather(const Surroundings& s) noexcept {
    const Iso9806& c = *plate_.coefficients;
    const double wind = std::min(s.wind_m_s, Iso9806::strongest_wind_m_s) - Iso9806::reference_wind_m_s;
    tested_.wind_m_s = s.wind_m_s;
    tested_.light_share = c.zero_loss * s.incidence - c.a6 * wind;
    const double lacking_w_m2 = front_.received_w_m2 - stefan_boltzmann_w_m2k4 * fourth(kelvin(s.air_c));
    tested_.long_wave_w_m2 = (c.a4 - c.a7 * wind) * lacking_w_m2;
    tested_.resistance_m2k_w = plate_.gross_area_m2 / (c.plate_to_fluid_w_m2k * plate_.area_m2);
    const double front_h = std::cbrt(front_.forced_cubed);
    tested_.front_share = front_h / (front_h + std::cbrt(rear_.forced_cubed));
}

/// Light on the rear is not in the standard's equation: what the test's surroundings gave it is inside eta_0,b.
void PlateBalance::gather_tested_light() noexcept {
    const double cover = frost_.front_kg_m2 / (frost_.front_kg_m2 + albedo_growth_kg_m2);
    const double bright = std::min(frost_absorptance, plate_.absorptance) / plate_.absorptance;
    const double absorbed_w_m2 = tested_.light_share * front_light_ * (1.0 + cover * (bright - 1.0));
    light_w_ = plate_.gross_area_m2 * front_.through * absorbed_w_m2;
    tested_.bare_w_m2 = absorbed_w_m2 + tested_.long_wave_w_m2;
}

PlateHeat PlateBalance::tested_heat(double plate_c) const noexcept {
    PlateHeat out;
    const Iso9806& c = *plate_.coefficients;
    const double r = tested_.resistance_m2k_w;
    const double wind = tested_.wind_m_s;
    const double over_air = plate_c - air_c_;
    double x = over_air - r * tested_.bare_w_m2;
    const double straight = c.loss_slope_w_m2k(wind, 0.0);
    x /= 1.0 - r * straight;  // the root itself where the loss is proportional
    if (c.a2 > 0.0 || c.a8 > 0.0) {
        for (int i = 0; i < most_steps; ++i) {
            const double miss = x + r * (tested_.bare_w_m2 - c.loss_w_m2(wind, x)) - over_air;
            const double step = miss / (1.0 - r * c.loss_slope_w_m2k(wind, x));
            x -= step;
            if (std::abs(step) < settled_k) break;
        }
    }
    const double slope = c.loss_slope_w_m2k(wind, x);
    // Ice lets a share of each term through: light and sky by the front, exchange with the air by both faces.
    const double air_share = tested_.front_share * front_.through + (1.0 - tested_.front_share) * rear_.through;
    out.light_w = light_w_;
    out.long_wave_w = plate_.gross_area_m2 * front_.through * tested_.long_wave_w_m2;
    out.air_w = -plate_.gross_area_m2 * air_share * c.loss_w_m2(wind, x);
    out.slope_w_k = -plate_.gross_area_m2 * air_share * slope / (1.0 - r * slope);

    const double distance = std::abs(over_air);
    const bool cold = over_air <= 0.0;
    const double front_natural = cold ? front_.natural_cold : front_.natural_warm;
    const double rear_natural = cold ? rear_.natural_cold : rear_.natural_warm;
    const double front_ha = plate_.area_m2 * front_.through * std::cbrt(front_.forced_cubed + front_natural * distance);
    const double rear_ha = plate_.area_m2 * rear_.through * std::cbrt(rear_.forced_cubed + rear_natural * distance);
    add_vapour_and_ice(plate_c, front_ha, rear_ha, out);
    return out;
}

}  // namespace wg::heatpump
