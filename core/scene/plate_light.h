#pragma once
// Share of a plate that the sun reaches at one moment, by the rays that the year's yield is reckoned with.

#include <memory>
#include <string>
#include <vector>

#include "core/job/job.h"
#include "core/site/grid_shadow.h"

namespace wg::scene {

class PlateLight {
   public:
    /// Corners of the plate in space; `own_surface_id`: that carries it.
    PlateLight(const Site& site, const std::vector<Point3>& corners, const std::string& own_surface_id);
    /// 0..1, crowns by their transmittance of the month; 0 for a sun behind the plate.
    [[nodiscard]] double lit_share(Point3 to_sun, int month);

   private:
    std::unique_ptr<site::GridShadow> shadow_;
};

}  // namespace wg::scene
