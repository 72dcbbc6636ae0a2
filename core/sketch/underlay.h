#pragma once
// Fits a photograph, scan or aerial picture under the sketch: a known length gives the scale, a line of known bearing
// north.

#include "core/quantity/geometry.h"
#include "core/quantity/result.h"

namespace wg::sketch {

/// Picture to sketch. Picture coordinates are pixels, x to the right, y DOWN from the upper left corner. No mirror.
struct Underlay {
    double metres_per_pixel = 0.02;
    double turn_deg = 0.0;  ///< of the picture in the sketch, counter-clockwise
    Point2 origin;          ///< where the picture's upper left corner lies in the sketch
    [[nodiscard]] Point2 to_sketch(double pixel_x, double pixel_y) const noexcept;
    /// Pixel under a point of the sketch, as x_m and y_m.
    [[nodiscard]] Point2 to_picture(const Point2& in_sketch) const noexcept;
};

struct Pixel {
    double x = 0.0, y = 0.0;
};

/// A new scale from a marked line of known length; what lies under the line's middle stays where it is. Length 0.1 to
/// 1000 m, the line at least 10 pixels long.
[[nodiscard]] Result<Underlay> scaled(const Underlay& underlay, Pixel from, Pixel to, double length_m);

/// Turned so that a marked line has a true bearing (the way from `from` to `to`); its middle stays where it is.
/// `sketch_up_azimuth_deg`: bearing of the sketch's y axis.
[[nodiscard]] Result<Underlay> turned_to(const Underlay& underlay, Pixel from, Pixel to, double bearing_deg,
                                         double sketch_up_azimuth_deg);

/// True bearing from a compass reading: declination east positive, -180..180.
[[nodiscard]] double true_bearing_deg(double magnetic_deg, double declination_deg) noexcept;

}  // namespace wg::sketch
