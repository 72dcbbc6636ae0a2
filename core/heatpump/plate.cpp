#include "core/heatpump/plate.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstddef>
#include <cstdint>

#include "core/heatpump/moist_air.h"
#include "core/quantity/constants.h"

namespace wg::heatpump {

namespace {

// Forced convection without radiation in it: Watmuff, Charters, Proctor, Solar and wind induced external coefficients,
// COMPLES 2 (1977).
constexpr double still_w_m2k = 2.8;
constexpr double per_wind_w_m2k = 3.0;
constexpr double air_heat_j_kgk = 1006.0;
// Lewis number of water vapour in air 0.865, to the power 2/3 (Chilton-Colburn).
constexpr double lewis_two_thirds = 0.9078;
constexpr double vapour_per_convection = 1.0 / (air_heat_j_kgk * lewis_two_thirds);
constexpr double melt_w_m2k = 100.0;  // plate to melting frost while the pump runs
constexpr double temperature_low_c = -80.0, temperature_high_c = 250.0, heat_tolerance_w = 1e-4;

using Pair = std::array<double, 2>;  // front and rear: worked out side by side

/// Cube roots of two positive numbers to the last few bits: exponent divided by three, then two steps of Halley's
/// method.
Pair cube_roots(Pair x) noexcept {
    Pair y;
    for (std::size_t k = 0; k < 2; ++k)
        y[k] = std::bit_cast<double>(std::bit_cast<std::uint64_t>(x[k]) / 3 + 0x2A9F7893782DA1CEULL);
    for (int i = 0; i < 2; ++i) {
        Pair cube;
        for (std::size_t k = 0; k < 2; ++k)
            cube[k] = y[k] * y[k] * y[k];
        for (std::size_t k = 0; k < 2; ++k)
            y[k] *= (cube[k] + 2.0 * x[k]) / (2.0 * cube[k] + x[k]);
    }
    return y;
}

// Natural convection of a tilted plate, turbulent: Walton, Thermal Analysis Research Program, NBSIR 83-2655 (1983);
// coefficient of |dT|^(1/3). Unstable: warm face looking up or cold face looking down.
double natural_unstable(double cosine) noexcept {
    return 9.482 / (7.283 - std::abs(cosine));
}
double natural_stable(double cosine) noexcept {
    return 1.810 / (1.382 + std::abs(cosine));
}
double cubed(double x) noexcept {
    return x * x * x;
}

}  // namespace

Plate plate_of(const CollectorModel& model, int count, double tilt_deg, double sky_view, bool rear_free) {
    Plate plate;
    plate.area_m2 = model.face_area_m2 * count;
    plate.absorptance = model.absorptance;
    plate.emittance = model.emittance;
    plate.refrigerant_w_k = model.plate_to_refrigerant_w_m2k * plate.area_m2;
    plate.rear_exposure = model.rear_exposure;
    plate.tilt_deg = tilt_deg;
    plate.sky_view = sky_view;
    plate.rear_free = rear_free;
    plate.coefficients = model.iso9806;
    plate.gross_area_m2 = model.length_m * model.width_m * count;
    return plate;
}

PlateBalance::PlateBalance(const Plate& plate, const Surroundings& surroundings) : plate_(plate) {
    const double cosine = std::cos(radians(plate.tilt_deg));
    // The front looks up, the rear down (tilt 0..90): cold air slides off the front and falls away from the rear.
    front_.natural_cold = cubed(natural_stable(cosine));
    front_.natural_warm = cubed(natural_unstable(cosine));
    rear_.natural_cold = front_.natural_warm;
    rear_.natural_warm = front_.natural_cold;
    front_.view_sky = 0.5 * (1.0 + cosine) * plate.sky_view;
    rear_.view_sky = plate.rear_free ? 0.5 * (1.0 - cosine) * plate.sky_view : 0.0;
    set_weather(surroundings);
}

void PlateBalance::set_weather(const Surroundings& s) noexcept {
    air_c_ = s.air_c;
    pressure_pa_ = s.pressure_pa;
    dew_point_c_ = std::min(s.dew_point_c, s.air_c);
    humidity_ratio_ = humidity_ratio(vapour_pressure_over_water_pa(dew_point_c_), pressure_pa_);
    front_.forced_cubed = cubed(still_w_m2k + per_wind_w_m2k * s.wind_m_s);
    rear_.forced_cubed = cubed(still_w_m2k + per_wind_w_m2k * s.wind_m_s * plate_.rear_exposure);
    front_.outer_w_m2k = rear_.outer_w_m2k = 0.0;
    const double air4 = cubed(kelvin(s.air_c)) * kelvin(s.air_c);
    const double sky4 = cubed(s.sky_k) * s.sky_k;
    front_.received_w_m2 = stefan_boltzmann_w_m2k4 * (front_.view_sky * sky4 + (1.0 - front_.view_sky) * air4);
    rear_.received_w_m2 = stefan_boltzmann_w_m2k4 * (rear_.view_sky * sky4 + (1.0 - rear_.view_sky) * air4);
    front_light_ = s.front_w_m2;
    rear_light_ = s.rear_w_m2;
    if (plate_.coefficients) set_tested_weather(s);
    gather_light();
}

void PlateBalance::set_light(double front_w_m2, double rear_w_m2) noexcept {
    front_light_ = front_w_m2;
    rear_light_ = rear_w_m2;
    gather_light();
}

void PlateBalance::set_frost(const Frost& frost, double step_s) noexcept {
    if (!frost.lies() && !front_.frosted && !rear_.frosted) return;  // bare before and after
    frost_ = frost;
    set_resistance(front_, frost.front_kg_m2, step_s);
    set_resistance(rear_, frost.rear_kg_m2, step_s);
    gather_light();
}

double PlateBalance::outer_w_m2k(const Face& face) const noexcept {
    const double both_cubed = face.forced_cubed + 5.0 * face.natural_cold;
    const double convection = cube_roots({both_cubed, both_cubed})[0];
    const double radiation = 4.0 * plate_.emittance * stefan_boltzmann_w_m2k4 * cubed(kelvin(air_c_));
    const double cold_c = std::min(air_c_, 0.0);
    const double humidity_slope = humidity_ratio(vapour_pressure_over_ice_pa(cold_c), pressure_pa_) * 22.46 * 272.62 /
                                  ((272.62 + cold_c) * (272.62 + cold_c));
    return convection * (1.0 + (condensation_j_kg + fusion_j_kg) * vapour_per_convection * humidity_slope) + radiation;
}

/// Frost lies in series with everything outside it. Linear superposition: whatever would reach the bare plate at its
/// own temperature reaches it through the frost in the share 1/(1 + R H), with H the outer conductance of convection,
/// radiation and vapour. H is taken at air temperature, so that the share does not depend on the plate's.
void PlateBalance::set_resistance(Face& face, double frost_kg_m2, double step_s) noexcept {
    face.frosted = frost_kg_m2 > 0.0;
    face.through = 1.0;
    face.melt_limit_w = 0.0;
    if (!face.frosted) return;
    if (face.outer_w_m2k == 0.0) face.outer_w_m2k = outer_w_m2k(face);
    const double resistance = frost_kg_m2 / (frost_density_kg_m3 * frost_conductivity_w_mk);
    face.through = 1.0 / (1.0 + resistance * face.outer_w_m2k);
    face.melt_limit_w = step_s > 0.0 ? frost_kg_m2 * plate_.area_m2 * fusion_j_kg / step_s : 1e12;
}

void PlateBalance::gather_light() noexcept {
    if (plate_.coefficients) return gather_tested_light();
    const auto absorbed = [this](double light, double frost_kg_m2, double through) {
        const double cover = frost_kg_m2 / (frost_kg_m2 + albedo_growth_kg_m2);
        const double bright = std::min(frost_absorptance, plate_.absorptance);
        return light * through * (plate_.absorptance + cover * (bright - plate_.absorptance));
    };
    light_w_ = plate_.area_m2 * (absorbed(front_light_, frost_.front_kg_m2, front_.through) +
                                 absorbed(rear_light_, frost_.rear_kg_m2, rear_.through));
}

PlateHeat PlateBalance::heat(double plate_c) const noexcept {
    if (plate_.coefficients) return tested_heat(plate_c);
    PlateHeat out;
    const double area = plate_.area_m2;
    const double over_air = air_c_ - plate_c;
    const bool cold = over_air >= 0.0;
    const double distance = std::abs(over_air);
    const double front_natural = cold ? front_.natural_cold : front_.natural_warm;
    const double rear_natural = cold ? rear_.natural_cold : rear_.natural_warm;
    const auto [front_h, rear_h] =
        cube_roots({front_.forced_cubed + front_natural * distance, rear_.forced_cubed + rear_natural * distance});
    const double front_ha = area * front_.through * front_h;
    const double rear_ha = area * rear_.through * rear_h;
    const double t = kelvin(plate_c);
    const double t3 = t * t * t;
    const double emitting = area * plate_.emittance;

    out.light_w = light_w_;
    out.air_w = (front_ha + rear_ha) * over_air;
    out.long_wave_w = emitting * (front_.through * (front_.received_w_m2 - stefan_boltzmann_w_m2k4 * t3 * t) +
                                  rear_.through * (rear_.received_w_m2 - stefan_boltzmann_w_m2k4 * t3 * t));
    // d(h dT)/dT = h + dT dh/dT, with dh/dT = c/(3 h^2).
    const double front_growth = front_natural * distance / (3.0 * front_h * front_h);
    const double rear_growth = rear_natural * distance / (3.0 * rear_h * rear_h);
    out.long_wave_slope = -4.0 * emitting * (front_.through + rear_.through) * stefan_boltzmann_w_m2k4 * t3;
    out.slope_w_k = -(front_ha + rear_ha) - area * (front_.through * front_growth + rear_.through * rear_growth) +
                    out.long_wave_slope;
    add_vapour_and_ice(plate_c, front_ha, rear_ha, out);
    return out;
}

void PlateBalance::add_vapour_and_ice(double plate_c, double front_ha, double rear_ha, PlateHeat& out) const noexcept {
    // Over ice saturation lies below that over water, so the dew point decides within a fraction of a kelvin; the
    // exponential is spared on every warm dry plate.
    if (plate_c < dew_point_c_ || plate_c < 0.0) {
        const SurfaceVapour at = vapour_at_surface(plate_c);
        const double excess = humidity_ratio_ - humidity_ratio(at.pressure_pa, pressure_pa_);
        if (excess > 0.0) {
            const double heat_j_kg = condensation_j_kg + at.frost_share * fusion_j_kg;
            const double both_kg_s = (front_ha + rear_ha) * vapour_per_convection;
            const double front_kg_s = front_ha * vapour_per_convection * excess;
            const double rear_kg_s = rear_ha * vapour_per_convection * excess;
            out.latent_w = (front_kg_s + rear_kg_s) * heat_j_kg;
            out.frost_front_kg_s = front_kg_s * at.frost_share;
            out.frost_rear_kg_s = rear_kg_s * at.frost_share;
            const double dry_pa = pressure_pa_ - at.pressure_pa;
            const double ratio_slope = 0.62198 * pressure_pa_ * at.pressure_slope / (dry_pa * dry_pa);
            out.latent_slope = both_kg_s * (excess * at.frost_share_slope * fusion_j_kg - heat_j_kg * ratio_slope);
            out.slope_w_k += out.latent_slope;
        }
    }
    if (plate_c > 0.0 && (front_.frosted || rear_.frosted)) {
        const double area = plate_.area_m2;
        const double full = melt_w_m2k * area * plate_c;
        if (front_.frosted) out.melt_front_w = std::min(full, front_.melt_limit_w);
        if (rear_.frosted) out.melt_rear_w = std::min(full, rear_.melt_limit_w);
        out.melt_w = out.melt_front_w + out.melt_rear_w;
        if (front_.frosted && full < front_.melt_limit_w) out.slope_w_k -= melt_w_m2k * area;
        if (rear_.frosted && full < rear_.melt_limit_w) out.slope_w_k -= melt_w_m2k * area;
    }
}

double PlateBalance::temperature_at(double heat_w, double guess_c) const noexcept {
    double low = temperature_low_c;
    double high = temperature_high_c;
    double t = std::clamp(guess_c, low, high);
    for (int i = 0; i < 200; ++i) {
        const PlateHeat at = heat(t);
        const double excess = at.total_w() - heat_w;
        if (std::abs(excess) < heat_tolerance_w) break;
        if (excess > 0.0)
            low = t;
        else
            high = t;
        double next = t - excess / at.slope_w_k;
        if (!(next > low && next < high))
            next = 0.5 * (low + high);
        else if (straight(at, t, 30.0 * (next - t)))
            return next;  // misses less than the tolerance, by the slope
        if (high - low < 1e-11) break;
        t = next;
    }
    return t;
}

}  // namespace wg::heatpump
