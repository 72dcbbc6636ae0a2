#pragma once
// Single surfaces of a house, from points in the sketch's space. Internal to core/roof.

#include "core/roof/building.h"
#include "core/roof/faces.h"

namespace wg::roof {

/// The outline with each edge moved outwards by its own distance (inwards when negative). Problem: a distance that
/// turns the outline over itself.
[[nodiscard]] Result<std::vector<Point2>> moved_out(const std::vector<Point2>& footprint,
                                                    const std::vector<double>& past_m);

/// A slope over its first edge; heights of the face count from `base_m` over the ground.
[[nodiscard]] Part roof_plane(const Face& face, const HouseForm& building, RoofForm form, double base_m, double ridge_m,
                              double up_azimuth_deg);
/// A level roof at the eaves' height, its bearing that of the first edge.
[[nodiscard]] Part level_roof(const Face& face, const HouseForm& building, double ridge_m, double up_azimuth_deg);
/// From the ground to the eaves' height plus the height of both ends; `top`: further points on the way back.
[[nodiscard]] Part wall(std::size_t edge, const RoofPoint& from, const RoofPoint& to, const std::vector<RoofPoint>& top,
                        const HouseForm& building, double ridge_m, double up_azimuth_deg);
/// A box on the edge of a flat roof, inside the wall line.
[[nodiscard]] Obstacle parapet(const Point2& from, const Point2& to, const HouseForm& building);

}  // namespace wg::roof
