#pragma once
// Wind zones of EN 1991-1-4 section 7.2 on one plane of a building, and what they ask of a plate.

#include <string>
#include <vector>

#include "core/fixing/zone_tables.h"
#include "core/job/job.h"
#include "core/site/geometry.h"

namespace wg::fixing {

struct ZonePressure {
    std::string zone_uplift = "H";  ///< zone that gives the uplift
    std::string zone_pressure;
    double uplift =
        0.0;  ///< most negative c_pe among the zones the plate reaches into, wind from every side; 0 or less
    double pressure = 0.0;  ///< greatest c_pe; 0 or more
    std::string table;      ///< the tables used
};

/// Height of the building for its wind, m: as surveyed, or else the plane's highest corner.
[[nodiscard]] double building_height_m(const Surface& surface, double sketch_up_azimuth_deg);

/// External pressure coefficients for a plate lying parallel to `surface`, by loaded area and pitch. Simplified, and
/// said in the findings: the plane's bounding rectangle is taken for its outline, a duo-pitch roof for symmetrical, a
/// hip roof's edges all for gable and eaves, a wall's building for wide against the wind. Terrace and ground give
/// nothing: a plate there stands free.
[[nodiscard]] ZonePressure zone_pressure(const Surface& surface, double height_m, const std::vector<Point2>& plate,
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
struct ZoneBand {
    const char* zone = "";
    WindOn wind_on = WindOn::any;
    ZoneRect rect;
    tables::Coefficient coefficient;
};
/// Zones for wind on every side, as figures 7.5 to 7.8 draw them, one over the other. None for a hip roof (its strip
/// follows the outline) and for planes that stand free.
[[nodiscard]] std::vector<ZoneBand> zone_bands(const Surface& surface, double height_m);
[[nodiscard]] ZonePressure pressure_in(const std::vector<ZoneBand>& bands, const ZoneRect& plan, double area_m2);
/// Width of a hip roof's edge strip, and what strip or middle ask.
[[nodiscard]] double hip_strip_m(const Surface& surface, double height_m);
[[nodiscard]] ZonePressure hip_pressure(double pitch_deg, bool strip, double area_m2);
/// Length in plan of 1 m up the plane.
[[nodiscard]] double plan_shrink(const Surface& surface);

}  // namespace wg::fixing
