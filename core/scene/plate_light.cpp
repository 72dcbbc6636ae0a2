#include "core/scene/plate_light.h"

#include "core/site/shade.h"
#include "core/site/vec.h"

namespace wg::scene {

PlateLight::PlateLight(const Site& site, const std::vector<Point3>& corners, const std::string& own_surface_id) {
    site::CellGrid grid = site::CellGrid::over(corners, site::shade_samples_x, site::shade_samples_y);
    if (grid.empty()) return;
    const Point3 normal = grid.normal;
    shadow_ =
        std::make_unique<site::GridShadow>(std::move(grid), site::Occluder::seen_by(site, own_surface_id, normal));
}

double PlateLight::lit_share(Point3 to_sun, int month) {
    if (shadow_ == nullptr || !(site::dot(shadow_->grid().normal, to_sun) > 0.0)) return 0.0;
    if (!shadow_->cast(to_sun)) return 1.0;
    double lost = 0.0;
    shadow_->groups(
        [&](std::size_t k) { return shadow_->occluders()[k].crown_transmittance(month); },
        [&](int, int, std::uint64_t bits, double passed) { lost += (1.0 - passed) * site::CellMask::count(bits); });
    return 1.0 - lost / static_cast<double>(shadow_->grid().size());
}

}  // namespace wg::scene
