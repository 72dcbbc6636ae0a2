#pragma once
// How much of sky, ground and standing things a plane sees.

#include <string>
#include <vector>

#include "core/site/geometry.h"
#include "core/site/occluders.h"

namespace wg::site {

/// View factors of a plane's front: sky + ground + things = 1. Things are what is neither: obstacles, the site's steep
/// planes, the stopped part of crowns, and land that hides the sky.
struct ViewFactors {
    double sky_open = 1.0;     ///< share of the sky before the plane (cosine-weighted) that is open
    double ground_open = 1.0;  ///< the same of the ground, as if it were level and endless
    double sky = 0.5;
    double ground = 0.5;
    [[nodiscard]] double things() const noexcept { return 1.0 - sky - ground; }
    /// Light from ground and things on the plane for each W/m2 on the horizontal. Assumed, no published source: things
    /// are as bright as ground of the albedo `things_albedo`.
    [[nodiscard]] double reflected(double ground_albedo, double things_albedo = assumed_things_albedo) const noexcept {
        return ground_albedo * ground + things_albedo * things();
    }
    static constexpr double assumed_things_albedo = 0.2;
};

/// From a point looking along `normal` (unit, sketch); trees count with the year's mean transmittance. 2,048
/// directions, equally spread by cosine; the shares are right within 0.005.
[[nodiscard]] ViewFactors view_from(Point3 from, Point3 normal, const std::vector<Occluder>& occluders,
                                    const Horizon& horizon, double sketch_up_azimuth_deg);
/// From the middle of a placed collector; its own surface is left out where rays lead away from it. A collector without
/// four corners sees half sky, half ground.
[[nodiscard]] ViewFactors view_of(const Site& site, const PlacedCollector& collector,
                                  const std::string& own_surface_id);

/// Views over a surface, row-major from the lower left of the outline's bounding box, from cell middles
/// `shade_map_off_m` over it, also where they lie outside the outline.
struct ViewMap {
    double cell_m = 0.5;
    Point2 origin;
    int columns = 0;
    int rows = 0;
    std::vector<float> sky_open, ground_open;  ///< as in ViewFactors
    double unobstructed_sky = 0.5;             ///< view factor of the sky without anything: (1 + cos tilt) / 2

    /// Between the four nearest cell middles; outside them as at the nearest. The free view when the map is empty.
    [[nodiscard]] ViewFactors at(Point2 in_plane) const noexcept;
};
/// Empty for outlines and cell sizes that `shade_map` refuses.
[[nodiscard]] ViewMap view_map(const Site& site, const Surface& surface, double cell_m = 0.5);

}  // namespace wg::site
