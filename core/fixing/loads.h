#pragma once
// From site and plate to design forces on each fixing point. Inside core/fixing.

#include <string>
#include <vector>

#include "core/fixing/beam.h"
#include "core/fixing/fixing.h"
#include "core/fixing/hold.h"
#include "core/fixing/orography.h"
#include "core/fixing/snow.h"
#include "core/fixing/zones.h"

namespace wg::fixing {

/// EN 1991-1-4 7.4.3, from memory: net force on a free plate (signboard), with the force up to a quarter of its width
/// off its middle. For plates on frames steeper than a canopy.
inline constexpr double free_plate_coefficient = 1.8;
inline constexpr double free_plate_offset = 0.25;
/// EN 1991-1-4 7.3: up to this tilt a free plate is a canopy, with the force a quarter of its depth off its edge.
inline constexpr double canopy_tilt_deg = 30.0;
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
    const char* name = "";  ///< "suction", "pressure"
    bool suction = false;
    Action action;
    std::vector<double> of_point;  ///< by parts: what each point takes; empty: the even share
    std::vector<double> of_part;   ///< by parts: load of each part
};

/// Wind on one point's own part of the plate.
struct PartWind {
    ZoneForce zone;
    double area_m2 = 0.0;
    double net_uplift = 0.0, net_pressure = 0.0;  ///< net coefficients
};

struct Loads {
    PeakPressure wind;
    double basic_wind_m_s = 0.0;  ///< of the place, before its altitude counts
    double altitude_factor = 1.0;
    Orography orography;
    Body body;
    ZoneForce zone;  ///< of the plate
    double net_uplift = 0.0, net_pressure = 0.0;
    std::vector<PartWind> parts;  ///< by point; none on free plates
    bool free = false;            ///< stands free of the building's surface
    bool canopy = false;
    bool on_frame = false;
    double area_m2 = 0.0;
    double middle_off_m = 0.0;  ///< plate's middle over the surface
    double weight_n = 0.0;
    double snow_ground_n_m2 = 0.0;
    double snow_shape = 0.0;  ///< mu_1 of the plate
    double snow_n_m2 = 0.0;   ///< on the plate, of its plan area
    double snow_plan_m2 = 0.0;
    SnowSlide slide;
    Action permanent, snow;
    std::vector<WindCase> winds;
};

/// Points numbered, snapped and set out, and the plate in own coordinates that goes with them.
struct Layout {
    std::vector<FixingPoint> points;
    PointedPlate plate;
    Shares shares;
    bool rafters_known = false;  ///< wanted by the method and surveyed
};
[[nodiscard]] Layout lay_points(const Input& input);
[[nodiscard]] Loads loads_of(const Input& input, const Layout& layout);

/// Net coefficients by the rule set, from the surface's own.
struct Net {
    double uplift = 0.0, pressure = 0.0;
};
[[nodiscard]] Net net_of(const ZoneForce& zone, const ActionRules& rules);

/// Design value of one combination on each point.
struct PointForce {
    double normal_n = 0.0;  ///< into the surface positive
    double along_n = 0.0;
    double extra_n = 0.0;  ///< pull or push by a couple that the points' plan cannot balance
    [[nodiscard]] double pull_n() const noexcept { return extra_n > normal_n ? extra_n - normal_n : 0.0; }
    [[nodiscard]] double push_n() const noexcept { return extra_n > -normal_n ? extra_n + normal_n : 0.0; }
};
/// Factors of one combination; `wind` may be null.
struct Factors {
    double g = 0.0, w = 0.0, s = 0.0;
    const WindCase* wind = nullptr;
    bool snow_first = false;  ///< snow leads, wind accompanies
};
struct Combination {
    std::string name;
    Factors factors;
    Action action;  ///< design value on the whole plate
    std::vector<PointForce> of_point;
};
[[nodiscard]] std::string name_of(const Factors& factors);
/// Combinations by the rule set's factors; with factors of 1 for gamma: characteristic ones, for deflection.
[[nodiscard]] std::vector<Factors> combinations_of(const Loads& loads, const ActionRules& rules);

