#pragma once
// The way of the run: legs, turns, which of it lies out of doors, where vapour rises.

#include <vector>

#include "core/job/job.h"

namespace wg::pipework {

inline constexpr double bend_from_deg = 10.0;     ///< smaller changes of direction are not bends
inline constexpr double bend_diameters = 3.5;     ///< radius of the centre line, bent by spring or bender: practice
inline constexpr double elbow_from_od_mm = 15.0;  ///< thicker tube is not bent by hand: brazed elbows, practice

struct Leg {
    Point3 from, to;
    double length_m = 0.0;
    RoutePointKind ends_at = RoutePointKind::free;
    double turn_deg = 0.0;  ///< change of direction at its end
    bool outdoors = true;   ///< before the first roof or wall passage; each further one leads in or out again
};

/// From the collector's connection over the route to the block. Legs shorter than a millimetre are left out.
[[nodiscard]] std::vector<Leg> legs_of(const Point3& collector, const std::vector<RoutePoint>& route,
                                       const Point3& block);

/// Tube that a leg needs for the bends at its two ends, m.
[[nodiscard]] double bend_room_m(const std::vector<Leg>& legs, std::size_t leg, double od_mm) noexcept;

}  // namespace wg::pipework
