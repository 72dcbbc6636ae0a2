#pragma once
// Wind zones of EN 1991-1-4 section 7.2 on one plane of a building, and what they ask of a plate.

#include <array>
#include <string>
#include <vector>

#include "core/fixing/zone_tables.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

/// The building that a plane belongs to, as far as its wind needs it.
struct Body {
    double height_m = 0.0;   ///< h
    double parapet_m = 0.0;  ///< of a flat roof, over the roof
    // Extents of the linked building along the plane's level direction and square to it; 0: no building is linked.
    double along_m = 0.0;
    double across_m = 0.0;
    Body(double h_m = 0.0) : height_m(h_m) {}  // NOLINT(google-explicit-constructor): often only the height is known
    /// EN 1991-1-4 figure 7.6: the pressure is taken at the top of the parapet.
    [[nodiscard]] double reference_height_m() const noexcept { return height_m + parapet_m; }
};
/// Height as surveyed, or else the plane's highest corner; parapet and extents of the building that the plane is linked
/// to.
[[nodiscard]] Body body_of(const Site& site, const Surface& surface);
[[nodiscard]] double building_height_m(const Surface& surface, double sketch_up_azimuth_deg);

struct ZonePressure {
    std::string zone_uplift = "H";  ///< zone that gives the uplift
    std::string zone_pressure;
    double uplift =
        0.0;  ///< most negative c_pe among the zones the plate reaches into, wind from every side; 0 or less
    double pressure = 0.0;  ///< greatest c_pe; 0 or more
    std::string table;      ///< the tables used
};

/// The same without words, for thousands of places.
struct ZoneForce {
    const char* zone_uplift = "H";
    const char* zone_pressure = "";
    double uplift = 0.0;
    double pressure = 0.0;
    tables::Coefficient uplift_from, pressure_from;  ///< rows that give them
    bool edge = false;                               ///< reaches a zone at an edge, ridge or hip: F, G, J, K, L, A
};

/// A plate, or the part of one that belongs to a point, in plan: four corners from the lower left corner of the plane's
/// bounding rectangle.
struct PlanPlate {
    std::array<Point2, 4> corners;
    double min_x = 0.0, max_x = 0.0, min_y = 0.0, max_y = 0.0;
    bool upright = true;  ///< its edges run along the axes
};
[[nodiscard]] PlanPlate plan_plate(const Surface& surface, const std::array<Point2, 4>& in_plane);

/// External pressure coefficients for a plate lying parallel to `surface`, by loaded area and pitch. Simplified, and
/// said in the findings: but for hip roofs the plane's bounding rectangle is taken for its outline; without a linked
/// building a duo-pitch roof is taken for symmetrical and a wall's building for wide against the wind. Terrace and
/// ground give nothing: a plate there stands free.
[[nodiscard]] ZonePressure zone_pressure(const Surface& surface, const Body& body, const std::vector<Point2>& plate,
                                         double area_m2);

// What the rating above and the drawing of the zones share.

enum class ZoneKind { none, wall, flat, mono_pitch, hip, duo_pitch };
[[nodiscard]] ZoneKind zone_kind(const Surface& surface);
[[nodiscard]] std::string zone_table(ZoneKind kind);

/// In plan, from the lower left corner of the plane's bounding rectangle, m. Zones at an edge run on beyond it.
struct ZoneRect {
    double x0 = 0.0, x1 = 0.0, y0 = 0.0, y1 = 0.0;
};
/// Edge of the plane that the wind meets first.
enum class WindOn { lower, upper, left, right, any };
/// What lies on the near side of a slanting line in plan: x and y times the unit normal no more than `to_m`.
struct NearSide {
    double x = 0.0, y = 0.0, to_m = 0.0;
};
struct ZoneBand {
    const char* zone = "";
    WindOn wind_on = WindOn::any;
    ZoneRect rect;
    tables::Coefficient coefficient;
    bool slants = false;  ///< along a hip: `slant` bounds it beside the rectangle
    NearSide slant{};
};
/// Zones for wind on every side, as figures 7.5 to 7.9 draw them, one over the other. None for planes that stand free.
[[nodiscard]] std::vector<ZoneBand> zone_bands(const Surface& surface, const Body& body);
[[nodiscard]] ZonePressure pressure_in(const std::vector<ZoneBand>& bands, const ZoneRect& plan, double area_m2);
[[nodiscard]] ZoneForce force_in(const std::vector<ZoneBand>& bands, const PlanPlate& plate, double area_m2);
/// e of figures 7.5 to 7.9 for wind square to the eaves and along them.
struct ZoneWidths {
    double across_m = 0.0, along_m = 0.0;
};
[[nodiscard]] ZoneWidths zone_widths(const Surface& surface, const Body& body);
/// Length in plan of 1 m up the plane.
[[nodiscard]] double plan_shrink(const Surface& surface);

}  // namespace wg::fixing
