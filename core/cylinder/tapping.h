#pragma once
// Draw-off cycles of Commission Delegated Regulation (EU) 812/2013, Annex VII table 3, given there as load profiles
// S, M, L, XL, XXL.

#include <cstddef>

#include "core/job/job.h"

namespace wg::cylinder {

/// A draw: useful energy at a time of day.
struct Tapping {
    int minute_of_day = 0;
    double useful_kwh = 0.0;
    double flow_l_min = 3.0;      ///< f
    double useful_from_c = 25.0;  ///< Tm: counting of useful energy begins
    double peak_c = 0.0;          ///< Tp: least peak temperature; 0: none asked
};

struct TappingDay {
    const Tapping* draws = nullptr;
    std::size_t count = 0;
    double reference_kwh = 0.0;  ///< Q_ref of the regulation
};

/// Draws in order of time.
[[nodiscard]] TappingDay tapping_day(TappingCycle cycle) noexcept;

}  // namespace wg::cylinder
