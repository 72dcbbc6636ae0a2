#pragma once
// What a place is judged by.

#include <array>
#include <string>

namespace wg::siting {

/// What the user wants most of a place.
enum class Aim {
    running_cost,  ///< least electricity a year
    pump_heat,     ///< most heat from the pump a year
    short_run,
    light_fixing,
    out_of_sight,
};
inline constexpr std::array<Aim, 5> all_aims = {Aim::running_cost, Aim::pump_heat, Aim::short_run, Aim::light_fixing,
                                                Aim::out_of_sight};
[[nodiscard]] const char* text_of(Aim aim) noexcept;

/// What is known of a place. Electricity and heat are estimates for ranking (docs/handbook/siting.md).
struct Measures {
    double light_kwh_m2 = 0.0;  ///< on the plate's front in a year, after shade
    double beam_share = 1.0;    ///< of the beam of an unshaded plate
    double electricity_kwh = 0.0;
    double pump_heat_kwh = 0.0;
    double run_m = 0.0;
    double utilisation = 0.0;  ///< of the worst fixing point, 0..1
    double seen = 0.0;         ///< share of the viewpoints (viewpoints_of) from which the plate's front is seen, 0..1
};

/// A score is the weighted sum of the measures, in points; the place with the fewest is best. All weights at least 0.
struct Objective {
    double per_electricity_kwh = 0.0;
    double per_missing_heat_kwh = 0.0;  ///< for each kWh of heat that the pump does not give
    double per_run_m = 0.0;
    double per_utilisation = 0.0;
    double per_seen = 0.0;
    [[nodiscard]] double score(const Measures& m) const noexcept;
    /// Every weight a number, at least 0 and at most `most_weight`: what the search needs to be exact.
    [[nodiscard]] bool valid() const noexcept;
    friend bool operator==(const Objective&, const Objective&) = default;
};
inline constexpr double most_weight = 10000.0;

/// The weights of an aim: its own measure, and the others with little weight, so that of two equal places the one with
/// the shorter run wins. Chosen by us and shown to the user; no published source.
[[nodiscard]] Objective objective_for(Aim aim) noexcept;

}  // namespace wg::siting
