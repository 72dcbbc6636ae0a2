#pragma once
// Axonometric view: parallel rays, so that every length along one direction has one scale.

#include "core/quantity/geometry.h"

namespace wg::scene {

/// Where the eye stands as seen from the site.
struct Camera {
    double azimuth_deg = 180.0;   ///< true bearing
    double elevation_deg = 28.0;  ///< over the level, 0..90
    friend bool operator==(const Camera&, const Camera&) = default;
};

/// Unit vectors in the sketch.
struct ViewAxes {
    Point3 to_eye, right, up;
};
[[nodiscard]] ViewAxes axes_of(const Camera& camera, double sketch_up_azimuth_deg) noexcept;
/// Right and up in metres, from `middle`.
[[nodiscard]] Point2 seen(const ViewAxes& axes, Point3 middle, Point3 point) noexcept;

}  // namespace wg::scene
