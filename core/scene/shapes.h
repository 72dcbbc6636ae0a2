#pragma once
// Skins and casters of the shapes that obstacles have. Internal to core/scene.

#include <vector>

#include "core/scene/scene.h"

namespace wg::scene {

inline constexpr int round_corners = 24;  ///< a round thing seen from above

/// Corners of a ring about an upright axis.
[[nodiscard]] std::vector<Point3> ring(Point2 middle, double radius_m, double z_m);
/// Sides and top of a round thing.
[[nodiscard]] Body upright_body(Point2 middle, double radius_m, double low_m, double high_m, int thing);
/// Of an ellipsoid with a level round section.
[[nodiscard]] Body crown_body(Point3 middle, double radius_m, double half_height_m, int thing);

/// Of a flat outline.
[[nodiscard]] Caster sheet_caster(std::vector<Point3> corners, int thing);
/// Of a level convex outline between two heights.
[[nodiscard]] Caster column_caster(const std::vector<Point2>& outline, double low_m, double high_m, int thing);
/// Of a round upright thing.
[[nodiscard]] Caster upright_caster(Point2 middle, double radius_m, double low_m, double high_m, int thing);
/// Of an ellipsoid with a level round section, solid until told otherwise.
[[nodiscard]] Caster crown_caster(Point3 middle, double radius_m, double half_height_m, int thing);

/// Upright sides over the edges of a counter-clockwise convex outline, and its top. `drawn` per edge: it has a side.
void add_column(std::vector<Polygon>& into, const std::vector<Point2>& outline, const std::vector<char>& drawn,
                double low_m, double high_m, int thing);

}  // namespace wg::scene
