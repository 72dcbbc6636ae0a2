#pragma once
// What a test of a collector by ISO 9806:2017 states of its dry performance.

#include <string>
#include <vector>

namespace wg {

/// Coefficients of a wind- and infrared-sensitive collector, per m2 of gross area, in the order and with the signs of
/// the standard's equation (docs/handbook/plate-and-cycle.md):
///     q = eta_0,b (K_b G_b + K_d G_d) - a1 x - a2 x^2 - a3 u' x + a4 B - a5 dt_m/dt - a6 u' G - a7 u' B - a8 x^4
/// with x the mean fluid temperature less that of the air, u' the wind along the collector less 3 m/s, and B what the
/// long-wave received lacks to black surroundings at air temperature. The test is dry: no condensation, no frost.
struct Iso9806 {
    double zero_loss = 0.9;     ///< eta_0,b, at 3 m/s
    double diffuse = 1.0;       ///< K_d
    double incidence_b0 = 0.0;  ///< K_b = 1 - b0 (1/cos - 1)
    double a1 = 0.0;            ///< W/(m2 K), at 3 m/s
    double a2 = 0.0;            ///< W/(m2 K2)
    double a3 = 0.0;            ///< J/(m3 K): loss by wind
    double a4 = 0.0;            ///< loss to the sky
    double a5 = 0.0;            ///< J/(m2 K): effective capacity; kept as data, the balance is quasi-steady
    double a6 = 0.0;            ///< s/m: zero-loss efficiency by wind
    double a7 = 0.0;            ///< s/m: loss to the sky by wind
    double a8 = 0.0;            ///< W/(m2 K4)
    /// Between plate and the fluid of the test, W/(m2 K) of one face. It is inside the coefficients; taken out of them
    /// to find the plate's own temperature, and to put the refrigerant's in its place.
    double plate_to_fluid_w_m2k = 125.0;
    friend bool operator==(const Iso9806&, const Iso9806&) = default;

    static constexpr double reference_wind_m_s = 3.0;
    /// The equation is linear in the wind: taken as here in stronger wind, where it would carry light and loss away
    /// from anything measured.
    static constexpr double strongest_wind_m_s = 10.0;
    /// Mean fluid less air between which the curve of the loss is used; beyond, its tangent.
    static constexpr double coldest_over_air_k = -50.0, hottest_over_air_k = 100.0;
    static constexpr double least_loss_w_m2k = 1.0;
    static constexpr double most_of_conductance = 0.75;
    static constexpr double moved_slack = 1.25;

    [[nodiscard]] double loss_w_m2(double wind_m_s, double over_air_k) const noexcept;
    [[nodiscard]] double loss_slope_w_m2k(double wind_m_s, double over_air_k) const noexcept;  ///< by temperature
    /// K_b and K_d put together for the light on a plane: share of it that counts. `cosine` of the beam's incidence.
    [[nodiscard]] double incidence(double beam_w_m2, double cosine, double diffuse_w_m2) const noexcept;
    /// The same for the standard's hemispherical light, 0.85 of it beam at right angles.
    [[nodiscard]] double hemispherical() const noexcept { return 0.85 + 0.15 * diffuse; }
};

/// A field whose value contradicts the others, what is wrong with it and what to do.
struct Iso9806Fault {
    const char* field = "";
    std::string what, remedy;
};
/// Ranges of single values and, where those hold, what must be true of them together so that heat falls with plate
/// temperature in every wind: the loss stays above `least_loss_w_m2k` and below the share `most_of_conductance` of the
/// conductance that it contains; light and sky keep their sign. Empty: usable. `face_share` is face area over gross
/// area. `slack` widens the limits (not the signs): 1 for data read, `moved_slack` for data that a study has moved.
[[nodiscard]] std::vector<Iso9806Fault> faults_of(const Iso9806& coefficients, double face_share, double slack = 1.0);

struct CollectorModel;
/// Absorptance, emittance or the wind's share on the rear face moved, and with them those coefficients of a test in
/// which they are: eta_0,b and a6; a4 and a7; a3, and a1 so that the loss in still air stays.
void move_absorptance(CollectorModel& model, double to);
void move_emittance(CollectorModel& model, double to);
void move_rear_exposure(CollectorModel& model, double to);

}  // namespace wg
