#pragma once
// From site and plate to design forces on each fixing point. Inside core/fixing.

#include <string>
#include <vector>

#include "core/fixing/beam.h"
#include "core/fixing/fixing.h"
#include "core/fixing/zones.h"

namespace wg::fixing {

/// EN 1991-1-4 7.4.3, from memory: net force on a free plate (signboard), with the force up to a quarter of its width
/// off its middle. Taken for plates on frames, whatever their tilt.
inline constexpr double free_plate_coefficient = 1.8;
inline constexpr double free_plate_offset = 0.25;
/// Feet of a frame count as this far apart front to back (and side to side) where their plan is shallower.
inline constexpr double frame_foot_depth_m = 0.5;
/// Farthest that a point moves along x to reach a rafter.
inline constexpr double snap_reach_m = 0.25;

/// One action on the whole plate: square to the surface (into it positive) through the plate's middle, along the
/// surface, and what the force's place adds as a couple.
struct Action {
    double normal_n = 0.0;
    Point2 along_n;    ///< in the surface's plane
    Point2 couple_nm;  ///< sum of force times place it asks of the points, beyond the even share
};

struct WindCase {
    std::string name;  ///< "suction", "pressure"
    bool suction = false;
    Action action;
};

struct Loads {
    PeakPressure wind;
    ZonePressure zone;
    bool on_frame = false;
    double area_m2 = 0.0;
    double middle_off_m = 0.0;  ///< plate's middle over the surface
    double weight_n = 0.0;
    double snow_ground_n_m2 = 0.0;
    double snow_n_m2 = 0.0;  ///< on the plate, of its plan area
    Action permanent, snow;
    std::vector<WindCase> winds;
};
[[nodiscard]] Loads loads_of(const Input& input);

/// Points numbered, snapped and set out, and the plate in own coordinates that goes with them.
struct Layout {
    std::vector<FixingPoint> points;
    PointedPlate plate;
    Shares shares;
    bool rafters_known = false;  ///< wanted by the method and surveyed
};
[[nodiscard]] Layout lay_points(const Input& input);

/// Design value of one combination on each point.
struct PointForce {
    double normal_n = 0.0;  ///< into the surface positive
    double along_n = 0.0;
    double extra_n = 0.0;  ///< pull or push by a couple that the points' plan cannot balance
};
struct Combination {
    std::string name;
    Action action;  ///< design value on the whole plate
    std::vector<PointForce> of_point;
};
struct Combined {
    std::vector<Combination> combinations;
    bool lever_missing = false;
};
[[nodiscard]] Combined combine(const Input& input, const Loads& loads, const Layout& layout);

/// Design resistances of one point: the screws' in timber, the maker's for hook, clamp or anchor, or both.
struct Resistance {
    bool by_screws = false;  ///< there are screws in timber
    bool by_maker = false;   ///< the method's data give resistances
    double pull_n = 0.0;     ///< the lesser of what counts; 0: not known
    double shear_n = 0.0;
    double screws_pull_n = 0.0;
    double screws_shear_n = 0.0;
    double maker_pull_n = 0.0;
    double maker_shear_n = 0.0;
    double one_screw_pull_k_n = 0.0;  ///< characteristic
    double one_screw_shear_k_n = 0.0;
};
[[nodiscard]] Resistance resistance_of(const FixingMethod& method, const ActionRules& rules);
/// Screws: root of squares (EN 1995-1-1 8.3.3); data of the maker: sum, which is never less. The greater of the two
/// where both count; 0 when no resistance is known.
[[nodiscard]] double utilisation(const Resistance& resistance, double pull_n, double shear_n);

/// Ballast that holds a frame on a level surface without anchors, kg: against lifting and sliding.
struct Ballast {
    double uplift_kg = 0.0;
    double sliding_kg = 0.0;
};
inline constexpr double ballast_friction = 0.4;  ///< concrete on membrane or paving, wet (practice)
[[nodiscard]] Ballast ballast_of(const Loads& loads, const ActionRules& rules);

[[nodiscard]] std::vector<Finding> check_fixing(const Input& input, const Loads& loads, const Layout& layout,
                                                const Combined& combined, const Resistance& resistance);
[[nodiscard]] std::vector<Working> workings_of(const Input& input, const Loads& loads, const Layout& layout,
                                               const Resistance& resistance);

}  // namespace wg::fixing
