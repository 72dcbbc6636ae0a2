#pragma once
// Shade on a placed collector from obstacles, the house's own planes and the horizon, by exact rays.

#include <string>
#include <vector>

#include "core/site/geometry.h"
#include "core/sky/prepared.h"

namespace wg::site {

struct ShadeCause {
    std::string obstacle_id;  ///< empty: horizon or own building
    std::string label;
    double lost_kwh_m2 = 0.0;  ///< beam on the plane lost to it alone, in a year
    int worst_month = 0;       ///< 1..12
    int worst_hour = 0;        ///< start of the worst hour of day, local standard time
};

struct Shade {
    /// 8760 values: share of the plate in the sun, weighted by transmittance. 0 while the sun is below the level
    /// horizon, below the surveyed one, or behind the plate's front face.
    std::vector<float> beam_share;
    double sky_view = 1.0;           ///< share of the isotropic sky seen by the plane's upper half-space that is open
    std::vector<ShadeCause> causes;  ///< worst first
    int rays_per_hour = 0;           ///< sample points on the plate
};

/// `samples_x` * `samples_y` points spread over the plate (each at least 1). Deterministic. Cost grows with obstacles
/// and sun-up hours. Boxes, prisms, posts, trunks and every plane of the site stop a ray; crowns let their
/// transmittance of the month through, one after another. `own_surface_id` names the plane that carries the plate: it
/// is never its own cause of shade while it is level with the plate. Empty series in `year` count as no sun.
[[nodiscard]] Shade shade_of(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id,
                             const sky::PreparedYear& year, int samples_x = 5, int samples_y = 3);

/// Yearly beam share over a surface, cell by cell, for the shade map: row-major from the lower left of the outline's
/// bounding box. Cells whose middle lies outside the outline hold -1.
struct ShadeMap {
    double cell_m = 0.25;
    Point2 origin;
    int columns = 0;
    int rows = 0;
    std::vector<float> share;  ///< of the year's unshaded beam energy on the plane, 0..1
};
/// Rays start `shade_map_off_m` over the plane. Every `every_nth_day`-th day stands for the year. An outline that would
/// need more than a million cells, or a cell size that is not positive, gives an empty map.
inline constexpr double shade_map_off_m = 0.10;
[[nodiscard]] ShadeMap shade_map(const Site& site, const Surface& surface, const sky::PreparedYear& year,
                                 double cell_m = 0.25, int every_nth_day = 7);

}  // namespace wg::site
