#pragma once
// Wind, snow and weight on each fixing point of a placed collector, and what holds it.

#include <string>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/findings/finding.h"
#include "core/fixing/rules.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

struct PeakPressure {
    double qb_pa = 0.0, cr = 0.0, co = 1.0, intensity = 0.0, ce = 0.0, qp_pa = 0.0, z_used_m = 0.0;
};
/// EN 1991-1-4:2005, 4.2-4.5: peak velocity pressure at height z with orography factor c_o.
[[nodiscard]] PeakPressure peak_pressure(double basic_wind_m_s, Terrain terrain, double height_m,
                                         double air_density_kg_m3, double orography = 1.0);

/// EN 1991-1-4 7.2.1: c_pe between loaded areas of 1 and 10 m2.
[[nodiscard]] double pressure_by_area(double cpe_1, double cpe_10, double area_m2);

/// EN 1991-1-3 table 5.2, snow free to slide off.
[[nodiscard]] double snow_shape_mu1(double pitch_deg);

/// EN 1995-1-1:2004+A1 8.7.2 (8.38-8.40): characteristic withdrawal of one screw at 90 deg to the grain, N.
[[nodiscard]] double screw_withdrawal_n(double diameter_mm, double grip_mm, double density_kg_m3);

/// The part of a fixing that is used most.
enum class HeldBy {
    unknown,
    screws,
    head,
    bolt,
    profile_bolt,
    bracket,
    ballast_slides,
    ballast_tips,
    ballast_lifts,
};
[[nodiscard]] const char* text_of(HeldBy part) noexcept;  ///< "screws in the timber"

struct FixingPoint {
    int number = 1;  ///< as drawn and drilled, from 1
    std::string placement_id;
    Point2 position;               ///< in the surface's plane, after snapping to a rafter
    Point2 nominal;                ///< before snapping
    double rafter_offset_m = 0.0;  ///< moved along x to reach a rafter
    bool on_rafter = false;
    site::EdgeOffset edge_a, edge_b;  ///< set-out dimensions from the nearest two edges
    double pull_n = 0.0;              ///< design pull-out, worst combination, 0 or more
    double push_n = 0.0;              ///< design pressure on the point
    double shear_n = 0.0;             ///< design force along the surface
    double resistance_pull_n = 0.0;
    double resistance_shear_n = 0.0;
    double utilisation = 0.0;
    HeldBy held_by = HeldBy::unknown;  ///< what the utilisation is of
    std::string worst_combination;
};

struct Input {
    Site site;
    Surface surface;
    Placement placement;
    CollectorModel collector;
    site::PlacedCollector placed;
    FixingMethod method;
    ActionRules rules;
    double refrigerant_kg = 0.5;              ///< in the plate
    int first_number = 1;                     ///< numbering runs on over several collectors
    std::vector<std::vector<Point2>> others;  ///< outlines of the other collectors on the surface
    std::vector<FixingMethod> alternatives;   ///< looked through when the method does not hold
};

struct Outcome {
    std::vector<FixingPoint> points;
    PeakPressure wind;
    std::string zone;  ///< e.g. "F", "H", "A"
    double cpe_uplift = 0.0;
    double cpe_pressure = 0.0;
    double snow_n_m2 = 0.0;     ///< on the plate's plan area, characteristic
    double snow_slide_n = 0.0;  ///< of the snow above that slides against the plate, characteristic
    double worst_utilisation = 0.0;
    int worst_point = 0;  ///< its number
    HeldBy held_by = HeldBy::unknown;
    double bending_use = 0.0;  ///< of the profiles; 0: not told what they hold
    double sag_use = 0.0;      ///< of their allowed deflection; 0: stiffness not told
    std::vector<Finding> findings;
    std::vector<Working> workings;
};

/// Reactions by the collector as a beam on its points along each rail, wind even and by parts, the worse of both.
/// Findings: point off the rafters, edge distance, method does not suit the covering, utilisation over 1 (stop) or over
/// 0.9 (caution) with what would hold, profiles, ballast, what is simplified or not told.
[[nodiscard]] Outcome fix(const Input& input);

/// What fix() would find, as two figures and without its words: for judging thousands of places.
struct Hold {
    double worst_utilisation = 0.0;  ///< not worked out where a point has no hold at all
    bool stopped = false;            ///< fix() would return a stop
};
[[nodiscard]] Hold hold_of(const Input& input);

}  // namespace wg::fixing
