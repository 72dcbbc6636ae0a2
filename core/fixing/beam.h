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

/// The part of the plate that is nearer to one point than to the others of its rail, and to its rail than to others:
/// half-way lines along the rail and between rails, out to the plate's edges. Own coordinates.
struct PlatePart {
    Point2 low, high;
    std::size_t rail = 0;
    [[nodiscard]] double area_m2() const noexcept { return (high.x_m - low.x_m) * (high.y_m - low.y_m); }
};

/// Share of an evenly spread load that each point takes; adds up to 1. Rails run along x when that leaves fewer rails
/// with a single point, else along y. A share below 0 means the plate would lift off that point.
struct Shares {
    std::vector<double> of_point;
    int rails = 0;
    int single_point_rails = 0;
    bool along_x = true;
    std::vector<PlatePart> parts;  ///< by point
    std::vector<double> of_rail;
    std::vector<double> rail_moment_m2;  ///< greatest bending moment of a rail under 1 N/m all along it, N m
};
[[nodiscard]] Shares even_load_shares(const PointedPlate& plate);

/// What each point takes when every part of the plate carries a load of its own, spread evenly over the part: across
/// the rails and along each rail as the even load goes. Adds up to the loads.
[[nodiscard]] std::vector<double> part_load_reactions(const PointedPlate& plate, const Shares& shares,
                                                      const std::vector<double>& load_n);

/// How a rail bends under 1 N/m all along it, with a stiffness of 1 N m2.
struct RailBend {
    double moment_nm = 0.0;    ///< greatest, either sign
    double moment_at_m = 0.0;  ///< from the rail's start
    bool over_support = false;
    double sag_of_span = 0.0;  ///< greatest deflection over its span; an end that cantilevers counts twice its length
    double span_m = 0.0;       ///< that span, or twice the cantilever
    double sag_m = 0.0;
    bool cantilever = false;
};
[[nodiscard]] RailBend bend_of(const std::vector<double>& supports_m, double from_m, double to_m);
/// Points of rail `rail`, along it, and where the rail begins and ends.
struct RailLine {
    std::vector<double> supports_m;
    double from_m = 0.0, to_m = 0.0;
};
[[nodiscard]] RailLine rail_line(const PointedPlate& plate, const Shares& shares, std::size_t rail);

/// Forces square to the plane that balance a couple, one for each point, by a stiff body on equal springs: they add up
/// to nothing, and the sum of force times place is `couple_nm` (as far as the points have extent in its direction). A
/// positive force pushes into the plane.
[[nodiscard]] std::vector<double> couple_forces(const std::vector<Point2>& points, Point2 couple_nm);
/// Root mean square distance of the points from their middle along a unit direction.
[[nodiscard]] double spread_m(const std::vector<Point2>& points, Point2 direction) noexcept;

}  // namespace wg::fixing
