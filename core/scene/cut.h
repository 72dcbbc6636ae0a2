#pragma once
// Where fragments stand to a plane, and their two parts when it goes through them. Internal to core/scene.

#include "core/scene/order.h"

namespace wg::scene {

inline constexpr double on_plane_m = 1e-5;  ///< nearer than this lies in the plane

struct Plane {
    Point3 normal;
    double off_m = 0.0;
    [[nodiscard]] double height_m(Point3 p) const noexcept {
        return normal.x_m * p.x_m + normal.y_m * p.y_m + normal.z_m * p.z_m - off_m;
    }
};

/// Least and greatest height of a fragment over a plane.
struct Stand {
    double low_m = 0.0, high_m = 0.0;
    [[nodiscard]] bool before() const noexcept { return low_m >= -on_plane_m && high_m > on_plane_m; }
    [[nodiscard]] bool behind() const noexcept { return high_m <= on_plane_m && low_m < -on_plane_m; }
    [[nodiscard]] bool inside() const noexcept { return low_m >= -on_plane_m && high_m <= on_plane_m; }
};
[[nodiscard]] Stand stand(const Fragment& fragment, const Plane& plane) noexcept;

/// The part on the side of the normal (`before`) or on the other.
[[nodiscard]] Fragment part_of(const Fragment& fragment, const Plane& plane, bool before);

}  // namespace wg::scene