/// How a plate's actions go to its points, worked out once for all combinations.
struct Spread {
    std::vector<double> shear;               ///< shares of the force along the surface; add up to 1
    std::vector<double> couple_x, couple_y;  ///< force on each point under a couple of 1 N m along x and along y
    Point2 axes[2];
    bool carried[2] = {true, true};  ///< the points' plan can carry a couple along that axis
};
[[nodiscard]] Spread spread_of(const Input& input, const Loads& loads, const Layout& layout);
/// Fills `of_point`; true when a couple met points too near one line to carry it.
bool point_forces(const Loads& loads, const Layout& layout, const Spread& spread, const Factors& factors,
                  Action& action, std::vector<PointForce>& of_point);

struct Combined {
    std::vector<Combination> combinations;
    bool lever_missing = false;
};
[[nodiscard]] Combined combine(const Input& input, const Loads& loads, const Layout& layout);

/// Bending of the rails: line load of one under a combination, N/m, into the surface positive.
[[nodiscard]] double rail_load_n_m(const Loads& loads, const Layout& layout, const Factors& factors, std::size_t rail);
/// Greatest share of the profiles' bending resistance; 0 when it is not told.
[[nodiscard]] double bending_use(const Input& input, const Loads& loads, const Layout& layout,
                                 const std::vector<Factors>& combinations);
struct Sag {
    double use = 0.0;  ///< of what `deflection_span_share` allows; 0 when the stiffness is not told
    double sag_m = 0.0, span_m = 0.0;
    bool cantilever = false;
    double load_n_m = 0.0;
    std::size_t rail = 0;
};
[[nodiscard]] Sag sag_of(const Input& input, const Loads& loads, const Layout& layout);

/// A frame that ballast alone holds on a level surface: EN 1990 table A1.2(A) for static equilibrium.
struct BallastCheck {
    bool holds = false;                                     ///< the method holds by ballast and its data name some
    double slides = 0.0, tips = 0.0, lifts = 0.0;           ///< uses, the wind and the foot line that ask most
    double slides_kg = 0.0, tips_kg = 0.0, lifts_kg = 0.0;  ///< needed a point
    double depth_m = 0.0, width_m = 0.0;                    ///< between the outer feet
    double mass_kg = 0.0;                                   ///< plate, frame and ballast
    double area_m2 = 0.0;
    double load_kn_m2 = 0.0;  ///< on the surface
    const WindCase* slides_under = nullptr;
    const WindCase* tips_under = nullptr;
    [[nodiscard]] Use worst() const noexcept;
    [[nodiscard]] double needed_kg() const noexcept;  ///< a point, against all three
};
[[nodiscard]] BallastCheck check_ballast(const Input& input, const Loads& loads, const Layout& layout);
inline constexpr double ballast_friction =
    0.4;  ///< assumed where a method names none: concrete on membrane, wet (practice)
[[nodiscard]] bool by_ballast(const FixingMethod& method) noexcept;
/// Level enough for ballast: steeper surfaces are not worked out.
inline constexpr double ballast_tilt_deg = 5.0;
[[nodiscard]] bool ballast_overloads(const Input& input, const BallastCheck& check) noexcept;

/// Everything `fix` works out before it words it.
struct Worked {
    Layout layout;
    Loads loads;
    Combined combined;
    Resistance resistance;
    BallastCheck ballast;
    double bending = 0.0;
    Sag sag;
    std::size_t worst_point = 0;  ///< index
    std::size_t worst_combination = 0;
    double worst_use = 0.0;
};

[[nodiscard]] std::vector<Finding> check_fixing(const Input& input, const Worked& worked);
[[nodiscard]] std::vector<Working> workings_of(const Input& input, const Worked& worked);
/// What would hold when `worked` does not: other methods, a move, more points, more ballast, each worked out.
[[nodiscard]] std::string what_would_hold(const Input& input, const Worked& worked);

}  // namespace wg::fixing
