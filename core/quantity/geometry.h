#pragma once
// Points shared by survey data and geometry. No algorithms here: those live in core/site.

namespace wg {

/// A point in a plane, metres.
struct Point2 {
    double x_m = 0.0;
    double y_m = 0.0;
    friend bool operator==(const Point2&, const Point2&) = default;
};

/// A point in the sketch's space: x to the right of the sketch, y up the sketch, z above the survey's ground
/// level, metres. The sketch's y axis bears `Site::sketch_up_azimuth_deg` from true north.
struct Point3 {
    double x_m = 0.0;
    double y_m = 0.0;
    double z_m = 0.0;
    friend bool operator==(const Point3&, const Point3&) = default;
};

}  // namespace wg
