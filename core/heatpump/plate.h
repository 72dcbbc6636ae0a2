#pragma once
// Heat balance of a bare evaporator plate, both faces. docs/handbook/plate-and-cycle.md has the equations and sources.
// Temperatures in deg C at this border, K inside.

#include <cmath>
#include <optional>

#include "core/equipment/equipment.h"

namespace wg::heatpump {

/// All plates of a set together, in the plane they are mounted in.
struct Plate {
    double area_m2 = 1.6;  ///< of one face, all plates
    double absorptance = 0.93;
    double emittance = 0.93;
    double refrigerant_w_k = 200.0;  ///< plate to refrigerant, all plates
    double rear_exposure = 0.6;      ///< share of the wind on the rear face
    double tilt_deg = 35.0;
    double sky_view = 1.0;   ///< on top of (1 + cos tilt)/2, for obstacles
    bool rear_free = false;  ///< rear sees sky and ground instead of roof or wall
    /// From a test: stand for light, convection and long wave of both faces. Then the gross area counts, all plates.
    std::optional<Iso9806> coefficients;
    double gross_area_m2 = 1.6;
};
[[nodiscard]] Plate plate_of(const CollectorModel& model, int count, double tilt_deg, double sky_view, bool rear_free);

/// What surrounds the plate. Ground, obstacles and the roof or wall behind are taken at air temperature.
struct Surroundings {
    double front_w_m2 = 0.0;  ///< light on the sunlit face
    double rear_w_m2 = 0.0;
    double air_c = 10.0;
    double dew_point_c = 5.0;  ///< over water
    double wind_m_s = 2.0;     ///< at plate height
    double sky_k = 275.0;      ///< effective sky temperature
    double pressure_pa = 101325.0;
    double incidence = 1.0;  ///< share of the front's light by the test's incidence modifiers; only with coefficients
};

/// Ice on each face.
struct Frost {
    double front_kg_m2 = 0.0;
    double rear_kg_m2 = 0.0;
    [[nodiscard]] bool lies() const noexcept { return front_kg_m2 > 0.0 || rear_kg_m2 > 0.0; }
};

/// Heat to the plate, W, term by term; the sum is what the refrigerant may take.
struct PlateHeat {
    double light_w = 0.0;
    double air_w = 0.0;
    double long_wave_w = 0.0;
    double latent_w = 0.0;          ///< condensation and frost
    double melt_w = 0.0;            ///< taken by melting frost, positive
    double slope_w_k = 0.0;         ///< d total / d plate temperature, negative
    double long_wave_slope = 0.0;   ///< W/K, part of it
    double latent_slope = 0.0;      ///< W/K, part of it
    double frost_front_kg_s = 0.0;  ///< forming, on the whole face
    double frost_rear_kg_s = 0.0;
    double melt_front_w = 0.0;
    double melt_rear_w = 0.0;
    [[nodiscard]] double total_w() const noexcept { return light_w + air_w + long_wave_w + latent_w - melt_w; }
    /// Follows the slopes to a plate warmer by `step_k`; all that is neither long-wave nor latent counts as air.
    void move(double step_k) noexcept {
        const double settling = latent_slope * step_k;
        if (latent_w > 0.0) {
            const double share = 1.0 + settling / latent_w;
            frost_front_kg_s *= share;
            frost_rear_kg_s *= share;
        }
        latent_w += settling;
        long_wave_w += long_wave_slope * step_k;
        air_w += (slope_w_k - long_wave_slope - latent_slope) * step_k;
    }
};

/// A plate's balance may be carried on along its slopes over this: curvature (below 10 W/K2 on plates of 3 m2) then
/// misses less than 5e-5 W, below 1e-7 of the heat.
inline constexpr double straight_plate_k = 0.003;

inline constexpr double frost_density_kg_m3 = 250.0;    ///< settled frost, range 100-400
inline constexpr double frost_conductivity_w_mk = 0.2;  ///< range 0.1-0.4
inline constexpr double frost_absorptance = 0.5;        ///< of thick frost for light
inline constexpr double albedo_growth_kg_m2 = 0.35;     ///< frost that takes the absorptance half the way to that
inline constexpr double fusion_j_kg = 334e3;
inline constexpr double condensation_j_kg = 2.50e6;  ///< at 0 deg C; frost adds fusion

/// The balance for one set of surroundings. `weather` holds for an hour, `light` and `frost` for a step.
class PlateBalance {
   public:
    PlateBalance(const Plate& plate, const Surroundings& surroundings);
    void set_weather(const Surroundings& surroundings) noexcept;  ///< light included; frost kept
    void set_light(double front_w_m2, double rear_w_m2) noexcept;
    /// `step_s` bounds melting to the frost that lies; 0: unbounded (frost lies for good).
    void set_frost(const Frost& frost, double step_s) noexcept;

