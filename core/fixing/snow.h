#pragma once
// Snow on the ground by region and altitude, snow that slides against a plate, and drifts behind one. Inside
// core/fixing.

#include <vector>

#include "core/fixing/rules.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

/// EN 1991-1-3:2003 annex C table C.1: characteristic snow on the ground by climate region, zone and altitude, kN/m2;
/// 0 or more. From memory. `SnowRule::fixed` has no formula and gives 0.
[[nodiscard]] double ground_snow_kn_m2(SnowRule rule, double zone, double altitude_m);
inline constexpr double annex_c_highest_m = 1500.0;  ///< table C.1 is for places below

/// s_k of a place: its own value, or else the rule set's.
[[nodiscard]] double site_snow_kn_m2(const Site& site, const ActionRules& rules);

/// Snow of the roof above a plate that slides against its upper edge, EN 1991-1-3 6.4: F_s = s b sin(pitch) for each
/// metre, no friction.
struct SnowSlide {
    double roof_shape = 0.0;    ///< mu_1 of the roof
    double above_plan_m = 0.0;  ///< b, in plan, to the next collector above or to the ridge; mean over the width
    double width_m = 0.0;       ///< of the plate, level
    double force_n = 0.0;       ///< down the slope
};
[[nodiscard]] SnowSlide snow_slide(const Surface& surface, const std::vector<Point2>& plate,
                                   const std::vector<std::vector<Point2>>& others, double roof_snow_n_m2);

/// Drift behind an obstruction on a level surface, EN 1991-1-3 6.2.
struct SnowDrift {
    double shape = 0.8;      ///< mu_2, 0.8..2
    double length_m = 5.0;   ///< l_s, 5..15
    double load_n_m2 = 0.0;  ///< on the surface beside the plate
};
[[nodiscard]] SnowDrift snow_drift(double height_m, double ground_snow_n_m2, double density_kn_m3);

}  // namespace wg::fixing
