#include "core/scene/camera.h"

#include <cmath>

#include "core/quantity/constants.h"
#include "core/site/occluders.h"
#include "core/site/vec.h"

namespace wg::scene {

using site::cross, site::dot, site::operator-, site::operator*;

ViewAxes axes_of(const Camera& camera, double sketch_up_azimuth_deg) noexcept {
    const double azimuth = radians(camera.azimuth_deg), elevation = radians(camera.elevation_deg);
    const Point3 level = site::to_sketch(std::sin(azimuth), std::cos(azimuth), 0.0, sketch_up_azimuth_deg);
    ViewAxes axes;
    axes.to_eye = level * std::cos(elevation);
    axes.to_eye.z_m = std::sin(elevation);
    axes.right = {-level.y_m, level.x_m, 0.0};  // also straight from above, where the eye has no bearing
    axes.up = cross(axes.to_eye, axes.right);
    return axes;
}

Point2 seen(const ViewAxes& axes, Point3 middle, Point3 point) noexcept {
    const Point3 from_middle = point - middle;
    return {dot(from_middle, axes.right), dot(from_middle, axes.up)};
}

}  // namespace wg::scene
