#pragma once
// Shadow outlines on every plane of a scene at one sun.

#include <vector>

#include "core/scene/order.h"
#include "core/scene/scene.h"

namespace wg::scene {

/// Part of a fragment that lies in the shadow of one convex caster.
struct ShadowPatch {
    std::vector<Point3> corners;  ///< convex, counter-clockwise seen from the side of the sun
    double passes = 0.0;          ///< share of the beam: 0 behind something solid, more under a crown
};

/// On one flat convex outline with a unit normal: outlines may lie over each other; crowns come first, those that let
/// most through before the others, so that painting one over the other leaves the darker. Nothing for a sun behind the
/// plane or in it; the side of the plane is that of the normal. `without`: thing that throws no shadow here.
[[nodiscard]] std::vector<ShadowPatch> shadows_on(const std::vector<Point3>& corners, Point3 normal,
                                                  const std::vector<Caster>& casters, Point3 to_sun, int month,
                                                  int without = -1);

/// On the ground and on every polygon of a scene.
struct Shadows {
    std::vector<ShadowPatch> ground;
    std::vector<std::vector<ShadowPatch>> fragment;  ///< by index of the order's fragments; on the side of the sun
    bool sun = false;                                ///< false: no direct sun, everything is in the shade
    Point3 to_sun;
    int month = 1;
};
[[nodiscard]] Shadows shadows_of(const Scene& scene, const Order& order, Point3 to_sun, int month);

}  // namespace wg::scene
