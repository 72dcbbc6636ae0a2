#pragma once
// The outline of what hides the sky from a point of the site, for the sun-path picture.

#include <string>
#include <vector>

#include "core/site/geometry.h"

namespace wg::site {

/// What hides the sky at one bearing.
struct SkylinePoint {
    double azimuth_deg = 0.0;    ///< true bearing, 0..360
    double elevation_deg = 0.0;  ///< highest elevation hidden at that bearing, 0..90; 0: nothing above the level
    std::string id;              ///< of what reaches highest: an obstacle or a plane of the site; empty: nothing
    std::string label;
    bool is_tree = false;               ///< a crown: some beam passes
    double opaque_elevation_deg = 0.0;  ///< the same without crowns; not above `elevation_deg`
};

struct Skyline {
    double step_deg = 1.0;
    std::vector<SkylinePoint> things;   ///< obstacles and planes; bearing i * step_deg from true north
    std::vector<SkylinePoint> horizon;  ///< the surveyed horizon at the same bearings; empty when none was surveyed
};

/// Seen from a point; the surface of that id is left out (empty: none is). The outline is exact at each bearing: what
/// lies between two bearings and is narrower than the step may be missed. What floats counts as hiding down to the
/// level. `step_deg` is brought into 0.1..30 and to a whole number of steps in the round.
[[nodiscard]] Skyline skyline(const Site& site, Point3 from, const std::string& own_surface_id, double step_deg = 1.0);

/// Seen from the middle of a placed collector; its own surface is left out where `shade_of` leaves it out. A collector
/// without four corners gives an empty skyline.
[[nodiscard]] Skyline skyline(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id,
                              double step_deg = 1.0);

}  // namespace wg::site
