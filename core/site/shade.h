#pragma once
// Shade on a placed collector and over a surface from obstacles, the house's own planes and the horizon, by exact rays.

#include <array>
#include <string>
#include <vector>

#include "core/site/geometry.h"
#include "core/sky/prepared.h"

namespace wg::site {

/// kWh/m2 on the plane by month (0..11) and hour of day (0..23, local standard time).
using MonthHourTable = std::array<std::array<double, 24>, 12>;

struct ShadeCause {
    std::string obstacle_id;  ///< empty: horizon or own building
    std::string label;
    double lost_kwh_m2 = 0.0;  ///< beam on the plane lost to it alone, in a year
    int worst_month = 0;       ///< 1..12
    int worst_hour = 0;        ///< start of the worst hour of day over the year, local standard time
    /// Shortest stretch of the day that holds `worst_span_share` of the worst month's loss: from the start of one hour
    /// to the end of another, 0..24.
    int worst_from_hour = 0;
    int worst_to_hour = 0;
    MonthHourTable lost_by_hour_kwh_m2{};
};
inline constexpr double worst_span_share = 0.8;

struct Shade {
    /// 8760 values: share of the plate in the sun, weighted by transmittance. 0 while the sun is below the level
    /// horizon, below the surveyed one, or behind the plate's front face.
    std::vector<float> beam_share;
    double sky_view = 1.0;           ///< share of the isotropic sky before the plane that is open, seen from its middle
    double ground_view = 1.0;        ///< the same of level ground; core/site/view.h
    std::vector<ShadeCause> causes;  ///< worst first; each as if it stood alone
    int rays_per_hour = 0;           ///< sample points on the plate
    double lost_kwh_m2 = 0.0;        ///< beam lost to all together
    MonthHourTable lost_by_hour_kwh_m2{};
};

/// Sample points along and across a plate: half a step is 1 % of its side or less, and so is what the edge of a shadow
/// that lies along a side can be wrong by.
inline constexpr int shade_samples_x = 64, shade_samples_y = 50;

/// The share of the plate in the shadow of one box, post, convex prism or plane is the area of the shadow's outline;
/// where several things, crowns or other prisms shade it at once, `samples_x` * `samples_y` points spread over the
/// plate (each 1..1000) are counted, and the share is never less than that of one alone. Deterministic. Cost grows with
/// obstacles and sun-up hours, little with points. Boxes, prisms, posts, trunks and every plane of the site stop a ray;
/// crowns let their transmittance of the month through, one after another. `own_surface_id` names the plane that
/// carries the plate: it is never its own cause of shade while it is level with the plate. Empty series in `year` count
/// as no sun. Things with numbers that are not finite throw no shade.
[[nodiscard]] Shade shade_of(const Site& site, const PlacedCollector& collector, const std::string& own_surface_id,
                             const sky::PreparedYear& year, int samples_x = shade_samples_x,
                             int samples_y = shade_samples_y);

/// Yearly beam share over a surface, cell by cell, for the shade map: row-major from the lower left of the outline's
/// bounding box. Cells whose middle lies outside the outline hold -1.
struct ShadeMap {
    double cell_m = 0.25;
    Point2 origin;
    int columns = 0;
    int rows = 0;
    std::vector<float> share;        ///< of the period's unshaded beam energy on the plane, 0..1
    std::vector<float> beam_kwh_m2;  ///< that reaches the cell in the period, weighted
    double unshaded_kwh_m2 = 0.0;    ///< beam on the plane in the period without obstacles and horizon, weighted
};

/// The period that a map is made for.
struct ShadeMapOptions {
    double cell_m = 0.25;
    int every_nth_day = 1;  ///< every n-th day stands for the year
    /// What a kWh of the month counts, January first, 0..1000: ones and zeros pick months.
    std::array<double, 12> month_weight{1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1};
    /// What a kWh of the hour counts beside, 0..1000; empty: all the same. For a map of useful heat.
    std::vector<float> hour_weight;
};

/// Rays start `shade_map_off_m` over the plane. An outline that would need more than a million cells, or a cell size
/// that is not positive, gives an empty map. Weights out of range are brought into it. The energies are summed as whole
/// numbers of 2^-20 Wh/m2: the map does not depend on the order of the obstacles but for the products of crowns.
inline constexpr double shade_map_off_m = 0.10;
[[nodiscard]] ShadeMap shade_map(const Site& site, const Surface& surface, const sky::PreparedYear& year,
                                 const ShadeMapOptions& options);
[[nodiscard]] ShadeMap shade_map(const Site& site, const Surface& surface, const sky::PreparedYear& year,
                                 double cell_m = 0.25, int every_nth_day = 1);

}  // namespace wg::site
