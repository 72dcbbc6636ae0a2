#pragma once
// Wind zones of EN 1991-1-4 section 7.2 on one plane of a building, and what they ask of a plate.

#include <string>

#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

struct ZonePressure {
    std::string zone_uplift = "H";  ///< zone that gives the uplift
    std::string zone_pressure;
    double uplift =
        0.0;  ///< most negative c_pe among the zones the plate reaches into, wind from every side; 0 or less
    double pressure = 0.0;  ///< greatest c_pe; 0 or more
    std::string table;      ///< the tables used
};

/// Height of the building for its wind, m: as surveyed, or else the plane's highest corner.
[[nodiscard]] double building_height_m(const Surface& surface, double sketch_up_azimuth_deg);

/// External pressure coefficients for a plate lying parallel to `surface`, by loaded area and pitch. Simplified, and
/// said in the findings: the plane's bounding rectangle is taken for its outline, a duo-pitch roof for symmetrical, a
/// hip roof's edges all for gable and eaves, a wall's building for wide against the wind. Terrace and ground give
/// nothing: a plate there stands free.
[[nodiscard]] ZonePressure zone_pressure(const Surface& surface, double height_m, const std::vector<Point2>& plate,
                                         double area_m2);

}  // namespace wg::fixing
