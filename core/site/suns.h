#pragma once
// The suns of a year that stand before a plane.

#include <vector>

#include "core/site/geometry.h"
#include "core/sky/prepared.h"

namespace wg::site {

struct Sun {
    std::size_t hour = 0;
    int month = 1;           ///< 1..12
    double beam_w_m2 = 0.0;  ///< on the plane, unshaded
    double east = 0.0, north = 0.0, up = 0.0;
    Point3 dir;  ///< the same in the sketch
};

/// Hours with the sun up and before the plane, on every n-th day, in order. Hours that a series lacks have no sun.
[[nodiscard]] std::vector<Sun> suns_before(const sky::PreparedYear& year, Point3 normal, double sketch_up_azimuth_deg,
                                           int every_nth_day);

}  // namespace wg::site
