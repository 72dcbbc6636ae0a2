#pragma once
// Clear mornings against clear afternoons, for a picture: with stamps that are right the two lie on each other.

#include <array>

#include "core/sky/prepared.h"

namespace wg::sky {

struct ClearDayProfile {
    static constexpr int bins = 16;  ///< of the sun's height, each `bin_deg` wide from the horizon
    static constexpr double bin_deg = 5.0;
    struct Half {
        std::array<double, bins> share{};  ///< mean of global over that of a clear sky (Haurwitz); 0 where `hours` is 0
        std::array<int, bins> hours{};
    };
    Half morning, afternoon;
    int days = 0;  ///< clear days of the year
};

/// A day is clear when its global reaches 85 % of Haurwitz' clear sky and that is at least 1.5 kWh/m2, as in the
/// quality report. Hours with the middle of the sun under 1 deg are left out: their share says nothing.
[[nodiscard]] ClearDayProfile clear_day_profile(const PreparedYear& year);

}  // namespace wg::sky
