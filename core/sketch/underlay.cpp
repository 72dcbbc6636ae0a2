#include "core/sketch/underlay.h"

#include <cmath>
#include <string>

#include "core/quantity/angle.h"
#include "core/quantity/constants.h"

namespace wg::sketch {
namespace {

constexpr double least_pixels = 10.0;

Problem too_short() {
    return {"under-lay", "the marked line is shorter than 10 pixels", "Mark a longer line: it sets scale or north"};
}

/// Moves the picture so that a pixel lies at a point.
void hold(Underlay& underlay, Pixel pixel, const Point2& at) {
    const Point2 now = underlay.to_sketch(pixel.x, pixel.y);
    underlay.origin.x_m += at.x_m - now.x_m;
    underlay.origin.y_m += at.y_m - now.y_m;
}

}  // namespace

Point2 Underlay::to_sketch(double pixel_x, double pixel_y) const noexcept {
    const double turn = radians(turn_deg);
    const double x_m = metres_per_pixel * pixel_x;
    const double y_m = -metres_per_pixel * pixel_y;
    return {origin.x_m + x_m * std::cos(turn) - y_m * std::sin(turn),
            origin.y_m + x_m * std::sin(turn) + y_m * std::cos(turn)};
}

Point2 Underlay::to_picture(const Point2& p) const noexcept {
    const double turn = radians(turn_deg);
    const double x_m = p.x_m - origin.x_m;
    const double y_m = p.y_m - origin.y_m;
    return {(x_m * std::cos(turn) + y_m * std::sin(turn)) / metres_per_pixel,
            -(-x_m * std::sin(turn) + y_m * std::cos(turn)) / metres_per_pixel};
}

Result<Underlay> scaled(const Underlay& underlay, Pixel from, Pixel to, double length_m) {
    const double pixels = std::hypot(to.x - from.x, to.y - from.y);
    if (!(pixels >= least_pixels)) return too_short();
    if (!(length_m >= 0.1 && length_m <= 1000.0))
        return Problem{"under-lay", "a length of " + std::to_string(length_m) + " m lies outside 0.1 to 1000 m",
                       "Type the length of the marked line in metres"};
    const Pixel middle{0.5 * (from.x + to.x), 0.5 * (from.y + to.y)};
    const Point2 at = underlay.to_sketch(middle.x, middle.y);
    Underlay out = underlay;
    out.metres_per_pixel = length_m / pixels;
    hold(out, middle, at);
    return out;
}

Result<Underlay> turned_to(const Underlay& underlay, Pixel from, Pixel to, double bearing_deg,
                           double sketch_up_azimuth_deg) {
    if (!(std::hypot(to.x - from.x, to.y - from.y) >= least_pixels)) return too_short();
    if (!std::isfinite(bearing_deg))
        return Problem{"under-lay", "the bearing is not a number", "Type 0 to 360, clockwise from true north"};
    const Pixel middle{0.5 * (from.x + to.x), 0.5 * (from.y + to.y)};
    const Point2 at = underlay.to_sketch(middle.x, middle.y);
    // In the picture the line runs this way, counter-clockwise from its x axis; in the sketch it shall run that way.
    const double in_picture_deg = degrees(std::atan2(-(to.y - from.y), to.x - from.x));
    const double in_sketch_deg = 90.0 - (bearing_deg - sketch_up_azimuth_deg);
    Underlay out = underlay;
    out.turn_deg = wrap_180(in_sketch_deg - in_picture_deg);
    hold(out, middle, at);
    return out;
}

double true_bearing_deg(double magnetic_deg, double declination_deg) noexcept {
    return wrap_360(magnetic_deg + declination_deg);
}

}  // namespace wg::sketch
