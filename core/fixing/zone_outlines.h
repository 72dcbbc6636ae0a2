#pragma once
// The wind zones of a plane as areas that can be drawn on it: the same bands that rate a plate (zones.h), laid over
// each other for wind on every side, each place with the zone that lifts most there.

#include <string>
#include <vector>

#include "core/fixing/zones.h"
#include "core/job/job.h"

namespace wg::fixing {

struct ZoneArea {
    std::string zone;             ///< that gives the greatest uplift here: "F", "G", "H", "I", "J", "A" ...
    double uplift = 0.0;          ///< its c_pe for the loaded area, 0 or less
    std::vector<Point2> outline;  ///< in the surface's plane, clipped to its outline
};
/// Between areas of different zones; may run on beyond the outline.
struct ZoneBorder {
    Point2 from, to;
};
/// Distance of a border from the edge of the plane's bounding rectangle that it is measured from, along the plane.
struct ZoneMark {
    Point2 from, to;   ///< square to the edge, level or up the slope
    std::string word;  ///< "e/10"
    double width_m = 0.0;
};
struct WindZones {
    std::string table;      ///< where the values stand
    double height_m = 0.0;  ///< of the building
    double e_m = 0.0;       ///< for wind square to the eaves, min(b, 2h)
    double e_side_m = 0.0;  ///< for wind along the eaves; the same on walls
    std::vector<ZoneArea> areas;
    std::vector<ZoneBorder> borders;
    std::vector<ZoneMark> marks;
};

/// Areas cover the outline and do not overlap. Empty on planes that stand free (terrace, ground). A plate's uplift by
/// `zone_pressure` is the worst of the areas it reaches into.
[[nodiscard]] WindZones wind_zones(const Surface& surface, const Body& body, double area_m2);

/// Part of a closed outline within an upright rectangle. Where the outline comes back into the rectangle, the pieces
/// stay joined along its side.
[[nodiscard]] std::vector<Point2> clipped_to(const std::vector<Point2>& outline, Point2 low, Point2 high);

}  // namespace wg::fixing