    /// Falls strictly with plate temperature.
    [[nodiscard]] PlateHeat heat(double plate_c) const noexcept;
    /// Whether `found`, the heat at `plate_c`, may be moved by `step_k`: a short way without dew, frost or melting
    /// that begins or ends on it.
    [[nodiscard]] bool straight(const PlateHeat& found, double plate_c, double step_k) const noexcept {
        if (!(step_k > -straight_plate_k && step_k < straight_plate_k) || found.melt_w > 0.0) return false;
        const double end_c = plate_c + step_k;
        if ((plate_c > 0.0) != (end_c > 0.0)) return false;
        // Where dew passes over to frost the slope itself changes fast.
        if (plate_c <= 0.0 && plate_c > -1.01 && std::abs(step_k) > 0.1 * straight_plate_k) return false;
        if (found.latent_w > 0.0) return found.latent_w + found.latent_slope * step_k > 0.0;
        return end_c > 0.0 && end_c > dew_point_c_;
    }
    /// Plate temperature at which the refrigerant takes `heat_w`; 0: standstill. Within 1e-4 W, between -80 and
    /// 250 deg C.
    [[nodiscard]] double temperature_at(double heat_w, double guess_c) const noexcept;
    [[nodiscard]] const Plate& plate() const noexcept { return plate_; }
    [[nodiscard]] double air_c() const noexcept { return air_c_; }

   private:
    struct Face {
        double forced_cubed = 0.0;
        double natural_cold = 0.0;  ///< cube of the natural coefficient, plate colder than air
        double natural_warm = 0.0;
        double through = 1.0;  ///< share of a change outside that passes the frost
        double melt_limit_w = 0.0;
        double outer_w_m2k = 0.0;    ///< all conductances outside frost; 0: not worked out yet for this weather
        double received_w_m2 = 0.0;  ///< sigma * sum of view * T^4
        double view_sky = 0.0;
        bool frosted = false;
    };
    void set_resistance(Face& face, double frost_kg_m2, double step_s) noexcept;
    [[nodiscard]] double outer_w_m2k(const Face& face) const noexcept;
    void gather_light() noexcept;
    /// What settles on the faces, and melts there, for film coefficients times area. Adds to heat and slope.
    void add_vapour_and_ice(double plate_c, double front_ha, double rear_ha, PlateHeat& out) const noexcept;

    /// Dry balance by a test's coefficients (plate_coefficients.cpp).
    struct Tested {
        double light_share = 0.0;  ///< of the front's light: eta_0,b with incidence, less a6 u'
        double bare_w_m2 = 0.0;    ///< light and long wave, without ice in their way
        double long_wave_w_m2 = 0.0;
        double wind_m_s = 0.0;
        double resistance_m2k_w = 0.0;  ///< plate to the test's fluid, of gross area
        double front_share = 0.5;       ///< of the heat exchanged with the air
    };
    void set_tested_weather(const Surroundings& surroundings) noexcept;
    void gather_tested_light() noexcept;
    [[nodiscard]] PlateHeat tested_heat(double plate_c) const noexcept;

    Plate plate_;
    Face front_, rear_;
    double front_light_ = 0.0, rear_light_ = 0.0, light_w_ = 0.0;
    Frost frost_;
    double air_c_ = 0.0, pressure_pa_ = 0.0, dew_point_c_ = 0.0, humidity_ratio_ = 0.0;
    Tested tested_;
};

}  // namespace wg::heatpump
