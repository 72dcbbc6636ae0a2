#pragma once
// How a plate hands its load to its fixing points: along each rail as a beam on its points, across the rails as a beam
// on the rails. Statics only; no length of the plate is stiffer than another.

#include <cstddef>
#include <vector>

#include "core/quantity/geometry.h"

namespace wg::fixing {

/// Reactions of a beam from `from_m` to `to_m` with one unit of load spread evenly over it, on `supports_m` (any order,
/// within the beam). One support takes everything; two: statically determinate with overhangs; more: three-moment
/// equation (Clapeyron 1857), constant stiffness. Supports nearer than a millimetre share one reaction. Adds up to 1.
/// Empty when there are no supports.
[[nodiscard]] std::vector<double> beam_shares(const std::vector<double>& supports_m, double from_m, double to_m);

/// Size of a plate and its points in own coordinates.
struct PointedPlate {
    double length_m = 0.0;        ///< along x
    double width_m = 0.0;         ///< along y
    std::vector<Point2> nominal;  ///< decides which points share a rail
    std::vector<Point2> points;   ///< where they really are, after snapping; same count
};

/// Share of an evenly spread load that each point takes; adds up to 1. Rails run along x when that leaves fewer rails
/// with a single point, else along y. A share below 0 means the plate would lift off that point.
struct Shares {
    std::vector<double> of_point;
    int rails = 0;
    int single_point_rails = 0;
};
[[nodiscard]] Shares even_load_shares(const PointedPlate& plate);

/// Forces square to the plane that balance a couple, one for each point, by a stiff body on equal springs: they add up
/// to nothing, and the sum of force times place is `couple_nm` (as far as the points have extent in its direction). A
/// positive force pushes into the plane.
[[nodiscard]] std::vector<double> couple_forces(const std::vector<Point2>& points, Point2 couple_nm);
/// Root mean square distance of the points from their middle along a unit direction.
[[nodiscard]] double spread_m(const std::vector<Point2>& points, Point2 direction) noexcept;

}  // namespace wg::fixing
