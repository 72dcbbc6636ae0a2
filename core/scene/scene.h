#pragma once
// What stands on a site, as polygons, bodies and lines in the sketch's space.

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "core/equipment/equipment.h"
#include "core/job/job.h"
#include "core/quantity/geometry.h"

namespace wg::scene {

enum class Kind { ground, surface, keep_out, obstacle, crown, collector, stand, route, cylinder, post_line };

/// One thing that people have a name for; its polygons, bodies and lines refer to it by index.
struct Thing {
    Kind kind = Kind::ground;
    std::string id;  ///< of the job's element
    std::string label;
    SurfaceKind surface_kind = SurfaceKind::ground;  ///< of surfaces
    Point3 anchor;                                   ///< what a label points to
    int without_shadow_of = -1;  ///< thing that throws no shadow on this one (a collector's surface)
};

/// Flat, convex, at least three corners counter-clockwise about the normal.
struct Polygon {
    std::vector<Point3> corners;
    std::vector<char> drawn;  ///< per corner: the edge to the next is an edge of the thing, not a cut
    Point3 normal;
    int thing = 0;
    int layer = 0;           ///< of those in one plane the higher is painted over the lower
    bool two_sided = false;  ///< a sheet, seen from behind too; else the face of something solid
};

/// Convex and drawn as its outline: a crown, a trunk, a post. `skin` are its flat parts.
struct Body {
    std::vector<std::vector<Point3>> skin;
    int thing = 0;
    Point3 middle;                               ///< of a crown
    double radius_m = 0.0, half_height_m = 0.0;  ///< of a crown; 0: it is none
};

struct Line {
    Point3 from, to;
    int thing = 0;
};

/// Convex part of something that throws shade, the same things as `site::Occluder` has.
struct Caster {
    std::vector<Point3> points;              ///< of a crown only its extremes
    std::vector<std::pair<int, int>> edges;  ///< empty: the points are a flat outline in order
    Point3 middle;                           ///< of a ball round it
    double radius_m = 0.0;
    int thing = 0;
    bool crown = false;
    double crown_radius_m = 0.0, crown_half_height_m = 0.0;  ///< of an ellipsoid about `middle`; 0: it is none
    double transmittance_leaf = 0.0, transmittance_bare = 0.0;
    int leaf_from_month = 1, leaf_to_month = 12;
    [[nodiscard]] double passes(int month) const noexcept;  ///< share of the beam, 0 for what is solid
};

struct Scene {
    std::vector<Thing> things;
    Polygon ground;  ///< level at 0 m, under everything
    std::vector<Polygon> polygons;
    std::vector<Body> bodies;
    std::vector<Line> lines;
    std::vector<Caster> casters;
    std::vector<Point3> run;                      ///< the pipe run from the first collector to the cylinder
    std::vector<std::vector<Point3>> cylinder;    ///< its rings and sides as lines, also where it stands hidden
    std::vector<std::vector<Point3>> collectors;  ///< the plates' corners, in the order of the choice's placements
    std::vector<std::string> collector_ids;       ///< of those placements
    Point3 middle;  ///< of the box round the surfaces; where there is none, round everything
    double sketch_up_azimuth_deg = 0.0;
    [[nodiscard]] bool empty() const noexcept { return polygons.empty() && bodies.empty(); }
};

/// Thickness that plates are drawn with.
inline constexpr double plate_drawn_m = 0.03;

/// `choice`, `collector` and `cylinder` may be null. Things that `site::Occluder` leaves out (numbers that are not
/// finite, no extent) are left out here too.
[[nodiscard]] Scene scene_of(const Site& site, const Choice* choice, const CollectorModel* collector,
                             const CylinderModel* cylinder);

}  // namespace wg::scene
